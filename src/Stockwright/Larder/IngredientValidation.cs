using Stockwright.Evidence;
using UnitsNet;

namespace Stockwright.Larder;

/// <summary>What must hold between the numbers of one row of the larder, whatever each of them is.</summary>
internal static class IngredientValidation
{
    /// <summary>How far sums and densities may stray by rounding alone: mass fraction, or kg per litre.</summary>
    private const double Rounding = 1e-6;

    /// <summary>Half of the last digit a density is printed to, kg/L.</summary>
    private const double DensityRounding = 0.005;

    /// <summary>The first thing that cannot be, in a sentence that names the field; null when the row is sound.</summary>
    /// <param name="ingredient">The row. Each number alone is taken to be sound: low &lt;= value &lt;= high.</param>
    public static string? Problem(Ingredient ingredient)
    {
        ArgumentNullException.ThrowIfNull(ingredient);
        if (Fraction(ingredient.Water) + Fraction(ingredient.Protein) + Fraction(ingredient.Fat) + Fraction(ingredient.Ash) > 1 + Rounding)
        {
            return "water, protein, fat and ash add up to more than the whole";
        }

        if (ingredient.Collagen is { } collagen)
        {
            if (Fraction(collagen) > Fraction(ingredient.Protein))
            {
                return "'collagen' is part of the protein and cannot exceed it";
            }

            if (collagen.High.DecimalFractions > ingredient.Protein.High.DecimalFractions + Rounding)
            {
                return "'collagen' is part of the protein: the high end of its range cannot exceed that of the protein";
            }
        }

        if (ingredient.TrueDensity.Provenance == Provenance.Computed)
        {
            double made = OfMakeUp(ingredient).KilogramsPerLiter;
            if (made < ingredient.TrueDensity.Low.KilogramsPerLiter - DensityRounding || made > ingredient.TrueDensity.High.KilogramsPerLiter + DensityRounding)
            {
                return FormattableString.Invariant($"'trueDensity' is said to be computed, but its range does not hold the {made:0.00} kg per litre that the make-up gives");
            }
        }

        return ingredient.BoneShare is { Provenance: Provenance.Published } && ingredient.UsdaNumber is null
            ? "'boneShare' is said to be published, but there is no 'usda' number to look it up by"
            : null;
    }

    /// <summary>
    /// True density of the make-up: one over the sum of each part over its own density: water 0.998, protein 1.33, fat 0.92,
    /// carbohydrate by difference 1.55, ash as bone mineral 2.9 kg/L (handbook values, from memory).
    /// </summary>
    public static Density OfMakeUp(Ingredient ingredient)
    {
        ArgumentNullException.ThrowIfNull(ingredient);
        double litresPerKilogram = (Fraction(ingredient.Water) / 0.998)
            + (Fraction(ingredient.Protein) / 1.33)
            + (Fraction(ingredient.Fat) / 0.92)
            + (ingredient.Carbohydrate.DecimalFractions / 1.55)
            + (Fraction(ingredient.Ash) / 2.9);
        return Density.FromKilogramsPerLiter(1 / litresPerKilogram);
    }

    private static double Fraction(Stated<Ratio> number) => number.Value.DecimalFractions;
}
