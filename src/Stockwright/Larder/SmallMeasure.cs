using Stockwright.Measures;
using UnitsNet;
using UnitSystem = Stockwright.Measures.UnitSystem;

namespace Stockwright.Larder;

/// <summary>
/// An amount too small for a kitchen scale, as a cook measures it: pieces, a part of a teaspoon, a pinch. Halves of a piece, eighths and
/// quarters of a teaspoon: common practice, no source.
/// </summary>
public static class SmallMeasure
{
    /// <summary>A kitchen scale shows whole grams, a US one tenths of an ounce (common practice, no source).</summary>
    private static readonly (Mass Metric, Mass UsCustomary) LeastShown = (Mass.FromGrams(1), Mass.FromOunces(0.1));

    /// <summary>Pieces lighter than this, peppercorns and the like, are not halved.</summary>
    private const double LeastHalvedGrams = 0.1;

    private const double MostPieces = 20;

    /// <summary>A heaped spoon of leaf weighs what it weighs; without a stated spoon it is packed as in the pot.</summary>
    private const double TeaspoonMillilitres = ExactFactors.TeaspoonMillilitres;

    /// <summary>True for a mass a kitchen scale cannot show.</summary>
    public static bool IsUnderScale(Mass mass, UnitSystem units) => mass < (units == UnitSystem.UsCustomary ? LeastShown.UsCustomary : LeastShown.Metric);

    /// <summary>For instance <c>½ leaf</c>, <c>7 peppercorns</c>, <c>⅛ teaspoon</c>, <c>a pinch</c>.</summary>
    /// <param name="ingredient">The ingredient; null when the larder has no such row.</param>
    /// <param name="mass">Above zero, ready for the pot.</param>
    public static string Of(Ingredient? ingredient, Mass mass) =>
        ingredient is null ? "a pinch" : Counted(ingredient, mass) ?? (ingredient.Group == IngredientGroup.Liquid ? "a few drops" : "a pinch");

    /// <summary>The same where pieces or a spoon come near it; null where only a pinch would.</summary>
    public static string? Counted(Ingredient ingredient, Mass mass)
    {
        ArgumentNullException.ThrowIfNull(ingredient);
        foreach (Piece piece in ingredient.Pieces.Where(piece => !IsSpoon(piece)))
        {
            double each = new PieceCount(1, piece).TrimmedMass(ingredient).Grams;
            double step = each < LeastHalvedGrams ? 1 : 0.5;
            double count = mass.Grams / each;
            if (count >= step / 2 && count <= MostPieces)
            {
                double rounded = count < 4 ? Math.Max(step, Math.Round(count / step, MidpointRounding.AwayFromZero) * step) : Math.Round(count, MidpointRounding.AwayFromZero);
                return new PieceCount(rounded, piece).ToString();
            }
        }

        return TeaspoonGrams(ingredient) is { } spoon ? Spoons(mass.Grams / spoon) : null;
    }

    private static bool IsSpoon(Piece piece) => piece.Name is "teaspoon" or "tablespoon";

    private static double? TeaspoonGrams(Ingredient ingredient)
    {
        double? Stated(string name) => ingredient.Pieces.FirstOrDefault(piece => string.Equals(piece.Name, name, StringComparison.Ordinal))?.Mass.Value.Grams;
        return Stated("teaspoon") ?? Stated("tablespoon") / 3 ?? ingredient.PackDensity?.Value.KilogramsPerCubicMeter / 1000 * TeaspoonMillilitres;
    }

    private static string? Spoons(double teaspoons)
    {
        if (teaspoons < 1.0 / 16)
        {
            return null;
        }

        double step = teaspoons < 3.0 / 16 ? 1.0 / 8 : teaspoons < 1 ? 1.0 / 4 : 1.0 / 2;
        double rounded = Math.Max(1.0 / 8, Math.Round(teaspoons / step, MidpointRounding.AwayFromZero) * step);
        return $"{KitchenFormat.Fraction(rounded, 8)} {(rounded > 1 ? "teaspoons" : "teaspoon")}";
    }
}
