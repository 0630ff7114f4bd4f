using Stockwright.Simmering;

namespace Stockwright.Cooking;

/// <summary>
/// Nights keep to the clock on the wall (R.5): a pot that runs late still goes into the oven at bedtime and comes out in the morning. What would then fall
/// into the night waits for the morning.
/// </summary>
internal static class NightClock
{
    private static readonly TimeSpan MostShift = TimeSpan.FromHours(12);

    public static IReadOnlyList<PotAction> Keep(LogView view, Dictionary<string, DateTimeOffset> dues, StageScript stage, IReadOnlyList<PotAction> actions)
    {
        if (view.Plan.Request.SimmersInOven)
        {
            // Into the oven and out of it by the simmer's own clock, no night.
            return actions;
        }

        Dictionary<string, DateTimeOffset> planned = [];
        foreach (Planning.PlanStep step in view.Plan.Timeline.Steps)
        {
            planned[step.Key] = step.At;
        }

        bool moved = false;
        List<PotAction> kept = [];
        foreach (PotAction action in actions)
        {
            bool isNight = action.Kind is PotActionKind.HoldBegins or PotActionKind.HoldEnds or PotActionKind.Pause;
            if (isNight && dues.TryGetValue(action.Key, out DateTimeOffset due) && due > view.Now && planned.TryGetValue(action.Key, out DateTimeOffset at)
                && (due - at).Duration() > TimeSpan.FromMinutes(1) && (due - at).Duration() < MostShift)
            {
                moved = true;
                kept.Add(action with { AtSeconds = Math.Clamp(action.AtSeconds - (due - at).TotalSeconds, 0, stage.Seconds) });
            }
            else
            {
                kept.Add(action);
            }
        }

        return moved ? Ordered(kept) : actions;
    }

    private static List<PotAction> Ordered(List<PotAction> actions)
    {
        double? ends = null;
        List<PotAction> later = [];
        foreach (PotAction action in actions.OrderByDescending(action => action.AtSeconds))
        {
            ends = action.Kind switch
            {
                PotActionKind.HoldEnds => action.AtSeconds,
                PotActionKind.HoldBegins => null,
                _ => ends,
            };
            later.Add(ends is { } morning && action.Kind is not PotActionKind.HoldEnds ? action with { AtSeconds = morning } : action);
        }

        // A pot in the oven comes out before anything else is done to it.
        return [.. later.OrderBy(action => action.AtSeconds).ThenBy(action => action.Kind == PotActionKind.HoldEnds ? -1 : (int)action.Kind).ThenBy(action => actions.IndexOf(action))];
    }
}
