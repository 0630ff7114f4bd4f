using Stockwright.Evidence;
using Stockwright.Simmering;
using UnitsNet;

namespace Stockwright.Predicting;

/// <summary>The numbers a prediction leans on, with range, grade and source.</summary>
internal static class PredictionAssumptions
{
    public static IReadOnlyList<Assumption> List(PredictionCase made)
    {
        List<Assumption> list = [];
        if (made.Cuts.Count > 0)
        {
            Collagen(made, list);
        }

        DefatMethod way = made.Defat;
        list.Add(Of("defat-share", "Floating fat that is taken off", DefatMethods.Share(way), static value => value, "Fat left in the stock, and the fat credit."));
        list.Add(Of("emulsified", "Fat beaten into the stock", DefatMethods.Emulsified, static value => value, "Fat left in the stock."));
        return list;
    }

    private static void Collagen(PredictionCase made, List<Assumption> list)
    {
        SimmerAssumptions figures = made.Plan.Request.Assumptions;
        CutInPot main = made.Cuts.OrderByDescending(cut => cut.Mass.Kilograms * cut.Collagen.DecimalFractions).First();
        string name = made.Plan.Request.Larder.Get(main.Id).Name.ToLowerInvariant();
        list.Add(Of("kitchen-factor", "This kitchen's gelatin against the published figures", made.Settings.KitchenFactor, static value => Ratio.FromDecimalFractions(value), "Gelatin, body. Measure a batch to replace it."));
        list.Add(Of("collagen", $"Collagen in {name}", made.CollagenOf(made.Plan.Request.Larder.Get(main.Id)), static value => value, "Gelatin, body."));
        list.Add(Of("soft-share", $"Soft part of the collagen in {name}", main.Cut.SoftShare, static value => value, "How soon the gelatin comes."));
        list.Add(Of("soft-rate", $"Soft collagen of {name} drawn in an hour at 98 °C", main.Cut.SoftRate, PerHour, "How soon the gelatin comes."));
        if (main.Cut.HardRate.Value > Frequency.Zero)
        {
            list.Add(Of("hard-rate", $"Bone collagen of {name} drawn in an hour at 98 °C", main.Cut.HardRate, PerHour, "What long simmering still gives."));
        }

        list.Add(Of("fresh-bloom", $"Strength of fresh gelatin from {name}", main.Cut.FreshBloom, static value => value, "Body."));
        list.Add(Of("collagen-activation", "How strongly heat speeds up the drawing of gelatin", figures.CollagenActivation, KilojoulesPerMole, "Temperature, altitude, pressure cooking."));
        list.Add(Of("breakdown-rate", "Gel strength lost in an hour at 98 °C", figures.BreakdownPerHour, static value => Ratio.FromDecimalFractions(value), "Why longer is not always better."));
        list.Add(Of("breakdown-activation", "How strongly heat speeds up that loss", figures.BreakdownActivation, KilojoulesPerMole, "Pressure cooking."));
        if (main.Cut.FreedFat.Value > Ratio.Zero)
        {
            list.Add(Of("freed-fat", $"Fat that comes free of {name}", main.Cut.FreedFat, static value => value, "Fat cap."));
        }
    }

    private static IQuantity PerHour(Frequency rate) => Ratio.FromDecimalFractions(rate.PerSecond * 3600);

    private static IQuantity KilojoulesPerMole(double joules) => MolarEnergy.FromKilojoulesPerMole(joules / 1000);

    private static Assumption Of<T>(string key, string name, Stated<T> stated, Func<T, IQuantity> quantity, string effect) => new(
        key, name, new Band<IQuantity>(quantity(stated.Low), quantity(stated.Value), quantity(stated.High)), stated.Provenance, stated.Source, effect);
}
