using Stockwright.Files;

namespace Stockwright.Recipes;

/// <summary>The recipes that come with the tool.</summary>
public static class StandardRecipes
{
    // Reading order: the stocks most kitchens make first, the other meats, broths, the quick ones, dried things, and what is made from stock.
    private static readonly string[] Order =
    [
        "white-chicken",
        "brown-chicken",
        "white-veal",
        "brown-veal",
        "white-beef",
        "brown-beef",
        "turkey",
        "duck",
        "pork",
        "ham",
        "lamb",
        "game",
        "whole-chicken-broth",
        "meat-broth",
        "pork-bone-broth",
        "star-anise-beef",
        "fish-fumet",
        "shellfish",
        "court-bouillon",
        "vegetable",
        "vegetable-without-celery",
        "sweetcorn-cob-stock",
        "mushroom",
        "dried-mushroom-stock",
        "kelp-and-dried-fish",
        "second-dashi",
        "kelp",
        "dried-anchovy-stock",
        "remouillage",
        "double-chicken",
        "consomme",
        "demi-glace",
        "glace",
    ];

    private static readonly Lazy<RecipeBook> Loaded = new(() => new RecipeBook(Order.Select(Load)));

    /// <summary>The book, read from the embedded recipe files the first time it is asked for.</summary>
    public static RecipeBook Book => Loaded.Value;

    private static StockRecipe Load(string id) => RecipeFile.Parse(EmbeddedText.Read($"Recipes.Data.{id}.json"));
}
