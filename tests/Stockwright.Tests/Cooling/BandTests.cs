using Stockwright.Cooling;
using Stockwright.Evidence;
using Stockwright.Kitchen;
using Stockwright.Tests.Physics;
using UnitsNet;
using Xunit;

namespace Stockwright.Tests.Cooling;

/// <summary>The band of a course from the stated ranges of its inputs (equation C.15), those that are independent in quadrature.</summary>
public sealed class BandTests
{
    private static readonly CoolingPlace Running = new CoolingPlace.TapSink(true, Mass.Zero);

    // Arithmetic: what alone costs 0.03 and 0.04 costs 0.05 together, so the one goes 0.6 of its way and the other 0.8.
    [Fact]
    public void What_is_independent_adds_up_in_quadrature()
    {
        BandInput[] inputs = [Input(1, 1), Input(1, 0.5)];
        double[] slow = CoolingBand.Weights(inputs, [0.03, 0.04], -1);
        Close.To(0.6, slow[0], 1e-12);
        Close.To(0.8, slow[1], 1e-12);

        // Towards the fast end the second goes half as far: 0.03 and 0.02.
        double[] fast = CoolingBand.Weights(inputs, [0.03, 0.04], 1);
        Close.To(0.03 / Math.Sqrt(0.0013), fast[0], 1e-12);
        Close.To(0.02 / Math.Sqrt(0.0013), fast[1], 1e-12);
    }

    [Fact]
    public void What_does_nothing_stays_in_the_middle() => Assert.Equal([0.0, 0.0], CoolingBand.Weights([Input(1, 1), Input(0, 0)], [0, 0], -1));

    // Worked by hand for a pot in running tap water, stirred all the time, from 95 to 40 °C in 15 °C: one body, 1/U = 1/1000 + 0.001/15 + 1/600,
    // side 4 V/D, floor at half of U. The slow ends: film of the stock 0.8, of the water 400/600, floor 0.5, sizes 0.95. What leaves by the surface is
    // some 5 %, all of it steam or nearly, at the slow end half of that.
    [Fact]
    public void A_band_worked_by_hand()
    {
        CoolingForecast forecast = CoolingForecaster.Forecast(Cases.Pot(), Cases.Of(Cases.Stand(Running) with { StockStirring = Stirring.AllTheTime })).Forecast!;
        double diameter = Cases.Pot().Vessel.Diameter!.Value.Meters;
        double side = 4 * 0.010 / diameter;
        double floor = Math.PI / 4 * diameter * diameter / 2;
        double still = (1.0 / 1000) + (0.001 / 15) + (1.0 / 600);
        double inside = Math.Log((still + (0.25 / 1000)) / still);
        double water = Math.Log((still + (0.5 / 600)) / still);
        double under = Math.Log((side + floor) / (side + (floor / 2)));
        double sizes = Math.Log(1 / 0.95);
        double expected = Math.Exp(Math.Sqrt((inside * inside) + (water * water) + (under * under) + (sizes * sizes) + (0.025 * 0.025)));
        Assert.InRange(expected, 1.3, 1.4);
        (TimeSpan? _, TimeSpan? central, TimeSpan? slow) = forecast.TimeTo(Temperature.FromDegreesCelsius(40));
        Close.Relative(expected, slow!.Value / central!.Value, 0.03);
    }

    // The middle of a forecast is the course of the middle of all inputs, whatever their ranges.
    [Fact]
    public void The_middle_is_not_moved_by_the_band()
    {
        CoolingMethod method = Cases.In(Cases.Bench);
        CoolingCase narrow = Cases.Pot() with { Film = new Stated<double>(0.8, 0.8, 0.8, Provenance.Estimate, "test") };
        CoolingCase wide = Cases.Pot() with { Film = new Stated<double>(0.8, 0.1, 1.5, Provenance.Estimate, "test") };
        Assert.Equal(CoolingForecaster.Central(narrow, method).Samples, CoolingForecaster.Forecast(narrow, method).Forecast!.Central.Samples);
        Assert.Equal(CoolingForecaster.Central(narrow, method).Samples, CoolingForecaster.Forecast(wide, method).Forecast!.Central.Samples);
    }

    [Fact]
    public void Widening_one_input_widens_the_band()
    {
        CoolingCase wide = Cases.Pot() with { Film = new Stated<double>(0.8, 0.2, 1.4, Provenance.Estimate, "test") };
        (double fast, double slow) = Edges(Cases.Pot(), Cases.Stand(Cases.Bench), 60);
        (double wideFast, double wideSlow) = Edges(wide, Cases.Stand(Cases.Bench), 60);
        Assert.True(wideFast < fast - 0.02 && wideSlow > slow + 0.05);

        CoolingCase sets = Cases.Pot() with { Setting = Setting(10, 26) };
        CoolingCase surely = Cases.Pot() with { Setting = Setting(17, 19) };
        (double soon, double late) = Edges(sets, Cases.Stand(Cases.Air(3, 1.5)), 10);
        (double surelySoon, double surelyLate) = Edges(surely, Cases.Stand(Cases.Air(3, 1.5)), 10);
        Assert.True(soon < surelySoon && late > surelyLate);
    }

