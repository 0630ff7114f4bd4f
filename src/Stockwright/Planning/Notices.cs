using System.Globalization;
using Stockwright.Evidence;
using Stockwright.Measures;
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
        string body = SolidsWord.Of(load, line => line.Role == LineRole.Bones);
        AddBoiling(request, boiling, body, notices);
        AddPressure(request, boiling, body, notices);
        VesselNotices.Add(request, fit, boiling, outcome, notices);
        if (!outcome.IsReached && request.Pot.HasOwnHeater)
        {
            notices.Add(new(NoticeLevel.Warning, "heater-too-weak", $"Its own heater cannot bring this much to {HeatWords.Of(request.Recipe).Reach}: it settles at about {KitchenFormat.Both(Temperature.FromDegreesCelsius(outcome.FinalCelsius))}. Keep the lid on, use full power, make less, or use a pot on the hob.", "pot-power"));
        }
        else if (!outcome.IsReached)
        {
            notices.Add(new(NoticeLevel.Warning, "hob-too-weak", $"This hob cannot bring this pot to {HeatWords.Of(request.Recipe).Reach}: it settles at about {KitchenFormat.Both(Temperature.FromDegreesCelsius(outcome.FinalCelsius))}. Put the lid on, take a smaller batch, or a stronger ring.", "hob"));
        }

        if (fit.CoverDecidesWater && yield.Central.Liters > litres * 1.03 && request.Goal is not PlanGoal.FillPot)
        {
            notices.Add(new(NoticeLevel.Hint, "covered", $"Covering the solids takes more water than this yield needs: expect {KitchenFormat.Both(yield.Central)}. Break or cut {SolidsWord.Covered(load)} smaller, use a narrower pot, or boil the strained stock down."));
        }

        bool asAsked = fit.Verdict == FitVerdict.FitsStronger || request is { Goal: PlanGoal.UseBones, FillTo: not null };
        if (!asAsked && !fit.CoverDecidesWater && request.Goal is not PlanGoal.FillPot && Math.Abs(yield.Central.Liters - litres) > 0.03 * litres)
        {
            notices.Add(new(NoticeLevel.Warning, "yield-differs", $"So much boils away here that the water cannot be set for just this yield: expect {KitchenFormat.Both(yield.Central)}. Put the lid on, or simmer for less.", Field(request.Goal)));
        }

        if (request.TopUp == TopUpRule.None && outcome.LowestMetres < outcome.StartHeapMetres)
        {
            notices.Add(new(NoticeLevel.Warning, "uncovered", "Without topping up, the solids stand out of the liquid before the end.", "topup"));
        }

        if (outcome.LowestMetres < 0.1 * outcome.StartMetres && !request.IsUnderPressure)
        {
            notices.Add(new(NoticeLevel.Warning, "runs-dry", "Between two checks the pot runs all but dry: look in more often, put the lid on, or take a narrower pot.", "check"));
        }

        if (fit.PeakLevel > fit.SafeMaximum * 1.005)
        {
            notices.Add(new(NoticeLevel.Warning, "over-safe-maximum", $"At its highest this stands {KitchenFormat.Both(fit.PeakLevel - fit.SafeMaximum)} over the safe maximum: put in a little less, or leave out the last top-up.", Field(request.Goal)));
        }

        if (request.Recipe.IsAttended && PutsAway(request.Schedule.Night))
        {
            notices.Add(new(NoticeLevel.Hint, "attended-night", "A hard boil is not left for the night: this plan runs through. Start it so that you are up until it is off.", "night"));
        }

        if (LeavesOutFat(request))
        {
            notices.Add(new(NoticeLevel.Hint, "fat-not-taken", "Sweated in butter or oil? Take it in under What, so that its fat and its allergens, milk in butter, are counted.", "recipe"));
        }

        notices.AddRange(request.Recipe.NotCovered.Select(sentence => new PlanNotice(NoticeLevel.Hint, "not-covered", sentence)));
        if (request.Goal is PlanGoal.UseBones use)
        {
            AddAvoided(request, use, notices);
        }

        return notices;
    }

    private static bool PutsAway(NightPlan night) => night is NightPlan.OvenHold or NightPlan.StopAndCool;

    private static string LessWater(FitReport fit, Band<Volume> yield)
    {
        if (fit.LetDown > Volume.Zero)
        {
            return $"All of it fits in one batch with a little less water: {KitchenFormat.Both(yield.Central - fit.LetDown)} of stronger stock, let down with {KitchenFormat.Both(fit.LetDown)} of water after straining.";
        }

        return $"All of it fits in one batch with a little less water: {KitchenFormat.Both(yield.Central)} of stronger stock. Let it down with water when you use it.";
    }

    private static bool LeavesOutFat(PlanRequest request) =>
        request.Recipe.Lines.Any(line => line.Preparation == Preparation.Sweat && line.Role != LineRole.Fat && request.Takes(line))
        && request.Recipe.Lines.Any(line => line.Role == LineRole.Fat)
        && !request.Recipe.Lines.Any(line => line.Role == LineRole.Fat && request.Takes(line));

    private static void AddFit(PlanRequest request, FitReport fit, SimmerOutcome outcome, Band<Volume> yield, List<PlanNotice> notices)
    {
        if (fit.Verdict == FitVerdict.NeedsRounds)
        {
            string others = fit.PotsThatFit.Count > 0 ? $" It would fit in one go in: {string.Join(", ", fit.PotsThatFit)}." : "";
            string how = (fit.AtOnce, fit.Rounds) switch
            {
                (1, _) => string.Create(CultureInfo.InvariantCulture, $"in {fit.Rounds} rounds, one after the other"),
                (_, 1) => string.Create(CultureInfo.InvariantCulture, $"in {fit.AtOnce} pots side by side"),
                _ => string.Create(CultureInfo.InvariantCulture, $"in {fit.Rounds} rounds, up to {fit.AtOnce} pots side by side"),
            };
            notices.Add(new(
                NoticeLevel.Warning,
                "does-not-fit",
                string.Create(CultureInfo.InvariantCulture, $"This takes {fit.Potfuls} potfuls: {how}. Amounts below are for one. The most this pot makes at once is {KitchenFormat.Both(fit.LargestYield)}.{others}"),
                Field(request.Goal)));
        }

        if (fit.Verdict == FitVerdict.FitsStronger)
        {
            notices.Add(new(NoticeLevel.Hint, "less-water", LessWater(fit, yield), Field(request.Goal)));
        }

        if (fit.HeldLine < fit.FillLine - Length.FromMillimeters(5) && outcome.ToppedUpKilograms > 0)
        {
            notices.Add(new(NoticeLevel.Hint, "falls-first", $"Covering the solids takes more water than the stock you want: let it fall to {KitchenFormat.Both(request.Pot.InnerHeight - fit.HeldLine)} below the rim, and top up to there."));
        }

        if (request.TopUp == TopUpRule.KeepToLine && SimmerForecaster.Cold(outcome.SteamKilograms) > fit.WaterToLine * BoilsAwayShare)
        {
            notices.Add(new(NoticeLevel.Hint, "boils-away", $"About {KitchenFormat.Both(SimmerForecaster.Cold(outcome.SteamKilograms))} boils away, over a third of the water, so look in and top up.{(request.Lid.Kind == Kitchen.LidKind.Off ? " A lid ajar saves most of it." : "")}", "topup"));
        }

        if (!fit.IsCovered && fit.CoverDepth < -Length.FromMillimeters(5))
        {
            notices.Add(new(NoticeLevel.Warning, "stand-out", $"At the start the solids stand {KitchenFormat.Both(-fit.CoverDepth)} out of the liquid: press them down, break them smaller, or fill higher.", "fill"));
        }

        if (fit.FillLine < Length.FromCentimeters(4) && fit.FillLine < request.Pot.InnerHeight * 0.15)
        {
            notices.Add(new(NoticeLevel.Hint, "pot-too-wide", "The liquid stands very low in this pot: it reduces fast and scorches easily. A narrower pot suits this batch.", "pot"));
        }
    }

    private static void AddBoiling(PlanRequest request, BoilingReport boiling, string body, List<PlanNotice> notices)
    {
        if (!boiling.IsOutOfReach)
        {
            return;
        }

        string what = boiling.Reached.DegreesCelsius < boiling.Hottest.DegreesCelsius - 1
            ? $"The recipe simmers at {KitchenFormat.Both(boiling.Asked)}; here water boils at {KitchenFormat.Both(boiling.BoilingPoint)}, so it is kept a little under that, at {KitchenFormat.Both(boiling.Reached)}."
            : $"{KitchenFormat.Both(boiling.Asked)} cannot be reached: here the pot {(request.IsUnderPressure ? $"holds between {KitchenFormat.Both(boiling.BoilingPoint)} and" : "boils at")} {KitchenFormat.Both(boiling.Reached)}.";
        string time = boiling.PlannedTime > boiling.AskedTime
            ? $" The plan runs {KitchenFormat.Text(boiling.PlannedTime)} instead of {KitchenFormat.Text(boiling.AskedTime)} to draw as much from {body}."
            : string.Create(CultureInfo.InvariantCulture, $" For the same from {body} it would take {boiling.Stretch.Central:0.0} times as long.");
        bool matters = boiling.Stretch.Central > 1.02;
        notices.Add(new(NoticeLevel.Warning, "simmer-out-of-reach", matters ? what + time : what, "simmer"));
    }

    /// <summary>What choosing a pressure cooker settles, each said beside its field.</summary>
    private static void AddPressure(PlanRequest request, BoilingReport boiling, string body, List<PlanNotice> notices)
    {
        if (request.Pot.Kind == Kitchen.PotKind.PressureCooker && !request.IsUnderPressure)
        {
            notices.Add(new(NoticeLevel.Hint, "cooker-open", request.Lid.Kind == Kitchen.LidKind.On
                ? "This recipe lifts things out below the boil, so the cooker is used as an open pot, its lid laid on and never locked."
                : "With its lid off or ajar the cooker is an open pot. To cook under pressure set the lid on.", "lid"));
        }

        if (!request.IsUnderPressure)
        {
            return;
        }

        SimmerStage stage = request.Recipe.Stages[0];
        notices.Add(new(NoticeLevel.Hint, "locked-lid", "The lid is on, and locked while it is at pressure: skim before, and add what goes in late after opening. With the lid off or ajar it cooks as an open pot.", "lid"));
        if (request.SimmerTemperature is null)
        {
            notices.Add(new(NoticeLevel.Hint, "pressure-heat", $"At {KitchenFormat.Gauge(request.Pot.GaugePressure ?? Kitchen.Pot.UsualGaugePressure)} over the air the cooker holds {KitchenFormat.Both(boiling.Reached)} here, so the plan uses that instead of the recipe's {KitchenFormat.Both(stage.Target)}.", "simmer"));
        }

        if (request.SimmerTime is null)
        {
            TimeSpan same = boiling.PlannedTime * SimmerStretch.Between(stage.Target, boiling.Reached).Central;
            notices.Add(new(NoticeLevel.Warning, "pressure-time", $"{KitchenFormat.Text(boiling.PlannedTime)} is the recipe's time in an open pot. At pressure about as much comes from {body} in {KitchenFormat.Text(same)} (computed): give the time you want.", "hours"));
        }

        if (PutsAway(request.Schedule.Night))
        {
            notices.Add(new(NoticeLevel.Hint, "pressure-night", "A pressure cooker is not put away for the night: this plan runs through. Start it so that you are up until it is open.", "night"));
        }
    }

    private static void AddAvoided(PlanRequest request, PlanGoal.UseBones use, List<PlanNotice> notices)
    {
        foreach (BonesAtHand bones in use.Bones)
        {
            if (request.Larder.TryFind(bones.IngredientId, out Larder.Ingredient? ingredient) && ingredient.Note is { Length: > 0 } note)
            {
                notices.Add(new(NoticeLevel.Hint, "ingredient-note", $"{ingredient.Name}: {note}"));
            }
        }
    }

    private static string Field(PlanGoal goal) => goal switch
    {
        PlanGoal.UseBones => "bones-0-kg",
        PlanGoal.MakeVolume { PortionSize: not null } => "portion-count",
        _ => "litres",
    };
}
