using CsCheck;
using Stockwright.Cooling;
using Stockwright.Cooling.Limits;
using Stockwright.Kitchen;
using Stockwright.Tests.Physics;
using UnitsNet;
using Xunit;

namespace Stockwright.Tests.Cooling;

/// <summary>Whole forecasts: heat kept, measured pots, and what published trials found.</summary>
public sealed class ForecastTests
{
    private static readonly Gen<CoolingPlace> Places = Gen.OneOf(
        Gen.Const(Cases.Bench),
        Gen.Const(Cases.Fridge),
        Gen.Double[0, 20].Select(Gen.Double[0.5, 20], (ice, water) => Cases.IceBath(ice, water)),
        Gen.Double[1, 40].Select(water => (CoolingPlace)new CoolingPlace.TapSink(false, Mass.FromKilograms(water))),
        Gen.Const((CoolingPlace)new CoolingPlace.TapSink(true, Mass.Zero)),
        Gen.Const((CoolingPlace)new CoolingPlace.ColdAir(ColdStore.WalkIn)),
        Gen.Double[-30, -1].Select(air => (CoolingPlace)new CoolingPlace.ColdAir(ColdStore.BlastChiller with { Air = Temperature.FromDegreesCelsius(air) })));

    private static readonly Gen<LidPosition> Lids = Gen.OneOfConst(LidPosition.On, LidPosition.Off, LidPosition.Ajar(Ratio.FromDecimalFractions(0.1)));

    // Conservation: exact, no source needed. Every joule is in the stock, the lid, the surroundings, the steam, the wand or the old pot; a lid taken off takes its own along.
    [Fact]
    public void Heat_is_kept_in_every_forecast() => Gen.Select(Gen.Double[3, 30], Gen.Double[40, 100], Places, Places, Gen.Int[0, 2], Gen.Double[0, 1], Gen.Bool, Gen.Select(Lids, Lids)).Sample(
        (litres, start, first, second, wands, ice, pours, lids) =>
        {
            CoolingMethod method = new("m", "m",
            [
                Cases.Stand(first) with { For = TimeSpan.FromMinutes(40), Wands = wands, IceAdded = Mass.FromKilograms(ice), Lid = lids.Item1, StockStirring = (Stirring)Math.Floor(ice * 2.99), BathStirring = (Stirring)((int)litres % 3) },
                Cases.Stand(second) with { Lid = lids.Item2, Pour = pours ? Cases.Pans(8, 10) : null },
            ]);
            CoolingResult result = CoolingForecaster.Forecast(Cases.Pot(litres, start), method);
            Assert.Empty(result.Problems);
            foreach (CoolingCourse course in new[] { result.Forecast!.Fast, result.Forecast.Central, result.Forecast.Slow })
            {
                Assert.InRange(course.Books.RelativeGap, 0, 1e-9);
                bool begun = course.StepStarts.Count > 1;
                bool covered = lids.Item1.Kind != LidKind.Off;
                Assert.Equal(begun && covered && (pours || lids.Item2.Kind == LidKind.Off), course.Books.WithLids.Joules != 0);
                Assert.All(course.Samples, sample => Assert.True(sample.Mean <= sample.Warmest + TemperatureDelta.FromKelvins(1e-9)));
            }
        },
        iter: 40,
        threads: 2);

    // A single measurement told in a newsgroup. Tall copper pot, 8 in across, 3.75 US qt, 160 °F into a still sink at 64 °F that
    // warmed to 72 °F (so about 38 kg of water); 85 °F after 15 min. Nobody checked it: 40 % on time.
    [Fact]
    public void A_copper_pot_in_a_still_sink()
    {
        Stockwright.Kitchen.Pot copper = Stockwright.Kitchen.Pot.Straight("c", "copper pot", Length.FromInches(8), Length.FromInches(10), material: WallMaterial.Copper);
        Volume volume = Volume.FromUsQuarts(3.75);
        CoolingCase stock = new()
        {
            Volume = volume,
            Start = Temperature.FromDegreesFahrenheit(160),
            Vessel = CoolingVessel.FromPot(copper, volume),
            Site = new KitchenSite { TapWater = Temperature.FromDegreesFahrenheit(64) },
            Setting = null,
        };
        CoolingCourse course = CoolingForecaster.Central(stock, Cases.In(new CoolingPlace.TapSink(false, Mass.FromKilograms(38))));
        Close.Relative(15.0 / 60, course.HoursTo(29.4)!.Value, 0.4);
        Close.To(22, course.Samples.First(sample => sample.At.TotalMinutes >= 45).Surroundings.DegreesCelsius, 1);
    }

    // Olds and Sneed 2005 (abstract): of chili in a walk-in in a 3 gal stock pot, in a 4 in and in a 2.5 in pan, none fell from 135 to 70 °F in 2 h
    // and to 41 °F in 4 h more; J Food Prot 1977 40:782 (abstract): walk-ins could not reach 7 °C within 4 h.
    [Theory]
    [InlineData(0)]
    [InlineData(10.16)]
    [InlineData(6.35)]
    public void A_walk_in_does_not_cool_a_deep_vessel_in_time(double panCentimetres)
    {
        // Chili does not move: set from the start (C.11), as thick food is.
        CoolingCase chili = Cases.Pot(11.4, 74) with { Setting = Thick };
        CoolingStep step = Cases.Stand(new CoolingPlace.ColdAir(ColdStore.WalkIn)) with { Lid = LidPosition.On };
        if (panCentimetres > 0)
        {
            CoolingVessel pan = CoolingVessel.Pan(Length.FromInches(12), Length.FromInches(10), Length.FromCentimeters(panCentimetres));
            step = step with { Pour = new PourInto(pan, (int)Math.Ceiling(chili.Volume.Liters / pan.Capacity.Liters)) };
        }

        CoolingCourse course = CoolingForecaster.Central(chili, CoolingMethod.Of("w", "w", step));
        Assert.Equal(CoolingOutcome.Fails, CoolingJudge.Judge(course.Curve, StandardLimits.Default).Outcome);
    }

