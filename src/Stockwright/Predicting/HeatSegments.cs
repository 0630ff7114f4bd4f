namespace Stockwright.Predicting;

/// <summary>
/// A temperature history cut into short stretches of one temperature each. Slopes are cut every half kelvin, so the middle
/// temperature stands for the stretch to within 0.01 % of the rates; neighbours within a tenth of a kelvin are put together.
/// </summary>
internal sealed class HeatSegments
{
    private const double StepKelvins = 0.5;
    private const double AlikeKelvins = 0.1;

    /// <summary>Below this nothing in the pot moves by these equations, C: the lowest threshold of any cut.</summary>
    private const double ColdCelsius = 40;

    private readonly List<Segment> segments = [];

    /// <summary>Cuts a history up.</summary>
    /// <param name="history">The history.</param>
    /// <param name="breaks">Moments that must fall between segments: cuts going in and out; seconds.</param>
    public HeatSegments(TemperatureHistory history, IEnumerable<double> breaks)
    {
        double[] moments = [.. breaks.Distinct().Order()];
        IReadOnlyList<TemperaturePoint> points = history.Points;
        for (int i = 1; i < points.Count; i++)
        {
            Ramp(points[i - 1].At.TotalSeconds, points[i - 1].Temperature.DegreesCelsius, points[i].At.TotalSeconds, points[i].Temperature.DegreesCelsius, moments);
        }
    }

    public int Count => segments.Count;

    public Segment this[int index] => segments[index];

    /// <summary>First segment that starts at or after a moment.</summary>
    public int IndexAt(double seconds)
    {
        int index = 0;
        while (index < segments.Count && segments[index].FromSeconds < seconds - 1e-6)
        {
            index++;
        }

        return index;
    }

    private void Ramp(double from, double fromCelsius, double to, double toCelsius, double[] moments)
    {
        double start = from;
        foreach (double moment in moments)
        {
            if (moment > start && moment < to)
            {
                Straight(start, At(start), moment, At(moment), moments);
                start = moment;
            }
        }

        Straight(start, At(start), to, toCelsius, moments);

        double At(double seconds) => to > from ? fromCelsius + ((toCelsius - fromCelsius) * (seconds - from) / (to - from)) : fromCelsius;
    }

    private void Straight(double from, double fromCelsius, double to, double toCelsius, double[] moments)
    {
        if (to <= from || Math.Max(fromCelsius, toCelsius) <= ColdCelsius)
        {
            return;
        }

        int parts = Math.Max(1, (int)Math.Ceiling(Math.Abs(toCelsius - fromCelsius) / StepKelvins));
        double length = (to - from) / parts;
        for (int i = 0; i < parts; i++)
        {
            double celsius = fromCelsius + ((toCelsius - fromCelsius) * (i + 0.5) / parts);
            if (celsius > ColdCelsius)
            {
                Add(new Segment(from + (i * length), length / 3600, celsius), moments);
            }
        }
    }

    private void Add(Segment segment, double[] moments)
    {
        if (segments.Count > 0)
        {
            Segment last = segments[^1];
            bool touches = Math.Abs(last.FromSeconds + (last.Hours * 3600) - segment.FromSeconds) < 1e-6;
            if (touches && Math.Abs(last.Celsius - segment.Celsius) < AlikeKelvins && !moments.Any(moment => Math.Abs(moment - segment.FromSeconds) < 1e-6))
            {
                double hours = last.Hours + segment.Hours;
                segments[^1] = new Segment(last.FromSeconds, hours, ((last.Celsius * last.Hours) + (segment.Celsius * segment.Hours)) / hours);
                return;
            }
        }

        segments.Add(segment);
    }

    /// <summary>A stretch of one temperature.</summary>
    internal readonly record struct Segment(double FromSeconds, double Hours, double Celsius);
}
