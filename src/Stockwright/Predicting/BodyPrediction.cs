using UnitsNet;

namespace Stockwright.Predicting;

/// <summary>How the stock will stand (equations B.9 to B.14).</summary>
public sealed record BodyPrediction
{
    /// <summary>Gelatin by mass of the stock.</summary>
    public required Ratio Gelatin { get; init; }

    /// <summary>Bloom of that gelatin as the heat left it; zero when there is none.</summary>
    public required Mass Bloom { get; init; }

    /// <summary>Concentration of fresh 225 Bloom gelatin that stands the same.</summary>
    public required Ratio Effective { get; init; }

    /// <summary>Class after a night in the fridge.</summary>
    public required BodyClass Class { get; init; }

    /// <summary>Class after <see cref="FridgeTime"/>.</summary>
    public required BodyClass ClassAtFridgeTime { get; init; }

    /// <summary>Time in the fridge asked about.</summary>
    public required TimeSpan FridgeTime { get; init; }

    /// <summary>Strength after that time over that after 17 hours.</summary>
    public required double Firmness { get; init; }

    /// <summary>Sets below this; null when it does not set.</summary>
    public Temperature? SetsBelow { get; init; }

    /// <summary>Melts above this; null when it does not set.</summary>
    public Temperature? MeltsAbove { get; init; }

    /// <summary>True when it sets at the fridge's temperature.</summary>
    public required bool SetsInFridge { get; init; }

    /// <summary>Works out the body of a stock.</summary>
    /// <param name="gelatin">Gelatin by mass.</param>
    /// <param name="bloom">Its Bloom as it is now.</param>
    /// <param name="meltingShift">Shift of the melting point; below zero with fish.</param>
    /// <param name="fridgeTime">Time in the fridge asked about.</param>
    /// <param name="fridge">Temperature of the fridge.</param>
    internal static BodyPrediction Of(Ratio gelatin, Mass bloom, TemperatureDelta meltingShift, TimeSpan fridgeTime, Temperature fridge)
    {
        double effective = GelStrength.EffectivePercent(gelatin.Percent, bloom.Grams);
        Temperature? sets = GelStrength.Setting(gelatin, bloom, meltingShift);
        return new BodyPrediction
        {
            Gelatin = gelatin,
            Bloom = bloom,
            Effective = Ratio.FromPercent(effective),
            Class = BodyClasses.Of(effective, gelatin.Percent),
            ClassAtFridgeTime = BodyClasses.Of(GelStrength.EffectivePercentAfter(effective, fridgeTime), gelatin.Percent),
            FridgeTime = fridgeTime,
            Firmness = GelStrength.Firmness(fridgeTime),
            SetsBelow = sets,
            MeltsAbove = GelStrength.Melting(gelatin, bloom, meltingShift),
            SetsInFridge = sets is { } below && fridge < below,
        };
    }
}
