using BenchmarkDotNet.Attributes;

namespace Stockwright.Bench;

/// <summary>The same pot, at equal error, by our integrator and by Math.NET's fixed-step fourth-order method.</summary>
[MemoryDiagnoser]
[MedianColumn]
public class IntegratorBenchmarks
{
    private PotProblem problem = null!;

    /// <summary>Given to our integrator; Math.NET gets the fewest steps that are as accurate. The planner's is 1e-6.</summary>
    [Params(1e-6, 1e-9)]
    public double Tolerance { get; set; }

    [GlobalSetup]
    public void SetUp()
    {
        problem = new PotProblem(Tolerance);
        problem.Print(Console.Out);
    }

    [Benchmark(Baseline = true)]
    public double[] MathNetFourthOrder() => problem.Theirs();

    [Benchmark]
    public double[] DormandPrince() => problem.Ours();

    [Benchmark]
    public double[] DormandPrinceFindingTheSimmer() => problem.OursFindingTheSimmer();
}
