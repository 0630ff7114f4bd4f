using Stockwright.Cooling;
using Stockwright.Kitchen;
using Stockwright.Physics;
using Stockwright.Tests.Physics;
using Xunit;

namespace Stockwright.Tests.Cooling;

/// <summary>The lid as a body of its own: its balance, its film, and where its heat goes.</summary>
public sealed class LidTests
{
    private const double Area = 0.0616;

    // Exact: a lumped body between two constant films, however the time is cut up.
    [Theory]
    [InlineData(1)]
    [InlineData(7)]
    [InlineData(60)]
    public void Between_constant_films_it_is_exact(int steps)
    {
        const double under = 25;
        const double over = 12;
        LidState lid = new(400, Area, 20);
        double length = 60.0 / steps;
        double taken = 0;
        double onward = 0;
        for (int i = 0; i < steps; i++)
        {
            var face = lid.Face(under, over, 22, length);
            double joules = face.WattsPerSquareMetreKelvin * Area * (90 - face.Celsius) * length;
            taken += joules;
            onward += lid.Take(joules, length);
        }

        double goal = ((under * 90) + (over * 22)) / (under + over);
        double time = 400 / ((under + over) * Area);
        double faded = Math.Exp(-60 / time);
        Close.To(goal + ((20 - goal) * faded), lid.Celsius, 1e-9);
        Close.To(under * Area * (((90 - goal) * 60) - ((20 - goal) * time * (1 - faded))), taken, 1e-6);
        Close.To(taken - onward, 400 * (lid.Celsius - 20), 1e-6);
    }

    // The ice-bath reference problem (IceBathReferenceTests): stock-lid 1.5 W/K, lid-room 0.5 W/K and radiation 0.30, 400 J/K, room 22 °C.
    // The lid from 60 °C under stock falling from 95 to 91.5247 °C in the first minute; and four hours on, when it only follows.
    [Theory]
    [InlineData(60, 60, 95, 91.5246970922, 63.3419168751, 0.05)]
    [InlineData(26.5, 600, 27.96, 27.9204413633, 26.2595365315, 0.05)]
    public void Reference_problem_one(double start, int seconds, double from, double to, double expected, double tolerance)
    {
        LidState lid = new(400, Area, start);
        for (int i = 0; i < seconds; i++)
        {
            // The stock falls by its steep film at first, so the middle of the fall lies a little below the straight line.
            double stock = from + ((to - from) * (i + 0.5) / seconds);
            double over = (0.5 / Area) + SurfaceLosses.RadiationWattsPerSquareMetreKelvin(lid.Celsius + 273.15, 295.15, 0.3);
            var face = lid.Face(1.5 / Area, over, 22, 1);
            lid.Take(face.WattsPerSquareMetreKelvin * Area * (stock - face.Celsius), 1);
        }

        Close.To(expected, lid.Celsius, tolerance);
    }

    // By hand from IAPWS steam tables: 90 and 80 °C, 70.18 and 47.41 kPa, h_fg 2295.4 kJ/kg at 85 °C: vapour carries 32.7 times what the air does.
    [Fact]
    public void Vapour_carries_most_of_the_heat_to_a_hot_lid()
    {
        double radiation = SurfaceLosses.RadiationWattsPerSquareMetreKelvin(363.15, 353.15, 1 / ((1 / 0.95) + (1 / 0.3) - 1));
        double convection = SurfaceLosses.LevelPlateFacingUpWattsPerSquareMetreKelvin(363.15, 353.15, 0.28, 101325);
        double film = LidState.UnderFilm(90, 80, 0.28, 0.3, 101325);
        Close.Relative(32.74, ((film - radiation) / convection) - 1, 0.01);
    }

    // A lid warmer than the stock gathers no dew: the film is one of air and radiation, 6 W/m2K or less.
    [Fact]
    public void A_lid_warmer_than_the_stock_gathers_nothing() => Assert.InRange(LidState.UnderFilm(10, 22, 0.28, 0.3, 101325), 1, 6);

    [Fact]
    public void It_warms_from_the_room_to_between_stock_and_air()
    {
        CoolingCourse course = CoolingForecaster.Central(Cases.Pot(), Covered(Cases.Bench));
        Close.To(22, course.Samples[0].Lid!.Value.DegreesCelsius, 1e-9);
        CoolingSample later = course.Samples.First(sample => sample.At.TotalMinutes > 5);
        Assert.InRange(later.Lid!.Value.DegreesCelsius, 70, later.Warmest.DegreesCelsius);
    }

    // Its heat goes with it: what the ledger says is its heat capacity times its temperature, above 0 °C.
    [Fact]
    public void Taken_off_it_takes_its_heat_along()
    {
        CoolingCase stock = Cases.Pot();
        CoolingStep on = Cases.Stand(Cases.Bench) with { Lid = LidPosition.On, For = TimeSpan.FromMinutes(20) };
        CoolingCourse kept = CoolingForecaster.Central(stock, new CoolingMethod("k", "k", [on, Cases.Stand(Cases.Fridge) with { Lid = LidPosition.On }]));
        CoolingCourse taken = CoolingForecaster.Central(stock, new CoolingMethod("t", "t", [on, Cases.Stand(Cases.Fridge)]));
        double before = taken.Samples.Last(sample => sample.Step == 0).Lid!.Value.DegreesCelsius;
        Assert.Equal(0, kept.Books.WithLids.Joules);
        Close.Relative(stock.Vessel.LidHeatCapacity.JoulesPerKelvin * before, taken.Books.WithLids.Joules, 0.01);
        Assert.All(taken.Samples.Where(sample => sample.Step == 1), sample => Assert.Null(sample.Lid));
        Assert.InRange(taken.Books.RelativeGap, 0, 1e-9);
    }

    // Common practice, no source: a lid of a 28 cm steel pot weighs some half a kilogram; the ice-bath reference problem takes 400 J/K.
    [Fact]
    public void A_pot_lid_holds_a_few_hundred_joules_a_kelvin() => Assert.InRange(Cases.Pot().Vessel.LidHeatCapacity.JoulesPerKelvin, 200, 500);

    private static CoolingMethod Covered(CoolingPlace place) => CoolingMethod.Of("l", "l", Cases.Stand(place) with { Lid = LidPosition.On });
}
