using Stockwright.Logbook;
using Stockwright.Planning;

namespace Stockwright.Cooking;

/// <summary>
/// What became of every step (R.3): done when entered, or when a later entry cannot be without it; missed when the next visit came or is due, or when the
/// heat is off or due off.
/// </summary>
internal sealed class CourseSteps(LogView view, HeatTimes times, CourseScript course, Timeline expected, TimeSpan stagesEnd, LogEntry? cold)
{
    private static readonly TimeSpan Grace = TimeSpan.FromMinutes(10);

    private readonly Dictionary<string, PlanStep> planned = view.Plan.Timeline.Steps.ToDictionary(step => step.Key, StringComparer.Ordinal);
    private readonly bool isClosed = view.Closing is not null;

    public IReadOnlyList<CourseStep> List()
    {
        List<CourseStep> steps = [.. expected.Steps.Select(step => Of(step, isCutOff: false))];
        HashSet<string> there = [.. expected.Steps.Select(step => step.Key)];
        TimeSpan shift = times.HeatOn - view.Plan.Timeline.HeatOn;
        steps.AddRange(view.Plan.Timeline.Steps
            .Where(step => !there.Contains(step.Key))
            .Select(step => Of(step with { At = step.At + shift, CheckIndex = null }, isCutOff: true)));
        return [.. steps.OrderBy(step => step.Step.At).ThenBy(step => step.Step.Kind)];
    }

    private CourseStep Of(PlanStep step, bool isCutOff)
    {
        PlanStep? plan = planned.GetValueOrDefault(step.Key);
        if (step.Kind == StepKind.Stand && times.HeatOff is null)
        {
            // The heat is still on past its time: off is due since then.
            step = step with { At = times.HeatOn + stagesEnd };
        }

        LogEntry? entry = Entry(step);
        StepStanding standing = entry is not null ? StepStanding.Done
            : isCutOff || isClosed ? StepStanding.Missed
            : step.Kind >= StepKind.Chill && cold is null && times.HeatOff is not null ? StepStanding.Waiting
            : step.At > view.Now ? StepStanding.Ahead
            : IsMissed(step) ? StepStanding.Missed
            : view.Now <= step.At + Grace ? StepStanding.Due
            : StepStanding.Overdue;
        if (entry is not null && plan is not null && step.Kind < StepKind.HeatUp)
        {
            bool inTime = view.Done(step.Key) is not { } own || (own.HappenedAt >= plan.At && own.HappenedAt <= plan.End);
            step = step with { At = inTime ? plan.At : entry.HappenedAt };
        }

        return new CourseStep(step, plan?.At, standing, entry);
    }

    private LogEntry? Entry(PlanStep step) => step.Kind switch
    {
        < StepKind.HeatUp => view.Done(step.Key) ?? LaterPreparation(step) ?? HeatEntry(),
        StepKind.HeatUp => view.Done(step.Key) ?? SimmerEntry(),
        StepKind.Simmer => view.Done(step.Key) ?? SimmerEntry(),
        StepKind.Lock or StepKind.Pressurize or StepKind.HoldPressure or StepKind.Release or StepKind.Open => view.Done(step.Key) ?? LaterAtPot(step),
        StepKind.Stand => view.Done(step.Key) ?? Milestones.Finished(view, StepKind.Strain),
        StepKind.Cool => view.Done(step.Key) ?? Milestones.Finished(view, StepKind.Cool) ?? cold,
        StepKind.Strain or StepKind.Chill or StepKind.Defat or StepKind.Remelt or StepKind.Portion => view.Done(step.Key) ?? Milestones.Finished(view, step.Kind),
        _ => course.Visits.TryGetValue(step.Key, out PotVisit visit) ? visit.Entry : view.Done(step.Key),
    };

    /// <summary>Nobody roasts what was not weighed: a later step of the preparation says the earlier ones are done.</summary>
    private LogEntry? LaterPreparation(PlanStep step)
    {
        bool after = false;
        foreach (PlanStep other in view.Plan.Timeline.Steps.Where(other => other.Kind < StepKind.HeatUp))
        {
            if (after && view.Done(other.Key) is { } entry)
            {
                return entry;
            }

            after |= string.Equals(other.Key, step.Key, StringComparison.Ordinal);
        }

        return null;
    }

    /// <summary>A lid that was opened had been locked: a later step of the pressure, or the straining, says the earlier ones are done.</summary>
    private LogEntry? LaterAtPot(PlanStep step) =>
        view.Plan.Timeline.Steps.Where(other => other.Kind is > StepKind.NightHold and < StepKind.Stand && other.Kind > step.Kind).Select(other => view.Done(other.Key)).FirstOrDefault(entry => entry is not null)
        ?? Milestones.Finished(view, StepKind.Strain);

    private LogEntry? HeatEntry() => times.IsOn
        ? view.Done(HeatTimes.HeatOnKey(view.Plan)) ?? view.Entries.FirstOrDefault(entry => entry.HappenedAt >= times.HeatOn)
        : null;

    /// <summary>The first entry that only a pot that has simmered allows.</summary>
    private LogEntry? SimmerEntry() => times.IsOn
        ? view.Entries.FirstOrDefault(entry => entry.HappenedAt == times.Simmers)
            ?? view.Entries.FirstOrDefault(entry => view.StepOf(entry) is { Kind: >= StepKind.Skim })
            ?? course.Visits.Values.OrderBy(visit => visit.At).FirstOrDefault().Entry
            ?? Milestones.Finished(view, StepKind.Strain)
        : null;

    /// <summary>Once the lid is locked, what was to be done in the open pot before is not done any more.</summary>
    private bool IsLockedOut(PlanStep step) => step.Kind is StepKind.Skim or StepKind.Add
        && expected.Steps.Any(other => other.Kind == StepKind.Lock && step.At <= other.At && (other.At <= view.Now || view.Done(other.Key) is not null));

    private bool IsMissed(PlanStep step)
    {
        if (IsLockedOut(step))
        {
            return true;
        }

        if (step.Kind is not (StepKind.Skim or StepKind.Check or StepKind.Add or StepKind.NightHold))
        {
            return false;
        }

        if (times.HeatOff is not null || view.Now >= times.HeatOn + stagesEnd)
        {
            return true;
        }

        StepKind[] next = step.Kind switch
        {
            StepKind.Skim => [StepKind.Skim, StepKind.Check],
            StepKind.Check => [StepKind.Check],
            StepKind.NightHold => [StepKind.NightHold],
            _ => [],
        };
        return expected.Steps.Any(other => next.Contains(other.Kind) && other.At > step.At && (other.At <= view.Now || course.Visits.ContainsKey(other.Key)));
    }
}
