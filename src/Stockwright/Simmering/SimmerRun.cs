using Stockwright.Numerics;

namespace Stockwright.Simmering;

/// <summary>
/// Runs a pot through its script: integrates between the things the cook does, and does them
/// (S.1 to S.8 in docs/equations.md).
/// </summary>
internal sealed class SimmerRun
{
    private const double Near = 0.02;
    private const double FridgeCelsius = 5;
    private const double LeastTopUpKilograms = 0.03;
    private const double LongestHeatUpSeconds = 48 * 3600;

    private static readonly OdeOptions Sampled = new() { RelativeTolerance = 1e-6, AbsoluteTolerances = Tolerances(), KeepDenseOutput = true, InitialStep = 30 };
    private static readonly OdeOptions Bare = Sampled with { KeepDenseOutput = false };

    // A pot that is held hardly changes, so the first step may be bold; the error control would take it back.
    private static readonly OdeOptions SampledHold = Sampled with { InitialStep = 900 };
    private static readonly OdeOptions BareHold = Bare with { InitialStep = 900 };

    private readonly PotEnvironment environment;
    private readonly SimmerScript script;
    private readonly PotSystem system;
    private readonly DormandPrinceStep<PotSystem> step;
    private readonly PotState pot;
    private readonly SimmerRecorder? recorder;
    private double now;
    private double setCelsius;
    private bool climbing;

    private SimmerRun(PotEnvironment environment, SimmerScript script, PotSystem system, bool sampled)
    {
        this.environment = environment;
        this.script = script;
        this.system = system;
        step = new DormandPrinceStep<PotSystem>(system);
        pot = new PotState(environment, system, script);
        recorder = sampled ? new SimmerRecorder(pot, script) : null;
    }

    /// <summary>Runs the script once.</summary>
    /// <param name="environment">Pot, hob and room.</param>
    /// <param name="script">What is in the pot and what the cook does.</param>
    /// <param name="filmFactor">Loss over that of clean water.</param>
    /// <param name="lidFactor">Multiplier on the lid's escape fraction, one for the central figure.</param>
    /// <param name="efficiency">Share of the hob's power that reaches the pot.</param>
    /// <param name="sampled">True to keep the course for drawing.</param>
    public static SimmerOutcome Execute(PotEnvironment environment, SimmerScript script, double filmFactor, double lidFactor, double efficiency, bool sampled) =>
        new SimmerRun(environment, script, new PotSystem(environment, filmFactor, lidFactor, efficiency), sampled).Run();

    private SimmerOutcome Run()
    {
        recorder?.Point(now);
        for (int i = 0; i < script.Stages.Count; i++)
        {
            RunStage(script.Stages[i], first: i == 0);
        }

        pot.Close(now, setCelsius);
        return pot.Outcome;
    }

    private void RunStage(StageScript stage, bool first)
    {
        setCelsius = Math.Min(stage.SetCelsius, environment.HottestReachableCelsius);
        climbing = stage.Climbs;
        SetLid(environment.LidEscapeFraction);
        if (climbing)
        {
            system.ClimbRate = Math.Max(0, setCelsius - pot.Celsius) / stage.Seconds;
            pot.Outcome.IsReached = pot.Outcome.IsReached || first;
        }
        else
        {
            BringToSet(first);
        }

        if (first)
        {
            pot.Outcome.HeatUpSeconds = Math.Max(now, 1e-3);
        }

        pot.Outcome.FinalCelsius = setCelsius;
        pot.Outcome.StageStarts.Add(now);
        SetLid(environment.LidEscapeFraction);
        double origin = now;
        for (int i = 0; i < stage.Actions.Count; i++)
        {
            PotAction action = stage.Actions[i];
            AdvanceTo(origin + action.AtSeconds);
            pot.Outcome.Actions.Add((now, action));
            double before = now;
            Do(action, NextCheck(stage, i) - action.AtSeconds);
            origin += now - before;
        }

        AdvanceTo(origin + stage.Seconds);
        if (stage.LiftsOut)
        {
            pot.LiftOut(script.RetainedShare);
            recorder?.Point(now);
        }
    }

    private static double NextCheck(StageScript stage, int index)
    {
        for (int i = index + 1; i < stage.Actions.Count; i++)
        {
            if (stage.Actions[i].Kind == PotActionKind.Check)
            {
                return stage.Actions[i].AtSeconds;
            }
        }

        return stage.Seconds;
    }

