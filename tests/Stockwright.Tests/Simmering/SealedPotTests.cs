using Stockwright.Kitchen;
using Stockwright.Planning;
using Stockwright.Simmering;
using Stockwright.Tests.Planning;
using Xunit;

namespace Stockwright.Tests.Simmering;

public sealed class SealedPotTests
{
    /// <summary>
    /// A published comparison of several cookers, 2012: of 1,000 g of water 20 to 40 g were gone after ten minutes at pressure and natural
    /// release. The figures were set with this in view.
    /// </summary>
    [Fact]
    public void Ten_minutes_at_pressure_cost_twenty_to_forty_grams_of_a_kilogram()
    {
        Assert.InRange(Lost(1), 0.020, 0.040);

        // With a band: a tight cooker and one with a jiggling weight.
        Assert.InRange(Lost(SimmerAssumptions.Standard.SealedLeak.Low / SimmerAssumptions.Standard.SealedLeak.Value), 0.010, 0.022);
        Assert.InRange(Lost(SimmerAssumptions.Standard.SealedLeak.High / SimmerAssumptions.Standard.SealedLeak.Value), 0.045, 0.12);
    }

    [Fact]
    public void What_a_locked_pot_loses_has_a_band()
    {
        BatchPlan plan = (PlanRequests.For("mushroom") with { Lid = LidPosition.On }).In(PlanRequests.PressureCooker(26, 20)).Making(2).Plan();
        Assert.True(plan.Simmer.Evaporated.Low < plan.Simmer.Evaporated.Central * 0.95);
        Assert.True(plan.Simmer.Evaporated.High > plan.Simmer.Evaporated.Central * 1.05);
    }

    private static double Lost(double lidFactor)
    {
        // 6 L, 22 cm across, 1 kg of water on 2 kW.
        PotEnvironment environment = PotRuns.Kitchen(PlanRequests.PressureCooker(22, 15.8), 2, LidPosition.On);
        SimmerScript script = PotRuns.Water(1, environment.HottestReachableCelsius, 10.0 / 60) with
        {
            Stages =
            [
                new StageScript(environment.BoilingCelsius, 1, Climbs: false, LiftsOut: false, []) { Cover = StageCover.Locked },
                new StageScript(environment.HottestReachableCelsius, 600, Climbs: false, LiftsOut: false, []) { Cover = StageCover.AsPlanned },
                new StageScript(environment.BoilingCelsius, 1, Climbs: false, LiftsOut: false, []) { Cover = StageCover.Falling },
            ],
        };
        return SimmerRun.Execute(environment, script, SimmerAssumptions.Standard.SurfaceFilm.Value, lidFactor, 0.85, sampled: false).SteamKilograms;
    }
}
