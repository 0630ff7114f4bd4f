using Stockwright.Predicting;
using UnitsNet;

namespace Stockwright.Strength;

/// <summary>Powder gelatin to stir in.</summary>
/// <param name="Powder">Mass of powder.</param>
/// <param name="Needed">Effective concentration aimed at.</param>
public sealed record TopUpAdvice(Mass Powder, Ratio Needed);

/// <summary>Making a weak stock set with powder gelatin (B.30).</summary>
public static class GelatinTopUp
{
    /// <summary>Weakest and strongest powder accepted, g Bloom.</summary>
    public static readonly (double Least, double Most) BloomRange = (50, 300);

    /// <summary>
    /// Powder that brings a stock to a body class. Effective concentrations are taken to add, which asks for a little more than
    /// mixing strong with weak gelatin really needs (up to a few per cent).
    /// </summary>
    /// <param name="volume">Stock there is, measured cold.</param>
    /// <param name="effective">Its effective concentration.</param>
    /// <param name="wanted">Class wanted.</param>
    /// <param name="powderBloom">Bloom strength on the packet, 50 to 300 g.</param>
    public static StrengthAnswer<TopUpAdvice> ToClass(Volume volume, Ratio effective, BodyClass wanted, Mass powderBloom) =>
        ToEffective(volume, effective, Ratio.FromPercent(BodyClasses.LeastPercent(wanted)), powderBloom);

    /// <summary>Powder that brings a stock to an effective concentration.</summary>
    /// <param name="volume">Stock there is, measured cold.</param>
    /// <param name="effective">Its effective concentration.</param>
    /// <param name="target">Effective concentration wanted.</param>
    /// <param name="powderBloom">Bloom strength on the packet, 50 to 300 g.</param>
    internal static StrengthAnswer<TopUpAdvice> ToEffective(Volume volume, Ratio effective, Ratio target, Mass powderBloom)
    {
        if (!(volume > Volume.Zero))
        {
            return StrengthAnswer.No<TopUpAdvice>("stock", "Say how much stock there is.");
        }

        if (!(effective >= Ratio.Zero) || !(target.Percent <= 30))
        {
            return StrengthAnswer.No<TopUpAdvice>("target", "Strengths lie between 0 and 30 %.");
        }

        double bloom = powderBloom.Grams;
        if (!(bloom >= BloomRange.Least && bloom <= BloomRange.Most))
        {
            return StrengthAnswer.No<TopUpAdvice>("bloom", "The Bloom on the packet lies between 50 and 300.");
        }

        if (target <= effective)
        {
            return StrengthAnswer.No<TopUpAdvice>("target", "It is that strong already: no powder needed.");
        }

        double grams = 10 * volume.Liters * (target.Percent - effective.Percent) * Math.Sqrt(GelStrength.ReferenceBloomGrams / bloom) / MakeItSet.PowderProtein;
        return StrengthAnswer.Of(new TopUpAdvice(Mass.FromGrams(grams), target));
    }
}
