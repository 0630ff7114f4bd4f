using Stockwright.Cooling;
using Stockwright.Physics;
using UnitsNet;

namespace Stockwright.Keeping;

/// <summary>Basic shapes of the fast formulas.</summary>
internal enum FreezingShape
{
    /// <summary>A flat slab, cold on both faces; its size is the full thickness.</summary>
    Slab,

    /// <summary>A long cylinder; its size is the diameter.</summary>
    Cylinder,

    /// <summary>A sphere; its size is the diameter.</summary>
    Sphere,
}

/// <summary>What the fast formulas need to know of a food.</summary>
/// <param name="Unfrozen">Density unfrozen.</param>
/// <param name="Frozen">Density frozen.</param>
/// <param name="UnfrozenHeat">Specific heat unfrozen.</param>
/// <param name="FrozenHeat">Specific heat frozen.</param>
/// <param name="Latent">Latent heat of its water, per mass of food.</param>
/// <param name="FrozenConductivity">Conductivity frozen.</param>
/// <param name="FreezingPoint">Where it begins to freeze.</param>
internal sealed record FreezingFood(
    Density Unfrozen, Density Frozen, SpecificEntropy UnfrozenHeat, SpecificEntropy FrozenHeat, SpecificEnergy Latent, ThermalConductivity FrozenConductivity, Temperature FreezingPoint)
{
    /// <summary>Stock of 97 % water.</summary>
    public static FreezingFood Stock { get; } = new(
        Density.FromKilogramsPerCubicMeter(1000),
        Density.FromKilogramsPerCubicMeter(1000),
        SpecificEntropy.FromJoulesPerKilogramKelvin(4100),
        SpecificEntropy.FromJoulesPerKilogramKelvin(2060),
        SpecificEnergy.FromJoulesPerKilogram(0.97 * FreezingStock.LatentHeat),
        ThermalConductivity.FromWattsPerMeterKelvin(2.1),
        Temperature.FromDegreesCelsius(-0.5));
}

/// <summary>Freezing and thawing times by formula, to set beside the enthalpy method (equations C.53 to C.56 in docs/equations-cooling.md).</summary>
internal static class FreezingFormulas
{
    /// <summary>Plank's time (C.53): from all water at its freezing point to all of it frozen; no cooling before or after.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The air is not colder than the freezing point, or the size or the film is not above zero.</exception>
    public static TimeSpan Plank(FreezingFood food, FreezingShape shape, Length size, HeatTransferCoefficient film, Temperature air)
    {
        ArgumentNullException.ThrowIfNull(food);
        (double a, double h, double drive) = Checked(food, size, film, air);
        (double p, double r) = shape switch
        {
            FreezingShape.Slab => (1.0 / 2, 1.0 / 8),
            FreezingShape.Cylinder => (1.0 / 4, 1.0 / 16),
            _ => (1.0 / 6, 1.0 / 24),
        };
        return Plank(food, p, r, a, h, drive);
    }

    /// <summary>Pham's time (C.54; Pham 1986 [from memory]) from a start to a final centre temperature.</summary>
    /// <param name="food">The food.</param>
    /// <param name="shapeFactor">How many times faster than a slab as thick: 1 slab, 2 long cylinder, 3 sphere.</param>
    /// <param name="half">Half thickness, or radius.</param>
    /// <param name="film">Coefficient at the surface.</param>
    /// <param name="air">Temperature of the freezer.</param>
    /// <param name="start">Starting temperature.</param>
    /// <param name="centre">Final temperature at the centre, warmer than the air.</param>
    /// <exception cref="ArgumentOutOfRangeException">The temperatures are not in order, or a size is not above zero.</exception>
    public static TimeSpan Pham(FreezingFood food, double shapeFactor, Length half, HeatTransferCoefficient film, Temperature air, Temperature start, Temperature centre)
    {
        ArgumentNullException.ThrowIfNull(food);
        (double d, double h, _) = Checked(food, half, film, air);
        double ta = air.DegreesCelsius;
        double tc = centre.DegreesCelsius;
        double mean = 1.8 + (0.263 * tc) + (0.105 * ta);
        double ti = start.DegreesCelsius;
        if (!(tc > ta && ti > mean && mean > ta && mean > tc))
        {
            throw new ArgumentOutOfRangeException(nameof(centre), centre, "The centre must end warmer than the freezer and frozen, and start unfrozen.");
        }

        double first = food.Unfrozen.KilogramsPerCubicMeter * food.UnfrozenHeat.JoulesPerKilogramKelvin * (ti - mean);
        double second = food.Frozen.KilogramsPerCubicMeter
            * (food.Latent.JoulesPerKilogram + (food.FrozenHeat.JoulesPerKilogramKelvin * (mean - tc)));
        double biot = h * d / food.FrozenConductivity.WattsPerMeterKelvin;
        double seconds = d / (PhysicsRange.Within(shapeFactor, 1, 3, "", "The shape factor", nameof(shapeFactor)) * h)
            * ((first / (((ti + mean) / 2) - ta)) + (second / (mean - ta))) * (1 + (biot / 2));
        return TimeSpan.FromSeconds(seconds);
    }

