using CsCheck;
using Stockwright.Physics;
using UnitsNet;
using Xunit;

namespace Stockwright.Tests.Physics;

public class EnergyBalanceTests
{
    // Exact energy balance: 3600/2256.6 kg/h from one net kilowatt at 100 C.
    [Fact]
    public void A_kilowatt_boils_off_1_6_kilograms_an_hour() =>
        Close.To(1.5953, HeatUpEstimate.BoilOff(Power.FromKilowatts(1), Temperature.FromDegreesCelsius(100)).KilogramsPerHour, 0.00005);

    // Exact energy balance: (10 x 4187 + 2.5 x 500) 85 / (3500 x 0.80) = 1309 s, and so on, in minutes.
    [Theory]
    [InlineData(3500, 0.80, 21.8)]
    [InlineData(2000, 0.75, 40.7)]
    [InlineData(5000, 0.40, 30.5)]
    [InlineData(3600, 0.40, 42.4)]
    public void Time_to_boil_without_losses(double watts, double efficiency, double minutes) =>
        Close.To(minutes, HeatUp(watts, efficiency).Minutes, 0.05);

    [Fact]
    public void Time_to_boil_without_losses_in_seconds() => Close.To(1309, HeatUp(3500, 0.80).Seconds, 0.05);

    [Fact]
    public void Nonsense_is_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => HeatUp(0, 0.8));
        Assert.Throws<ArgumentOutOfRangeException>(() => HeatUp(1000, 1.01));
        Assert.Throws<ArgumentOutOfRangeException>(() => HeatUp(1000, 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => HeatUpEstimate.BoilOff(Power.FromWatts(-1), Temperature.FromDegreesCelsius(100)));
    }

    // Newton's law, exact: UA 20 W/K, 10 kg x 4180, 95 to 21 in 4 C: 2090 ln(91/17) = 3506.280 s.
    [Fact]
    public void Lumped_cooling_time() =>
        Close.To(3506.280, LumpedCooling.TimeBetween(Coefficient(20), One, Capacity(41800), Celsius(95), Celsius(21), Celsius(4)).Seconds, 0.0005);

    [Fact]
    public void Lumped_cooling_time_and_temperature_agree() =>
        Gen.Double[5, 200].SelectMany(ua => Gen.Double[10, 90].Select(end => (ua, end))).Sample(x =>
        {
            Duration time = LumpedCooling.TimeBetween(Coefficient(x.ua), One, Capacity(41800), Celsius(95), Celsius(x.end), Celsius(4));
            Close.To(x.end, LumpedCooling.TemperatureAfter(Coefficient(x.ua), One, Capacity(41800), Celsius(95), Celsius(4), time).DegreesCelsius, 1e-9);
        });

    [Fact]
    public void A_temperature_never_reached_is_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => LumpedCooling.TimeBetween(Coefficient(20), One, Capacity(41800), Celsius(95), Celsius(4), Celsius(4)));
        Assert.Throws<ArgumentOutOfRangeException>(() => LumpedCooling.TimeBetween(Coefficient(20), One, Capacity(41800), Celsius(95), Celsius(96), Celsius(4)));
        Assert.Throws<ArgumentOutOfRangeException>(() => LumpedCooling.TimeBetween(Coefficient(0), One, Capacity(41800), Celsius(95), Celsius(21), Celsius(4)));
        Assert.Throws<ArgumentOutOfRangeException>(() => LumpedCooling.TemperatureAfter(Coefficient(20), One, Capacity(41800), Celsius(95), Celsius(4), Duration.FromSeconds(-1)));
    }

    private static Area One { get; } = Area.FromSquareMeters(1);

    private static Temperature Celsius(double celsius) => Temperature.FromDegreesCelsius(celsius);

    private static HeatTransferCoefficient Coefficient(double watts) => HeatTransferCoefficient.FromWattsPerSquareMeterKelvin(watts);

    private static Entropy Capacity(double joules) => Entropy.FromJoulesPerKelvin(joules);

    private static Duration HeatUp(double watts, double efficiency) => HeatUpEstimate.NoLossTime(
        Mass.FromKilograms(10),
        SpecificEntropy.FromJoulesPerKilogramKelvin(4187),
        Mass.FromKilograms(2.5),
        SpecificEntropy.FromJoulesPerKilogramKelvin(500),
        TemperatureDelta.FromKelvins(85),
        Power.FromWatts(watts),
        Ratio.FromDecimalFractions(efficiency));
}
