using Stockwright.Kitchen;
using Stockwright.Planning;
using Stockwright.Tests.Physics;
using UnitsNet;
using Xunit;

namespace Stockwright.Tests.Planning;

/// <summary>Rounds and pots in the timetable (F.9 in docs/equations.md), against what comes of laying them by hand.</summary>
public sealed class RoundsTests
{
    private static readonly DateTimeOffset Friday = new(2026, 1, 16, 16, 0, 0, TimeSpan.Zero);

    // Tried by a caterer: 25 L by Friday 16:00 from two 20 L pots. Three potfuls in two rounds, all portioned by then.
    [Fact]
    public void Twenty_five_litres_by_Friday_are_all_in_the_timetable()
    {
        BatchPlan plan = (TwentyLitrePot("brown-chicken").Making(25).ReadyBy(Friday) with { PotCount = 2, HobCount = 2 }).Plan();
        Assert.Equal((3, 2), (plan.Fit.Potfuls, plan.Timeline.Rounds.Count));
        Close.Relative(25, plan.Total.Central.Liters, 0.01);
        Assert.True(plan.Timeline.Ready <= Friday);
        Assert.True(plan.Timeline.Ready > Friday.AddHours(-24));
        Assert.Equal(plan.Timeline.Ready, plan.Timeline.Steps.Max(step => step.End));
        Assert.Empty(PlanInvariants.Broken(plan));

        // Stock of every potful is portioned: the time it takes says of how much.
        TimeSpan portioned = TimeSpan.FromTicks(plan.Timeline.Steps.Where(step => step.Kind == StepKind.Portion).Sum(step => step.Duration.Ticks));
        Assert.True(portioned >= TimeSpan.FromMinutes(10 + (2 * 24.5)));
    }

    // By hand: two pots side by side take twice the weighing, filling, skimming and straining, and one simmer.
    [Fact]
    public void Pots_side_by_side_take_twice_the_handwork_and_one_simmer()
    {
        PlanRequest request = TwentyLitrePot("brown-beef").Making(18);
        BatchPlan apart = request.Starting(PlanRequests.Morning).Plan();
        BatchPlan together = (request with { PotCount = 2, HobCount = 2 }).Plan();
        Assert.Equal((2, 2), (apart.Timeline.Rounds.Count, apart.Fit.Rounds));
        Assert.Equal((1, 2), (together.Timeline.Rounds.Count, together.Fit.AtOnce));
        Assert.True(together.Timeline.Ready < apart.Timeline.Ready);
        PlanStep strain = together.Timeline.Steps.Single(step => step.Kind == StepKind.Strain);
        Assert.Equal(StepTimes.Strain * 2, strain.HandsOn);
        Assert.Contains("both pots", strain.Title, StringComparison.Ordinal);
        Assert.Equal(2, apart.Timeline.Steps.Count(step => step.Kind == StepKind.Strain));
        Assert.Contains("round 2 of 2", apart.Timeline.Steps.Last(step => step.Kind == StepKind.Strain).Title, StringComparison.Ordinal);

        // The fat is lifted and the stock portioned once, when all of it is cold.
        Assert.Equal(1, apart.Timeline.Steps.Count(step => step.Kind == StepKind.Defat));
        Assert.Equal(apart.Timeline.HandsOn.TotalMinutes, together.Timeline.HandsOn.TotalMinutes, 40.0);
    }

    // Brute force on small cases: as many potfuls as it takes, of all the numbers that would do, the least; and no order of them is sooner than one after the other.
    [Theory]
    [InlineData(12)]
    [InlineData(22)]
    [InlineData(31)]
    public void The_fewest_equal_potfuls_that_fit(double litres)
    {
        PlanRequest request = TwentyLitrePot("brown-beef").Making(litres);
        BatchPlan plan = (request with { Way = SplitWay.OneAfterAnother }).Plan();
        int fewest = Enumerable.Range(1, 12).First(count => request.Making(litres / count).Plan().Fit is { Verdict: FitVerdict.Fits });
        Assert.Equal(fewest, plan.Fit.Potfuls);
        Assert.Equal(Enumerable.Range(0, plan.Fit.Potfuls), plan.Timeline.Rounds.Select((_, index) => index));
        foreach ((RoundTimes one, RoundTimes next) in plan.Timeline.Rounds.Zip(plan.Timeline.Rounds.Skip(1)))
        {
            // The cook's hands are free a quarter of an hour into the cooling; sooner nothing begins.
            Assert.True(next.Start >= one.Strained + StepTimes.CoolHands);
        }
    }

    [Fact]
    public void A_round_that_would_end_in_the_night_waits_for_the_morning()
    {
        PlanRequest request = TwentyLitrePot("brown-chicken").Making(18).Starting(PlanRequests.Morning.AddHours(4), NightPlan.StopAndCool);
        BatchPlan plan = request.Plan();
        Assert.Equal(2, plan.Timeline.Rounds.Count);
        Assert.Equal(plan.Timeline.Rounds[0].Start.Date.AddDays(1), plan.Timeline.Rounds[1].Start.Date);
        Assert.DoesNotContain(plan.Timeline.Steps, step => step.InNight);

        // What was cold overnight is finished first.
        PlanStep portion = plan.Timeline.Steps.First(step => step.Kind == StepKind.Portion);
        Assert.True(portion.End <= plan.Timeline.Rounds[1].Start);
    }

    [Fact]
    public void A_batch_is_started_from_one_potful()
    {
        BatchPlan one = (TwentyLitrePot("white-chicken").Making(18) with { PotCount = 2, HobCount = 2 }).Plan().ForOnePot();
        Assert.Equal((1, 1), (one.Fit.Potfuls, one.Fit.AtOnce));
        Assert.Single(one.Timeline.Rounds);
        Assert.Equal(FitVerdict.Fits, one.Fit.Verdict);
        Assert.False(one.HasNotice("does-not-fit"));
        Assert.DoesNotContain(one.Timeline.Steps, step => step.Title.Contains("pots", StringComparison.Ordinal));
        Assert.Equal(StepTimes.Strain, one.Timeline.Steps.Single(step => step.Kind == StepKind.Strain).HandsOn);
    }

    private static PlanRequest TwentyLitrePot(string recipe) =>
        PlanRequests.For(recipe).In(Pot.FromBrimVolume("pot", "Pot", Volume.FromLiters(20), Length.FromCentimeters(28)));
}
