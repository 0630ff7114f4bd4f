using Stockwright.Numerics;

namespace Stockwright.Simmering;

/// <summary>
/// Drives the heat under the pot from moment to moment: integrates between what happens, and lets happen what has a time of its own
/// (S.1 to S.5 in docs/equations.md, R.1 to R.4 in docs/equations-cooking.md).
/// </summary>
internal sealed class PotDriver
{
    private const double Near = 0.02;
    private const double LongestHeatUpSeconds = 48 * 3600;

    /// <summary>A simmer entered later than this after the heat came back is not the return to it.</summary>
    private const double LongestSeenSeconds = 3 * 3600;

    private static readonly OdeOptions Sampled = new() { RelativeTolerance = 1e-6, AbsoluteTolerances = Tolerances(), KeepDenseOutput = true, InitialStep = 30 };
    private static readonly OdeOptions Bare = Sampled with { KeepDenseOutput = false };

    // A pot that is held hardly changes, so the first step may be bold; the error control would take it back.
    private static readonly OdeOptions SampledHold = Sampled with { InitialStep = 900 };
    private static readonly OdeOptions BareHold = Bare with { InitialStep = 900 };

    private readonly PotEnvironment environment;
    private readonly SimmerScript script;
    private readonly PotSystem system;
    private readonly SimmerRecorder? recorder;
    private readonly Action<PotEvent> happen;
    private int nextEvent;
    private double reheatUntil;
    private double? seenAgain;
    private double awaySince;
    private double backSince;
    private bool away;
    private bool reheating;

    /// <summary>Puts a pot on the heat.</summary>
    /// <param name="environment">Pot, hob and room.</param>
    /// <param name="script">What is in it and what happens.</param>
    /// <param name="system">The equations.</param>
    /// <param name="sampled">True to keep the course for drawing.</param>
    /// <param name="happen">Does what is not about the heat.</param>
    public PotDriver(PotEnvironment environment, SimmerScript script, PotSystem system, bool sampled, Action<PotEvent> happen)
    {
        this.environment = environment;
        this.script = script;
        this.system = system;
        this.happen = happen;
        Pot = new PotState(environment, system, script);
        recorder = sampled ? new SimmerRecorder(Pot, script) : null;
        Point();
    }

    public PotState Pot { get; }

    /// <summary>Time after the heat went on, s.</summary>
    public double Now { get; private set; }

    /// <summary>Temperature the stage asks for, C.</summary>
    public double StageCelsius { get; set; }

    /// <summary>Kelvins the cook keeps it above that.</summary>
    public double Shift { get; set; }

    public bool Climbing { get; set; }

    /// <summary>Lid as the log has it; null while it sits as planned.</summary>
    public double? LidEntered { get; set; }

    /// <summary>True when the heat has gone off for good.</summary>
    public bool IsOver => Now >= script.EndsAtSeconds - 1e-6;

    public double SetCelsius => Math.Min(StageCelsius + Shift, Math.Max(StageCelsius, environment.HottestReachableCelsius));

    private double NextEvent => nextEvent < script.Events.Count ? script.Events[nextEvent].AtSeconds : double.PositiveInfinity;

    public void SetLid(double escape) => system.Escape = LidEntered ?? escape;

    /// <summary>Keeps the pot as it stands now for drawing.</summary>
    public void Point() => recorder?.Point(Now);

