using Stockwright.Cooling;
using UnitsNet;
using Xunit;

namespace Stockwright.Tests.Cooling;

/// <summary>
/// Questions at the ends of what the form allows are answered with believable courses. The bounds are conservation of energy
/// and the second law: nothing gets colder than the coldest thing it touches, nor hotter than the hottest.
/// </summary>
public sealed class CoolingExtremesTests
{
    /// <summary>A step aims at three quarters of a kelvin, and what the store takes lags a step behind: two steps' worth, K.</summary>
    private const double StepLag = 1.5;

    [Theory]
    [InlineData(500, 105, 120, 120)]
    [InlineData(200, 105, 120, 40)]
    [InlineData(500, 70, 120, 120)]
    public void A_fridge_overwhelmed_by_a_vat_gets_no_hotter_than_the_vat(double litres, double start, double across, double high)
    {
        CoolingForecast forecast = Answered(Own(litres, start, across, high), Cases.In(Cases.Fridge));
        foreach (CoolingCourse course in new[] { forecast.Fast, forecast.Central, forecast.Slow })
        {
            Assert.InRange(course.WarmestStore!.Value.Air.DegreesCelsius, 4, start + StepLag);
            Assert.InRange(course.Samples.Min(sample => sample.Warmest.DegreesCelsius), 0, start);
        }
    }

    /// <summary>Ten wands at -18 °C around a cupful: it cools in seconds, and no step may carry it below the wands.</summary>
    [Theory]
    [InlineData(0.1, 10)]
    [InlineData(0.1, 1)]
    [InlineData(0.5, 10)]
    public void Wands_never_make_it_colder_than_they_are(double litres, int wands)
    {
        CoolingForecast forecast = Answered(Own(litres, 90, 8, 12), CoolingMethod.Of("w", "w", Cases.Stand(Cases.Bench) with { Wands = wands }));
        foreach (CoolingCourse course in new[] { forecast.Fast, forecast.Central, forecast.Slow })
        {
            Assert.InRange(course.Samples.Min(sample => sample.Coldest.DegreesCelsius), -1, 3);
        }
    }

    [Fact]
    public void Wands_in_a_finger_of_stock_in_jars_under_a_running_tap()
    {
        CoolingStep step = Cases.Stand(new CoolingPlace.TapSink(true, Mass.Zero)) with
        {
            Pour = new PourInto(CoolingVessel.Jar(JarSize.Find("pint") ?? JarSize.All[0]), 400),
            Wands = 7,
        };
        CoolingForecast forecast = Answered(Cases.Pot(), CoolingMethod.Of("w", "w", step));
        Assert.InRange(forecast.Central.Samples.Min(sample => sample.Coldest.DegreesCelsius), -1, 3);
    }

    // A cup of water around thirty litres nears the stock in a minute: it is never carried past it, neither in a course nor in the coarse ones its band is found by.
    [Fact]
    public void A_cup_of_water_around_a_big_pot()
    {
        CoolingMethod method = Cases.In(new CoolingPlace.TapSink(false, Mass.FromKilograms(0.5)));
        CoolingForecast forecast = Answered(Cases.Pot(30), method);
        foreach (CoolingCourse course in new[] { forecast.Fast, forecast.Central, forecast.Slow })
        {
            Assert.All(course.Samples.Skip(1), sample => Assert.InRange(sample.Surroundings.DegreesCelsius, 14, sample.Warmest.DegreesCelsius + 1));
        }
    }

    private static CoolingForecast Answered(CoolingCase stock, CoolingMethod method)
    {
        CoolingResult result = CoolingForecaster.Forecast(stock, method);
        Assert.Empty(result.Problems);
        return result.Forecast!;
    }

    private static CoolingCase Own(double litres, double start, double across, double high)
    {
        Stockwright.Kitchen.Pot pot = Stockwright.Kitchen.Pot.Straight("own", "the pot", Length.FromCentimeters(across), Length.FromCentimeters(high));
        return new CoolingCase
        {
            Volume = Volume.FromLiters(litres),
            Start = Temperature.FromDegreesCelsius(start),
            Vessel = CoolingVessel.FromPot(pot, Volume.FromLiters(litres)),
        };
    }
}
