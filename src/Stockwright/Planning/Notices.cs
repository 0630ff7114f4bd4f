using Stockwright.Evidence;
using Stockwright.Recipes;
using Stockwright.Simmering;
using UnitsNet;

namespace Stockwright.Planning;

/// <summary>What the cook should read first.</summary>
internal static class Notices
{
    /// <summary>More than this of the water boiled away is told (practice: a third).</summary>
    private const double BoilsAwayShare = 1.0 / 3;

    public static IReadOnlyList<PlanNotice> List(PlanRequest request, BatchLoad load, FitReport fit, BoilingReport boiling, SimmerOutcome outcome, Band<Volume> yield, double litres)
    {
        List<PlanNotice> notices = [];
        AddFit(request, fit, outcome, yield, notices);
        string body = SolidsText.Of(load, line => line.Role == LineRole.Bones);
        AddBoiling(request, boiling, body, notices);
        AddPressure(request, boiling, body, notices);
        VesselNotices.Add(request, fit, boiling, outcome, notices);
        if (!outcome.IsReached && request.Pot.HasOwnHeater)
        {
            notices.Add(new(NoticeLevel.Warning, NoticeCode.HeaterTooWeak, PlanPart.PotHeater, Figure.Of(HeatText.Of(request.Recipe).Reach), Figure.Of(Temperature.FromDegreesCelsius(outcome.FinalCelsius))));
        }
        else if (!outcome.IsReached)
        {
            notices.Add(new(NoticeLevel.Warning, NoticeCode.HobTooWeak, PlanPart.Hob, Figure.Of(HeatText.Of(request.Recipe).Reach), Figure.Of(Temperature.FromDegreesCelsius(outcome.FinalCelsius))));
        }

        if (fit.CoverDecidesWater && yield.Central.Liters > litres * 1.03 && request.Goal is not PlanGoal.FillPot)
        {
            notices.Add(new(NoticeLevel.Hint, NoticeCode.Covered, null, Figure.Of(yield.Central), Figure.Of(SolidsText.Covered(load))));
        }

        bool asAsked = fit.Verdict == FitVerdict.FitsStronger || request is { Goal: PlanGoal.UseBones, FillTo: not null };
        if (!asAsked && !fit.CoverDecidesWater && request.Goal is not PlanGoal.FillPot && Math.Abs(yield.Central.Liters - litres) > 0.03 * litres)
        {
            notices.Add(new(NoticeLevel.Warning, NoticeCode.YieldDiffers, PlanPart.Of(request.Goal), Figure.Of(yield.Central)));
        }

        if (request.TopUp == TopUpRule.None && outcome.LowestMetres < outcome.StartHeapMetres)
        {
            notices.Add(new(NoticeLevel.Warning, NoticeCode.Uncovered, PlanPart.TopUp));
        }

        if (outcome.LowestMetres < 0.1 * outcome.StartMetres && !request.IsUnderPressure)
        {
            notices.Add(new(NoticeLevel.Warning, NoticeCode.RunsDry, PlanPart.CheckInterval));
        }

        if (fit.PeakLevel > fit.SafeMaximum * 1.005)
        {
            notices.Add(new(NoticeLevel.Warning, NoticeCode.OverSafeMaximum, PlanPart.Of(request.Goal), Figure.Of(fit.PeakLevel - fit.SafeMaximum)));
        }

        if (request.Recipe.IsAttended && PutsAway(request.Schedule.Night))
        {
            notices.Add(new(NoticeLevel.Hint, NoticeCode.AttendedNight, PlanPart.Night));
        }

        if (LeavesOutFat(request))
        {
            notices.Add(new(NoticeLevel.Hint, NoticeCode.FatNotTaken, PlanPart.Recipe));
        }

        notices.AddRange(request.Recipe.NotCovered.Select(sentence => new PlanNotice(NoticeLevel.Hint, NoticeCode.NotCovered, null, Figure.Of(sentence))));
        if (request.Goal is PlanGoal.UseBones use)
        {
            AddAvoided(request, use, notices);
        }

        return notices;
    }

    private static bool PutsAway(NightPlan night) => night is NightPlan.OvenHold or NightPlan.StopAndCool;

    private static Figure LessWater(FitReport fit, Band<Volume> yield) => fit.LetDown > Volume.Zero
        ? Figure.Phrase(NoticePhrase.LetDownAfterStraining, Figure.Of(yield.Central - fit.LetDown), Figure.Of(fit.LetDown))
        : Figure.Phrase(NoticePhrase.LetDownInUse, Figure.Of(yield.Central));

    private static bool LeavesOutFat(PlanRequest request) =>
        request.Recipe.Lines.Any(line => line.Preparation == Preparation.Sweat && line.Role != LineRole.Fat && request.Takes(line))
        && request.Recipe.Lines.Any(line => line.Role == LineRole.Fat)
        && !request.Recipe.Lines.Any(line => line.Role == LineRole.Fat && request.Takes(line));

