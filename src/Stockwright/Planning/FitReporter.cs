using Stockwright.Kitchen;
using Stockwright.Recipes;
using Stockwright.Simmering;
using UnitsNet;

namespace Stockwright.Planning;

/// <summary>Writes how a fitted load stands in its pot.</summary>
internal static class FitReporter
{
    public static FitReport Report(PlanRequest request, PotFitter fitter, FittedWish wish, SimmerOutcome outcome)
    {
        FittedLoad fitted = wish.Fitted;

        // Where nothing is topped up a smaller load in more water may give more than a full one.
        double largest = Math.Max(fitter.YieldKilograms(wish.Largest.Outcome), fitter.YieldKilograms(fitted.Outcome)) / SimmerForecaster.ColdDensity * 1000;
        Length safe = PotFitter.SafeMaximum(request.Pot).Level;
        FillLimit limit = PotFitter.Limit(request).Limit;
        double height = request.Pot.InnerHeight.Meters;
        double displaced = fitted.Load.Items.Where(item => item.Line.Joins == JoinMoment.Start).Sum(item => item.Charge?.VolumeCubicMetres ?? 0);
        return new FitReport
        {
            Verdict = wish.Verdict,
            Potfuls = wish.Potfuls,
            AtOnce = wish.AtOnce,
            LetDown = SimmerForecaster.Cold(fitted.LetDownKilograms),
            LargestYield = Volume.FromLiters(largest),
            PotsThatFit = wish.Verdict == FitVerdict.Fits ? [] : [.. request.OtherPots.Where(pot => Holds(pot, request.Pot, fitted.Litres * wish.Potfuls, wish.Largest.Litres)).Select(pot => pot.Name)],
            SolidsDisplacement = Volume.FromCubicMeters(displaced),
            SolidsHeight = Length.FromMeters(outcome.StartHeapMetres),
            WaterToLine = SimmerForecaster.Cold(fitted.WaterKilograms),
            FillLine = Length.FromMeters(fitted.LineMetres),
            FillLineFromRim = Length.FromMeters(height - fitted.LineMetres),
            HeldLine = Length.FromMeters(fitted.HeldMetres),
            PeakLevel = Length.FromMeters(outcome.PeakMetres),
            Freeboard = Length.FromMeters(height - outcome.PeakMetres),
            SafeMaximum = safe,
            Limit = limit,
            CoverDepth = Length.FromMeters(fitted.LineMetres - outcome.StartHeapMetres),
            CoverDecidesWater = fitted.CoverDecides,
        };
    }

    /// <summary>A guess by safe volume, enough to name a pot to try.</summary>
    private static bool Holds(Pot other, Pot pot, double litres, double largestLitres)
    {
        double here = pot.VolumeAt(PotFitter.SafeMaximum(pot).Level).Liters;
        Length level = PotFitter.SafeMaximum(other).Level;
        return level > Length.Zero && other.VolumeAt(level).Liters / here * largestLitres >= litres;
    }
}
