using Stockwright.Numerics;
using Stockwright.Simmering;

namespace Stockwright.Cooking;

/// <summary>When the pot gets low if nobody comes by (R.11): the same pot, nothing added any more, for a day.</summary>
internal static class DryRiskFinder
{
    private const double HorizonSeconds = 24 * 3600;
    private const double EverySeconds = 15 * 60;

    /// <summary>So little left counts as nothing, kg.</summary>
    private const double DryKilograms = 0.05;

    public static DryRisk Of(LogView view, HeatTimes times, ExpectedPlan expected)
    {
        double now = Math.Max(0, times.Seconds(view.Now));
        SimmerScript alone = Alone(expected, now);
        PotEnvironment environment = view.Plan.Workings.Environment;
        (DateTimeOffset? uncovered, DateTimeOffset? dry) = Moments(expected.Belief.Run(environment, alone, 0, sampled: false), times);
        (DateTimeOffset? uncoveredFirst, DateTimeOffset? dryFirst) = Moments(expected.Belief.Run(environment, alone, NormalQuantile.Ninety, sampled: false), times);
        return new DryRisk(uncovered, Earlier(uncovered, uncoveredFirst), dry, Earlier(dry, dryFirst));
    }

    private static SimmerScript Alone(ExpectedPlan expected, double now)
    {
        HashSet<string> later = [.. expected.Runs.Central.Checks.Where(check => check.Seconds >= now - 1).Select(check => check.Key)];
        foreach ((double at, PotAction action) in expected.Runs.Central.Actions)
        {
            if (at > now)
            {
                later.Add(action.Key);
            }
        }

        HashSet<string> entered = [.. expected.Script.Events.Where(one => one.Action is not null).Select(one => one.Action!.Key)];
        IEnumerable<PotEvent> looks = Enumerable.Range(0, (int)(HorizonSeconds / EverySeconds) + 1).Select(i => new PotEvent(now + (i * EverySeconds), PotEventKind.Look, -1 - i));
        return expected.Script with
        {
            Stages = [.. expected.Script.Stages.Select(stage => stage with { LiftsOut = false, Actions = [.. stage.Actions.Where(action => !later.Contains(action.Key) || entered.Contains(action.Key))] })],
            Events = CourseEvents.Sorted(expected.Script.Events.Concat(looks)),
            TopUp = TopUpRule.None,
            EndsNotBeforeSeconds = now + HorizonSeconds + 1,
        };
    }

    private static (DateTimeOffset? Uncovered, DateTimeOffset? Dry) Moments(SimmerOutcome outcome, HeatTimes times)
    {
        List<SimmerOutcome.Sight> looks = [.. outcome.Looks.Where(look => look.Key < 0).OrderBy(look => look.Value.Seconds).Select(look => look.Value)];

        // Without solids (a glaze) nothing can stand out.
        return (First(looks, look => look.HeapMetres > 0 ? look.LevelMetres - look.HeapMetres : 1, times), First(looks, look => look.LiquidKilograms - DryKilograms, times));
    }

    /// <summary>When a figure first falls to zero, straight between looks.</summary>
    private static DateTimeOffset? First(List<SimmerOutcome.Sight> looks, Func<SimmerOutcome.Sight, double> figure, HeatTimes times)
    {
        for (int i = 0; i < looks.Count; i++)
        {
            double here = figure(looks[i]);
            if (here > 0)
            {
                continue;
            }

            double before = i > 0 ? figure(looks[i - 1]) : 0;
            double part = i > 0 ? before / (before - here) : 0;
            double seconds = i > 0 ? looks[i - 1].Seconds + (part * (looks[i].Seconds - looks[i - 1].Seconds)) : looks[0].Seconds;
            return times.HeatOn + TimeSpan.FromSeconds(seconds);
        }

        return null;
    }

    private static DateTimeOffset? Earlier(DateTimeOffset? one, DateTimeOffset? other) => one is null ? other : other is null || one < other ? one : other;
}
