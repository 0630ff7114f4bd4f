using Stockwright.Planning;
using Stockwright.Simmering;
using UnitsNet;

namespace Stockwright.Predicting;

/// <summary>The temperature history of a plan, and what it would be with another time or temperature.</summary>
internal static class PlanHistory
{
    private const double StrainedWarmCelsius = 60;

    /// <summary>The plan's own, with the cooling after straining.</summary>
    public static TemperatureHistory Of(BatchPlan plan, TimeSpan cooling) => WithCooling(Points(plan), cooling);

    /// <summary>Simmered for another time after the heat-up: cut short, or held on at the last temperature.</summary>
    public static TemperatureHistory WithSimmerTime(BatchPlan plan, TimeSpan simmer, TimeSpan cooling)
    {
        TimeSpan end = plan.HeatUp.Time.Central + simmer;
        List<TemperaturePoint> points = [];
        foreach (TemperaturePoint point in Points(plan))
        {
            if (point.At > end)
            {
                points.Add(new TemperaturePoint(end, Between(points[^1], point, end)));
                return WithCooling(points, cooling);
            }

            points.Add(point);
        }

        points.Add(new TemperaturePoint(end, plan.HeatUp.FinalTemperature));
        return WithCooling(points, cooling);
    }

    /// <summary>The same course with the simmer at another temperature.</summary>
    public static TemperatureHistory WithTemperature(BatchPlan plan, Temperature simmer, TimeSpan cooling)
    {
        double shift = simmer.DegreesCelsius - plan.HeatUp.FinalTemperature.DegreesCelsius;
        TimeSpan heatUp = plan.HeatUp.Time.Central;
        double start = plan.Simmer.Samples[0].Temperature.DegreesCelsius;
        double span = Math.Max(1, plan.HeatUp.FinalTemperature.DegreesCelsius - start);

        // The heat-up is stretched in temperature; what comes after is moved, except where the pot stands cold for the night.
        IEnumerable<TemperaturePoint> points = Points(plan).Select(point =>
        {
            double celsius = point.Temperature.DegreesCelsius;
            double moved = point.At <= heatUp ? start + ((celsius - start) * (span + shift) / span) : celsius > StrainedWarmCelsius ? celsius + shift : celsius;
            return point with { Temperature = Temperature.FromDegreesCelsius(Math.Max(0, moved)) };
        });
        return WithCooling([.. points], cooling);
    }

    private static List<TemperaturePoint> Points(BatchPlan plan)
    {
        List<TemperaturePoint> points = [];
        foreach (SimmerSample sample in plan.Simmer.Samples)
        {
            if (points.Count == 0 || sample.At >= points[^1].At)
            {
                points.Add(new TemperaturePoint(sample.At, sample.Temperature));
            }
        }

        if (points.Count < 2)
        {
            points.Add(new TemperaturePoint(plan.Simmer.Length, plan.HeatUp.FinalTemperature));
        }

        return points;
    }

    private static TemperatureHistory WithCooling(List<TemperaturePoint> points, TimeSpan cooling)
    {
        TemperaturePoint last = points[^1];
        if (cooling > TimeSpan.Zero && last.Temperature.DegreesCelsius > StrainedWarmCelsius)
        {
            points.Add(new TemperaturePoint(last.At + cooling, Temperature.FromDegreesCelsius(StrainedWarmCelsius)));
        }

        return new TemperatureHistory(points);
    }

    private static Temperature Between(TemperaturePoint one, TemperaturePoint other, TimeSpan at)
    {
        double part = other.At > one.At ? (at - one.At) / (other.At - one.At) : 0;
        return Temperature.FromDegreesCelsius(one.Temperature.DegreesCelsius + (part * (other.Temperature.DegreesCelsius - one.Temperature.DegreesCelsius)));
    }
}
