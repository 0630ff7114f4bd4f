using Stockwright.Evidence;

namespace Stockwright.Simmering;

/// <summary>
/// Runs a pot through its script: stage by stage, doing between them what the cook does
/// (S.1 to S.8 in docs/equations.md).
/// </summary>
internal sealed class SimmerRun
{
    private const double FridgeCelsius = 5;
    private const double LeastTopUpKilograms = 0.03;

    /// <summary>Boiling down is done when it is this near to the level asked for.</summary>
    private const double ReducedEnough = 1e-4;

    /// <summary>Nobody boils down for longer than this.</summary>
    private const double LongestReductionSeconds = 72 * 3600;

    private readonly PotEnvironment environment;
    private readonly SimmerScript script;
    private readonly PotSystem system;
    private readonly PotDriver driver;
    private readonly PotState pot;

    private SimmerRun(PotEnvironment environment, SimmerScript script, PotSystem system, bool sampled)
    {
        this.environment = environment;
        this.script = script;
        this.system = system;
        driver = new PotDriver(environment, script, system, sampled, Happen);
        pot = driver.Pot;
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
        for (int i = 0; i < script.Stages.Count && (i == 0 || !driver.IsOver); i++)
        {
            RunStage(script.Stages[i], first: i == 0);
            pot.Outcome.StageEnds.Add(driver.Now);
        }

        pot.Outcome.StagesEndSeconds = driver.Now;
        driver.AdvanceTo(double.IsFinite(script.EndsAtSeconds) ? script.EndsAtSeconds : script.EndsNotBeforeSeconds);
        driver.CloseGap();
        pot.Close(driver.Now, driver.SetCelsius);
        driver.StandOn();
        return pot.Outcome;
    }

    private void RunStage(StageScript stage, bool first)
    {
        system.IsLocked = stage.Cover is StageCover.Locked or StageCover.Falling || (stage.Cover == StageCover.AsPlanned && environment.IsSealed);
        system.IsRolling = stage.IsRolling;
        driver.StageEscape = stage.Cover == StageCover.Open ? environment.OpenEscape : null;
        driver.StageCelsius = Math.Min(stage.SetCelsius, driver.Hottest);
        driver.Climbing = stage.Climbs;
        driver.SetLid(environment.LidEscapeFraction);
        if (stage.Cover == StageCover.Locked)
        {
            Stated<double> rooms = environment.Assumptions.Get("vented-rooms");
            pot.Vent(SealedPot.VentedKilograms(rooms, environment.Pot, pot.Level()) * Math.Min(system.LidFactor, rooms.High / rooms.Value));
        }

        if (stage.Climbs)
        {
            system.ClimbRate = Math.Max(0, driver.StageCelsius - pot.Celsius) / stage.Seconds;
            pot.Outcome.IsReached = pot.Outcome.IsReached || first;
        }
        else if (stage.Cover == StageCover.Falling)
        {
            driver.LetFall();
        }
        else
        {
            driver.BringToSet(first);
        }

        if (first)
        {
            pot.Outcome.HeatUpSeconds = Math.Max(driver.Now, 1e-3);
        }

        if (stage.Cover is StageCover.AsPlanned or StageCover.Locked)
        {
            pot.Outcome.FinalCelsius = driver.StageCelsius;
        }

        pot.Outcome.StageStarts.Add(driver.Now);
        driver.SetLid(system.InOven ? environment.SeatedEscape : environment.LidEscapeFraction);
        double origin = driver.Now;
        double liquid = pot.Liquid();
        for (int i = 0; i < stage.Actions.Count && !driver.IsOver; i++)
        {
            PotAction action = stage.Actions[i];
            origin += driver.AdvanceTo(origin + action.AtSeconds);
            double due = driver.Now;
            origin += driver.AdvanceTo(action.NotBeforeSeconds);
            if (driver.IsOver)
            {
                break;
            }

            pot.Outcome.Actions.Add((due, action));
            double before = driver.Now;
            Do(action, NextCheck(stage, i) - action.AtSeconds);
            origin += driver.Now - before;
        }

        if (stage.ReducesTo is { } share)
        {
            BoilDownTo(share * liquid);
        }
        else
        {
            driver.AdvanceTo(origin + stage.Seconds);
        }

        if (stage.LiftsOut)
        {
            pot.LiftOut();
            driver.Point();
        }
    }

