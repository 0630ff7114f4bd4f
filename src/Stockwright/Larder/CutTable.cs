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
    private readonly FrozenDictionary<string, Solubles> solubles;
    private readonly FrozenDictionary<IngredientGroup, Stated<Ratio>> sodium;

    internal CutTable(
        IEnumerable<CutClass> classes,
        IReadOnlyDictionary<string, CutClass> byIngredient,
        IReadOnlyDictionary<IngredientGroup, CutClass> byGroup,
        IReadOnlyDictionary<string, Solubles> solubles,
        IReadOnlyDictionary<IngredientGroup, Stated<Ratio>> sodium)
    {
        Classes = [.. classes];
        this.byIngredient = byIngredient.ToFrozenDictionary(StringComparer.Ordinal);
        this.byGroup = byGroup.ToFrozenDictionary();
        this.solubles = solubles.ToFrozenDictionary(StringComparer.Ordinal);
        this.sodium = sodium.ToFrozenDictionary();
    }

    /// <summary>All classes.</summary>
    public IReadOnlyList<CutClass> Classes { get; }

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
    internal Solubles SolublesOf(Ingredient ingredient)
    {
        ArgumentNullException.ThrowIfNull(ingredient);
        if (solubles.TryGetValue(ingredient.Id, out Solubles? row))
        {
            return row;
        }

        Stated<Ratio> sugars = ingredient.Group is IngredientGroup.Vegetable
            ? new(ingredient.Carbohydrate * 0.45, ingredient.Carbohydrate * 0.3, ingredient.Carbohydrate * 0.6, Provenance.Estimate, "Estimate: 45 % of the carbohydrate by difference")
            : Nothing;
        return new Solubles(sugars, sodium.GetValueOrDefault(ingredient.Group, Nothing), ingredient.Group is IngredientGroup.Liquid);
    }
}
