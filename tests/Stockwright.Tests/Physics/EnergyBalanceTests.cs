using CsCheck;
using Xunit;

namespace Stockwright.Tests.Physics;

/// <summary>The reference formulas themselves, against figures worked apart from the code.</summary>
public class EnergyBalanceTests
{
    // Exact energy balance: 3600/2256.6 kg/h from one net kilowatt at 100 C.
    [Fact]
    public void A_kilowatt_boils_off_1_6_kilograms_an_hour() => Close.To(1.5953, 3600 * Reference.BoilOff(1000, 373.15), 0.00005);

    // Exact energy balance: (10 x 4187 + 2.5 x 500) 85 / (3500 x 0.80) = 1309 s, and so on, in minutes.
    [Theory]
    [InlineData(3500, 0.80, 21.8)]
    [InlineData(2000, 0.75, 40.7)]
    [InlineData(5000, 0.40, 30.5)]
    [InlineData(3600, 0.40, 42.4)]
    public void Time_to_boil_without_losses(double watts, double efficiency, double minutes) => Close.To(minutes, HeatUp(watts, efficiency) / 60, 0.05);

    [Fact]
    public void Time_to_boil_without_losses_in_seconds() => Close.To(1309, HeatUp(3500, 0.80), 0.05);

    // 8 x 4.19 x 80/3600 = 0.745 kWh: one kilowatt for as many hours.
    [Fact]
    public void Heat_to_warm_a_pot() => Close.Relative(0.745, Reference.HeatUpSeconds(8 * 4190, 80, 1000, 1) / 3600, 0.01);

    // Newton's law, exact: UA 20 W/K, 10 kg x 4180, 95 to 21 in 4 C: 2090 ln(91/17) = 3506.280 s.
    [Fact]
    public void Lumped_cooling_time() => Close.To(3506.280, Reference.CoolingSeconds(20, 41800, 95, 21, 4), 0.0005);

    [Fact]
    public void Lumped_cooling_time_and_temperature_agree() =>
        Gen.Double[5, 200].SelectMany(ua => Gen.Double[10, 90].Select(end => (ua, end))).Sample(x =>
            Close.To(x.end, Reference.TemperatureAfter(x.ua, 41800, 95, 4, Reference.CoolingSeconds(x.ua, 41800, 95, x.end, 4)), 1e-9));

    private static double HeatUp(double watts, double efficiency) => Reference.HeatUpSeconds((10 * 4187) + (2.5 * 500), 85, watts, efficiency);
}
