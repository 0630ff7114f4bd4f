using Stockwright.Kitchen;
using Stockwright.Larder;
using Stockwright.Recipes;

namespace Stockwright.Web.Features.Kitchen;

/// <summary>What a plan may refer to by name.</summary>
/// <param name="Recipes">Standing recipes and the cook's own.</param>
/// <param name="Larder">Ingredients.</param>
/// <param name="Kitchen">Pots, hobs, oven, trays and the place they stand in.</param>
public sealed record PlanningInputs(RecipeBook Recipes, LarderTable Larder, KitchenSetup Kitchen)
{
    /// <summary>Time zone of the kitchen; UTC when the stored name is not known to this machine.</summary>
    public TimeZoneInfo Zone => TimeZoneInfo.TryFindSystemTimeZoneById(Kitchen.TimeZoneId, out TimeZoneInfo? zone) ? zone : TimeZoneInfo.Utc;
}
