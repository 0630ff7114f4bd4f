namespace Stockwright.Cooling.Limits;

/// <summary>How a curve stands against a limit.</summary>
public enum CoolingOutcome
{
    /// <summary>Every stage is met.</summary>
    Meets,

    /// <summary>A band straddles the limit: it may be met or missed.</summary>
    MayFail,

    /// <summary>A stage is missed.</summary>
    Fails,

    /// <summary>The curve ends with time still on the clock.</summary>
    Unfinished,
}

/// <summary>How one stage went.</summary>
/// <param name="Number">From one.</param>
/// <param name="Stage">The stage.</param>
/// <param name="Outcome">Met, missed or not yet over.</param>
/// <param name="ReachedAt">Time on the curve at which the stage's end was reached, or null.</param>
/// <param name="DueAt">Time on the curve by which it must be, or null when its clock has not started.</param>
/// <param name="OverBy">How long after the deadline it was reached (or the curve ended), or null when it was not missed.</param>
/// <param name="IsOverByAtLeast">True when the curve ended before the stage did, so that it is over by at least that.</param>
/// <param name="TimeLeft">Time to spare when met, time still on the clock when unfinished, otherwise null.</param>
public sealed record StageVerdict(
    int Number,
    LimitStage Stage,
    CoolingOutcome Outcome,
    TimeSpan? ReachedAt,
    TimeSpan? DueAt,
    TimeSpan? OverBy,
    bool IsOverByAtLeast,
    TimeSpan? TimeLeft);

/// <summary>What a limit says of one curve.</summary>
public sealed record CoolingVerdict
{
    /// <summary>The limit.</summary>
    public required CoolingLimit Limit { get; init; }

    /// <summary>Met, missed or not yet over.</summary>
    public required CoolingOutcome Outcome { get; init; }

    /// <summary>Time on the curve at which the clock started; null when the stock never fell that far.</summary>
    public required TimeSpan? ClockStartedAt { get; init; }

    /// <summary>True when the first point already lay below the temperature that starts the clock: earlier time is not counted and is unknown.</summary>
    public required bool StartsBelowClock { get; init; }

    /// <summary>True when chilling began later than the code allows; the limit is then missed whatever the stages say.</summary>
    public required bool StartsTooLate { get; init; }

    /// <summary>The stages in order.</summary>
    public required IReadOnlyList<StageVerdict> Stages { get; init; }

    /// <summary>The first missed stage, or null.</summary>
    public StageVerdict? FailedStage => Stages.FirstOrDefault(stage => stage.Outcome == CoolingOutcome.Fails);

    /// <summary>Time on the curve at which the last stage was met, or null.</summary>
    public TimeSpan? FinishedAt => Stages[^1].ReachedAt;
}

/// <summary>What a limit says of a prediction with its band.</summary>
/// <param name="Outcome">Meets or fails when the whole band does; may fail when it straddles.</param>
/// <param name="Fast">Verdict on the fast edge.</param>
/// <param name="Central">Verdict on the central curve.</param>
/// <param name="Slow">Verdict on the slow edge.</param>
public sealed record BandVerdict(CoolingOutcome Outcome, CoolingVerdict Fast, CoolingVerdict Central, CoolingVerdict Slow)
{
    /// <summary>Number of the stage that is, or may be, missed first; null when the whole band meets the limit.</summary>
    public int? StageAtRisk => (Central.FailedStage ?? Slow.FailedStage)?.Number;
}
