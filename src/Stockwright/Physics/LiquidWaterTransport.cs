namespace Stockwright.Physics;

/// <summary>
/// Viscosity and thermal conductivity of liquid water at 0.1 MPa (equations P.11 and P.12 in docs/equations-physics.md).
/// Source: IAPWS SR6-08.
/// </summary>
internal static class LiquidWaterTransport
{
    /// <summary>Upper end of the range of the source, 110 °C; below 0 °C the water is supercooled.</summary>
    internal const double MostKelvins = 383.15;

    internal static double ViscosityPascalSeconds(double kelvins)
    {
        double log = Math.Log(kelvins / 300);
        return 1e-6 * ((280.68 * Math.Exp(-1.9 * log))
            + (511.45 * Math.Exp(-7.7 * log))
            + (61.131 * Math.Exp(-19.6 * log))
            + (0.45903 * Math.Exp(-40 * log)));
    }

    internal static double ConductivityWattsPerMetreKelvin(double kelvins)
    {
        double log = Math.Log(kelvins / 300);
        return (0.80201 * Math.Exp(-0.32 * log))
            - (0.25992 * Math.Exp(-5.7 * log))
            + (0.10024 * Math.Exp(-12 * log))
            - (0.032005 * Math.Exp(-15 * log));
    }
}
