using System.Globalization;
using MathNet.Numerics.LinearAlgebra;
using MathNet.Numerics.LinearAlgebra.Double;
using MathNet.Numerics.OdeSolvers;
using Stockwright.Numerics;
using Stockwright.Physics;
using Stockwright.Simmering;

namespace Stockwright.Bench;

/// <summary>
/// One pot brought to the simmer at full heat and held there for an hour between checks, as the planner integrates it,
/// solved by our integrator and by the fixed-step fourth-order Runge-Kutta of Math.NET.
/// </summary>
internal sealed class PotProblem
{
    private const double SetCelsius = 93;
    private const double TapCelsius = 15;
    private const double HoldSeconds = 3600;
    private const double PlannersTolerance = 1e-6;
    private const int MostPoints = 20_000;
    private const double MostSeconds = 48 * 3600;

    // Bones and vegetables in the ten-litre pot, and the water over them.
    private const double SolidsKilograms = 3.5;
    private const double SolidsJoulesPerKelvin = 3.5 * 3300;
    private const double WaterKilograms = 5;

    private readonly PotSystem system;
    private readonly double[] start = new double[PotSystem.StateCount];
    private readonly Vector<double> startVector;
    private readonly double[] tolerances = new double[PotSystem.StateCount];
    private readonly double heatUpSeconds;
    private readonly double[] reference;

    /// <summary>Solves it both ways.</summary>
    /// <param name="relativeTolerance">Given to our integrator; the planner's is 1e-6.</param>
    public PotProblem(double relativeTolerance = PlannersTolerance)
    {
        PotEnvironment environment = new(
            BenchRequests.Pot, BenchRequests.Hob, BenchRequests.FillPot.Lid, BenchRequests.Site, StandardAtmosphere.PressurePascals(BenchRequests.Site.Altitude.Meters));
        system = new PotSystem(environment, SimmerAssumptions.Standard.SurfaceFilm.Value, 1, BenchRequests.Hob.Efficiency.Value.DecimalFractions)
        {
            SolidsLoaded = SolidsKilograms,
            DryHeatCapacity = environment.PotHeatCapacity + SolidsJoulesPerKelvin,
            Surface = BenchRequests.Pot.SurfaceAtMetres(0),
            Escape = environment.LidEscapeFraction,
        };
        start[PotSystem.Contents] = SolidsKilograms + WaterKilograms;
        start[PotSystem.Enthalpy] = system.HeatCapacity(start[PotSystem.Contents]) * TapCelsius;
        startVector = new DenseVector((double[])start.Clone());

        // The planner's own tolerances (SimmerRun), so that this is the work it does; tightened alike when asked.
        double tightened = relativeTolerance / PlannersTolerance;
        tolerances.AsSpan().Fill(1e3 * tightened);
        tolerances[PotSystem.Enthalpy] = 100 * tightened;
        tolerances[PotSystem.Contents] = tolerances[PotSystem.Steam] = tolerances[PotSystem.WeakHours] = 1e-5 * tightened;
        Usual = new OdeOptions { RelativeTolerance = relativeTolerance, AbsoluteTolerances = tolerances, InitialStep = 30, KeepDenseOutput = false };

        // The reference: steps so short that halving them changes nothing that matters here.
        OdeOptions tight = new() { RelativeTolerance = 1e-12, AbsoluteTolerance = 1e-9, MaximumStep = 0.1, KeepDenseOutput = false, MaximumSteps = 10_000_000 };
        OdeSolution heatUp = HeatUp(tight, MostSeconds);
        heatUpSeconds = heatUp.EndTime;
        reference = Hold(tight, heatUp.FinalState);
        double[] finer = Hold(tight with { MaximumStep = 0.05 }, HeatUpTo(tight with { MaximumStep = 0.05 }));
        ReferenceError = ErrorOf(finer);

        OursError = ErrorOf(Ours());
        (HeatUpPoints, HoldPoints) = PointsForEqualError();
        TheirsError = ErrorOf(Theirs());
        if (!(TheirsError <= OursError) || !(ReferenceError < 0.01 * OursError))
        {
            throw new InvalidOperationException("The two solutions are not equally accurate; the comparison would not be fair.");
        }
    }

    private OdeOptions Usual { get; }

    /// <summary>Largest relative error of any state at the end, by our integrator at the planner's tolerances.</summary>
    public double OursError { get; }

    /// <summary>The same by Math.NET at the fewest points that are at least as accurate.</summary>
    public double TheirsError { get; }

