using Stockwright.Simmering;

namespace Stockwright.Planning;

/// <summary>The whole wish, fitted: what goes in one pot, and how many potfuls it takes.</summary>
/// <param name="Fitted">One potful.</param>
/// <param name="Largest">The largest that fits at the recipe's strength.</param>
/// <param name="Verdict">How it fits.</param>
/// <param name="Potfuls">Potfuls, one or more.</param>
/// <param name="AtOnce">Pots on the heat side by side, one or more.</param>
internal sealed record FittedWish(FittedLoad Fitted, FittedLoad Largest, FitVerdict Verdict, int Potfuls = 1, int AtOnce = 1)
{
    public int Rounds => FitReport.RoundsOf(Potfuls, AtOnce);

    public int PotsInRound(int round) => FitReport.PotsIn(round, Potfuls, AtOnce);
}

/// <summary>
/// Fits the whole wish (equation F.8 in docs/equations.md): one batch at the recipe's strength; where that stands a little too high one batch with
/// less water; else as many equal potfuls as it takes, side by side as far as pots and hobs go.
/// </summary>
internal sealed class WishFitter(PlanRequest request, PotFitter fitter, BatchLoad perLitre)
{
    /// <summary>A batch with less water is one batch still while it gives so much of what was asked (estimate: a third stronger is a good stock, more is a concentrate).</summary>
    public const double LeastShare = 0.75;

    /// <summary>A pot that gives a fiftieth less than asked has given what was asked.</summary>
    private const double Close = 0.02;

    private double WantedLitres => request.Goal switch
    {
        PlanGoal.MakeVolume make => make.Yield.Liters,
        PlanGoal.UseBones bones => BatchLoad.Litres(request, bones),
        _ => throw new InvalidOperationException("A pot that is filled has no wish of its own."),
    };

    public FittedWish Fit()
    {
        FittedLoad largest = fitter.Fill();
        if (request.Goal is PlanGoal.FillPot || largest.Litres <= 0)
        {
            return new FittedWish(largest, largest, FitVerdict.Fits);
        }

        if (request is { Goal: PlanGoal.UseBones, FillTo: { } mark } && fitter.ToLine(WantedLitres, mark.LevelIn(request.Pot)) is { } filled && fitter.IsUnderSafeMaximum(filled))
        {
            return new FittedWish(filled, largest, FitVerdict.Fits);
        }

        FittedLoad single = fitter.ForLitres(WantedLitres);
        if (fitter.Fits(single))
        {
            return new FittedWish(single, largest, FitVerdict.Fits);
        }

        return WithLessWater(largest) ?? Several(largest);
    }

    /// <summary>One batch with less water, where the cook or the size of the wish asks for that; null where it does not, or cannot be.</summary>
    private FittedWish? WithLessWater(FittedLoad largest)
    {
        if (request.Way is SplitWay.SideBySide or SplitWay.OneAfterAnother || Concentrated(WantedLitres) is not { } strong)
        {
            return null;
        }

        double missing = WantedLitres - Litres(strong);
        if (request.Way is null && missing > (1 - LeastShare) * WantedLitres)
        {
            return null;
        }

        if (missing <= Close * WantedLitres)
        {
            // A little less over the solids than is usual, and it is the wish.
            return new FittedWish(strong with { CoverDecides = missing < -Close * WantedLitres }, largest, FitVerdict.Fits);
        }

        // Who asks for a volume gets it; who has bones gets what they make.
        bool lets = request.Way == SplitWay.LetDown || (request.Way is null && request.Goal is PlanGoal.MakeVolume);
        return new FittedWish(lets ? strong with { LetDownKilograms = missing * SimmerForecaster.ColdDensity / 1000 } : strong, largest, FitVerdict.FitsStronger);
    }

    /// <summary>All the solids of a wish in one pot with as much water as there is room for; null when they stand out of it.</summary>
    public FittedLoad? Concentrated(double litres) => perLitre.Items.Any(item => item.Charge is not null) ? fitter.ToLimit(litres) : null;

    private FittedWish Several(FittedLoad largest)
    {
        double wanted = WantedLitres;
        int potfuls = (int)Math.Clamp(Math.Ceiling((wanted / Math.Max(largest.Litres, Litres(largest))) - Close), 2, 1_000_000);
        FittedLoad fitted = fitter.ForLitres(wanted / potfuls);
        while (potfuls <= BatchPlanner.MostRounds && !fitter.Fits(fitted))
        {
            potfuls++;
            fitted = fitter.ForLitres(wanted / potfuls);
        }

        // Where covering the solids makes more of each potful, fewer of them are the wish; bones at hand all go in.
        int needed = request.Goal is PlanGoal.UseBones || !fitter.Fits(fitted) ? potfuls : (int)Math.Clamp(Math.Ceiling((wanted / Litres(fitted)) - Close), 1, potfuls);
        int atOnce = request.Way == SplitWay.OneAfterAnother ? 1 : Math.Min(needed, Math.Min(request.PotCount, request.HobCount));
        return new FittedWish(fitted, largest, needed == 1 ? FitVerdict.Fits : FitVerdict.NeedsRounds, needed, Math.Max(1, atOnce));
    }

    private double Litres(FittedLoad fitted) => fitter.YieldKilograms(fitted.Outcome) / SimmerForecaster.ColdDensity * 1000;
}
