using Stockwright.Cooling;
using Stockwright.Keeping;
using Stockwright.Physics.Conduction;
using Stockwright.Tests.Physics;
using Stockwright.Tests.Physics.Conduction;
using UnitsNet;
using Xunit;

namespace Stockwright.Tests.Keeping;

/// <summary>Freezing and thawing: formulas against worked examples, the enthalpy method against Stefan's exact front and runs apart from the code (C.50 to C.56).</summary>
public sealed class FreezingTests
{
    private static readonly FreezingFood Example = new(
        Density.FromKilogramsPerCubicMeter(1000),
        Density.FromKilogramsPerCubicMeter(950),
        SpecificEntropy.FromJoulesPerKilogramKelvin(3600),
        SpecificEntropy.FromJoulesPerKilogramKelvin(1800),
        SpecificEnergy.FromJoulesPerKilogram(250_000),
        ThermalConductivity.FromWattsPerMeterKelvin(1.2),
        Temperature.FromDegreesCelsius(-1.25));

    // Singh and Heldman, example 7.1 [from memory]: sphere of 7 cm, air at -40 °C, h 50: 2603 s.
    [Fact]
    public void Plank_sphere() => Close.To(2603.05, FreezingFormulas.Plank(Example, FreezingShape.Sphere, Length.FromCentimeters(7), Film(50), T(-40)).TotalSeconds, 0.1);

    // Singh and Heldman, example 7.2 [from memory]: the same by Pham to -18 °C, moisture 75 %: 3743 s.
    [Fact]
    public void Pham_sphere() => Close.To(
        3743.21,
        FreezingFormulas.Pham(
            Example with { Latent = SpecificEnergy.FromJoulesPerKilogram(0.75 * 333_200) }, 3, Length.FromCentimeters(3.5), Film(50), T(-40), T(10), T(-18)).TotalSeconds,
        0.1);

    // C.54 and C.53 worked by hand for stock: Pham and Plank, hours.
    [Theory]
    [InlineData(0.02, 20, -20, -10, 6.50, 5.05)]
    [InlineData(0.02, 10, -18, -10, 13.86, 10.76)]
    [InlineData(0.025, 30, -30, -18, 4.39, 2.99)]
    public void Slab_of_stock_by_formula(double half, double film, double air, double centre, double pham, double plank)
    {
        Close.Relative(pham, FreezingFormulas.Pham(FreezingFood.Stock, 1, Length.FromMeters(half), Film(film), T(air), T(5), T(centre)).TotalHours, 0.01);
        Close.Relative(plank, FreezingFormulas.Plank(FreezingFood.Stock, FreezingShape.Slab, Length.FromMeters(2 * half), Film(film), T(air)).TotalHours, 0.01);
    }

    // Exact: Stefan's problem. Water at 0 °C on a wall at -18: the front stands at 30.1226 mm after an hour (lambda 0.23155401).
    [Fact]
    public void Stefans_front()
    {
        const double Lambda = 0.23155401;
        double erf = 1 - ExactConduction.Erfc(Lambda);
        Close.To(2060 * 18 / 333_600.0, Lambda * Math.Exp(Lambda * Lambda) * erf * Math.Sqrt(Math.PI), 1e-7);
        double front = 2 * Lambda * Math.Sqrt(2.22 / (917 * 2060.0) * 3600);
        Close.To(0.030122552, front, 1e-8);

        // The enthalpy method with almost pure ice: the last of that thickness freezes after an hour.
        FreezingStock ice = new(-0.002, 1, 917, 4200, 2060, 2.22, 2.22);
        double seconds = FreezingTime.Seconds(ConductionGrid.HalfSlab(front, 40), ice, 1e7, allFaces: false, start: 0, around: -18, centre: -0.1, step: 4);
        Close.Relative(3600, seconds, 0.02);
    }

    // The enthalpy method (C.50 to C.52) run apart from the code.
    [Fact]
    public void Enthalpy_slab() => Close.Relative(
        5.948, FreezingTime.Seconds(ConductionGrid.HalfSlab(0.02, 60), FreezingStock.Stock, 20, allFaces: false, 5, -20, -10, 20) / 3600, 0.01);

