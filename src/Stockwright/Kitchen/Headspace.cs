using Stockwright.Evidence;
using UnitsNet;

namespace Stockwright.Kitchen;

/// <summary>Room to leave at the top of a container of liquid before freezing.</summary>
/// <param name="Height">Below the rim.</param>
/// <param name="Provenance">Grade.</param>
/// <param name="Source">Where it was read.</param>
public sealed record HeadspaceFigure(Length Height, Provenance Provenance, string Source);

/// <summary>Size of a container by US measure.</summary>
public enum ContainerSize
{
    /// <summary>US half-pint, 237 mL.</summary>
    HalfPint,

    /// <summary>US pint, 473 mL.</summary>
    Pint,

    /// <summary>US quart, 946 mL.</summary>
    Quart,
}

/// <summary>
/// Headspace for freezing stock, and what ice needs by its density. The one rule for jars: the plan's cautions, the cooling
/// of jars and the keeping page all take it from here.
/// </summary>
public static class Headspace
{
    /// <summary>Where the figures were read.</summary>
    public const string Source = "National Center for Home Food Preservation, headspace for freezing, row Juices; adapted from So Easy to Preserve, 5th ed. 2006";

    /// <summary>What to know about glass in the freezer.</summary>
    public const string GlassCaution =
        "Use straight-sided jars made for the freezer: shouldered ones crack. Cool the stock in the fridge first, and do not tighten lids until it is frozen.";

    /// <summary>Density of water at 0 °C, kg/m3.</summary>
    private const double Water = 999.8;

    /// <summary>Density of ice at 0 °C, kg/m3.</summary>
    private const double Ice = 916.7;

    /// <summary>How much water grows when it freezes: 9.07 %.</summary>
    public static Ratio IceExpansion { get; } = Ratio.FromDecimalFractions((Water / Ice) - 1);

    /// <summary>
    /// The published headspace for a thin liquid: the row Juices, for stock is no fruit in syrup or purée (the row Liquid pack,
    /// 3/4 in for a narrow pint). The table begins at the pint: a half-pint is filled as a pint is, common practice, no source.
    /// </summary>
    /// <param name="size">Half-pint, pint or quart.</param>
    /// <param name="narrowTop">True for a container that narrows at the top (a shouldered jar), false for a wide one.</param>
    /// <exception cref="ArgumentOutOfRangeException">The size is unknown.</exception>
    public static HeadspaceFigure ForFreezing(ContainerSize size, bool narrowTop)
    {
        double inches = (size, narrowTop) switch
        {
            (ContainerSize.HalfPint or ContainerSize.Pint, false) => 0.5,
            (ContainerSize.Quart, false) => 1,
            (ContainerSize.HalfPint or ContainerSize.Pint or ContainerSize.Quart, true) => 1.5,
            _ => throw new ArgumentOutOfRangeException(nameof(size), size, "Unknown size of container."),
        };
        return new HeadspaceFigure(Length.FromInches(inches), size == ContainerSize.HalfPint ? Provenance.CommonPractice : Provenance.Published, Source);
    }

    /// <summary>The rule in one sentence without its full stop, to be shown wherever jars may meet a freezer.</summary>
    /// <param name="write">Writes a length for the reader.</param>
    public static string Rule(Func<Length, string> write)
    {
        ArgumentNullException.ThrowIfNull(write);
        string Room(ContainerSize size, bool narrowTop) => write(ForFreezing(size, narrowTop).Height);
        return $"leave {Room(ContainerSize.Pint, false)} free in a wide-mouthed jar of a pint (500 mL) or less, {Room(ContainerSize.Quart, false)} in a wide quart or litre, and {Room(ContainerSize.Quart, true)} in any jar that narrows at the top";
    }

    /// <summary>Fullest a container of any size may be, so that the ice just fills it; leave a little more.</summary>
    public static Volume MostLiquid(Volume capacity) => capacity * (Ice / Water);
}
