using Stockwright.Cooling;
using Stockwright.Cooling.Limits;
using Stockwright.Evidence;
using Stockwright.Logbook;
using Stockwright.Planning;
using UnitsNet;

namespace Stockwright.Cooking;

/// <summary>How far a batch has come.</summary>
public enum BatchPhase
{
    /// <summary>Nothing entered and its hour not come.</summary>
    NotBegun,

    /// <summary>Weighing, soaking, roasting, blanching, filling.</summary>
    Preparing,

    /// <summary>Heat on, not simmering yet.</summary>
    HeatingUp,

    /// <summary>Simmering.</summary>
    Simmering,

    /// <summary>Without heat though it should have it: power cut, pause, off for the night.</summary>
    HeatAway,

    /// <summary>Heat off for good: standing, straining.</summary>
    Straining,

    /// <summary>Cooling after straining.</summary>
    Cooling,

    /// <summary>Cold by a reading, or by the cook's word that there is no thermometer: defatting, portioning.</summary>
    Finishing,

    /// <summary>The record is closed.</summary>
    Closed,
}

/// <summary>What became of a step.</summary>
public enum StepStanding
{
    /// <summary>Entered as done.</summary>
    Done,

    /// <summary>Its time has come.</summary>
    Due,

    /// <summary>Its time has passed and nothing is entered, but it can still be done.</summary>
    Overdue,

    /// <summary>Its time passed and the next visit came or is due: it will not be done any more.</summary>
    Missed,

    /// <summary>Still ahead.</summary>
    Ahead,

    /// <summary>Work on cold stock, which cannot begin before the stock is cold (R.13).</summary>
    Waiting,
}

/// <summary>A step as it was planned, as it is expected now, and what became of it.</summary>
/// <param name="Step">The step with times and figures as expected now.</param>
/// <param name="PlannedAt">When the plan had it; null for a step that came in by re-planning.</param>
/// <param name="Standing">What became of it.</param>
/// <param name="Entry">The entry that says it is done, or null.</param>
public sealed record CourseStep(PlanStep Step, DateTimeOffset? PlannedAt, StepStanding Standing, LogEntry? Entry)
{
    /// <summary>Stable key.</summary>
    public string Key => Step.Key;
}

/// <summary>The pot at a moment, with its band.</summary>
/// <param name="Temperature">Temperature of pot and contents.</param>
/// <param name="BelowRim">Level, down from the rim; low and high by depth.</param>
/// <param name="Liquid">Free liquid, as if measured cold.</param>
/// <param name="HeapBelowRim">Top of the solids, down from the rim.</param>
public sealed record PotNow(Temperature Temperature, Band<Length> BelowRim, Band<Volume> Liquid, Length HeapBelowRim)
{
    /// <summary>True when the solids most likely stand out of the liquid.</summary>
    public bool IsUncovered => HeapBelowRim < BelowRim.Central;
}

/// <summary>When the pot gets low if nobody comes by and nothing is added.</summary>
/// <param name="UncoveredAt">Solids stand out, most likely; null within the horizon looked at.</param>
/// <param name="UncoveredAtEarliest">The same at the edge that loses most.</param>
/// <param name="DryAt">Nothing left to boil away, most likely.</param>
/// <param name="DryAtEarliest">The same at the edge that loses most.</param>
public sealed record DryRisk(DateTimeOffset? UncoveredAt, DateTimeOffset? UncoveredAtEarliest, DateTimeOffset? DryAt, DateTimeOffset? DryAtEarliest);

/// <summary>One point of the course over time, for drawing plan and reality together.</summary>
/// <param name="At">When.</param>
/// <param name="Temperature">Temperature.</param>
/// <param name="BelowRim">Level, down from the rim.</param>
public readonly record struct CoursePoint(DateTimeOffset At, Temperature Temperature, Length BelowRim);

/// <summary>A stretch without heat, and what it means.</summary>
/// <param name="From">Heat gone.</param>
/// <param name="Until">Heat back; null while it is away.</param>
/// <param name="Coldest">Temperature it fell to, or will have fallen to by now.</param>
/// <param name="BelowHot">Time spent below the temperature hot food is held at, reheating included.</param>
/// <param name="HotLine">That temperature, by the batch's cooling limit.</param>
/// <param name="Delay">By how much the end of the simmer moves.</param>
/// <param name="Meaning">What that means, in plain words.</param>
/// <param name="Advice">What to do, in plain words.</param>
/// <param name="Source">Where the advice comes from, with its grade.</param>
/// <param name="IsSerious">True when the batch may have to be discarded.</param>
public sealed record HeatGap(
    DateTimeOffset From,
    DateTimeOffset? Until,
    Temperature Coldest,
    TimeSpan BelowHot,
    Temperature HotLine,
    TimeSpan Delay,
    string Meaning,
    string Advice,
    string Source,
    bool IsSerious);

