using Stockwright.Evidence;
using Stockwright.Planning;
using UnitsNet;

namespace Stockwright.Predicting;

/// <summary>What the stock of a plan will be like: central figures for one round. Bands come from <see cref="PredictionSampler"/>.</summary>
public sealed record BatchPrediction
{
    /// <summary>What it was worked out with.</summary>
    public required PredictionSettings Settings { get; init; }

    /// <summary>Gelatin drawn, cut by cut, into all the liquor, that in the spent solids included.</summary>
    public required ExtractionResult Extraction { get; init; }

    /// <summary>Gelatin in the strained, defatted stock.</summary>
    public required Mass GelatinInStock { get; init; }

    /// <summary>How it will stand.</summary>
    public required BodyPrediction Body { get; init; }

    /// <summary>What it is made of; refractometer reading and density are here.</summary>
    public required StockComposition Composition { get; init; }

    /// <summary>Where the fat goes.</summary>
    public required FatPrediction Fat { get; init; }

    /// <summary>Energy and nutrients.</summary>
    public required Nutrition Nutrition { get; init; }

    /// <summary>What each place asks to be declared.</summary>
    public required IReadOnlyList<AllergenReport> Allergens { get; init; }

    /// <summary>What no list asks for and an eater with an allergy must know.</summary>
    public required IReadOnlyList<AllergenRemark> AllergenRemarks { get; init; }

    /// <summary>Plain sentences the cook should read with it.</summary>
    public required IReadOnlyList<PlanNotice> Notices { get; init; }

    /// <summary>The numbers it leans on.</summary>
    public required IReadOnlyList<Assumption> Assumptions { get; init; }
}
