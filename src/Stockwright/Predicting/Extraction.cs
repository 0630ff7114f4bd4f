using Stockwright.Simmering;
using UnitsNet;

namespace Stockwright.Predicting;

/// <summary>
/// Draws gelatin from cuts over a temperature history: two pools of collagen, soft and mineralised, each of the first order
/// with Arrhenius rates, while the heat also wears down what has dissolved (equations B.1 to B.6 in docs/equations-body.md;
/// grade: estimate resting on the measurements K1 to K5 and K8 named there).
/// </summary>
public static class Extraction
{
    /// <summary>Smallest and largest pH accepted.</summary>
    public static readonly (double Least, double Most) PhRange = (3.5, 9);

    /// <summary>Smallest and largest kitchen factor accepted.</summary>
    public static readonly (double Least, double Most) KitchenFactorRange = (0.3, 1.5);

    /// <summary>Runs cuts through a history.</summary>
    /// <param name="cuts">What is in the pot, and from when to when.</param>
    /// <param name="history">What the liquor goes through.</param>
    /// <param name="ph">Acidity of the liquor, 3.5 to 9; stock without acid is 6 to 7.</param>
    /// <param name="kitchenFactor">Times the collagen the cuts give up, 0.3 to 1.5; one for the published figures.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument lies outside its range.</exception>
    internal static ExtractionResult Run(IReadOnlyList<CutInPot> cuts, TemperatureHistory history, double ph = 6.5, double kitchenFactor = 1)
    {
        ArgumentNullException.ThrowIfNull(cuts);
        ArgumentNullException.ThrowIfNull(history);
        if (!(ph >= PhRange.Least && ph <= PhRange.Most))
        {
            throw new ArgumentOutOfRangeException(nameof(ph), ph, "The pH of a stock lies between 3.5 and 9.");
        }

        if (!(kitchenFactor >= KitchenFactorRange.Least && kitchenFactor <= KitchenFactorRange.Most))
        {
            throw new ArgumentOutOfRangeException(nameof(kitchenFactor), kitchenFactor, "The kitchen's factor lies between 0.3 and 1.5.");
        }

        ExtractionEngine engine = new(cuts, history);
        ExtractionTotals[] results = new ExtractionTotals[cuts.Count];
        engine.Run(ExtractionFigures.Central(ph, kitchenFactor, SimmerAssumptions.Standard), results);
        return Write(cuts, results, kitchenFactor);
    }

    internal static ExtractionResult Write(IReadOnlyList<CutInPot> cuts, ExtractionTotals[] results, double kitchenFactor)
    {
        ExtractionTotals sum = default;
        Mass collagen = Mass.Zero;
        List<CutYield> yields = [];
        for (int i = 0; i < cuts.Count; i++)
        {
            sum += results[i];
            Mass brought = Mass.FromGrams(cuts[i].Mass.Grams * cuts[i].Collagen.DecimalFractions * (cuts[i].Cut.IsGelatin ? 1 : kitchenFactor));
            collagen += brought;
            yields.Add(new CutYield(cuts[i].Id, brought, Mass.FromGrams(results[i].Gelatin)));
        }

        return new ExtractionResult
        {
            Cuts = yields,
            Collagen = collagen,
            Gelatin = Mass.FromGrams(sum.Gelatin),
            Intactness = Ratio.FromDecimalFractions(sum.Intactness),
            Bloom = Mass.FromGrams(sum.Bloom),
            MeltingShift = TemperatureDelta.FromKelvins(sum.MeltingShift),
        };
    }
}
