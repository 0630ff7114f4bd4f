using Stockwright.Kitchen;
using Stockwright.Larder;
using Stockwright.Planning;
using Stockwright.Predicting;
using Stockwright.Recipes;
using UnitsNet;

namespace Stockwright.Tests.Predicting;

/// <summary>Cuts in a pot and plans to predict from.</summary>
internal static class Pots
{
    /// <summary>The published figures as they stand: no kitchen factor, no cooling.</summary>
    public static PredictionSettings AsPublished { get; } = new()
    {
        KitchenFactor = PredictionSettings.UsualKitchenFactor with { Value = 1, Low = 1, High = 1 },
        CoolingTo60 = TimeSpan.Zero,
    };

    public static CutClass Class(string id) => StandardCuts.Table.Classes.Single(cut => string.Equals(cut.Id, id, StringComparison.Ordinal));

    public static CutInPot Cut(string cutClass, double kilograms, double collagenPercent, double? pieceCentimetres = null) => new(
        cutClass,
        Class(cutClass),
        Mass.FromKilograms(kilograms),
        Ratio.FromPercent(collagenPercent),
        PieceSize: pieceCentimetres is { } size ? Length.FromCentimeters(size) : null);

    public static ExtractionResult Hold(double celsius, double hours, params CutInPot[] cuts) =>
        Extraction.Run(cuts, TemperatureHistory.Steady(Temperature.FromDegreesCelsius(celsius), TimeSpan.FromHours(hours)));

    /// <summary>Effective concentration of a result in so much liquor, per cent.</summary>
    public static double Effective(ExtractionResult result, double kilogramsLiquor) =>
        GelStrength.EffectivePercent(result.Gelatin.Grams / 10 / kilogramsLiquor, result.Bloom.Grams);

    public static BatchPlan Plan(string recipe, double litres = 6, Func<PlanRequest, PlanRequest>? change = null)
    {
        StockRecipe found = StandardRecipes.Book.Recipes.First(entry => string.Equals(entry.Id, recipe, StringComparison.Ordinal));
        PlanRequest request = new()
        {
            Recipe = found,
            Larder = StandardLarder.Table,
            Pot = Pot.Straight("pot-24", "24 L pot", Length.FromCentimeters(32), Length.FromCentimeters(30)),
            Hob = new Hob { Id = "hob", Name = "Induction", Kind = HobKind.Induction, RatedPower = Power.FromKilowatts(3.5) },
            Lid = found.Lid,
            Site = new KitchenSite(),
            Oven = new Oven("oven", "Oven", HasFan: true, Levels: 2, Length.FromCentimeters(60), Length.FromCentimeters(40)),
            Trays = [new Tray("tray", "Oven tray", Length.FromCentimeters(53), Length.FromCentimeters(32.5), 3)],
            Goal = new PlanGoal.MakeVolume(Volume.FromLiters(litres)),
            Schedule = new PlanSchedule { StartAt = new DateTimeOffset(2026, 1, 10, 7, 0, 0, TimeSpan.Zero) },
        };
        PlanResult result = BatchPlanner.Plan(change?.Invoke(request) ?? request);
        return result.Plan ?? throw new InvalidOperationException(result.Problems[0].ToString());
    }
}
