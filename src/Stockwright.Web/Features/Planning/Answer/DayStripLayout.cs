using System.Globalization;
using Stockwright.Planning;

namespace Stockwright.Web.Features.Planning.Answer;

/// <summary>What a step looks like: each family has its own texture.</summary>
internal enum StepFamily
{
    /// <summary>Over a strong fire.</summary>
    Fire,

    /// <summary>Simmering by itself.</summary>
    Simmer,

    /// <summary>In the oven.</summary>
    Oven,

    /// <summary>Cooling and chilling.</summary>
    Cold,

    /// <summary>Standing or soaking.</summary>
    Rest,

    /// <summary>Work of the hands.</summary>
    Hands,
}

/// <summary>Part of a step that falls on one day.</summary>
internal sealed record DayBar(StepFamily Family, double X, double Width, double Y, string? Text);

/// <summary>A moment that takes hands.</summary>
internal readonly record struct HandsMark(double X, bool IsNight);

/// <summary>The numbers of one or several neighbouring steps.</summary>
internal sealed record StepNumbers(double X, int Lane, string Text);

/// <summary>One calendar day.</summary>
internal sealed record DayRow(
    double Top,
    string Name,
    string Note,
    IReadOnlyList<(double X, double Width)> Nights,
    IReadOnlyList<DayBar> Bars,
    IReadOnlyList<HandsMark> Hands,
    IReadOnlyList<StepNumbers> Numbers);

/// <summary>The whole timeline, one row a calendar day from midnight to midnight, in a view box 390 wide.</summary>
internal sealed class DayStripLayout
{
    public const double Width = 390;
    public const double Left = 9;
    public const double Right = 381;
    public const double NumbersY = 37;
    public const double NumbersLane = 13;
    public const double HandsY = 61;
    public const double BarTop = 71;
    public const double BarHeight = 19;
    public const double LaneGap = 3;
    private const double TicksHeight = 22;
    private const double RowGap = 14;
    private const double CharacterWidth = 7.8;
    private const double DigitWidth = 8;
    private const double JoinWithinHours = 0.2;
    private readonly PlanSchedule _schedule;

    public DayStripLayout(Timeline timeline, PlanSchedule schedule)
    {
        _schedule = schedule;
        IReadOnlyList<PlanStep> steps = timeline.Steps;
        int[] lanes = LanesOf(steps);
        Lanes = lanes.Length == 0 ? 1 : lanes.Max() + 1;
        RowHeight = BarTop + (Lanes * (BarHeight + LaneGap)) + TicksHeight + RowGap;
        DateTime first = Local(timeline.Start).Date;
        DateTime last = Local(Later(timeline.Ready, steps.Select(step => step.End))).Date;
        List<DayRow> rows = [];
        for (DateTime day = first; day <= last; day = day.AddDays(1))
        {
            rows.Add(Row(day, rows.Count * RowHeight, timeline, lanes));
        }

        Rows = rows;
        Families = steps.Where(IsBar).Select(step => FamilyOf(step.Kind)).Distinct().Order().ToList();
        HasNightHands = rows.Any(row => row.Hands.Any(mark => mark.IsNight));
        LegendTop = rows.Count * RowHeight;
        Height = LegendTop + (LegendRows * 22) + 4;
    }

    public int Lanes { get; }

    public double RowHeight { get; }

    public double Height { get; }

    public double LegendTop { get; }

    public bool HasNightHands { get; }

    public IReadOnlyList<DayRow> Rows { get; }

    public IReadOnlyList<StepFamily> Families { get; }

    private int LegendRows => (Families.Count + 2 + (HasNightHands ? 1 : 0) + 1) / 2;

    public static double HourX(double hours) => Left + ((Right - Left) * hours / 24);

    public static StepFamily FamilyOf(StepKind kind) => kind switch
    {
        StepKind.HeatUp or StepKind.Blanch or StepKind.Remelt or StepKind.Pressurize => StepFamily.Fire,
        StepKind.Simmer or StepKind.HoldPressure => StepFamily.Simmer,
        StepKind.Roast or StepKind.NightHold => StepFamily.Oven,
        StepKind.Cool or StepKind.Chill => StepFamily.Cold,
        StepKind.Stand or StepKind.Soak or StepKind.Release => StepFamily.Rest,
        _ => StepFamily.Hands,
    };

    /// <summary>Hours of one day when the cook sleeps, by the schedule's own rule.</summary>
    public static IReadOnlyList<(double From, double To)> NightHours(PlanSchedule schedule)
    {
        double wakes = schedule.WakesAt.ToTimeSpan().TotalHours;
        double sleeps = schedule.SleepsAt.ToTimeSpan().TotalHours;
        (double From, double To)[] nights = wakes <= sleeps ? [(0, wakes), (sleeps, 24)] : [(sleeps, wakes)];
        return nights.Where(night => night.To - night.From > 1.0 / 120).ToList();
    }

    private static bool IsBar(PlanStep step) => step.Duration > TimeSpan.Zero;

    private static DateTimeOffset Later(DateTimeOffset ready, IEnumerable<DateTimeOffset> ends) => ends.Append(ready).Max();

    private static string Word(StepKind kind) => kind switch
    {
        StepKind.HeatUp => "heat up",
        StepKind.LiftOut => "lift out",
        StepKind.NightHold => "oven",
        StepKind.Pressurize => "to pressure",
        StepKind.HoldPressure => "pressure",
        _ => kind.ToString().ToLowerInvariant(),
    };

