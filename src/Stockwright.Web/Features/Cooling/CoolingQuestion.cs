using Stockwright.Cooling;
using Stockwright.Cooling.Limits;

namespace Stockwright.Web.Features.Cooling;

/// <summary>What a form asks: which stock, cooled how, with what at hand, under which limit.</summary>
/// <param name="Stock">The stock.</param>
/// <param name="Method">The way of cooling.</param>
/// <param name="Rows">Row of the form each step was typed in, from one.</param>
/// <param name="Kit">What the kitchen has.</param>
/// <param name="Pan">A pan of the kit, whatever their number.</param>
/// <param name="Tub">A tub of the kit.</param>
/// <param name="Jar">A jar of the kit.</param>
/// <param name="Limit">The home limit.</param>
public sealed record CoolingQuestion(
    CoolingCase Stock, CoolingMethod Method, IReadOnlyList<int> Rows, CoolingKit Kit, CoolingVessel Pan, CoolingVessel Tub, CoolingVessel Jar, CoolingLimit Limit);
