using System.Globalization;
using UnitsNet;

namespace Stockwright.Physics;

/// <summary>What a food is made of, by mass; the shares add up to one within half a percent.</summary>
public sealed record FoodComposition
{
    /// <summary>How far the stated shares may miss one: food tables are rounded to a few tenths of a percent.</summary>
    internal const double SumTolerance = 0.005;

    /// <summary>States a composition by mass.</summary>
    /// <param name="water">Water, 0 to 1.</param>
    /// <param name="protein">Protein, 0 to 1.</param>
    /// <param name="fat">Fat, 0 to 1.</param>
    /// <param name="carbohydrate">Carbohydrate without fibre, 0 to 1.</param>
    /// <param name="fibre">Fibre, 0 to 1.</param>
    /// <param name="ash">Ash (minerals, salt), 0 to 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">A share is negative, above one or not a number.</exception>
    /// <exception cref="ArgumentException">The shares do not add up to one within <see cref="SumTolerance"/>.</exception>
    internal FoodComposition(Ratio water, Ratio protein, Ratio fat, Ratio carbohydrate, Ratio fibre, Ratio ash)
    {
        WaterFraction = Share(water, "water", nameof(water));
        ProteinFraction = Share(protein, "protein", nameof(protein));
        FatFraction = Share(fat, "fat", nameof(fat));
        CarbohydrateFraction = Share(carbohydrate, "carbohydrate", nameof(carbohydrate));
        FibreFraction = Share(fibre, "fibre", nameof(fibre));
        AshFraction = Share(ash, "ash", nameof(ash));
        Sum = WaterFraction + ProteinFraction + FatFraction + CarbohydrateFraction + FibreFraction + AshFraction;
        if (Math.Abs(Sum - 1) > SumTolerance + 1e-12)
        {
            throw new ArgumentException(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"Water, protein, fat, carbohydrate, fibre and ash must add up to 100 %; these add up to {100 * Sum:0.##} %."),
                nameof(water));
        }
    }

    /// <summary>Mass share of water.</summary>
    public Ratio Water => Ratio.FromDecimalFractions(WaterFraction);

    internal double WaterFraction { get; }

    internal double ProteinFraction { get; }

    internal double FatFraction { get; }

    internal double CarbohydrateFraction { get; }

    internal double FibreFraction { get; }

    internal double AshFraction { get; }

    /// <summary>Sum as stated; the mixing rules divide by it so that rounding in a table costs no mass.</summary>
    internal double Sum { get; }

    /// <summary>A composition from decimal fractions, for tables in code.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A share is negative, above one or not a number.</exception>
    /// <exception cref="ArgumentException">The shares do not add up to one within <see cref="SumTolerance"/>.</exception>
    internal static FoodComposition FromDecimalFractions(
        double water, double protein = 0, double fat = 0, double carbohydrate = 0, double fibre = 0, double ash = 0) =>
        new(
            Ratio.FromDecimalFractions(water),
            Ratio.FromDecimalFractions(protein),
            Ratio.FromDecimalFractions(fat),
            Ratio.FromDecimalFractions(carbohydrate),
            Ratio.FromDecimalFractions(fibre),
            Ratio.FromDecimalFractions(ash));

    private static double Share(Ratio ratio, string what, string parameter) =>
        PhysicsRange.Within(ratio.DecimalFractions, 0, 1, "(as a share of the mass)", $"The {what}", parameter);
}
