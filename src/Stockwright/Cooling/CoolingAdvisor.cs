using Stockwright.Cooling.Limits;
using UnitsNet;

namespace Stockwright.Cooling;

/// <summary>Finds ways of cooling that meet a limit with what a kitchen owns.</summary>
public static class CoolingAdvisor
{
    private const double FewMinutesWork = 0.5 / 3;

    /// <summary>Tries every way the kit allows and ranks them by certainty, then by handwork, then by time.</summary>
    /// <param name="stock">The stock.</param>
    /// <param name="kit">What the kitchen owns.</param>
    /// <param name="limit">The rule.</param>
    /// <param name="cancellationToken">Ends it between two courses.</param>
    /// <exception cref="OperationCanceledException">It was ended.</exception>
    public static CoolingAdvice Advise(CoolingCase stock, CoolingKit kit, CoolingLimit limit, CancellationToken cancellationToken = default)
    {
        ArgumentNullException.ThrowIfNull(stock);
        ArgumentNullException.ThrowIfNull(kit);
        ArgumentNullException.ThrowIfNull(limit);
        IReadOnlyList<MethodCandidate> candidates = MethodCandidates.List(stock, kit, limit);
        IReadOnlyList<CoolingProblem> problems = CoolingChecks.Problems(stock, candidates[0].Method);
        if (problems.Count > 0)
        {
            return new CoolingAdvice(null, [], problems);
        }

        IReadOnlyList<CoolingResult> results = CoolingForecaster.Compare(stock, [.. candidates.Select(candidate => candidate.Method)], cancellationToken);
        List<RankedMethod> ranked = [];
        TimeSpan? baseline = null;
        for (int i = 0; i < candidates.Count; i++)
        {
            // A candidate that does not fit this kitchen (a pan too small, a fridge too warm) is no way to cool.
            if (results[i].Forecast is not { } forecast)
            {
                continue;
            }

            BandVerdict verdict = CoolingJudge.JudgeBand(forecast.Fast.Curve, forecast.Central.Curve, forecast.Slow.Curve, limit);
            TimeSpan? first = verdict.Central.Stages[0].ReachedAt;
            baseline = i == 0 ? first : baseline;
            ranked.Add(new RankedMethod(forecast, verdict, candidates[i].HandMinutes + StirringMinutes(forecast), Ice(candidates[i].Method), Vessels(stock, candidates[i].Method), baseline - first));
        }

        RankedMethod? leftAsItIs = ranked.Count > 0 ? ranked[0] : null;
        return new CoolingAdvice(
            leftAsItIs,
            [.. ranked.OrderBy(Certainty).ThenBy(method => method.HandMinutes).ThenBy(method => method.Verdict.Central.FinishedAt ?? TimeSpan.MaxValue)],
            []);
    }

    private static int Certainty(RankedMethod method) => method.Verdict.Outcome switch
    {
        CoolingOutcome.Meets => 0,
        CoolingOutcome.MayFail => method.Verdict.Central.Outcome == CoolingOutcome.Meets ? 1 : 2,
        _ => 3,
    };

    /// <summary>Who stirs all the time stands there until the step is over; every few minutes takes half a minute in every three.</summary>
    private static int StirringMinutes(CoolingForecast forecast)
    {
        IReadOnlyList<TimeSpan> starts = forecast.Central.StepStarts;
        double minutes = 0;
        for (int i = 0; i < starts.Count; i++)
        {
            CoolingStep step = forecast.Method.Steps[i];
            TimeSpan end = i + 1 < starts.Count ? starts[i + 1] : forecast.Central.Curve.End;
            Stirring most = step.HasBathToStir && step.BathStirring > step.StockStirring ? step.BathStirring : step.StockStirring;
            minutes += (end - starts[i]).TotalMinutes * most switch { Stirring.AllTheTime => 1, Stirring.EveryFewMinutes => FewMinutesWork, _ => 0 };
        }

        return (int)Math.Ceiling(minutes);
    }

    private static Mass Ice(CoolingMethod method) => method.Steps.Aggregate(
        Mass.Zero, (sum, step) => sum + step.IceAdded + (step.Place is CoolingPlace.IceBath bath ? bath.Ice : Mass.Zero));

    private static (PourInto Pour, Length Depth)? Vessels(CoolingCase stock, CoolingMethod method) =>
        method.Steps.Select(step => step.Pour).LastOrDefault(pour => pour is not null) is { } last
            ? (last, Length.FromMeters(stock.Volume.CubicMeters / last.Count / last.Vessel.FloorSquareMetres))
            : null;
}
