using Stockwright.Evidence;
using Stockwright.Kitchen;
using Stockwright.Planning;
using Xunit;

namespace Stockwright.Tests.Planning;

/// <summary>Deadlines and starts at their edges, and what is told of them (F.9 and F.10 in docs/equations.md), awake 6:30 to 22:30.</summary>
public sealed class DeadlineTests
{
    private static readonly DateTimeOffset Now = PlanRequests.Morning;

    // The latest start in time has passed by ten minutes, its heat would go on later: nothing is begun in the past for that.
    [Fact]
    public void It_is_the_start_that_may_not_have_passed()
    {
        DateTimeOffset by = Now.AddDays(2).AddHours(4);
        BatchPlan latest = At(PlanRequests.For("brown-chicken"), new PlanSchedule { ReadyBy = by, Night = NightPlan.GetUp }).Plan();
        DateTimeOffset now = latest.Timeline.Start.AddMinutes(10);
        Assert.True(latest.Timeline.HeatOn > now);
        BatchPlan plan = At(PlanRequests.For("brown-chicken"), new PlanSchedule { ReadyBy = by, Now = now, Night = NightPlan.GetUp }).Plan();
        Assert.Equal(now, plan.Timeline.Start);
        Assert.True(plan.HasNotice("too-late"));
        Assert.True(plan.Notice("too-late").Says(NoticePhrase.Now));
        Assert.False(plan.Notice("too-late").Says(NoticePhrase.NoNightWork));
    }

    // The fat is firm in the night and waits for the morning either way: begun a little after the latest start without night work, it may still be in time.
    [Fact]
    public void A_night_kept_free_by_beginning_early_is_in_time_and_not_told_too_late()
    {
        int free = 0;
        for (int hour = 0; hour < 24; hour++)
        {
            DateTimeOffset by = Now.AddDays(3).AddHours(hour);
            BatchPlan plan = At(PlanRequests.For("brown-beef"), new PlanSchedule { ReadyBy = by }).Plan();
            Assert.True(plan.Timeline.Ready <= by, $"{by}");
            Assert.False(plan.HasNotice("too-late"));
            free += plan.Timeline.Steps.Any(step => step.InNight) ? 0 : 1;
        }

        // A day and a half is enough to find a start without night work for every hour of the day.
        Assert.Equal(24, free);
    }

    // A start the cook has set stays, though the morning would be free of work; what starts as soon as it can waits for the morning.
    [Fact]
    public void A_start_that_is_set_stays()
    {
        PlanRequest request = PlanRequests.For("white-chicken").In(PlanRequests.PressureCooker(24, 20)).Making(2).SimmeringFor(2) with { Lid = LidPosition.On };
        BatchPlan set = At(request, new PlanSchedule { StartAt = Now.AddHours(13), Now = Now.AddHours(13) }).Plan();
        Assert.Equal(Now.AddHours(13), set.Timeline.Start);
        Assert.Equal(NoticeLevel.Warning, set.Notices.Single(notice => notice.Code is "night-work").Level);
        BatchPlan passed = At(request, new PlanSchedule { StartAt = Now.AddHours(12), Now = Now.AddHours(13) }).Plan();
        Assert.True(passed.Timeline.Start >= Now.AddHours(22.5), $"{passed.Timeline.Start}");
        PlanNotice told = passed.Notice("start-passed");
        Assert.True(told.Says(NoticePhrase.At));
        Assert.Equal([Figure.Of(passed.Timeline.Start).Value, Figure.Of(passed.Timeline.Ready).Value], told.Sizes(FigureKind.Moment));
    }

    [Fact]
    public void A_night_kept_free_is_a_hint_and_night_work_a_warning()
    {
        BatchPlan kept = At(PlanRequests.For("brown-beef"), new PlanSchedule { StartAt = Now.AddHours(6) }).Plan();
        Assert.Equal(NoticeLevel.Hint, kept.Notices.Single(notice => notice.Code is "night-kept").Level);
        Assert.False(kept.HasNotice("night-work"));
        Assert.Equal(NightPlan.OvenHold, kept.Night);
        Assert.Equal(NightPlan.KeepFree, kept.Request.Schedule.Night);
    }

    // What would make it sooner is told soonest first, each with its moment: that of the plan made so.
    [Fact]
    public void What_makes_it_sooner_is_told_soonest_first()
    {
        PlanSchedule schedule = new() { ReadyBy = Now.AddHours(20), Now = Now };
        PlanRequest request = At(PlanRequests.For("brown-beef").Making(25), schedule);
        BatchPlan plan = request.Plan();
        Figure[] ways = [.. Assert.Single(plan.Notice("too-late").All(), figure => figure.Kind == FigureKind.List).Parts!];
        Assert.True(ways.Length >= 2);
        DateTimeOffset[] moments = [.. ways.Select(way => DateTimeOffset.UnixEpoch.AddSeconds(Assert.Single(way.Parts!).Value))];
        Assert.Equal(moments.Order(), moments);
        Assert.All(moments, moment => Assert.True(moment < plan.Timeline.Ready.AddMinutes(-10)));
        DateTimeOffset up = At(request, schedule with { Night = NightPlan.GetUp }).Plan().Timeline.Ready;
        Assert.Equal(Figure.Of(up), Assert.Single(Assert.Single(ways, way => way.Word is NoticePhrase.SoonerGettingUp).Parts!));
    }

