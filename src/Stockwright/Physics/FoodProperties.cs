using UnitsNet;

namespace Stockwright.Physics;

/// <summary>
/// Density, specific heat and conductivity of unfrozen food from its composition
/// (equations P.17 to P.20 in docs/equations-physics.md).
/// Source: Choi and Okos 1986.
/// </summary>
/// <remarks>
/// -40 to 150 °C. Below 0 °C the water counts as unfrozen (supercooled): ice is not part of these equations.
/// Conductivity mixes the parts in parallel, which suits wet stock and flesh and reads high for porous food.
/// </remarks>
internal static class FoodProperties
{
    private const double LeastKelvins = 233.15;
    private const double MostKelvins = 423.15;

    /// <summary>Density without pores (P.18).</summary>
    /// <param name="composition">What the food is made of.</param>
    /// <param name="temperature">-40 to 150 °C.</param>
    /// <param name="water">Equations for the water.</param>
    /// <exception cref="ArgumentOutOfRangeException">The temperature lies outside that range, or the water model is unknown.</exception>
    public static Density Density(FoodComposition composition, Temperature temperature, FoodWater water = FoodWater.Iapws)
    {
        ArgumentNullException.ThrowIfNull(composition);
        return UnitsNet.Density.FromKilogramsPerCubicMeter(
            DensityKilogramsPerCubicMetre(composition, Celsius(temperature), Known(water)));
    }

    /// <summary>Specific heat at constant pressure (P.19).</summary>
    /// <param name="composition">What the food is made of.</param>
    /// <param name="temperature">-40 to 150 °C.</param>
    /// <param name="water">Equations for the water.</param>
    /// <exception cref="ArgumentOutOfRangeException">The temperature lies outside that range, or the water model is unknown.</exception>
    public static SpecificEntropy SpecificHeat(FoodComposition composition, Temperature temperature, FoodWater water = FoodWater.Iapws)
    {
        ArgumentNullException.ThrowIfNull(composition);
        return SpecificEntropy.FromJoulesPerKilogramKelvin(
            SpecificHeatJoulesPerKilogramKelvin(composition, Celsius(temperature), Known(water)));
    }

    /// <summary>Thermal conductivity, parts in parallel (P.20).</summary>
    /// <param name="composition">What the food is made of.</param>
    /// <param name="temperature">-40 to 150 °C.</param>
    /// <param name="water">Equations for the water.</param>
    /// <exception cref="ArgumentOutOfRangeException">The temperature lies outside that range, or the water model is unknown.</exception>
    public static ThermalConductivity Conductivity(FoodComposition composition, Temperature temperature, FoodWater water = FoodWater.Iapws)
    {
        ArgumentNullException.ThrowIfNull(composition);
        return ThermalConductivity.FromWattsPerMeterKelvin(
            ConductivityWattsPerMetreKelvin(composition, Celsius(temperature), Known(water)));
    }

    internal static double DensityKilogramsPerCubicMetre(FoodComposition food, double celsius, FoodWater water = FoodWater.Iapws) =>
        food.Sum / (
            (food.WaterFraction / WaterDensity(celsius, water))
            + (food.ProteinFraction / ProteinDensity(celsius))
            + (food.FatFraction / FatDensity(celsius))
            + (food.CarbohydrateFraction / CarbohydrateDensity(celsius))
            + (food.FibreFraction / FibreDensity(celsius))
            + (food.AshFraction / AshDensity(celsius)));

    internal static double SpecificHeatJoulesPerKilogramKelvin(FoodComposition food, double celsius, FoodWater water = FoodWater.Iapws)
    {
        double t = celsius;
        double sum = food.WaterFraction == 0 ? 0 : food.WaterFraction * WaterSpecificHeat(t, water);
        sum += food.ProteinFraction * (2008.2 + (t * (1.2089 - (1.3129e-3 * t))));
        sum += food.FatFraction * (1984.2 + (t * (1.4733 - (4.8008e-3 * t))));
        sum += food.CarbohydrateFraction * (1548.8 + (t * (1.9625 - (5.9399e-3 * t))));
        sum += food.FibreFraction * (1845.9 + (t * (1.8306 - (4.6509e-3 * t))));
        sum += food.AshFraction * (1092.6 + (t * (1.8896 - (3.6817e-3 * t))));
        return sum / food.Sum;
    }

