using Stockwright.Recipes;

namespace Stockwright.Web.Features.Recipes;

/// <summary>A recipe as its pages show it.</summary>
/// <param name="Id">Stable name.</param>
/// <param name="Name">Plain name.</param>
/// <param name="Recipe">The recipe; null when the stored text cannot be read.</param>
/// <param name="Own">The cook's own row, or null for a standing recipe.</param>
public sealed record RecipeItem(string Id, string Name, StockRecipe? Recipe, OwnRecipe? Own);

/// <summary>Finds recipes among the cook's own and the standing ones.</summary>
internal sealed class RecipeService(RecipeStore store)
{
    /// <summary>One recipe; null when there is none of that name.</summary>
    public async Task<RecipeItem?> FindAsync(string id, CancellationToken cancellationToken)
    {
        if (StandardRecipes.Book.TryFind(id, out StockRecipe? standing))
        {
            return new RecipeItem(id, standing.Name, standing, null);
        }

        OwnRecipe? own = await store.FindAsync(id, cancellationToken);
        return own is null ? null : new RecipeItem(id, own.Name, own.Recipe, own);
    }
}
