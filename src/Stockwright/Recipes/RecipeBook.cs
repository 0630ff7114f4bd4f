using System.Collections.Frozen;
using System.Diagnostics.CodeAnalysis;

namespace Stockwright.Recipes;

/// <summary>The recipes a kitchen can plan from, found by their stable names.</summary>
public sealed class RecipeBook
{
    private readonly FrozenDictionary<string, StockRecipe> byId;

    /// <summary>Makes a book of recipes, in reading order.</summary>
    /// <exception cref="ArgumentException">Two recipes share a name.</exception>
    public RecipeBook(IEnumerable<StockRecipe> recipes)
    {
        Recipes = [.. recipes];
        byId = Recipes.ToFrozenDictionary(recipe => recipe.Id, StringComparer.Ordinal);
    }

    /// <summary>All recipes in reading order.</summary>
    public IReadOnlyList<StockRecipe> Recipes { get; }

    /// <summary>Finds a recipe by its stable name.</summary>
    public bool TryFind(string id, [NotNullWhen(true)] out StockRecipe? recipe) => byId.TryGetValue(id, out recipe);
}
