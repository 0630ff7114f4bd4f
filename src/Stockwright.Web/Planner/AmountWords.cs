using Stockwright.Larder;
using Stockwright.Measures;
using Stockwright.Planning;
using UnitsNet;

namespace Stockwright.Web.Planner;

/// <summary>An amount as it is best read at the scale.</summary>
/// <param name="Main">What to go by: the weight, or the pieces where no kitchen scale would help.</param>
/// <param name="Beside">The other way to say it, or the empty string.</param>
/// <param name="IsCounted">True when the pieces are what to go by.</param>
internal sealed record AmountWords(string Main, string Beside, bool IsCounted)
{
    /// <summary>Kitchen scales show whole grams; below this a bay leaf is counted, not weighed.</summary>
    private static readonly Mass LeastWeighed = Mass.FromGrams(5);

    public static AmountWords Of(AmountLine line, UnitSystem units)
    {
        string weight = KitchenFormat.Text(line.Mass, units);
        return PieceCount.Describe(line.Ingredient, line.Mass) is not { } pieces
            ? new AmountWords(weight, "", IsCounted: false)
            : line.Mass < LeastWeighed
                ? new AmountWords(pieces.ToString(), weight, IsCounted: true)
                : new AmountWords(weight, pieces.ToString(), IsCounted: false);
    }
}
