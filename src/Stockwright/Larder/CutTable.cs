using System.Collections.Frozen;
using Stockwright.Evidence;
using UnitsNet;

namespace Stockwright.Larder;

/// <summary>Which class of cut each ingredient belongs to, and what else it brings.</summary>
public sealed class CutTable
{
    private static readonly Stated<Ratio> Nothing = new(Ratio.Zero, Ratio.Zero, Ratio.Zero, Provenance.Estimate, "Estimate");

    private readonly FrozenDictionary<string, CutClass> byIngredient;
    private readonly FrozenDictionary<IngredientGroup, CutClass> byGroup;

    /// <summary>Makes a table.</summary>
    /// <param name="classes">All classes.</param>
    /// <param name="ofIngredients">Name of the class of each ingredient that has one of its own.</param>
    /// <param name="ofGroups">Name of the class of what else stands on a shelf.</param>
    /// <param name="solubles">Sugars and sodium of each ingredient that has a row of its own.</param>
    /// <param name="sodium">Sodium of what else stands on a shelf.</param>
    /// <exception cref="KeyNotFoundException">A class is named that is not among them.</exception>
    public CutTable(
        IReadOnlyList<CutClass> classes,
        IReadOnlyDictionary<string, string> ofIngredients,
        IReadOnlyDictionary<IngredientGroup, string> ofGroups,
        IReadOnlyDictionary<string, Larder.Solubles> solubles,
        IReadOnlyDictionary<IngredientGroup, Stated<Ratio>> sodium)
    {
        Classes = classes;
        OfIngredients = ofIngredients;
        OfGroups = ofGroups;
        Solubles = solubles;
        Sodium = sodium;
        byIngredient = ofIngredients.ToFrozenDictionary(row => row.Key, row => Get(row.Value), StringComparer.Ordinal);
        byGroup = ofGroups.ToFrozenDictionary(row => row.Key, row => Get(row.Value));
    }

    /// <summary>All classes.</summary>
    public IReadOnlyList<CutClass> Classes { get; }

    /// <summary>Name of the class of each ingredient that has one of its own.</summary>
    public IReadOnlyDictionary<string, string> OfIngredients { get; }

    /// <summary>Name of the class of what else stands on a shelf.</summary>
    public IReadOnlyDictionary<IngredientGroup, string> OfGroups { get; }

    /// <summary>Sugars and sodium of each ingredient that has a row of its own.</summary>
    public IReadOnlyDictionary<string, Larder.Solubles> Solubles { get; }

    /// <summary>Sodium of what else stands on a shelf.</summary>
    public IReadOnlyDictionary<IngredientGroup, Stated<Ratio>> Sodium { get; }

    /// <summary>The part of the table that some ingredients need.</summary>
    public CutTable For(IReadOnlyCollection<Ingredient> ingredients)
    {
        HashSet<string> ids = [.. ingredients.Select(row => row.Id)];
        HashSet<IngredientGroup> groups = [.. ingredients.Select(row => row.Group)];
        HashSet<CutClass> classes = [.. ingredients.Select(ClassOf).OfType<CutClass>()];
        return new CutTable(
            [.. Classes.Where(classes.Contains)],
            OfIngredients.Where(row => ids.Contains(row.Key)).ToDictionary(StringComparer.Ordinal),
            OfGroups.Where(row => groups.Contains(row.Key) && classes.Contains(byGroup[row.Key])).ToDictionary(row => row.Key, row => row.Value),
            Solubles.Where(row => ids.Contains(row.Key)).ToDictionary(StringComparer.Ordinal),
            Sodium.Where(row => groups.Contains(row.Key)).ToDictionary());
    }

    /// <summary>Finds a class by its stable name.</summary>
    /// <exception cref="KeyNotFoundException">No class has that name.</exception>
    private CutClass Get(string id) => Classes.FirstOrDefault(cut => string.Equals(cut.Id, id, StringComparison.Ordinal))
        ?? throw new KeyNotFoundException($"No class of cut is called '{id}'.");

    /// <summary>
    /// The class of an ingredient: its own, or that of its shelf for a cook's own ingredient; null for what has none,
    /// like vegetables.
    /// </summary>
    public CutClass? ClassOf(Ingredient ingredient)
    {
        ArgumentNullException.ThrowIfNull(ingredient);
        return byIngredient.TryGetValue(ingredient.Id, out CutClass? own) ? own : byGroup.GetValueOrDefault(ingredient.Group);
    }

    /// <summary>Collagen of an ingredient: the larder's figure, or that of its class.</summary>
    public Stated<Ratio> CollagenOf(Ingredient ingredient)
    {
        ArgumentNullException.ThrowIfNull(ingredient);
        return ingredient.Collagen ?? ClassOf(ingredient)?.Collagen ?? Nothing;
    }

    /// <summary>
    /// Sugars and sodium of an ingredient. Where the table holds no row, the sodium is that of the shelf, and the sugars of a
    /// vegetable are taken as 45 % of its carbohydrate by difference (estimate; the rest is mostly fibre).
    /// Carbohydrate by difference is not used elsewhere: in shells it is chitin, in wine alcohol.
    /// </summary>
    internal Larder.Solubles SolublesOf(Ingredient ingredient)
    {
        ArgumentNullException.ThrowIfNull(ingredient);
        if (Solubles.TryGetValue(ingredient.Id, out Larder.Solubles? row))
        {
            return row;
        }

        Stated<Ratio> sugars = ingredient.Group is IngredientGroup.Vegetable
            ? new(ingredient.Carbohydrate * 0.45, ingredient.Carbohydrate * 0.3, ingredient.Carbohydrate * 0.6, Provenance.Estimate, "Estimate: 45 % of the carbohydrate by difference")
            : Nothing;
        return new Larder.Solubles(sugars, Sodium.GetValueOrDefault(ingredient.Group, Nothing), ingredient.Group is IngredientGroup.Liquid);
    }
}
