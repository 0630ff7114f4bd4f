using Stockwright.Cooling;
using Stockwright.Physics.Conduction;
using Stockwright.Tests.Physics;
using UnitsNet;
using Xunit;

namespace Stockwright.Tests.Cooling;

/// <summary>Films, the even body and ice, each against its equation worked by hand (C.2, C.9, C.10 and C.16 in docs/equations-cooling.md).</summary>
public sealed class FilmTests
{
    // Churchill and Chu 1975 for water inside a wall 0.16 m high, worked apart from the code from IAPWS properties: it shows that C.2 is implemented.
    // Near 4 °C the expansion at the middle, which that run used, and the true difference of density part by a few percent.
    [Theory]
    [InlineData(80, 40, 1255, 0.02)]
    [InlineData(30, 10, 597, 0.02)]
    [InlineData(10, 3, 229, 0.04)]
    public void Water_along_a_wall(double bulk, double wall, double expected, double tolerance) => Close.Relative(
        expected,
        WaterFilm.VerticalWallWattsPerSquareMetreKelvin(bulk, wall, 0.16),
        tolerance);

    // Water is densest at 4 °C: with bulk and wall either side of it hardly anything moves.
    [Fact]
    public void Water_stands_still_about_its_greatest_density()
    {
        double across = WaterFilm.VerticalWallWattsPerSquareMetreKelvin(8, 0, 0.16);
        double above = WaterFilm.VerticalWallWattsPerSquareMetreKelvin(12, 4, 0.16);
        Assert.True(across < 0.55 * above);
    }

    // P.33, exact: 10 x 4180/20 ln(91/17) = 3506.280 s from 95 to 21 °C in 4 °C.
    [Fact]
    public void An_even_body_with_a_constant_film_is_exact()
    {
        CoolingVessel vessel = CoolingVessel.Tub(Volume.FromLiters(12)) with { EmptyMass = Mass.Zero };
        StockBody body = new(vessel, 10, 95, 4180, 0.6, 1000);
        ConductionBoundary side = ConductionBoundary.Convective(20 / (vessel.PerimeterMetres * body.DepthMetres), 4);
        Faces faces = new(side, default, default, 0, 1000);
        for (int i = 0; i < 10; i++)
        {
            body.Step(350.6280, faces, 2.4e6, 0);
        }

        Close.To(21, body.MeanCelsius, 1e-4);
    }

    // C.16, exact: 9.8 x 4150 x 91/333600 = 11.094 kg.
    [Fact]
    public void Ice_melts_by_the_heat_balance() => Close.To(
        11.094,
        IceNeeded.ToCool(Entropy.FromJoulesPerKelvin(9.8 * 4150), Temperature.FromDegreesCelsius(95), Temperature.FromDegreesCelsius(4)).Kilograms,
        0.001);

    // The same balance by simulation: what a bath melts is the heat of stock and wall, and up to a tenth more from the room, less what steams off.
    [Fact]
    public void A_stirred_bath_melts_what_the_balance_says()
    {
        CoolingCourse course = CoolingForecaster.Central(Cases.Pot(), CoolingMethod.Of("i", "i", Cases.Stirred(Cases.IceBath(30, 3)) with { Until = Temperature.FromDegreesCelsius(4) }));
        double balance = IceNeeded.ToCool(Entropy.FromJoulesPerKelvin((10.045 * 4110) + (2.4 * 500)), Temperature.FromDegreesCelsius(95), Temperature.FromDegreesCelsius(4)).Kilograms;
        Assert.InRange(course.IceMelted.Kilograms, balance, balance * 1.1);
    }

    // C.10: a 2 L wand (1.83 kg) from -18 to 4 °C stores 1.83 (2.05 x 18 + 333.6 + 4.19 x 4) = 709 kJ.
    [Fact]
    public void A_wand_takes_what_it_stores()
    {
        CoolingCase stock = Cases.Pot(start: 40) with { Setting = null };
        CoolingStep step = Cases.Stand(Cases.Air(4, 0)) with { Wands = 1, StockStirring = Stirring.AllTheTime };
        CoolingCourse course = CoolingForecaster.Central(stock, CoolingMethod.Of("w", "w", step));
        double end = course.Samples[^1].Mean.DegreesCelsius;
        double stored = 1.83 * ((2050 * 18) + 333600 + (4190 * end));
        Close.Relative(stored, course.Books.ToWands.Joules, 0.01);
    }

    [Fact]
    public void Ice_in_the_stock_mixes_by_heat_balance()
    {
        // 3 kg of ice at -5 °C into 7 L at 60 °C, wall included: one equation.
        CoolingCase stock = Cases.Pot(litres: 7, start: 60);
        CoolingCourse course = CoolingForecaster.Central(stock, CoolingMethod.Of("a", "a", Cases.Stand(Cases.Bench) with { IceAdded = Mass.FromKilograms(3) }));
        double wall = stock.Vessel.EmptyMass.Kilograms * 500;
        double specific = ((course.Books.AtStart.Joules / 60) - wall) / (7 * 1.0045);
        double expected = ((60 * ((7 * 1.0045 * specific) + wall)) - (3 * (333600 + (2050 * 5)))) / ((((7 * 1.0045) + 3) * specific) + wall);
        Close.To(expected, course.Samples[0].Mean.DegreesCelsius, 0.05);
    }
}
