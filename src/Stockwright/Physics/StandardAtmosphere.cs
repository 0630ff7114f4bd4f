using UnitsNet;

namespace Stockwright.Physics;

/// <summary>
/// Air pressure against altitude in the standard atmosphere (equation P.15 in docs/equations-physics.md).
/// Source: ISO 2533 / ICAO Doc 7488, troposphere.
/// </summary>
public static class StandardAtmosphere
{
    /// <summary>Standard pressure at sea level.</summary>
    public static Pressure SeaLevel { get; } = Pressure.FromPascals(101325);

    /// <summary>
    /// Pressure at an altitude. The standard counts in geopotential metres; the difference from map metres is
    /// 0.6 m at 2000 m and is left out. The day's weather moves the true pressure by some 30 hPa, so a barometer beats this.
    /// </summary>
    /// <param name="altitude">-400 to 11000 m.</param>
    /// <exception cref="ArgumentOutOfRangeException">The altitude lies outside that range.</exception>
    public static Pressure PressureAt(Length altitude) =>
        Pressure.FromPascals(PressurePascals(PhysicsRange.Within(altitude.Meters, -400, 11000, "m", "The altitude", nameof(altitude))));

    internal static double PressurePascals(double altitudeMetres) =>
        101325 * Math.Pow(1 - (0.0065 * altitudeMetres / 288.15), 5.25588);
}
