using Stockwright.Kitchen;
using Stockwright.Physics;

namespace Stockwright.Simmering;

/// <summary>Air pressure at a kitchen: measured, or from its altitude.</summary>
internal static class Air
{
    public static double PressurePascals(KitchenSite site) =>
        site.MeasuredPressure?.Pascals ?? StandardAtmosphere.PressurePascals(site.Altitude.Meters);
}