    /// <summary>Full heat to the set temperature; when the hob cannot, settles a little below where it would stall.</summary>
    private void BringToSet(bool first)
    {
        system.Mode = HeatMode.Full;
        SetLid(first ? environment.OpenEscape : environment.LidEscapeFraction);
        bool reachable = pot.CanReach(setCelsius);
        if (!reachable)
        {
            // A cook who sees it stall puts the lid on early.
            SetLid(environment.LidEscapeFraction);
            reachable = pot.CanReach(setCelsius);
        }

        if (first)
        {
            pot.Outcome.IsReached = reachable;
        }

        while (!reachable && setCelsius > pot.Celsius + 1)
        {
            setCelsius -= 0.5;
            reachable = pot.CanReach(setCelsius);
        }

        double from = now;
        recorder?.StartInterval();
        while (pot.Celsius < setCelsius - Near && now < from + LongestHeatUpSeconds)
        {
            Integrate(HeatMode.Full, from + LongestHeatUpSeconds, untilSet: true);
        }

        pot.Track();
        recorder?.EndInterval(from, now, first ? 12 : 4);
    }

    private void AdvanceTo(double end)
    {
        double from = now;
        recorder?.StartInterval();
        while (now < end - 1e-6)
        {
            double celsius = pot.Celsius;
            if (climbing)
            {
                Integrate(HeatMode.Climb, end, untilSet: false);
            }
            else if (celsius < setCelsius - Near && !system.InOven)
            {
                Integrate(HeatMode.Full, end, untilSet: true);
            }
            else if (celsius > setCelsius + Near)
            {
                Integrate(HeatMode.Off, end, untilSet: true);
            }
            else
            {
                Integrate(HeatMode.Hold, end, untilSet: false);
            }
        }

        pot.Track();
        recorder?.EndInterval(from, now, null);
    }

    private void Integrate(HeatMode mode, double end, bool untilSet)
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
            ? DormandPrince.Integrate(step, now, pot.Vector, end, options, Reaches(mode))
            : DormandPrince.Integrate(step, now, pot.Vector, end, options);
        pot.Take(solution.FinalState);
        now = solution.EndTime;
        recorder?.Keep(solution, mode);
    }

    private OdeEvent Reaches(HeatMode mode) => new(
        "set temperature",
        (_, state) =>
        {
            // A slow heat-up swells first and boils down later, so its highest level lies on the way.
            pot.Track(state);
            return system.Celsius(state) - setCelsius;
        },
        mode == HeatMode.Full ? EventDirection.Rising : EventDirection.Falling);

    private void Do(PotAction action, double secondsToNextCheck)
    {
        switch (action.Kind)
        {
            case PotActionKind.Skim:
                pot.Skim(script.SkimShare * pot.Liquid());
                break;
            case PotActionKind.Check:
                Check(secondsToNextCheck);
                break;
            case PotActionKind.Add:
                pot.Add(action.Solids!, script.StartCelsius);
                break;
            case PotActionKind.HoldBegins:
                SetLid(environment.SeatedEscape);
                system.InOven = true;
                setCelsius = Math.Min(setCelsius, script.HoldCelsius);
                break;
            case PotActionKind.HoldEnds:
                SetLid(environment.LidEscapeFraction);
                system.InOven = false;
                setCelsius = pot.Outcome.FinalCelsius;
                break;
            case PotActionKind.Pause:
                pot.CoolTo(FridgeCelsius);
                recorder?.Point(now);
                now += action.PauseSeconds;
                recorder?.Point(now);
                BringToSet(first: false);
                break;
        }

        pot.Track();
        recorder?.Point(now);
    }

    private void Check(double secondsToNextCheck)
    {
        double celsius = pot.Celsius;
        double before = pot.Level();
        double liquid = pot.Liquid();
        double toLine = pot.Solids.LiquidForLevel(script.LineMetres, celsius, pot.Progress);
        double wanted = script.TopUp switch
        {
            TopUpRule.KeepToLine => toLine,
            TopUpRule.KeepCovered => Math.Min(toLine, LiquidToStayCovered(celsius, secondsToNextCheck)),
            _ => liquid,
        };
        double added = wanted - liquid;
        if (added < LeastTopUpKilograms)
        {
            added = 0;
        }

        pot.Pour(added, script.TopUpCelsius);
        pot.Outcome.Checks.Add(new(now, before, added, pot.Level(), celsius));
    }

    private double LiquidToStayCovered(double celsius, double secondsToNextCheck)
    {
        double leastLevel = pot.Solids.HeapHeight(pot.Progress) + LiquorExchange.LeastCover.Meters;
        return pot.Solids.LiquidForLevel(leastLevel, celsius, pot.Progress) + (system.VapourRate(celsius) * secondsToNextCheck);
    }

    private void SetLid(double escape) => system.Escape = escape;

    private static double[] Tolerances()
    {
        double[] tolerances = new double[PotSystem.StateCount];
        tolerances[PotSystem.Enthalpy] = 100;
        tolerances[PotSystem.Contents] = 1e-5;
        tolerances[PotSystem.Steam] = 1e-5;
        tolerances[PotSystem.HeatIn] = 1e3;
        tolerances[PotSystem.WallLoss] = 1e3;
        tolerances[PotSystem.SteamLoss] = 1e3;
        tolerances[PotSystem.Progress] = 1e-5;
        tolerances[PotSystem.HobHeat] = 1e3;
        return tolerances;
    }
}
