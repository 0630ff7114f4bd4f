using Stockwright.Cooling.Limits;
using UnitsNet;

namespace Stockwright.Cooling.Readings;

/// <summary>
/// How fast measured stock cools towards what surrounds it, and so when it will be done (equations C.34 to C.36 in
/// docs/equations-cooling.md). Holds while it stands as it stood during the readings.
/// </summary>
/// <param name="PerHour">Newton's rate constant, natural logarithms per hour, above zero.</param>
/// <param name="StandardErrorPerHour">Its standard error from the scatter of the readings.</param>
/// <param name="Surroundings">Temperature it cools towards.</param>
/// <param name="Last">The last reading.</param>
public sealed record CoolingRate(double PerHour, double StandardErrorPerHour, Temperature Surroundings, CoolingPoint Last)
{
    /// <summary>Coldest and warmest surroundings that are believed.</summary>
    public static readonly (Temperature Least, Temperature Most) SurroundingsRange = (Temperature.FromDegreesCelsius(-40), Temperature.FromDegreesCelsius(50));

    /// <summary>How far the rate of a later stage strays from that of an earlier one in published roasts in a fridge (11 %).</summary>
    private const double StageScatter = 0.11;
    private const double EightInTen = 1.2816;
    private const int ContinuedPoints = 200;

    /// <summary>Slow edge of the rate.</summary>
    public double SlowPerHour => PerHour / (1 + Spread);

    /// <summary>Fast edge of the rate.</summary>
    public double FastPerHour => PerHour * (1 + Spread);

    private double Spread => EightInTen * Math.Sqrt(Math.Pow(StandardErrorPerHour / PerHour, 2) + (StageScatter * StageScatter));

    /// <summary>Fits the rate to readings by least squares on the logarithm of the difference (C.35).</summary>
    /// <param name="points">In order of time; those not warmer than the surroundings by half a kelvin are left out.</param>
    /// <param name="surroundings">Temperature of the air or bath it stands in.</param>
    /// <returns>The rate, or null when fewer than two readings are left or they do not fall.</returns>
    public static CoolingRate? Fit(IReadOnlyList<CoolingPoint> points, Temperature surroundings)
    {
        ArgumentNullException.ThrowIfNull(points);
        double around = surroundings.DegreesCelsius;
        CoolingPoint[] used = [.. points.Where(point => point.Temperature.DegreesCelsius > around + 0.5)];
        if (used.Length < 2)
        {
            return null;
        }

        double[] hours = [.. used.Select(point => point.At.TotalHours)];
        double[] logs = [.. used.Select(point => Math.Log(point.Temperature.DegreesCelsius - around))];
        double meanHours = hours.Average();
        double meanLog = logs.Average();
        double across = 0;
        double together = 0;
        for (int i = 0; i < used.Length; i++)
        {
            across += (hours[i] - meanHours) * (hours[i] - meanHours);
            together += (hours[i] - meanHours) * (logs[i] - meanLog);
        }

        double slope = together / across;
        if (!(slope < 0))
        {
            return null;
        }

        double squares = 0;
        for (int i = 0; i < used.Length; i++)
        {
            double miss = logs[i] - meanLog - (slope * (hours[i] - meanHours));
            squares += miss * miss;
        }

        double error = used.Length > 2 ? Math.Sqrt(squares / (used.Length - 2) / across) : 0;
        return new CoolingRate(-slope, error, surroundings, points[^1]);
    }

    /// <summary>The measured curve carried on to a limit's end, judged with its band.</summary>
    /// <param name="measured">The readings.</param>
    /// <param name="limit">The rule.</param>
    /// <param name="chillingStarted">As for the judge.</param>
    public (CoolingCurve Fast, CoolingCurve Central, CoolingCurve Slow, BandVerdict Verdict) CarryOn(
        CoolingCurve measured, CoolingLimit limit, TimeSpan? chillingStarted = null)
    {
        ArgumentNullException.ThrowIfNull(measured);
        ArgumentNullException.ThrowIfNull(limit);
        CoolingCurve fast = Continued(measured, FastPerHour);
        CoolingCurve central = Continued(measured, PerHour);
        CoolingCurve slow = Continued(measured, SlowPerHour);
        return (fast, central, slow, CoolingJudge.JudgeBand(fast, central, slow, limit, chillingStarted));
    }

    private CoolingCurve Continued(CoolingCurve measured, double perHour)
    {
        CoolingPoint last = measured.Points[^1];
        double above = last.Temperature.DegreesCelsius - Surroundings.DegreesCelsius;
        IEnumerable<CoolingPoint> more = Enumerable.Range(1, ContinuedPoints).Select(i =>
        {
            // Quarter hours at first, then longer: 48 h in all.
            double hours = 48 * Math.Pow((double)i / ContinuedPoints, 2);
            double celsius = Surroundings.DegreesCelsius + (above * Math.Exp(-perHour * hours));
            Temperature temperature = Temperature.FromDegreesCelsius(celsius);
            return new CoolingPoint(last.At + TimeSpan.FromHours(hours), measured.IsFahrenheit ? temperature.ToUnit(UnitsNet.Units.TemperatureUnit.DegreeFahrenheit) : temperature);
        });
        return new CoolingCurve([.. measured.Points, .. more]);
    }
}
