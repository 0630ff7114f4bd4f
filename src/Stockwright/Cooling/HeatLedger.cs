using UnitsNet;

namespace Stockwright.Cooling;

/// <summary>Heat above 0 C as it goes by, J; becomes <see cref="CoolingBooks"/> at the end.</summary>
internal sealed class HeatLedger(double atStart)
{
    /// <summary>Brought by ice, water, fresh vessels and lids.</summary>
    internal double Added { get; set; }

    /// <summary>Given to air, bench and bath.</summary>
    internal double ToSurroundings { get; set; }

    /// <summary>Carried off by steam.</summary>
    internal double Steam { get; set; }

    /// <summary>Taken up by wands.</summary>
    internal double ToWands { get; set; }

    /// <summary>Left in vessels poured out of.</summary>
    internal double LeftBehind { get; set; }

    /// <summary>Gone with lids taken off.</summary>
    internal double WithLids { get; set; }

    /// <summary>The balance, once it is over.</summary>
    /// <param name="held">By stock, vessels and lids.</param>
    internal CoolingBooks Close(double held) => new(
        Energy.FromJoules(atStart),
        Energy.FromJoules(Added),
        Energy.FromJoules(ToSurroundings),
        Energy.FromJoules(Steam),
        Energy.FromJoules(ToWands),
        Energy.FromJoules(LeftBehind),
        Energy.FromJoules(WithLids),
        Energy.FromJoules(held));
}
