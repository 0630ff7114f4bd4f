using Stockwright.Kitchen;
using Stockwright.Measures;
using Stockwright.Simmering;
using UnitsNet;

namespace Stockwright.Planning;

/// <summary>The steps of a pot under pressure from heat on to opening and what comes after; skims and additions are laid beside them.</summary>
internal sealed class PressureSteps(TimelineParts parts, StepBuilder builder)
{
    private readonly SimmerOutcome outcome = parts.Outcome;

    public void Write(DateTimeOffset heatOn)
    {
        DateTimeOffset At(double seconds) => heatOn + TimeSpan.FromSeconds(seconds);
        TimeSpan heatUp = TimeSpan.FromSeconds(outcome.HeatUpSeconds);
        builder.At(heatOn, StepKind.HeatUp, "Heat on, lid off", "Full heat, no stirring, the lid beside the pot. Scum rises from about 80 °C (180 °F): lift it as it comes.", heatUp, Least(heatUp, StepTimes.FirstScum), null, Cautions.Unattended);
        if (Start(PressureStages.Boil) is not { } boils || End(PressureStages.Boil) is not { } lockedBy)
        {
            return;
        }

        TimeSpan open = TimeSpan.FromSeconds(lockedBy - boils);
        TimeSpan locking = Least(open, StepTimes.Lock);
        builder.At(At(boils), StepKind.Simmer, "Boil gently with the lid off", "All skimming is done now: once the lid is locked nobody can reach in.", open - locking, TimeSpan.Zero);
        builder.At(
            At(lockedBy) - locking,
            StepKind.Lock,
            "Lock the lid",
            "Valve and vent clear, gasket clean and seated, the pot no fuller than its maker's mark.",
            locking,
            locking,
            null,
            Cautions.BeforeLocking);
        double rising = Start(PressureStages.Pressure) ?? outcome.TotalSeconds;
        builder.At(At(lockedBy), StepKind.Pressurize, "Bring to pressure", "Full heat. Let steam stream from the vent until the air is out, as the maker says; then it climbs until the indicator says it is at pressure.", TimeSpan.FromSeconds(Math.Max(0, rising - lockedBy)), TimeSpan.Zero, null, Cautions.Unattended);
        if (Start(PressureStages.Pressure) is not { } held || End(PressureStages.Pressure) is not { } off)
        {
            return;
        }

        builder.At(
            At(held),
            StepKind.HoldPressure,
            "Turn down, hold the pressure",
            $"Just enough heat to hold it: about {KitchenFormat.Both(Temperature.FromDegreesCelsius(outcome.FinalCelsius))} inside, for a cooker of {KitchenFormat.Gauge(parts.Request.Pot.GaugePressure ?? Pot.UsualGaugePressure)}. The lid stays locked.",
            TimeSpan.FromSeconds(off - held),
            Least(TimeSpan.FromSeconds(off - held), TimeSpan.FromMinutes(1)),
            null,
            Cautions.UnderPressure);
        double fallen = Start(PressureStages.Release) ?? outcome.TotalSeconds;
        builder.At(
            At(off),
            StepKind.Release,
            "Heat off, let the pressure fall",
            "By itself: do not vent it and do not move it.",
            TimeSpan.FromSeconds(Math.Max(0, fallen - off)),
            Least(TimeSpan.FromSeconds(Math.Max(0, fallen - off)), TimeSpan.FromMinutes(1)),
            null,
            Cautions.PressureCooker);
        if (Start(PressureStages.Release) is not { } down || End(PressureStages.Release) is not { } opened)
        {
            return;
        }

        TimeSpan opening = TimeSpan.FromSeconds(opened - down);
        builder.At(At(down), StepKind.Open, "Open", "Only when the pressure indicator is down and the lid turns without force. Tilt it away from you.", opening, opening, null, Cautions.Opening);
        if (End(PressureStages.Late) is { } done)
        {
            builder.At(At(opened), StepKind.Simmer, "Simmer with the lid off", "Heat on again, a bubble here and there, for what goes in now.", TimeSpan.FromSeconds(done - opened), TimeSpan.Zero, null, Cautions.Unattended);
        }
    }

    private static TimeSpan Least(TimeSpan one, TimeSpan other) => one < other ? one : other;

    private double? Start(int stage) => stage < outcome.StageStarts.Count ? outcome.StageStarts[stage] : null;

    private double? End(int stage) => stage < outcome.StageEnds.Count ? outcome.StageEnds[stage] : null;
}