    /// <summary>Full heat to the set temperature; when the hob cannot, settles a little below where it would stall.</summary>
    public void BringToSet(bool first)
    {
        system.Mode = HeatMode.Full;
        SetLid(first ? environment.OpenEscape : environment.LidEscapeFraction);
        bool reachable = Settle();
        if (first)
        {
            Pot.Outcome.IsReached = reachable;
        }

        double? seen = first ? script.SimmersAtSeconds : null;
        double until = Math.Min(Math.Min(Now + LongestHeatUpSeconds, seen ?? double.PositiveInfinity), script.EndsAtSeconds);
        HappenNow();
        double from = Now;
        recorder?.StartInterval();
        while (Now < until - 1e-6)
        {
            bool there = !away && Pot.Celsius >= SetCelsius - Near;
            if (there && seen is null)
            {
                break;
            }

            double stop = Math.Min(until, NextEvent);
            Integrate(away ? HeatMode.Off : there ? HeatMode.Hold : HeatMode.Full, stop, untilSet: !away && !there);
            if (NextEvent <= Now + 1e-6)
            {
                Pot.Track();
                recorder?.EndInterval(from, Now, 6);
                HappenNow();
                from = Now;
                recorder?.StartInterval();
            }
        }

        Pot.Track();
        recorder?.EndInterval(from, Now, first ? 12 : 4);
        Again();
    }

    /// <summary>Goes on until a moment of the stage's clock, which stands still while the heat is away and until it is back at its temperature (R.2).</summary>
    /// <param name="end">The moment, if the heat stays.</param>
    /// <returns>Time lost.</returns>
    public double AdvanceTo(double end)
    {
        double lost = 0;
        HappenNow();
        while (!IsOver && Now < end + lost - 1e-6)
        {
            bool waits = away || reheating;
            double stop = Math.Min(NextEvent, script.EndsAtSeconds);
            if (!waits)
            {
                stop = Math.Min(stop, end + lost);
            }
            else if (away && double.IsPositiveInfinity(stop))
            {
                Back();
                continue;
            }

            double from = Now;
            DriveTo(reheating ? Math.Min(stop, reheatUntil) : stop);
            lost += waits ? Now - from : 0;
            HappenNow();
        }

        return lost;
    }

    /// <summary>Cooled and kept cold for a time, then brought back.</summary>
    public void StandCold(double celsius, double seconds)
    {
        Pot.CoolTo(celsius);
        Point();
        Now = Math.Max(Now, Math.Min(Now + seconds, script.EndsAtSeconds));
        Point();
        BringToSet(first: false);
    }

    /// <summary>Stands without heat after the end, when the books are closed, for those who look at it then.</summary>
    public void StandOn()
    {
        away = true;
        while (!double.IsPositiveInfinity(NextEvent))
        {
            Integrate(HeatMode.Off, Math.Max(Now, NextEvent), untilSet: false);
            PotEvent next = script.Events[nextEvent++];
            if (next.Kind == PotEventKind.Look)
            {
                happen(next);
            }
        }
    }

    private void DriveTo(double end)
    {
        double from = Now;
        recorder?.StartInterval();
        int? points = null;
        if (away)
        {
            points = 24;
            Integrate(HeatMode.Off, end, untilSet: false);
        }
        else if (reheating)
        {
            points = 16;
            if (Pot.Celsius < SetCelsius - Near)
            {
                Integrate(HeatMode.Full, end, untilSet: true);
            }
            else if (seenAgain is not null)
            {
                Integrate(HeatMode.Hold, end, untilSet: false);
            }

            // When the cook sees it simmer again, that goes before the reckoning.
            if (seenAgain is null && (Pot.Celsius >= SetCelsius - Near || Now >= reheatUntil - 1e-6))
            {
                Again();
            }
        }
        else
        {
            Keep(end);
        }

        Pot.Track();
        recorder?.EndInterval(from, Now, points);
    }

    private void Keep(double end)
    {
        while (Now < end - 1e-6)
        {
            double celsius = Pot.Celsius;
            if (Climbing && celsius < SetCelsius - Near && system.ClimbRate > 0)
            {
                // Held up or hurried on by what happened, it may be there before the stage is over.
                Integrate(HeatMode.Climb, Math.Min(end, Now + Math.Max(1, (SetCelsius - celsius) / system.ClimbRate)), untilSet: false);
            }
            else if (!Climbing && celsius < SetCelsius - Near && !system.InOven)
            {
                Integrate(HeatMode.Full, end, untilSet: true);
            }
            else if (celsius > SetCelsius + Near)
            {
                Integrate(HeatMode.Off, end, untilSet: true);
            }
            else
            {
                Integrate(HeatMode.Hold, end, untilSet: false);
            }
        }
    }

