namespace Stockwright.Cooling;

/// <summary>What the vessels stand in: takes their heat and may warm (equations C.6 to C.8 in docs/equations-cooling.md).</summary>
internal abstract class Surroundings
{
    /// <summary>Nearer than this they cannot be carried far past the stock, and shorter steps would only cost time.</summary>
    protected const double LeastDifferenceKelvins = 0.1;

    private double lastRise;
    private double lastSeconds;

    /// <summary>Temperature now, C.</summary>
    internal abstract double Celsius { get; }

    /// <summary>Temperature half way through the coming step, carried on from the last; never further than that one moved.</summary>
    internal double MidCelsius(double seconds)
    {
        double half = lastSeconds > 0 ? lastRise * Math.Min(1, seconds / 2 / lastSeconds) : 0;
        return Celsius + half;
    }

    /// <summary>Longest step in which what the stock gives, taken as fixed, cannot carry them past it.</summary>
    /// <param name="stockCelsius">Warmest part of the stock.</param>
    internal virtual double LongestStepSeconds(double stockCelsius) => double.PositiveInfinity;

    /// <summary>Takes heat during a step; returns seconds into the step at which ice gave out, or null.</summary>
    internal double? Take(double joules, double seconds)
    {
        double before = Celsius;
        double? gone = Absorb(joules, seconds);
        lastRise = gone is null ? Celsius - before : 0;
        lastSeconds = seconds;
        return gone;
    }

    protected abstract double? Absorb(double joules, double seconds);
}

/// <summary>Surroundings too large to warm: room air, a running tap.</summary>
internal sealed class ConstantSurroundings(double celsius) : Surroundings
{
    internal override double Celsius => celsius;

    protected override double? Absorb(double joules, double seconds) => null;
}

/// <summary>A bath of water, with or without ice, warmed by the pot and a little by the room (C.6, C.7).</summary>
internal sealed class BathSurroundings : Surroundings
{
    internal const double LatentHeat = 333600;
    private const double WaterSpecificHeat = 4200;
    private const double TellingDifferenceKelvins = 2;

    private readonly double kilograms;
    private readonly double roomCelsius;
    private readonly double roomWattsPerKelvin;
    private double enthalpy;
    private double load;
    private double wattsPerKelvin;

    internal BathSurroundings(double iceKilograms, double waterKilograms, double tapCelsius, double roomCelsius)
    {
        kilograms = iceKilograms + waterKilograms;
        this.roomCelsius = roomCelsius;

        // About 10 W/m2K over the bath's outside; 3 W/K at 10 kg.
        roomWattsPerKelvin = 3 * Math.Cbrt(kilograms * kilograms / 110);
        enthalpy = (waterKilograms * WaterSpecificHeat * tapCelsius) - (iceKilograms * LatentHeat);
        StartIceKilograms = IceKilograms;
    }

    internal override double Celsius => Math.Max(0, enthalpy / (kilograms * WaterSpecificHeat));

    /// <summary>Ice left, kg.</summary>
    internal double IceKilograms => Math.Max(0, -enthalpy / LatentHeat);

    /// <summary>Ice left once the tap water has been chilled by it.</summary>
    internal double StartIceKilograms { get; }

    /// <summary>Load over difference is the pace at which a small bath nears the stock, told while they differ enough to tell; ice holds it where it is.</summary>
    internal override double LongestStepSeconds(double stockCelsius)
    {
        double difference = stockCelsius - Celsius;
        if (Math.Abs(difference) > TellingDifferenceKelvins)
        {
            wattsPerKelvin = Math.Abs(load / difference);
        }

        return wattsPerKelvin > 0 && enthalpy > 0 ? kilograms * WaterSpecificHeat / wattsPerKelvin : double.PositiveInfinity;
    }

    protected override double? Absorb(double joules, double seconds)
    {
        load = joules / seconds;
        double before = enthalpy;
        enthalpy += joules + (roomWattsPerKelvin * (roomCelsius - MidCelsius(seconds)) * seconds);
        return before < 0 && enthalpy >= 0 ? seconds * before / (before - enthalpy) : null;
    }
}

/// <summary>The air of a cold store, held by a machine of limited strength (C.8).</summary>
internal sealed class StoreSurroundings : Surroundings
{
    private const double StepShare = 0.3;

    private readonly double holds;
    private readonly double room;
    private readonly double leak;
    private readonly double capacity;
    private readonly double machineWatts;
    private readonly double gain;
    private double celsius;
    private double load;

    internal StoreSurroundings(ColdStore store, double roomCelsius, double machineFactor, double leakFactor)
    {
        holds = store.Air.DegreesCelsius;
        celsius = holds;
        room = roomCelsius;
        leak = store.LeakWattsPerKelvin * leakFactor;
        capacity = store.HeatCapacity.JoulesPerKelvin;

        // At the weak edge of the band it still holds its temperature empty: it does so in this kitchen.
        machineWatts = Math.Max((double)store.Capacity.Watts * machineFactor, leak * (roomCelsius - holds) * 1.05);
        gain = machineWatts / 2;
    }

    internal override double Celsius => celsius;

    /// <summary>Load over difference is the pace at which the air nears the stock, and steam makes it up to twice as fast near the boil.</summary>
    internal override double LongestStepSeconds(double stockCelsius) =>
        load > 0 ? StepShare * capacity * Math.Max(LeastDifferenceKelvins, stockCelsius - celsius) / load : double.PositiveInfinity;

    protected override double? Absorb(double joules, double seconds)
    {
        load = joules / seconds;
        int parts = Math.Max(1, (int)Math.Ceiling(seconds * (gain + leak) / capacity * 2));
        double part = seconds / parts;
        for (int i = 0; i < parts; i++)
        {
            double wanted = (leak * (room - holds)) + (gain * (celsius - holds));
            double taken = Math.Clamp(wanted, 0, machineWatts);
            double slope = leak + (wanted > 0 && wanted < machineWatts ? gain : 0);
            celsius += part * (load + (leak * (room - celsius)) - taken) / (capacity + (part * slope));
        }

        return null;
    }
}
