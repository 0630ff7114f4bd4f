using Stockwright.Evidence;
using Stockwright.Kitchen;
using Stockwright.Planning;
using Xunit;

namespace Stockwright.Tests.Planning;

/// <summary>Time that has passed is not planned, and nights are kept free (F.9 and F.10 in docs/equations.md).</summary>
public sealed class PunctualityTests
{
    private static readonly DateTimeOffset Now = PlanRequests.Morning;

    [Fact]
    public void A_start_that_has_passed_is_now_and_told()
    {
        BatchPlan plan = At(PlanRequests.For("brown-chicken"), new PlanSchedule { StartAt = Now.AddHours(-3), Now = Now }).Plan();
        Assert.Equal(Now, plan.Timeline.Start);
        Assert.True(plan.HasNotice("start-passed"));
        Assert.False(At(PlanRequests.For("brown-chicken"), new PlanSchedule { StartAt = Now, Now = Now }).Plan().HasNotice("start-passed"));
    }

    [Theory]
    [InlineData(0.17)]
    [InlineData(5)]
    [InlineData(-48)]
    public void What_cannot_be_met_is_answered_with_the_earliest_there_is(double hoursFromNow)
    {
        DateTimeOffset by = Now.AddHours(hoursFromNow);
        BatchPlan plan = At(PlanRequests.For("brown-chicken"), new PlanSchedule { ReadyBy = by, Now = Now }).Plan();
        Assert.Equal(Now, plan.Timeline.Start);
        PlanNotice notice = plan.Notices.Single(one => one.Code is "too-late");
        Assert.Contains(Figure.Of(plan.Timeline.Ready), notice.Figures);
        Assert.Equal(PlanPart.ReadyBy, notice.Part);
    }

    // Late in the evening: the earliest that leaves the night alone is begun in the morning, and what a night's work would win is told.
    [Fact]
    public void The_earliest_there_is_leaves_the_night_alone()
    {
        BatchPlan plan = At(PlanRequests.For("brown-chicken"), new PlanSchedule { ReadyBy = Now.AddHours(18), Now = Now.AddHours(13) }).Plan();
        Assert.DoesNotContain(plan.Timeline.Steps, step => step.InNight);
        Assert.True(plan.Timeline.Start > Now.AddHours(13));
        PlanNotice told = plan.Notice("too-late");
        Assert.True(told.Says(NoticePhrase.SoonerGettingUp));

        // What keeps the night free begins in the morning too: a lid on the way up wins it minutes, not a night.
        Assert.False(told.Says(NoticePhrase.SoonerCovered));
    }

    // Three potfuls by tomorrow night, asked for in the evening: in time only with a night's work. That is off, so the earliest without is the answer, and what the night would win is told.
    [Fact]
    public void A_night_is_not_worked_through_for_a_deadline_unless_asked()
    {
        DateTimeOffset evening = Now.AddHours(13);
        PlanRequest request = PlanRequests.For("brown-chicken").Making(25);
        DateTimeOffset by = At(request, new PlanSchedule { StartAt = evening, Night = NightPlan.GetUp }).Plan().Timeline.Ready.AddMinutes(30);
        BatchPlan plan = At(request, new PlanSchedule { ReadyBy = by, Now = evening }).Plan();
        Assert.DoesNotContain(plan.Timeline.Steps, step => step.InNight);
        PlanNotice told = plan.Notice("too-late");
        Assert.True(told.Says(NoticePhrase.NoNightWork));
        Assert.True(told.Says(NoticePhrase.SoonerGettingUp));
        BatchPlan up = At(request, new PlanSchedule { ReadyBy = by, Now = evening, Night = NightPlan.GetUp }).Plan();
        Assert.True(up.Timeline.Ready <= by);
        Assert.False(up.HasNotice("too-late"));
    }

    [Fact]
    public void What_can_be_met_is()
    {
        BatchPlan plan = At(PlanRequests.For("brown-chicken"), new PlanSchedule { ReadyBy = Now.AddHours(60), Now = Now }).Plan();
        Assert.True(plan.Timeline.Start >= Now && plan.Timeline.Ready <= Now.AddHours(60));
        Assert.False(plan.HasNotice("too-late"));
        Assert.DoesNotContain(plan.Timeline.Steps, step => step.InNight);
    }

    // Three potfuls one after the other are late; side by side they are sooner, and that is told with the moment.
    [Fact]
    public void What_would_make_it_sooner_is_told()
    {
        PlanRequest request = PlanRequests.For("brown-beef").Making(25);
        BatchPlan late = At(request, new PlanSchedule { ReadyBy = Now.AddHours(20), Now = Now }).Plan();
        Assert.True(late.Fit.Potfuls > 1);
        Assert.True(late.Notice("too-late").Says(NoticePhrase.SoonerTogether));
        BatchPlan together = At(request with { PotCount = 8, HobCount = 8 }, new PlanSchedule { ReadyBy = Now.AddHours(20), Now = Now }).Plan();
        Assert.True(together.Timeline.Ready < late.Timeline.Ready);
    }