/// <summary>The cooling of a batch, held against its limit as the readings come in.</summary>
/// <param name="Began">When cooling began (or straining ended, when nothing else is entered).</param>
/// <param name="Measured">The readings; null before the first.</param>
/// <param name="Verdict">Verdict on the readings so far; null before the first.</param>
/// <param name="Action">What the limit asks for now.</param>
/// <param name="Central">Readings carried on, most likely; null when the trend cannot be told.</param>
/// <param name="Trend">Verdict on the readings carried on; null when the trend cannot be told.</param>
/// <param name="Warning">Early warning that the trend will or may miss a stage, in plain words; null when there is none.</param>
/// <param name="StoodTooLong">Warning when it stands without readings; null when there is none.</param>
public sealed record CoolingWatch(
    DateTimeOffset Began,
    CoolingCurve? Measured,
    CoolingVerdict? Verdict,
    CorrectiveAction? Action,
    CoolingCurve? Central,
    BandVerdict? Trend,
    string? Warning,
    string? StoodTooLong)
{
    /// <summary>The entry that says the stock is cold: a reading at or below the limit's last temperature, or the cook's word that there is no thermometer; null while it cools.</summary>
    public LogEntry? Cold { get; init; }

    /// <summary>The stage whose clock is running; null before the clock starts and after the last stage.</summary>
    public StageVerdict? Running => Verdict?.Stages.FirstOrDefault(stage => stage.ReachedAt is null && stage.DueAt is not null);

    /// <summary>When the running stage must be over; null when none is.</summary>
    public DateTimeOffset? DueAt => Running?.DueAt is { } due ? Began + due : null;
}

/// <summary>A batch as it stands: what was planned, what happened, and what is to be expected from here.</summary>
public sealed record BatchCourse
{
    /// <summary>The batch.</summary>
    public required Batch Batch { get; init; }

    /// <summary>Its log.</summary>
    public required BatchLog Log { get; init; }

    /// <summary>The moment this was worked out for.</summary>
    public required DateTimeOffset Now { get; init; }

    /// <summary>How far it has come.</summary>
    public required BatchPhase Phase { get; init; }

    /// <summary>
    /// The plan worked out again from what happened: simmer, ledger, yield, timeline and what predictions are made from.
    /// Until something is entered it is the plan as it was.
    /// </summary>
    public required BatchPlan Expected { get; init; }

    /// <summary>Every step, in order of when it is expected.</summary>
    public required IReadOnlyList<CourseStep> Steps { get; init; }

    /// <summary>The pot now, while it is on the heat or stands hot; null before the heat goes on and after straining.</summary>
    public PotNow? Pot { get; init; }

    /// <summary>What happens when nobody comes by; null when the pot is not on the heat.</summary>
    public DryRisk? Risk { get; init; }

    /// <summary>Loss by evaporation, over that of the plan, as the readings have it; one when nothing was read.</summary>
    public required Band<double> LossOverPlan { get; init; }

    /// <summary>Level and temperature as planned, by the clock of the plan.</summary>
    public required IReadOnlyList<CoursePoint> PlannedPoints { get; init; }

    /// <summary>Level and temperature as worked out from the log, and from now on as expected.</summary>
    public required IReadOnlyList<CoursePoint> ExpectedPoints { get; init; }

    /// <summary>Stretches without heat.</summary>
    public IReadOnlyList<HeatGap> HeatGaps { get; init; } = [];

    /// <summary>Cooling; null before straining.</summary>
    public CoolingWatch? Cooling { get; init; }

    /// <summary>Since when the heat has been away against the plan; null while it is not.</summary>
    public DateTimeOffset? HeatAwaySince { get; init; }

    /// <summary>What the cook should know of the entries: readings that cannot be, a pot that boils dry, what was worked out in place of an entry.</summary>
    public IReadOnlyList<PlanNotice> Notices { get; init; } = [];

    /// <summary>What is open, the most urgent first.</summary>
    public IReadOnlyList<CourseMatter> Matters => CourseMatters.Of(this);

    /// <summary>The step to do now or next: that of the most urgent matter that has one, else the first ahead; null when there is none.</summary>
    public CourseStep? Next => Matters.FirstOrDefault(matter => matter.Step is not null)?.Step
        ?? Steps.FirstOrDefault(step => step.Standing == StepStanding.Ahead);

    /// <summary>Steps whose time has passed without an entry.</summary>
    public IEnumerable<CourseStep> Behind => Steps.Where(step => step.Standing is StepStanding.Overdue or StepStanding.Missed);
}
