using Stockwright.Larder;
using Stockwright.Measures;
using Stockwright.Recipes;
using Stockwright.Simmering;
using UnitsNet;

namespace Stockwright.Planning;

/// <summary>What the timeline is laid from.</summary>
internal sealed record TimelineParts(
    PlanRequest Request,
    BatchLoad Load,
    RoastPlan? Roast,
    BlanchPlan? Blanch,
    SimmerOutcome Outcome,
    double WaterKilograms,
    double YieldLitres)
{
    /// <summary>When a step after the heat really ended, given when it was to end; null while nothing is known of it.</summary>
    public Func<StepKind, DateTimeOffset, DateTimeOffset>? Ended { get; init; }
}

/// <summary>Lays every step from gathering to portioning, forwards from the moment the heat goes on.</summary>
internal sealed class TimelineWriter(TimelineParts parts)
{
    /// <summary>Longer than this nothing raw stands in water in the room.</summary>
    private static readonly TimeSpan LongSoak = TimeSpan.FromHours(2);

    private readonly PlanRequest request = parts.Request;
    private readonly StockRecipe recipe = parts.Request.Recipe;

    /// <summary>Time from the cook's start to heat on.</summary>
    public TimeSpan BeforeHeat =>
        StepTimes.Gather
        + (recipe.Soak ?? TimeSpan.Zero)
        + (parts.Roast?.TotalTime ?? TimeSpan.Zero)
        + (parts.Roast is null ? TimeSpan.Zero : StepTimes.LoadTrays)
        + (parts.Blanch is { } blanch ? blanch.TimeToBoil + blanch.Setting.Time + StepTimes.DrainAndRinse : TimeSpan.Zero)
        + (Sweats ? StepTimes.Sweat : TimeSpan.Zero)
        + StepTimes.Fill;

    /// <summary>Raw meat, fish or shells, which drip on what is eaten as it is.</summary>
    private bool HasRaw => parts.Load.Items.Any(item => item.Ingredient.Group is
        IngredientGroup.Beef or IngredientGroup.Veal or IngredientGroup.Poultry or IngredientGroup.Pork or IngredientGroup.Lamb or IngredientGroup.Game
        or IngredientGroup.Fish or IngredientGroup.Shellfish);

    private bool Sweats => recipe.Lines.Any(line => line.Preparation == Preparation.Sweat && request.Takes(line));

    /// <summary>Lays the steps.</summary>
    public Timeline Write(DateTimeOffset heatOn)
    {
        StepBuilder builder = new(request.Schedule);
        DateTimeOffset start = heatOn - BeforeHeat;
        Prepare(builder, start);
        DateTimeOffset heatOff = heatOn + TimeSpan.FromSeconds(parts.Outcome.TotalSeconds);
        if (request.IsUnderPressure)
        {
            new PressureSteps(parts, builder).Write(heatOn);
            int check = 0;
            foreach ((double atSeconds, PotAction action) in parts.Outcome.Actions)
            {
                AddAction(builder, heatOn + TimeSpan.FromSeconds(atSeconds), action, ref check);
            }
        }
        else
        {
            Simmer(builder, heatOn, heatOff);
        }

        (DateTimeOffset strained, DateTimeOffset ready) = Finish(builder, heatOff);
        List<PlanStep> steps = [.. builder.Steps.OrderBy(step => step.At)];
        return new Timeline(steps, start, heatOn, heatOff, strained, ready, TimeSpan.FromTicks(steps.Sum(step => step.HandsOn.Ticks)), []);
    }