    // The case: 10 L at 95 °C in the pot in a household fridge.
    [Fact]
    public void The_pot_in_the_fridge_fails_and_warms_it()
    {
        CoolingForecast forecast = CoolingForecaster.Forecast(Cases.Pot(), CoolingMethod.Of("f", "f", Cases.Stand(Cases.Fridge) with { Lid = LidPosition.On })).Forecast!;
        BandVerdict verdict = CoolingJudge.JudgeBand(forecast.Fast.Curve, forecast.Central.Curve, forecast.Slow.Curve, StandardLimits.Default);
        Assert.Equal(CoolingOutcome.Fails, verdict.Outcome);
        Assert.Equal(1, verdict.StageAtRisk);

        // C.8, its machine at full power: the air rises by (load - spare)/leak, soon over 10 K at a load of 300 W.
        Assert.InRange(forecast.StoreRise!.Value.Central.Kelvins, 5, 30);
    }

    // A run apart from the code of the same physics for 10 L in 28 cm; not a measurement, so 25 %. Its stirred bath had 1200 inside and 800 outside,
    // U 455; ours has 1000 and 475, U 315, so it takes 1.44 times the 0.21 h and 0.44 h of that run.
    [Theory]
    [InlineData("bench-on", 60, 4.36)]
    [InlineData("bench-off", 60, 1.19)]
    [InlineData("walk-in", 60, 0.78)]
    [InlineData("blast", 60, 0.88)]
    [InlineData("stirred", 21, 0.21 * 1.44)]
    [InlineData("stirred", 5, 0.44 * 1.44)]
    public void Times_agree_with_an_independent_run(string which, double celsius, double hours)
    {
        CoolingStep step = which switch
        {
            "bench-on" => Cases.Stand(Cases.Bench) with { Lid = LidPosition.On },
            "bench-off" => Cases.Stand(Cases.Bench),
            "walk-in" => Cases.Stand(Cases.Air(3, 1.5)),
            "blast" => Cases.Stand(Cases.Air(-5, 4)) with { Lid = LidPosition.On },
            _ => Cases.Stirred(Cases.IceBath(30, 3)),
        };
        Close.Relative(hours, CoolingForecaster.Central(Cases.Pot(), CoolingMethod.Of(which, which, step)).HoursTo(celsius)!.Value, 0.25);
    }

    [Fact]
    public void A_sequence_runs_its_steps_in_turn()
    {
        CoolingMethod method = new("seq", "seq",
        [
            Cases.Stand(Cases.Bench) with { For = TimeSpan.FromMinutes(30) },
            Cases.Stirred(Cases.IceBath(14)) with { Until = Temperature.FromDegreesCelsius(21) },
            Cases.Stand(Cases.Fridge) with { Pour = new PourInto(CoolingVessel.Tub(Volume.FromLiters(1.1)), 10) },
        ]);
        CoolingCourse course = CoolingForecaster.Central(Cases.Pot(), method);
        Assert.Equal(3, course.StepStarts.Count);
        Assert.Equal(TimeSpan.FromMinutes(30), course.StepStarts[1]);
        Close.To(21, course.Curve.TemperatureAt(course.StepStarts[2]).DegreesCelsius, 0.5);
        Assert.Null(course.StuckInStep);
    }

    [Fact]
    public void A_step_that_never_ends_is_named()
    {
        CoolingMethod method = new("s", "s", [Cases.Stand(Cases.Bench) with { Until = Temperature.FromDegreesCelsius(10) }, Cases.Stand(Cases.Fridge)]);
        Assert.Equal(0, CoolingForecaster.Central(Cases.Pot(), method).StuckInStep);
    }

    [Fact]
    public void Ice_gives_out_once_and_the_bath_then_warms()
    {
        CoolingCourse course = CoolingForecaster.Central(Cases.Pot(), Cases.In(Cases.IceBath(3, 8)));
        TimeSpan gone = course.IceGoneAt!.Value;
        Assert.All(course.Samples.Where(sample => sample.At < gone), sample => Close.To(0, sample.Surroundings.DegreesCelsius, 1e-9));
        Assert.True(course.Samples.Max(sample => sample.Surroundings.DegreesCelsius) > 20);

        // 3 kg, less what chills 8 kg of tap water from 15 °C.
        Close.To(3 - (8 * 4200 * 15 / 333600.0), course.IceMelted.Kilograms, 1e-9);
    }

    [Fact]
    public void The_same_question_has_the_same_answer()
    {
        CoolingMethod method = Cases.In(Cases.Fridge);
        CoolingForecast one = CoolingForecaster.Forecast(Cases.Pot(), method).Forecast!;
        CoolingForecast other = CoolingForecaster.Compare(Cases.Pot(), [method])[0].Forecast!;
        Assert.Equal(one.Slow.Samples, other.Slow.Samples);
    }

    private static Stockwright.Evidence.Stated<Temperature> Thick { get; } = new(
        Temperature.FromDegreesCelsius(60), Temperature.FromDegreesCelsius(60), Temperature.FromDegreesCelsius(60), Stockwright.Evidence.Provenance.Estimate, "test: does not move");
}
