using Stockwright.Physics;
using Stockwright.Physics.Conduction;

namespace Stockwright.Cooling;

/// <summary>
/// The lid of one vessel: a thin plate that vapour warms from below and the air cools from above (equations C.18 and C.19 in
/// docs/equations-cooling.md). What condenses on it drips back, so it costs no water.
/// </summary>
/// <param name="heatCapacity">J/K, zero or more.</param>
/// <param name="area">m2.</param>
/// <param name="celsius">Temperature it is put on with.</param>
internal sealed class LidState(double heatCapacity, double area, double celsius)
{
    /// <summary>Chilton and Colburn's exponent of the Lewis number, 0.86 for vapour in air.</summary>
    private const double LewisFactor = 0.904;
    private const double GasConstant = 287.05;

    private double under;
    private double over;
    private double air;
    private ConductionBoundary face;

    /// <summary>Temperature now, C.</summary>
    internal double Celsius { get; private set; } = celsius;

    /// <summary>Heat above 0 C, J.</summary>
    internal double HeldJoules => heatCapacity * Celsius;

    /// <summary>Film between surface and lid: convection with the vapour it carries, and radiation (C.18), W/m2K.</summary>
    internal static double UnderFilm(double surfaceCelsius, double lidCelsius, double diameter, double emissivity, double airPascals)
    {
        double surface = Math.Max(surfaceCelsius, 0) + 273.15;
        double lid = Math.Max(lidCelsius, 0) + 273.15;
        double radiation = SurfaceLosses.RadiationWattsPerSquareMetreKelvin(
            surface, lid, 1 / ((1 / PotLosses.WaterEmissivity) + (1 / emissivity) - 1));
        double convection = SurfaceLosses.LevelPlateFacingUpWattsPerSquareMetreKelvin(surface, lid, diameter, airPascals);
        if (surface - lid < 0.01)
        {
            return radiation + convection;
        }

        // Saturated at both ends: vapour and heat leave by the same film.
        double vapour = Vapour(surface) - Vapour(lid);
        double density = airPascals / (GasConstant * (surface + lid) / 2);
        double latent = vapour * LiquidWaterFit.LatentHeatJoulesPerKilogram(((surface + lid) / 2) - 273.15)
            / (density * AirFilm.SpecificHeatJoulesPerKilogramKelvin * LewisFactor * (surface - lid));
        return radiation + (convection * (1 + latent));

        static double Vapour(double kelvins) => MoistAir.VapourKilogramsPerCubicMetre(SaturationLine.SaturationPressurePascals(kelvins), kelvins);
    }

    /// <summary>What the surface meets over a step: the films, with the lid between them warming or cooling (C.19).</summary>
    /// <param name="underFilm">Below the lid, W/m2K.</param>
    /// <param name="overFilm">Above it.</param>
    /// <param name="airCelsius">Above it.</param>
    /// <param name="seconds">Length of the step.</param>
    internal ConductionBoundary Face(double underFilm, double overFilm, double airCelsius, double seconds)
    {
        (under, over, air) = (underFilm, overFilm, airCelsius);
        double sum = under + over;
        double exponent = Exponent(seconds);
        double followed = exponent < 1e-6 ? exponent / 2 : 1 - ((1 - Math.Exp(-exponent)) / exponent);
        double conductance = under * (1 - (followed * under / sum));
        face = ConductionBoundary.Convective(conductance, under / conductance * ((followed * over / sum * air) + ((1 - followed) * Celsius)));
        return face;
    }

    /// <summary>Takes what left the surface in the step and gives back what went on to the air, J.</summary>
    internal double Take(double joules, double seconds)
    {
        double surface = face.Celsius + (joules / (face.WattsPerSquareMetreKelvin * area * seconds));
        double goal = ((under * surface) + (over * air)) / (under + over);
        double after = goal + ((Celsius - goal) * Math.Exp(-Exponent(seconds)));
        double onward = joules - (heatCapacity * (after - Celsius));
        Celsius = after;
        return onward;
    }

    private double Exponent(double seconds) => heatCapacity > 0 ? (under + over) * area * seconds / heatCapacity : double.PositiveInfinity;
}