    private void Prepare(StepBuilder builder, DateTimeOffset start)
    {
        DateTimeOffset at = builder.Then(start, StepKind.Gather, "Weigh everything out", "Trim, cut and weigh by the list.", StepTimes.Gather, StepTimes.Gather, HasRaw ? [Cautions.RawBones] : []);
        if (recipe.Soak is { } soak)
        {
            at = builder.Then(at, StepKind.Soak, "Soak in cold water", soak < LongSoak ? "Keep it cold; change the water if it clouds." : "Covered, in the fridge. Change the water when you pass by.", soak, TimeSpan.FromMinutes(5));
        }

        at = Roast(builder, at);
        if (parts.Blanch is { } blanch)
        {
            at = builder.Then(
                at,
                StepKind.Blanch,
                "Blanch the bones",
                $"Cover with {KitchenFormat.Both(blanch.Water)} of cold water, bring to the boil, {KitchenFormat.Text(blanch.Setting.Time)} there, drain and rinse each piece.",
                blanch.TimeToBoil + blanch.Setting.Time + StepTimes.DrainAndRinse,
                StepTimes.DrainAndRinse,
                Cautions.PourOffBlanch);
        }

        if (Sweats)
        {
            at = builder.Then(at, StepKind.Fill, "Sweat the vegetables", "In the pot, gently, without colour.", StepTimes.Sweat, StepTimes.Sweat);
        }

        string liquid = recipe.Wetting is { } wetting ? $"cold {ScriptWriter.PlainName(request.Larder.Get(wetting))}" : "cold water";
        double full = parts.Load.Items.Where(item => item.Line.Joins == JoinMoment.Start).Sum(item => item.InPotKilograms) + parts.WaterKilograms + request.Pot.EmptyMass.Kilograms;
        builder.At(
            at,
            StepKind.Fill,
            "Load the pot and fill to the line",
            $"{(parts.Load.StartSolids().Count > 0 ? "Solids first, then " : "")}{KitchenFormat.Both(SimmerForecaster.Cold(parts.WaterKilograms))} of {liquid}. {(recipe.Wetting is null ? "The water" : "It")} should reach the line; trust the line if they disagree.",
            StepTimes.Fill,
            StepTimes.Fill,
            null,
            Cautions.HeavyPot(Mass.FromKilograms(full)));
    }

    private DateTimeOffset Roast(StepBuilder builder, DateTimeOffset at)
    {
        if (parts.Roast is not { } roast)
        {
            return at;
        }

        builder.At(at, StepKind.Roast, "Heat the oven", $"{OvenText(roast)}.", RoastPlanner.Preheat, TimeSpan.FromMinutes(1));
        DateTimeOffset loading = builder.Then(at + RoastPlanner.Preheat - StepTimes.LoadTrays, StepKind.Roast, "Spread the bones on trays", "One layer, with air between the pieces.", StepTimes.LoadTrays, StepTimes.LoadTrays);
        DateTimeOffset round = loading + StepTimes.LoadTrays;
        for (int i = 0; i < roast.OvenRounds; i++)
        {
            string which = roast.OvenRounds > 1 ? $" (round {i + 1} of {roast.OvenRounds})" : "";
            builder.At(round, StepKind.Roast, "Roast until well brown" + which, $"{KitchenFormat.Text(roast.Setting.Time)} at {OvenText(roast)}.", roast.Setting.Time, TimeSpan.Zero);
            builder.At(round + roast.TurnAt, StepKind.Roast, "Turn the bones" + which, "And drain fat that has gathered.", StepTimes.Turn, StepTimes.Turn, null, Cautions.HotFat);
            if (roast.Setting.VegetablesJoinBeforeEnd is { } vegetables && parts.Load.Items.Any(item => item.Line is { Preparation: Preparation.Roast, Role: not LineRole.Bones and not LineRole.Paste }))
            {
                builder.At(round + roast.Setting.Time - vegetables, StepKind.Roast, "Vegetables join the trays" + which, "Toss them in the fat.", StepTimes.Turn, StepTimes.Turn);
            }

            if (roast.Setting.PasteJoinsBeforeEnd is { } paste && parts.Load.Items.Any(item => item.Line.Role == LineRole.Paste))
            {
                builder.At(round + roast.Setting.Time - paste, StepKind.Roast, "Spread the paste" + which, "Let it turn rusty, not black.", StepTimes.Turn, StepTimes.Turn);
            }

            builder.At(round + roast.Setting.Time, StepKind.Roast, "Drain the fat and deglaze" + which, "Scrape up the brown with a little water; taste it first, and leave it out if it is bitter.", RoastPlanner.Deglaze, RoastPlanner.Deglaze, null, Cautions.HotFat);
            round += roast.Setting.Time + RoastPlanner.Deglaze;
        }

        return round;
    }

    private static string OvenText(RoastPlan roast) =>
        string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{roast.Oven.Conventional.DegreesCelsius:0} °C, fan {roast.Oven.Fan.DegreesCelsius:0} °C ({roast.Oven.FahrenheitName} °F, gas {roast.Oven.GasMark})");

