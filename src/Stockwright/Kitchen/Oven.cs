using UnitsNet;

namespace Stockwright.Kitchen;

/// <summary>A tray the cook owns.</summary>
/// <param name="Id">Stable name used in links.</param>
/// <param name="Name">What the cook calls it, or its standard size.</param>
/// <param name="InnerLength">Inside length.</param>
/// <param name="InnerWidth">Inside width.</param>
/// <param name="Count">How many are owned.</param>
public sealed record Tray(string Id, string Name, Length InnerLength, Length InnerWidth, int Count)
{
    /// <summary>Shortest and longest side accepted, inside.</summary>
    public static readonly (Length Least, Length Most) SideRange = (Length.FromCentimeters(5), Length.FromMeters(3));

    /// <summary>Fewest and most of one size accepted.</summary>
    public static readonly (int Least, int Most) CountRange = (1, 1000);

    /// <summary>Area for one layer.</summary>
    public Area Area => InnerLength * InnerWidth;
}

/// <summary>The oven: how many trays go in at once, and whether it blows.</summary>
/// <param name="Id">Stable name used in links.</param>
/// <param name="Name">What the cook calls it.</param>
/// <param name="HasFan">True for a fan (convection) oven.</param>
/// <param name="Levels">Shelves that can be used at once.</param>
/// <param name="ShelfLength">Usable shelf length.</param>
/// <param name="ShelfWidth">Usable shelf width.</param>
public sealed record Oven(string Id, string Name, bool HasFan, int Levels, Length ShelfLength, Length ShelfWidth)
{
    /// <summary>Fewest and most shelves accepted.</summary>
    public static readonly (int Least, int Most) LevelsRange = (1, 40);

    /// <summary>Shortest and longest side of a shelf accepted.</summary>
    public static readonly (Length Least, Length Most) ShelfRange = (Length.FromCentimeters(10), Length.FromMeters(3));
}
