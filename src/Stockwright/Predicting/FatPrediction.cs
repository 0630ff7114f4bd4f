using Stockwright.Evidence;
using UnitsNet;

namespace Stockwright.Predicting;

/// <summary>How the fat is taken off.</summary>
public enum DefatMethod
{
    /// <summary>Ladled off hot.</summary>
    Ladle,

    /// <summary>Poured from under it in a separating jug.</summary>
    Jug,

    /// <summary>Chilled overnight and lifted off as a cap.</summary>
    Chill,
}

/// <summary>Share of the free fat each way takes off.</summary>
public static class DefatMethods
{
    /// <summary>Fat beaten into the stock that no way of skimming takes, by mass of stock (estimate; SR28 has 0.09 g in 100 g of defatted beef stock).</summary>
    internal static Stated<Ratio> Emulsified { get; } = State(0.001, 0.0005, 0.002);

    /// <summary>Share of the free fat taken off (estimate).</summary>
    public static Stated<Ratio> Share(DefatMethod method) => method switch
    {
        DefatMethod.Ladle => State(0.70, 0.60, 0.80),
        DefatMethod.Jug => State(0.925, 0.90, 0.95),
        DefatMethod.Chill => State(0.98, 0.97, 0.99),
        _ => throw new ArgumentOutOfRangeException(nameof(method), method, "Unknown way of taking off fat."),
    };

    private static Stated<Ratio> State(double value, double low, double high) => new(
        Ratio.FromDecimalFractions(value), Ratio.FromDecimalFractions(low), Ratio.FromDecimalFractions(high), Provenance.Estimate, "Estimate, no measurement found");
}

/// <summary>Where the fat goes (equations B.18 to B.20).</summary>
public sealed record FatPrediction
{
    /// <summary>Density of liquid fat near 20 °C [from memory, 0.915 to 0.92 kg/L].</summary>
    public static Density Density { get; } = Density.FromKilogramsPerLiter(0.918);

    /// <summary>Left on the roasting tray.</summary>
    public required Mass DrainedInRoast { get; init; }

    /// <summary>Come free in the pot.</summary>
    public required Mass Freed { get; init; }

    /// <summary>How it is taken off.</summary>
    public required DefatMethod Method { get; init; }

    /// <summary>Taken off by that way.</summary>
    public required Mass Recovered { get; init; }

    /// <summary>Left in the stock.</summary>
    public required Mass Left { get; init; }

    /// <summary>Thickness of the cap on the strained stock before it is taken off, in <see cref="ContainerDiameter"/>.</summary>
    public required Length CapThickness { get; init; }

    /// <summary>Inner diameter of the container.</summary>
    public required Length ContainerDiameter { get; init; }

    /// <summary>Volume of the recovered fat.</summary>
    public Volume RecoveredVolume => Recovered / Density;

    /// <summary>What each way would take off.</summary>
    public Mass RecoveredBy(DefatMethod method) => Floating * DefatMethods.Share(method).Value.DecimalFractions;

    /// <summary>Fat that floats: freed less what is beaten in.</summary>
    public required Mass Floating { get; init; }
}
