using CsCheck;
using Stockwright.Physics;
using UnitsNet;
using Xunit;

namespace Stockwright.Tests.Physics;

public class FoodTests
{
    private static readonly FoodComposition Stock = FoodComposition.FromDecimalFractions(0.970, 0.020, 0.003, ash: 0.007);
    private static readonly FoodComposition Beef = FoodComposition.FromDecimalFractions(0.73, 0.22, 0.04, ash: 0.01);
    private static readonly FoodComposition Carrot = FoodComposition.FromDecimalFractions(0.88, 0.01, 0.002, 0.098, ash: 0.01);

    // Worked apart from the code from the Choi and Okos 1986 equations.
    [Theory]
    [InlineData(4, 1006.048, 4058.70, 4104.58, 0.57005)]
    [InlineData(20, 1004.548, 4059.97, 4105.85, 0.59541)]
    [InlineData(60, 992.488, 4074.89, 4120.77, 0.64407)]
    [InlineData(90, 975.652, 4097.09, 4142.97, 0.66676)]
    public void Stock_matches_the_equations_worked_apart(double celsius, double density, double ashraeHeat, double originalHeat, double conductivity)
    {
        Temperature temperature = Temperature.FromDegreesCelsius(celsius);
        Close.To(density, FoodProperties.Density(Stock, temperature, FoodWater.ChoiOkos).KilogramsPerCubicMeter, 0.0006);
        Close.To(ashraeHeat, FoodProperties.SpecificHeat(Stock, temperature, FoodWater.ChoiOkosAshrae).JoulesPerKilogramKelvin, 0.006);
        Close.To(originalHeat, FoodProperties.SpecificHeat(Stock, temperature, FoodWater.ChoiOkos).JoulesPerKilogramKelvin, 0.006);
        Close.To(conductivity, FoodProperties.Conductivity(Stock, temperature, FoodWater.ChoiOkos).WattsPerMeterKelvin, 6e-6);
    }

    // Same source.
    [Fact]
    public void Beef_matches_the_equations_worked_apart()
    {
        Temperature room = Temperature.FromDegreesCelsius(20);
        Close.To(1055.305, FoodProperties.Density(Beef, room, FoodWater.ChoiOkos).KilogramsPerCubicMeter, 0.0006);
        Close.To(3553.14, FoodProperties.SpecificHeat(Beef, room, FoodWater.ChoiOkosAshrae).JoulesPerKilogramKelvin, 0.006);
        Close.To(0.51212, FoodProperties.Conductivity(Beef, room, FoodWater.ChoiOkos).WattsPerMeterKelvin, 6e-6);
    }

    // Same source; carries the carbohydrate terms.
    [Fact]
    public void Carrot_matches_the_equations_worked_apart()
    {
        Temperature room = Temperature.FromDegreesCelsius(20);
        Close.To(1042.554, FoodProperties.Density(Carrot, room, FoodWater.ChoiOkos).KilogramsPerCubicMeter, 0.0006);
        Close.To(3824.79, FoodProperties.SpecificHeat(Carrot, room, FoodWater.ChoiOkosAshrae).JoulesPerKilogramKelvin, 0.006);
        Close.To(0.57431, FoodProperties.Conductivity(Carrot, room, FoodWater.ChoiOkos).WattsPerMeterKelvin, 6e-6);
    }

    // Choi and Okos 1986, fibre row, by hand at 20 C: rho = 1311.5 - 7.3178; cp = 1845.9 + 36.612 - 1.86036; k = 0.18331 + 0.024994 - 0.00126732.
    [Fact]
    public void Fibre_alone_follows_its_row()
    {
        FoodComposition fibre = FoodComposition.FromDecimalFractions(0, fibre: 1);
        Temperature room = Temperature.FromDegreesCelsius(20);
        Close.To(1304.1822, FoodProperties.Density(fibre, room).KilogramsPerCubicMeter, 1e-6);
        Close.To(1880.65164, FoodProperties.SpecificHeat(fibre, room).JoulesPerKilogramKelvin, 1e-6);
        Close.To(0.20703668, FoodProperties.Conductivity(fibre, room).WattsPerMeterKelvin, 1e-9);
    }

