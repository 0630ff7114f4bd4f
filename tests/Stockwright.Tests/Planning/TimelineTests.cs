using Stockwright.Planning;
using Stockwright.Tests.Physics;
using Xunit;

namespace Stockwright.Tests.Planning;

/// <summary>Order and moments of the steps. Rules of the trade, no source, unless one is named.</summary>
public sealed class TimelineTests
{
    [Fact]
    public void Everything_is_made_ready_before_the_heat_goes_on()
    {
        Timeline timeline = PlanRequests.For("brown-veal").Plan().Timeline;
        StepKind[] first = [StepKind.Gather, StepKind.Roast, StepKind.Fill];
        Assert.All(timeline.Steps.Where(step => first.Contains(step.Kind)), step => Assert.True(step.At < timeline.HeatOn));
        Assert.Equal(timeline.HeatOn, timeline.Steps.Where(step => step.Kind == StepKind.Fill).Max(step => step.End));
        Assert.Equal(StepKind.Gather, timeline.Steps[0].Kind);
    }

    [Fact]
    public void A_blanch_comes_before_the_fill_and_a_soak_before_all()
    {
        Timeline veal = PlanRequests.For("white-veal").Plan().Timeline;
        PlanStep blanch = Assert.Single(veal.Steps, step => step.Kind == StepKind.Blanch);
        Assert.True(blanch.End <= Assert.Single(veal.Steps, step => step.Kind == StepKind.Fill).At);
        Timeline fumet = PlanRequests.For("fish-fumet").Plan().Timeline;
        Assert.Equal(TimeSpan.FromMinutes(30), Assert.Single(fumet.Steps, step => step.Kind == StepKind.Soak).Duration);
    }

    [Fact]
    public void After_the_heat_it_is_strained_cooled_chilled_defatted_and_portioned()
    {
        BatchPlan plan = PlanRequests.For("white-chicken").Plan();
        StepKind[] last = [.. plan.Timeline.Steps.Where(step => step.At >= plan.Timeline.HeatOff).Select(step => step.Kind)];
        Assert.Equal([StepKind.Stand, StepKind.Strain, StepKind.Cool, StepKind.Chill, StepKind.Defat, StepKind.Remelt, StepKind.Portion], last);
        Assert.True(plan.Timeline.Steps.First(step => step.Kind == StepKind.Cool).At >= plan.Timeline.Steps.First(step => step.Kind == StepKind.Strain).End);
    }

    [Fact]
    public void A_stock_without_fat_is_not_chilled_for_it()
    {
        Timeline timeline = PlanRequests.For("kelp-and-dried-fish").Plan().Timeline;
        Assert.DoesNotContain(timeline.Steps, step => step.Kind is StepKind.Chill or StepKind.Defat);
    }

    // Skimmed every 5 to 15 minutes in the first hour, then looked at every hour (common practice, no source).
    [Fact]
    public void It_is_skimmed_often_in_the_first_hour_and_looked_at_every_hour_after()
    {
        BatchPlan plan = PlanRequests.For("white-veal").Plan();
        DateTimeOffset simmering = plan.Timeline.HeatOn + plan.HeatUp.Time.Central;
        Assert.True(plan.Timeline.Steps.Count(step => step.Kind == StepKind.Skim && step.At < simmering.AddHours(1)) >= 4);
        DateTimeOffset[] checks = [.. plan.Timeline.Steps.Where(step => step.Kind == StepKind.Check).Select(step => step.At)];
        Assert.Equal(6, checks.Length);
        Assert.All(checks.Zip(checks.Skip(1)), pair => Close.To(1, (pair.Second - pair.First).TotalHours, 0.01));
        Assert.Equal(Enumerable.Range(0, 6).Select(index => (int?)index), plan.Timeline.Steps.Where(step => step.Kind == StepKind.Check).Select(step => step.CheckIndex));
    }

    [Fact]
    public void What_joins_later_joins_at_its_own_moment()
    {
        BatchPlan plan = PlanRequests.For("white-beef").Plan();
        AmountLine onion = plan.Amounts.Single(amount => string.Equals(amount.Ingredient.Id, "onion", StringComparison.Ordinal));
        Close.To(60, (plan.Simmer.Length - onion.JoinsAt).TotalMinutes, 0.1);
        PlanStep add = plan.Timeline.Steps.First(step => step.Kind == StepKind.Add);

        // The check of the same moment is done first: a hand does one thing at a time.
        Assert.InRange((add.At - plan.Timeline.HeatOn - onion.JoinsAt).TotalMinutes, -0.1, StepTimes.Check.TotalMinutes + 0.1);
    }

