using CsCheck;
using Stockwright.Cooling;
using Stockwright.Kitchen;
using Stockwright.Physics.Conduction;
using Stockwright.Tests.Physics;
using UnitsNet;
using Xunit;

namespace Stockwright.Tests.Cooling;

/// <summary>Still liquid in layers: heat kept, the top warmest, the mixed limit, and no dependence on the grid.</summary>
public sealed class LayerTests
{
    private static readonly Gen<CoolingPlace> Places = Gen.OneOfConst(
        Cases.Bench, Cases.Fridge, Cases.Air(3, 1.5), Cases.Air(-5, 4), Cases.IceBath(20), new CoolingPlace.TapSink(true, Mass.Zero), new CoolingPlace.TapSink(false, Mass.FromKilograms(20)));

    // Boundary layer profiles integrated (trapezium): Eckert and Jackson 1951 and Squire 1938, both from memory.
    [Theory]
    [InlineData(1.0 / 7, 1, 4, CoolingFactors.TurbulentWallShare)]
    [InlineData(1, 2, 2, CoolingFactors.LaminarWallShare)]
    public void What_runs_down_the_wall_is_colder_by_the_profile(double root, double thermal, double speed, double expected)
    {
        double flow = 0;
        double heat = 0;
        const int parts = 200_000;
        for (int i = 0; i < parts; i++)
        {
            double y = (i + 0.5) / parts;
            double u = Math.Pow(y, root) * Math.Pow(1 - y, speed);
            flow += u;
            heat += u * (root < 1 ? 1 - Math.Pow(y, root) : Math.Pow(1 - y, thermal));
        }

        Close.To(expected, heat / flow, 0.001);
    }

    [Fact]
    public void A_column_keeps_its_heat() => Gen.Select(Gen.Double[1, 600], Gen.Double[0, 200], Gen.Double[0, 20], Gen.Double[0, 20], Gen.Double[-5, 50], Gen.Double[0, 800]).Sample(
        (seconds, side, bottom, top, around, circulation) =>
        {
            LiquidColumn column = new(12, 80);
            double given = 0;
            for (int i = 0; i < 20; i++)
            {
                (double s, double b, double t) = column.Step(seconds, 42_000, new((side, around), (bottom, around), (top, around), 50, 30, circulation));
                given += s + b + t + (80 * seconds);
            }

            Close.To(42_000 * 80, (42_000 * column.MeanCelsius) + given, 1e-3);
        });

    // By the heat balance of the loop: with all layers falling alike, each gap is Q/(N times the circulation).
    [Fact]
    public void Layers_part_by_the_heat_over_the_circulation()
    {
        LiquidColumn column = new(40, 80);
        double mean = 80;
        for (int i = 0; i < 200; i++)
        {
            mean = column.MeanCelsius;
            column.Step(10, 42_000, new((2, 4), default, default, 0, 0, 200));
        }

        Close.Relative(2 * (mean - 4) / 200 * 39 / 40, column.TopCelsius - column.Celsius[0], 0.02);
    }

    // Water above 4 °C is lighter the warmer it is, so the top of a still pot is never the coldest; near 4 °C nothing holds it apart.
    [Fact]
    public void The_top_of_a_still_pot_is_never_colder_than_the_bottom() => Gen.Select(Gen.Double[3, 30], Gen.Double[40, 100], Places, Gen.Bool).Sample(
        (litres, start, place, covered) =>
        {
            CoolingCase stock = Cases.Pot(litres, start) with { Setting = null };
            CoolingStep step = Cases.Stand(place) with { Lid = covered ? LidPosition.On : LidPosition.Off };
            CoolingCourse course = CoolingForecaster.Central(stock, CoolingMethod.Of("s", "s", step));
            Assert.All(
                course.Samples.TakeWhile(sample => sample.Coldest.DegreesCelsius > 10),
                sample => Assert.True(sample.Coldest <= sample.Mean + TemperatureDelta.FromKelvins(1e-9) && sample.Mean <= sample.Warmest + TemperatureDelta.FromKelvins(1e-9)));
            Assert.True(course.Layering.Spread.Kelvins > 0.05);
        },
        iter: 30,
        threads: 2);

