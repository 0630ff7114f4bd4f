using UnitsNet;
using UnitsNet.Units;

namespace Stockwright.Cooling;

/// <summary>One moment of a cooling curve.</summary>
/// <param name="At">Time since the curve's zero.</param>
/// <param name="Temperature">Temperature at the slowest-cooling point.</param>
public readonly record struct CoolingPoint(TimeSpan At, Temperature Temperature);

/// <summary>
/// Temperature against time, straight between its points; predicted or measured. A curve given in °F throughout is
/// judged in °F, so that a reading of 70 °F is never turned into 21.1 °C before it meets a limit printed as 70 °F.
/// </summary>
public sealed class CoolingCurve
{
    private readonly CoolingPoint[] points;

    /// <summary>A curve through points in order of time.</summary>
    /// <param name="points">One or more, times rising, temperatures between -60 and 150 °C.</param>
    /// <exception cref="ArgumentException">There is no point, the times do not rise, or a temperature is not believable.</exception>
    internal CoolingCurve(IEnumerable<CoolingPoint> points)
    {
        this.points = [.. points];
        if (this.points.Length == 0)
        {
            throw new ArgumentException("A cooling curve needs at least one reading.", nameof(points));
        }

        for (int i = 0; i < this.points.Length; i++)
        {
            if (this.points[i].Temperature.DegreesCelsius is not (>= -60 and <= 150))
            {
                throw new ArgumentException("A temperature on the cooling curve lies outside -60 to 150 °C.", nameof(points));
            }

            if (i > 0 && this.points[i].At <= this.points[i - 1].At)
            {
                throw new ArgumentException("The times of a cooling curve must rise from reading to reading.", nameof(points));
            }
        }

        IsFahrenheit = this.points.All(point => point.Temperature.Unit == TemperatureUnit.DegreeFahrenheit);
    }

    /// <summary>The points, in order of time.</summary>
    public IReadOnlyList<CoolingPoint> Points => points;

    /// <summary>True when every point was given in °F.</summary>
    public bool IsFahrenheit { get; }

    /// <summary>Time of the last point.</summary>
    public TimeSpan End => points[^1].At;

    /// <summary>Temperature at a time, straight between points.</summary>
    /// <param name="at">Between the first and the last point.</param>
    /// <exception cref="ArgumentOutOfRangeException">The time lies before the first or after the last point.</exception>
    public Temperature TemperatureAt(TimeSpan at)
    {
        if (at < points[0].At || at > points[^1].At)
        {
            throw new ArgumentOutOfRangeException(nameof(at), at, "That time lies outside the cooling curve.");
        }

        int next = Array.FindIndex(points, point => point.At >= at);
        if (points[next].At == at)
        {
            return points[next].Temperature;
        }

        CoolingPoint a = points[next - 1];
        CoolingPoint b = points[next];
        double part = (at - a.At) / (b.At - a.At);
        return Temperature.FromDegreesCelsius(a.Temperature.DegreesCelsius + (part * (b.Temperature.DegreesCelsius - a.Temperature.DegreesCelsius)));
    }

    /// <summary>First time the curve stands at or below a temperature, or null when it never does.</summary>
    internal TimeSpan? FirstAtOrBelow(Temperature temperature)
    {
        double[] degrees = Degrees(fahrenheit: false);
        return FirstAtOrBelow(degrees, temperature.DegreesCelsius, TimeSpan.Zero) is { } seconds ? TimeSpan.FromSeconds(seconds) : null;
    }

    /// <summary>The temperatures in one scale; a point already in that scale is not converted.</summary>
    internal double[] Degrees(bool fahrenheit) =>
        Array.ConvertAll(points, point => fahrenheit ? point.Temperature.DegreesFahrenheit : point.Temperature.DegreesCelsius);

    /// <summary>Seconds at which the degrees first stand at or below a mark, from a time on.</summary>
    internal double? FirstAtOrBelow(double[] degrees, double mark, TimeSpan from)
    {
        // A small tolerance, so that a limit met exactly is met after a change of scale too.
        double reach = mark + 1e-9;
        for (int i = 0; i < points.Length; i++)
        {
            if (points[i].At < from || degrees[i] > reach)
            {
                continue;
            }

            if (i == 0 || degrees[i - 1] <= reach)
            {
                return Math.Max(points[i].At.TotalSeconds, from.TotalSeconds);
            }

            double part = degrees[i] == mark ? 1 : (degrees[i - 1] - mark) / (degrees[i - 1] - degrees[i]);
            double seconds = points[i - 1].At.TotalSeconds + (Math.Min(1, part) * (points[i].At - points[i - 1].At).TotalSeconds);
            return Math.Max(seconds, from.TotalSeconds);
        }

        return null;
    }
}
