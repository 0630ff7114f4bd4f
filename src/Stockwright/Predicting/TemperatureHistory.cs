using UnitsNet;

namespace Stockwright.Predicting;

/// <summary>The pot's temperature at a moment.</summary>
/// <param name="At">Time since the heat went on.</param>
/// <param name="Temperature">Temperature of the liquor, 0 to 150 °C.</param>
internal readonly record struct TemperaturePoint(TimeSpan At, Temperature Temperature);

/// <summary>What the liquor went through: heat-up, simmer, dips at top-ups, pressure, oven, cooling; straight lines between the points.</summary>
internal sealed class TemperatureHistory
{
    /// <summary>Makes a history.</summary>
    /// <param name="points">At least two, in order of time; two at the same moment are a jump.</param>
    /// <exception cref="ArgumentException">Fewer than two points, or not in order of time.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A temperature lies outside 0 to 150 °C.</exception>
    public TemperatureHistory(IEnumerable<TemperaturePoint> points)
    {
        Points = [.. points];
        if (Points.Count < 2)
        {
            throw new ArgumentException("A history needs at least two points.", nameof(points));
        }

        for (int i = 0; i < Points.Count; i++)
        {
            if (i > 0 && Points[i].At < Points[i - 1].At)
            {
                throw new ArgumentException("The points of a history must be in order of time.", nameof(points));
            }

            if (!(Points[i].Temperature.DegreesCelsius is >= -1e-6 and <= 150))
            {
                throw new ArgumentOutOfRangeException(nameof(points), Points[i].Temperature, "A temperature of the history lies outside 0 to 150 °C.");
            }
        }
    }

    /// <summary>The points.</summary>
    public IReadOnlyList<TemperaturePoint> Points { get; }

    /// <summary>When it ends.</summary>
    public TimeSpan End => Points[^1].At;

    /// <summary>A steady temperature for a time.</summary>
    public static TemperatureHistory Steady(Temperature temperature, TimeSpan time) =>
        new([new(TimeSpan.Zero, temperature), new(time, temperature)]);
}