    // C.20 to C.22 (estimates): liquid cooled at its side and top mixes itself. In air within a degree or two, in ice by several.
    [Theory]
    [InlineData("air", 0.2, 2)]
    [InlineData("ice", 3, 15)]
    public void Air_leaves_it_nearly_even_and_ice_does_not(string which, double least, double most)
    {
        CoolingPlace place = which is "air" ? Cases.Bench : Cases.IceBath(20);
        Assert.InRange(CoolingForecaster.Central(Cases.Pot(), Cases.In(place)).Layering.Spread.Kelvins, least, most);
    }

    [Fact]
    public void Stirring_makes_top_and_bottom_one()
    {
        CoolingMethod method = new("m", "m",
        [
            Cases.Stand(Cases.IceBath(20)) with { For = TimeSpan.FromMinutes(3) },
            Cases.Stirred(Cases.IceBath(20)),
        ]);
        CoolingCourse course = CoolingForecaster.Central(Cases.Pot(), method);
        CoolingSample[] still = [.. course.Samples.Where(sample => sample.Step == 0)];
        CoolingSample[] stirred = [.. course.Samples.Where(sample => sample.Step == 1).Skip(1)];
        Assert.True(still[^1].Warmest.DegreesCelsius - still[^1].Coldest.DegreesCelsius > 3);
        Assert.All(stirred, sample => Close.To(sample.Mean.DegreesCelsius, sample.Warmest.DegreesCelsius, 1e-9));
        Assert.All(stirred, sample => Close.To(sample.Mean.DegreesCelsius, sample.Coldest.DegreesCelsius, 1e-9));
    }

    // P.33, exact: 10 x 4180/20 ln(91/17) = 3506.280 s from 95 to 21 °C in 4 °C; here by layers that circulate without end.
    [Fact]
    public void With_endless_circulation_it_is_the_mixed_pot()
    {
        StockBody body = Body(24);
        ConductionBoundary side = ConductionBoundary.Convective(20 / (body.Vessel.PerimeterMetres * body.DepthMetres), 4);
        for (int i = 0; i < 200; i++)
        {
            body.Step(3506.280 / 200, new Faces(side, default, default, 0, 1000, 1e-6), 2.4e6, 0);
        }

        Close.To(21, body.MeanCelsius, 0.01);
        Close.To(21, body.WarmestCelsius, 0.01);
    }

    // Twice the layers move neither the time to a mark by two in a hundred nor the top by half a kelvin.
    [Fact]
    public void Twice_as_many_layers_give_the_same_course()
    {
        (double Seconds, double Top) coarse = ToSixty(12);
        (double Seconds, double Top) fine = ToSixty(24);
        Close.Relative(fine.Seconds, coarse.Seconds, 0.02);
        Close.To(fine.Top, coarse.Top, 0.5);

        static (double Seconds, double Top) ToSixty(int layers)
        {
            StockBody body = Body(layers);
            double seconds = 0;
            double topAtFive = 0;
            while (body.WarmestCelsius > 60)
            {
                body.Step(2, new Faces(new ConductionBoundary(250, 1.0 / 1000, 0), default, ConductionBoundary.Convective(15, 22), 5e-4, 1000, 0.32), 2.3e6, 0);
                seconds += 2;
                topAtFive = seconds <= 300 ? body.WarmestCelsius : topAtFive;
            }

            return (seconds, topAtFive);
        }
    }

    private static StockBody Body(int layers) =>
        new(CoolingVessel.Tub(Volume.FromLiters(12)) with { EmptyMass = Mass.Zero }, 10, 95, 4180, 0.6, 1000, layers);
}