    private static void AddFit(PlanRequest request, FitReport fit, SimmerOutcome outcome, Band<Volume> yield, List<PlanNotice> notices)
    {
        if (fit.Verdict == FitVerdict.NeedsRounds)
        {
            Figure others = fit.PotsThatFit.Count > 0 ? Figure.Phrase(NoticePhrase.FitsInOneGo, Figure.Of(string.Join(", ", fit.PotsThatFit))) : Figure.Nothing;
            Figure how = (fit.AtOnce, fit.Rounds) switch
            {
                (1, _) => Figure.Phrase(NoticePhrase.InRounds, Figure.Of(fit.Rounds)),
                (_, 1) => Figure.Phrase(NoticePhrase.SideBySide, Figure.Of(fit.AtOnce)),
                _ => Figure.Phrase(NoticePhrase.InRoundsSideBySide, Figure.Of(fit.Rounds), Figure.Of(fit.AtOnce)),
            };
            notices.Add(new(NoticeLevel.Warning, NoticeCode.DoesNotFit, PlanPart.Of(request.Goal), Figure.Of(fit.Potfuls), how, Figure.Of(fit.LargestYield), others));
        }

        if (fit.Verdict == FitVerdict.FitsStronger)
        {
            notices.Add(new(NoticeLevel.Hint, NoticeCode.LessWater, PlanPart.Of(request.Goal), LessWater(fit, yield)));
        }

        if (fit.HeldLine < fit.FillLine - Length.FromMillimeters(5) && outcome.ToppedUpKilograms > 0)
        {
            notices.Add(new(NoticeLevel.Hint, NoticeCode.FallsFirst, null, Figure.Of(request.Pot.InnerHeight - fit.HeldLine)));
        }

        if (request.TopUp == TopUpRule.KeepToLine && SimmerForecaster.Cold(outcome.SteamKilograms) > fit.WaterToLine * BoilsAwayShare)
        {
            Figure lid = request.Lid.Kind == Kitchen.LidKind.Off ? Figure.Phrase(NoticePhrase.LidSaves) : Figure.Nothing;
            notices.Add(new(NoticeLevel.Hint, NoticeCode.BoilsAway, PlanPart.TopUp, Figure.Of(SimmerForecaster.Cold(outcome.SteamKilograms)), lid));
        }

        if (!fit.IsCovered && fit.CoverDepth < -Length.FromMillimeters(5))
        {
            notices.Add(new(NoticeLevel.Warning, NoticeCode.StandOut, PlanPart.FillTo, Figure.Of(-fit.CoverDepth)));
        }

        if (fit.FillLine < Length.FromCentimeters(4) && fit.FillLine < request.Pot.InnerHeight * 0.15)
        {
            notices.Add(new(NoticeLevel.Hint, NoticeCode.PotTooWide, PlanPart.Pot));
        }
    }

    private static void AddBoiling(PlanRequest request, BoilingReport boiling, string body, List<PlanNotice> notices)
    {
        if (!boiling.IsOutOfReach)
        {
            return;
        }

        (Figure asked, Figure boils, Figure reached) = (Figure.Of(boiling.Asked), Figure.Of(boiling.BoilingPoint), Figure.Of(boiling.Reached));
        Figure what = boiling.Reached.DegreesCelsius < boiling.Hottest.DegreesCelsius - 1 ? Figure.Phrase(NoticePhrase.KeptUnderTheBoil, asked, boils, reached)
            : request.IsUnderPressure ? Figure.Phrase(NoticePhrase.OutOfReachLocked, asked, boils, reached)
            : Figure.Phrase(NoticePhrase.OutOfReachOpen, asked, reached);
        Figure time = boiling.PlannedTime > boiling.AskedTime
            ? Figure.Phrase(NoticePhrase.RunsLonger, Figure.Of(boiling.PlannedTime), Figure.Of(boiling.AskedTime), Figure.Of(body))
            : Figure.Phrase(NoticePhrase.WouldTakeLonger, Figure.Of(body), Figure.Of(boiling.Stretch.Central));
        bool matters = boiling.Stretch.Central > 1.02;
        notices.Add(new(NoticeLevel.Warning, NoticeCode.SimmerOutOfReach, PlanPart.SimmerTemperature, what, matters ? time : Figure.Nothing));
    }

    /// <summary>What choosing a pressure cooker settles, each said beside its field.</summary>
    private static void AddPressure(PlanRequest request, BoilingReport boiling, string body, List<PlanNotice> notices)
    {
        if (request.Pot.Kind == Kitchen.PotKind.PressureCooker && !request.IsUnderPressure)
        {
            Figure why = Figure.Phrase(request.Lid.Kind == Kitchen.LidKind.On ? NoticePhrase.LidLaidOn : NoticePhrase.LidNotOn);
            notices.Add(new(NoticeLevel.Hint, NoticeCode.CookerOpen, PlanPart.Lid, why));
        }

        if (!request.IsUnderPressure)
        {
            return;
        }

        SimmerStage stage = request.Recipe.Stages[0];
        notices.Add(new(NoticeLevel.Hint, NoticeCode.LockedLid, PlanPart.Lid));
        if (request.SimmerTemperature is null)
        {
            notices.Add(new(NoticeLevel.Hint, NoticeCode.PressureHeat, PlanPart.SimmerTemperature, Figure.Gauge(request.Pot.GaugePressure ?? Kitchen.Pot.UsualGaugePressure), Figure.Of(boiling.Reached), Figure.Of(stage.Target)));
        }

        if (request.SimmerTime is null)
        {
            TimeSpan same = boiling.PlannedTime * SimmerStretch.Between(stage.Target, boiling.Reached).Central;
            notices.Add(new(NoticeLevel.Warning, NoticeCode.PressureTime, PlanPart.SimmerTime, Figure.Of(boiling.PlannedTime), Figure.Of(body), Figure.Of(same)));
        }

        if (PutsAway(request.Schedule.Night))
        {
            notices.Add(new(NoticeLevel.Hint, NoticeCode.PressureNight, PlanPart.Night));
        }
    }

    private static void AddAvoided(PlanRequest request, PlanGoal.UseBones use, List<PlanNotice> notices)
    {
        foreach (BonesAtHand bones in use.Bones)
        {
            if (request.Larder.TryFind(bones.IngredientId, out Larder.Ingredient? ingredient) && ingredient.Note is { Length: > 0 } note)
            {
                notices.Add(new(NoticeLevel.Hint, NoticeCode.IngredientNote, null, Figure.Of(ingredient.Name), Figure.Of(note)));
            }
        }
    }
}