    // Today's faults: a 30-minute mushroom stock begun at nine in the evening took 37 h, a brown beef on a ring of 0.8 kW twelve days.
    [Fact]
    public void A_short_batch_begun_late_is_finished()
    {
        BatchPlan plan = At(PlanRequests.For("mushroom").SimmeringFor(0.5), new PlanSchedule { StartAt = Now.AddHours(13) }).Plan();
        Assert.True(plan.Timeline.Strained - plan.Timeline.Start < TimeSpan.FromHours(4));
        Assert.Equal(NightPlan.KeepFree, plan.Night);
    }

    [Fact]
    public void A_batch_with_under_an_hour_to_go_at_bedtime_is_finished()
    {
        // Simmers from about 17:10; at 22:15 some five hours are done.
        PlanRequest request = PlanRequests.For("white-beef").SimmeringFor(5.75);
        BatchPlan plan = At(request, new PlanSchedule { StartAt = Now.AddHours(8), Night = NightPlan.StopAndCool }).Plan();
        Assert.DoesNotContain(plan.Timeline.Steps, step => step.Kind == StepKind.NightHold);
        BatchPlan longer = At(request.SimmeringFor(8), new PlanSchedule { StartAt = Now.AddHours(8), Night = NightPlan.StopAndCool }).Plan();
        Assert.Contains(longer.Timeline.Steps, step => step.Kind == StepKind.NightHold);
    }

    [Fact]
    public void On_a_weak_ring_it_is_not_stretched_over_days()
    {
        PlanRequest weak = PlanRequests.For("brown-beef").Making(8).On(PlanRequests.Hob(HobKind.Coil, 0.8));
        foreach (NightPlan night in Enum.GetValues<NightPlan>())
        {
            BatchPlan plan = At(weak, new PlanSchedule { StartAt = Now, Night = night }).Plan();
            Assert.True(plan.Timeline.Ready - plan.Timeline.Start < TimeSpan.FromDays(3), $"{night}: {plan.Timeline.Ready - plan.Timeline.Start}");
            Assert.True(plan.HasNotice("slow-heat-up") || plan.HasNotice("hob-too-weak"));
        }
    }

    [Fact]
    public void A_night_is_kept_free_in_the_oven_where_there_is_one()
    {
        PlanRequest request = At(PlanRequests.For("brown-beef"), new PlanSchedule { StartAt = Now.AddHours(6) });
        BatchPlan oven = request.Plan();
        Assert.Equal(NightPlan.OvenHold, oven.Night);
        Assert.True(oven.HasNotice("night-kept"));
        Assert.DoesNotContain(oven.Timeline.Steps, step => step.InNight);
        Assert.Equal(["get-up", "stop-and-cool"], oven.Timeline.NightChoices.Select(choice => choice.Code), StringComparer.Ordinal);

        BatchPlan stopped = (request with { Oven = null }).Plan();
        Assert.Equal(NightPlan.StopAndCool, stopped.Night);

        BatchPlan up = At(request, request.Schedule with { Night = NightPlan.GetUp }).Plan();
        Assert.False(up.HasNotice("night-kept") || up.HasNotice("night-work"));
        Assert.Contains(up.Timeline.Steps, step => step.InNight);
    }

    [Fact]
    public void Hours_outside_the_recipe_are_told()
    {
        Assert.True(PlanRequests.For("brown-beef").SimmeringFor(3).Plan().HasNotice("hours-outside-recipe"));
        Assert.True(PlanRequests.For("brown-beef").SimmeringFor(30).Plan().HasNotice("hours-outside-recipe"));
        Assert.False(PlanRequests.For("brown-beef").SimmeringFor(9).Plan().HasNotice("hours-outside-recipe"));
        Assert.False(PlanRequests.For("brown-beef").Plan().HasNotice("hours-outside-recipe"));
    }

    // By hand: 45 K x (55 kg x 3.8 kJ/(kg K)) over 0.74 x 0.8 kW is 4.4 h to 60 °C without losses, and over 0.4 x 12 kW half an hour.
    [Fact]
    public void A_pot_that_lingers_below_60_on_its_way_up_is_told()
    {
        PlanRequest big = PlanRequests.For("white-beef").In(PlanRequests.Straight(45, 45)).Making(28);
        Assert.True(big.On(PlanRequests.Hob(HobKind.Coil, 0.8)).Plan().HasNotice("slow-warm-up"));
        Assert.False(big.On(PlanRequests.Hob(HobKind.Gas, 12)).Plan().HasNotice("slow-warm-up"));
        Assert.True(big.On(PlanRequests.Hob(HobKind.Coil, 3)).Plan().HasNotice("slow-heat-up"));
        Assert.False(big.On(PlanRequests.Hob(HobKind.Gas, 12)).Plan().HasNotice("slow-heat-up"));
    }

    private static PlanRequest At(PlanRequest request, PlanSchedule schedule) => request with { Schedule = schedule };
}