    /// <summary>True when the hob brings it to the set temperature; else the lid goes on, and then the aim is lowered.</summary>
    private bool Settle()
    {
        bool reachable = Pot.CanReach(SetCelsius);
        if (!reachable)
        {
            // A cook who sees it stall puts the lid on early.
            SetLid(environment.LidEscapeFraction);
            reachable = Pot.CanReach(SetCelsius);
        }

        bool asked = reachable;
        while (!reachable && SetCelsius > Pot.Celsius + 1)
        {
            StageCelsius -= 0.5;
            reachable = Pot.CanReach(SetCelsius);
        }

        return asked;
    }

    private void HappenNow()
    {
        while (nextEvent < script.Events.Count && script.Events[nextEvent].AtSeconds <= Now + 1e-6)
        {
            PotEvent next = script.Events[nextEvent++];
            Point();
            switch (next.Kind)
            {
                case PotEventKind.HeatAway:
                    Away();
                    break;
                case PotEventKind.HeatBack:
                    Back();
                    break;
                case PotEventKind.SimmersAgain:
                    Back();
                    Again();
                    break;
                case PotEventKind.Read when away || reheating:
                    Pot.CoolTo(next.Value);
                    break;
                default:
                    happen(next);
                    break;
            }

            Pot.Sync();
            Pot.Track();
            Point();
        }
    }

    private void Away()
    {
        if (away)
        {
            return;
        }

        Again();
        away = true;
        awaySince = Now;
    }

    private void Back()
    {
        if (!away)
        {
            return;
        }

        away = false;
        backSince = Now;
        reheating = true;
        reheatUntil = Now + LongestHeatUpSeconds;
        seenAgain = SeenAgain();
        system.Mode = HeatMode.Full;
        if (!system.InOven)
        {
            Settle();
            SetLid(environment.LidEscapeFraction);
        }
    }

    /// <summary>When the cook will see it simmer again, before the heat goes away once more; null when nobody will.</summary>
    private double? SeenAgain()
    {
        for (int i = nextEvent; i < script.Events.Count && script.Events[i].Kind != PotEventKind.HeatAway && script.Events[i].AtSeconds < Now + LongestSeenSeconds; i++)
        {
            if (script.Events[i].Kind == PotEventKind.SimmersAgain)
            {
                return script.Events[i].AtSeconds;
            }
        }

        return null;
    }

    private void Again()
    {
        if (!reheating)
        {
            return;
        }

        reheating = false;
        Pot.Outcome.Gaps.Add(new(awaySince, backSince, Now));
    }

    /// <summary>Enters a stretch without heat that the end of the run cuts off.</summary>
    public void CloseGap()
    {
        if (away || reheating)
        {
            Pot.Outcome.Gaps.Add(new(awaySince, away ? Now : backSince, Now));
        }
    }

    private void Integrate(HeatMode mode, double end, bool untilSet)
    {
        system.Mode = mode;
        Pot.Sync();
        OdeOptions options = (recorder is null, mode == HeatMode.Hold) switch
        {
            (true, true) => BareHold,
            (true, false) => Bare,
            (false, true) => SampledHold,
            _ => Sampled,
        };
        OdeSolution solution = untilSet
            ? DormandPrince.Integrate(system, Now, Pot.Vector, end, options, Reaches(mode))
            : DormandPrince.Integrate(system, Now, Pot.Vector, end, options);
        Pot.Take(solution.FinalState);
        Now = solution.EndTime;
        recorder?.Keep(solution, mode);
    }

    private OdeEvent Reaches(HeatMode mode) => new(
        "set temperature",
        (_, state) =>
        {
            // A slow heat-up swells first and boils down later, so its highest level lies on the way.
            Pot.Track(state);
            return system.Celsius(state) - SetCelsius;
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
        tolerances[PotSystem.Progress] = 1e-5;
        tolerances[PotSystem.HobHeat] = 1e3;
        return tolerances;
    }
}
