using Stockwright.Cooling;
using UnitsNet;
using Xunit;

namespace Stockwright.Tests.Cooling;

/// <summary>The list of bad input: each is refused in plain words, at its field, and nothing is clamped in silence.</summary>
public sealed class CoolingBadInputTests
{
    [Fact]
    public void Ice_below_nothing() => Refused("step-1-ice", Cases.Pot(), Cases.In(Cases.IceBath(-1)));

    [Fact]
    public void A_fridge_warmer_than_the_stock() => Refused("step-1-air", Cases.Pot(5, 8), Cases.In(new CoolingPlace.ColdAir(ColdStore.DomesticFridge with { Air = Temperature.FromDegreesCelsius(12) })));

    [Fact]
    public void A_fridge_that_cannot_hold_itself_cold() =>
        Refused("step-1-watts", Cases.Pot(), Cases.In(new CoolingPlace.ColdAir(ColdStore.DomesticFridge with { Capacity = Power.FromWatts(10) })));

    [Fact]
    public void More_stock_than_the_pans_hold() => Refused("step-1-pour", Cases.Pot(40), CoolingMethod.Of("p", "p", Cases.Stand(Cases.Fridge) with { Pour = Cases.Pans(2) }));

    [Fact]
    public void No_pans() => Refused("step-1-count", Cases.Pot(), CoolingMethod.Of("p", "p", Cases.Stand(Cases.Fridge) with { Pour = Cases.Pans(0) }));

    [Fact]
    public void So_much_ice_that_the_stock_would_freeze() =>
        Refused("step-1-added-ice", Cases.Pot(4, 20), CoolingMethod.Of("p", "p", Cases.Stand(Cases.Bench) with { IceAdded = Mass.FromKilograms(1.5) }));

    [Fact]
    public void A_step_without_an_end_before_another() => Refused("step-1-minutes", Cases.Pot(), new CoolingMethod("s", "s", [Cases.Stand(Cases.Bench), Cases.Stand(Cases.Fridge)]));

    [Fact]
    public void No_steps() => Refused("steps", Cases.Pot(), new CoolingMethod("s", "s", []));

    [Theory]
    [InlineData(-3)]
    [InlineData(0)]
    [InlineData(9999)]
    public void Volumes_no_pot_holds(double litres) => Refused("litres", Cases.Pot() with { Volume = Volume.FromLiters(litres) }, Cases.In(Cases.Bench));

    [Theory]
    [InlineData(-3)]
    [InlineData(140)]
    public void Starts_no_stock_has(double celsius) => Refused("start", Cases.Pot() with { Start = Temperature.FromDegreesCelsius(celsius) }, Cases.In(Cases.Bench));

    [Fact]
    public void A_wand_that_is_not_frozen() => Refused(
        "step-1-wand-start",
        Cases.Pot(),
        CoolingMethod.Of("w", "w", Cases.Stand(Cases.Bench) with { Wands = 1, Wand = FrozenWand.TwoLitres with { Start = Temperature.FromDegreesCelsius(3) } }));

    [Fact]
    public void Curves_must_rise_in_time_and_hold_a_reading()
    {
        Assert.Throws<ArgumentException>(() => new CoolingCurve([]));
        CoolingPoint point = new(TimeSpan.Zero, Temperature.FromDegreesCelsius(50));
        Assert.Throws<ArgumentException>(() => new CoolingCurve([point, point]));
        Assert.Throws<ArgumentException>(() => new CoolingCurve([point with { Temperature = Temperature.FromDegreesCelsius(400) }]));
    }

    private static void Refused(string field, CoolingCase stock, CoolingMethod method)
    {
        CoolingResult result = CoolingForecaster.Forecast(stock, method);
        Assert.Null(result.Forecast);
        CoolingProblem problem = Assert.Single(result.Problems);
        Assert.Equal(field, problem.Field);
        Assert.EndsWith(".", problem.Message, StringComparison.Ordinal);
    }
}
