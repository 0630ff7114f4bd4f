using UnitsNet;

namespace Stockwright.Physics;

/// <summary>
/// A well stirred body losing heat at a constant rate per kelvin to constant surroundings
/// (equations P.33 and P.34 in docs/equations-physics.md; Newton's law of cooling, exact).
/// </summary>
public static class LumpedCooling
{
    /// <summary>Time from one temperature to another (P.33).</summary>
    /// <param name="coefficient">Heat flow per area and kelvin, above zero.</param>
    /// <param name="area">Surface that loses heat, above zero.</param>
    /// <param name="heatCapacity">Mass times specific heat, above zero.</param>
    /// <param name="start">Temperature at the start.</param>
    /// <param name="end">Temperature to reach; strictly between the start and the surroundings, or the start itself.</param>
    /// <param name="surroundings">Temperature of the surroundings.</param>
    /// <exception cref="ArgumentOutOfRangeException">A quantity is not positive, or the end temperature is never reached.</exception>
    public static Duration TimeBetween(HeatTransferCoefficient coefficient, Area area, Entropy heatCapacity, Temperature start, Temperature end, Temperature surroundings)
    {
        double ratio = (start.Kelvins - surroundings.Kelvins) / (end.Kelvins - surroundings.Kelvins);
        if (!(ratio >= 1) || double.IsInfinity(ratio))
        {
            throw new ArgumentOutOfRangeException(nameof(end), end, "The end temperature must lie between the start and the surroundings; the surroundings themselves are never quite reached.");
        }

        double seconds = Positive(heatCapacity.JoulesPerKelvin, "heat capacity", nameof(heatCapacity))
            / Conductance(coefficient, area);
        return Duration.FromSeconds(seconds * Math.Log(ratio));
    }

    /// <summary>Temperature after a time (P.34).</summary>
    /// <param name="coefficient">Heat flow per area and kelvin, above zero.</param>
    /// <param name="area">Surface that loses heat, above zero.</param>
    /// <param name="heatCapacity">Mass times specific heat, above zero.</param>
    /// <param name="start">Temperature at the start.</param>
    /// <param name="surroundings">Temperature of the surroundings.</param>
    /// <param name="elapsed">Time since the start, zero or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">A quantity is not positive.</exception>
    public static Temperature TemperatureAfter(HeatTransferCoefficient coefficient, Area area, Entropy heatCapacity, Temperature start, Temperature surroundings, Duration elapsed)
    {
        if (!(elapsed.Seconds >= 0))
        {
            throw new ArgumentOutOfRangeException(nameof(elapsed), elapsed, "The elapsed time must not be negative.");
        }

        double rate = Conductance(coefficient, area)
            / Positive(heatCapacity.JoulesPerKelvin, "heat capacity", nameof(heatCapacity));
        return Temperature.FromKelvins(surroundings.Kelvins + ((start.Kelvins - surroundings.Kelvins) * Math.Exp(-rate * elapsed.Seconds)));
    }

    private static double Conductance(HeatTransferCoefficient coefficient, Area area) =>
        Positive(coefficient.WattsPerSquareMeterKelvin, "coefficient of heat transfer", nameof(coefficient))
        * Positive(area.SquareMeters, "area", nameof(area));

    private static double Positive(double value, string what, string parameter) => value > 0 && double.IsFinite(value)
        ? value
        : throw new ArgumentOutOfRangeException(parameter, value, $"The {what} must be above zero.");
}
