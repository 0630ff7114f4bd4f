using Stockwright.Larder;
using Stockwright.Measures;
using Stockwright.Recipes;
using Stockwright.Simmering;

namespace Stockwright.Planning;

/// <summary>Lays the steps after the heat: straining and cooling of a round, then chilling, defatting and portioning of what has gathered.</summary>
internal sealed class FinishWriter(TimelineParts parts)
{
    private readonly PlanRequest request = parts.Request;
    private readonly StockRecipe recipe = parts.Request.Recipe;
    private readonly VesselSteps vessel = new(parts.Request);

    /// <summary>Stands, is strained and cooled; when it is strained, and when it is cold.</summary>
    public (DateTimeOffset Strained, DateTimeOffset Cold) UntilCold(StepBuilder builder, DateTimeOffset heatOff, int pots)
    {
        string letDown = parts.LetDownKilograms > 0 ? $" Then let it down: stir in {KitchenFormat.Both(SimmerForecaster.Cold(parts.LetDownKilograms))} of drinking water." : "";
        StepText stand = vessel.Stand(HeatIsOff);
        DateTimeOffset at = Ended(StepKind.Stand, builder.Then(heatOff, StepKind.Stand, stand.Title, stand.Detail, StepTimes.Stand(recipe), TimeSpan.Zero));
        StepText strain = vessel.Strain();
        DateTimeOffset strained = Ended(StepKind.Strain, builder.Then(at, StepKind.Strain, parts.LetDownKilograms > 0 ? strain.Title + " and let down" : strain.Title, strain.Detail + letDown, StepTimes.Strain * pots, StepTimes.Strain * pots, strain.Cautions));
        DateTimeOffset cold = Ended(StepKind.Cool, builder.Then(strained, StepKind.Cool, "Cool it fast", "Split it shallow or stand it in ice water, stirring; lid off until cold.", StepTimes.Cool + (StepTimes.CoolHands * (pots - 1)), StepTimes.CoolHands * pots, Cautions.Cooling));
        return (strained, cold);
    }

    /// <summary>Chilled, defatted, warmed and portioned; the moment it all stands portioned.</summary>
    /// <param name="builder">Takes the steps.</param>
    /// <param name="cold">When the last of it is cold.</param>
    /// <param name="litres">Stock there is by then.</param>
    public DateTimeOffset Portion(StepBuilder builder, DateTimeOffset cold, double litres)
    {
        TimeSpan portioning = StepTimes.Portion(litres);
        DateTimeOffset at = cold;
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
        return Ended(StepKind.Portion, builder.Then(at, StepKind.Portion, "Measure, portion and label", "Name, date and size on every tub; oldest to the front.", portioning, portioning, cautions));
    }

    /// <summary>The heat went off to let the pressure fall, or when it went into the oven, and did not come on again.</summary>
    private bool HeatIsOff => (request.IsUnderPressure && parts.Outcome.StageStarts.Count <= PressureStages.Late)
        || (request.SimmersInOven && !VesselSteps.LeavesOvenEarly(parts.Outcome));

    private DateTimeOffset Ended(StepKind kind, DateTimeOffset end) => parts.Ended is { } ended ? ended(kind, end) : end;
}
