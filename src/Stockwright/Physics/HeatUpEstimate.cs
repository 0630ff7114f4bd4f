using UnitsNet;

namespace Stockwright.Physics;

/// <summary>Quick energy balances of a pot on the hob (equations P.35 and P.36 in docs/equations-physics.md; exact).</summary>
public static class HeatUpEstimate
{
    /// <summary>Shortest time to warm a filled pot, with no losses (P.35): a floor under every prediction.</summary>
    /// <param name="contents">Mass of the contents, zero or more.</param>
    /// <param name="contentsSpecificHeat">Specific heat of the contents.</param>
    /// <param name="pot">Mass of the pot, zero or more.</param>
    /// <param name="potSpecificHeat">Specific heat of the pot wall.</param>
    /// <param name="rise">Temperature rise, zero or more.</param>
    /// <param name="power">Power taken by the hob, above zero.</param>
    /// <param name="efficiency">Share of it that reaches pot and contents, above 0 to 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument lies outside its range.</exception>
    public static Duration NoLossTime(
        Mass contents, SpecificEntropy contentsSpecificHeat, Mass pot, SpecificEntropy potSpecificHeat, TemperatureDelta rise, Power power, Ratio efficiency)
    {
        double joulesPerKelvin =
            (NotNegative(contents.Kilograms, "mass of the contents", nameof(contents)) * NotNegative(contentsSpecificHeat.JoulesPerKilogramKelvin, "specific heat", nameof(contentsSpecificHeat)))
            + (NotNegative(pot.Kilograms, "mass of the pot", nameof(pot)) * NotNegative(potSpecificHeat.JoulesPerKilogramKelvin, "specific heat", nameof(potSpecificHeat)));
        double kelvins = NotNegative(rise.Kelvins, "rise in temperature", nameof(rise));
        double watts = Positive((double)power.Watts, "power of the hob", nameof(power));
        double fraction = efficiency.DecimalFractions;
        if (!(fraction > 0) || fraction > 1)
        {
            throw new ArgumentOutOfRangeException(nameof(efficiency), efficiency, "The share of the power that reaches the pot lies between 0 and 100 %.");
        }

        return Duration.FromSeconds(joulesPerKelvin * kelvins / (watts * fraction));
    }

    /// <summary>Water boiled off by the heat left over at the boil (P.36).</summary>
    /// <param name="net">Heat into the pot less all losses, zero or more.</param>
    /// <param name="boilingPoint">Boiling point, 0 to 373.946 °C.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument lies outside its range.</exception>
    public static MassFlow BoilOff(Power net, Temperature boilingPoint) =>
        MassFlow.FromKilogramsPerSecond(
            NotNegative((double)net.Watts, "heat left over", nameof(net)) / SaturatedWater.LatentHeat(boilingPoint).JoulesPerKilogram);

    private static double NotNegative(double value, string what, string parameter) => value >= 0 && double.IsFinite(value)
        ? value
        : throw new ArgumentOutOfRangeException(parameter, value, $"The {what} must not be negative.");

    private static double Positive(double value, string what, string parameter) => value > 0 && double.IsFinite(value)
        ? value
        : throw new ArgumentOutOfRangeException(parameter, value, $"The {what} must be above zero.");
}
