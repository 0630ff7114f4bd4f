using BenchmarkDotNet.Attributes;
using Stockwright.Planning;

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

    private static BatchPlan Plan(PlanRequest request) =>
        BatchPlanner.Plan(request).Plan ?? throw new InvalidOperationException("The planner refused a request that used to work.");
}
