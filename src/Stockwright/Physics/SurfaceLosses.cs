namespace Stockwright.Physics;

/// <summary>
/// Coefficients of heat loss from a surface to quiet air and to the walls of a room
/// (equations P.28 to P.30 in docs/equations-physics.md).
/// </summary>
internal static class SurfaceLosses
{
    private const double StefanBoltzmann = 5.670374419e-8;

    // [1 + (0.492/Pr)^(9/16)]^(8/27) for air; Pr stays within 1 % of 0.71 from 0 to 100 C, which moves this by 0.1 %.
    private const double PrandtlFactor = 1.1929;

    /// <summary>P.28 without range checks.</summary>
    internal static double VerticalWallWattsPerSquareMetreKelvin(double surfaceKelvins, double roomKelvins, double heightMetres, double airPascals)
    {
        double conductivity = AirFilm.ConductivityWattsPerMetreKelvin((surfaceKelvins + roomKelvins) / 2);
        double rayleigh = AirFilm.Rayleigh(surfaceKelvins, roomKelvins, heightMetres, airPascals, conductivity);
        double root = 0.825 + (0.387 * Math.Sqrt(Math.Cbrt(rayleigh)) / PrandtlFactor);
        return root * root * conductivity / heightMetres;
    }

    /// <summary>P.29 without range checks; characteristic length is area over perimeter, a quarter of the diameter.</summary>
    internal static double LevelPlateFacingUpWattsPerSquareMetreKelvin(double surfaceKelvins, double roomKelvins, double diameterMetres, double airPascals)
    {
        double length = diameterMetres / 4;
        double conductivity = AirFilm.ConductivityWattsPerMetreKelvin((surfaceKelvins + roomKelvins) / 2);
        double rayleigh = AirFilm.Rayleigh(surfaceKelvins, roomKelvins, length, airPascals, conductivity);
        double fourthRoot = Math.Sqrt(Math.Sqrt(rayleigh));
        double nusselt = surfaceKelvins < roomKelvins
            ? 0.27 * fourthRoot
            : Math.Max(0.54 * fourthRoot, 0.15 * Math.Cbrt(rayleigh));
        return nusselt * conductivity / length;
    }

    /// <summary>P.30 without range checks.</summary>
    internal static double RadiationWattsPerSquareMetreKelvin(double surfaceKelvins, double roomKelvins, double emissivity) =>
        emissivity * StefanBoltzmann * ((surfaceKelvins * surfaceKelvins) + (roomKelvins * roomKelvins)) * (surfaceKelvins + roomKelvins);
}
