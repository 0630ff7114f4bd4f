using UnitsNet;

namespace Stockwright.Strength;

/// <summary>So much stock of a strength, defatted. All strengths are by mass, so amounts are turned into mass first.</summary>
/// <param name="Volume">Volume, measured cold.</param>
/// <param name="Gelatin">Gelatin by mass.</param>
/// <param name="Salt">Salt added, by mass; juices and minerals of the bones are not counted.</param>
public sealed record StockAmount(Volume Volume, Ratio Gelatin, Ratio Salt = default)
{
    /// <summary>Least and most stock a sum is made with.</summary>
    public static readonly (Volume Least, Volume Most) VolumeRange = (Volume.FromMilliliters(10), Volume.FromLiters(1000));

    /// <summary>Least and most glace.</summary>
    public static readonly (Volume Least, Volume Most) GlaceRange = (Volume.FromMilliliters(1), Volume.FromLiters(100));

    /// <summary>Least and most gelatin by mass.</summary>
    public static readonly (Ratio Least, Ratio Most) GelatinRange = (Ratio.Zero, Ratio.FromPercent(60));

    /// <summary>Least and most salt by mass.</summary>
    public static readonly (Ratio Least, Ratio Most) SaltRange = (Ratio.Zero, Ratio.FromPercent(20));

    private const double WaterKilogramsPerLitre = 0.998;
    private const double PerPercent = 0.0029;

    /// <summary>Density at 20 °C from the matter dissolved (B.17: 0.998 + 0.0029 kg/L a per cent, computed from the parts).</summary>
    public Density Density => DensityOf(Gelatin + Salt);

    /// <summary>Mass.</summary>
    public Mass Mass => Volume * Density;

    internal static StockAmount FromMass(Mass mass, Ratio gelatin, Ratio salt) => new(mass / DensityOf(gelatin + salt), gelatin, salt);

    internal static Density DensityOf(Ratio dissolved) =>
        Density.FromKilogramsPerLiter(WaterKilogramsPerLitre + (PerPercent * dissolved.Percent));

    /// <summary>What is wrong with it in words, or null.</summary>
    internal string? Fault() => !(Volume.Liters > 0) || Volume.Liters > 1000 ? "The stock must be more than nothing, and at most 1000 L."
        : !(Gelatin.Percent is >= 0 and <= 60) ? "The gelatin lies between 0 and 60 %."
        : !(Salt.Percent is >= 0 and <= 20) ? "The salt lies between 0 and 20 %."
        : null;
}
