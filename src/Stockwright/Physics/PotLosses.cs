namespace Stockwright.Physics;

/// <summary>
/// Steady heat given off by the sides and the top of a pot, without evaporation
/// (equations P.31 and P.32 in docs/equations-physics.md). Unchecked; negative when the pot is colder than the room.
/// </summary>
internal static class PotLosses
{
    /// <summary>Emissivity of a water surface (0.90 to 0.95 in the handbooks [from memory]).</summary>
    internal const double WaterEmissivity = 0.95;

    /// <summary>P.31: wetted side wall, convection and radiation.</summary>
    internal static double SideWatts(double diameterMetres, double wettedHeightMetres, double wallCelsius, double roomCelsius, double emissivity, double airPascals)
    {
        if (wettedHeightMetres <= 0)
        {
            return 0;
        }

        double wall = wallCelsius + 273.15;
        double room = roomCelsius + 273.15;
        double coefficient = SurfaceLosses.VerticalWallWattsPerSquareMetreKelvin(wall, room, wettedHeightMetres, airPascals)
            + SurfaceLosses.RadiationWattsPerSquareMetreKelvin(wall, room, emissivity);
        return coefficient * Math.PI * diameterMetres * wettedHeightMetres * (wallCelsius - roomCelsius);
    }

    /// <summary>P.32: open liquid surface (emissivity <see cref="WaterEmissivity"/>) or top of a lid (that of its material), convection and radiation.</summary>
    internal static double TopConvectionRadiationWatts(double diameterMetres, double surfaceCelsius, double roomCelsius, double emissivity, double airPascals)
    {
        double surface = surfaceCelsius + 273.15;
        double room = roomCelsius + 273.15;
        double coefficient = SurfaceLosses.LevelPlateFacingUpWattsPerSquareMetreKelvin(surface, room, diameterMetres, airPascals)
            + SurfaceLosses.RadiationWattsPerSquareMetreKelvin(surface, room, emissivity);
        return coefficient * Math.PI / 4 * diameterMetres * diameterMetres * (surfaceCelsius - roomCelsius);
    }
}
