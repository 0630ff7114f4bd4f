using System.Globalization;
using Stockwright.Recipes;

namespace Stockwright.Bench.Web;

/// <summary>Links a cook might open: every recipe, several pots, goals and hours. The same ones on every run.</summary>
internal static class PlanLinks
{
    // Numbers are in the link's own measures, so pot and goal go together.
    private static readonly string[] PotsAndGoals =
    [
        "",
        "&units=us&goal=litres&litres=3",
        "&goal=litres&litres=2.5",
        "&pot=own&pot-diameter=24&pot-height=22.1",
        "&pot=own&pot-diameter=32&pot-height=30&goal=portions&portion-count=24&portion-size=250",
        "&pot=own&pot-shape=volume&pot-volume=8.7&pot-diameter=24&goal=litres&litres=4",
        "&units=us&pot=own&pot-diameter=9.5&pot-height=8.75",
    ];

    private static readonly string[] Others = ["", "&lid=off", "&lid=on", "&hours=5.5", "&altitude=1200", "&topup=line", "&when=start&time=19:00&night=oven"];

    /// <summary>The link of a number; neighbours differ in every part.</summary>
    public static Uri Link(Uri address, int number)
    {
        // What boils down takes neither a time nor a lid.
        IReadOnlyList<StockRecipe> recipes = [.. StandardRecipes.Book.Recipes.Where(recipe => !recipe.BoilsDown)];
        string query = string.Create(
            CultureInfo.InvariantCulture,
            $"recipe={recipes[number % recipes.Count].Id}{PotsAndGoals[number / 3 % PotsAndGoals.Length]}{Others[number / 5 % Others.Length]}");
        return new Uri(address, "/plan?" + query);
    }
}
