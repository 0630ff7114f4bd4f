using Stockwright.Cooling.Limits;
using Stockwright.Planning;
using UnitsNet;

namespace Stockwright.Cooking;

/// <summary>Ranks what a batch needs of the cook now (R.14): danger before deadlines, deadlines before looks, looks before what goes in.</summary>
public static class CourseMatters
{
    /// <summary>So soon before it is dry a pot is not left for anything else.</summary>
    internal static readonly TimeSpan AboutToRunDry = TimeSpan.FromMinutes(30);

    /// <summary>So little liquid counts as none, as in R.11.</summary>
    private static readonly Volume Dry = Volume.FromMilliliters(50);

    /// <summary>Levels this near to each other are one level.</summary>
    private static readonly Length SameLevel = Length.FromMillimeters(2);

    /// <summary>A look that is overdue is expected at the present moment, with its water: what stood before it is what counts.</summary>
    private static readonly TimeSpan JustNow = TimeSpan.FromSeconds(2);

    /// <summary>Lists what is open, the most urgent first; of one kind, what is due the longest. Empty when nothing is due, and once the record is closed.</summary>
    internal static IReadOnlyList<CourseMatter> Of(BatchCourse course)
    {
        ArgumentNullException.ThrowIfNull(course);
        return course.Phase == BatchPhase.Closed
            ? []
            : [.. OfThePot(course).Concat(OfTheCooling(course)).Concat(OfTheSteps(course)).OrderBy(matter => matter.Kind).ThenBy(matter => matter.At)];
    }

    /// <summary>True when the solids most likely stand out of the liquid by a moment if nothing is added.</summary>
    public static bool IsUncoveredBy(BatchCourse course, DateTimeOffset moment)
    {
        ArgumentNullException.ThrowIfNull(course);
        return course is { Pot: { } pot, Risk: var risk } && (pot.IsUncovered || risk?.UncoveredAt <= moment);
    }

    /// <summary>True when the pot most likely has no liquid left.</summary>
    public static bool IsDry(BatchCourse course)
    {
        ArgumentNullException.ThrowIfNull(course);
        return course.Pot is { } pot && pot.Liquid.Central <= Dry;
    }

    /// <summary>The next look after a step, or the end of the simmer when there is none.</summary>
    public static DateTimeOffset NextLook(BatchCourse course, CourseStep step)
    {
        ArgumentNullException.ThrowIfNull(course);
        ArgumentNullException.ThrowIfNull(step);
        return course.Steps.FirstOrDefault(other => other.Step.Kind == StepKind.Check && other.Step.At > step.Step.At && other.Standing == StepStanding.Ahead)?.Step.At
            ?? course.Expected.Timeline.HeatOff;
    }

    private static IEnumerable<CourseMatter> OfThePot(BatchCourse course)
    {
        if (course.HeatAwaySince is { } gone && course.Phase == BatchPhase.HeatAway)
        {
            yield return new CourseMatter(MatterKind.HeatAway, gone, null);
        }

        if (course is not { Pot: { } pot, Risk: { } risk })
        {
            yield break;
        }

        bool isDry = IsDry(course);
        if (isDry || risk.DryAt <= course.Now + AboutToRunDry || risk.DryAtEarliest <= course.Now)
        {
            DateTimeOffset at = isDry ? Since(course, point => (point.BelowRim - pot.BelowRim.Central).Abs() <= SameLevel) : risk.DryAt ?? risk.DryAtEarliest ?? course.Now;
            yield return new CourseMatter(MatterKind.RunsDry, at, null) { Cover = Cover(course, pot) };
        }
        else if (pot.IsUncovered)
        {
            yield return new CourseMatter(MatterKind.Uncovered, Since(course, point => point.BelowRim > pot.HeapBelowRim), null) { Cover = Cover(course, pot) };
        }
    }

    private static IEnumerable<CourseMatter> OfTheCooling(BatchCourse course)
    {
        if (course is not { Cooling: { } watch, Phase: BatchPhase.Cooling or BatchPhase.Finishing })
        {
            yield break;
        }

        CourseStep? step = course.Steps.FirstOrDefault(one => one.Step.Kind == StepKind.Cool && one.Standing is not (StepStanding.Done or StepStanding.Missed));
        bool isCold = watch.Cold is not null;
        bool isMissed = watch.Action?.Step is CorrectiveStep.Discard or CorrectiveStep.ReheatAndCoolAgain || watch.Verdict?.Outcome == CoolingOutcome.Fails;
        if (isMissed || (!isCold && (watch.Warning is not null || watch.StoodTooLong is not null || watch.DueAt <= course.Now)))
        {
            yield return new CourseMatter(MatterKind.CoolingAlarm, watch.DueAt ?? watch.Began, step);
        }
        else if (!isCold)
        {
            yield return new CourseMatter(MatterKind.Cooling, watch.DueAt ?? watch.Began, step);
        }
    }

    private static IEnumerable<CourseMatter> OfTheSteps(BatchCourse course) => course.Steps
        .Where(step => step.Standing is StepStanding.Due or StepStanding.Overdue && step.Step.Kind != StepKind.Cool)
        .Select(step => new CourseMatter(KindOf(step.Step.Kind), step.Step.At, step));

    private static MatterKind KindOf(StepKind kind) => kind switch
    {
        StepKind.Stand => MatterKind.HeatOff,
        StepKind.Check or StepKind.Skim or StepKind.NightHold => MatterKind.Visit,
        StepKind.Add => MatterKind.Addition,
        _ => MatterKind.Step,
    };

    /// <summary>Since when it has been as it is now: the first of the points up to now that are all alike.</summary>
    private static DateTimeOffset Since(BatchCourse course, Func<CoursePoint, bool> isAlike)
    {
        DateTimeOffset since = course.Now;
        foreach (CoursePoint point in course.ExpectedPoints.Where(point => point.At < course.Now - JustNow).Reverse())
        {
            if (!isAlike(point))
            {
                break;
            }

            since = point.At;
        }

        return since;
    }

    private static Volume? Cover(BatchCourse course, PotNow pot) => PotRoom.Between(course.Batch.Planned.Request.Pot, pot.HeapBelowRim, pot.BelowRim.Central);
}
