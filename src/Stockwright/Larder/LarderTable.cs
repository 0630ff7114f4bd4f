using System.Collections.Frozen;
using System.Diagnostics.CodeAnalysis;

namespace Stockwright.Larder;

/// <summary>The ingredients a kitchen can plan with, found by their stable names.</summary>
public sealed class LarderTable
{
    private readonly FrozenDictionary<string, Ingredient> byId;

    /// <summary>Makes a table of ingredients, in shelf order.</summary>
    /// <exception cref="ArgumentException">Two ingredients share a name.</exception>
    public LarderTable(IEnumerable<Ingredient> ingredients)
    {
        Ingredients = [.. ingredients];
        byId = Ingredients.ToFrozenDictionary(ingredient => ingredient.Id, StringComparer.Ordinal);
    }

    /// <summary>All ingredients in shelf order.</summary>
    public IReadOnlyList<Ingredient> Ingredients { get; }

    /// <summary>Finds an ingredient by its stable name.</summary>
    public bool TryFind(string id, [NotNullWhen(true)] out Ingredient? ingredient) => byId.TryGetValue(id, out ingredient);

    /// <summary>Finds an ingredient that must be there.</summary>
    /// <exception cref="KeyNotFoundException">No ingredient has that name.</exception>
    public Ingredient Get(string id) => byId.TryGetValue(id, out Ingredient? found)
        ? found
        : throw new KeyNotFoundException($"No ingredient is called '{id}'.");

    /// <summary>This table with some rows replaced or added, for a cook's own ingredients.</summary>
    public LarderTable With(IEnumerable<Ingredient> own)
    {
        Dictionary<string, Ingredient> replaced = own.ToDictionary(ingredient => ingredient.Id, StringComparer.Ordinal);
        List<Ingredient> rows = [.. Ingredients.Select(row => replaced.Remove(row.Id, out Ingredient? mine) ? mine : row)];
        rows.AddRange(replaced.Values);
        return new LarderTable(rows);
    }
}
