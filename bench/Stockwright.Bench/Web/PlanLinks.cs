using System.Globalization;
using Stockwright.Recipes;

namespace Stockwright.Bench.Web;

/// <summary>Links a cook might open: every recipe, several pots, goals and hours. The same ones on every run.</summary>
internal static class PlanLinks
{
    private static readonly string[] Pots =
    [
        "", "&pot=own&pot-diameter=24&pot-height=22.1", "&pot=own&pot-diameter=32&pot-height=30", "&pot=own&pot-shape=volume&pot-volume=8.7&pot-diameter=24",
    ];

    private static readonly string[] Goals = ["", "&goal=litres&litres=2.5", "&goal=litres&litres=4", "&goal=portions&portion-count=12&portion-size=250"];

    private static readonly string[] Others = ["", "&lid=off", "&lid=on", "&units=us", "&hours=5.5", "&altitude=1200", "&topup=line", "&when=start&time=19:00&night=oven"];

    /// <summary>The link of a number; neighbours differ in every part.</summary>
    public static Uri Link(Uri address, int number)
    {
        IReadOnlyList<StockRecipe> recipes = StandardRecipes.Book.Recipes;
        string query = string.Create(
            CultureInfo.InvariantCulture,
            $"recipe={recipes[number % recipes.Count].Id}{Pots[number / 3 % Pots.Length]}{Goals[number / 5 % Goals.Length]}{Others[number / 7 % Others.Length]}");
        return new Uri(address, "/plan?" + query);
    }
}
