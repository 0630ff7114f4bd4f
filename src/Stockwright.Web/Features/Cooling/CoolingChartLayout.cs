using Stockwright.Cooling;
using Stockwright.Cooling.Limits;
using Stockwright.Web.Drawing;
using UnitsNet;

namespace Stockwright.Web.Features.Cooling;

/// <summary>A corner of the limit: be at this temperature by this time.</summary>
internal sealed record LimitCorner(Dot At, double TextX, double TextY, string Anchor, string Text);

/// <summary>Temperature against time with the stair of the limit, in the units of a view box 390 wide.</summary>
internal sealed class CoolingChartLayout
{
    public const double Width = 390;
    public const double Left = 40;
    public const double Right = 380;
    public const double Top = 30;
    public const double Bottom = 300;
    public const double Height = 342;

    private readonly double _endHours;
    private readonly double _lowCelsius;
    private readonly double _highCelsius;
    private readonly UnitSystem _units;

    public CoolingChartLayout(JudgedMethod? judged, CoolingCurve? measured, CoolingCurve? carriedOn, CoolingVerdict limitOf, UnitSystem units)
    {
        _units = units;
        CoolingCurve?[] all = [judged?.Forecast.Fast.Curve, judged?.Forecast.Slow.Curve, measured];
        _endHours = EndHours(judged, measured, limitOf);
        double start = all.OfType<CoolingCurve>().Max(curve => curve.Points.Max(point => point.Temperature.DegreesCelsius));
        _highCelsius = Math.Max(start, limitOf.Limit.Stages[0].From.Value.DegreesCelsius) + 3;
        double coldest = judged?.Forecast.Central.Samples.Min(sample => sample.Surroundings.DegreesCelsius) ?? 0;
        _lowCelsius = Math.Min(Math.Min(0, coldest), limitOf.Limit.Stages[^1].To.Value.DegreesCelsius) - 3;
        if (judged is not null)
        {
            Central = Line(judged.Forecast.Central.Curve.Points.Select(Plain), Svg.MostPoints);
            Band = BandOf(judged.Forecast);
            Around = Line(judged.Forecast.Central.Samples.Select(sample => new CoolingPoint(sample.At, sample.Surroundings)), Svg.MostPoints);
            StepX = [.. judged.Forecast.Central.StepStarts.Skip(1).Where(at => at.TotalHours < _endHours).Select(at => HourX(at.TotalHours))];
        }

        if (measured is not null)
        {
            List<CoolingPoint> shown = [.. measured.Points.Where(point => point.At.TotalHours <= _endHours)];

            // What juts out is drawn first: a single odd reading must be seen.
            Readings = [.. CurveThinning.KeepShape([.. shown.Select(point => point.At.TotalHours)], [.. shown.Select(point => point.Temperature.DegreesCelsius)], Svg.MostPoints).Select(i => At(shown[i]))];
        }

        CarriedOn = carriedOn is null ? [] : Line(carriedOn.Points.Where(point => point.At >= measured!.End).Select(Plain), Svg.MostPoints);
        Stair = StairOf(limitOf);
        Corners = CornersOf(limitOf);
        HourTicks = [.. ChartTicks.Hours(_endHours).Select(hour => new AxisTick(HourX(hour), Svg.Number(hour)))];
        DegreeTicks = Degrees();
    }

    public IReadOnlyList<Dot> Central { get; } = [];

    public IReadOnlyList<Dot> Band { get; } = [];

    public IReadOnlyList<Dot> Around { get; } = [];

    public IReadOnlyList<double> StepX { get; } = [];

    public IReadOnlyList<Dot> Readings { get; } = [];

    public IReadOnlyList<Dot> CarriedOn { get; }

    /// <summary>The stock must stay below and left of this.</summary>
    public IReadOnlyList<Dot> Stair { get; }

    public IReadOnlyList<LimitCorner> Corners { get; }

    public IReadOnlyList<AxisTick> HourTicks { get; }

    public IReadOnlyList<AxisTick> DegreeTicks { get; }

    public double HourX(double hours) => Left + ((Right - Left) * Math.Clamp(hours / _endHours, 0, 1));

    public double CelsiusY(double celsius) => Bottom - ((Bottom - Top) * Math.Clamp((celsius - _lowCelsius) / (_highCelsius - _lowCelsius), 0, 1));

