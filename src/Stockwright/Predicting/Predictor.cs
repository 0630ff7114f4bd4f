using Stockwright.Evidence;
using Stockwright.Larder;
using Stockwright.Planning;
using UnitsNet;

namespace Stockwright.Predicting;

/// <summary>Says what the stock of a plan will be like. Pure: the same plan and settings always give the same answer.</summary>
public static class Predictor
{
    private const double MostSolids = 0.8;

    /// <summary>The central prediction for one round of a plan.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="settings">What else is known; null for the defaults.</param>
    /// <exception cref="ArgumentException">A setting lies outside its range; <see cref="PredictionSettings.Check"/> says which.</exception>
    public static BatchPrediction Predict(BatchPlan plan, PredictionSettings? settings = null) =>
        Predict(PredictionCase.Of(plan, settings ?? new PredictionSettings()));

    internal static BatchPrediction Predict(PredictionCase made)
    {
        ExtractionTotals[] totals = new ExtractionTotals[made.Cuts.Count];
        made.Engine.Run(made.Central, totals);
        ExtractionResult extraction = Extraction.Write(made.Cuts, totals, made.Settings.KitchenFactor.Value);
        double liquor = made.LiquorKilograms;
        double yield = made.YieldKilograms;
        Solutes solutes = made.Solutes;
        FatPrediction fat = Fat(made, solutes, liquor, yield);
        StockComposition composition = Composition(extraction.Gelatin.Kilograms, solutes, fat.Left.Kilograms / yield, liquor);
        BodyPrediction body = Body(made.Settings, composition.Gelatin, extraction);
        AllergenSource[] sources = [.. made.Items.Select(item => new AllergenSource(item.Ingredient, Mass.FromKilograms(item.RawKilograms)))];
        return new BatchPrediction
        {
            Settings = made.Settings,
            Extraction = extraction,
            GelatinInStock = Mass.FromKilograms(composition.Gelatin.DecimalFractions * yield),
            Body = body,
            Composition = composition,
            Fat = fat,
            Nutrition = Nutrition.Of(composition, made.Settings.PortionSize),
            Allergens = AllergenRules.Report(sources, Mass.FromKilograms(yield)),
            AllergenRemarks = AllergenRemarks.Of(sources),
            Notices = Notices(made, body),
            Assumptions = PredictionAssumptions.List(made),
        };
    }

    internal static BodyPrediction Body(PredictionSettings settings, Ratio gelatin, ExtractionResult extraction) =>
        BodyPrediction.Of(gelatin, extraction.Bloom, extraction.MeltingShift, settings.FridgeTime, settings.Fridge);

    /// <summary>Everything that dissolved is spread evenly through all the liquor (B.7).</summary>
    private static StockComposition Composition(double gelatinKilograms, Solutes solutes, double fatShare, double liquorKilograms)
    {
        // Glaze that burns holds no more than this; only a pot that went dry comes near.
        double all = ((gelatinKilograms + solutes.Juices + solutes.Sugars + solutes.Minerals + solutes.Sodium) / liquorKilograms) + fatShare;
        double share = all > MostSolids ? MostSolids / all : 1;
        Ratio Of(double kilograms) => Ratio.FromDecimalFractions(share * kilograms / liquorKilograms);
        return new StockComposition
        {
            Gelatin = Of(gelatinKilograms),
            Juices = Of(solutes.Juices),
            Sugars = Of(solutes.Sugars),
            Minerals = Of(solutes.Minerals),
            Fat = Ratio.FromDecimalFractions(share * fatShare),
            Sodium = Of(solutes.Sodium),
        };
    }

    private static FatPrediction Fat(PredictionCase made, Solutes solutes, double liquor, double yield)
    {
        // The fat floats, so all of it is on what is strained; what is beaten in stays, a tenth of the freed fat at most (B.19).
        double emulsified = Math.Min(DefatMethods.Emulsified.Value.DecimalFractions * liquor, 0.1 * solutes.FreedFat);
        double floating = solutes.FreedFat - emulsified;
        double recovered = floating * DefatMethods.Share(made.Defat).Value.DecimalFractions;
        return new FatPrediction
        {
            DrainedInRoast = Mass.FromKilograms(solutes.DrainedFat),
            Freed = Mass.FromKilograms(solutes.FreedFat),
            Floating = Mass.FromKilograms(floating),
            Method = made.Defat,
            Recovered = Mass.FromKilograms(recovered),
            Left = Mass.FromKilograms(floating - recovered + (emulsified * yield / liquor)),
            CapThickness = Length.FromMeters(floating / FatPrediction.Density.KilogramsPerCubicMeter / made.ContainerSquareMetres),
            ContainerDiameter = made.ContainerDiameter,
        };
    }

    private static List<PlanNotice> Notices(PredictionCase made, BodyPrediction body)
    {
        List<PlanNotice> notices = [];
        if (made.Cuts.Count == 0)
        {
            notices.Add(new PlanNotice(NoticeLevel.Hint, NoticeCode.NoCollagen, null));
        }
        else if (body.SetsBelow is { } below && !body.SetsInFridge)
        {
            notices.Add(new PlanNotice(
                NoticeLevel.Hint,
                NoticeCode.SetsTooCold,
                null,
                Figure.Of(below)));
        }

        foreach (PotItem item in made.Items.Where(item => item.Ingredient.Group is IngredientGroup.Beef or IngredientGroup.Veal or IngredientGroup.Poultry or IngredientGroup.Pork or IngredientGroup.Lamb or IngredientGroup.Game or IngredientGroup.Fish))
        {
            if (made.CutTable.ClassOf(item.Ingredient) is null)
            {
                notices.Add(new PlanNotice(NoticeLevel.Warning, NoticeCode.UnknownCut, null, Figure.Of(item.Ingredient.Name)));
            }
        }

        return notices;
    }
}
