using Stockwright.Logbook;
using Stockwright.Planning;
using UnitsNet;

namespace Stockwright.Cooking;

/// <summary>When the heat went on, when it first simmered, when the heat went off: as entered, inferred, or still as expected (R.1).</summary>
/// <param name="HeatOn">Heat on; expected while <paramref name="IsOn"/> is false.</param>
/// <param name="IsOn">True when it has gone on.</param>
/// <param name="IsInferred">True when that follows from a later entry only.</param>
/// <param name="Simmers">First simmer as entered; null when it was not.</param>
/// <param name="HeatOff">Heat off for good; null while it is on.</param>
internal sealed record HeatTimes(DateTimeOffset HeatOn, bool IsOn, bool IsInferred, DateTimeOffset? Simmers, DateTimeOffset? HeatOff)
{
    /// <summary>A pot warmer than this has been on the heat.</summary>
    private static readonly Temperature Warm = Temperature.FromDegreesCelsius(40);

    private static readonly TimeSpan Least = TimeSpan.FromSeconds(1);

    /// <summary>Reads them off a log.</summary>
    public static HeatTimes Of(LogView view)
    {
        Timeline planned = view.Plan.Timeline;
        (DateTimeOffset on, bool isOn, bool inferred) = On(view);
        if (!isOn)
        {
            return new HeatTimes(planned.HeatOn + PreparationShift(view), false, false, null, null);
        }

        DateTimeOffset? off = Off(view, on);
        return new HeatTimes(on, true, inferred, FirstSimmer(view, on, off), off);
    }

    /// <summary>Entries from here on are of no pot on the heat, s after it went on.</summary>
    public double LimitSeconds => HeatOff is { } off ? Seconds(off) : CourseScript.Horizon.TotalSeconds;

    /// <summary>Seconds after the heat went on.</summary>
    public double Seconds(DateTimeOffset moment) => (moment - HeatOn).TotalSeconds;

    /// <summary>The step heat on is entered with.</summary>
    public static string HeatOnKey(BatchPlan plan) => plan.Timeline.Steps.Any(step => step.Kind == StepKind.HeatUp) ? "heatup-1" : "simmer-1";

    private static (DateTimeOffset On, bool IsOn, bool Inferred) On(LogView view)
    {
        string? fill = view.Plan.Timeline.Steps.LastOrDefault(step => step.Kind == StepKind.Fill)?.Key;
        LogEntry? entered = view.Done(HeatOnKey(view.Plan)) ?? (fill is null ? null : view.Done(fill));
        (LogEntry Entry, TimeSpan Offset)? evidence = null;
        foreach (LogEntry entry in view.Entries)
        {
            if (Offset(view, entry) is { } offset)
            {
                evidence = (entry, offset);
                break;
            }
        }

        if (entered is not null && (evidence is not { } earlier || earlier.Entry.HappenedAt > entered.HappenedAt || earlier.Offset == TimeSpan.Zero))
        {
            return (entered.HappenedAt, true, false);
        }

        return evidence is { } found ? (found.Entry.HappenedAt - found.Offset, true, true) : (default, false, false);
    }

    /// <summary>How long after heat on an entry is to be expected; null when it says nothing of the heat.</summary>
    private static TimeSpan? Offset(LogView view, LogEntry entry)
    {
        BatchPlan plan = view.Plan;
        TimeSpan heatUp = plan.HeatUp.Time.Central;
        TimeSpan strained = plan.Timeline.Strained - plan.Timeline.HeatOn;
        return entry.Fact switch
        {
            LogFact.StepDone when view.StepOf(entry) is { Kind: >= StepKind.Skim } step => step.At - plan.Timeline.HeatOn,
            LogFact.Simmers or LogFact.OffTheBoil or LogFact.BoiledOver or LogFact.RanLow or LogFact.Skimmed => heatUp,
            LogFact.TemperatureRead { Place: ReadingPlace.Pot } read when read.Temperature > Warm => ReachedAfter(plan, read.Temperature),
            LogFact.Strained or LogFact.SpentWeighed or LogFact.CoolingBegan or LogFact.ColdUnmeasured or LogFact.CorrectionMade or LogFact.Portioned => strained,
            LogFact.TemperatureRead { Place: ReadingPlace.Cooling } => strained,
            _ => null,
        };
    }

