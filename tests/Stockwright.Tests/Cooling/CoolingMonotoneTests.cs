using CsCheck;
using Stockwright.Cooling;
using Stockwright.Kitchen;
using UnitsNet;
using Xunit;

namespace Stockwright.Tests.Cooling;

/// <summary>Which way a forecast must move when one thing changes: plain physics, no source needed.</summary>
public sealed class CoolingMonotoneTests
{
    [Fact]
    public void More_ice_is_no_slower_and_longer_cold() => Gen.Select(Gen.Double[4, 15], Gen.Double[2, 8]).Sample(
        (litres, ice) => Hours(Cases.Pot(litres), Cases.In(Cases.IceBath(ice)), 30) >= Hours(Cases.Pot(litres), Cases.In(Cases.IceBath(ice * 1.4)), 30) - 0.003,
        iter: 20,
        threads: 2);

    [Fact]
    public void Shallower_pans_are_faster() => Gen.Double[6, 12].Sample(
        litres => Poured(litres, 2) > Poured(litres, 3) && Poured(litres, 3) > Poured(litres, 5),
        iter: 10,
        threads: 2);

    [Fact]
    public void Colder_air_is_faster() => Gen.Select(Gen.Double[2, 15], Gen.Double[-4, 5]).Sample(
        (litres, air) => Hours(Cases.Pot(litres), Cases.In(Cases.Air(air, 1)), 21) > Hours(Cases.Pot(litres), Cases.In(Cases.Air(air - 3, 1)), 21),
        iter: 15,
        threads: 2);

    [Fact]
    public void Faster_air_is_faster() => Gen.Select(Gen.Double[2, 15], Gen.Double[1, 4]).Sample(
        (litres, speed) => Hours(Cases.Pot(litres), Cases.In(Cases.Air(3, speed)), 21) > Hours(Cases.Pot(litres), Cases.In(Cases.Air(3, speed * 1.3)), 21),
        iter: 15,
        threads: 2);

    [Fact]
    public void A_lid_slows_it() => Gen.Double[2, 20].Sample(
        litres => Hours(Cases.Pot(litres), Cases.In(Cases.Bench), 40)
            < Hours(Cases.Pot(litres), CoolingMethod.Of("l", "l", Cases.Stand(Cases.Bench) with { Lid = LidPosition.On }), 40),
        iter: 15,
        threads: 2);

    [Fact]
    public void Stirring_speeds_an_ice_bath() => Gen.Double[4, 15].Sample(
        litres => Hours(Cases.Pot(litres), Cases.Of(Cases.Stirred(Cases.IceBath(20))), 25) < Hours(Cases.Pot(litres), Cases.In(Cases.IceBath(20)), 25),
        iter: 15,
        threads: 2);

    [Fact]
    public void More_stock_takes_longer() => Gen.Double[3, 12].Sample(
        litres => Hours(Cases.Pot(litres), Cases.In(Cases.Fridge), 30) < Hours(Cases.Pot(litres * 1.2), Cases.In(Cases.Fridge), 30),
        iter: 15,
        threads: 2);

    [Fact]
    public void A_wand_helps_and_two_help_more() => Assert.True(Wands(0) > Wands(1) && Wands(1) > Wands(2));

    [Fact]
    public void The_band_holds_the_central_course() => Gen.Select(Gen.Double[3, 15], Gen.OneOfConst(Cases.Bench, Cases.Fridge, Cases.IceBath(20), Cases.Air(3, 1.5))).Sample(
        (litres, place) =>
        {
            (TimeSpan? fast, TimeSpan? central, TimeSpan? slow) = CoolingForecaster.Forecast(Cases.Pot(litres), Cases.In(place)).Forecast!.TimeTo(Temperature.FromDegreesCelsius(35));
            return fast < central && central < slow;
        },
        iter: 15,
        threads: 2);

    [Fact]
    public void Setting_earlier_is_slower() =>
        Assert.True(Setting(26) > Setting(18) && Setting(18) > Setting(10));

    private static double Hours(CoolingCase stock, CoolingMethod method, double celsius) =>
        CoolingForecaster.Central(stock, method).HoursTo(celsius) ?? double.PositiveInfinity;

    private static double Poured(double litres, int pans) =>
        Hours(Cases.Pot(litres), CoolingMethod.Of("p", "p", Cases.Stand(Cases.Air(3, 1.5)) with { Pour = Cases.Pans(pans, 10) }), 10);

    private static double Wands(int count) =>
        Hours(Cases.Pot(), CoolingMethod.Of("w", "w", Cases.Stand(Cases.Fridge) with { Wands = count }), 40);

    private static double Setting(double celsius)
    {
        Temperature at = Temperature.FromDegreesCelsius(celsius);
        return Hours(Cases.Pot() with { Setting = new(at, at, at, Stockwright.Evidence.Provenance.Estimate, "test") }, Cases.In(Cases.Air(2, 2)), 8);
    }
}
