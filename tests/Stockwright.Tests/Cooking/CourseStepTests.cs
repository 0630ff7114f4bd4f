using Stockwright.Cooking;
using Stockwright.Logbook;
using Stockwright.Planning;
using Stockwright.Simmering;
using Stockwright.Tests.Planning;
using UnitsNet;
using Xunit;

namespace Stockwright.Tests.Cooking;

/// <summary>What becomes of the steps as the cook's day goes otherwise (rules R.1, R.3 and R.5; our own, no source needed).</summary>
public class CourseStepTests
{
    private static readonly TimeSpan Minute = TimeSpan.FromMinutes(1);

    [Fact]
    public void Preparation_running_late_moves_everything()
    {
        Batch batch = Batches.Chicken();
        BatchPlan plan = batch.Planned;
        PlanStep deglaze = plan.Timeline.Steps.Last(step => step.Kind == StepKind.Roast);
        BatchCourse course = batch.Writing().Enter(deglaze.End.AddMinutes(40), new LogFact.StepDone(deglaze.Key)).Now(36);

        Assert.Equal(plan.Timeline.HeatOn.AddMinutes(40), course.Expected.Timeline.HeatOn, Minute);
        Assert.Equal(plan.Step("check-2").At.AddMinutes(40), course.Step("check-2").Step.At, Minute);
        Assert.Equal(plan.Step("check-2").At, course.Step("check-2").PlannedAt);
        Assert.Equal(StepStanding.Done, course.Step("gather-1").Standing);
        Assert.Equal(plan.Step("gather-1").At, course.Step("gather-1").Step.At);
    }

    [Fact]
    public void A_late_heat_on_moves_everything_and_a_late_check_nothing()
    {
        Batch batch = Batches.Chicken();
        BatchPlan plan = batch.Planned;
        BatchCourse late = batch.Writing().Done(25, "heatup-1").Now(26);
        Assert.Equal(plan.Timeline.HeatOff.AddMinutes(25), late.Expected.Timeline.HeatOff, TimeSpan.FromSeconds(1));

        double check = plan.Simmer.Checks[0].At.TotalMinutes;
        BatchCourse visited = batch.Writing().Done(0, "heatup-1").Done(check + 28, "check-1").Now(check + 29);
        Assert.Equal(plan.Timeline.HeatOff, visited.Expected.Timeline.HeatOff, TimeSpan.FromSeconds(2));
        Assert.Equal(plan.Step("check-2").At, visited.Step("check-2").Step.At, TimeSpan.FromSeconds(2));
        Assert.Equal(visited.Now.AddMinutes(-1), visited.Step("check-1").Step.At, TimeSpan.FromSeconds(1));
    }

    [Fact]
    public void A_check_is_ahead_then_due_then_overdue_then_missed()
    {
        Batch batch = Batches.Chicken();
        double first = batch.Planned.Simmer.Checks[0].At.TotalMinutes;
        Batches.LogWriter log = batch.Writing().Done(0, "heatup-1");
        StepStanding At(double minutes) => log.Now(minutes).Step("check-1").Standing;

        Assert.Equal(StepStanding.Ahead, At(first - 1));
        Assert.Equal(StepStanding.Due, At(first + 9));
        Assert.Equal(StepStanding.Overdue, At(first + 11));
        Assert.Equal(StepStanding.Missed, At(first + 61));
        Assert.Equal(StepStanding.Missed, log.Done(first + 50, "check-2").Now(first + 51).Step("check-1").Standing);
    }

    [Fact]
    public void An_overdue_check_says_what_to_add_now_and_a_missed_one_nothing()
    {
        Batch batch = Batches.Of((PlanRequests.For("brown-beef") with { TopUp = TopUpRule.KeepToLine }).Uncovered().WithFilm(1).Making(8).Plan());
        double second = batch.Planned.Simmer.Checks[1].At.TotalMinutes;
        BatchCourse course = batch.Writing().Done(0, "heatup-1").Now(second + 30);
        SimmerCheck missed = course.Expected.Simmer.Checks[course.Step("check-1").Step.CheckIndex!.Value];
        SimmerCheck overdue = course.Expected.Simmer.Checks[course.Step("check-2").Step.CheckIndex!.Value];

        Assert.Equal(Volume.Zero, missed.TopUp.Central);
        Assert.True(overdue.TopUp.Central > batch.Planned.Simmer.Checks[1].TopUp.Central, $"{overdue} {batch.Planned.Simmer.Checks[0]} {batch.Planned.Simmer.Checks[1]}");
        Assert.Equal(second + 30, overdue.At.TotalMinutes, 0.02);
        Assert.Equal(course.Expected.Timeline.HeatOn + batch.Planned.Simmer.Checks[1].At, course.Step("check-2").Step.At, TimeSpan.FromSeconds(2));
    }

    [Theory]
    [InlineData(-29, true)]
    [InlineData(29, true)]
    [InlineData(31, false)]
    public void A_level_within_half_an_interval_is_a_visit(double off, bool visits)
    {
        Batch batch = Batches.Chicken();
        SimmerCheck last = batch.Planned.Simmer.Checks[^1];
        BatchCourse course = batch.Writing().Done(0, "heatup-1").Level(last.At.TotalMinutes + off, last.LevelBeforeFromRim.Central).Now(last.At.TotalMinutes + 40);

        Assert.Equal(visits, course.Step($"check-{batch.Planned.Simmer.Checks.Count}").Standing == StepStanding.Done);
    }