    private static TimeSpan ReachedAfter(BatchPlan plan, Temperature temperature)
    {
        int index = plan.Simmer.Samples.ToList().FindIndex(sample => sample.Temperature >= temperature);
        return index >= 0 ? plan.Simmer.Samples[index].At : plan.HeatUp.Time.Central;
    }

    /// <summary>By how much the work before the heat runs late, or early (R.1): by the last step entered, and by the one that should be done by now.</summary>
    private static TimeSpan PreparationShift(LogView view)
    {
        List<PlanStep> steps = [.. view.Plan.Timeline.Steps.Where(step => step.Kind < StepKind.HeatUp)];
        int last = steps.FindLastIndex(step => view.Done(step.Key) is not null);
        TimeSpan shift = TimeSpan.Zero;
        if (last >= 0)
        {
            DateTimeOffset at = view.Done(steps[last].Key)!.HappenedAt;
            shift = at > steps[last].End ? at - steps[last].End : at < steps[last].At ? at - steps[last].At : TimeSpan.Zero;
        }

        if (last + 1 < steps.Count)
        {
            TimeSpan late = view.Now - steps[last + 1].End;
            return late > shift ? late : shift;
        }

        TimeSpan waited = view.Now - view.Plan.Timeline.HeatOn;
        return waited > shift ? waited : shift;
    }

    private static DateTimeOffset? FirstSimmer(LogView view, DateTimeOffset on, DateTimeOffset? off)
    {
        DateTimeOffset soon = on + (0.8 * view.Plan.HeatUp.Time.Central);
        string heatOn = HeatOnKey(view.Plan);
        foreach (LogEntry entry in view.Entries)
        {
            if (entry.HappenedAt <= on || entry.HappenedAt >= off)
            {
                continue;
            }

            bool simmers = entry.Fact is LogFact.Simmers
                || (entry.Fact is LogFact.StepDone { StepKey: "simmer-1" } && !string.Equals(heatOn, "simmer-1", StringComparison.Ordinal));
            if (simmers)
            {
                return entry.HappenedAt;
            }

            bool wentOnBefore = entry.Fact is LogFact.OffTheBoil
                || view.StepOf(entry) is { Kind: StepKind.Skim or StepKind.Check or StepKind.Add or StepKind.NightHold }
                || (entry.Fact is LogFact.HeatLost or LogFact.Paused or LogFact.HeatMoved { HobId: LogFact.HeatMoved.NoHeat } && entry.HappenedAt > soon);
            if (wentOnBefore)
            {
                return null;
            }
        }

        return null;
    }

    private static DateTimeOffset? Off(LogView view, DateTimeOffset on)
    {
        Timeline planned = view.Plan.Timeline;
        // Entered late, after it was strained, the step says nothing of when the heat went off.
        TimeSpan standing = planned.Strained - planned.HeatOff;
        DateTimeOffset? strained = Milestones.Strained(view) ?? Milestones.AfterStraining(view)?.HappenedAt;
        DateTimeOffset? entered = view.Done("stand-1")?.HappenedAt;
        DateTimeOffset? off = entered is not null && !(entered > strained) ? entered : strained - standing;

        if (off is null && view.Closing is { } closed)
        {
            DateTimeOffset end = on + (planned.HeatOff - planned.HeatOn);
            off = end < closed.HappenedAt ? end : closed.HappenedAt;
        }

        if (off is not { } found)
        {
            return null;
        }

        // What the cook still did at the pot lies before.
        DateTimeOffset? lastVisit = view.Entries.LastOrDefault(entry => entry.HappenedAt <= found + standing
            && (entry.Fact is LogFact.LevelRead or LogFact.WaterAdded or LogFact.Skimmed || view.StepOf(entry) is { Kind: StepKind.Skim or StepKind.Check or StepKind.Add }))?.HappenedAt;
        if (found != entered && lastVisit > found)
        {
            found = lastVisit.Value;
        }

        return found > on + Least ? found : on + Least;
    }
}
