using BenchmarkDotNet.Attributes;
using Stockwright.Planning;
using Stockwright.Predicting;

namespace Stockwright.Bench;

/// <summary>A whole plan, from request to timeline. Limits: median 10 ms, 2 MB.</summary>
[MemoryDiagnoser]
[MedianColumn]
public class PlanBenchmarks
{
    [Benchmark]
    public BatchPlan FillThePot() => Plan(BenchRequests.FillPot);

    [Benchmark]
    public BatchPlan SoManyLitres() => Plan(BenchRequests.Litres);

    [Benchmark]
    public BatchPlan ThroughTheNight() => Plan(BenchRequests.Night);

    /// <summary>Three potfuls in rounds, with the ways it may be made side by side, each with its body. Limit: median 40 ms.</summary>
    [Benchmark]
    public int RoundsAndWays()
    {
        IReadOnlyList<WishWay> ways = WishWays.Of(Plan(BenchRequests.TooMuch));
        return ways.Sum(way => (int)Predictor.Predict(way.Plan).Body.Class);
    }

    private static BatchPlan Plan(PlanRequest request) =>
        BatchPlanner.Plan(request).Plan ?? throw new InvalidOperationException("The planner refused a request that used to work.");
}