    // Choi and Okos water below freezing, by hand at -10 C: 4081.7 + 53.062 + 99.516.
    [Fact]
    public void Supercooled_water_follows_its_row() =>
        Close.To(4234.278, FoodProperties.SpecificHeat(FoodComposition.FromDecimalFractions(1), Temperature.FromDegreesCelsius(-10)).JoulesPerKilogramKelvin, 1e-6);

    // The default water is the IAPWS one: density 998.158 and specific heat 4184.5 at 20 C (SR1-86: P.5 and P.10).
    [Fact]
    public void Pure_water_is_that_of_the_steam_tables()
    {
        FoodComposition water = FoodComposition.FromDecimalFractions(1);
        Temperature room = Temperature.FromDegreesCelsius(20);
        Close.To(998.158, FoodProperties.Density(water, room).KilogramsPerCubicMeter, 0.001);
        Close.To(4184.5, FoodProperties.SpecificHeat(water, room).JoulesPerKilogramKelvin, 0.1);
        Close.To(0.59846, FoodProperties.Conductivity(water, room).WattsPerMeterKelvin, 1e-5);
        Assert.True(double.IsFinite(FoodProperties.Conductivity(water, Temperature.FromDegreesCelsius(150)).WattsPerMeterKelvin));
    }

    // R.L. Earle, Unit Operations in Food Processing, appendix 7: lean beef 75 % water 3.22, carrot 88 % water 3.60 kJ/(kg K);
    // old measurements, so 12 %.
    [Fact]
    public void Specific_heat_lies_near_the_handbook()
    {
        Temperature room = Temperature.FromDegreesCelsius(20);
        Close.Relative(3600, FoodProperties.SpecificHeat(Carrot, room).JoulesPerKilogramKelvin, 0.12);
        Close.Relative(3220, FoodProperties.SpecificHeat(Beef, room).JoulesPerKilogramKelvin, 0.12);
    }

    [Fact]
    public void Mixtures_lie_between_their_parts() =>
        Gen.Double[0, 1].SelectMany(fat => Gen.Double[-40, 150].Select(t => (fat, t))).Sample(x =>
        {
            Temperature t = Temperature.FromDegreesCelsius(x.t);
            FoodComposition mixed = FoodComposition.FromDecimalFractions(1 - x.fat, fat: x.fat);
            double water = FoodProperties.Density(FoodComposition.FromDecimalFractions(1), t).KilogramsPerCubicMeter;
            double fat = FoodProperties.Density(FoodComposition.FromDecimalFractions(0, fat: 1), t).KilogramsPerCubicMeter;
            Assert.InRange(FoodProperties.Density(mixed, t).KilogramsPerCubicMeter, fat - 1e-9, water + 1e-9);
        });

    [Fact]
    public void Rounded_shares_pass_and_wrong_ones_are_named()
    {
        FoodComposition rounded = FoodComposition.FromDecimalFractions(0.966, 0.020, 0.003, ash: 0.007);
        Close.Relative(
            FoodProperties.SpecificHeat(Stock, Temperature.FromDegreesCelsius(20)).JoulesPerKilogramKelvin,
            FoodProperties.SpecificHeat(rounded, Temperature.FromDegreesCelsius(20)).JoulesPerKilogramKelvin,
            5e-4);
        ArgumentException error = Assert.Throws<ArgumentException>(() => FoodComposition.FromDecimalFractions(0.9, 0.05));
        Assert.Contains("95 %", error.Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentOutOfRangeException>(() => FoodComposition.FromDecimalFractions(1.1, -0.1));
        Assert.ThrowsAny<ArgumentException>(() => FoodComposition.FromDecimalFractions(double.NaN));
        Assert.Throws<ArgumentOutOfRangeException>(() => FoodProperties.Density(Stock, Temperature.FromDegreesCelsius(151)));
        Assert.Throws<ArgumentOutOfRangeException>(() => FoodProperties.Density(Stock, Temperature.FromDegreesCelsius(20), (FoodWater)9));
    }
}
