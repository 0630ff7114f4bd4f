using Stockwright.Kitchen;
using Stockwright.Measures;
using Stockwright.Simmering;
using UnitsNet;

namespace Stockwright.Planning;

/// <summary>What the cook should know of a vessel that is no ordinary pot on a hob.</summary>
internal static class VesselNotices
{
    private const double DangerTopCelsius = 60;

    private static readonly TimeSpan LongestInDanger = TimeSpan.FromHours(4);

    /// <summary>Why nothing can be planned when the pot would boil dry.</summary>
    public static Problem BoilsDry(PlanRequest request) => request switch
    {
        { IsUnderPressure: true } => new(PlanPart.SimmerTime, ProblemCode.LockedRunsDry),
        { IsLeftAlone: true } => new(PlanPart.SimmerTime, ProblemCode.LeftAloneRunsDry),
        _ => new(PlanPart.TopUp, ProblemCode.RunsDry),
    };

    public static void Add(PlanRequest request, FitReport fit, BoilingReport boiling, SimmerOutcome outcome, List<PlanNotice> notices)
    {
        if (request.IsUnderPressure)
        {
            AddNearlyDry(outcome, notices);
        }

        if (request.Pot.HasOwnHeater)
        {
            notices.Add(new(NoticeLevel.Hint, "own-heater", $"{(request.Pot.Kind == PotKind.SlowCooker ? "A slow cooker" : "A kettle")} heats itself: the hob does not count here.", "hob"));
        }

        if (request.Pot.Kind == PotKind.SlowCooker)
        {
            AddSlowCooker(request, fit, boiling, outcome, notices);
        }

        AddSlowWarmUp(request, outcome, notices);
        if (request.Pot.Kind == PotKind.Kettle && request.Schedule.Night == NightPlan.OvenHold)
        {
            notices.Add(new(NoticeLevel.Hint, "kettle-night", "A kettle goes into no oven: this plan runs through the night with its checks. Stop and cool instead, or start so that you are up.", "night"));
        }

        if (request.SimmersInOven)
        {
            AddOven(request, outcome, notices);
        }
    }

    /// <summary>Time on the way up below 60 °C, straight between the points of the run; all of it when it never gets there.</summary>
    internal static TimeSpan BelowSixty(SimmerOutcome outcome)
    {
        for (int i = 0; i < outcome.Points.Count; i++)
        {
            SimmerOutcome.PointInTime there = outcome.Points[i];
            if (there.Celsius < DangerTopCelsius)
            {
                continue;
            }

            if (i == 0)
            {
                return TimeSpan.Zero;
            }

            SimmerOutcome.PointInTime before = outcome.Points[i - 1];
            double part = (DangerTopCelsius - before.Celsius) / (there.Celsius - before.Celsius);
            return TimeSpan.FromSeconds(before.Seconds + (part * (there.Seconds - before.Seconds)));
        }

        return TimeSpan.FromSeconds(outcome.TotalSeconds);
    }

    /// <summary>The valve of another cooker may leak as much as the top of the range: even then something must cover the base.</summary>
    private static void AddNearlyDry(SimmerOutcome outcome, List<PlanNotice> notices)
    {
        if (outcome.StageEnds.Count <= PressureStages.Release)
        {
            return;
        }

        double lockedHours = (outcome.StageEnds[PressureStages.Release] - outcome.StageEnds[PressureStages.Boil]) / 3600;
        double more = lockedHours * (SealedPot.Leak.High - SealedPot.Leak.Value);
        if (outcome.LiquidLeftKilograms - more < SealedPot.LeastLiquid.Value)
        {
            notices.Add(new(
                NoticeLevel.Warning,
                "sealed-nears-dry",
                $"So little liquid, locked for so long, may come near dry, and nobody can look in: about {KitchenFormat.Both(SimmerForecaster.Cold(outcome.SteamKilograms))} goes as steam, with a leaking valve {KitchenFormat.Both(SimmerForecaster.Cold(outcome.SteamKilograms + more))}. Make more at once or cook for less; the maker's least liquid stands above this plan.",
                "hours"));
        }
    }

    private static void AddSlowCooker(PlanRequest request, FitReport fit, BoilingReport boiling, SimmerOutcome outcome, List<PlanNotice> notices)
    {
        notices.Add(new(
            NoticeLevel.Hint,
            "slow-time",
            $"It takes about {KitchenFormat.Text(TimeSpan.FromSeconds(outcome.HeatUpSeconds))} to get hot on {Word(request.Setting)}; the {KitchenFormat.Text(boiling.PlannedTime)} are counted from then. The lid stays on: nobody skims, tops up or looks in, and each lift costs about 20 minutes of heat (common practice, no source).",
            "hours"));
        if (request.Pot.VolumeAtMetres(fit.FillLine.Meters) < VesselFill.LeastSlowShare * request.Pot.BrimVolume.CubicMeters)
        {
            notices.Add(new(NoticeLevel.Hint, "slow-half-full", "The crock is less than half full: it heats unevenly and dries at the edge (common practice, no source). Make more, or take a smaller one.", "pot"));
        }

        if (request.Schedule.Night != NightPlan.GetUp)
        {
            notices.Add(new(NoticeLevel.Hint, "slow-night", "A slow cooker is not put away for the night: it runs through with its lid on.", "night"));
        }
    }

    private static void AddSlowWarmUp(PlanRequest request, SimmerOutcome outcome, List<PlanNotice> notices)
    {
        TimeSpan below = BelowSixty(outcome);
        if (below <= LongestInDanger || request.Recipe.Stages[0].ClimbsSlowly)
        {
            return;
        }

        string remedy = request.Pot.Kind == PotKind.SlowCooker
            ? $"Bring it to the simmer in a pot on the hob first, start with hot liquid if the maker allows it, {(request.Setting == SlowCookerSetting.Low ? "use high, " : "")}or make less."
            : "Put the lid on, make less, or take more heat.";
        notices.Add(new(
            NoticeLevel.Warning,
            "slow-warm-up",
            $"On the way up it stays below {KitchenFormat.Both(Temperature.FromDegreesCelsius(DangerTopCelsius))} for about {KitchenFormat.Text(below)}. By the 2 hour/4 hour rule of Food Standards Australia New Zealand, food kept between 5 and 60 °C (41 and 140 °F) for more than 4 h in all is thrown away; your local code stands above it. {remedy}",
            request.Pot.Kind == PotKind.SlowCooker ? "slow-setting" : "hob"));
    }

    private static void AddOven(PlanRequest request, SimmerOutcome outcome, List<PlanNotice> notices)
    {
        notices.Add(new(
            NoticeLevel.Hint,
            "oven-size",
            $"The pot is {KitchenFormat.Both(request.Pot.InnerHeight)} high and {KitchenFormat.Both(request.Pot.BrimDiameter)} across inside, more with lid and handles: measure the oven before you heat anything. Lid, knob and handles must bear {VesselSteps.OvenText}.",
            "in-oven"));
        if (VesselSteps.LeavesOvenEarly(outcome))
        {
            notices.Add(new(NoticeLevel.Hint, "oven-late", "What goes in late takes the pot out of the oven, and it finishes on the hob. Put it in early, or leave it out, and the pot stays in to the end.", "in-oven"));
        }

        if (request.Schedule.Night != NightPlan.GetUp)
        {
            notices.Add(new(NoticeLevel.Hint, "oven-night", "In the oven already, the pot stays there through the night: what is set for the night does not count.", "night"));
        }
    }

    internal static string Word(SlowCookerSetting setting) => setting == SlowCookerSetting.Low ? "low" : "high";
}
