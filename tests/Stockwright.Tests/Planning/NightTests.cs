using Stockwright.Kitchen;
using Stockwright.Planning;
using Stockwright.Simmering;
using Stockwright.Tests.Physics;
using UnitsNet;
using Xunit;

namespace Stockwright.Tests.Planning;

/// <summary>A simmer that runs into the night, awake 6:30 to 22:30. Calendar facts from the IANA time zone data.</summary>
public sealed class NightTests
{
    private static readonly DateTimeOffset Afternoon = PlanRequests.Morning.AddHours(8);

    [Fact]
    public void A_step_that_needs_hands_in_the_night_is_marked()
    {
        Timeline timeline = PlanRequests.For("white-veal").Starting(Afternoon).Plan().Timeline;
        Assert.All(timeline.Steps, step => Assert.Equal(step.HandsOn > TimeSpan.Zero && (step.At.TimeOfDay < new TimeSpan(6, 30, 0) || step.At.TimeOfDay >= new TimeSpan(22, 30, 0)), step.InNight));
        Assert.Contains(timeline.Steps, step => step.InNight);
        Assert.Equal(["move-start", "oven-hold", "stop-and-cool"], timeline.NightChoices.Select(choice => choice.Code), StringComparer.Ordinal);
    }

    [Fact]
    public void A_day_without_night_work_offers_nothing() =>
        Assert.Empty(PlanRequests.For("white-chicken").Plan().Timeline.NightChoices);

    // 25 October 2026: clocks go back at 2:00 to 1:00 in London, so 22:30 to 6:30 lasts nine hours. 28 March 2027: forward, seven hours.
    [Theory]
    [InlineData(2026, 10, 24, 1, 9)]
    [InlineData(2027, 3, 27, 0, 7)]
    public void The_night_the_clocks_change_is_as_long_as_it_is(int year, int month, int day, int offset, int hours)
    {
        DateTimeOffset start = new(year, month, day, 16, 0, 0, TimeSpan.FromHours(offset));
        Timeline timeline = PlanRequests.For("brown-beef").Starting(start, zone: PlanRequests.London).Plan().Timeline;
        Assert.All(timeline.Steps.Where(step => step.HandsOn > TimeSpan.Zero), step =>
        {
            TimeSpan clock = TimeZoneInfo.ConvertTime(step.At, PlanRequests.London).TimeOfDay;
            Assert.Equal(clock < new TimeSpan(6, 30, 0) || clock >= new TimeSpan(22, 30, 0), step.InNight);
        });

        BatchPlan held = PlanRequests.For("brown-beef").Starting(start, NightPlan.OvenHold, PlanRequests.London).Plan();
        PlanStep[] hold = [.. held.Timeline.Steps.Where(step => step.Kind == StepKind.NightHold)];
        Assert.Equal(2, hold.Length);

        // It goes in a quarter of an hour before bed, or as soon as the hands are free of the last skim.
        Close.To(hours + 0.25, (hold[1].At - hold[0].At).TotalHours, 0.1);
        Assert.Equal(new TimeSpan(6, 30, 0), TimeZoneInfo.ConvertTime(hold[1].At, PlanRequests.London).TimeOfDay);
    }

    [Fact]
    public void Moving_the_start_frees_the_night_it_promises_to()
    {
        foreach (string recipe in new[] { "white-veal", "brown-beef", "brown-chicken", "game", "lamb" })
        {
            for (int hour = 0; hour < 24; hour += 3)
            {
                foreach (NightChoice choice in PlanRequests.For(recipe).Starting(PlanRequests.Morning.AddHours(hour)).Plan().Timeline.NightChoices)
                {
                    Timeline chosen = choice.Request.Plan().Timeline;
                    Assert.Equal(choice.NightSteps, chosen.Steps.Count(step => step.InNight));
                    Close.To(0, (choice.Ready - chosen.Ready).TotalMinutes, 15);
                    if (string.Equals(choice.Code, "move-start", StringComparison.Ordinal))
                    {
                        Assert.Equal(choice.Start, chosen.Start);
                        Assert.Equal(choice.Ready, chosen.Ready);
                    }
                }
            }
        }
    }