    // Late in the evening a night's work is sooner than more pots, which wait for the morning: it is told first.
    [Fact]
    public void The_soonest_is_told_first()
    {
        PlanRequest request = At(PlanRequests.For("vegetable").Making(16) with { Way = SplitWay.OneAfterAnother }, new PlanSchedule { ReadyBy = Now.AddHours(16), Now = Now.AddHours(15) });
        string[] told = [.. request.Plan().Notice("too-late").All().Select(figure => figure.Word)];
        int up = Array.IndexOf(told, NoticePhrase.SoonerGettingUp);
        Assert.InRange(up, 0, Array.IndexOf(told, NoticePhrase.SoonerTogether));
    }

    // In time only by night, with nothing to put away: it is begun in the morning, and told too late.
    [Fact]
    public void A_short_stock_is_not_worked_through_the_night_for_a_deadline()
    {
        PlanRequest request = PlanRequests.For("vegetable").Making(8);
        DateTimeOffset by = At(request, new PlanSchedule { StartAt = Now.AddHours(15), Night = NightPlan.GetUp }).Plan().Timeline.Ready.AddMinutes(20);
        Assert.True(by < Now.AddHours(22.5));
        BatchPlan plan = At(request, new PlanSchedule { ReadyBy = by, Now = Now.AddHours(15) }).Plan();
        Assert.Equal(Now.AddHours(22.5), plan.Timeline.Start);
        Assert.True(plan.HasNotice("too-late") && !plan.HasNotice("night-work"));
    }

    // Of all ways to keep the night free, in time before late, the soonest: by trying each.
    [Fact]
    public void Of_the_ways_to_keep_a_night_free_the_soonest_in_time_is_taken()
    {
        int settled = 0;
        for (int hour = 30; hour < 66; hour += 3)
        {
            PlanSchedule schedule = new() { ReadyBy = Now.AddHours(hour), Now = Now };
            PlanRequest request = At(PlanRequests.For("brown-beef").SimmeringFor(14), schedule);
            BatchPlan plan = request.Plan();
            if (plan.Timeline.Steps.Any(step => step.InNight) || plan.Night == NightPlan.KeepFree)
            {
                continue;
            }

            settled++;
            BatchPlan[] free = [.. new[] { NightPlan.OvenHold, NightPlan.StopAndCool }.Select(night => At(request, schedule with { Night = night }).Plan()).Where(other => !other.Timeline.Steps.Any(step => step.InNight))];
            Assert.Equal(free.Min(other => (other.Timeline.Ready > schedule.ReadyBy, other.Timeline.Ready)), (plan.Timeline.Ready > schedule.ReadyBy, plan.Timeline.Ready));
        }

        Assert.True(settled > 2, $"{settled}");
    }

    // A pot that comes up under its lid is sooner by more than ten minutes where the hob is weak: that is told.
    [Fact]
    public void Heating_up_with_the_lid_on_is_told_where_it_helps()
    {
        PlanRequest request = At(PlanRequests.For("white-chicken").Making(9).On(PlanRequests.Hob(HobKind.Coil, 0.9)), new PlanSchedule { ReadyBy = Now.AddHours(6), Now = Now, Night = NightPlan.GetUp });
        Assert.True(request.Plan().Notice("too-late").Says(NoticePhrase.SoonerCovered));
        Assert.True((request with { HeatsUpCovered = true, PotCount = 8, HobCount = 8 }).Plan().Notice("too-late").Says(NoticePhrase.AskForLess));
    }

    // A hob takes over two hours or not; a kettle and a crock come up as their heater does, and are not told of rings.
    [Fact]
    public void Over_two_hours_to_the_simmer_is_told_of_a_hob()
    {
        for (double kilowatts = 1; kilowatts < 3; kilowatts += 0.125)
        {
            BatchPlan plan = PlanRequests.For("white-beef").Making(8).On(PlanRequests.Hob(HobKind.Coil, kilowatts)).Plan();
            Assert.Equal(plan.HeatUp.Time.Central.TotalHours > 2, plan.HasNotice("slow-heat-up"));
        }

        BatchPlan slow = (PlanRequests.For("white-chicken").In(PlanRequests.SlowCooker(26, 18)).Making(2).SimmeringFor(8) with { Lid = LidPosition.On }).Plan();
        Assert.True(slow.HeatUp.IsReached && slow.HeatUp.Time.Central.TotalHours > 2);
        Assert.False(slow.HasNotice("slow-heat-up"));
    }

    // The recipe simmers 6 to 12 h or so: under it is shorter, over it longer. Behind a locked lid the recipe's time does not count.
    [Fact]
    public void Hours_outside_the_recipe_say_which_way()
    {
        Assert.True(PlanRequests.For("brown-beef").SimmeringFor(2).Plan().Notice("hours-outside-recipe").Says(NoticePhrase.ShorterGivesLess));
        Assert.True(PlanRequests.For("brown-beef").SimmeringFor(30).Plan().Notice("hours-outside-recipe").Says(NoticePhrase.LongerDulls));
        PlanRequest cooker = PlanRequests.For("white-chicken").In(PlanRequests.PressureCooker(24, 20)).Making(2).SimmeringFor(1) with { Lid = LidPosition.On };
        Assert.False(cooker.Plan().HasNotice("hours-outside-recipe"));
        Assert.True((cooker with { Lid = LidPosition.Off }).Plan().HasNotice("hours-outside-recipe"));
    }

    private static PlanRequest At(PlanRequest request, PlanSchedule schedule) => request with { Schedule = schedule };
}
