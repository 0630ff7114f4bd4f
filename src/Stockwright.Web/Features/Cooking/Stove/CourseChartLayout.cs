using Stockwright.Cooking;
using Stockwright.Measures;
using Stockwright.Web.Drawing;
using Stockwright.Web.Features.Planning.Answer;
using Stockwright.Web.Wording;
using UnitsNet;

namespace Stockwright.Web.Features.Cooking.Stove;

/// <summary>A level somebody read, or water somebody added.</summary>
/// <param name="At">When.</param>
/// <param name="BelowRim">Level, down from the rim.</param>
/// <param name="Water">Water added, or null for a reading.</param>
public sealed record CourseMark(DateTimeOffset At, Length BelowRim, Volume? Water = null);

/// <summary>What <see cref="CourseChart"/> draws.</summary>
/// <param name="Planned">Level as planned.</param>
/// <param name="Expected">Level as worked out from the log up to now, and as expected from then on.</param>
/// <param name="Marks">What was read and added.</param>
/// <param name="Now">The present.</param>
public sealed record CourseLines(IReadOnlyList<CoursePoint> Planned, IReadOnlyList<CoursePoint> Expected, IReadOnlyList<CourseMark> Marks, DateTimeOffset Now);

/// <summary>Plan and reality of the level by the clock, in the units of a view box 390 wide.</summary>
internal sealed class CourseChartLayout
{
    public const double Width = 390;
    public const double Left = 46;
    public const double Right = 380;
    public const double Top = 34;
    public const double Bottom = 270;
    public const double Height = 300;

    private static readonly int[] HourSteps = [1, 2, 3, 4, 6, 12, 24];

    private readonly CourseLines lines;
    private readonly DateTimeOffset begin;
    private readonly TimeSpan span;
    private readonly double highestMillimetres;
    private readonly double deepestMillimetres;

    public CourseChartLayout(CourseLines lines, KitchenClock clock)
    {
        this.lines = lines;
        DateTimeOffset[] moments = [.. lines.Planned.Concat(lines.Expected).Select(point => point.At), .. lines.Marks.Select(mark => mark.At)];
        begin = moments.Length > 0 ? moments.Min() : lines.Now;
        DateTimeOffset end = moments.Length > 0 ? moments.Max() : lines.Now;
        span = end - begin < TimeSpan.FromMinutes(30) ? TimeSpan.FromMinutes(30) : end - begin;
        double[] levels = [.. lines.Planned.Concat(lines.Expected).Select(point => point.BelowRim.Millimeters), .. lines.Marks.Where(mark => mark.Water is null).Select(mark => mark.BelowRim.Millimeters)];
        double least = levels.DefaultIfEmpty(0).Min();
        double most = levels.DefaultIfEmpty(100).Max();

        // Plan and reality differ by little: what lies far above both is left out, and the rim with it.
        double room = Math.Max(15, most - least);
        highestMillimetres = least - room > 0.3 * most ? least - (0.5 * room) : Math.Min(0, least);
        deepestMillimetres = most + (0.5 * room);

        Planned = Curve(lines.Planned);
        Past = Curve([.. lines.Expected.Where(point => point.At <= lines.Now)]);
        Ahead = Curve([.. lines.Expected.Where(point => point.At > lines.Now)]);
        if (Past.Count > 0 && Ahead.Count > 0)
        {
            Ahead = [Past[^1], .. Ahead];
        }

        CourseMark[] read = [.. lines.Marks.Where(mark => mark.Water is null)];
        Readings = [.. CurveThinning.KeepShape([.. read.Select(mark => (mark.At - begin).TotalHours)], [.. read.Select(mark => mark.BelowRim.Millimeters)], Svg.MostPoints)
            .Select(i => new Dot(X(read[i].At), Y(read[i].BelowRim)))];
        TopUps = Waters(clock.Units);
        NowX = lines.Now > begin && lines.Now < begin + span ? X(lines.Now) : null;
        Hours = HourTicks(clock);
        Levels = LevelTicks(clock.Units);
        RimY = highestMillimetres <= 0 ? Y(Length.Zero) : null;
    }

    /// <summary>Where the rim lies; null when it is left out.</summary>
    public double? RimY { get; }

    public IReadOnlyList<Dot> Planned { get; }

    /// <summary>Up to now.</summary>
    public IReadOnlyList<Dot> Past { get; }

    /// <summary>From now on.</summary>
    public IReadOnlyList<Dot> Ahead { get; }

    public IReadOnlyList<Dot> Readings { get; }

    public IReadOnlyList<TopUpMark> TopUps { get; }

    /// <summary>Where now lies; null when it lies outside.</summary>
    public double? NowX { get; }

    public IReadOnlyList<AxisTick> Hours { get; }

    public IReadOnlyList<AxisTick> Levels { get; }

    public double X(DateTimeOffset moment) => Left + ((Right - Left) * Math.Clamp((moment - begin) / span, 0, 1));

    public double Y(Length below) => Top + ((Bottom - Top) * Math.Clamp((below.Millimeters - highestMillimetres) / (deepestMillimetres - highestMillimetres), 0, 1));

    private List<Dot> Curve(IReadOnlyList<CoursePoint> points) =>
        points.Count == 0 ? [] : [.. CurveThinning.Keep([.. points.Select(point => (point.At - begin).TotalHours)], Svg.MostPoints).Select(i => new Dot(X(points[i].At), Y(points[i].BelowRim)))];

    private List<TopUpMark> Waters(UnitSystem units)
    {
        List<TopUpMark> marks = [];
        double free = double.NegativeInfinity;
        foreach (CourseMark mark in lines.Marks.Where(mark => mark.Water is not null).OrderBy(mark => mark.At))
        {
            double x = X(mark.At);
            string words = "+" + KitchenFormat.Text(mark.Water!.Value, units);
            double half = words.Length * 4.1;
            double middle = Math.Clamp(x, Left + half, Right - half);
            bool fits = middle - half >= free;
            free = fits ? middle + half + 8 : free;
            marks.Add(new TopUpMark(x, Bottom, Bottom - 22, middle, fits ? words : null));
        }

        return marks;
    }

    private List<AxisTick> HourTicks(KitchenClock clock)
    {
        int step = Array.Find(HourSteps, hours => span.TotalHours / hours <= (clock.Units == UnitSystem.UsCustomary ? 5 : 7));
        step = step == 0 ? 24 : step;
        DateTime first = clock.Local(begin).Date;
        List<AxisTick> ticks = [];
        for (DateTime local = first; ticks.Count < 20; local = local.AddHours(step))
        {
            if (clock.Zone.IsInvalidTime(local))
            {
                continue;
            }

            DateTimeOffset moment = new(local, clock.Zone.GetUtcOffset(local));
            if (moment > begin + span)
            {
                break;
            }

            if (moment >= begin)
            {
                ticks.Add(new AxisTick(X(moment), clock.Clock(moment)));
            }
        }

        return ticks;
    }

    private List<AxisTick> LevelTicks(UnitSystem units)
    {
        bool isUs = units == UnitSystem.UsCustomary;
        double unit = isUs ? ExactFactors.InchMillimetres : 10;
        return [.. ChartTicks.Among(highestMillimetres / unit, deepestMillimetres / unit, isUs ? [0.25, 0.5, 1, 2, 3, 4, 6, 12] : [0.5, 1, 2, 5, 10, 20, 50], 7)
            .Select(value => new AxisTick(Y(Length.FromMillimeters(value * unit)), isUs ? KitchenFormat.Fraction(value, 4) : Svg.Number(value)))];
    }
}
