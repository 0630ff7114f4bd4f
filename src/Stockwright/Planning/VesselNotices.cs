using Stockwright.Evidence;
using Stockwright.Kitchen;
using Stockwright.Simmering;
using UnitsNet;

namespace Stockwright.Planning;

/// <summary>What the cook should know of a vessel that is no ordinary pot on a hob.</summary>
internal static class VesselNotices
{
    private const double DangerTopCelsius = 60;
    private const double DangerBottomCelsius = 5;

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
            AddNearlyDry(request.Assumptions, outcome, notices);
        }

        if (request.Pot.HasOwnHeater)
        {
            notices.Add(new(NoticeLevel.Hint, NoticeCode.OwnHeater, PlanPart.Hob, Figure.Phrase(request.Pot.Kind == PotKind.SlowCooker ? NoticePhrase.SlowCooker : NoticePhrase.Kettle)));
        }

        if (request.Pot.Kind == PotKind.SlowCooker)
        {
            AddSlowCooker(request, fit, boiling, outcome, notices);
        }

        AddSlowWarmUp(request, outcome, notices);
        if (request.Pot.Kind == PotKind.Kettle && request.Schedule.Night == NightPlan.OvenHold)
        {
            notices.Add(new(NoticeLevel.Hint, NoticeCode.KettleNight, PlanPart.Night));
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
    private static void AddNearlyDry(SimmerAssumptions assumptions, SimmerOutcome outcome, List<PlanNotice> notices)
    {
        if (outcome.StageEnds.Count <= PressureStages.Release)
        {
            return;
        }

        double lockedHours = (outcome.StageEnds[PressureStages.Release] - outcome.StageEnds[PressureStages.Boil]) / 3600;
        Stated<double> leak = assumptions.SealedLeak;
        double more = lockedHours * (leak.High - leak.Value);
        if (outcome.LiquidLeftKilograms - more < assumptions.Get("sealed-least").Value)
        {
            notices.Add(new(
                NoticeLevel.Warning,
                NoticeCode.SealedNearsDry,
                PlanPart.SimmerTime,
                Figure.Of(SimmerForecaster.Cold(outcome.SteamKilograms)),
                Figure.Of(SimmerForecaster.Cold(outcome.SteamKilograms + more))));
        }
    }

    private static void AddSlowCooker(PlanRequest request, FitReport fit, BoilingReport boiling, SimmerOutcome outcome, List<PlanNotice> notices)
    {
        notices.Add(new(
            NoticeLevel.Hint,
            NoticeCode.SlowTime,
            PlanPart.SimmerTime,
            Figure.Of(TimeSpan.FromSeconds(outcome.HeatUpSeconds)),
            Figure.Phrase(request.Setting == SlowCookerSetting.Low ? NoticePhrase.SettingLow : NoticePhrase.SettingHigh),
            Figure.Of(boiling.PlannedTime)));
        if (request.Pot.VolumeAtMetres(fit.FillLine.Meters) < VesselFill.LeastSlowShare * request.Pot.BrimVolume.CubicMeters)
        {
            notices.Add(new(NoticeLevel.Hint, NoticeCode.SlowHalfFull, PlanPart.Pot));
        }

        if (request.Schedule.Night != NightPlan.GetUp)
        {
            notices.Add(new(NoticeLevel.Hint, NoticeCode.SlowNight, PlanPart.Night));
        }
    }

    private static void AddSlowWarmUp(PlanRequest request, SimmerOutcome outcome, List<PlanNotice> notices)
    {
        TimeSpan below = BelowSixty(outcome);
        if (below <= LongestInDanger || request.Recipe.Stages[0].ClimbsSlowly)
        {
            return;
        }

        string remedy = request.Pot.Kind != PotKind.SlowCooker ? NoticePhrase.WarmUpFaster
            : request.Setting == SlowCookerSetting.Low ? NoticePhrase.WarmUpFirstOrHigh : NoticePhrase.WarmUpFirst;
        notices.Add(new(
            NoticeLevel.Warning,
            NoticeCode.SlowWarmUp,
            request.Pot.Kind == PotKind.SlowCooker ? PlanPart.SlowSetting : PlanPart.Hob,
            Figure.Of(Temperature.FromDegreesCelsius(DangerTopCelsius)),
            Figure.Of(below),
            Figure.Of(Temperature.FromDegreesCelsius(DangerBottomCelsius)),
            Figure.Phrase(remedy)));
    }

    private static void AddOven(PlanRequest request, SimmerOutcome outcome, List<PlanNotice> notices)
    {
        notices.Add(new(
            NoticeLevel.Hint,
            NoticeCode.OvenSize,
            PlanPart.SimmersInOven,
            Figure.Of(request.Pot.InnerHeight),
            Figure.Of(request.Pot.BrimDiameter),
            Figure.Of(VesselSteps.OvenHeat.Least),
            Figure.Of(VesselSteps.OvenHeat.Most)));
        if (VesselSteps.LeavesOvenEarly(outcome))
        {
            notices.Add(new(NoticeLevel.Hint, NoticeCode.OvenLate, PlanPart.SimmersInOven));
        }

        if (request.Schedule.Night != NightPlan.GetUp)
        {
            notices.Add(new(NoticeLevel.Hint, NoticeCode.OvenNight, PlanPart.Night));
        }
    }

    internal static string Word(SlowCookerSetting setting) => setting == SlowCookerSetting.Low ? "low" : "high";
}
