namespace Stockwright.Cooling.Limits;

/// <summary>
/// Holds a cooling curve against a limit (rules C.30 to C.32 in docs/equations-cooling.md): straight between points,
/// inclusive, in the figures and the unit the code prints.
/// </summary>
public static class CoolingJudge
{
    /// <summary>Judges one curve.</summary>
    /// <param name="curve">Predicted or measured, at the slowest-cooling point.</param>
    /// <param name="limit">The rule.</param>
    /// <param name="chillingStarted">
    /// Time on the curve at which chilling began, for limits that count from there; null for the first point. The curve's
    /// zero is then the end of cooking.
    /// </param>
    public static CoolingVerdict Judge(CoolingCurve curve, CoolingLimit limit, TimeSpan? chillingStarted = null)
    {
        ArgumentNullException.ThrowIfNull(curve);
        ArgumentNullException.ThrowIfNull(limit);
        bool fahrenheit = JudgesInFahrenheit(curve, limit);
        double[] degrees = curve.Degrees(fahrenheit);
        (TimeSpan? clock, bool below) = ClockStart(curve, degrees, limit, fahrenheit, chillingStarted);
        bool late = chillingStarted is { } begun && limit.ChillingStartsWithin is { } most && begun > most;

        List<StageVerdict> stages = [];
        TimeSpan? stageStart = clock;
        foreach (LimitStage stage in limit.Stages)
        {
            StageVerdict verdict = JudgeStage(curve, degrees, fahrenheit, stage, stages.Count + 1, clock, stageStart);
            stages.Add(verdict);
            stageStart = verdict.ReachedAt;
        }

        CoolingOutcome outcome = late || stages.Any(stage => stage.Outcome == CoolingOutcome.Fails)
            ? CoolingOutcome.Fails
            : stages.All(stage => stage.Outcome == CoolingOutcome.Meets) ? CoolingOutcome.Meets : CoolingOutcome.Unfinished;
        return new CoolingVerdict
        {
            Limit = limit,
            Outcome = outcome,
            ClockStartedAt = clock,
            StartsBelowClock = below,
            StartsTooLate = late,
            Stages = stages,
        };
    }

    /// <summary>Judges a prediction by its two edges and its middle.</summary>
    /// <param name="fast">Fast edge of the band.</param>
    /// <param name="central">Central curve.</param>
    /// <param name="slow">Slow edge.</param>
    /// <param name="limit">The rule.</param>
    /// <param name="chillingStarted">As in <see cref="Judge"/>.</param>
    public static BandVerdict JudgeBand(CoolingCurve fast, CoolingCurve central, CoolingCurve slow, CoolingLimit limit, TimeSpan? chillingStarted = null)
    {
        CoolingVerdict[] all = [Judge(fast, limit, chillingStarted), Judge(central, limit, chillingStarted), Judge(slow, limit, chillingStarted)];
        CoolingOutcome outcome = all.All(verdict => verdict.Outcome == all[0].Outcome) ? all[0].Outcome : CoolingOutcome.MayFail;
        return new BandVerdict(outcome, all[0], all[1], all[2]);
    }

    private static bool JudgesInFahrenheit(CoolingCurve curve, CoolingLimit limit) =>
        limit.Scales switch
        {
            (true, true) => curve.IsFahrenheit,
            (_, bool printsFahrenheit) => printsFahrenheit,
        };

    private static (TimeSpan? Clock, bool Below) ClockStart(CoolingCurve curve, double[] degrees, CoolingLimit limit, bool fahrenheit, TimeSpan? chillingStarted)
    {
        if (limit.ClockStart == Limits.ClockStart.ChillingStart)
        {
            return (chillingStarted ?? curve.Points[0].At, false);
        }

        double mark = limit.Stages[0].From.In(fahrenheit);
        int from = LastReheated(degrees, limit, fahrenheit);
        if (degrees[from] < mark - 1e-9)
        {
            return (curve.Points[from].At, true);
        }

        for (int i = from; i < degrees.Length - 1; i++)
        {
            if (degrees[i] >= mark - 1e-9 && degrees[i + 1] < mark - 1e-9)
            {
                double part = Math.Max(0, (degrees[i] - mark) / (degrees[i] - degrees[i + 1]));
                CoolingPoint before = curve.Points[i];
                return (before.At + ((curve.Points[i + 1].At - before.At) * part), false);
            }
        }

        return (null, false);
    }

    /// <summary>Where a fresh clock may start: the last point hot enough to count as a reheat, else the first.</summary>
    private static int LastReheated(double[] degrees, CoolingLimit limit, bool fahrenheit) =>
        limit.Correction.ReheatTo is { } reheat
            ? Math.Max(0, Array.FindLastIndex(degrees, value => value >= reheat.In(fahrenheit) - 1e-9))
            : 0;

    private static StageVerdict JudgeStage(
        CoolingCurve curve, double[] degrees, bool fahrenheit, LimitStage stage, int number, TimeSpan? clock, TimeSpan? stageStart)
    {
        TimeSpan? counted = stage.Clock == StageClock.FromClock ? clock : stageStart;
        TimeSpan? reached = stageStart is { } from && curve.FirstAtOrBelow(degrees, stage.To.In(fahrenheit), from) is { } seconds
            ? TimeSpan.FromSeconds(seconds)
            : null;
        if (counted is not { } start)
        {
            return new StageVerdict(number, stage, CoolingOutcome.Unfinished, null, null, null, false, null);
        }

        TimeSpan due = start + stage.Within;
        TimeSpan at = reached ?? curve.End;

        // Times come from divisions; a microsecond is not a missed limit.
        bool late = at > due + TimeSpan.FromMicroseconds(1);
        if (late)
        {
            return new StageVerdict(number, stage, CoolingOutcome.Fails, reached, due, at - due, reached is null, null);
        }

        CoolingOutcome outcome = reached is null ? CoolingOutcome.Unfinished : CoolingOutcome.Meets;
        return new StageVerdict(number, stage, outcome, reached, due, null, false, due - at);
    }
}
