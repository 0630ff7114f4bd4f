using Stockwright.Evidence;
using Stockwright.Simmering;
using UnitsNet;

namespace Stockwright.Planning;

/// <summary>
/// Writes what the drained solids will weigh, with its band (F.7 in docs/equations.md): of the same run, the same solids and the same clinging liquor
/// as the water ledger, so that a scale at the sink checks both.
/// </summary>
internal sealed class SpentWriter(PotFitter fitter, FittedLoad fitted, SimmerRuns runs)
{
    private readonly SimmerOutcome central = runs.Central;
    private readonly Stated<Ratio> clinging = fitter.Clinging;

    /// <summary>
    /// Each uncertain figure is moved alone to its ends and the shifts add in quadrature, as for the yield: what the runs lose, what clings, the
    /// water the solids give, the fat that comes free of them, and their collagen. Ingredients of one pot err together.
    /// </summary>
    public Band<Mass> Write()
    {
        double spent = Weight(central);
        (double, double)[] ends =
        [
            (Weight(runs.LosesLess) - spent, Weight(runs.LosesMore) - spent),
            (Weight(central, clinging.Low) - spent, Weight(central, clinging.High) - spent),
            (Shift((_, release) => release.Leaning(-1)), Shift((_, release) => release.Leaning(1))),
            (Shift((item, release) => Fattier(item, release, high: false)), Shift((item, release) => Fattier(item, release, high: true))),
            (Shift((item, release) => Stickier(item, release, high: false)), Shift((item, release) => Stickier(item, release, high: true))),
        ];
        double below = Math.Sqrt(ends.Sum(pair => Squared(Math.Min(0, Math.Min(pair.Item1, pair.Item2)))));
        double above = Math.Sqrt(ends.Sum(pair => Squared(Math.Max(0, Math.Max(pair.Item1, pair.Item2)))));
        return new Band<Mass>(Mass.FromKilograms(Math.Max(0, spent - below)), Mass.FromKilograms(spent), Mass.FromKilograms(spent + above));
    }

    private double Weight(SimmerOutcome outcome) => Weight(outcome, clinging.Value);

    /// <summary>Drained solids of a run with what clings, kg, when a kilogram of drained bones holds so much; no more clings than there is.</summary>
    private double Weight(SimmerOutcome outcome, Ratio holds) =>
        outcome.SpentSolidsKilograms
        + Math.Min(outcome.LiquidLeftKilograms, fitter.RetainedKilograms(outcome, holds.DecimalFractions))
        + (outcome.LiftedWithSolidsKilograms * (holds / clinging.Value));

    /// <summary>By how much the solids weigh more, kg, when each gives otherwise over the same time; what clings moves with their weight.</summary>
    private double Shift(Func<LoadItem?, SolidRelease, SolidRelease> otherwise)
    {
        Dictionary<SolidCharge, LoadItem> items = new(ReferenceEqualityComparer.Instance);
        foreach (LoadItem item in fitted.Load.Items)
        {
            if (item.Charge is { } charge)
            {
                items[charge] = item;
            }
        }

        double sum = 0;
        foreach (SolidGave gave in central.Gave)
        {
            SolidRelease release = otherwise(items.GetValueOrDefault(gave.Solid), gave.Solid.Release);
            double spent = gave.Solid.MassKilograms - release.Liquor(gave.Since, gave.Hottest) - release.FreedFat(gave.Since);
            sum += (spent - gave.SpentKilograms) * (1 + release.Clings);
        }

        return sum;
    }

    /// <summary>At the end of the range of what comes free, and no more than there is.</summary>
    private static SolidRelease Fattier(LoadItem? item, SolidRelease release, bool high)
    {
        if (item is null || item.Cuts.ClassOf(item.Ingredient) is not { } cut || !(cut.FreedFat.Value > Ratio.Zero))
        {
            return release;
        }

        double most = Math.Max(release.Fat, item.Raw.Fat - item.FatDrainedKilograms);
        return release with { Fat = Math.Min(most, release.Fat * ((high ? cut.FreedFat.High : cut.FreedFat.Low) / cut.FreedFat.Value)) };
    }

    private static SolidRelease Stickier(LoadItem? item, SolidRelease release, bool high)
    {
        if (item is null || item.Cuts.CollagenOf(item.Ingredient) is not { } collagen || !(collagen.Value > Ratio.Zero))
        {
            return release;
        }

        double factor = (high ? collagen.High : collagen.Low) / collagen.Value;
        return release with { SoftCollagen = release.SoftCollagen * factor, HardCollagen = release.HardCollagen * factor };
    }

    private static double Squared(double value) => value * value;
}