    [Fact]
    public void Kelp_comes_out_before_the_flakes_go_in()
    {
        BatchPlan plan = PlanRequests.For("kelp-and-dried-fish").Making(2).Plan();
        AmountLine flakes = plan.Amounts.Single(amount => string.Equals(amount.Ingredient.Id, "bonito-flakes", StringComparison.Ordinal));
        Assert.True(flakes.JoinsAt > TimeSpan.FromMinutes(35), $"{flakes.JoinsAt}");
        Close.To(60, plan.Simmer.Samples.First(sample => sample.At >= TimeSpan.FromMinutes(34.9)).Temperature.DegreesCelsius, 1);

        // Culinary reference pages on this stock: a litre of water gives 0.85 to 0.9 L.
        Assert.InRange(plan.Yield.Central / plan.Fit.WaterToLine, 0.84, 0.91);
    }

    [Fact]
    public void Told_when_it_must_be_ready_it_works_backwards()
    {
        DateTimeOffset noon = PlanRequests.Morning.AddDays(2).AddHours(4);
        BatchPlan plan = PlanRequests.For("brown-chicken").ReadyBy(noon).Plan();
        Assert.InRange((noon - plan.Timeline.Ready).TotalMinutes, 0, 1);
    }

    // The fat is firm in the night, so it is lifted in the morning: half past six is too early to be ready, the evening before is not.
    [Fact]
    public void Ready_for_breakfast_means_ready_the_evening_before()
    {
        DateTimeOffset breakfast = PlanRequests.Morning.AddDays(2).AddHours(-1.5);
        BatchPlan plan = PlanRequests.For("brown-chicken").ReadyBy(breakfast).Plan();
        Assert.InRange(plan.Timeline.Ready, breakfast.AddHours(-9), breakfast.AddHours(-8));
        Assert.DoesNotContain(plan.Timeline.Steps, step => step.InNight && step.Kind is StepKind.Defat or StepKind.Remelt or StepKind.Portion);
    }

    // Where the morning decides, nothing is gained by a later start: the plan starts as late as it may.
    [Theory]
    [InlineData(NightPlan.GetUp)]
    [InlineData(NightPlan.OvenHold)]
    [InlineData(NightPlan.StopAndCool)]
    public void It_starts_no_earlier_than_it_must(NightPlan night)
    {
        for (int hour = 0; hour < 24; hour += 2)
        {
            DateTimeOffset by = PlanRequests.Morning.AddDays(3).AddHours(hour);
            BatchPlan plan = PlanRequests.For("white-veal").ReadyBy(by, night).Plan();
            Assert.True(plan.Timeline.Ready <= by);
            if (by - plan.Timeline.Ready > TimeSpan.FromMinutes(1))
            {
                Assert.True(PlanRequests.For("white-veal").Starting(plan.Timeline.Start.AddMinutes(15), night).Plan().Timeline.Ready > by, $"{by}");
            }
        }
    }

    [Fact]
    public void Three_days_of_close_watching_are_still_drawn_with_at_most_300_points()
    {
        PlanRequest request = PlanRequests.For("brown-beef").SimmeringFor(72).Starting(PlanRequests.Morning, NightPlan.StopAndCool) with { CheckInterval = TimeSpan.FromMinutes(20) };
        BatchPlan plan = request.Plan();
        Assert.True(plan.Simmer.Checks.Count > 200);
        Assert.InRange(plan.Simmer.Samples.Count, 250, 300);
        Assert.Equal(plan.Simmer.Length, plan.Simmer.Samples[^1].At);
        Assert.Equal(TimeSpan.Zero, plan.Simmer.Samples[0].At);
    }

    [Fact]
    public void The_cautions_stand_where_the_hand_is_at_risk()
    {
        Timeline timeline = PlanRequests.For("brown-veal").Plan().Timeline;
        bool Warns(StepKind kind, string code) => timeline.Steps.Where(step => step.Kind == kind).SelectMany(step => step.Cautions).Any(caution => string.Equals(caution.Code, code, StringComparison.Ordinal));
        Assert.True(Warns(StepKind.Strain, "scald-straining"));
        Assert.True(Warns(StepKind.HeatUp, "unattended"));
        Assert.True(Warns(StepKind.Roast, "hot-fat"));
        Assert.True(Warns(StepKind.Portion, "glass"));
    }
}
