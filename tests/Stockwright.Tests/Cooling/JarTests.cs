using Stockwright.Cooling;
using Stockwright.Cooling.Limits;
using Stockwright.Tests.Physics;
using Xunit;

namespace Stockwright.Tests.Cooling;

/// <summary>Glass jars: their measures, and what to be careful of.</summary>
public sealed class JarTests
{
    public static TheoryData<string> Ids => [.. JarSize.All.Select(size => size.Id)];

    // NIST Handbook 44, appendix C: the US liquid pint is 473.1765 mL, the quart 946.353 mL.
    [Theory]
    [InlineData("half-pint", 236.588)]
    [InlineData("pint", 473.1765)]
    [InlineData("quart", 946.353)]
    [InlineData("500ml", 500)]
    public void Sizes_hold_what_they_are_called_by(string id, double millilitres) => Close.To(millilitres, JarSize.Find(id)!.Capacity.Milliliters, 0.001);

    // Common practice, no source: mass of the glass is that of its walls (2500 kg/m3) to a tenth, and a jar is higher than wide.
    [Theory]
    [MemberData(nameof(Ids))]
    public void Glass_weighs_what_its_walls_do(string id)
    {
        JarSize size = JarSize.Find(id)!;
        double d = size.InnerDiameter.Meters;
        double walls = ((Math.PI * d * size.Height.Meters) + (Math.PI / 4 * d * d)) * size.Wall.Meters * 2500;
        Close.Relative(walls, size.Glass.Kilograms, 0.1);
        Assert.InRange(size.Height / size.InnerDiameter, 1.2, 1.8);
    }

    // NCHFP, row Juices, wide top: 1/2 in free in a pint, 1 in in a quart; smaller and metric sizes as their neighbours.
    [Theory]
    [InlineData("half-pint", 12.7)]
    [InlineData("250ml", 12.7)]
    [InlineData("pint", 12.7)]
    [InlineData("500ml", 12.7)]
    [InlineData("quart", 25.4)]
    [InlineData("1l", 25.4)]
    public void The_room_at_the_top_is_that_of_the_freezer(string id, double millimetres)
    {
        CoolingVessel jar = CoolingVessel.Jar(JarSize.Find(id)!);
        Close.To(millimetres, (jar.Capacity - jar.Usable).CubicMeters / jar.FloorArea.SquareMeters * 1000, 1e-6);

        // Ice is 9.07 % larger than the water it was (999.8 over 916.7 kg/m3): it stays below the rim.
        Assert.True(jar.Usable * (999.8 / 916.7) < jar.Capacity);
    }

    [Fact]
    public void Room_is_left_at_the_top()
    {
        CoolingVessel jar = CoolingVessel.Jar(JarSize.Find("1l")!);
        CoolingResult full = CoolingForecaster.Forecast(Cases.Pot(start: 40), CoolingMethod.Of("j", "j", Into(jar, 10, Cases.Fridge)));
        Assert.Equal("step-1-pour", Assert.Single(full.Problems).Field);
        Assert.Contains("room left", full.Problems[0].Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Smaller_jars_are_faster()
    {
        double[] hours = [.. new[] { "250ml", "500ml", "1l" }.Select(id => JarSize.Find(id)!).Select(size => CoolingForecaster.Central(
            Cases.Pot(4, 50), CoolingMethod.Of("j", "j", Into(CoolingVessel.Jar(size), (int)Math.Ceiling(4 / size.Capacity.Liters / 0.8), Cases.Air(3, 1.5)))).HoursTo(10)!.Value)];
        Assert.True(hours[0] < hours[1] && hours[1] < hours[2]);
    }

    // Soda-lime glass stands about 40 K (from memory).
    [Theory]
    [InlineData(95, true)]
    [InlineData(63, true)]
    [InlineData(61, false)]
    public void Hot_stock_into_glass_is_warned_of(double start, bool warned) => Assert.Equal(
        warned, Cautions(Cases.Pot(4, start), Into(Half, 10, Cases.Fridge)).Any(caution => caution is { Risk: JarRisk.HotIntoCold, Step: 0 }));

    [Fact]
    public void Hot_jars_into_ice_are_warned_of_and_jars_that_freeze()
    {
        Assert.Contains(Cautions(Cases.Pot(4, 50), Into(Half, 10, Cases.IceBath(6))), caution => caution.Risk == JarRisk.ColdAroundHot);
        Assert.Contains(Cautions(Cases.Pot(4, 50), Into(Half, 10, Cases.Air(-5, 4))), caution => caution.Risk == JarRisk.Freezes);
        JarCaution only = Assert.Single(Cautions(Cases.Pot(4, 50), Into(Half, 10, Cases.Fridge)));
        Assert.Equal(JarRisk.Lids, only.Risk);
        Assert.Empty(Cautions(Cases.Pot(4, 95), Cases.Stand(Cases.Fridge)));
    }

    // No way is advised that pours boiling stock into glass, or freezes jars.
    [Fact]
    public void Advice_cools_the_pot_before_it_fills_jars()
    {
        CoolingKit kit = new() { Vessels = [new OwnedVessels(Half, 40)], BlastChiller = ColdStore.BlastChiller };
        RankedMethod[] jars = [.. CoolingAdvisor.Advise(Cases.Pot(), kit, StandardLimits.Default).Ranked.Where(way => way.Vessels is not null)];
        Assert.NotEmpty(jars);
        Assert.All(jars, way => Assert.DoesNotContain(
            JarCautions.Of(Cases.Pot(), way.Forecast), caution => caution.Risk is not JarRisk.Lids));
        Assert.DoesNotContain(
            CoolingAdvisor.Advise(Cases.Pot(), kit with { HasSink = false }, StandardLimits.Default).Ranked, way => way.Vessels is not null);
    }

    private static CoolingVessel Half { get; } = CoolingVessel.Jar(JarSize.Find("500ml")!);

    private static CoolingStep Into(CoolingVessel jar, int count, CoolingPlace place) => Cases.Stand(place) with { Pour = new PourInto(jar, count) };

    private static IReadOnlyList<JarCaution> Cautions(CoolingCase stock, CoolingStep step) =>
        JarCautions.Of(stock, CoolingForecaster.Forecast(stock, CoolingMethod.Of("j", "j", step)).Forecast!);
}
