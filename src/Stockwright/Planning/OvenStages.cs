using Stockwright.Simmering;

namespace Stockwright.Planning;

/// <summary>
/// The course of a pot that simmers in the oven: a while on the hob, in which it is skimmed and what waits for the first skim goes in; then in
/// the oven, lid on, with nobody looking in. What goes in late takes it out for good, so that it is lifted only twice.
/// </summary>
internal static class OvenStages
{
    /// <summary>Time at the simmer on the hob before it goes into the oven, s (common practice, no source).</summary>
    public const double OnHobSeconds = 20 * 60;

    /// <summary>For less than this in the oven, s, what goes in late goes in before it.</summary>
    private const double LeastInOven = 30 * 60;

    /// <summary>Rewrites the actions of the simmer.</summary>
    /// <param name="actions">As for the hob.</param>
    /// <param name="seconds">Length of the simmer.</param>
    public static void PutIn(List<PotAction> actions, double seconds)
    {
        actions.RemoveAll(action => action.Kind == PotActionKind.Check || (action.Kind == PotActionKind.Skim && action.AtSeconds >= OnHobSeconds));
        double first = Math.Min(3600, seconds / 3);
        double outAt = actions.Where(action => action.Kind == PotActionKind.Add && action.AtSeconds > first).Select(action => action.AtSeconds).DefaultIfEmpty(seconds).Min();
        if (outAt - OnHobSeconds < LeastInOven)
        {
            outAt = seconds;
        }

        for (int i = 0; i < actions.Count; i++)
        {
            if (actions[i].Kind == PotActionKind.Add && actions[i].AtSeconds > OnHobSeconds && actions[i].AtSeconds < outAt)
            {
                actions[i] = actions[i] with { AtSeconds = OnHobSeconds };
            }
        }

        actions.Add(new PotAction(OnHobSeconds, PotActionKind.HoldBegins));
        actions.Add(new PotAction(outAt, PotActionKind.HoldEnds));
    }
}
