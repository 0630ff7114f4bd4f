using Stockwright.Cooling;
using Stockwright.Cooling.Limits;
using UnitsNet;
using Xunit;

namespace Stockwright.Tests.Cooling;

/// <summary>Advice for the case and for barer and richer kitchens.</summary>
public sealed class AdvisorTests
{
    // The "done when": 10 L at 95 °C and a household fridge. The 2 h + 4 h rule of 3-501.14 is met by ways of 3-501.15: ice-water bath, stirring, shallow pans.
    [Fact]
    public void Ten_litres_and_a_household_fridge()
    {
        CoolingAdvice advice = CoolingAdvisor.Advise(Cases.Pot(), new CoolingKit(), StandardLimits.Default);
        Assert.Empty(advice.Problems);
        Assert.Equal(CoolingOutcome.Fails, advice.Baseline!.Verdict.Outcome);
        RankedMethod best = advice.Recommended!;
        Assert.Contains("Ice bath", best.Forecast.Method.Name, StringComparison.OrdinalIgnoreCase);
        Assert.True(best.Ice > Mass.FromKilograms(2));
        Assert.True(best.Saved > TimeSpan.FromHours(1));
    }

    [Fact]
    public void Certain_ways_come_before_doubtful_and_less_work_before_more()
    {
        IReadOnlyList<RankedMethod> ranked = CoolingAdvisor.Advise(Cases.Pot(), Rich, StandardLimits.Default).Ranked;
        for (int i = 1; i < ranked.Count; i++)
        {
            int one = Order(ranked[i - 1]);
            int other = Order(ranked[i]);
            Assert.True(one < other || (one == other && (ranked[i - 1].HandMinutes <= ranked[i].HandMinutes || one == 1)));
        }
    }

    [Fact]
    public void A_blast_chiller_with_pans_is_found_with_their_number_and_depth()
    {
        RankedMethod pans = CoolingAdvisor.Advise(Cases.Pot(), Rich, StandardLimits.Default).Ranked.First(method =>
            method.Forecast.Method.Id.Contains("blast", StringComparison.Ordinal) && method.Vessels is not null && method.Verdict.Outcome == CoolingOutcome.Meets);
        (PourInto pour, Length depth) = pans.Vessels!.Value;
        Assert.InRange(depth.Centimeters, 1, 10);
        Assert.InRange(pour.Count * depth.Meters * pour.Vessel.FloorArea.SquareMeters * 1000, 9.99, 10.01);
    }

    [Fact]
    public void Without_ice_sink_and_cold_only_the_bench_is_left()
    {
        CoolingKit bare = new() { HasSink = false, Ice = Mass.Zero, Fridge = null };
        RankedMethod only = Assert.Single(CoolingAdvisor.Advise(Cases.Pot(), bare, StandardLimits.Default).Ranked);
        Assert.Equal("bench", only.Forecast.Method.Id);
        Assert.Null(CoolingAdvisor.Advise(Cases.Pot(), bare, StandardLimits.Default).Recommended);
    }

    [Fact]
    public void No_more_ice_is_planned_than_there_is() => Assert.All(
        CoolingAdvisor.Advise(Cases.Pot(), new CoolingKit { Ice = Mass.FromKilograms(6) }, StandardLimits.Default).Ranked,
        method => Assert.True(method.Ice <= Mass.FromKilograms(6)));

    [Fact]
    public void Every_limit_can_be_asked() => Assert.All(
        StandardLimits.All, limit => Assert.NotEmpty(CoolingAdvisor.Advise(Cases.Pot(4), Rich, limit).Ranked));

    [Fact]
    public void Nonsense_is_handed_back() => Assert.NotEmpty(
        CoolingAdvisor.Advise(Cases.Pot() with { Volume = Volume.FromLiters(-1) }, new CoolingKit(), StandardLimits.Default).Problems);

    private static CoolingKit Rich => new()
    {
        WalkIn = ColdStore.WalkIn,
        BlastChiller = ColdStore.BlastChiller,
        Wands = 2,
        Vessels = [new OwnedVessels(Cases.Pans(1, 10).Vessel, 6), new OwnedVessels(CoolingVessel.Tub(Volume.FromLiters(1)), 12)],
    };

    private static int Order(RankedMethod method) => method.Verdict.Outcome switch
    {
        CoolingOutcome.Meets => 0,
        CoolingOutcome.MayFail => 1,
        _ => 2,
    };
}