    /// <summary>Change of the reference when its steps are halved.</summary>
    public double ReferenceError { get; }

    /// <summary>Points of the fixed grid over the heat-up.</summary>
    public int HeatUpPoints { get; }

    /// <summary>Points of the fixed grid over the hold.</summary>
    public int HoldPoints { get; }

    /// <summary>Writes the errors and the work of both.</summary>
    public void Print(TextWriter output)
    {
        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"tolerance {Usual.RelativeTolerance:0e+0}: heat-up {heatUpSeconds:0.0} s, then {HoldSeconds:0} s at {SetCelsius} C"));
        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"  ours:     relative error {OursError:0.0e+0}, {OursEvaluations()} evaluations"));
        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"  Math.NET: relative error {TheirsError:0.0e+0}, {4 * (HeatUpPoints + HoldPoints - 2)} evaluations ({HeatUpPoints} and {HoldPoints} points)"));
        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"  reference, steps halved: {ReferenceError:0.0e+0}"));
    }

    /// <summary>Ours, both ends of the heat-up given.</summary>
    public double[] Ours() => Hold(Usual, HeatUpTo(Usual));

    /// <summary>Ours as the planner runs it: it finds the moment of the simmer itself.</summary>
    public double[] OursFindingTheSimmer() => Hold(Usual, HeatUp(Usual, MostSeconds).FinalState);

    /// <summary>Math.NET, both ends of the heat-up given, for it locates no events.</summary>
    public double[] Theirs() => Theirs(HeatUpPoints, HoldPoints);

    private double[] Theirs(int heatUpPoints, int holdPoints)
    {
        system.Mode = HeatMode.Full;
        Vector<double> simmering = RungeKutta.FourthOrder(startVector, 0, heatUpSeconds, heatUpPoints, Derivatives)[^1];
        system.Mode = HeatMode.Hold;
        return ((DenseVector)RungeKutta.FourthOrder(simmering, heatUpSeconds, heatUpSeconds + HoldSeconds, holdPoints, Derivatives)[^1]).Values;
    }

    private DenseVector Derivatives(double t, Vector<double> state)
    {
        double[] slope = new double[PotSystem.StateCount];
        system.Derivatives(t, ((DenseVector)state).Values, slope);
        return new DenseVector(slope);
    }

    private OdeSolution HeatUp(OdeOptions options, double end)
    {
        system.Mode = HeatMode.Full;
        return DormandPrince.Integrate(
            system, 0, start, end, options, new OdeEvent("simmer", (_, state) => system.Celsius(state) - SetCelsius, EventDirection.Rising));
    }

    private double[] HeatUpTo(OdeOptions options)
    {
        system.Mode = HeatMode.Full;
        return DormandPrince.Integrate(system, 0, start, heatUpSeconds, options).FinalState.ToArray();
    }

    private double[] Hold(OdeOptions options, ReadOnlySpan<double> simmering)
    {
        system.Mode = HeatMode.Hold;
        return DormandPrince.Integrate(system, heatUpSeconds, simmering, heatUpSeconds + HoldSeconds, options).FinalState.ToArray();
    }

    private int OursEvaluations()
    {
        system.Mode = HeatMode.Full;
        OdeSolution heatUp = DormandPrince.Integrate(system, 0, start, heatUpSeconds, Usual);
        system.Mode = HeatMode.Hold;
        return heatUp.Statistics.Evaluations
            + DormandPrince.Integrate(system, heatUpSeconds, heatUp.FinalState, heatUpSeconds + HoldSeconds, Usual).Statistics.Evaluations;
    }

    /// <summary>The fewest points that reach our error: found by trying them in turn, which can only favour the other side.</summary>
    private (int HeatUp, int Hold) PointsForEqualError()
    {
        // The hold is a steady state, so two points (one step) solve it; the heat-up decides.
        for (int points = 2; points <= MostPoints; points++)
        {
            if (ErrorOf(Theirs(points, 2)) <= OursError)
            {
                return (points, 2);
            }
        }

        throw new InvalidOperationException("No number of fixed steps reached the error; the comparison would not be fair.");
    }

    private double ErrorOf(double[] state)
    {
        double worst = 0;
        for (int i = 0; i < state.Length; i++)
        {
            worst = Math.Max(worst, Math.Abs(state[i] - reference[i]) / Math.Abs(reference[i]));
        }

        return worst;
    }
}