    [Fact]
    public void Enthalpy_tub() => Close.Relative(
        13.5, FreezingTime.Seconds(ConductionGrid.Cylinder(0.055, 0.06, 14, 14), FreezingStock.Stock, 8, allFaces: true, 5, -18, -15, 60) / 3600, 0.03);

    [Fact]
    public void Slab_thaws() => Close.Relative(
        9.11, FreezingTime.Seconds(ConductionGrid.HalfSlab(0.02, 60), FreezingStock.Stock, 15, allFaces: false, -18, 15, 0, 20) / 3600, 0.02);

    // The same by the published formula C.56 [from memory], worked by hand.
    [Theory]
    [InlineData(0.04, 15, 15, -18, 8.16)]
    [InlineData(0.04, 10, 4, -18, 36.2)]
    [InlineData(0.06, 50, 20, -20, 5.37)]
    public void Slab_thaws_by_formula(double thickness, double film, double air, double start, double hours) => Close.Relative(
        hours,
        FreezingFormulas.ThawSlab(FreezingFood.Stock, Length.FromMeters(thickness), Film(film), T(air), T(start), ThermalConductivity.FromWattsPerMeterKelvin(0.57)).TotalHours,
        0.01);

    // The enthalpy method run apart from the code: cylinder and sphere of 3 cm radius, h 20, air -25: 3.60 h and 2.38 h.
    [Fact]
    public void Enthalpy_cylinder_and_sphere()
    {
        Close.Relative(3.60, FreezingTime.Seconds(ConductionGrid.Cylinder(0.03, 1, 40, 1), FreezingStock.Stock, 20, allFaces: false, 5, -25, -10, 15) / 3600, 0.015);
        Close.Relative(2.38, FreezingTime.Seconds(ConductionGrid.Sphere(0.03, 40), FreezingStock.Stock, 20, allFaces: false, 5, -25, -10, 15) / 3600, 0.015);
    }

    // C.54 with C.55 worked by hand: Pham for the half-litre tub of 11 by 6 cm with its shape factor: E 2.04, 14.5 h.
    [Fact]
    public void Tub_through_the_front_door()
    {
        FreezingEstimate estimate = FreezingTime.Freeze(new FrozenPortion(Length.FromCentimeters(11), Length.FromCentimeters(6)), T(5), T(-18), T(-15))!;
        Close.Relative(13.5, estimate.Time.Central.TotalHours, 0.03);
        Close.Relative(14.5, estimate.Formula!.Value.TotalHours, 0.02);
        Assert.True(estimate.Time.Low < estimate.Time.Central && estimate.Time.Central < estimate.Time.High);
        Assert.True(estimate.Plank < estimate.Time.Central);
    }

    [Fact]
    public void Thicker_takes_longer_and_water_thaws_faster_than_air()
    {
        FrozenPortion thin = new(null, Length.FromCentimeters(2));
        FrozenPortion thick = new(null, Length.FromCentimeters(4));
        Assert.True(FreezingTime.Freeze(thin, T(4), T(-18), T(-15))!.Time.Central < FreezingTime.Freeze(thick, T(4), T(-18), T(-15))!.Time.Central);
        Assert.True(FreezingTime.Thaw(thick, T(-18), T(15), T(0), FilmRange.ChangedWater)!.Time.Central < FreezingTime.Thaw(thick, T(-18), T(15), T(0))!.Time.Central);
    }

