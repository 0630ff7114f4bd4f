using UnitsNet;

namespace Stockwright.Measures;

/// <summary>
/// Rounds an amount to a step a cook can weigh or pour, never moving it by more than 2 %.
/// </summary>
/// <remarks>
/// The step depends on the size alone: each step is used from the size at which half of it is 2 % (or less).
/// Every such size is a whole number of the steps on both sides of it, so rounding twice changes nothing
/// and a larger amount never rounds below a smaller one. Below the last kitchen step the ladder goes on in tenths.
/// </remarks>
internal static class KitchenRounding
{
    // (from this size, round to this step), largest first.
    private static readonly (double From, double Step)[] s_metric =
    [
        (125_000, 1000), (25_000, 500), (2500, 100), (1250, 50), (250, 10), (125, 5), (25, 1), (12.5, 0.5), (2.5, 0.1), (1.25, 0.05), (0.25, 0.01),
    ];

    // Ounces: quarter, half and whole ounces, then quarter, half and whole pounds.
    private static readonly (double From, double Step)[] s_ounces =
    [
        (2000, 80), (400, 16), (200, 8), (100, 4), (25, 1), (12.5, 0.5), (6.25, 0.25), (3.25, 0.125), (1.25, 0.05), (0.25, 0.01),
    ];

    // Teaspoons: quarter teaspoons, quarter fluid ounces (1.5), whole fluid ounces (6), quarter cups (12), quarter quarts (48), quarts (192), gallons (768).
    private static readonly (double From, double Step)[] s_teaspoons =
    [
        (19_200, 768), (4800, 192), (1200, 48), (300, 12), (150, 6), (75, 3), (39, 1.5), (25, 1), (12.5, 0.5), (6.25, 0.25), (3.25, 0.125), (1.25, 0.05), (0.25, 0.01),
    ];

    /// <summary>Rounds a mass to a step a cook can weigh.</summary>
    /// <param name="mass">Any finite mass; a negative one rounds as its opposite.</param>
    /// <param name="system">The measures the cook reads in.</param>
    /// <exception cref="ArgumentOutOfRangeException">The mass is not a finite number.</exception>
    public static Mass Round(Mass mass, UnitSystem system) => system == UnitSystem.UsCustomary
        ? Mass.FromGrams(RoundOunces(mass.Grams / ExactFactors.OunceGrams) * ExactFactors.OunceGrams)
        : Mass.FromGrams(RoundMetric(mass.Grams));

    /// <summary>Rounds a volume to a step a cook can pour.</summary>
    /// <param name="volume">Any finite volume; a negative one rounds as its opposite.</param>
    /// <param name="system">The measures the cook reads in.</param>
    /// <exception cref="ArgumentOutOfRangeException">The volume is not a finite number.</exception>
    public static Volume Round(Volume volume, UnitSystem system) => system == UnitSystem.UsCustomary
        ? Volume.FromMilliliters(RoundTeaspoons(volume.Milliliters / ExactFactors.TeaspoonMillilitres) * ExactFactors.TeaspoonMillilitres)
        : Volume.FromMilliliters(RoundMetric(volume.Milliliters));

    /// <summary>Grams or millilitres.</summary>
    internal static double RoundMetric(double value) => RoundBy(s_metric, value);

    internal static double RoundOunces(double ounces) => RoundBy(s_ounces, ounces);

    internal static double RoundTeaspoons(double teaspoons) => RoundBy(s_teaspoons, teaspoons);

    /// <summary>Nearest multiple of a step; a half goes away from zero.</summary>
    internal static double ToStep(double value, double step)
    {
        // Dividing by the whole number of steps in one keeps 0.1 and 0.05 free of binary dust.
        double perUnit = Math.Round(1 / step);
        return step < 1 && Math.Abs((perUnit * step) - 1) < 1e-9
            ? Math.Round(value * perUnit, MidpointRounding.AwayFromZero) / perUnit
            : Math.Round(value / step, MidpointRounding.AwayFromZero) * step;
    }

    private static double RoundBy((double From, double Step)[] ladder, double value)
    {
        if (!double.IsFinite(value))
        {
            throw new ArgumentOutOfRangeException(nameof(value), value, "An amount is a finite number.");
        }

        double size = Math.Abs(value);
        if (size == 0)
        {
            return 0;
        }

        foreach ((double from, double step) in ladder)
        {
            if (size >= from)
            {
                return ToStep(value, step);
            }
        }

        // Smaller than any spoon or pocket scale: go on with a hundredth of the decade.
        double decade = Math.Pow(10, Math.Floor(Math.Log10(size)));
        return Math.Round(value / decade * 100, MidpointRounding.AwayFromZero) * decade / 100;
    }
}