    private void Simmer(StepBuilder builder, DateTimeOffset heatOn, DateTimeOffset heatOff)
    {
        SimmerOutcome outcome = parts.Outcome;
        TimeSpan heatUp = TimeSpan.FromSeconds(outcome.HeatUpSeconds);
        DateTimeOffset simmering = heatOn + heatUp;
        if (heatUp > TimeSpan.FromMinutes(1))
        {
            TimeSpan hands = heatUp < StepTimes.FirstScum ? heatUp : StepTimes.FirstScum;
            builder.At(heatOn, StepKind.HeatUp, "Heat on", request.HeatsUpCovered ? "Lid on, full heat, until it begins to bubble; then lift the scum." : recipe.Kind.IsSkimmed() ? "Lid off, full heat, no stirring. Scum rises from about 80 °C (180 °F): lift it as it comes." : "Lid off, full heat.", heatUp, hands, null, Cautions.Unattended);
        }

        string set = KitchenFormat.Both(Temperature.FromDegreesCelsius(outcome.FinalCelsius));
        string how = recipe.Stages.Count > 1
            ? string.Join("; ", recipe.Stages.Select(Told))
            : How(recipe.Stages[0], set);
        Caution[] cautions = heatUp > TimeSpan.FromMinutes(1) ? [] : [Cautions.Unattended];
        builder.At(simmering, StepKind.Simmer, Title(), how, heatOff - simmering, TimeSpan.Zero, null, cautions);
        int check = 0;
        foreach ((double atSeconds, PotAction action) in outcome.Actions)
        {
            AddAction(builder, heatOn + TimeSpan.FromSeconds(atSeconds), action, ref check);
        }
    }

    private static string Told(SimmerStage stage) =>
        stage.ReducesTo is { } share
            ? $"{stage.Name}: until {Left(share.Value)} of it is left"
            : $"{stage.Name}: {(stage.ClimbsSlowly ? "climb to " : "")}{KitchenFormat.Both(stage.Target)}, {KitchenFormat.Text(stage.Time)}";

    private string Title() =>
        recipe.BoilsDown ? "Boil it down" : recipe.Stages[recipe.MainStage].IsRolling ? "Keep it boiling hard" : "Simmer";

    private static string How(SimmerStage stage, string set) => stage switch
    {
        { ReducesTo: { } share } => $"Until {Left(share.Value)} of it is left: mark the level on a stick. It spits and burns at the end, so turn it down then and stay with it.",
        { ClimbsSlowly: true } => $"Warm it slowly, over {KitchenFormat.Text(stage.Time)}, to {set}. Nothing boils.",
        { IsRolling: true } => $"A rolling boil, about {set}: bubbles all over. Top up with hot water, and never leave it.",
        _ => $"Hold {set}: a bubble here and there, no boil.",
    };

    private static string Left(Ratio share) => share.Percent switch
    {
        >= 9 and <= 11 => "a tenth",
        >= 32 and <= 35 => "a third",
        >= 49 and <= 51 => "half",
        double percent => string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{percent:0} %"),
    };

    private void AddAction(StepBuilder builder, DateTimeOffset at, PotAction action, ref int check)
    {
        switch (action.Kind)
        {
            case PotActionKind.Skim:
                builder.At(action.Key, at, StepKind.Skim, "Skim", "Lift scum and fat from the edge; do not stir.", StepTimes.Skim, StepTimes.Skim);
                break;
            case PotActionKind.Check:
                SimmerOutcome.CheckOutcome due = parts.Outcome.Checks[check];
                string add = due.TopUpKilograms > 0
                    ? $"Expect to add about {KitchenFormat.Both(SimmerForecaster.Cold(due.TopUpKilograms))}."
                    : "No water expected.";
                string level = KitchenFormat.Both(Length.FromMeters(request.Pot.InnerHeight.Meters - due.LevelBefore));
                builder.At(action.Key, at, StepKind.Check, recipe.Kind.IsSkimmed() ? "Skim and read the level" : "Read the level", $"Expect it {level} below the rim. {add}", StepTimes.Check, StepTimes.Check, check);
                check++;
                break;
            case PotActionKind.Add:
                builder.At(action.Key, at, StepKind.Add, $"Add {action.Label}", "Slide it in; no splash.", StepTimes.Add, StepTimes.Add);
                break;
            case PotActionKind.HoldBegins:
                builder.At(action.Key, at, StepKind.NightHold, "Lid on, into a low oven or slow appliance", "About 95 °C (200 °F). No checks until morning.", TimeSpan.FromMinutes(5), TimeSpan.FromMinutes(5), null, Cautions.NightHold, Cautions.Straining);
                break;
            case PotActionKind.HoldEnds:
                builder.At(action.Key, at, StepKind.NightHold, "Out of the oven", "Check the level. If time is left, back on the hob with the lid as before.", TimeSpan.FromMinutes(5), TimeSpan.FromMinutes(5), null, Cautions.Straining);
                break;
            case PotActionKind.Pause:
                builder.At(action.Key, at, StepKind.NightHold, "Stop for the night: strain, cool fast, keep cold", "In the morning everything goes back and comes up to the simmer again.", TimeSpan.FromSeconds(action.PauseSeconds), TimeSpan.FromMinutes(40), null, Cautions.StopAndCool, Cautions.Cooling);
                break;
        }
    }