    [Fact]
    public void Heat_off_early_ends_it_and_heat_left_on_carries_it_on()
    {
        Batch batch = Batches.Chicken();
        BatchPlan plan = batch.Planned;
        double check = plan.Simmer.Checks[1].At.TotalMinutes;
        BatchCourse early = batch.Writing().Done(0, "heatup-1").Done(check + 5, "stand-1").Now(check + 6);
        Assert.Equal(early.Now.AddMinutes(-1), early.Expected.Timeline.HeatOff, TimeSpan.FromSeconds(1));
        Assert.Equal(StepStanding.Missed, early.Step("check-3").Standing);
        Assert.Equal(BatchPhase.Straining, early.Phase);
        Assert.True(early.Expected.Yield.Central > plan.Yield.Central);
        Assert.True(early.Pot!.Temperature.DegreesCelsius < 93);

        BatchCourse late = batch.Writing().Done(0, "heatup-1").Now(plan.Simmer.Length.TotalMinutes + 50);
        Assert.Equal(late.Now, late.Expected.Timeline.HeatOff, TimeSpan.FromSeconds(1));
        Assert.Equal(StepStanding.Overdue, late.Step("stand-1").Standing);
        Assert.True(late.Expected.Yield.Central < plan.Yield.Central);
    }

    [Fact]
    public void Nobody_comes_by_and_it_runs_low()
    {
        Batch batch = Batches.Of((PlanRequests.For("brown-beef") with { TopUp = TopUpRule.KeepToLine }).Uncovered().WithFilm(1.5).Making(3).Plan());
        BatchCourse course = batch.Writing().Done(0, "heatup-1").Now(120);
        DryRisk risk = course.Risk!;

        // Steady loss by the plan's own rate: the liquid over the solids is gone in so many hours; a weighed kitchen errs by 15 %. The solids
        // go on giving and settling meanwhile.
        double rate = course.Expected.Simmer.EvaporationRate.Central.LitersPerHour;
        double area = Math.PI / 4 * 0.28 * 0.28;
        double hours = (course.Pot!.HeapBelowRim - course.Pot.BelowRim.Central).Meters * area * 1000 / rate;
        Assert.Equal(1, (risk.UncoveredAt!.Value - course.Now).TotalHours / hours, 0.2);
        DateTimeOffset simmering = course.Step("simmer-1").Step.At;
        Assert.Equal(1 / 1.15, (risk.UncoveredAtEarliest!.Value - simmering) / (risk.UncoveredAt.Value - simmering), 0.05);
        Assert.True(risk.UncoveredAt < course.Expected.Timeline.HeatOff, "with visits it would stay covered");
        Assert.True(risk.DryAt is null || risk.DryAt > risk.UncoveredAt);
    }

    [Fact]
    public void A_pot_that_runs_late_still_goes_into_the_oven_at_bedtime()
    {
        Batch batch = Batches.Of(PlanRequests.For("brown-beef").Starting(PlanRequests.Morning.AddHours(8), NightPlan.OvenHold).Plan());
        PlanStep[] nights = [.. batch.Planned.Timeline.Steps.Where(step => step.Kind == StepKind.NightHold)];
        BatchCourse course = batch.Writing().Done(60, "heatup-1").Now(61);

        Assert.Equal(2, nights.Length);
        Assert.Equal(nights[0].At, course.Step("nighthold-1").Step.At, Minute);
        Assert.Equal(nights[1].At, course.Step("nighthold-2").Step.At, Minute);
    }

    [Fact]
    public void A_day_from_weighing_to_the_closed_record_passes_its_phases()
    {
        Batch batch = Batches.Chicken();
        double end = batch.Planned.Simmer.Length.TotalMinutes;
        Batches.LogWriter log = batch.Writing();
        Assert.Equal(BatchPhase.NotBegun, log.Now(-1000).Phase);
        Assert.Equal(BatchPhase.Preparing, log.Enter(batch.Planned.Timeline.Start, new LogFact.StepDone("gather-1")).Now(-100).Phase);
        Assert.Equal(BatchPhase.HeatingUp, log.Done(0, "heatup-1").Now(5).Phase);
        Assert.Equal(BatchPhase.Simmering, log.Enter(16, new LogFact.Simmers()).Now(17).Phase);
        Assert.Equal(BatchPhase.Straining, log.Done(end, "stand-1").Now(end + 1).Phase);
        Assert.Equal(BatchPhase.Cooling, log.Done(end + 30, "strain-1").Now(end + 31).Phase);
        Assert.Equal(BatchPhase.Cooling, log.Done(end + 100, "cool-1").Now(end + 101).Phase);
        Assert.Equal(BatchPhase.Finishing, log.Reads(end + 300, 5, ReadingPlace.Cooling).Now(end + 301).Phase);
        Assert.Equal(BatchPhase.Closed, log.Enter(end + 900, new LogFact.Closed()).Now(end + 901).Phase);
        Assert.Equal(BatchPhase.Finishing, log.Now(end + 899).Phase);
    }
}