    [Fact]
    public void In_the_oven_nobody_looks_until_morning()
    {
        BatchPlan plan = PlanRequests.For("brown-beef").Starting(Afternoon, NightPlan.OvenHold).Plan();
        PlanStep[] hold = [.. plan.Timeline.Steps.Where(step => step.Kind == StepKind.NightHold)];
        Assert.DoesNotContain(plan.Timeline.Steps, step => step.InNight);
        Assert.DoesNotContain(plan.Timeline.Steps, step => step.At > hold[0].At && step.At < hold[1].At && step.HandsOn > TimeSpan.Zero);
        Assert.True(plan.Timeline.HeatOff >= hold[1].At);
        SimmerSample asleep = plan.Simmer.Samples.First(sample => plan.Timeline.HeatOn + sample.At > hold[0].At.AddHours(2));
        Close.To(ScriptWriter.OvenHoldCelsius, asleep.Temperature.DegreesCelsius, 0.1);
        Assert.Equal(0, asleep.HeatIn.Watts);
    }

    [Fact]
    public void In_the_oven_the_pot_loses_less_and_still_makes_what_was_asked()
    {
        BatchPlan up = PlanRequests.For("brown-beef").Uncovered().Starting(Afternoon).Plan();
        BatchPlan held = PlanRequests.For("brown-beef").Uncovered().Starting(Afternoon, NightPlan.OvenHold).Plan();

        // A seated lid lets a sixth past of what the covered surface loses (1/29 over 0.2), for two thirds of the time.
        Assert.True(held.Simmer.Evaporated.Central < up.Simmer.Evaporated.Central * 0.85);
        Close.Relative(3.785, held.Yield.Central.Liters, 0.005);
        Assert.True(held.Fit.WaterToLine + held.Simmer.ToppedUp.Central < up.Fit.WaterToLine + up.Simmer.ToppedUp.Central);
    }

    [Fact]
    public void Stopping_cools_the_pot_and_goes_on_in_the_morning()
    {
        BatchPlan up = PlanRequests.For("brown-beef").Starting(Afternoon).Plan();
        BatchPlan stopped = PlanRequests.For("brown-beef").Starting(Afternoon, NightPlan.StopAndCool).Plan();
        PlanStep pause = Assert.Single(stopped.Timeline.Steps, step => step.Kind == StepKind.NightHold);
        Assert.Equal(new TimeSpan(22, 15, 0), pause.At.TimeOfDay);
        Assert.Equal(new TimeSpan(6, 30, 0), pause.End.TimeOfDay);
        double reheat = (stopped.Simmer.Length - up.Simmer.Length - pause.Duration).TotalMinutes;
        Assert.InRange(reheat, 5, 40);
        Close.To(5, stopped.Simmer.Samples.Where(sample => sample.At > TimeSpan.FromHours(4)).Min(sample => sample.Temperature.DegreesCelsius), 0.1);
        Assert.Contains(pause.Cautions, caution => string.Equals(caution.Code, "stop-and-cool", StringComparison.Ordinal));
    }

    // A hob that takes all day to bring it back would never finish: the plan still ends.
    [Fact]
    public void A_hob_too_weak_to_reheat_in_a_day_does_not_stop_for_ever()
    {
        BatchPlan plan = PlanRequests.For("turkey").In(PlanRequests.Straight(50, 50)).Making(40).On(PlanRequests.Hob(HobKind.Gas, 0.6)).Starting(Afternoon, NightPlan.StopAndCool).Plan();
        Assert.Empty(PlanInvariants.Broken(plan));
    }

    // In London the hour from 1:00 to 2:00 of 28 March 2027 does not exist: who wakes at half past one wakes at half past two that day.
    [Fact]
    public void A_waking_hour_that_the_clock_jumps_over_comes_an_hour_later()
    {
        PlanRequest request = PlanRequests.For("brown-beef") with
        {
            Schedule = new PlanSchedule { StartAt = new(2027, 3, 27, 12, 0, 0, TimeSpan.Zero), Night = NightPlan.OvenHold, Zone = PlanRequests.London, WakesAt = new TimeOnly(1, 30), SleepsAt = new TimeOnly(18, 0) },
        };
        PlanStep out_ = request.Plan().Timeline.Steps.Last(step => step.Kind == StepKind.NightHold);
        Assert.Equal(new DateTimeOffset(2027, 3, 28, 2, 30, 0, TimeSpan.FromHours(1)), TimeZoneInfo.ConvertTime(out_.At, PlanRequests.London));
    }

    [Fact]
    public void A_lid_ajar_and_an_hour_less_sleep_do_not_matter_to_a_short_stock()
    {
        PlanRequest request = PlanRequests.For("fish-fumet").Starting(PlanRequests.Morning) with { Schedule = new PlanSchedule { StartAt = PlanRequests.Morning, Night = NightPlan.OvenHold, WakesAt = new TimeOnly(7, 0), SleepsAt = new TimeOnly(1, 0) } };
        Assert.DoesNotContain(request.Plan().Timeline.Steps, step => step.Kind == StepKind.NightHold || step.InNight);
    }
}
