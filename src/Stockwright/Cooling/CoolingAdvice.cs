using Stockwright.Cooling.Limits;
using UnitsNet;

namespace Stockwright.Cooling;

/// <summary>A way of cooling, judged and weighed.</summary>
/// <param name="Forecast">Its forecast.</param>
/// <param name="Verdict">Against the limit.</param>
/// <param name="HandMinutes">Handwork (common practice, no source), to rank by.</param>
/// <param name="Ice">Ice it takes, baths and ice put in the stock.</param>
/// <param name="Vessels">Vessels poured into and how deep the stock stands in them, or null.</param>
/// <param name="Saved">Time it buys over leaving the pot as it stands, to the end of the limit's first stage; null when that never comes.</param>
public sealed record RankedMethod(
    CoolingForecast Forecast, BandVerdict Verdict, int HandMinutes, Mass Ice, (PourInto Pour, Length Depth)? Vessels, TimeSpan? Saved);

/// <summary>What to do, from what the kitchen owns.</summary>
/// <param name="Baseline">The pot as cooks leave it: in the fridge when there is one, else on the bench.</param>
/// <param name="Ranked">All ways tried, best first: certain ones before doubtful, and less work before more.</param>
/// <param name="Problems">What was wrong with the question; nothing is ranked then.</param>
public sealed record CoolingAdvice(RankedMethod? Baseline, IReadOnlyList<RankedMethod> Ranked, IReadOnlyList<CoolingProblem> Problems)
{
    /// <summary>The best way that meets the limit over its whole band, or null when none does.</summary>
    public RankedMethod? Recommended => Ranked.FirstOrDefault(method => method.Verdict.Outcome == CoolingOutcome.Meets);
}