    private (DateTimeOffset Strained, DateTimeOffset Ready) Finish(StepBuilder builder, DateTimeOffset heatOff)
    {
        TimeSpan portioning = StepTimes.Portion(parts.YieldLitres);
        DateTimeOffset at = Ended(StepKind.Stand, builder.Then(heatOff, StepKind.Stand, HeatIsOff ? "Let it stand" : "Heat off, let it stand", "It settles, and scalds less.", StepTimes.Stand(recipe), TimeSpan.Zero));
        DateTimeOffset strained = Ended(StepKind.Strain, builder.Then(at, StepKind.Strain, "Strain", "Ladle through a fine strainer; let it drip, do not press.", StepTimes.Strain, StepTimes.Strain, Cautions.Straining));
        at = Ended(StepKind.Cool, builder.Then(strained, StepKind.Cool, "Cool it fast", "Split it shallow or stand it in ice water, stirring; lid off until cold.", StepTimes.Cool, StepTimes.CoolHands, Cautions.Cooling));
        if (recipe.ChillsAndDefats)
        {
            DateTimeOffset chilled = at + StepTimes.Chill;
            DateTimeOffset portioned = chilled + StepTimes.Defat + StepTimes.Remelt + portioning;
            if (!request.Schedule.IsAwake(chilled) || NightWindows.Next(request.Schedule, chilled, request.Schedule.SleepsAt) < portioned)
            {
                // It keeps overnight: what is left is work for the morning.
                chilled = NightWindows.Next(request.Schedule, chilled, request.Schedule.WakesAt);
            }

            chilled = Ended(StepKind.Chill, chilled);
            chilled = chilled > at ? chilled : at;
            builder.At(at, StepKind.Chill, "Chill until the fat is firm", "Covered, at the bottom of the fridge.", chilled - at, TimeSpan.Zero);
            at = Ended(StepKind.Defat, builder.Then(chilled, StepKind.Defat, "Lift the fat", "Save it: it keeps and it is worth having.", StepTimes.Defat, StepTimes.Defat));
            at = Ended(StepKind.Remelt, builder.Then(at, StepKind.Remelt, "Warm it until it runs", "Just enough to pour and measure.", StepTimes.Remelt, StepTimes.RemeltHands));
        }

        IEnumerable<Ingredient> inIt = parts.Load.Items.Select(item => item.Ingredient).Concat(recipe.Wetting is { } wetting ? [request.Larder.Get(wetting)] : []);
        string[] flagged = [.. inIt.SelectMany(ingredient => ingredient.Allergens).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal)];
        Caution[] cautions = flagged.Length > 0
            ? [Cautions.Glass, Cautions.NotForTheShelf, Cautions.Allergens(flagged)]
            : [Cautions.Glass, Cautions.NotForTheShelf];
        DateTimeOffset ready = Ended(StepKind.Portion, builder.Then(at, StepKind.Portion, "Measure, portion and label", "Name, date and size on every tub; oldest to the front.", portioning, portioning, cautions));
        return (strained, ready);
    }

    /// <summary>The heat went off to let the pressure fall, and did not come on again.</summary>
    private bool HeatIsOff => request.IsUnderPressure && parts.Outcome.StageStarts.Count <= PressureStages.Late;

    private DateTimeOffset Ended(StepKind kind, DateTimeOffset end) => parts.Ended is { } ended ? ended(kind, end) : end;
}