    // By hand for a flat bag of 3 cm in water at 15 °C. Thawing goes as R a (P/h + Q a/k) of C.56 (from memory), with 200 (100 to
    // 500) W/m2K around it, a tenth more or less of thickness, and up to twice the conductivity where what has thawed moves; ends in quadrature.
    [Fact]
    public void A_thaw_in_water_has_the_range_of_its_film_and_its_size()
    {
        FrozenPortion bag = new(null, Length.FromCentimeters(3));
        FreezingEstimate estimate = FreezingTime.Thaw(bag, T(-18), T(15), T(0), FilmRange.ChangedWater)!;
        double weak = Math.Log(Formula(0.03, 100, 0.57) / Formula(0.03, 200, 0.57));
        double thick = Math.Log(Formula(0.033, 200, 0.57) / Formula(0.03, 200, 0.57));
        double strong = Math.Log(Formula(0.03, 500, 0.57) / Formula(0.03, 200, 0.57));
        double thin = Math.Log(Formula(0.03 / 1.1, 200, 0.57) / Formula(0.03, 200, 0.57));
        double moves = Math.Log(Formula(0.03, 200, 1.14) / Formula(0.03, 200, 0.57));
        double slow = Math.Exp(Math.Sqrt((weak * weak) + (thick * thick)));
        double fast = Math.Exp(-Math.Sqrt((strong * strong) + (thin * thin) + (moves * moves)));
        Close.To(slow, estimate.Time.High / estimate.Time.Central, 0.05);
        Close.To(fast, estimate.Time.Low / estimate.Time.Central, 0.08);
        Assert.True(slow > 1.2 && fast < 0.7);

        // The middle is that of before: 81 min.
        Close.To(81, estimate.Time.Central.TotalMinutes, 1);

        static double Formula(double thickness, double film, double conductivity) => FreezingFormulas.ThawSlab(
            FreezingFood.Stock, Length.FromMeters(thickness), Film(film), T(15), T(-18), ThermalConductivity.FromWattsPerMeterKelvin(conductivity)).TotalHours;
    }

    [Fact]
    public void A_wider_film_widens_the_band()
    {
        FrozenPortion tub = new(Length.FromCentimeters(8.6), Length.FromCentimeters(8.6));
        Stockwright.Evidence.Band<TimeSpan> usual = FreezingTime.Freeze(tub, T(4), T(-18), T(-10))!.Time;
        Stockwright.Evidence.Band<TimeSpan> wide = FreezingTime.Freeze(tub, T(4), T(-18), T(-10), FilmRange.Of(8, 4, 14))!.Time;
        Assert.Equal(usual.Central, wide.Central);
        Assert.True(wide.Low < usual.Low && wide.High > usual.High);
    }

    [Fact]
    public void Temperature_and_enthalpy_undo_each_other()
    {
        FreezingStock stock = FreezingStock.Stock;
        foreach (double celsius in new[] { -60, -18, -5, -1, -0.6, -0.51, -0.5, 0, 4, 95.0 })
        {
            Close.To(celsius, stock.Celsius(stock.JoulesPerCubicMetre(celsius)), 1e-9);
        }
    }

    // What was frozen in the coldest freezer taken can be thawed: a colder start takes longer, by the heat of 20 K of ice at most.
    [Fact]
    public void The_coldest_freezer_that_freezes_it_is_taken_for_thawing_too()
    {
        FrozenPortion portion = new(null, Length.FromCentimeters(3));
        double coldest = FreezingTime.Thaw(portion, FreezingTime.FreezerRange.Least, T(4), T(0))!.Time.Central.TotalHours;
        double colder = FreezingTime.Thaw(portion, T(-60), T(4), T(0))!.Time.Central.TotalHours;
        Assert.InRange(coldest, colder, colder * 1.15);
    }

    // Plank's own law: 24 cm of ice in air half a degree above its melting point takes a season; nobody waits for a figure.
    [Fact]
    public void What_takes_longer_than_anyone_waits_has_no_figure()
    {
        Assert.Null(FreezingTime.Thaw(new FrozenPortion(null, Length.FromCentimeters(24)), T(-18), T(0.5), T(0)));
        Assert.NotNull(FreezingTime.Thaw(new FrozenPortion(null, Length.FromCentimeters(3)), T(-18), T(4), T(0)));
    }

    [Fact]
    public void Nonsense_is_refused()
    {
        FrozenPortion portion = new(null, Length.FromCentimeters(3));
        Assert.Throws<ArgumentOutOfRangeException>(() => FreezingTime.Freeze(portion, T(5), T(-10), T(-15)));
        Assert.Throws<ArgumentOutOfRangeException>(() => FreezingTime.Thaw(portion, T(-18), T(-1), T(0)));
        Assert.Throws<ArgumentOutOfRangeException>(() => FreezingTime.Freeze(new FrozenPortion(null, Length.FromMeters(3)), T(5), T(-18), T(-15)));
    }

    private static Temperature T(double celsius) => Temperature.FromDegreesCelsius(celsius);

    private static HeatTransferCoefficient Film(double value) => HeatTransferCoefficient.FromWattsPerSquareMeterKelvin(value);
}
