using Stockwright.Larder;
using Stockwright.Planning;
using Stockwright.Recipes;

namespace Stockwright.Predicting;

/// <summary>What the load gives to the liquor beside gelatin, in kilograms (equations B.8, B.18).</summary>
/// <param name="Juices">Nitrogenous matter.</param>
/// <param name="Minerals">Minerals, salt included.</param>
/// <param name="Sugars">Sugars.</param>
/// <param name="Sodium">Sodium, part of the minerals.</param>
/// <param name="FreedFat">Fat come free.</param>
/// <param name="DrainedFat">Fat left on the roasting tray.</param>
internal readonly record struct Solutes(double Juices, double Minerals, double Sugars, double Sodium, double FreedFat, double DrainedFat)
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

    /// <summary>Adds up a load over a history.</summary>
    public static Solutes Of(IReadOnlyList<PotItem> items, CutTable cuts, ExtractionEngine engine, double strainedSeconds)
    {
        double juices = 0;
        double minerals = 0;
        double sugars = 0;
        double sodium = 0;
        double freed = 0;
        double drained = 0;
        foreach (PotItem item in items)
        {
            Ingredient ingredient = item.Ingredient;
            Solubles brings = cuts.SolublesOf(ingredient);
            CutClass? cut = cuts.ClassOf(ingredient);
            if (brings.Dissolves)
            {
                // The collagen of a ready stock is counted as gelatin.
                juices += item.RawKilograms * Math.Max(0, ingredient.Protein.Value.DecimalFractions - cuts.CollagenOf(ingredient).Value.DecimalFractions);
                freed += item.RawKilograms * ingredient.Fat.Value.DecimalFractions;
                minerals += item.RawKilograms * ingredient.Ash.Value.DecimalFractions;
                sugars += item.RawKilograms * brings.Sugars.Value.DecimalFractions;
                sodium += item.RawKilograms * brings.Sodium.Value.DecimalFractions;
                continue;
            }

            double hours = engine.WeakHours(item.JoinsSeconds, strainedSeconds);
            double rate = (cut?.ExtractivesRate.PerSecond * 3600) ?? ExtractionRates.VegetablesPerHour;
            double done = 1 - Math.Exp(-rate * hours);
            double kept = item.Blanched ? BlanchedShare : 1;
            double given = item.RawKilograms * done * kept;
            sodium += given * SodiumShare * brings.Sodium.Value.DecimalFractions;
            sugars += given * brings.Sugars.Value.DecimalFractions;
            if (cut is null)
            {
                bool plant = ingredient.Group is IngredientGroup.Vegetable or IngredientGroup.Aromatic;
                juices += plant ? given * VegetableProteinShare * ingredient.Protein.Value.DecimalFractions : 0;
                minerals += plant ? given * VegetableAshShare * ingredient.Ash.Value.DecimalFractions : 0;
                continue;
            }

            double extractives = given * cut.Extractives.Value.DecimalFractions;
            juices += extractives * (1 - MineralShare);
            minerals += extractives * MineralShare;
            double fat = item.RawKilograms * ingredient.Fat.Value.DecimalFractions;
            drained += item.FatDrainedKilograms;
            freed += Math.Max(0, fat - item.FatDrainedKilograms) * cut.FreedFat.Value.DecimalFractions * (1 - Math.Exp(-ExtractionRates.FatOverExtractives * rate * hours));
        }

        return new Solutes(juices, minerals, sugars, sodium, freed, drained);
    }
}

/// <summary>One ingredient of the load, in SI units.</summary>
internal sealed record PotItem(Ingredient Ingredient, double RawKilograms, double JoinsSeconds, bool Blanched, double FatDrainedKilograms)
{
    public static IReadOnlyList<PotItem> Of(BatchPlan plan)
    {
        List<PotItem> items = [];
        for (int i = 0; i < plan.Amounts.Count; i++)
        {
            AmountLine line = plan.Amounts[i];
            items.Add(new PotItem(
                line.Ingredient,
                line.Mass.Kilograms,
                line.JoinsAt.TotalSeconds,
                line.Line.Preparation == Preparation.Blanch,
                plan.Workings.Fitted.Load.Items[i].FatDrainedKilograms));
        }

        if (plan.Wetting is { } wetting)
        {
            items.Add(new PotItem(wetting, plan.Workings.Fitted.WaterKilograms, 0, Blanched: false, 0));
        }

        return items;
    }
}
