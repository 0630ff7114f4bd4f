using UnitsNet;

namespace Stockwright.Predicting;

/// <summary>What one cut gave.</summary>
/// <param name="Id">Name of the ingredient.</param>
/// <param name="Collagen">Collagen it brought, as far as this kitchen's bones give it up (times the kitchen's factor).</param>
/// <param name="Gelatin">Gelatin drawn from it.</param>
public sealed record CutYield(string Id, Mass Collagen, Mass Gelatin);

/// <summary>Gelatin drawn from all the cuts, and what the heat left of its strength (equations B.1 to B.6).</summary>
public sealed record ExtractionResult
{
    /// <summary>Cut by cut, in the order given.</summary>
    public required IReadOnlyList<CutYield> Cuts { get; init; }

    /// <summary>Collagen brought by all cuts, times the kitchen's factor.</summary>
    public required Mass Collagen { get; init; }

    /// <summary>Gelatin in the liquor.</summary>
    public required Mass Gelatin { get; init; }

    /// <summary>Share of the collagen drawn; zero when there was none.</summary>
    public Ratio Extracted => Collagen > Mass.Zero ? Ratio.FromDecimalFractions(Gelatin / Collagen) : Ratio.Zero;

    /// <summary>How much of its gel strength the gelatin kept, 0 to 1; one when there is none.</summary>
    public required Ratio Intactness { get; init; }

    /// <summary>Bloom strength of the gelatin as it is now, in grams on the plunger; zero when there is none.</summary>
    public required Mass Bloom { get; init; }

    /// <summary>Shift of the melting point from that of mammals and birds, by mass of gelatin.</summary>
    public required TemperatureDelta MeltingShift { get; init; }
}
