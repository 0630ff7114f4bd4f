using Stockwright.Kitchen;
using UnitsNet;

namespace Stockwright.Keeping;

/// <summary>What the stock is made from, for canning.</summary>
public enum CannedStock
{
    /// <summary>Meat or poultry stock.</summary>
    Meat,

    /// <summary>Fish or shellfish stock: not in the table.</summary>
    Fish,

    /// <summary>Vegetable stock: not in the table.</summary>
    Vegetable,
}

/// <summary>Gauge of a pressure canner.</summary>
public enum CannerGauge
{
    /// <summary>Dial gauge.</summary>
    Dial,

    /// <summary>Weighted gauge.</summary>
    Weighted,
}

/// <summary>A tested process.</summary>
/// <param name="Jar">Half-pint, pint or quart.</param>
/// <param name="Minutes">Process time at pressure.</param>
/// <param name="PoundsPerSquareInch">Gauge pressure, as printed.</param>
/// <param name="HeadspaceInches">Room below the rim, as printed.</param>
public sealed record CanningProcess(ContainerSize Jar, int Minutes, int PoundsPerSquareInch, int HeadspaceInches);

/// <summary>A process, or the reason there is none.</summary>
/// <param name="Process">The process, or null.</param>
/// <param name="Reason">Empty when there is a process.</param>
public sealed record CanningAnswer(CanningProcess? Process, string Reason);

/// <summary>
/// The pressure-canning table for stock, in the US units it is printed in (USDA Complete Guide to Home Canning, guide 5, meat
/// stock (broth), hot pack; copies of Michigan State University Extension 1997 and PNW361). Half-pints are processed as pints, as
/// the National Center for Home Food Preservation advises where a table begins at the pint [from memory].
/// </summary>
public static class PressureCanning
{
    /// <summary>Where the table was read.</summary>
    public const string Source = "USDA Complete Guide to Home Canning, guide 5, meat stock (broth), hot pack; as copied by Michigan State University Extension 1997 and PNW361. Half-pints as pints: advice of the National Center for Home Food Preservation, from memory";

    private const double HighestDialFeet = 8000;
    private const double LowestWeightedFeet = 1000;

    /// <summary>What to say beside every process.</summary>
    public static IReadOnlyList<string> Cautions { get; } =
    [
        "Stock is low in acid: pressure canner only. Never a boiling-water canner, never the oven: the spores of botulism stand the boil.",
        "Strained, fat taken off, boiling hot into hot jars. Nothing thickened; no jars larger than a quart.",
        "Vent the canner for 10 minutes before closing it (from memory). Follow the maker's book of your canner; have a dial gauge tested every year.",
        "When the time is up, turn off the heat and let the canner lose its pressure by itself. Do not cool it with water or open the vent: jars lose liquid, seals fail and the food may spoil (USDA Complete Guide, guide 1).",
        "A pressure cooker is not a canner unless its maker says so.",
    ];

    /// <summary>The process for a jar at an altitude.</summary>
    /// <param name="stock">What it is made from.</param>
    /// <param name="jar">Half-pint, pint or quart.</param>
    /// <param name="gauge">Dial or weighted.</param>
    /// <param name="altitude">Above sea level; below it counts as sea level.</param>
    /// <exception cref="ArgumentOutOfRangeException">The altitude is not a number.</exception>
    public static CanningAnswer For(CannedStock stock, ContainerSize jar, CannerGauge gauge, Length altitude)
    {
        double feet = altitude.Feet;
        if (double.IsNaN(feet))
        {
            throw new ArgumentOutOfRangeException(nameof(altitude), altitude, "The altitude must be a number.");
        }

        if (stock != CannedStock.Meat)
        {
            string kind = stock == CannedStock.Fish ? "fish or shellfish" : "vegetable";
            return new CanningAnswer(null, $"The table has no entry for {kind} stock, and the time for meat stock must not be used for it: freeze it.");
        }

        if (feet > HighestDialFeet)
        {
            return new CanningAnswer(null, "The table ends at 8000 ft (2438 m): freeze it, or ask your extension service.");
        }

        // A hair for metres turned into feet.
        int pounds = gauge == CannerGauge.Weighted
            ? feet <= LowestWeightedFeet + 1e-6 ? 10 : 15
            : 11 + (int)Math.Max(0, Math.Ceiling((feet - 1e-6) / 2000) - 1);
        return new CanningAnswer(new CanningProcess(jar, jar == ContainerSize.Quart ? 25 : 20, pounds, 1), "");
    }
}
