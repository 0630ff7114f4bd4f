using System.Reflection;

namespace Stockwright.Recipes;

/// <summary>The recipes that come with the tool.</summary>
public static class StandardRecipes
{
    // Reading order: the stocks most kitchens make first, then the other meats, then the quick ones, and the second wetting last.
    private static readonly string[] Order =
    [
        "white-chicken",
        "brown-chicken",
        "white-veal",
        "brown-veal",
        "white-beef",
        "brown-beef",
        "turkey",
        "pork",
        "lamb",
        "game",
        "fish-fumet",
        "shellfish",
        "vegetable",
        "mushroom",
        "kelp-and-dried-fish",
        "remouillage",
    ];

    private static readonly Lazy<RecipeBook> Loaded = new(() => new RecipeBook(Order.Select(Load)));

    /// <summary>The book, read from the embedded recipe files the first time it is asked for.</summary>
    public static RecipeBook Book => Loaded.Value;

    private static StockRecipe Load(string id)
    {
        Assembly assembly = typeof(StandardRecipes).Assembly;
        using Stream stream = assembly.GetManifestResourceStream($"Stockwright.Recipes.Data.{id}.json")
            ?? throw new InvalidOperationException($"The recipe '{id}' is missing from the build.");
        using StreamReader reader = new(stream);
        return RecipeFile.Parse(reader.ReadToEnd());
    }
}
