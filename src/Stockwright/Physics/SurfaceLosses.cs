using UnitsNet;

namespace Stockwright.Physics;

/// <summary>
/// Coefficients of heat loss from a surface to quiet air and to the walls of a room
/// (equations P.28 to P.30 in docs/equations-physics.md).
/// </summary>
public static class SurfaceLosses
{
    private const double StefanBoltzmann = 5.670374419e-8;

    // [1 + (0.492/Pr)^(9/16)]^(8/27) for air; Pr stays within 1 % of 0.71 from 0 to 100 C, which moves this by 0.1 %.
    private const double PrandtlFactor = 1.1929;

    /// <summary>Natural convection on a vertical wall in air (P.28, Churchill and Chu 1975 [from memory]).</summary>
    /// <param name="surface">Wall temperature, -40 to 150 °C.</param>
    /// <param name="room">Air temperature, -40 to 150 °C.</param>
    /// <param name="height">Height of the warm wall, 1 mm to 5 m.</param>
    /// <param name="air">Air pressure, 20 to 110 kPa.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument lies outside its range.</exception>
    public static HeatTransferCoefficient VerticalWall(Temperature surface, Temperature room, Length height, Pressure air) =>
        HeatTransferCoefficient.FromWattsPerSquareMeterKelvin(VerticalWallWattsPerSquareMetreKelvin(
            Surface(surface), Room(room), Size(height, nameof(height)), Air(air)));

    /// <summary>
    /// Natural convection on a level plate facing up in air (P.29, McAdams form as in Incropera [from memory]);
    /// a plate colder than the room is held down by its own cold air.
    /// </summary>
    /// <param name="surface">Plate temperature, -40 to 150 °C.</param>
    /// <param name="room">Air temperature, -40 to 150 °C.</param>
    /// <param name="diameter">Diameter of the round plate, 1 mm to 5 m.</param>
    /// <param name="air">Air pressure, 20 to 110 kPa.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument lies outside its range.</exception>
    public static HeatTransferCoefficient LevelPlateFacingUp(Temperature surface, Temperature room, Length diameter, Pressure air) =>
        HeatTransferCoefficient.FromWattsPerSquareMeterKelvin(LevelPlateFacingUpWattsPerSquareMetreKelvin(
            Surface(surface), Room(room), Size(diameter, nameof(diameter)), Air(air)));

    /// <summary>Radiation to the room, as a coefficient on the temperature difference (P.30).</summary>
    /// <param name="surface">Surface temperature, -40 to 150 °C.</param>
    /// <param name="room">Room temperature, -40 to 150 °C.</param>
    /// <param name="emissivity">0 to 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument lies outside its range.</exception>
    public static HeatTransferCoefficient Radiation(Temperature surface, Temperature room, Ratio emissivity) =>
        HeatTransferCoefficient.FromWattsPerSquareMeterKelvin(RadiationWattsPerSquareMetreKelvin(
            Surface(surface),
            Room(room),
            PhysicsRange.Within(emissivity.DecimalFractions, 0, 1, "(as a fraction)", "The emissivity", nameof(emissivity))));

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

    private static double Surface(Temperature surface) =>
        PhysicsRange.Kelvins(surface, 233.15, 423.15, "The surface temperature", nameof(surface));

    private static double Room(Temperature room) =>
        PhysicsRange.Kelvins(room, 233.15, 423.15, "The air temperature", nameof(room));

    private static double Size(Length length, string parameter) =>
        PhysicsRange.Within(length.Meters, 0.001, 5, "m", "The size of the surface", parameter);

    private static double Air(Pressure air) =>
        PhysicsRange.Within(air.Pascals, 20e3, 110e3, "Pa", "The air pressure", nameof(air));
}
