using Stockwright.Physics;

namespace Stockwright.Cooling;

/// <summary>
/// Natural convection of water along an upright wall, inside a pot or in a bath around it (equation C.2 in
/// docs/equations-cooling.md; Churchill and Chu 1975 [from memory]). The lift is the difference of density itself, so that
/// the maximum at 4 °C is right.
/// </summary>
internal static class WaterFilm
{
    private const int Most = 110;
    private const double SpecificHeat = 4186;

    private static readonly (double Conductivity, double KinematicTimesDiffusive, double PrandtlFactor)[] Table = Tabulate();

    /// <summary>C.2; temperatures outside 0 to 110 °C take the properties at the nearer end.</summary>
    internal static double VerticalWallWattsPerSquareMetreKelvin(double bulkCelsius, double wallCelsius, double heightMetres)
    {
        double film = Math.Clamp((bulkCelsius + wallCelsius) / 2, 0, Most - 1e-9);
        int below = (int)film;
        double part = film - below;
        (double k0, double n0, double p0) = Table[below];
        (double k1, double n1, double p1) = Table[below + 1];
        double conductivity = k0 + (part * (k1 - k0));
        double product = n0 + (part * (n1 - n0));
        double factor = p0 + (part * (p1 - p0));
        double density = LiquidWaterFit.DensityKilogramsPerCubicMetre(film);
        double lift = Math.Abs(LiquidWaterFit.DensityKilogramsPerCubicMetre(bulkCelsius) - LiquidWaterFit.DensityKilogramsPerCubicMetre(wallCelsius)) / density;
        double rayleigh = 9.80665 * lift * heightMetres * heightMetres * heightMetres / product;
        double root = 0.825 + (0.387 * Math.Sqrt(Math.Cbrt(rayleigh)) / factor);
        return root * root * conductivity / heightMetres;
    }

    private static (double Conductivity, double KinematicTimesDiffusive, double PrandtlFactor)[] Tabulate()
    {
        var table = new (double, double, double)[Most + 1];
        for (int celsius = 0; celsius <= Most; celsius++)
        {
            double kelvins = celsius + 273.15;
            double conductivity = LiquidWaterTransport.ConductivityWattsPerMetreKelvin(kelvins);
            double viscosity = LiquidWaterTransport.ViscosityPascalSeconds(kelvins);
            double density = LiquidWaterFit.DensityKilogramsPerCubicMetre(celsius);
            double prandtl = viscosity * SpecificHeat / conductivity;
            table[celsius] = (
                conductivity,
                viscosity / density * conductivity / (density * SpecificHeat),
                Math.Pow(1 + Math.Pow(0.492 / prandtl, 9.0 / 16), 8.0 / 27));
        }

        return table;
    }
}
