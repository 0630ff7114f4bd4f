using Stockwright.Evidence;
using UnitsNet;

namespace Stockwright.Measures;

/// <content>Levels in a pot: whatever their size in one unit and one precision, so that a list of them reads down.</content>
public static partial class KitchenFormat
{
    /// <summary>A ruler held in a hot pot is good to an eighth of an inch (common practice, no source).</summary>
    private const int LevelEighths = 8;

    /// <summary>A level or depth: "83 mm", "133 mm", "3¼ in"; whole millimetres, or eighths of an inch.</summary>
    public static string Level(Length depth, UnitSystem system) => system == UnitSystem.UsCustomary
        ? Unit(Fraction(depth.Millimeters / ExactFactors.InchMillimetres, LevelEighths), "in")
        : Unit(Math.Round(depth.Millimeters, MidpointRounding.AwayFromZero), "mm");

    /// <summary>A band of levels: "95 to 112 mm", "3¾ to 4⅜ in"; one figure where both ends read alike.</summary>
    public static string Level(Band<Length> band, UnitSystem system)
    {
        string low = Level(band.Low, system);
        string high = Level(band.High, system);
        return string.Equals(low, high, StringComparison.Ordinal) ? high : $"{low[..low.LastIndexOf(Gap)]} to {high}";
    }

    /// <summary>Metric with US beside: "133 mm (5¼ in)".</summary>
    internal static string LevelBoth(Length depth) => Beside(Level(depth, UnitSystem.Metric), Level(depth, UnitSystem.UsCustomary));
}
