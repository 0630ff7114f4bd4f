using UnitsNet;

namespace Stockwright.Keeping;

/// <summary>A film around a portion with its range, eight times in ten within it.</summary>
/// <param name="Central">Best single value.</param>
/// <param name="Low">Weak end.</param>
/// <param name="High">Strong end.</param>
public sealed record FilmRange(HeatTransferCoefficient Central, HeatTransferCoefficient Low, HeatTransferCoefficient High)
{
    /// <summary>A still freezer or fridge: 8 (6 to 10) W/m2K.</summary>
    internal static FilmRange StillAir { get; } = Of(8, 6, 10);

    /// <summary>Cold water that is changed or runs slowly, around a bag or tub: 200 (100 to 500) W/m2K, our estimate.</summary>
    public static FilmRange ChangedWater { get; } = Of(200, 100, 500);

    /// <summary>In W/m2K.</summary>
    internal static FilmRange Of(double central, double low, double high) => new(
        HeatTransferCoefficient.FromWattsPerSquareMeterKelvin(central),
        HeatTransferCoefficient.FromWattsPerSquareMeterKelvin(low),
        HeatTransferCoefficient.FromWattsPerSquareMeterKelvin(high));
}
