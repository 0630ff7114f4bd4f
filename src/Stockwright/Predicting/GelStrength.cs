using UnitsNet;

namespace Stockwright.Predicting;

/// <summary>Strength, setting and melting of a gelatin gel (equations B.10 to B.14 in docs/equations-body.md).</summary>
public static class GelStrength
{
    /// <summary>Bloom the effective concentration is stated in, g.</summary>
    public const double ReferenceBloomGrams = 225;

    /// <summary>Exponent of strength in concentration (estimate, 1.7 to 2.0).</summary>
    internal const double ConcentrationExponent = 1.8;

    private const double JudgedAtHours = 12;

    /// <summary>Below this no network forms (B.12, estimate): 0.6 % for 150 Bloom and above, more for weaker gelatin.</summary>
    internal static Ratio SettingThreshold(Mass bloom) =>
        Ratio.FromPercent(bloom.Grams >= 150 ? 0.6 : 0.6 * Math.Pow(150 / Math.Max(bloom.Grams, 1), 0.75));

    /// <summary>Melting temperature, or null below the threshold (B.13, estimate; fit to 25 to 35 °C for mammals and birds).</summary>
    /// <param name="concentration">Gelatin by mass.</param>
    /// <param name="bloom">Its Bloom as it is now.</param>
    /// <param name="shift">From <see cref="ExtractionResult.MeltingShift"/>.</param>
    public static Temperature? Melting(Ratio concentration, Mass bloom, TemperatureDelta shift = default)
    {
        if (concentration < SettingThreshold(bloom) || bloom <= Mass.Zero)
        {
            return null;
        }

        double celsius = 25 + (3.7 * Math.Log(concentration.Percent)) + (3 * Math.Log(bloom.Grams / ReferenceBloomGrams)) + shift.Kelvins;
        return Temperature.FromDegreesCelsius(Math.Min(celsius, 35));
    }

    /// <summary>Setting temperature: 6 K below melting (4 to 8, estimate), or null below the threshold (B.13).</summary>
    internal static Temperature? Setting(Ratio concentration, Mass bloom, TemperatureDelta shift = default) =>
        Melting(concentration, bloom, shift) is { } melts ? melts - TemperatureDelta.FromKelvins(6) : null;

    /// <summary>Strength after a time in the fridge, over that after 17 hours (B.14, estimate); zero in the first half hour, 1.15 at most.</summary>
    /// <param name="time">Time since the liquor fell below its setting temperature.</param>
    public static double Firmness(TimeSpan time) => time.TotalHours < 0.5
        ? 0
        : Math.Min(1.15, 0.30 + (0.20 * Math.Log(1 + (2 * time.TotalHours))));

    internal static double EffectivePercent(double percent, double bloomGrams) => percent * Math.Sqrt(Math.Max(0, bloomGrams) / ReferenceBloomGrams);

    /// <summary>The effective concentration it stands like before the night is over: strength goes with the power 1.8 (B.14).</summary>
    internal static double EffectivePercentAfter(double effectivePercent, TimeSpan time) =>
        effectivePercent * Math.Pow(Math.Min(1, Firmness(time) / Firmness(TimeSpan.FromHours(JudgedAtHours))), 1 / ConcentrationExponent);
}
