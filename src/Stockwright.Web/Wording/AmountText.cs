using Stockwright.Larder;
using Stockwright.Measures;
using Stockwright.Planning;
using UnitsNet;

namespace Stockwright.Web.Wording;

/// <summary>An amount as it is best read at the scale.</summary>
/// <param name="Main">What to go by: the weight, or the pieces where no kitchen scale would help.</param>
/// <param name="Beside">The other way to say it, or the empty string.</param>
/// <param name="IsCounted">True when the pieces are what to go by.</param>
internal sealed record AmountText(string Main, string Beside, bool IsCounted)
{
    /// <summary>Kitchen scales show whole grams; below this a bay leaf is counted, not weighed.</summary>
    private static readonly Mass LeastWeighed = Mass.FromGrams(5);

    public static AmountText Of(AmountLine line, UnitSystem units)
    {
        string weight = KitchenFormat.Text(line.Mass, units);
        string? pieces = PieceCount.Describe(line.Ingredient, line.Mass)?.Text(units);
        if (line.Mass >= LeastWeighed)
        {
            return new AmountText(weight, pieces ?? "", IsCounted: false);
        }

        bool unseen = SmallMeasure.IsUnderScale(line.Mass, units);
        string? counted = pieces ?? (unseen ? SmallMeasure.Of(line.Ingredient, line.Mass) : SmallMeasure.Counted(line.Ingredient, line.Mass));
        return counted is null ? new AmountText(weight, "", IsCounted: false) : new AmountText(counted, unseen ? "" : weight, IsCounted: true);
    }

    /// <summary>An amount of a recipe, per litre: in words where no scale shows it.</summary>
    public static string PerLitre(Ingredient? ingredient, Mass mass, UnitSystem units) =>
        !SmallMeasure.IsUnderScale(mass, units) ? KitchenFormat.Text(mass, units)
            : (ingredient is null ? null : PieceCount.Describe(ingredient, mass)?.Text(units)) ?? SmallMeasure.Of(ingredient, mass);
}
