using Stockwright.Cooling;
using Stockwright.Kitchen;
using Stockwright.Measures;

namespace Stockwright.Web.Features.Cooling;

/// <summary>Cautions about glass jars as a cook reads them.</summary>
internal static class JarText
{
    public static string Of(JarCaution caution, UnitSystem units) => caution.Risk switch
    {
        JarRisk.HotIntoCold =>
            $"Stock at {KitchenFormat.Text(caution.Hot!.Value, units)} cracks a jar at {KitchenFormat.Text(caution.Cold!.Value, units)}: plain glass stands a jump of about {KitchenFormat.Text(JarSize.ShockLimit, units)} (from memory). Cool it below {KitchenFormat.Text(caution.Cold.Value + JarSize.ShockLimit, units)} in the pot first, or warm the jars in hot water.",
        JarRisk.ColdAroundHot =>
            $"Never stand glass at {KitchenFormat.Text(caution.Hot!.Value, units)} in water at {KitchenFormat.Text(caution.Cold!.Value, units)}: it cracks. Chill the stock in the pot, then fill the jars.",
        JarRisk.Freezes =>
            $"Stock freezes in these jars, and ice is a tenth larger: {Headspace.Rule(length => KitchenFormat.Text(length, units))} ({Headspace.Source}). {Headspace.GlassCaution}",
        _ =>
            "Counted with the room the freezer needs left at the top of each jar. Lay the lids on loose and close them once it is cold: sealed warm, the middle stays in the danger zone without air. A lid that sucks down is not canning: these jars belong in the fridge.",
    };
}
