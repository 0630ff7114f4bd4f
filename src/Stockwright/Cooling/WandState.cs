namespace Stockwright.Cooling;

/// <summary>A frozen wand standing in the stock (equation C.10 in docs/equations-cooling.md).</summary>
internal sealed class WandState
{
    private const double Conductance = 12;
    private const double IceSpecificHeat = 2050;
    private const double WaterSpecificHeat = 4190;

    private readonly double kilograms;
    private readonly double factor;
    private double enthalpy;

    internal WandState(FrozenWand wand, double factor)
    {
        kilograms = wand.Water.Kilograms;
        this.factor = factor;
        enthalpy = kilograms * ((IceSpecificHeat * wand.Start.DegreesCelsius) - BathSurroundings.LatentHeat);
    }

    private double Celsius
    {
        get
        {
            double perKilogram = enthalpy / kilograms;
            return perKilogram < -BathSurroundings.LatentHeat
                ? (perKilogram + BathSurroundings.LatentHeat) / IceSpecificHeat
                : Math.Max(0, perKilogram / WaterSpecificHeat);
        }
    }

    /// <summary>What it takes for every kelvin the stock is warmer, W/K.</summary>
    internal double WattsPerKelvin => Conductance * factor;

    /// <summary>Takes heat from stock for a step and returns the mean power, W.</summary>
    internal double Take(double stockCelsius, double seconds)
    {
        // The melted layer stands in the way: half the conductance once half is melted.
        double melted = Math.Clamp(1 + (enthalpy / kilograms / BathSurroundings.LatentHeat), 0, 1);
        double conductance = Conductance * factor * (1 - Math.Min(0.5, melted));
        bool melting = enthalpy <= 0 && enthalpy >= -kilograms * BathSurroundings.LatentHeat;
        double capacity = kilograms * (enthalpy > 0 ? WaterSpecificHeat : IceSpecificHeat);
        double watts = conductance * (stockCelsius - Celsius) / (melting ? 1 : 1 + (conductance * seconds / capacity));
        enthalpy += watts * seconds;
        return watts;
    }
}
