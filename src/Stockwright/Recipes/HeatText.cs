namespace Stockwright.Recipes;

/// <summary>
/// What the long heat of a recipe is called: most stocks simmer, kelp is warmed slowly and flakes are steeped. The one place that decides it,
/// by the main stage.
/// </summary>
/// <param name="Title">Of the step: <c>Simmer</c>.</param>
/// <param name="At">Before the temperature: <c>Simmer at</c>.</param>
/// <param name="For">Before the time: <c>for</c> or <c>over</c>.</param>
/// <param name="Reach">What it is brought to: <c>the simmer</c>.</param>
/// <param name="Does">Of the pot: <c>simmers</c>.</param>
/// <param name="Doing">Of the pot, now: <c>simmering</c>.</param>
/// <param name="Done">Of the stock: <c>simmered</c>.</param>
public sealed record HeatText(string Title, string At, string For, string Reach, string Does, string Doing, string Done)
{
    /// <summary>Below this nothing simmers, C: the trade simmers from about 85 C (185 F) and steeps or poaches under it (common practice, no source).</summary>
    internal const double LeastSimmerCelsius = 85;

    /// <summary>Of most stocks.</summary>
    public static HeatText Usual { get; } = new("Simmer", "Simmer at", "for", "the simmer", "simmers", "simmering", "simmered");
    private static readonly HeatText Steep = new("Steep", "Steep at", "for", "its heat", "steeps", "steeping", "steeped");
    private static readonly HeatText Warm = new("Warm slowly", "Warm slowly to", "over", "its heat", "warms slowly", "warming slowly", "warmed slowly");
    private static readonly HeatText Boil = new("Keep it boiling hard", "Boil hard at", "for", "the boil", "boils", "boiling hard", "boiled");
    private static readonly HeatText BoilDown = new("Boil it down", "Boil down at", "for", "the boil", "boils down", "boiling down", "boiled down");

    /// <summary>The words for a recipe; simmering for one without stages.</summary>
    public static HeatText Of(StockRecipe recipe)
    {
        ArgumentNullException.ThrowIfNull(recipe);
        return recipe switch
        {
            { BoilsDown: true } => BoilDown,
            { Stages.Count: > 0 } => Of(recipe.Stages[recipe.MainStage]),
            _ => Usual,
        };
    }

    private static HeatText Of(SimmerStage stage) => stage switch
    {
        { IsRolling: true } => Boil,
        { ClimbsSlowly: true } => Warm,
        _ when stage.Target.DegreesCelsius < LeastSimmerCelsius => Steep,
        _ => Usual,
    };
}
