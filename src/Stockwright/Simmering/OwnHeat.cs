using Stockwright.Kitchen;
using UnitsNet;

namespace Stockwright.Simmering;

/// <summary>Vessels that heat themselves: the heater of a slow cooker, the elements or steam jacket of a kettle (S.10 and S.11 in docs/equations.md).</summary>
public static class OwnHeat
{
    /// <summary>What the warm setting keeps it at.</summary>
    internal static Temperature Warm { get; } = Temperature.FromDegreesCelsius(SimmerAssumptions.Standard.Get("slow-warm").Value);

    /// <summary>The heater of a vessel, as a source of heat of its own.</summary>
    /// <param name="vessel">A vessel with its own heater, and the heater's power.</param>
    /// <param name="setting">How the knob of a slow cooker stands; a kettle's is turned down as a hob is.</param>
    /// <param name="assumptions">The figures; null for the standard ones.</param>
    /// <exception cref="ArgumentException">The vessel has no heater of its own, or its power is not given.</exception>
    public static Hob Of(Pot vessel, SlowCookerSetting setting, SimmerAssumptions? assumptions = null)
    {
        ArgumentNullException.ThrowIfNull(vessel);
        if (!vessel.HasOwnHeater || vessel.HeaterPower is not { } rated)
        {
            throw new ArgumentException("A vessel that heats itself has a heater of a known power.", nameof(vessel));
        }

        bool slow = vessel.Kind == PotKind.SlowCooker;
        return new Hob
        {
            Id = "own-heater",
            Name = slow ? setting == SlowCookerSetting.Low ? "its own heater, on low" : "its own heater, on high" : "its own heater",
            Kind = slow ? HobKind.Crock : HobKind.Jacket,
            RatedPower = slow && setting == SlowCookerSetting.Low ? Power.FromWatts((double)rated.Watts * (assumptions ?? SimmerAssumptions.Standard).Get("slow-low").Value) : rated,
        };
    }
}