    internal static double ConductivityWattsPerMetreKelvin(FoodComposition food, double celsius, FoodWater water = FoodWater.Iapws)
    {
        double t = celsius;
        double waterVolume = food.WaterFraction / WaterDensity(t, water);
        double proteinVolume = food.ProteinFraction / ProteinDensity(t);
        double fatVolume = food.FatFraction / FatDensity(t);
        double carbohydrateVolume = food.CarbohydrateFraction / CarbohydrateDensity(t);
        double fibreVolume = food.FibreFraction / FibreDensity(t);
        double ashVolume = food.AshFraction / AshDensity(t);
        double sum = (waterVolume * WaterConductivity(t, water))
            + (proteinVolume * (0.17881 + (t * (1.1958e-3 - (2.7178e-6 * t)))))
            + (fatVolume * (0.18071 - (t * (2.7604e-4 + (1.7749e-7 * t)))))
            + (carbohydrateVolume * (0.20141 + (t * (1.3874e-3 - (4.3312e-6 * t)))))
            + (fibreVolume * (0.18331 + (t * (1.2497e-3 - (3.1683e-6 * t)))))
            + (ashVolume * (0.32962 + (t * (1.4011e-3 - (2.9069e-6 * t)))));
        return sum / (waterVolume + proteinVolume + fatVolume + carbohydrateVolume + fibreVolume + ashVolume);
    }

    private static double ProteinDensity(double t) => 1329.9 - (0.51840 * t);

    private static double FatDensity(double t) => 925.59 - (0.41757 * t);

    private static double CarbohydrateDensity(double t) => 1599.1 - (0.31046 * t);

    private static double FibreDensity(double t) => 1311.5 - (0.36589 * t);

    private static double AshDensity(double t) => 2423.8 - (0.28063 * t);

    private static double WaterDensity(double t, FoodWater water) => water == FoodWater.Iapws && t >= 0
        ? SaturatedWater.LiquidDensityKilogramsPerCubicMetre(t + 273.15)
        : 997.18 + (t * (3.1439e-3 - (3.7574e-3 * t)));

    private static double WaterSpecificHeat(double t, FoodWater water)
    {
        if (t < 0)
        {
            return (water == FoodWater.ChoiOkosAshrae ? 4128.9 : 4081.7) + (t * (-5.3062 + (0.99516 * t)));
        }

        return water == FoodWater.Iapws
            ? SaturatedWater.LiquidSpecificHeatJoulesPerKilogramKelvin(t + 273.15)
            : (water == FoodWater.ChoiOkosAshrae ? 4128.9 : 4176.2) + (t * (-9.0864e-2 + (5.4731e-3 * t)));
    }

    // The IAPWS conductivity ends at 110 C; above it Choi and Okos takes over, 0.3 % higher there.
    private static double WaterConductivity(double t, FoodWater water) =>
        water == FoodWater.Iapws && t >= 0 && t <= LiquidWaterTransport.MostKelvins - 273.15
            ? LiquidWaterTransport.ConductivityWattsPerMetreKelvin(t + 273.15)
            : 0.57109 + (t * (1.7625e-3 - (6.7036e-6 * t)));

    private static double Celsius(Temperature temperature) =>
        PhysicsRange.Kelvins(temperature, LeastKelvins, MostKelvins, "The temperature of the food", nameof(temperature)) - 273.15;

    private static FoodWater Known(FoodWater water) => Enum.IsDefined(water)
        ? water
        : throw new ArgumentOutOfRangeException(nameof(water), water, "Unknown set of equations for the water in food.");
}
