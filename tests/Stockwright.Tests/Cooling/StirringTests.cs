using CsCheck;
using Stockwright.Cooling;
using Stockwright.Cooling.Limits;
using Stockwright.Tests.Physics;
using UnitsNet;
using Xunit;

namespace Stockwright.Tests.Cooling;

/// <summary>Stock and bath stirred apart, each not, every few minutes or all the time (equation C.2).</summary>
public sealed class StirringTests
{
    private static readonly CoolingPlace Ice = Cases.IceBath(20);

    // Steel on loose ice, stirred inside: 150 to 250 W/m2K from stock to bath (trade of ice baths, our estimate; no measurement found).
    [Theory]
    [InlineData(60)]
    [InlineData(30)]
    [InlineData(10)]
    public void Steel_on_loose_ice_with_the_stock_stirred(double bulk) =>
        Assert.InRange(Overall(Cases.Stand(Ice) with { StockStirring = Stirring.AllTheTime }, bulk), 150, 250);

    // A pot in ice water that moves: 400 to 550 outside, so by the walls in series 1/(1/1000 + 0.001/15 + 1/475) = 315 with the stock stirred.
    [Theory]
    [InlineData(30)]
    [InlineData(10)]
    public void Steel_in_moving_ice_water_with_the_stock_stirred(double bulk)
    {
        double expected = 1 / ((1.0 / 1000) + (0.001 / 15) + (1.0 / 475));
        Close.Relative(expected, Overall(Cases.Stirred(Ice), bulk), 1e-6);
        Assert.InRange(FaceFilms.MovingIceWater, 400, 550);
    }

    // A time-average of 0.4 stirred and 0.6 still, worked by hand; a film gravity drives harder than a spoon does is not weakened by it.
    [Theory]
    [InlineData(100, 475, 0.4, 250)]
    [InlineData(100, 475, 0, 100)]
    [InlineData(100, 475, 1, 475)]
    [InlineData(1300, 1000, 0.4, 1300)]
    public void A_film_over_time(double still, double stirred, double share, double expected) =>
        Close.To(expected, FaceFilms.Average(still, stirred, share), 1e-9);

    [Fact]
    public void Every_few_minutes_lies_between_still_and_moving()
    {
        double still = Overall(Cases.Stand(Ice) with { StockStirring = Stirring.AllTheTime }, 20);
        double few = Overall(Cases.Stand(Ice) with { StockStirring = Stirring.AllTheTime, BathStirring = Stirring.EveryFewMinutes }, 20);
        double moving = Overall(Cases.Stirred(Ice), 20);
        Assert.True(still < few && few < moving);

        // Outside 250 still (loose ice on a rocked wall) and 475 moving: 250 + 0.4 x 225 = 340.
        Close.Relative(1 / ((1.0 / 1000) + (0.001 / 15) + (1.0 / 340)), few, 1e-6);
    }

    [Fact]
    public void More_stirring_of_either_is_never_slower() => Gen.Select(Gen.Double[3, 15], Gen.Bool).Sample(
        (litres, ice) =>
        {
            CoolingPlace place = ice ? Ice : new CoolingPlace.TapSink(false, Mass.FromKilograms(60));
            double[,] hours = new double[3, 3];
            foreach (Stirring stock in Enum.GetValues<Stirring>())
            {
                foreach (Stirring bath in Enum.GetValues<Stirring>())
                {
                    CoolingStep step = Cases.Stand(place) with { StockStirring = stock, BathStirring = bath };
                    hours[(int)stock, (int)bath] = CoolingForecaster.Central(Cases.Pot(litres), Cases.Of(step)).HoursTo(40)!.Value;
                }
            }

            for (int i = 0; i < 3; i++)
            {
                // Hot water rises along a wall faster than a spoon moves it, so in a warm sink stirring may change nothing.
                double least = ice ? 0 : -1e-6;
                Assert.True(hours[i, 0] - hours[i, 1] > least && hours[i, 1] - hours[i, 2] > least, $"bath, stock {i}: {hours[i, 0]} {hours[i, 1]} {hours[i, 2]}");
                Assert.True(hours[0, i] - hours[1, i] > least && hours[1, i] - hours[2, i] > least, $"stock, bath {i}: {hours[0, i]} {hours[1, i]} {hours[2, i]}");
            }
        },
        iter: 10,
        threads: 2);

    // The one tick of before stood for a bath that moves all the time, 26 min to 5 °C in a pot of 24 cm; two at once, and not all the time, is 1.5 to 2.5 times that.
    [Fact]
    public void Every_few_minutes_is_not_all_the_time()
    {
        CoolingCase pot = Cases.Pot(diameterCentimetres: 24);
        double few = CoolingForecaster.Central(pot, Cases.Of(Cases.Stirred(Ice, Stirring.EveryFewMinutes))).HoursTo(5)!.Value;
        double all = CoolingForecaster.Central(pot, Cases.Of(Cases.Stirred(Ice))).HoursTo(5)!.Value;
        Assert.InRange(few / all, 1.3, 1.8);
    }

    // Where no bath stands around it, or the tap keeps it moving, stirring the bath changes nothing.
    [Fact]
    public void Without_a_standing_bath_there_is_none_to_stir()
    {
        foreach (CoolingPlace place in new[] { Cases.Bench, Cases.Fridge, new CoolingPlace.TapSink(true, Mass.Zero) })
        {
            CoolingCourse one = CoolingForecaster.Central(Cases.Pot(5), Cases.In(place));
            CoolingCourse other = CoolingForecaster.Central(Cases.Pot(5), Cases.Of(Cases.Stand(place) with { BathStirring = Stirring.AllTheTime }));
            Assert.Equal(one.Samples, other.Samples);
        }
    }

    // What is counted on is said: no way stirs more than its name tells, and who stirs all the time stands there until it is cold.
    [Fact]
    public void Advice_says_which_stirring_it_counts_on()
    {
        IReadOnlyList<RankedMethod> ways = CoolingAdvisor.Advise(Cases.Pot(), new CoolingKit(), StandardLimits.Default).Ranked;
        Assert.All(ways, way =>
        {
            Stirring[] counted = [.. way.Forecast.Method.Steps.SelectMany(step => new[] { step.StockStirring, step.BathStirring })];
            Assert.Equal(counted.Contains(Stirring.EveryFewMinutes), way.Forecast.Method.Name.Contains("every few minutes", StringComparison.Ordinal));
            Assert.Equal(counted.Contains(Stirring.AllTheTime), way.Forecast.Method.Name.Contains("all the time", StringComparison.Ordinal));
        });
        RankedMethod moving = ways.First(way => string.Equals(way.Forecast.Method.Id, "ice-moving-end", StringComparison.Ordinal));
        Assert.True(moving.HandMinutes >= moving.Forecast.Central.StepStarts[1].TotalMinutes);
    }

    private static double Overall(CoolingStep step, double bulk)
    {
        CoolingCase stock = Cases.Pot();
        FaceFilms films = new(step, null, stock.Vessel, 1, 0.16, stock, 101325, CoolingFactors.Central(stock));
        Faces faces = default;
        for (int i = 0; i < 20; i++)
        {
            faces = films.At(bulk, bulk, bulk, 0, 10);
        }

        return 1 / ((1 / faces.Side.WattsPerSquareMetreKelvin) + faces.Side.FilmResistance);
    }
}
