using System.ComponentModel;
using Stockwright.Web.Fields;

namespace Stockwright.Web.Features.Cooling;

/// <summary>
/// What the cooling page takes besides <see cref="CoolingFields.All"/>, for the OpenAPI document; the request itself is read leniently by
/// <see cref="JsonForm"/> and strictly by the page's reader. Everything may be left out.
/// </summary>
public sealed record CoolingInput
{
    [Description("What is done, in order; the pot in the household fridge, lid on, when left out.")]
    public IReadOnlyList<CoolingStepInput>? Steps { get; init; }
}

/// <summary>One step of cooling: <see cref="StepFields.All"/>.</summary>
public sealed record CoolingStepInput;
