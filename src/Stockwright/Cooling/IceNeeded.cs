using UnitsNet;

namespace Stockwright.Cooling;

/// <summary>Ice for a bath or for the stock itself, by heat balance (equations C.16 and C.17 in docs/equations-cooling.md).</summary>
public static class IceNeeded
{
    /// <summary>What a bath melts beyond the stock's own heat: air, sink, and ice that never touches the pot (common practice 1.3 to 1.5).</summary>
    internal const double Surplus = 1.4;

    /// <summary>Ice whose melting takes up the heat of stock, the melt staying at 0 °C (C.16).</summary>
    /// <param name="heatCapacity">Mass times specific heat of what is cooled, above zero.</param>
    /// <param name="from">Warmer than <paramref name="to"/>.</param>
    /// <param name="to">0 °C or above.</param>
    /// <exception cref="ArgumentOutOfRangeException">The temperatures are not in that order.</exception>
    internal static Mass ToCool(Entropy heatCapacity, Temperature from, Temperature to) => from >= to && to >= Temperature.FromDegreesCelsius(0)
        ? Mass.FromKilograms(heatCapacity.JoulesPerKelvin * (from.DegreesCelsius - to.DegreesCelsius) / BathSurroundings.LatentHeat)
        : throw new ArgumentOutOfRangeException(nameof(to), to, "Ice cools from a warmer temperature to a colder one, 0 °C or above.");

    /// <summary>Ice to put in a bath: <see cref="ToCool"/> with the surplus, and what chills the bath's own water.</summary>
    /// <param name="stock">The stock.</param>
    /// <param name="from">Temperature it goes in at.</param>
    /// <param name="to">Temperature it comes out at.</param>
    /// <param name="bathWater">Tap water in the bath.</param>
    public static Mass ForBath(CoolingCase stock, Temperature from, Temperature to, Mass bathWater)
    {
        ArgumentNullException.ThrowIfNull(stock);
        double capacity = (stock.Volume.Liters * 1.0045 * 4110) + stock.Vessel.WallHeatCapacityJoulesPerKelvin;
        double water = bathWater.Kilograms * 4200 * stock.Site.TapWater.DegreesCelsius / BathSurroundings.LatentHeat;
        return (ToCool(Entropy.FromJoulesPerKelvin(capacity), from, to) * Surplus) + Mass.FromKilograms(water);
    }
}
