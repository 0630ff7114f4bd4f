using Stockwright.Evidence;
using Stockwright.Kitchen;
using UnitsNet;

namespace Stockwright.Simmering;

/// <summary>Vessels that heat themselves: the heater of a slow cooker, the elements or steam jacket of a kettle (S.10 and S.11 in docs/equations.md).</summary>
public static class OwnHeat
{
    /// <summary>What a slow cooker loses to the room for each kelvin it is warmer, W/K: crock, shell and lid together.</summary>
    internal static Stated<double> SlowLoss { get; } = SimmerAssumptions.Get("slow-loss");

    /// <summary>Power on low over the power on high, in the long run.</summary>
    internal static Stated<double> LowShare { get; } = SimmerAssumptions.Get("slow-low");

    /// <summary>What the warm setting keeps it at.</summary>
    internal static Temperature Warm { get; } = Temperature.FromDegreesCelsius(SimmerAssumptions.Get("slow-warm").Value);

    /// <summary>The heater of a vessel, as a source of heat of its own.</summary>
    /// <param name="vessel">A vessel with its own heater, and the heater's power.</param>
    /// <param name="setting">How the knob of a slow cooker stands; a kettle's is turned down as a hob is.</param>
    /// <exception cref="ArgumentException">The vessel has no heater of its own, or its power is not given.</exception>
    public static Hob Of(Pot vessel, SlowCookerSetting setting)
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
            RatedPower = slow && setting == SlowCookerSetting.Low ? Power.FromWatts((double)rated.Watts * LowShare.Value) : rated,
        };
    }
}
