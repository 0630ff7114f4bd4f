using Stockwright.Evidence;
using UnitsNet;

namespace Stockwright.Larder;

/// <summary>How a cook counts an ingredient: "a medium onion", "a stalk", "a carcass".</summary>
/// <param name="Name">Singular name of the piece, for instance <c>medium onion</c> or <c>stalk</c>.</param>
/// <param name="Mass">Mass of one piece, with range and source.</param>
/// <param name="IsTrimmed">True when the mass is that of the edible part, after peeling; false when as bought.</param>
public sealed record Piece(string Name, Stated<Mass> Mass, bool IsTrimmed)
{
    /// <summary>Lightest and heaviest piece accepted: from a seed to a whole animal’s leg.</summary>
    public static readonly (Mass Least, Mass Most) MassRange = (UnitsNet.Mass.FromMilligrams(1), UnitsNet.Mass.FromKilograms(20));

    /// <summary>Name for more than one, for instance <c>medium onions</c> or <c>leaves</c>.</summary>
    public string Plural { get; init; } = Name + "s";
}

/// <summary>One row of the larder: make-up, densities, pieces and allergens of an ingredient as it goes in the pot.</summary>
public sealed record Ingredient
{
    /// <summary>Smallest and largest true density accepted.</summary>
    public static readonly (Density Least, Density Most) TrueDensityRange = (Density.FromKilogramsPerCubicMeter(200), Density.FromKilogramsPerCubicMeter(3000));

    /// <summary>Smallest and largest packed density accepted: herbs lie loose.</summary>
    public static readonly (Density Least, Density Most) PackDensityRange = (Density.FromKilogramsPerCubicMeter(20), Density.FromKilogramsPerCubicMeter(3000));

    /// <summary>Least and most that roasting may take off.</summary>
    public static readonly (Ratio Least, Ratio Most) RoastLossRange = (Ratio.Zero, Ratio.FromDecimalFractions(0.9));

    /// <summary>Least and most that may be peeled or trimmed away.</summary>
    public static readonly (Ratio Least, Ratio Most) RefuseRange = (Ratio.Zero, Ratio.FromDecimalFractions(0.95));

    /// <summary>Stable name used in links and recipes, for instance <c>chicken-back</c>.</summary>
    public required string Id { get; init; }

    /// <summary>Plain name.</summary>
    public required string Name { get; init; }

    /// <summary>Shelf.</summary>
    public required IngredientGroup Group { get; init; }

    /// <summary>Role in a stock, in a few words: base, body, flavour.</summary>
    public required string Use { get; init; }

    /// <summary>Mass fraction of water.</summary>
    public required Stated<Ratio> Water { get; init; }

    /// <summary>Mass fraction of protein.</summary>
    public required Stated<Ratio> Protein { get; init; }

    /// <summary>Mass fraction of fat.</summary>
    public required Stated<Ratio> Fat { get; init; }

    /// <summary>Mass fraction of ash (bone mineral included).</summary>
    public required Stated<Ratio> Ash { get; init; }

    /// <summary>Mass fraction of collagen; null where none is stated.</summary>
    public Stated<Ratio>? Collagen { get; init; }

    /// <summary>True density: one over the volume a kilogram displaces.</summary>
    public required Stated<Density> TrueDensity { get; init; }

    /// <summary>Bulk density as loaded in the pot, air or water between the pieces included; null where unknown.</summary>
    public Stated<Density>? PackDensity { get; init; }

    /// <summary>Share of mass lost on roasting until brown; null when the item is not roasted.</summary>
    public Stated<Ratio>? RoastLoss { get; init; }

    /// <summary>Share of the bought mass that is peeled or trimmed away; null when all of it is used.</summary>
    public Stated<Ratio>? Refuse { get; init; }

    /// <summary>Share of the mass that is bone, which goes in the pot; null where unknown or where there is none.</summary>
    public Stated<Ratio>? BoneShare { get; init; }

    /// <summary>Pieces a cook counts in, the usual one first.</summary>
    public IReadOnlyList<Piece> Pieces { get; init; } = [];

    /// <summary>Allergens as the table flags them, for instance <c>celery</c> or <c>fish</c>.</summary>
    public IReadOnlyList<string> Allergens { get; init; } = [];

    /// <summary>Botanical family, one of <see cref="BotanicalFamily.Known"/>, where its relatives matter to an eater with an allergy; else null.</summary>
    public string? Family { get; init; }

    /// <summary>USDA SR28 number where the row is based on one.</summary>
    public string? UsdaNumber { get; init; }

    /// <summary>Anything the cook should know: how to break it up, when to avoid it.</summary>
    public string? Note { get; init; }

    /// <summary>
    /// False for a row kept only for what names it already, and for checking: lists to choose from leave it out.
    /// </summary>
    public bool IsOffered { get; init; } = true;

    /// <summary>Mass fraction of carbohydrate, by difference, never below zero.</summary>
    public Ratio Carbohydrate => Ratio.FromDecimalFractions(Math.Max(
        0,
        1 - Water.Value.DecimalFractions - Protein.Value.DecimalFractions - Fat.Value.DecimalFractions - Ash.Value.DecimalFractions));

    /// <summary>What to buy for a mass ready for the pot: it is divided by one less the refuse.</summary>
    /// <param name="trimmed">Mass after peeling and trimming.</param>
    public Mass AsBought(Mass trimmed) => trimmed / KeptFraction;

    /// <summary>What is left for the pot of a mass as bought.</summary>
    /// <param name="asBought">Mass before peeling and trimming.</param>
    internal Mass Trimmed(Mass asBought) => asBought * KeptFraction;

    private double KeptFraction => 1 - (Refuse?.Value.DecimalFractions ?? 0);
}
