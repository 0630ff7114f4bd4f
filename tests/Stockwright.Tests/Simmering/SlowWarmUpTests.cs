using Stockwright.Kitchen;
using Stockwright.Physics;
using Stockwright.Simmering;
using Stockwright.Tests.Planning;
using UnitsNet;
using Xunit;

namespace Stockwright.Tests.Simmering;

/// <summary>
/// The warm-up of a slow cooker against its balance in closed form: C dT/dt = P - U (T - T_room) gives
/// T = T_end - (T_end - T_0) exp(-t U/C), T_end = T_room + P/U, so the time to a temperature is (C/U) ln[(T_end - T_0)/(T_end - T)].
/// </summary>
public sealed class SlowWarmUpTests
{
    /// <summary>
    /// 4 kg of water from 15 °C in a crock of 3.6 kg, in a room of 22 °C, no steam. C = 4 x 4188.8 + 3.6 x 850 = 19,815 J/K, U = 1.2 W/K.
    /// 200 W: T_end = 188.67 °C. To 60 °C: 16,513 s x ln(173.67/128.67) = 4,952 s; to 95 °C: 16,513 s x ln(173.67/93.67) = 10,195 s.
    /// 150 W: T_end = 147 °C: to 60 °C 16,513 s x ln(132/87) = 6,884 s. The pot stops within 0.02 K of the temperature: at 4 to 9 mK/s that is 5 s.
    /// </summary>
    [Theory]
    [InlineData(200, 60, 4952)]
    [InlineData(200, 95, 10195)]
    [InlineData(150, 60, 6884)]
    public void Warms_up_as_the_balance_says(double watts, double celsius, double seconds) =>
        Assert.Equal(seconds, WarmUpSeconds(watts, celsius, film: 0), 6.0);

    /// <summary>The steam that gets past the lid only makes it slower, by less than a twentieth up to 90 °C.</summary>
    [Fact]
    public void Steam_past_the_lid_makes_it_a_little_slower()
    {
        double dry = WarmUpSeconds(200, 90, film: 0);
        double wet = WarmUpSeconds(200, 90, film: 1);
        Assert.InRange(wet / dry, 1.001, 1.05);
    }

    /// <summary>100 W cannot pass 22 + 100/1.2 = 105 °C, and 60 W not 72 °C: there it settles a little below and says so.</summary>
    [Fact]
    public void A_weak_heater_settles_below_the_boil()
    {
        PotEnvironment environment = Crock(60);
        SimmerOutcome outcome = SimmerRun.Execute(environment, PotRuns.Water(4, 98, 1), 0, 1, 1, sampled: false);
        Assert.False(outcome.IsReached);
        Assert.InRange(outcome.FinalCelsius, 68, 72);
    }

    /// <summary>
    /// 1.5 and 2.4 W/K is what a bare crock gives off by P.31 and P.32 at 98 °C in a room of 22 °C: its wall to three quarters, and a glass lid as warm as the stock.
    /// The shell with its air gap takes a third to two thirds off, so the figure lies that far below.
    /// </summary>
    [Theory]
    [InlineData(22, 12)]
    [InlineData(28, 15)]
    public void The_loss_is_a_good_half_of_a_bare_crocks(double across, double high)
    {
        double side = PotLosses.SideWatts(across / 100, 0.75 * high / 100, 98, 22, 0.9, 101_325);
        double lid = PotLosses.TopConvectionRadiationWatts(across / 100, 98, 22, 0.9, 101_325);
        double bare = (side + lid) / 76;
        Assert.InRange(SimmerAssumptions.Standard.SlowLoss.Value / bare, 1.0 / 3, 1.0);
    }

    private static PotEnvironment Crock(double watts)
    {
        Pot pot = PlanRequests.SlowCooker(24, 15, watts) with { EmptyMass = Mass.FromKilograms(3.6) };
        KitchenSite site = new();
        return new PotEnvironment(pot, OwnHeat.Of(pot, SlowCookerSetting.High), LidPosition.On, site, Air.PressurePascals(site));
    }

    private static double WarmUpSeconds(double watts, double celsius, double film) =>
        SimmerRun.Execute(Crock(watts), PotRuns.Water(4, celsius) with { HeatsUpCovered = true }, film, 1, 1, sampled: false).HeatUpSeconds;
}
