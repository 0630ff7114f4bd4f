using Stockwright.Larder;
using Stockwright.Recipes;

namespace Stockwright.Web.Features.Kitchen;

/// <summary>The cook's kitchen, larder and recipes out of the database.</summary>
internal sealed class StoredKitchenSource(KitchenStore kitchens, RecipeStore recipes, LarderStore larder) : IKitchenSource
{
    public async ValueTask<PlanningInputs> LoadAsync(CancellationToken cancellationToken) => new(
        await recipes.BookAsync(StandardRecipes.Book, cancellationToken),
        await larder.TableAsync(StandardLarder.Table, cancellationToken),
        (await kitchens.ReadAsync(cancellationToken)).Setup);
}
