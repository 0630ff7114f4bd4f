using Stockwright.Kitchen;
using Stockwright.Planning;
using Xunit;

namespace Stockwright.Tests.Planning;

/// <summary>The rules of the night at their edges (F.10 in docs/equations.md; practice), awake 6:30 to 22:30.</summary>
public sealed class NightRuleTests
{
    private static readonly DateTimeOffset Evening = PlanRequests.Morning.AddHours(12);

    // Over an hour and a half after bedtime is midnight.
    [Theory]
    [InlineData(30, 60, false)]
    [InlineData(60, 30, false)]
    [InlineData(60, 31, true)]
    [InlineData(95, 2, true)]
    [InlineData(5 * 60, 2, true)]
    public void What_is_over_an_hour_and_a_half_after_bedtime_is_finished(double minutesAfterBed, double hands, bool isWork)
    {
        PlanSchedule schedule = new() { StartAt = Evening };
        DateTimeOffset at = Evening.AddHours(2.5).AddMinutes(minutesAfterBed);
        Timeline timeline = PlanRequests.For("vegetable").Plan().Timeline with
        {
            Steps =
            [
                new PlanStep { Key = "check-1", Kind = StepKind.Check, Title = "", At = Evening, Duration = TimeSpan.FromMinutes(3), HandsOn = TimeSpan.FromMinutes(3) },
                new PlanStep { Key = "strain-1", Kind = StepKind.Strain, Title = "", At = at, Duration = TimeSpan.FromMinutes(hands), HandsOn = TimeSpan.FromMinutes(hands), InNight = true },
            ],
        };
        Assert.Equal(isWork, NightSettler.HasWork(schedule, timeline));
    }

    // Three hours of simmer or more are put away, in the oven first where there is one for an open pot; never a locked pot or a hard boil.
    [Fact]
    public void What_is_put_away_and_how()
    {
        PlanRequest beef = PlanRequests.For("brown-beef");
        Assert.Equal([NightPlan.OvenHold, NightPlan.StopAndCool], Ways(beef, 3));
        Assert.Empty(Ways(beef, 2.99));
        Assert.Equal([NightPlan.StopAndCool], Ways(beef with { Oven = null }, 8));
        Assert.Equal([NightPlan.StopAndCool], Ways(PlanRequests.For("white-chicken").In(PlanRequests.Kettle(45, 45)).Making(20), 8));
        Assert.Empty(Ways(PlanRequests.For("white-chicken").In(PlanRequests.PressureCooker(24, 20)).Making(2) with { Lid = LidPosition.On }, 8));
        Assert.Empty(Ways(PlanRequests.For("pork-bone-broth"), 8));
    }

    // Simmering from 20:15, at 22:15 two hours are done: with an hour to go it is finished, with ten minutes more it is put away until 6:30.
    [Theory]
    [InlineData(3, 0)]
    [InlineData(3.17, 1)]
    [InlineData(8, 1)]
    public void With_an_hour_to_go_it_is_finished(double hours, int windows)
    {
        foreach (NightPlan night in new[] { NightPlan.OvenHold, NightPlan.StopAndCool })
        {
            IReadOnlyList<NightWindow> found = Find(night, Evening.AddMinutes(15), hours, 0.5);
            Assert.Equal(windows, found.Count);
            Assert.All(found, window => Assert.Equal((2.0, 8.25), (window.FromSeconds / 3600, window.Seconds / 3600)));
        }
    }

    // A pot that takes over three hours to come back is not stopped; the oven keeps it hot however long that takes.
    [Theory]
    [InlineData(2.9, 1, 1)]
    [InlineData(3.1, 0, 1)]
    public void A_pot_slow_to_come_back_is_not_stopped(double reheat, int stops, int holds)
    {
        Assert.Equal(stops, Find(NightPlan.StopAndCool, Evening, 9, reheat).Count);
        Assert.Equal(holds, Find(NightPlan.OvenHold, Evening, 9, reheat).Count);
        Assert.Empty(Find(NightPlan.GetUp, Evening, 9, reheat));
        Assert.Empty(Find(NightPlan.KeepFree, Evening, 9, reheat));
    }

