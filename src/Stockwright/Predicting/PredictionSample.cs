using Stockwright.Evidence;
using UnitsNet;

namespace Stockwright.Predicting;

/// <summary>Chance of one body class.</summary>
/// <param name="Class">The class.</param>
/// <param name="Chance">Share of the draws that end in it.</param>
public readonly record struct BodyChance(BodyClass Class, Ratio Chance);

/// <summary>10, 50 and 90 % points of energy and nutrients, each by itself.</summary>
/// <param name="Energy">Energy by the general factors.</param>
/// <param name="Protein">Protein.</param>
/// <param name="Fat">Fat left after defatting.</param>
/// <param name="Carbohydrate">Sugars from the vegetables.</param>
/// <param name="Sodium">Sodium.</param>
public sealed record NutritionBands(Band<Energy> Energy, Band<Mass> Protein, Band<Mass> Fat, Band<Mass> Carbohydrate, Band<Mass> Sodium);

/// <summary>
/// How sure we are: 10, 50 and 90 % points over many draws of the uncertain figures (B.24). The middle is the median, which need not
/// be the central prediction.
/// </summary>
public sealed record PredictionSample
{
    /// <summary>Number of draws.</summary>
    public required int Draws { get; init; }

    /// <summary>Seed they were drawn with.</summary>
    public required int Seed { get; init; }

    /// <summary>Strained, defatted stock, measured cold.</summary>
    public required Band<Volume> Yield { get; init; }

    /// <summary>Gelatin by mass of stock.</summary>
    public required Band<Ratio> Gelatin { get; init; }

    /// <summary>Effective concentration.</summary>
    public required Band<Ratio> Effective { get; init; }

    /// <summary>Refractometer reading, °Brix.</summary>
    public required Band<double> Brix { get; init; }

    /// <summary>Thickness of the fat cap.</summary>
    public required Band<Length> FatCap { get; init; }

    /// <summary>Fat that can be recovered.</summary>
    public required Band<Mass> FatRecovered { get; init; }

    /// <summary>Energy and nutrients of 100 mL.</summary>
    public required NutritionBands PerHundredMillilitres { get; init; }

    /// <summary>When all is done.</summary>
    public required Band<DateTimeOffset> Ready { get; init; }

    /// <summary>Every class with its chance, watery first; the chances add up to one.</summary>
    public required IReadOnlyList<BodyChance> Body { get; init; }

    /// <summary>The most likely class.</summary>
    public BodyClass MostLikely => Body.MaxBy(entry => entry.Chance.DecimalFractions).Class;

    /// <summary>Chance that the pot boils dry; those draws have no strength and count with a yield of nothing.</summary>
    public required Ratio BoilsDry { get; init; }
}
