namespace Stockwright.Simmering;

/// <summary>
/// Drives the heat under the pot from moment to moment: integrates between what happens, and lets happen what has a time of its own
/// (S.1 to S.5 in docs/equations.md, R.1 to R.4 in docs/equations-cooking.md).
/// </summary>
internal sealed class PotDriver
{
    private const double Near = 0.02;

    private readonly PotEnvironment environment;
    private readonly SimmerScript script;
    private readonly PotSystem system;
    private readonly PotStepper stepper;
    private readonly HeatPresence heat;
    private readonly SimmerRecorder? recorder;
    private readonly Action<PotEvent> happen;
    private int nextEvent;

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
        heat = new HeatPresence(script, Pot.Outcome);
        stepper = new PotStepper(system, Pot, recorder, () => SetCelsius);
        Point();
    }

    public PotState Pot { get; }

    /// <summary>Time after the heat went on, s.</summary>
    public double Now
    {
        get => stepper.Now;
        private set => stepper.Now = value;
    }

    /// <summary>Temperature the stage asks for, C.</summary>
    public double StageCelsius { get; set; }

    /// <summary>Kelvins the cook keeps it above that.</summary>
    public double Shift { get; set; }

    public bool Climbing { get; set; }

    /// <summary>Lid as the log has it; null while it sits as planned.</summary>
    public double? LidEntered { get; set; }

    /// <summary>True when the heat has gone off for good.</summary>
    public bool IsOver => Now >= script.EndsAtSeconds - 1e-6;

    public double SetCelsius => Math.Min(StageCelsius + Shift, Math.Max(StageCelsius, Hottest));

    /// <summary>Hottest it gets as the lid sits now, C.</summary>
    public double Hottest => system.IsLocked ? environment.HottestReachableCelsius : environment.BoilingCelsius;

    /// <summary>Share of the vapour that passes the lid in this stage, where it does not sit as planned.</summary>
    public double? StageEscape { get; set; }

    private double NextEvent => nextEvent < script.Events.Count ? script.Events[nextEvent].AtSeconds : double.PositiveInfinity;

    public void SetLid(double escape) => system.Escape = LidEntered ?? StageEscape ?? escape;

    /// <summary>Keeps the pot as it stands now for drawing.</summary>
    public void Point() => recorder?.Point(Now);

    /// <summary>Full heat to the set temperature; when the hob cannot, settles a little below where it would stall.</summary>
    public void BringToSet(bool first)
    {
        system.Mode = HeatMode.Full;
        SetLid(!first ? environment.LidEscapeFraction : script.HeatsUpCovered ? environment.SeatedEscape : environment.OpenEscape);
        bool reachable = Settle();
        if (first)
        {
            Pot.Outcome.IsReached = reachable;
        }

        double? seen = first ? script.SimmersAtSeconds : null;
        double until = Math.Min(Math.Min(Now + HeatPresence.LongestHeatUpSeconds, seen ?? double.PositiveInfinity), script.EndsAtSeconds);
        HappenNow();
        double from = Now;
        recorder?.StartInterval();
        while (Now < until - 1e-6)
        {
            bool there = !heat.IsAway && Pot.Celsius >= SetCelsius - Near;
            if (there && seen is null)
            {
                break;
            }

            double stop = Math.Min(until, NextEvent);
            stepper.Integrate(heat.IsAway ? HeatMode.Off : there ? HeatMode.Hold : HeatMode.Full, stop, untilSet: !heat.IsAway && !there);
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
        heat.Again(Now);
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
            bool waits = heat.IsMissed;
            double stop = Math.Min(NextEvent, script.EndsAtSeconds);
            if (!waits)
            {
                stop = Math.Min(stop, end + lost);
            }
            else if (heat.IsAway && double.IsPositiveInfinity(stop))
            {
                Back();
                continue;
            }

            double from = Now;
            DriveTo(heat.IsReturning ? Math.Min(stop, heat.ReturnBySeconds) : stop);
            lost += waits ? Now - from : 0;
            HappenNow();
        }

        return lost;
    }

    /// <summary>Stands without heat until it has fallen to the set temperature.</summary>
    public void LetFall()
    {
        HappenNow();
        double from = Now;
        recorder?.StartInterval();
        while (!IsOver && Pot.Celsius > SetCelsius + Near)
        {
            stepper.Integrate(HeatMode.Off, Math.Min(Math.Min(Now + HeatPresence.LongestHeatUpSeconds, NextEvent), script.EndsAtSeconds), untilSet: true);
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
        recorder?.EndInterval(from, Now, 12);
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

    /// <summary>Stands without heat after the end, when the balance is drawn, for those who look at it then.</summary>
    public void StandOn()
    {
        while (!double.IsPositiveInfinity(NextEvent))
        {
            stepper.Integrate(HeatMode.Off, Math.Max(Now, NextEvent), untilSet: false);
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
        if (heat.IsAway)
        {
            points = 24;
            stepper.Integrate(HeatMode.Off, end, untilSet: false);
        }
        else if (heat.IsReturning)
        {
            points = 16;
            if (Pot.Celsius < SetCelsius - Near)
            {
                stepper.Integrate(HeatMode.Full, end, untilSet: true);
            }
            else if (heat.IsSeenAgain)
            {
                stepper.Integrate(HeatMode.Hold, end, untilSet: false);
            }

            // When the cook sees it simmer again, that overrules the calculation.
            if (!heat.IsSeenAgain && (Pot.Celsius >= SetCelsius - Near || Now >= heat.ReturnBySeconds - 1e-6))
            {
                heat.Again(Now);
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
                stepper.Integrate(HeatMode.Climb, Math.Min(end, Now + Math.Max(1, (SetCelsius - celsius) / system.ClimbRate)), untilSet: false);
            }
            else if (!Climbing && celsius < SetCelsius - Near && !system.InOven)
            {
                stepper.Integrate(HeatMode.Full, end, untilSet: true);
            }
            else if (celsius > SetCelsius + Near)
            {
                stepper.Integrate(HeatMode.Off, end, untilSet: true);
            }
            else
            {
                stepper.Integrate(HeatMode.Hold, end, untilSet: false);
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
                    heat.Leave(Now);
                    break;
                case PotEventKind.HeatBack:
                    Back();
                    break;
                case PotEventKind.SimmersAgain:
                    Back();
                    heat.Again(Now);
                    break;
                case PotEventKind.Read when heat.IsMissed:
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

    private void Back()
    {
        if (!heat.Return(Now, script.Events.Skip(nextEvent)))
        {
            return;
        }

        system.Mode = HeatMode.Full;
        if (!system.InOven)
        {
            Settle();
            SetLid(environment.LidEscapeFraction);
        }
    }

    /// <summary>Enters a stretch without heat that the end of the run cuts off.</summary>
    public void CloseGap() => heat.Close(Now);
}