    /// <summary>
    /// Goes on until so much liquid is left. The loss hardly changes while it boils, so each step of nine tenths of what is to go, by the
    /// present rate, lands ten times closer; what is poured in or held up on the way only makes it longer.
    /// </summary>
    private void BoilDownTo(double kilograms)
    {
        double until = driver.Now + LongestReductionSeconds;
        while (!driver.IsOver && driver.Now < until && pot.Liquid() > kilograms * (1 + ReducedEnough))
        {
            double rate = system.HeldVapourRate(pot.Celsius);
            double seconds = rate > 0 ? 0.9 * (pot.Liquid() - kilograms) / rate : until - driver.Now;
            driver.AdvanceTo(Math.Min(until, driver.Now + Math.Max(1, seconds)));
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

    /// <summary>What happens at a time of its own, but for the heat going and coming.</summary>
    private void Happen(PotEvent what)
    {
        switch (what.Kind)
        {
            case PotEventKind.Act:
                pot.Outcome.Actions.Add((driver.Now, what.Action!));
                Do(what.Action!, 0);
                break;
            case PotEventKind.Pour:
                pot.Pour(what.Value, script.TopUpCelsius);
                SpillOver();
                break;
            case PotEventKind.Lose:
                pot.Lose(what.Value);
                break;
            case PotEventKind.LoseShare:
                pot.Lose(what.Value * pot.Liquid());
                break;
            case PotEventKind.Lid:
                driver.LidEntered = what.Value;
                driver.SetLid(what.Value);
                break;
            case PotEventKind.Hob:
                system.HobWatts = what.Value;
                system.InOven = false;
                driver.SetLid(environment.LidEscapeFraction);
                break;
            case PotEventKind.Oven:
                IntoOven();
                break;
            case PotEventKind.Shift:
                driver.Shift = what.Value;
                break;
            case PotEventKind.Look:
                pot.Outcome.Looks[(int)what.Value] = new(driver.Now, pot.Celsius, pot.Level(), pot.Solids.HeapHeight(pot.Progress), pot.Liquid());
                break;
        }
    }

    private void Do(PotAction action, double secondsToNextCheck)
    {
        switch (action.Kind)
        {
            case PotActionKind.Skim:
                pot.Skim(Math.Max(0, script.SkimShare * pot.Liquid()));
                break;
            case PotActionKind.Check:
                Check(action, secondsToNextCheck);
                break;
            case PotActionKind.Add:
                pot.Add(action.Solids!, script.StartCelsius);
                break;
            case PotActionKind.HoldBegins:
                IntoOven();
                break;
            case PotActionKind.HoldEnds:
                driver.SetLid(environment.LidEscapeFraction);
                system.InOven = false;
                driver.StageCelsius = Math.Max(driver.StageCelsius, pot.Outcome.FinalCelsius);
                break;
            case PotActionKind.Pause when action.PauseSeconds > 0:
                driver.StandCold(FridgeCelsius, action.PauseSeconds);
                break;
        }

        pot.Track();
        driver.Point();
    }

    private void IntoOven()
    {
        driver.SetLid(environment.SeatedEscape);
        system.InOven = true;
        driver.StageCelsius = Math.Min(driver.StageCelsius, script.HoldCelsius);
    }

    private void Check(PotAction action, double secondsToNextCheck)
    {
        double celsius = pot.Celsius;
        double before = pot.Level();
        double liquid = pot.Liquid();
        double added = action.AddsNothing ? 0 : Wanted(celsius, liquid, secondsToNextCheck) - liquid;
        if (added < LeastTopUpKilograms)
        {
            added = 0;
        }

        pot.Pour(added, script.TopUpCelsius);
        pot.Outcome.Checks.Add(new(driver.Now, before, added, pot.Level(), action.Key));
    }

    private double Wanted(double celsius, double liquid, double secondsToNextCheck)
    {
        double toLine = pot.Solids.LiquidForLevel(script.LineMetres, celsius, pot.Progress);
        return script.TopUp switch
        {
            TopUpRule.KeepToLine => Math.Max(toLine, Math.Min(pot.Solids.LiquidForLevel(pot.Outcome.StartMetres, celsius, pot.Progress), LiquidToStayCovered(celsius, secondsToNextCheck))),
            TopUpRule.KeepCovered => Math.Min(toLine, LiquidToStayCovered(celsius, secondsToNextCheck)),
            _ => liquid,
        };
    }

    private double LiquidToStayCovered(double celsius, double secondsToNextCheck)
    {
        double leastLevel = pot.Solids.HeapHeight(pot.Progress) + LiquorExchange.LeastCover.Meters;
        return pot.Solids.LiquidForLevel(leastLevel, celsius, pot.Progress) + (system.VapourRate(celsius) * secondsToNextCheck);
    }

    /// <summary>A pot holds no more than to its brim; what is poured on top runs over.</summary>
    private void SpillOver()
    {
        double brim = environment.Pot.InnerHeight.Meters;
        if (pot.Level() > brim)
        {
            pot.Lose(pot.Liquid() - pot.Solids.LiquidForLevel(brim, pot.Celsius, pot.Progress));
        }
    }
}