    /// <summary>Pham's shape factor of an upright finite cylinder (C.55 [from memory]); good at the low Biot numbers of a home freezer.</summary>
    /// <param name="slenderness">Longer over shorter of diameter and height, one or more.</param>
    /// <param name="biot">Film times half the shorter of the two, over the frozen conductivity; above zero.</param>
    internal static double FiniteCylinderFactor(double slenderness, double biot)
    {
        double x = 2.32 * Math.Pow(slenderness, -1.77);
        double share = x / (Math.Pow(biot, 1.34) + x);
        double ends = (share / slenderness) + ((1 - share) * 0.73 / Math.Pow(slenderness, 2.5));
        return 1 + (2 * ends);
    }

    /// <summary>Thawing of a slab until its centre reaches 0 °C (C.56; Cleland, Cleland, Earle and Byrne 1986 [from memory]).</summary>
    /// <param name="food">The food.</param>
    /// <param name="thickness">Full thickness.</param>
    /// <param name="film">Coefficient at the surface.</param>
    /// <param name="air">Temperature of air or water around it, above the freezing point.</param>
    /// <param name="start">Starting temperature, below the freezing point.</param>
    /// <param name="unfrozenConductivity">Conductivity of what has thawed.</param>
    /// <exception cref="ArgumentOutOfRangeException">The temperatures are not in order, or a size is not above zero.</exception>
    public static TimeSpan ThawSlab(FreezingFood food, Length thickness, HeatTransferCoefficient film, Temperature air, Temperature start, ThermalConductivity unfrozenConductivity)
    {
        ArgumentNullException.ThrowIfNull(food);
        double freezing = food.FreezingPoint.DegreesCelsius;
        double drive = air.DegreesCelsius - freezing;
        if (!(drive > 0 && start.DegreesCelsius < freezing))
        {
            throw new ArgumentOutOfRangeException(nameof(air), air, "To thaw, the food must be frozen and the air warmer than its freezing point.");
        }

        double d = PhysicsRange.Within(thickness.Meters, 0.001, 2, "m", "The thickness", nameof(thickness));
        double h = PhysicsRange.Within(film.WattsPerSquareMeterKelvin, 0.1, 1e5, "W/m2K", "The film", nameof(film));
        double k = unfrozenConductivity.WattsPerMeterKelvin;

        // From -10 to 0 C by the material itself.
        FreezingStock material = new(
            freezing,
            food.Latent.JoulesPerKilogram / FreezingStock.LatentHeat,
            food.Frozen.KilogramsPerCubicMeter,
            food.UnfrozenHeat.JoulesPerKilogramKelvin,
            food.FrozenHeat.JoulesPerKilogramKelvin,
            k,
            food.FrozenConductivity.WattsPerMeterKelvin);
        double enthalpy = material.JoulesPerCubicMetre(0) - material.JoulesPerCubicMetre(-10);
        double stefan = food.Unfrozen.KilogramsPerCubicMeter * food.UnfrozenHeat.JoulesPerKilogramKelvin * drive / enthalpy;
        double plank = food.Frozen.KilogramsPerCubicMeter * food.FrozenHeat.JoulesPerKilogramKelvin * (freezing - start.DegreesCelsius) / enthalpy;
        double p = 0.5 * (0.7754 + (2.2828 * stefan * plank));
        double r = 0.125 * (0.4271 + (2.1220 * stefan) - (1.4847 * stefan * stefan));
        return TimeSpan.FromSeconds(enthalpy / drive * ((p * d / h) + (r * d * d / k)));
    }

    private static TimeSpan Plank(FreezingFood food, double p, double r, double size, double film, double drive) =>
        TimeSpan.FromSeconds(food.Unfrozen.KilogramsPerCubicMeter * food.Latent.JoulesPerKilogram / drive
            * ((p * size / film) + (r * size * size / food.FrozenConductivity.WattsPerMeterKelvin)));

    private static (double Size, double Film, double Drive) Checked(FreezingFood food, Length size, HeatTransferCoefficient film, Temperature air)
    {
        double drive = food.FreezingPoint.DegreesCelsius - air.DegreesCelsius;
        return (
            PhysicsRange.Within(size.Meters, 0.001, 2, "m", "The size", nameof(size)),
            PhysicsRange.Within(film.WattsPerSquareMeterKelvin, 0.1, 1e5, "W/m2K", "The film", nameof(film)),
            drive > 0 ? drive : throw new ArgumentOutOfRangeException(nameof(air), air, "The freezer must be colder than the freezing point."));
    }
}