    /// <summary>Steps that run side by side lie one under the other.</summary>
    private static int[] LanesOf(IReadOnlyList<PlanStep> steps)
    {
        List<DateTimeOffset> ends = [];
        int[] lanes = new int[steps.Count];
        foreach (int i in Enumerable.Range(0, steps.Count).Where(i => IsLong(steps[i])).OrderBy(i => steps[i].At))
        {
            int lane = ends.FindIndex(end => end <= steps[i].At);
            if (lane < 0)
            {
                lane = ends.Count;
                ends.Add(default);
            }

            ends[lane] = steps[i].End;
            lanes[i] = lane;
        }

        return lanes;
    }

    // Short work of the hands lies over the simmer it interrupts; only what goes on by itself claims a lane.
    private static bool IsLong(PlanStep step) => IsBar(step) && FamilyOf(step.Kind) != StepFamily.Hands;

    private DateTime Local(DateTimeOffset moment) => TimeZoneInfo.ConvertTime(moment, _schedule.Zone).DateTime;

    private DayRow Row(DateTime day, double top, Timeline timeline, int[] lanes)
    {
        IReadOnlyList<PlanStep> steps = timeline.Steps;
        List<(StepFamily Family, int Lane, string Word, double From, double To)> parts = [];
        List<HandsMark> hands = [];
        List<(double X, int Number)> numbers = [];
        for (int i = 0; i < steps.Count; i++)
        {
            PlanStep step = steps[i];
            double from = (Local(step.At) - day).TotalHours;
            double to = Math.Max(from, (Local(step.End) - day).TotalHours);
            bool startsHere = from is >= 0 and < 24;
            if (IsBar(step) && from < 24 && to > 0)
            {
                parts.Add((FamilyOf(step.Kind), lanes[i], Word(step.Kind), Math.Max(0, from), Math.Min(24, to)));
            }

            if (startsHere && step.HandsOn > TimeSpan.Zero)
            {
                hands.Add(new HandsMark(HourX(from), step.InNight));
                numbers.Add((HourX(from), i + 1));
            }
        }

        List<DayBar> bars = BarsOf(parts, top);
        return new DayRow(top, day.ToString("ddd d MMM", CultureInfo.InvariantCulture), Note(day, timeline), Nights(), bars, hands, Gathered(numbers));
    }

    /// <summary>Bars of one day; a simmer that is only interrupted by checks is one bar.</summary>
    private static List<DayBar> BarsOf(List<(StepFamily Family, int Lane, string Word, double From, double To)> parts, double top)
    {
        List<(StepFamily Family, int Lane, string Word, double From, double To)> joined = [];
        foreach (var part in parts)
        {
            int before = joined.FindLastIndex(other => other.Family == part.Family && other.Lane == part.Lane
                && string.Equals(other.Word, part.Word, StringComparison.Ordinal));
            if (part.Family != StepFamily.Hands && before >= 0 && part.From - joined[before].To <= JoinWithinHours)
            {
                joined[before] = joined[before] with { To = Math.Max(joined[before].To, part.To) };
            }
            else
            {
                joined.Add(part);
            }
        }

        // Hands are drawn last, over the long bars they fall on.
        return joined
            .OrderBy(part => part.Family == StepFamily.Hands)
            .Select(part =>
            {
                double x = HourX(part.From);
                double width = Math.Max(1.5, HourX(part.To) - x);
                bool fits = part.Family != StepFamily.Hands && width >= (part.Word.Length * CharacterWidth) + 12;
                return new DayBar(part.Family, x, width, top + BarTop + (part.Lane * (BarHeight + LaneGap)), fits ? part.Word : null);
            })
            .ToList();
    }

    private string Note(DateTime day, Timeline timeline)
    {
        List<string> notes = [];
        DateTime start = Local(timeline.Start);
        DateTime ready = Local(timeline.Ready);
        if (start.Date == day)
        {
            notes.Add($"start {Clock(start)}");
        }

        if (ready.Date == day)
        {
            notes.Add($"ready {Clock(ready)}");
        }

        return string.Join(", ", notes);

        static string Clock(DateTime time) => time.ToString("HH:mm", CultureInfo.InvariantCulture);
    }

    private List<(double X, double Width)> Nights() =>
        NightHours(_schedule).Select(night => (HourX(night.From), HourX(night.To) - HourX(night.From))).ToList();

    /// <summary>Numbers in two lanes; those that would still touch are gathered into one run, "2–5".</summary>
    private static List<StepNumbers> Gathered(List<(double X, int Number)> numbers)
    {
        List<NumberRun> runs = numbers.Select(number => new NumberRun(number.X, number.X, number.Number, number.Number)).ToList();
        while (true)
        {
            double[] free = [double.NegativeInfinity, double.NegativeInfinity];
            List<StepNumbers> placed = [];
            foreach (NumberRun run in runs)
            {
                int lane = Array.FindIndex(free, edge => run.Left >= edge);
                if (lane < 0)
                {
                    break;
                }

                free[lane] = run.Right + 3;
                placed.Add(new StepNumbers(run.Centre, lane, run.Text));
            }

            if (placed.Count == runs.Count)
            {
                return placed;
            }

            // The first that found no room joins the one before it.
            runs[placed.Count - 1] = runs[placed.Count - 1].With(runs[placed.Count]);
            runs.RemoveAt(placed.Count);
        }
    }

    private readonly record struct NumberRun(double From, double To, int First, int Last)
    {
        public string Text => First == Last
            ? First.ToString(CultureInfo.InvariantCulture)
            : string.Create(CultureInfo.InvariantCulture, $"{First}–{Last}");

        public double Centre => Math.Clamp((From + To) / 2, DayStripLayout.Left - 6 + Half, DayStripLayout.Right + 6 - Half);

        public double Left => Centre - Half;

        public double Right => Centre + Half;

        private double Half => Text.Length * DigitWidth / 2;

        public NumberRun With(NumberRun next) => new(From, next.To, First, next.Last);
    }
}
