using Stockwright.Predicting;
using UnitsNet;

namespace Stockwright.Strength;

/// <summary>One of two stocks to blend.</summary>
/// <param name="Gelatin">Gelatin by mass.</param>
/// <param name="Bloom">Its Bloom; null for 225 g.</param>
public sealed record BlendPart(Ratio Gelatin, Mass? Bloom = null);

/// <summary>A blend.</summary>
/// <param name="PartsStrong">Parts of the stronger, by mass; Pearson's square.</param>
/// <param name="PartsWeak">Parts of the weaker, by mass.</param>
/// <param name="ShareStrong">Share of the stronger in the blend, by mass.</param>
/// <param name="Strong">Volume of the stronger for the volume wanted.</param>
/// <param name="Weak">Volume of the weaker.</param>
/// <param name="Bloom">Bloom of the blend's gelatin: the mean by mass of gelatin.</param>
public sealed record BlendedStock(Ratio PartsStrong, Ratio PartsWeak, Ratio ShareStrong, Volume Strong, Volume Weak, Mass Bloom);

/// <summary>Blending two stocks to a strength (B.29).</summary>
public static class Blending
{
    /// <summary>Blends by Pearson's square.</summary>
    /// <param name="one">One stock.</param>
    /// <param name="other">The other.</param>
    /// <param name="target">Gelatin wanted by mass, between the two.</param>
    /// <param name="total">Volume wanted, measured cold.</param>
    public static StrengthAnswer<BlendedStock> ToStrength(BlendPart one, BlendPart other, Ratio target, Volume total)
    {
        ArgumentNullException.ThrowIfNull(one);
        ArgumentNullException.ThrowIfNull(other);
        (BlendPart strong, BlendPart weak) = one.Gelatin >= other.Gelatin ? (one, other) : (other, one);
        if (!(weak.Gelatin >= Ratio.Zero) || !(strong.Gelatin.Percent <= 60))
        {
            return StrengthAnswer.No<BlendedStock>("stock", "The gelatin lies between 0 and 60 %.");
        }

        if (strong.Bloom < Mass.Zero || weak.Bloom < Mass.Zero)
        {
            return StrengthAnswer.No<BlendedStock>("bloom", "A Bloom strength must not be below zero.");
        }

        if (!(total > Volume.Zero))
        {
            return StrengthAnswer.No<BlendedStock>("total", "Say how much you want.");
        }

        if ((strong.Gelatin - weak.Gelatin).Percent < 1e-9)
        {
            return StrengthAnswer.No<BlendedStock>("target", "Both stocks are equally strong: no blend of them is stronger or weaker.");
        }

        if (!(target >= weak.Gelatin && target <= strong.Gelatin))
        {
            return StrengthAnswer.No<BlendedStock>("target", FormattableString.Invariant(
                $"The strength wanted, {target.Percent:0.##} %, lies outside the two stocks, {weak.Gelatin.Percent:0.##} % and {strong.Gelatin.Percent:0.##} %: no blend reaches it."));
        }

        Ratio partsStrong = target - weak.Gelatin;
        Ratio partsWeak = strong.Gelatin - target;
        double share = partsStrong / (partsStrong + partsWeak);
        Mass mass = total * StockAmount.DensityOf(target);
        double strongGelatin = share * strong.Gelatin.DecimalFractions;
        double weakGelatin = (1 - share) * weak.Gelatin.DecimalFractions;
        double bloom = strongGelatin + weakGelatin > 0
            ? ((strongGelatin * Bloom(strong)) + (weakGelatin * Bloom(weak))) / (strongGelatin + weakGelatin)
            : 0;
        return StrengthAnswer.Of(new BlendedStock(
            partsStrong,
            partsWeak,
            Ratio.FromDecimalFractions(share),
            mass * share / StockAmount.DensityOf(strong.Gelatin),
            mass * (1 - share) / StockAmount.DensityOf(weak.Gelatin),
            Mass.FromGrams(bloom)));
    }

    private static double Bloom(BlendPart part) => part.Bloom?.Grams ?? GelStrength.ReferenceBloomGrams;
}
