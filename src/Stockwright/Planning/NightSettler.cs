using Stockwright.Kitchen;

namespace Stockwright.Planning;

/// <summary>Chooses how a night is kept free of work when the cook has left it to the planner (equation F.10 in docs/equations.md).</summary>
internal static class NightSettler
{
    /// <summary>Work that is over so soon after bedtime is finished.</summary>
    private static readonly TimeSpan LittleLate = TimeSpan.FromMinutes(90);

    /// <summary>Shorter simmers are not worth putting away.</summary>
    private static readonly TimeSpan WorthPuttingAway = TimeSpan.FromHours(3);

    /// <summary>True when a timetable has work in the night that is not over soon after bedtime.</summary>
    public static bool HasWork(PlanSchedule schedule, Timeline timeline) => timeline.Steps.Any(step => step.InNight) && !IsLittleLate(schedule, timeline);

    /// <summary>The ways to put the pot away for a night, best first; none for one that is not put away.</summary>
    /// <param name="request">What is asked.</param>
    /// <param name="boiling">The time it simmers.</param>
    public static IReadOnlyList<NightPlan> Ways(PlanRequest request, BoilingReport boiling)
    {
        if (request.IsUnderPressure || request.Recipe.IsAttended || boiling.PlannedTime < WorthPuttingAway)
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