    /// <summary>Far enough to see it reach the end or miss the limit, not two days of a flat line.</summary>
    private static double EndHours(JudgedMethod? judged, CoolingCurve? measured, CoolingVerdict limitOf)
    {
        double clock = limitOf.ClockStartedAt?.TotalHours ?? 0;
        double total = limitOf.Limit.Total.TotalHours;
        double finished = judged?.Verdict.Slow.FinishedAt?.TotalHours ?? double.PositiveInfinity;
        double firstDue = clock + limitOf.Limit.Stages[0].Within.TotalHours;
        double end = Math.Max(Math.Min(finished * 1.05, clock + (2 * total)), firstDue * 1.25);
        return Math.Max(0.25, Math.Max(end, (measured?.End.TotalHours ?? 0) * 1.1));
    }

    private static CoolingPoint Plain(CoolingPoint point) => point;

    private Dot At(CoolingPoint point) => new(HourX(point.At.TotalHours), CelsiusY(point.Temperature.DegreesCelsius));

    private List<Dot> Line(IEnumerable<CoolingPoint> points, int most)
    {
        CoolingPoint[] shown = [.. Within(points)];
        return [.. CurveThinning.Keep([.. shown.Select(point => point.At.TotalHours)], most).Select(i => At(shown[i]))];
    }

    /// <summary>Points up to the right edge, the last one on it.</summary>
    private IEnumerable<CoolingPoint> Within(IEnumerable<CoolingPoint> points)
    {
        CoolingPoint? before = null;
        foreach (CoolingPoint point in points)
        {
            if (point.At.TotalHours > _endHours)
            {
                if (before is { } last)
                {
                    double part = (_endHours - last.At.TotalHours) / (point.At - last.At).TotalHours;
                    double celsius = last.Temperature.DegreesCelsius + (part * (point.Temperature.DegreesCelsius - last.Temperature.DegreesCelsius));
                    yield return new CoolingPoint(TimeSpan.FromHours(_endHours), Temperature.FromDegreesCelsius(celsius));
                }

                yield break;
            }

            yield return point;
            before = point;
        }
    }

    private List<Dot> BandOf(CoolingForecast forecast)
    {
        // There and back again: half the points for each edge.
        List<Dot> slow = Line(forecast.Slow.Curve.Points, Svg.MostPoints / 2);
        List<Dot> fast = Line(forecast.Fast.Curve.Points, Svg.MostPoints / 2);
        fast.Reverse();
        return [.. slow, .. fast];
    }

    private List<Dot> StairOf(CoolingVerdict verdict)
    {
        if (verdict.ClockStartedAt is not { } clock)
        {
            return [];
        }

        List<Dot> stair = [new(HourX(clock.TotalHours), CelsiusY(verdict.Stages[0].Stage.From.Value.DegreesCelsius))];
        foreach (StageVerdict stage in verdict.Stages.Where(stage => stage.DueAt is not null))
        {
            double x = HourX(stage.DueAt!.Value.TotalHours);
            stair.Add(stair[^1] with { X = x });
            if (stage.DueAt.Value.TotalHours > _endHours)
            {
                break;
            }

            stair.Add(new Dot(x, CelsiusY(stage.Stage.To.Value.DegreesCelsius)));
        }

        return stair;
    }

    private List<LimitCorner> CornersOf(CoolingVerdict verdict)
    {
        List<LimitCorner> corners = [];
        foreach (StageVerdict stage in verdict.Stages.Where(stage => stage.DueAt is { } due && due.TotalHours <= _endHours))
        {
            Dot corner = new(HourX(stage.DueAt!.Value.TotalHours), CelsiusY(stage.Stage.To.Value.DegreesCelsius));
            bool toTheLeft = corner.X > (Left + Right) / 2;
            corners.Add(new LimitCorner(
                corner,
                toTheLeft ? corner.X - 7 : corner.X + 7,
                corner.Y + (stage.Number == verdict.Stages.Count ? -8 : 17),
                toTheLeft ? "end" : "start",
                $"{CoolingText.Short(stage.Stage.To, _units)} by {Measures.KitchenFormat.Text(stage.DueAt.Value)}"));
        }

        return corners;
    }

    private List<AxisTick> Degrees()
    {
        bool isUs = _units == UnitSystem.UsCustomary;
        double Shown(double celsius) => isUs ? (celsius * 1.8) + 32 : celsius;
        return [.. ChartTicks.Among(Shown(_lowCelsius), Shown(_highCelsius), isUs ? [20, 50, 100] : [10, 20, 25, 50], isUs ? 12 : 11)
            .Select(value => new AxisTick(CelsiusY(isUs ? (value - 32) / 1.8 : value), Svg.Number(value)))];
    }
}
