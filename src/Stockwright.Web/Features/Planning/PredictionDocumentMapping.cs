using Stockwright.Planning;
using Stockwright.Predicting;
using Stockwright.Web.Fields;
using Stockwright.Web.Wording;

namespace Stockwright.Web.Features.Planning;

/// <summary>Writes a prediction as a document, by hand, so that the interface changes only when somebody means it to.</summary>
internal static class PredictionDocumentMapping
{
    /// <summary>Writes what is foreseen of a plan; its yield is the plan's own, for one plan states one.</summary>
    public static PredictionDocument Make(StockOutlook outlook, BatchPlan plan, UnitSystem units)
    {
        BatchPrediction central = outlook.Central;
        PredictionSample sure = outlook.Sure;
        return new PredictionDocument(
            sure.Draws,
            sure.MostLikely,
            [.. sure.Body.Select(Chance)],
            sure.BoilsDry.DecimalFractions,
            BandDocument.Of(plan.Yield, volume => volume.CubicMeters),
            new MomentsDocument(sure.Ready.Low, sure.Ready.Central, sure.Ready.High),
            BandDocument.Of(sure.Gelatin, share => share.DecimalFractions),
            BandDocument.Of(sure.Effective, share => share.DecimalFractions),
            BandDocument.Of(sure.Brix, brix => brix),
            Body(central),
            Fat(central.Fat, sure),
            new NutritionDocument(Facts(central.Nutrition.PerHundredMillilitres), FactBands(sure.PerHundredMillilitres), central.Nutrition.Portion.CubicMeters, Facts(central.Nutrition.PerPortion)),
            [.. central.Allergens.Select(report => new AllergenDocument(
                report.Place,
                report.PlaceName,
                [.. report.Flags.Select(flag => new AllergenFlagDocument(flag.Word, flag.Name, flag.Ingredients, flag.Clause, flag.Note))],
                report.Remarks,
                report.Statement))],
            [.. central.AllergenRemarks.Select(remark => new AllergenRemarkDocument(remark.Id, remark.Ingredients, remark.Text, remark.Source, EvidenceText.Of(remark.Provenance)))],
            outlook.WithMore is { } with ? new TrialDocument(with.Class, with.Gelatin.DecimalFractions, with.Effective.DecimalFractions) : null,
            outlook.Set is { } advice ? Set(advice) : null,
            [.. central.Notices.Select(notice => PlanDocumentMapping.Notice(notice, units))],
            [.. central.Assumptions.Select(PlanDocumentMapping.Assumption)]);
    }

    private static ChanceDocument Chance(BodyChance row) => new(
        row.Class,
        BodyClasses.Name(row.Class),
        BodyClasses.Look(row.Class),
        BodyClasses.Feel(row.Class),
        BodyClasses.LeastPercent(row.Class) / 100,
        row.Chance.DecimalFractions);

    private static BodyDocument Body(BatchPrediction central) => new(
        central.Body.Class,
        central.Body.ClassAtFridgeTime,
        central.Body.FridgeTime.TotalSeconds,
        central.Body.Firmness,
        central.Body.Gelatin.DecimalFractions,
        central.Body.Effective.DecimalFractions,
        central.Body.Bloom.Kilograms,
        central.Extraction.Intactness.DecimalFractions,
        central.Body.SetsBelow?.Kelvins,
        central.Body.MeltsAbove?.Kelvins,
        central.Body.SetsInFridge,
        central.Composition.Density.KilogramsPerCubicMeter,
        [.. central.Extraction.Cuts.Select(cut => new CutYieldDocument(cut.Id, cut.Collagen.Kilograms, cut.Gelatin.Kilograms))]);

    private static SetDocument Set(SetAdvice advice) => new(
        advice.Wanted,
        advice.IsReached,
        [.. advice.Additions.Select(addition => new AdditionDocument(addition.IngredientId, addition.Mass.Kilograms, addition.Cost))],
        advice.Cost,
        advice.Now.DecimalFractions,
        advice.Then.DecimalFractions,
        advice.Needed.DecimalFractions,
        advice.OrReduceTo?.CubicMeters,
        advice.TooMuchForPot.CubicMeters,
        [.. advice.Problems.Select(problem => problem.Message)]);

    private static FatDocument Fat(FatPrediction fat, PredictionSample sure) => new(
        fat.Method,
        fat.DrainedInRoast.Kilograms,
        fat.Freed.Kilograms,
        fat.Left.Kilograms,
        BandDocument.Of(sure.FatRecovered, mass => mass.Kilograms),
        fat.RecoveredVolume.CubicMeters,
        fat.RecoveredBy(DefatMethod.Ladle).Kilograms,
        fat.RecoveredBy(DefatMethod.Jug).Kilograms,
        fat.RecoveredBy(DefatMethod.Chill).Kilograms,
        BandDocument.Of(sure.FatCap, length => length.Meters),
        fat.ContainerDiameter.Meters);

    private static FactBandsDocument FactBands(NutritionBands bands) => new(
        BandDocument.Of(bands.Energy, energy => energy.Joules),
        BandDocument.Of(bands.Protein, mass => mass.Kilograms),
        BandDocument.Of(bands.Fat, mass => mass.Kilograms),
        BandDocument.Of(bands.Carbohydrate, mass => mass.Kilograms),
        BandDocument.Of(bands.Sodium, mass => mass.Kilograms));

    private static FactsDocument Facts(NutritionFacts facts) => new(
        facts.Energy.Joules, facts.Protein.Kilograms, facts.Fat.Kilograms, facts.Carbohydrate.Kilograms, facts.Sodium.Kilograms, facts.SaltEquivalent.Kilograms);
}
