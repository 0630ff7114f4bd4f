using Stockwright.Larder;

namespace Stockwright.Simmering;

/// <summary>
/// What one ingredient gives to the liquor in the end beside gelatin and water, kg, and how fast (equations B.8 and B.18). The pot's balance and
/// the prediction both read it from here, so that they give one account.
/// </summary>
/// <param name="Juices">Nitrogenous matter.</param>
/// <param name="Minerals">Minerals.</param>
/// <param name="Sugars">Sugars.</param>
/// <param name="Sodium">Sodium, part of the minerals.</param>
/// <param name="Fat">Fat that comes free.</param>
/// <param name="PerHour">Share of what is still to come that dissolves in an hour at 98 °C.</param>
/// <param name="FatPerHour">Share of what is still to come free that does so in an hour at 98 °C.</param>
internal readonly record struct SolidGiving(double Juices, double Minerals, double Sugars, double Sodium, double Fat, double PerHour, double FatPerHour)
{
    /// <summary>Share of the extractives of meat and bone that is mineral (estimate: 0.25 of 1.65 % for chicken, 0.32 of 1.1 % for fish).</summary>
    private const double MineralShare = 0.2;

    /// <summary>Share of a vegetable's protein and ash that dissolves in the end (estimates).</summary>
    private const double VegetableProteinShare = 0.4;
    private const double VegetableAshShare = 0.6;

    /// <summary>Share of the sodium in flesh and vegetables that leaves it in the end (estimate).</summary>
    private const double SodiumShare = 0.7;

    /// <summary>Share of the juices left after blanching (estimate).</summary>
    private const double BlanchedShare = 0.5;

    /// <summary>Everything of a thing that is in the liquor at once: wine, paste, salt.</summary>
    public static SolidGiving Whole(Ingredient ingredient, CutTable cuts, double kilograms)
    {
        Solubles brings = cuts.SolublesOf(ingredient);

        // The collagen of a ready stock is counted as gelatin.
        return new SolidGiving(
            kilograms * Math.Max(0, ingredient.Protein.Value.DecimalFractions - cuts.CollagenOf(ingredient).Value.DecimalFractions),
            kilograms * ingredient.Ash.Value.DecimalFractions,
            kilograms * brings.Sugars.Value.DecimalFractions,
            kilograms * brings.Sodium.Value.DecimalFractions,
            kilograms * ingredient.Fat.Value.DecimalFractions,
            double.PositiveInfinity,
            double.PositiveInfinity);
    }

    /// <summary>What a solid gives, and no more than it has.</summary>
    /// <param name="ingredient">The larder row.</param>
    /// <param name="cuts">Classes of cuts.</param>
    /// <param name="kilograms">Raw mass.</param>
    /// <param name="blanched">True when it was blanched first, which pours half of the juices away.</param>
    /// <param name="fatDrained">Fat left on the roasting tray, kg.</param>
    public static SolidGiving Of(Ingredient ingredient, CutTable cuts, double kilograms, bool blanched, double fatDrained)
    {
        SolidGiving whole = Unblanched(ingredient, cuts, kilograms, fatDrained);
        return blanched
            ? whole with { Juices = BlanchedShare * whole.Juices, Minerals = BlanchedShare * whole.Minerals, Sugars = BlanchedShare * whole.Sugars, Sodium = BlanchedShare * whole.Sodium }
            : whole;
    }

    private static SolidGiving Unblanched(Ingredient ingredient, CutTable cuts, double kilograms, double fatDrained)
    {
        CutClass? cut = cuts.ClassOf(ingredient);
        Solubles brings = cuts.SolublesOf(ingredient);
        Matter holds = Matter.Of(ingredient, kilograms);
        double rate = (cut?.ExtractivesRate.PerSecond * 3600) ?? ExtractionRates.VegetablesPerHour;
        double sugars = Math.Min(holds.Other, kilograms * brings.Sugars.Value.DecimalFractions);
        double sodium = kilograms * SodiumShare * brings.Sodium.Value.DecimalFractions;
        if (cut is null)
        {
            bool plant = ingredient.Group is IngredientGroup.Vegetable or IngredientGroup.Aromatic;
            return new SolidGiving(
                plant ? VegetableProteinShare * holds.Protein : 0, plant ? VegetableAshShare * holds.Ash : 0, sugars, sodium, 0, rate, 0);
        }

        double extractives = kilograms * cut.Extractives.Value.DecimalFractions;
        double protein = Math.Max(0, holds.Protein - (kilograms * cuts.CollagenOf(ingredient).Value.DecimalFractions));
        return new SolidGiving(
            Math.Min(protein, extractives * (1 - MineralShare)),
            Math.Min(holds.Ash, extractives * MineralShare),
            sugars,
            sodium,
            Math.Max(0, holds.Fat - fatDrained) * cut.FreedFat.Value.DecimalFractions,
            rate,
            ExtractionRates.FatOverExtractives * rate);
    }
}
