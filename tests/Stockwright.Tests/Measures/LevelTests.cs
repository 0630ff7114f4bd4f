using Stockwright.Evidence;
using Stockwright.Measures;
using UnitsNet;
using Xunit;
using UnitSystem = Stockwright.Measures.UnitSystem;

namespace Stockwright.Tests.Measures;

/// <summary>Levels of one list are in one unit and one precision.</summary>
public sealed class LevelTests
{
    // 25.4 mm to the inch: 83 mm are 3.268 in, 133 mm 5.236, 15 mm 0.591, 300 mm 11.811.
    [Theory]
    [InlineData(15, "15 mm", "⅝ in")]
    [InlineData(83, "83 mm", "3¼ in")]
    [InlineData(99.6, "100 mm", "3⅞ in")]
    [InlineData(133, "133 mm", "5¼ in")]
    [InlineData(300, "300 mm", "11¾ in")]
    [InlineData(-4, "−4 mm", "−⅛ in")]
    public void A_level_keeps_its_unit(double millimetres, string metric, string us)
    {
        Length level = Length.FromMillimeters(millimetres);
        Assert.Equal(metric, Plain(KitchenFormat.Level(level, UnitSystem.Metric)));
        Assert.Equal(us, Plain(KitchenFormat.Level(level, UnitSystem.UsCustomary)));
        Assert.Equal($"{metric} ({us})", Plain(KitchenFormat.LevelBoth(level)));
    }

    [Theory]
    [InlineData(95, 112, "95 to 112 mm", "3¾ to 4⅜ in")]
    [InlineData(112, 112.3, "112 mm", "4⅜ in")]
    public void So_does_a_band(double low, double high, string metric, string us)
    {
        Band<Length> band = new(Length.FromMillimeters(low), Length.FromMillimeters((low + high) / 2), Length.FromMillimeters(high));
        Assert.Equal(metric, Plain(KitchenFormat.Level(band, UnitSystem.Metric)));
        Assert.Equal(us, Plain(KitchenFormat.Level(band, UnitSystem.UsCustomary)));
    }

    private static string Plain(string text) => text.Replace('\u00A0', ' ');
}
