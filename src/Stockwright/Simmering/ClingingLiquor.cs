using Stockwright.Evidence;
using Stockwright.Kitchen;
using UnitsNet;

namespace Stockwright.Simmering;

/// <summary>
/// Liquor that clings to drained solids, in one kitchen (equation S.7 in docs/equations.md). How a kitchen drains is its own: in a fine sieve or
/// with a slotted spoon, for a minute or for ten. A kitchen replaces the default by weighing one colander.
/// </summary>
public static class ClingingLiquor
{
    /// <summary>Least and most drained solids a colander is weighed with.</summary>
    public static readonly (Mass Least, Mass Most) DrainedRange = (Mass.FromGrams(200), Mass.FromKilograms(100));

    /// <summary>Least and most that may come off them.</summary>
    public static readonly (Mass Least, Mass Most) CameOffRange = (Mass.FromGrams(1), Mass.FromKilograms(50));

    /// <summary>How well a weighed figure holds for the next batch, as a factor.</summary>
    private const double WeighedWithin = 1.15;

    /// <summary>
    /// Liquor that stays on wiped pieces and in their hollows, of the weight of the drained pieces (estimate; 0 to 0.02). It is added to what was
    /// weighed, and no weighed figure is known better than that.
    /// </summary>
    public static Stated<Ratio> StaysAfterWiping { get; } = new(
        Ratio.FromDecimalFractions(0.01), Ratio.Zero, Ratio.FromDecimalFractions(0.02), Provenance.Estimate, "estimate; a damp skin of a tenth of a millimetre on pieces of 5 cm, and drops in hollows");

    /// <summary>The figure of a kitchen: its own weighed one with 15 % either way, or 0.01 where that is more, or the default.</summary>
    public static Stated<Ratio> For(KitchenSite site, SimmerAssumptions? assumptions = null)
    {
        ArgumentNullException.ThrowIfNull(site);
        if (site.OwnClinging is not { } own)
        {
            return (assumptions ?? SimmerAssumptions.Standard).Clinging;
        }

        double within = Math.Max(WeighedWithin, 1 + (StaysAfterWiping.Value / own));
        return new Stated<Ratio>(own, own / within, own * within, Provenance.CookStated, "weighed in this kitchen");
    }

    /// <summary>What clings to bones, from a weighed colander of bones and meat.</summary>
    /// <param name="asDrained">Weight of the solids just strained as usual, without the colander; above zero.</param>
    /// <param name="cameOff">Weight of what then dripped and was wiped off, warm and under a cover; above zero and less than half of the first.</param>
    /// <returns>Kilograms of liquor for a kilogram of bones without it.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A weight lies outside its range.</exception>
    public static Ratio FromWeighedColander(Mass asDrained, Mass cameOff)
    {
        if (!(asDrained > Mass.Zero))
        {
            throw new ArgumentOutOfRangeException(nameof(asDrained), asDrained, "The drained solids must weigh something.");
        }

        if (!(cameOff > Mass.Zero && cameOff < asDrained / 2))
        {
            throw new ArgumentOutOfRangeException(nameof(cameOff), cameOff, "Something must come off, and less than half of what was drained.");
        }

        // Left is bare bone D and what stays on it, s D; so D = left/(1 + s), and all that clung is drained/D - 1.
        double stays = StaysAfterWiping.Value.DecimalFractions;
        return Ratio.FromDecimalFractions(((1 + stays) * asDrained.Kilograms / (asDrained - cameOff).Kilograms) - 1);
    }

    /// <summary>How many times the default clings in a kitchen; what clings to vegetables and fish moves with it (S.7).</summary>
    internal static double OverDefault(KitchenSite site, SimmerAssumptions assumptions) => For(site, assumptions).Value / assumptions.Clinging.Value;
}
