using Stockwright.Numerics;

namespace Stockwright.Simmering;

/// <summary>Integrates a pot with one way of driving the heat, and keeps the course for drawing.</summary>
/// <param name="system">The equations.</param>
/// <param name="pot">The pot.</param>
/// <param name="recorder">Keeps the course; null when nobody draws it.</param>
/// <param name="setCelsius">Temperature to be held, C.</param>
internal sealed class PotStepper(PotSystem system, PotState pot, SimmerRecorder? recorder, Func<double> setCelsius)
{
    private static readonly OdeOptions Sampled = new() { RelativeTolerance = 1e-6, AbsoluteTolerances = Tolerances(), KeepDenseOutput = true, InitialStep = 30 };
    private static readonly OdeOptions Bare = Sampled with { KeepDenseOutput = false };

    // A pot that is held hardly changes, so the first step may be bold; the error control would take it back.
    private static readonly OdeOptions SampledHold = Sampled with { InitialStep = 900 };
    private static readonly OdeOptions BareHold = Bare with { InitialStep = 900 };

    private readonly DormandPrinceStep<PotSystem> step = new(system);

    /// <summary>Time after the heat went on, s.</summary>
    public double Now { get; set; }

    /// <summary>Integrates to a moment, or until the set temperature is met.</summary>
    public void Integrate(HeatMode mode, double end, bool untilSet)
    {
        system.Mode = mode;
        pot.Sync();
        OdeOptions options = (recorder is null, mode == HeatMode.Hold) switch
        {
            (true, true) => BareHold,
            (true, false) => Bare,
            (false, true) => SampledHold,
            _ => Sampled,
        };
        OdeSolution solution = untilSet
            ? DormandPrince.Integrate(step, Now, pot.Vector, end, options, Reaches(mode))
            : DormandPrince.Integrate(step, Now, pot.Vector, end, options);
        pot.Take(solution.FinalState);
        Now = solution.EndTime;
        recorder?.Keep(solution, mode);
    }

    private OdeEvent Reaches(HeatMode mode) => new(
        "set temperature",
        (_, state) =>
        {
            // A slow heat-up swells first and boils down later, so its highest level lies on the way.
            pot.Track(state);
            return system.Celsius(state) - setCelsius();
        },
        mode == HeatMode.Full ? EventDirection.Rising : EventDirection.Falling);

    private static double[] Tolerances()
    {
        double[] tolerances = new double[PotSystem.StateCount];
        tolerances[PotSystem.Enthalpy] = 100;
        tolerances[PotSystem.Contents] = 1e-5;
        tolerances[PotSystem.Steam] = 1e-5;
        tolerances[PotSystem.HeatIn] = 1e3;
        tolerances[PotSystem.WallLoss] = 1e3;
        tolerances[PotSystem.SteamLoss] = 1e3;
        tolerances[PotSystem.WeakHours] = 1e-5;
        tolerances[PotSystem.CollagenHours] = 1e-5;
        tolerances[PotSystem.HobHeat] = 1e3;
        return tolerances;
    }
}
