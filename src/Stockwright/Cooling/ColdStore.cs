using UnitsNet;

namespace Stockwright.Cooling;

/// <summary>A fridge, cold room or blast chiller: cold air with a machine of limited strength behind it.</summary>
public sealed record ColdStore
{
    /// <summary>Coldest and warmest air of a cold store.</summary>
    public static readonly (Temperature Least, Temperature Most) AirRange = (Temperature.FromDegreesCelsius(-40), Temperature.FromDegreesCelsius(15));

    /// <summary>Weakest and strongest machine.</summary>
    public static readonly (Power Least, Power Most) CapacityRange = (Power.FromWatts(1), Power.FromWatts(100_000));

    /// <summary>What the cook calls it.</summary>
    public required string Name { get; init; }

    /// <summary>Air temperature it holds when nothing hot stands in it, -40 to 15 °C.</summary>
    public required Temperature Air { get; init; }

    /// <summary>Speed of the air over the vessels; zero for still air.</summary>
    public Speed AirSpeed { get; init; } = Speed.Zero;

    /// <summary>Most heat the machine can take out, leak included.</summary>
    public required Power Capacity { get; init; }

    /// <summary>Heat leaking in through walls and door, W per kelvin against the room.</summary>
    public required double LeakWattsPerKelvin { get; init; }

    /// <summary>Heat capacity of air, liner, shelves and the skin of what else stands there.</summary>
    public required Entropy HeatCapacity { get; init; }

    /// <summary>True when what is in it must stay cold and the warming of the air is of concern.</summary>
    public bool HoldsOtherFood { get; init; } = true;

    /// <summary>A household fridge: still air at 4 °C, 100 W (70 to 150), 1.5 W/K (1 to 2), 50 kJ/K (30 to 80): estimates of ours.</summary>
    public static ColdStore DomesticFridge { get; } = new()
    {
        Name = "household fridge",
        Air = Temperature.FromDegreesCelsius(4),
        Capacity = Power.FromWatts(100),
        LeakWattsPerKelvin = 1.5,
        HeatCapacity = Entropy.FromKilojoulesPerKelvin(50),
    };

    /// <summary>A walk-in cold room with a fan: 1.5 m/s at 3 °C, 2 kW (1 to 3 for 10 m2, from memory).</summary>
    public static ColdStore WalkIn { get; } = new()
    {
        Name = "walk-in with fan",
        Air = Temperature.FromDegreesCelsius(3),
        AirSpeed = Speed.FromMetersPerSecond(1.5),
        Capacity = Power.FromKilowatts(2),
        LeakWattsPerKelvin = 20,
        HeatCapacity = Entropy.FromKilojoulesPerKelvin(300),
    };

    /// <summary>A blast chiller: 4 m/s at -5 °C, 3 kW (estimate).</summary>
    public static ColdStore BlastChiller { get; } = new()
    {
        Name = "blast chiller",
        Air = Temperature.FromDegreesCelsius(-5),
        AirSpeed = Speed.FromMetersPerSecond(4),
        Capacity = Power.FromKilowatts(3),
        LeakWattsPerKelvin = 10,
        HeatCapacity = Entropy.FromKilojoulesPerKelvin(100),
        HoldsOtherFood = false,
    };
}
