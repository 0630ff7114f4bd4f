using Stockwright.Evidence;
using Stockwright.Predicting;
using Stockwright.Web.Drawing;
using UnitsNet;

namespace Stockwright.Web.Features.Planning.Answer;

/// <summary>Body against time, in the units of a view box 390 wide.</summary>
internal sealed class BodyChartLayout
{
    public const double Width = 390;
    public const double Left = 40;
    public const double Right = 380;
    public const double Top = 40;
    public const double Bottom = 264;
    public const double Height = 308;

    /// <summary>Classes closer together than this get no words.</summary>
    private const double LeastGap = 17;

    private readonly double _firstHours;
    private readonly double _lastHours;
    private readonly double _highestPercent;

    public BodyChartLayout(BodyAgainstTime course, TimeSpan planned, Band<Ratio> effective)
    {
        _firstHours = Math.Min(course.Points[0].Simmer.TotalHours, planned.TotalHours);
        _lastHours = Math.Max(course.Points[^1].Simmer.TotalHours, planned.TotalHours);
        double most = Math.Max(course.Points.Max(point => point.Effective.Percent), effective.High.Percent);
        _highestPercent = Math.Max(1, most * 1.08);
        Curve = [.. course.Points.Select(point => new Dot(HourX(point.Simmer.TotalHours), PercentY(point.Effective.Percent)))];
        HourTicks = [.. ChartTicks.Among(_firstHours, _lastHours, [0.25, 0.5, 1, 3, 6], 9).Select(hour => new AxisTick(HourX(hour), Svg.Number(hour)))];
        PercentTicks = [.. ChartTicks.Among(0, _highestPercent, [0.25, 0.5, 1, 2, 5, 10], 5).Select(percent => new AxisTick(PercentY(percent), Svg.Number(percent)))];
        double hours = planned.TotalHours;
        Plan = new Dot(HourX(hours), PercentY(effective.Central.Percent));
        PlanLowY = PercentY(effective.Low.Percent);
        PlanHighY = PercentY(effective.High.Percent);
        SmallReturn = course.SmallReturn is { } small
            ? course.Points.Where(point => point.Simmer == small).Select(point => (Dot?)new Dot(HourX(small.TotalHours), PercentY(point.Effective.Percent))).FirstOrDefault()
            : null;
        Classes = [.. ClassLines()];
    }

    public IReadOnlyList<Dot> Curve { get; }

    public IReadOnlyList<AxisTick> HourTicks { get; }

    public IReadOnlyList<AxisTick> PercentTicks { get; }

    /// <summary>Lower bounds of the classes: the line, and the name where there is room for it.</summary>
    public IReadOnlyList<AxisTick> Classes { get; }

    public Dot Plan { get; }

    public double PlanLowY { get; }

    public double PlanHighY { get; }

    public Dot? SmallReturn { get; }

    public double HourX(double hours) => Left + ((Right - Left) * (hours - _firstHours) / Math.Max(0.25, _lastHours - _firstHours));

    public double PercentY(double percent) => Bottom - ((Bottom - Top) * percent / _highestPercent);

    private IEnumerable<AxisTick> ClassLines()
    {
        foreach (BodyClass body in Enum.GetValues<BodyClass>())
        {
            double bound = BodyClasses.LeastPercent(body);
            if (bound >= _highestPercent)
            {
                yield break;
            }

            double y = PercentY(bound);
            double ceiling = body == BodyClass.Glace ? Top : Math.Max(Top, PercentY(BodyClasses.LeastPercent(body + 1)));
            yield return new AxisTick(y, y - ceiling >= LeastGap ? BodyClasses.Name(body) : "");
        }
    }
}
