using Stockwright.Kitchen;

namespace Stockwright.Planning;

/// <summary>Chooses how a night is kept free of work when the cook has left it to the planner (equation F.10 in docs/equations.md).</summary>
internal static class NightSettler
{
    /// <summary>Work that is over so soon after bedtime is finished.</summary>
    private static readonly TimeSpan LittleLate = TimeSpan.FromMinutes(90);

    /// <summary>Shorter simmers are not worth putting away.</summary>
    private static readonly TimeSpan WorthPuttingAway = TimeSpan.FromHours(3);

    /// <summary>The ways to try, best first, for a plan with work in the night; empty when it is best left as it is.</summary>
    /// <param name="request">What is asked.</param>
    /// <param name="boiling">The time it simmers.</param>
    /// <param name="asLaid">The timetable with everything done when it falls due.</param>
    public static IReadOnlyList<NightPlan> Ways(PlanRequest request, BoilingReport boiling, Timeline asLaid)
    {
        bool works = asLaid.Steps.Any(step => step.InNight);
        if (!works || request.IsUnderPressure || request.Recipe.IsAttended || boiling.PlannedTime < WorthPuttingAway || IsLittleLate(request.Schedule, asLaid))
        {
            return [];
        }

        return request.Oven is not null && request.Pot.Kind == PotKind.Open ? [NightPlan.OvenHold, NightPlan.StopAndCool] : [NightPlan.StopAndCool];
    }

    /// <summary>True when all that falls in the night is over soon after bedtime.</summary>
    private static bool IsLittleLate(PlanSchedule schedule, Timeline timeline) => timeline.Steps
        .Where(step => step.InNight)
        .All(step => step.At + step.HandsOn - NightWindows.Next(schedule, step.At - TimeSpan.FromHours(24), schedule.SleepsAt) <= LittleLate);
}
