using Stockwright.Cooling;
using Stockwright.Physics.Conduction;
using Stockwright.Tests.Physics;
using UnitsNet;
using Xunit;

namespace Stockwright.Tests.Cooling;

/// <summary>Stock left in air that freezes it.</summary>
public sealed class FreezingCourseTests
{
    private static readonly CoolingPlace Blast = new CoolingPlace.ColdAir(ColdStore.BlastChiller);

    // An enthalpy run apart from the code (C.50 to C.52, 14 rings by 14 layers): half a litre 11 cm across and 6 cm high, every face 8 W/m2K, air -18 °C,
    // from 5 °C until the middle is -15 °C: 13.5 h. There nothing moves; here what is liquid does, which saves a little.
    [Fact]
    public void A_tub_freezes_as_long_as_an_independent_run()
    {
        CoolingVessel tub = CoolingVessel.Tub(Volume.FromLiters(1)) with { Diameter = Length.FromCentimeters(11), EmptyMass = Mass.Zero };
        StockBody body = new(tub, 0.06 * tub.FloorSquareMetres * 1000, 5, 4100, 0.57, 1000);
        ConductionBoundary face = ConductionBoundary.Convective(8, -18);
        body.MaySet(4, 100, 0.97);
        double seconds = 0;
        while (body.WarmestCelsius > -15)
        {
            body.Step(60, new Faces(face, face, face, 0, 100), 2.5e6, 0);
            seconds += 60;
        }

        Close.Relative(13.5, seconds / 3600, 0.05);
    }

    // Exact: below freezing the material holds the latent heat of what is frozen; from 0 °C unfrozen to frozen at t, wall and all.
    [Theory]
    [InlineData(-1)]
    [InlineData(-5)]
    [InlineData(-18)]
    public void Enthalpy_counts_what_is_frozen(double celsius)
    {
        const double tf = FreezingStock.StockFreezingCelsius;
        FreezingStock ice = new(tf, 0.97, 1000, 4200, 2160, 0.57, 2.1);
        GellingStock stock = new(4.2e6, 0.57, 50, 18, ice);
        double expected = (4.2e6 * tf) + (1000 * ((2160 * (celsius - tf)) - (0.97 * 333600 * (1 - (tf / celsius)))));
        Close.Relative(expected, stock.JoulesPerCubicMetre(celsius), 1e-12);
        Close.To(celsius, stock.Celsius(expected), 1e-9);
        Close.To(1 - (tf / celsius), stock.Frozen(celsius), 1e-12);
        double slope = (stock.Celsius(expected + 50) - stock.Celsius(expected - 50)) / 100;
        Close.Relative(slope, stock.KelvinsPerJoulePerCubicMetre(expected), 1e-4);
    }

    [Fact]
    public void Ice_forms_at_the_wall_while_the_middle_is_warm_and_the_course_goes_on()
    {
        CoolingCourse course = CoolingForecaster.Central(Cases.Pot(), Cases.In(Blast));
        TimeSpan ice = course.FirstIceAt!.Value;
        Assert.True(course.Curve.TemperatureAt(ice).DegreesCelsius > 0);
        Assert.True(course.Samples[^1].Warmest.DegreesCelsius < 0);
        Assert.All(course.Samples.Where(sample => sample.At < ice), sample => Close.To(0, sample.Frozen.DecimalFractions, 0.001));
        Assert.All(course.Samples.Zip(course.Samples.Skip(1)), pair => Assert.True(pair.Second.Frozen.DecimalFractions >= pair.First.Frozen.DecimalFractions - 1e-6));
        Assert.InRange(course.Samples[^1].Frozen.DecimalFractions, 0.3, 0.95);
    }

    // A thin slab in colder air freezes through, and stock that does not set freezes as well.
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void A_pan_freezes_through(bool sets)
    {
        CoolingPlace freezer = new CoolingPlace.ColdAir(ColdStore.BlastChiller with { Air = Temperature.FromDegreesCelsius(-25) });
        CoolingCase stock = sets ? Cases.Pot() : Cases.Pot() with { Setting = null };
        CoolingCourse course = CoolingForecaster.Central(stock, CoolingMethod.Of("p", "p", Cases.Stand(freezer) with { Pour = Cases.Pans(2, 10) }));
        Assert.True(course.Samples[^1].Warmest.DegreesCelsius <= -17);
        Close.To(0.97, course.Samples[^1].Frozen.DecimalFractions, 0.03);
        Assert.InRange(course.Books.RelativeGap, 0, 1e-9);
    }

    // Colder air, sooner ice; and none where the air is above freezing.
    [Fact]
    public void Colder_air_freezes_it_sooner()
    {
        Assert.True(Ice(-20) < Ice(-10) && Ice(-10) < Ice(-5));
        Assert.Null(Ice(0));

        static TimeSpan? Ice(double celsius) => CoolingForecaster.Central(Cases.Pot(), Cases.In(Cases.Air(celsius, 4))).FirstIceAt;
    }

    // Judged as before: freezing only follows once it is colder than any limit.
    [Fact]
    public void Until_ice_forms_it_cools_as_in_air_just_too_warm_to_freeze()
    {
        CoolingCourse freezes = CoolingForecaster.Central(Cases.Pot(), Cases.In(Cases.Air(-0.51, 4)));
        CoolingCourse not = CoolingForecaster.Central(Cases.Pot(), Cases.In(Cases.Air(-0.49, 4)));
        Close.Relative(not.HoursTo(5)!.Value, freezes.HoursTo(5)!.Value, 0.01);
    }
}
