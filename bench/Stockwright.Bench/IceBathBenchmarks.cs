using System.Globalization;
using BenchmarkDotNet.Attributes;
using MathNet.Numerics.LinearAlgebra;
using MathNet.Numerics.OdeSolvers;
using Stockwright.Numerics;
using Stockwright.Tests.Numerics;

namespace Stockwright.Bench;

/// <summary>
/// The ice-bath reference problem of the tests to one hour, at equal error of the stock's temperature: our integrator, which finds the end of the ice by
/// itself, against a general fixed-step fourth-order solver that is told when it comes.
/// </summary>
[MemoryDiagnoser]
[MedianColumn]
public class IceBathBenchmarks
{
    private const double IceGoneSeconds = 361.8493679;
    private const double EndSeconds = 3600;
    private const double StockCelsius = 33.9847732339;

    private static readonly OdeOptions Options = new() { RelativeTolerance = 1e-6, AbsoluteTolerance = 1e-6, KeepDenseOutput = false };
    private static readonly OdeEvent IceGone = new("ice gone", (_, y) => y[3], EventDirection.Falling);

    private int steps;

    /// <summary>Finds the fewest steps with which the general solver is as accurate.</summary>
    [GlobalSetup]
    public void SetUp()
    {
        double ours = Math.Abs(Ours() - StockCelsius);
        steps = 16;
        while (!(Math.Abs(General() - StockCelsius) <= ours))
        {
            steps += Math.Max(1, steps / 50);
        }

        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"Ice bath: ours {ours:E2} K off; the general solver takes {steps} steps a phase for {Math.Abs(General() - StockCelsius):E2} K."));
    }

    /// <summary>The general solver.</summary>
    [Benchmark(Baseline = true)]
    public double General()
    {
        Vector<double> iced = RungeKutta.FourthOrder(Vector<double>.Build.DenseOfArray(Start()), 0, IceGoneSeconds, steps, (t, y) => Slope(new IceBath(HasIce: true), t, y))[^1];
        iced[3] = 0;
        return RungeKutta.FourthOrder(iced, IceGoneSeconds, EndSeconds, steps, (t, y) => Slope(new IceBath(HasIce: false), t, y))[^1][0];
    }

    /// <summary>Ours, event and all.</summary>
    [Benchmark]
    public double Ours()
    {
        OdeSolution iced = DormandPrince.Integrate(new IceBath(HasIce: true), 0, Start(), EndSeconds, Options, IceGone);
        double[] thawed = iced.FinalState.ToArray();
        thawed[3] = 0;
        return DormandPrince.Integrate(new IceBath(HasIce: false), iced.EndTime, thawed, EndSeconds, Options).FinalState[0];
    }

    private static double[] Start() => [95, 95, 60, 2.5, 0];

    private static Vector<double> Slope(IceBath bath, double t, Vector<double> y)
    {
        double[] slope = new double[5];
        bath.Derivatives(t, y.AsArray(), slope);
        return Vector<double>.Build.Dense(slope);
    }
}
