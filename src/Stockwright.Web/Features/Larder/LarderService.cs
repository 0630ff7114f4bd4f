using Stockwright.Larder;

namespace Stockwright.Web.Features.Larder;

/// <summary>An ingredient as the larder's pages show it: the row in force, and whether the cook made or changed it.</summary>
/// <param name="Row">The row in force.</param>
/// <param name="Own">The cook's own, or null for an untouched standard row.</param>
/// <param name="Standard">The standard row, or null for an ingredient the cook added.</param>
public sealed record ShelfItem(Ingredient Row, OwnIngredient? Own, Ingredient? Standard)
{
    /// <summary>What a cook sees beside the name.</summary>
    public string Mark => (Own, Standard) switch
    {
        (null, _) => "",
        (_, null) => "yours",
        _ => "changed by you",
    };
}

/// <summary>Finds ingredients among the cook's own and the standard ones.</summary>
internal sealed class LarderService(LarderStore store)
{
    /// <summary>All, standard order first, the cook's additions after.</summary>
    public async Task<IReadOnlyList<ShelfItem>> AllAsync(CancellationToken cancellationToken)
    {
        Dictionary<string, OwnIngredient> own = (await store.ListAsync(cancellationToken))
            .Where(row => row.Ingredient is not null)
            .ToDictionary(row => row.Id, StringComparer.Ordinal);
        List<ShelfItem> items = [];
        foreach (Ingredient row in StandardLarder.Table.Ingredients)
        {
            items.Add(own.Remove(row.Id, out OwnIngredient? mine) ? new ShelfItem(mine.Ingredient!, mine, row) : new ShelfItem(row, null, row));
        }

        items.AddRange(own.Values.OrderBy(row => row.Name, StringComparer.OrdinalIgnoreCase).Select(row => new ShelfItem(row.Ingredient!, row, null)));
        return items;
    }

    /// <summary>One ingredient; null when there is none of that name.</summary>
    public async Task<ShelfItem?> FindAsync(string id, CancellationToken cancellationToken)
    {
        OwnIngredient? own = await store.FindAsync(id, cancellationToken);
        Ingredient? standard = StandardLarder.Table.TryFind(id, out Ingredient? row) ? row : null;
        Ingredient? inForce = own?.Ingredient ?? standard;
        return inForce is null ? null : new ShelfItem(inForce, own, standard);
    }
}
