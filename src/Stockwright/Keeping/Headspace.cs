using Stockwright.Evidence;
using UnitsNet;

namespace Stockwright.Keeping;

/// <summary>Room to leave at the top of a container of liquid before freezing.</summary>
/// <param name="Height">Below the rim.</param>
/// <param name="Provenance">Grade.</param>
/// <param name="Source">Where it was read.</param>
public sealed record HeadspaceFigure(Length Height, Provenance Provenance, string Source);

/// <summary>Size of a container by US measure.</summary>
public enum ContainerSize
{
    /// <summary>US pint, 473 mL.</summary>
    Pint,

    /// <summary>US quart, 946 mL.</summary>
    Quart,
}

/// <summary>Headspace for freezing liquid, and what ice needs by its density.</summary>
public static class Headspace
{
    /// <summary>Density of water at 0 °C, kg/m3.</summary>
    private const double Water = 999.8;

    /// <summary>Density of ice at 0 °C, kg/m3.</summary>
    private const double Ice = 916.7;

    /// <summary>What to know about glass in the freezer.</summary>
    public const string GlassCaution =
        "Use straight-sided jars made for the freezer: shouldered ones crack. Cool the stock in the fridge first, and do not tighten lids until it is frozen.";

    /// <summary>How much water grows when it freezes: 9.07 %.</summary>
    public static Ratio IceExpansion { get; } = Ratio.FromDecimalFractions((Water / Ice) - 1);

    /// <summary>The published headspace for a liquid pack.</summary>
    /// <param name="size">Pint or quart.</param>
    /// <param name="narrowTop">True for a narrow-topped container (a shouldered jar), false for a wide one.</param>
    /// <exception cref="ArgumentOutOfRangeException">The size is unknown.</exception>
    public static HeadspaceFigure ForFreezing(ContainerSize size, bool narrowTop)
    {
        double inches = (size, narrowTop) switch
        {
            (ContainerSize.Pint, false) => 0.5,
            (ContainerSize.Quart, false) => 1,
            (ContainerSize.Pint, true) => 0.75,
            (ContainerSize.Quart, true) => 1.5,
            _ => throw new ArgumentOutOfRangeException(nameof(size), size, "Unknown size of container."),
        };
        return new HeadspaceFigure(Length.FromInches(inches), Provenance.Published, "National Center for Home Food Preservation, adapted from So Easy to Preserve, 2006");
    }

    /// <summary>Fullest a container of any size may be, so that the ice just fills it; leave a little more.</summary>
    public static Volume MostLiquid(Volume capacity) => capacity * (Ice / Water);
}
