using Stockwright.Physics;

namespace Stockwright.Tests.Physics;

/// <summary>
/// Exact formulas that no page asks for, to hold the pot and the cooling against (P.16 and P.33 to P.36 in docs/equations-physics.md). SI units, temperature
/// in kelvin where it stands alone, unchecked.
/// </summary>
internal static class Reference
{
    private const double GasConstant = 8.31446261815324;

    /// <summary>How much dissolved matter lifts the boiling point, K (P.16, ideal dilute solution); 0.15 K for 9 g/kg of salt, so it is left out of the plans.</summary>
    public static double BoilingPointElevation(double molesPerKilogram, double particlesPerMole, double boilingKelvins) =>
        particlesPerMole * GasConstant * boilingKelvins * boilingKelvins / SaturatedWater.LatentHeatJoulesPerKilogram(boilingKelvins) * molesPerKilogram;

    /// <summary>Time an even body takes from one temperature to another, s (P.33).</summary>
    public static double CoolingSeconds(double wattsPerKelvin, double joulesPerKelvin, double start, double end, double surroundings) =>
        joulesPerKelvin / wattsPerKelvin * Math.Log((start - surroundings) / (end - surroundings));

    /// <summary>Temperature of an even body after a time, on the scale given (P.34).</summary>
    public static double TemperatureAfter(double wattsPerKelvin, double joulesPerKelvin, double start, double surroundings, double seconds) =>
        surroundings + ((start - surroundings) * Math.Exp(-wattsPerKelvin / joulesPerKelvin * seconds));

    /// <summary>Shortest time to warm a filled pot, s (P.35): a floor under every prediction.</summary>
    public static double HeatUpSeconds(double joulesPerKelvin, double rise, double watts, double efficiency) => joulesPerKelvin * rise / (watts * efficiency);

    /// <summary>Water boiled off by the heat left over at the boil, kg/s (P.36).</summary>
    public static double BoilOff(double netWatts, double boilingKelvins) => netWatts / SaturatedWater.LatentHeatJoulesPerKilogram(boilingKelvins);
}
