using Stockwright.Kitchen;
using Stockwright.Larder;
using Stockwright.Measures;
using Stockwright.Recipes;
using Stockwright.Simmering;
using UnitsNet;

namespace Stockwright.Planning;

/// <summary>Lays every step of one round from gathering to cold, forwards from the moment the heat goes on; several pots side by side take as many times the handwork.</summary>
internal sealed class RoundWriter(TimelineParts parts, RoundLoad load)
{
    /// <summary>Longer than this nothing raw stands in water in the room.</summary>
    private static readonly TimeSpan LongSoak = TimeSpan.FromHours(2);

    private readonly PlanRequest request = parts.Request;
    private readonly StockRecipe recipe = parts.Request.Recipe;
    private readonly VesselSteps vessel = new(parts.Request);
    private readonly int pots = load.Pots;

    /// <summary>Time from the cook's start to heat on.</summary>
    public TimeSpan BeforeHeat =>
        ForAll(StepTimes.Gather)
        + (recipe.Soak ?? TimeSpan.Zero)
        + (load.Roast?.TotalTime ?? TimeSpan.Zero)
        + (load.Roast is null ? TimeSpan.Zero : ForAll(StepTimes.LoadTrays))
        + (parts.Blanch is { } blanch ? blanch.TimeToBoil + blanch.Setting.Time + ForAll(StepTimes.DrainAndRinse) : TimeSpan.Zero)
        + (Sweats ? ForAll(StepTimes.Sweat) : TimeSpan.Zero)
        + ForAll(StepTimes.Fill);

    /// <summary>From the cook's start until it is cooling and the hands are free.</summary>
    public TimeSpan UntilHandsFree => BeforeHeat + TimeSpan.FromSeconds(parts.Outcome.TotalSeconds) + StepTimes.Stand(recipe) + ForAll(StepTimes.Strain) + ForAll(StepTimes.CoolHands);

    /// <summary>Raw meat, fish or shells, which drip on what is eaten as it is.</summary>
    private bool HasRaw => parts.Load.Items.Any(item => item.Ingredient.Group is
        IngredientGroup.Beef or IngredientGroup.Veal or IngredientGroup.Poultry or IngredientGroup.Pork or IngredientGroup.Lamb or IngredientGroup.Game
        or IngredientGroup.Fish or IngredientGroup.Shellfish);

    private bool Sweats => recipe.Lines.Any(line => line.Preparation == Preparation.Sweat && request.Takes(line));

    /// <summary>Handwork on every pot of the round.</summary>
    private TimeSpan ForAll(TimeSpan one) => one * pots;

    /// <summary>Lays the steps until the stock is cold.</summary>
    public RoundTimes Write(StepBuilder builder, DateTimeOffset heatOn)
    {
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

        FinishWriter finish = new(parts);
        (DateTimeOffset strained, DateTimeOffset cold) = finish.UntilCold(builder, heatOff, pots);
        return new RoundTimes(start, heatOn, heatOff, strained, cold);
    }