    // Stopped, the simmer's clock stands still for the night: of 20 h from 12:15, 10 are done at 22:15, and from 7:00 the last 10 are done by 17:00. In the oven it
    // goes on: 18:15 of them by 6:30, and the rest by day.
    [Fact]
    public void The_clock_of_the_simmer_stands_still_while_it_is_cold()
    {
        DateTimeOffset noon = PlanRequests.Morning.AddHours(4.25);
        Assert.Equal([10.0], Find(NightPlan.StopAndCool, noon, 20, 0.5).Select(window => window.FromSeconds / 3600));
        Assert.Equal([10.0, 25.25], Find(NightPlan.StopAndCool, noon, 40, 0.5).Select(window => window.FromSeconds / 3600));
        Assert.Equal([10.0], Find(NightPlan.OvenHold, noon, 20, 0.5).Select(window => window.FromSeconds / 3600));
        Assert.Equal([10.0, 34.0], Find(NightPlan.OvenHold, noon, 40, 0.5).Select(window => window.FromSeconds / 3600));
    }

    // What is offered for a night says what it does: a later start is called later, and only pots that can be put away are.
    [Fact]
    public void What_is_offered_is_what_it_says()
    {
        int seen = 0;
        for (int hour = 0; hour < 24; hour += 3)
        {
            PlanRequest request = PlanRequests.For("white-veal").Starting(PlanRequests.Morning.AddHours(hour));
            foreach (NightChoice choice in request.Plan().Timeline.NightChoices.Where(choice => choice.Code is "move-start"))
            {
                double moved = (choice.Start - request.Schedule.StartAt!.Value).TotalHours;
                Assert.NotEqual(0, moved);
                Assert.Equal($"Start {Math.Abs(moved):0.#} h {(moved > 0 ? "later" : "earlier")}", choice.Title, StringComparer.Ordinal);
                seen++;
            }
        }

        Assert.True(seen > 3);
        Assert.Equal(["move-start"], Choices(PlanRequests.For("white-chicken").In(PlanRequests.PressureCooker(24, 20)).Making(2).SimmeringFor(4) with { Lid = LidPosition.On }), StringComparer.Ordinal);
        Assert.Equal(["move-start", "stop-and-cool"], Choices(PlanRequests.For("white-chicken").In(PlanRequests.Kettle(45, 45)).Making(20)), StringComparer.Ordinal);
        Assert.Equal(["move-start", "oven-hold", "stop-and-cool"], Choices(PlanRequests.For("white-chicken")), StringComparer.Ordinal);
    }

    // Begun in an hour from now, an earlier start may be free of night work, but it has passed.
    [Fact]
    public void No_start_in_the_past_is_offered()
    {
        int seen = 0;
        for (int hour = 0; hour < 24; hour += 2)
        {
            DateTimeOffset now = PlanRequests.Morning.AddHours(hour);
            PlanRequest request = PlanRequests.For("white-veal") with { Schedule = new PlanSchedule { StartAt = now.AddHours(1), Now = now, Night = NightPlan.GetUp } };
            foreach (NightChoice choice in request.Plan().Timeline.NightChoices)
            {
                seen++;
                Assert.True(choice.Start >= now, $"{choice.Title} at {now}: {choice.Start}");
            }
        }

        Assert.True(seen > 10);
    }

    // Waited for, it is not offered to begin so that it comes too late.
    [Fact]
    public void Nothing_that_comes_too_late_is_offered()
    {
        int seen = 0;
        for (int hour = 0; hour < 24; hour++)
        {
            DateTimeOffset by = PlanRequests.Morning.AddDays(2).AddHours(hour);
            foreach (NightChoice choice in PlanRequests.For("brown-beef").ReadyBy(by).Plan().Timeline.NightChoices.Where(choice => choice.Code is "move-start"))
            {
                seen++;
                Assert.True(choice.Ready <= by, $"{choice.Ready} for {by}");
            }
        }

        Assert.True(seen > 3, $"{seen}");
    }

    private static IReadOnlyList<NightPlan> Ways(PlanRequest request, double hours) =>
        NightSettler.Ways(request, PlanRequests.For("brown-beef").Plan().Boiling with { PlannedTime = TimeSpan.FromHours(hours) });

    private static IReadOnlyList<NightWindow> Find(NightPlan night, DateTimeOffset simmering, double hours, double reheat) =>
        NightWindows.Find(new PlanSchedule { StartAt = simmering, Night = night }, simmering, TimeSpan.FromHours(hours), TimeSpan.FromHours(reheat));

    private static IEnumerable<string> Choices(PlanRequest request) => request.Starting(PlanRequests.Morning.AddHours(12)).Plan().Timeline.NightChoices.Select(choice => choice.Code);
}
