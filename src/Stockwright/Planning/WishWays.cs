namespace Stockwright.Planning;

/// <summary>One way to meet a wish that does not fit at once.</summary>
/// <param name="Way">The way.</param>
/// <param name="Plan">The plan of it; its request asks for the way.</param>
public sealed record WishWay(SplitWay Way, BatchPlan Plan);

/// <summary>The ways to meet a wish that does not fit the pot at the recipe's strength, each planned to the end.</summary>
public static class WishWays
{
    /// <summary>Up to three ways, the plan's own first; none where it fits.</summary>
    /// <param name="plan">The plan as asked.</param>
    public static IReadOnlyList<WishWay> Of(BatchPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        if (plan.Fit.Verdict == FitVerdict.Fits)
        {
            return [];
        }

        SplitWay own = Own(plan);
        List<WishWay> ways = [new(own, plan)];
        SplitWay[] others = [SplitWay.LetDown, SplitWay.Stronger, SplitWay.SideBySide, SplitWay.OneAfterAnother];
        foreach (SplitWay way in others.Where(way => way != own))
        {
            // What comes to the same as a way that is listed, or cannot be had, as side by side with one pot or hob, is not offered.
            if (BatchPlanner.Plan(plan.Request with { Way = way }).Plan is { } other && Own(other) == way)
            {
                ways.Add(new WishWay(way, other));
            }
        }

        // Of two ways to make it stronger the one that gives the wish comes first; three are enough to choose from.
        return [.. ways.Take(3)];
    }

    /// <summary>The way a plan goes.</summary>
    private static SplitWay Own(BatchPlan plan) => plan.Fit switch
    {
        { Verdict: FitVerdict.FitsStronger, LetDown.CubicMeters: > 0 } => SplitWay.LetDown,
        { Verdict: FitVerdict.FitsStronger } => SplitWay.Stronger,
        { AtOnce: > 1 } => SplitWay.SideBySide,
        _ => SplitWay.OneAfterAnother,
    };
}
