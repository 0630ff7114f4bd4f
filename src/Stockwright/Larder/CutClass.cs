using Stockwright.Evidence;
using UnitsNet;

namespace Stockwright.Larder;

/// <summary>
/// How a kind of cut gives up its gelatin, juices and fat (equations B.1 to B.8 in docs/equations-body.md).
/// Rates are at 98 °C, for pieces of <see cref="ReferencePiece"/> in liquor that is not acid.
/// </summary>
public sealed record CutClass
{
    /// <summary>Stable name, for instance <c>chicken-feet</c>.</summary>
    public required string Id { get; init; }

    /// <summary>Plain name.</summary>
    public required string Name { get; init; }

    /// <summary>Collagen by mass of the cut as loaded; used where the larder states none.</summary>
    public required Stated<Ratio> Collagen { get; init; }

    /// <summary>Share of the collagen that is soft: skin, cartilage, tendon and sheath. The rest is held in bone mineral.</summary>
    public required Stated<Ratio> SoftShare { get; init; }

    /// <summary>Share of the remaining soft collagen that dissolves per hour.</summary>
    public required Stated<Frequency> SoftRate { get; init; }

    /// <summary>Share of the remaining mineralised collagen that dissolves per hour; zero when there is none.</summary>
    public required Stated<Frequency> HardRate { get; init; }

    /// <summary>Bloom strength of its gelatin when fresh, in grams on the plunger.</summary>
    public required Stated<Mass> FreshBloom { get; init; }

    /// <summary>Piece size the rate of the mineralised collagen is for.</summary>
    public required Length ReferencePiece { get; init; }

    /// <summary>Other matter that goes into the liquor in the end, by mass of the cut: juices and minerals.</summary>
    public required Stated<Ratio> Extractives { get; init; }

    /// <summary>Share of those, and of what fat comes free, that goes over in an hour: faster for the thin flesh of fish (estimate).</summary>
    public required Frequency ExtractivesRate { get; init; }

    /// <summary>Share of the cut's fat that is free after hours of simmering.</summary>
    public required Stated<Ratio> FreedFat { get; init; }

    /// <summary>Nothing is drawn below this: 60 °C for mammals and birds, 40 °C for fish.</summary>
    public required Temperature ExtractsFrom { get; init; }

    /// <summary>How far a gel of its gelatin melts from one of mammals or birds; below zero for cold-water fish.</summary>
    public required TemperatureDelta MeltingShift { get; init; }

    /// <summary>True for gelatin itself, powder or in a ready stock: it need not be drawn, so no kitchen gets more or less of it.</summary>
    public bool IsGelatin => HardRate.Value.PerSecond <= 0 && SoftRate.Value.PerSecond >= 10 / 3600.0;
}

/// <summary>Sugars and salt an ingredient brings.</summary>
/// <param name="Sugars">Sugars by mass.</param>
/// <param name="Sodium">Sodium by mass.</param>
/// <param name="Dissolves">True when all of it is in the liquor at once: wine, paste, salt.</param>
public sealed record Solubles(Stated<Ratio> Sugars, Stated<Ratio> Sodium, bool Dissolves);
