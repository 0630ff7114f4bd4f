namespace Stockwright.Physics;

/// <summary>
/// Dry air at the film temperature (equations P.25 to P.27 in docs/equations-physics.md).
/// Source: viscosity and conductivity of ISO 2533, U.S. Standard Atmosphere 1976 [from memory].
/// </summary>
internal static class AirFilm
{
    internal const double SpecificHeatJoulesPerKilogramKelvin = 1006;

    /// <summary>P.25, Sutherland's form.</summary>
    internal static double ViscosityPascalSeconds(double kelvins) => 1.458e-6 * kelvins * Math.Sqrt(kelvins) / (kelvins + 110.4);

    /// <summary>P.26.</summary>
    internal static double ConductivityWattsPerMetreKelvin(double kelvins) =>
        2.64638e-3 * kelvins * Math.Sqrt(kelvins) / (kelvins + (245.4 * Math.Exp(-27.631021 / kelvins)));

    /// <summary>P.27: Rayleigh number; the air between a surface and a room, always positive.</summary>
    internal static double Rayleigh(double surfaceKelvins, double roomKelvins, double lengthMetres, double airPascals, double conductivity)
    {
        double film = (surfaceKelvins + roomKelvins) / 2;
        double density = airPascals / (MoistAir.DryAirGasConstant * film);
        double difference = Math.Abs(surfaceKelvins - roomKelvins);
        return 9.80665 / film * difference * lengthMetres * lengthMetres * lengthMetres
            * density * density * SpecificHeatJoulesPerKilogramKelvin / (ViscosityPascalSeconds(film) * conductivity);
    }
}