    // What a method does not depend on is not counted: no bath in air, no machine on the bench, no setting in stock that stays thin or is stirred.
    [Fact]
    public void Only_what_a_method_depends_on_is_counted()
    {
        Assert.DoesNotContain("film of the stock", Names(Cases.Stand(Cases.Fridge)), StringComparer.Ordinal);
        Assert.Contains("machine", Names(Cases.Stand(Cases.Fridge)), StringComparer.Ordinal);
        Assert.DoesNotContain("machine", Names(Cases.Stand(Cases.Bench)), StringComparer.Ordinal);
        Assert.Contains("setting", Names(Cases.Stand(Cases.Bench)), StringComparer.Ordinal);
        Assert.DoesNotContain("setting", Names(Cases.Stirred(Cases.Bench)), StringComparer.Ordinal);
        Assert.Contains("share of the time it moves", Names(Cases.Stirred(Cases.IceBath(9), Stirring.EveryFewMinutes)), StringComparer.Ordinal);
        Assert.DoesNotContain("share of the time it moves", Names(Cases.Stirred(Cases.IceBath(9))), StringComparer.Ordinal);
        Assert.Contains("film under a lid", Names(Cases.Stand(Cases.Bench) with { Lid = LidPosition.On }), StringComparer.Ordinal);
        Assert.DoesNotContain("film under a lid", Names(Cases.Stand(Cases.Bench)), StringComparer.Ordinal);

        static IEnumerable<string> Names(CoolingStep step) => BandInput.Of(Cases.Pot(), Cases.Of(step)).Select(input => input.Name);
    }

    // Arithmetic: +0.3 at the slow end and, as far the other way, -0.3 at the fast one; an input half as long that way -0.2.
    [Fact]
    public void Another_figure_has_ends_of_its_own()
    {
        (double low, double high) = CoolingBand.Ends([Input(1, 1), Input(1, 0.5)], [0.3, 0.4]);
        Close.To(Math.Exp(0.5), high, 1e-12);
        Close.To(Math.Exp(-Math.Sqrt(0.13)), low, 1e-12);
        Assert.Equal((1.0, 1.0), CoolingBand.Ends([Input(0, 0)], [double.NaN]));
    }

    // What a fridge warms by hangs on its machine, 0.7 to 1.5 of its strength, and on how fast the pot gives: both ways from the middle.
    [Fact]
    public void The_rise_of_a_fridge_has_a_range_on_both_sides()
    {
        Band<TemperatureDelta> rise = CoolingForecaster.Forecast(Cases.Pot(), Cases.Of(Cases.Stand(Cases.Fridge) with { Lid = LidPosition.On })).Forecast!.StoreRise!.Value;
        Assert.True(rise.Low.Kelvins < 0.85 * rise.Central.Kelvins, $"{rise}");
        Assert.True(rise.High.Kelvins > 1.1 * rise.Central.Kelvins, $"{rise}");
    }

    // Seven measured coolings in air and sinks lay at 0.79 to 1.13 of the middle: a band much wider than that says too little, one narrower too much.
    [Theory]
    [InlineData("fridge")]
    [InlineData("bench")]
    [InlineData("sink")]
    public void A_band_is_about_as_wide_as_what_was_measured(string which)
    {
        CoolingStep step = which switch
        {
            "fridge" => Cases.Stand(Cases.Fridge) with { Lid = LidPosition.On },
            "bench" => Cases.Stand(Cases.Bench) with { Lid = LidPosition.On },
            _ => Cases.Stand(new CoolingPlace.TapSink(false, Mass.FromKilograms(60))),
        };
        (double fast, double slow) = Edges(Cases.Pot(), step, 60);
        Assert.InRange(fast, 0.75, 0.9);
        Assert.InRange(slow, 1.12, 1.3);
    }

    // Newsgroup measurement: a copper pot in a still sink at 85 °F after 15 min. Eight in ten lie within the band; this one, 0.79 of the middle and the
    // quickest of those measured, comes a little before its soonest end.
    [Fact]
    public void The_copper_pot_lies_at_the_end_of_its_band()
    {
        Pot copper = Pot.Straight("c", "copper pot", Length.FromInches(8), Length.FromInches(10), material: WallMaterial.Copper);
        Volume volume = Volume.FromUsQuarts(3.75);
        CoolingCase stock = new()
        {
            Volume = volume,
            Start = Temperature.FromDegreesFahrenheit(160),
            Vessel = CoolingVessel.FromPot(copper, volume),
            Site = new KitchenSite { TapWater = Temperature.FromDegreesFahrenheit(64) },
            Setting = null,
        };
        (TimeSpan? fast, TimeSpan? _, TimeSpan? slow) = CoolingForecaster.Forecast(stock, Cases.In(new CoolingPlace.TapSink(false, Mass.FromKilograms(38)))).Forecast!.TimeTo(Temperature.FromDegreesFahrenheit(85));
        Assert.InRange(fast!.Value.TotalMinutes, 14, 16.5);
        Assert.InRange(slow!.Value.TotalMinutes, 20, 24);
    }

    private static (double Fast, double Slow) Edges(CoolingCase stock, CoolingStep step, double celsius)
    {
        (TimeSpan? fast, TimeSpan? central, TimeSpan? slow) = CoolingForecaster.Forecast(stock, Cases.Of(step)).Forecast!.TimeTo(Temperature.FromDegreesCelsius(celsius));
        return (fast!.Value / central!.Value, slow!.Value / central.Value);
    }

    private static Stated<Temperature> Setting(double low, double high) =>
        new(Temperature.FromDegreesCelsius(18), Temperature.FromDegreesCelsius(low), Temperature.FromDegreesCelsius(high), Provenance.Estimate, "test");

    private static BandInput Input(double slow, double fast) => new("test", slow, fast, (factors, _) => factors);
}