    private void Prepare(StepBuilder builder, DateTimeOffset start)
    {
        DateTimeOffset at = builder.Then(start, StepKind.Gather, "Weigh everything out", "Trim, cut and weigh by the list.", ForAll(StepTimes.Gather), ForAll(StepTimes.Gather), HasRaw ? [Cautions.RawBones] : []);
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
                $"Blanch {SolidsText.Of(parts.Load, line => line.Preparation == Preparation.Blanch, "everything")}",
                $"Cover with {KitchenFormat.Both(blanch.Water)} of cold water, bring to the boil, {KitchenFormat.Text(blanch.Setting.Time)} there, drain and rinse each piece.{vessel.BlanchIn}",
                blanch.TimeToBoil + blanch.Setting.Time + ForAll(StepTimes.DrainAndRinse),
                ForAll(StepTimes.DrainAndRinse),
                Cautions.PourOffBlanch);
        }

        if (Sweats)
        {
            at = builder.Then(at, StepKind.Fill, "Sweat the vegetables", vessel.SweatIn, ForAll(StepTimes.Sweat), ForAll(StepTimes.Sweat));
        }

        string liquid = recipe.Wetting is { } wetting ? $"cold {ScriptWriter.PlainName(request.Larder.Get(wetting))}" : "cold water";
        builder.At(
            at,
            StepKind.Fill,
            "Load the pot and fill to the line",
            $"{(parts.Load.StartSolids().Count > 0 ? "Solids first, then " : "")}{KitchenFormat.Both(SimmerForecaster.Cold(parts.WaterKilograms))} of {liquid}. {(recipe.Wetting is null ? "The water" : "It")} should reach the line; trust the line if they disagree.{vessel.FillDetail}",
            ForAll(StepTimes.Fill),
            ForAll(StepTimes.Fill),
            null,
            vessel.FillCautions(Full));
    }

    /// <summary>The pot with what goes in at the start; what joins later is about what has gone as steam.</summary>
    private Mass Full => Mass.FromKilograms(
        parts.Load.Items.Where(item => item.Line.Joins == JoinMoment.Start).Sum(item => item.InPotKilograms) + parts.WaterKilograms + request.Pot.EmptyMass.Kilograms);

    private DateTimeOffset Roast(StepBuilder builder, DateTimeOffset at)
    {
        if (load.Roast is not { } roast)
        {
            return at;
        }

        builder.At(at, StepKind.Roast, "Heat the oven", $"{OvenText(roast)}.", RoastPlanner.Preheat, TimeSpan.FromMinutes(1));
        DateTimeOffset loading = builder.Then(at + RoastPlanner.Preheat - StepTimes.LoadTrays, StepKind.Roast, $"Spread {roast.Solids} on trays", "One layer, with air between the pieces.", ForAll(StepTimes.LoadTrays), ForAll(StepTimes.LoadTrays));
        DateTimeOffset round = loading + StepTimes.LoadTrays;
        for (int i = 0; i < roast.OvenRounds; i++)
        {
            string which = roast.OvenRounds > 1 ? $" (oven load {i + 1} of {roast.OvenRounds})" : "";
            builder.At(round, StepKind.Roast, "Roast until well brown" + which, $"{KitchenFormat.Text(roast.Setting.Time)} at {OvenText(roast)}.", roast.Setting.Time, TimeSpan.Zero);
            builder.At(round + roast.TurnAt, StepKind.Roast, $"Turn {roast.Solids}" + which, "And drain fat that has gathered.", StepTimes.Turn, StepTimes.Turn, null, Cautions.HotFat);
            if (roast.VegetablesJoinBeforeEnd is { } vegetables)
            {
                builder.At(round + roast.Setting.Time - vegetables, StepKind.Roast, "Vegetables join the trays" + which, "Toss them in the fat.", StepTimes.Turn, StepTimes.Turn);
            }

            if (roast.PasteJoinsBeforeEnd is { } paste)
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
            TimeSpan scum = request.Pot.Kind == PotKind.SlowCooker ? StepTimes.SwitchOn : StepTimes.FirstScum;
            TimeSpan hands = heatUp < scum ? heatUp : scum;
            StepText on = vessel.HeatUp();
            builder.At(heatOn, StepKind.HeatUp, on.Title, on.Detail, heatUp, hands, null, on.Cautions);
        }

        string set = KitchenFormat.Both(Temperature.FromDegreesCelsius(outcome.FinalCelsius));
        string how = recipe.Stages.Count > 1
            ? string.Join("; ", recipe.Stages.Select(Told))
            : How(recipe.Stages[0], set);
        StepText simmer = vessel.Simmer(HeatText.Of(recipe).Title, how, set, heatUp > TimeSpan.FromMinutes(1));
        builder.At(simmering, StepKind.Simmer, simmer.Title, simmer.Detail, heatOff - simmering, TimeSpan.Zero, null, simmer.Cautions);
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

    private static string How(SimmerStage stage, string set) => stage switch
    {
        { ReducesTo: { } share } => $"Until {Left(share.Value)} of it is left: mark the level on a stick. It spits and burns at the end, so turn it down then and stay with it.",
        { ClimbsSlowly: true } => $"Warm it slowly, over {KitchenFormat.Text(stage.Time)}, to {set}. Nothing boils.",
        { IsRolling: true } => $"A rolling boil, about {set}: bubbles all over. Top up with hot water, and never leave it.",
        _ when stage.Target.DegreesCelsius < HeatText.LeastSimmerCelsius => $"Hold {set}: steam, and no bubbles.",
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
                Lay(vessel.Skim(), StepKind.Skim, ForAll(StepTimes.Skim));
                break;
            case PotActionKind.Check:
                SimmerOutcome.CheckOutcome due = parts.Outcome.Checks[check];
                string add = due.TopUpKilograms > 0
                    ? $"Expect to add about {KitchenFormat.Both(SimmerForecaster.Cold(due.TopUpKilograms))}."
                    : "No water expected.";
                string level = KitchenFormat.LevelBoth(Length.FromMeters(request.Pot.InnerHeight.Meters - due.LevelBefore));
                builder.At(action.Key, at, StepKind.Check, recipe.Kind.IsSkimmed() ? "Skim and read the level" : "Read the level", $"Expect it {level} below the rim. {add}", ForAll(StepTimes.Check), ForAll(StepTimes.Check), check);
                check++;
                break;
            case PotActionKind.Add:
                Lay(vessel.Add(action.Label), StepKind.Add, ForAll(StepTimes.Add));
                break;
            case PotActionKind.HoldBegins:
                Lay(vessel.HoldBegins(Full), StepKind.NightHold, ForAll(StepTimes.OvenLift));
                break;
            case PotActionKind.HoldEnds:
                Lay(vessel.HoldEnds(Full), StepKind.NightHold, ForAll(StepTimes.OvenLift));
                break;
            case PotActionKind.Pause:
                builder.At(action.Key, at, StepKind.NightHold, "Stop for the night: strain, cool fast, keep cold", $"In the morning everything goes back and comes up to {HeatText.Of(recipe).Reach} again.", TimeSpan.FromSeconds(action.PauseSeconds), TimeSpan.FromMinutes(40), null, Cautions.StopAndCool, Cautions.Cooling);
                break;
        }

        void Lay(StepText text, StepKind kind, TimeSpan time) => builder.At(action.Key, at, kind, text.Title, text.Detail, time, time, null, text.Cautions);
    }
}
