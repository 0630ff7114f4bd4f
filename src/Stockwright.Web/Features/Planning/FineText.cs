using Stockwright.Kitchen;
using Stockwright.Measures;
using Stockwright.Planning;
using Stockwright.Recipes;
using Stockwright.Web.Fields;

namespace Stockwright.Web.Features.Planning;

/// <summary>What the fine points say of themselves where that turns on recipe, pot and plan.</summary>
internal static class FineText
{
    public static string SimmerLabel(PlanView view) => Heat(view).At;

    public static string TimeLabel(PlanView view) => Heat(view).For;

    public static string? SimmerHint(PlanView view) => StageOf(view) is not { } stage ? null
        : IsSlow(view) ? "A slow cooker finds its own, just under the boil: leave it empty."
        : Locked(view) is { } plan ? $"Behind a locked lid between {KitchenFormat.Text(plan.Boiling.BoilingPoint, view.Units)} and {KitchenFormat.Text(plan.Boiling.Hottest, view.Units)} here."
        : $"Usual: {KitchenFormat.Text(stage.Least, view.Units)} to {KitchenFormat.Text(stage.Most, view.Units)}.";

    public static string? SimmerUsual(PlanView view) => ((IsSlow(view) ? view.Plan : Locked(view))?.Boiling.Reached ?? StageOf(view)?.Target) is { } temperature
        ? KitchenNumber.Write(Measure.Temperature.In(view.Units).FromSi(temperature.Kelvins), NumberRow.Short)
        : null;

    public static string? TimeHint(PlanView view) => StageOf(view) is not { } stage ? null
        : view.Recipe!.BoilsDown ? "It takes as long as it takes: the plan says how long here."
        : $"Usual: {KitchenFormat.Text(stage.ShortestTime)} to {KitchenFormat.Text(stage.LongestTime)}.";

    public static string? TimeUsual(PlanView view) => StageOf(view) is not { } stage ? null
        : view.Recipe!.BoilsDown ? "until it is boiled down"
        : KitchenNumber.Write(stage.Time.TotalHours, NumberRow.Short);

    public static string CheckHint(PlanView view) => Locked(view) is not null ? "Nobody looks in behind a locked lid: this does not count here."
        : view.Typed.Request is { IsLeftAlone: true } ? "Nobody looks in while it is left alone: this does not count here."
        : "After the first hour, which has its own skimming.";

    /// <summary>What the pot holds is named: bones, or the solids.</summary>
    public static IReadOnlyList<ChoiceOption> TopUps(PlanView view, IReadOnlyList<ChoiceOption> options) =>
        [.. options.Select(option => option.Value is "covered" ? option with { Text = $"only to keep {Solids(view)} covered" } : option)];

    /// <summary>Lines of mirepoix that may go in early or late.</summary>
    public static IEnumerable<RecipeLine> Waiting(PlanView view) =>
        (view.Recipe?.Lines ?? []).Where(line => line is { Role: LineRole.Mirepoix, Joins: JoinMoment.AfterFirstSkim or JoinMoment.BeforeEnd });

    public static string UsualMirepoix(PlanView view) => Waiting(view).First().Joins == JoinMoment.AfterFirstSkim ? "early" : "last-hour";

    private static HeatText Heat(PlanView view) => view.Recipe is { } recipe ? HeatText.Of(recipe) : HeatText.Usual;

    private static SimmerStage? StageOf(PlanView view) => view.Recipe is { Stages.Count: > 0 } recipe ? recipe.Stages[recipe.MainStage] : null;

    /// <summary>The plan when it cooks behind a locked lid.</summary>
    private static BatchPlan? Locked(PlanView view) => view.Plan is { Request.IsUnderPressure: true } plan ? plan : null;

    private static bool IsSlow(PlanView view) => view.Typed.Request is { Pot.Kind: PotKind.SlowCooker };

    private static string Solids(PlanView view) => view.Plan?.Solids ?? (view.Recipe is { } recipe ? SolidsText.Of(recipe, view.Book.Larder) : "the solids");
}
