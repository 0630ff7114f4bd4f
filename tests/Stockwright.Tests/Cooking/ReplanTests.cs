using Stockwright.Cooking;
using Stockwright.Logbook;
using Stockwright.Numerics;
using Stockwright.Planning;
using Stockwright.Predicting;
using Stockwright.Simmering;
using Stockwright.Tests.Planning;
using UnitsNet;
using Xunit;

namespace Stockwright.Tests.Cooking;

/// <summary>A plan worked out again from a log. Where the truth is known, it is a run of the pot with figures of its own: exact, no outside source.</summary>
public class ReplanTests
{
    [Fact]
    public void Nothing_entered_leaves_the_plan_as_it_was()
    {
        foreach (TopUpRule rule in Enum.GetValues<TopUpRule>())
        {
            Batch batch = Batches.Chicken(rule);
            BatchCourse course = batch.Writing().Now(-300);

            Assert.Equal(BatchPhase.NotBegun, course.Phase);
            Alike(batch.Planned, course.Expected, 1e-9);
            Assert.All(course.Steps, step => Assert.Equal(StepStanding.Ahead, step.Standing));
            Assert.Equal(batch.Planned.Timeline.Steps.Select(step => (step.Key, step.At)), course.Steps.Select(step => (step.Key, step.Step.At)));
            Assert.Equal(batch.Planned.Yield.Low.Liters, course.Expected.Yield.Low.Liters, 1e-6);
            Assert.Equal(batch.Planned.Yield.High.Liters, course.Expected.Yield.High.Liters, 1e-6);
        }
    }

    [Theory]
    [InlineData(TopUpRule.None)]
    [InlineData(TopUpRule.KeepToLine)]
    [InlineData(TopUpRule.KeepCovered)]
    public void A_log_that_follows_the_plan_changes_nothing(TopUpRule rule)
    {
        Batch batch = Batches.Chicken(rule);
        BatchCourse course = Following(batch).Now(batch.Planned.Simmer.Length.TotalMinutes + 1);

        Alike(batch.Planned, course.Expected, 2e-4);
        Assert.Equal(1, course.LossOverPlan.Central, 1e-2);
        Assert.DoesNotContain(course.Expected.Notices, notice => notice.Code is "odd-reading" or "loses-otherwise");
        Assert.All(course.Steps.Where(step => step.Step.At < course.Now), step => Assert.Equal(StepStanding.Done, step.Standing));

        // The course is kept at other moments, and the history runs straight between them.
        Assert.Equal(
            Predictor.Predict(batch.Planned).Body.Gelatin.Percent, Predictor.Predict(course.Expected).Body.Gelatin.Percent, 5e-3);

        // Five readings of a pot that loses as planned leave less doubt than none.
        Assert.True(course.LossOverPlan.High - course.LossOverPlan.Low < 2.2 - 0.4);
        Assert.True(course.Expected.Simmer.Evaporated.High - course.Expected.Simmer.Evaporated.Low < 0.8 * (batch.Planned.Simmer.Evaporated.High - batch.Planned.Simmer.Evaporated.Low));

        // A plan that tops up makes good whatever evaporates; what was poured by then no longer does.
        Assert.True(rule != TopUpRule.None || course.Expected.Yield.High - course.Expected.Yield.Low < batch.Planned.Yield.High - batch.Planned.Yield.Low);
    }

    [Fact]
    public void The_more_it_is_read_to_have_lost_the_more_it_loses_and_the_less_it_yields()
    {
        Batch batch = Batches.Chicken();
        double check = batch.Planned.Simmer.Checks[1].At.TotalMinutes;
        Length expected = batch.Planned.Simmer.Checks[1].LevelBeforeFromRim.Central;
        BatchCourse? before = null;
        foreach (double millimetres in new[] { -6.0, -3, 0, 3, 6, 12, 20 })
        {
            BatchCourse course = batch.Writing().Done(0, "heatup-1").Level(check, expected + Length.FromMillimeters(millimetres)).Now(check + 1);
            if (before is not null)
            {
                Assert.True(course.LossOverPlan.Central > before.LossOverPlan.Central, $"{millimetres} mm");
                Assert.True(course.Expected.Yield.Central < before.Expected.Yield.Central, $"{millimetres} mm");
                Assert.True(course.Pot!.BelowRim.Central > before.Pot!.BelowRim.Central, $"{millimetres} mm");
            }

            before = course;
        }
    }

    [Theory]
    [InlineData(0.6, 0.9, 0.98)]
    [InlineData(1.0, 1.05, 1.0)]
    [InlineData(1.7, 0.95, 1.03)]
    [InlineData(2.4, 1.0, 0.97)]
    public void Readings_of_another_pot_recover_it_within_the_band(double loss, double heat, double water)
    {
        Batch batch = Batches.Of((PlanRequests.For("brown-beef") with { TopUp = TopUpRule.None }).Uncovered().Making(8).In(PlanRequests.Straight(32, 40)).Plan());
        SimmerOutcome truth = Truth(batch, loss, heat, water);
        Batches.LogWriter log = batch.Writing().Done(0, "heatup-1").Enter(truth.HeatUpSeconds / 60, new LogFact.Simmers());
        double height = batch.Planned.Request.Pot.InnerHeight.Meters;
        log.Level(-5, Length.FromMeters(height - truth.StartMetres));
        foreach (SimmerOutcome.Sight look in truth.Looks.Values.OrderBy(look => look.Seconds))
        {
            log.Level(look.Seconds / 60, Length.FromMeters(height - look.LevelMetres));
        }

        BatchCourse course = log.Now(truth.Looks.Values.Max(look => look.Seconds) / 60);

        // A reading errs by 4 mm and this pot falls by about 2 mm an hour, so sixteen exact readings still leave the prior some say.
        Assert.InRange(loss, course.LossOverPlan.Low, course.LossOverPlan.High);
        Assert.True(Math.Abs(Math.Log(course.LossOverPlan.Central / loss)) <= 0.02 + (0.6 * Math.Abs(Math.Log(loss))), $"{course.LossOverPlan.Central} for {loss}");
        Assert.True(Math.Log(course.LossOverPlan.High / course.LossOverPlan.Low) < 0.75 * Math.Log(4), "the default spans a factor of four");
        double level = truth.Looks.Values.MaxBy(look => look.Seconds).LevelMetres;
        Assert.InRange(height - level, course.Pot!.BelowRim.Low.Meters, course.Pot.BelowRim.High.Meters);
        double yield = batch.Planned.Workings.Fitter.YieldKilograms(truth) / SimmerForecaster.ColdDensity * 1000;
        Assert.InRange(yield, course.Expected.Yield.Low.Liters, course.Expected.Yield.High.Liters);
        Assert.DoesNotContain(course.Expected.Notices, notice => string.Equals(notice.Code, "odd-reading", StringComparison.Ordinal));
    }

    [Fact]
    public void One_reading_leaves_no_less_doubt_than_the_ruler()
    {
        // Right after a level is read, it is known no better than the reading: 4 mm times 1.2816, less what the line told before (3.5 % of the liquid).
        Batch batch = Batches.Chicken();
        double check = batch.Planned.Simmer.Checks[1].At.TotalMinutes;
        PotNow pot = batch.Writing().Done(0, "heatup-1").Level(check, batch.Planned.Simmer.Checks[1].LevelBeforeFromRim.Central).Now(check).Pot!;

        double half = (pot.BelowRim.High - pot.BelowRim.Low).Millimeters / 2;
        Assert.InRange(half, 0.6 * 4 * NormalQuantile.Ninety, 4 * NormalQuantile.Ninety);
    }

    [Fact]
    public void A_level_no_loss_explains_is_told_and_not_followed()
    {
        Batch batch = Batches.Chicken();
        Batches.LogWriter log = Following(batch, checks: 2);
        double at = batch.Planned.Simmer.Checks[2].At.TotalMinutes;
        BatchCourse without = log.Now(at);
        BatchCourse course = log.Level(at, batch.Planned.Simmer.Checks[2].LevelBeforeFromRim.Central + Length.FromCentimeters(6)).Now(at);

        Assert.Contains(course.Expected.Notices, notice => string.Equals(notice.Code, "odd-reading", StringComparison.Ordinal));
        Assert.Equal(without.LossOverPlan.Central, course.LossOverPlan.Central, 1e-3);
        Assert.Equal(without.Expected.Yield.Central.Liters, course.Expected.Yield.Central.Liters, 2e-3);
    }

    [Fact]
    public void Water_goes_in_when_it_went_in()
    {
        Batch batch = Batches.Chicken();
        BatchCourse dry = batch.Writing().Done(0, "heatup-1").Now(150);
        BatchCourse wet = batch.Writing().Done(0, "heatup-1").Water(100, 1).Now(150);

        // A litre in a 28 cm pot stands 16.24 mm high cold (geometry), a little more hot; a sliver of it goes as steam.
        Assert.Equal(1, wet.Pot!.Liquid.Central.Liters - dry.Pot!.Liquid.Central.Liters, 5e-3);
        Assert.InRange((dry.Pot.BelowRim.Central - wet.Pot.BelowRim.Central).Millimeters, 16.24, 17.1);
        Assert.Equal(1, wet.Expected.Simmer.ToppedUp.Central.Liters, 1e-6);
        Assert.Equal(StepStanding.Done, wet.Step("check-1").Standing);
    }

    [Fact]
    public void The_level_of_a_visit_is_read_before_its_water_whichever_was_entered_first()
    {
        Batch batch = Batches.Chicken();
        double at = batch.Planned.Simmer.Checks[1].At.TotalMinutes;
        Length level = batch.Planned.Simmer.Checks[1].LevelBeforeFromRim.Central;
        BatchCourse one = batch.Writing().Done(0, "heatup-1").Level(at, level).Water(at + 1, 0.5).Now(at + 5);
        BatchCourse other = batch.Writing().Done(0, "heatup-1").Water(at, 0.5).Level(at + 1, level).Now(at + 5);

        Assert.Equal(one.LossOverPlan.Central, other.LossOverPlan.Central, 1e-2);
        Assert.Equal(1, one.LossOverPlan.Central, 1e-2);
    }

    [Fact]
    public void A_cooler_simmer_draws_less_gelatin()
    {
        Batch batch = Batches.Chicken();
        Batches.LogWriter log = batch.Writing().Done(0, "heatup-1").Enter(batch.Planned.HeatUp.Time.Central.TotalMinutes, new LogFact.Simmers());
        double end = batch.Planned.Simmer.Length.TotalMinutes;
        BatchCourse asPlanned = log.Done(end, "stand-1").Now(end + 1);
        foreach (double minutes in new[] { 30.0, 90, 150, 210, 250 })
        {
            log.Reads(minutes, 85);
        }

        BatchCourse cool = log.Now(end + 1);

        Assert.Equal(85, cool.ExpectedPoints.Where(point => point.At > log.At(140) && point.At < log.At(240)).Average(point => point.Temperature.DegreesCelsius), 0.3);

        // Collagen comes out by S.9 0.46 times as fast at 85 as at 93 °C (109 kJ/mol); the soft part is nearly out either way, so the whole loses less.
        double ratio = Predictor.Predict(cool.Expected).Extraction.Gelatin / Predictor.Predict(asPlanned.Expected).Extraction.Gelatin;
        Assert.InRange(ratio, 0.46, 0.85);
    }

    [Fact]
    public void Measured_stock_is_the_yield()
    {
        Batch batch = Batches.Chicken();
        double end = batch.Planned.Simmer.Length.TotalMinutes;
        Batches.LogWriter log = batch.Writing().Done(0, "heatup-1").Done(end, "stand-1").Enter(end + 40, new LogFact.Strained(Volume.FromLiters(3.7)));
        BatchCourse strained = log.Now(end + 41);
        BatchCourse portioned = log.Enter(end + 900, new LogFact.Portioned(Volume.FromLiters(3.55))).Now(end + 901);

        // 1 to 3 % goes with the fat (F.5, estimate).
        Assert.Equal(3.7 * 0.98, strained.Expected.Yield.Central.Liters, 1e-9);
        Assert.Equal(3.7 * 0.97, strained.Expected.Yield.Low.Liters, 1e-9);
        Assert.Equal(3.7 * 0.99, strained.Expected.Yield.High.Liters, 1e-9);
        Assert.Equal(3.55, portioned.Expected.Yield.Central.Liters, 1e-9);
        Assert.Equal(3.55, PredictionSampler.Sample(portioned.Expected).Yield.High.Liters, 1e-6);
        Assert.InRange(PredictionSampler.Sample(strained.Expected).Yield.Low.Liters, 3.7 * 0.965, 3.7 * 0.975);
        Assert.Equal(portioned.Expected.Ledger.TotalIn.Liters, portioned.Expected.Ledger.TotalOut.Liters, 1e-9);
        Assert.Equal(BatchPhase.Cooling, strained.Phase);

        // Nobody has measured it, so nobody knows that it is cold: portioned hot it cools on in its tubs.
        Assert.Equal(BatchPhase.Cooling, portioned.Phase);
    }

    [Fact]
    public void Predictions_draw_from_what_was_learnt()
    {
        Batch batch = Batches.Of((PlanRequests.For("brown-beef") with { TopUp = TopUpRule.None }).Uncovered().Making(8).In(PlanRequests.Straight(32, 40)).Plan());
        BatchCourse course = Following(batch, checks: 6).Now(batch.Planned.Simmer.Checks[5].At.TotalMinutes + 1);
        PredictionSample before = PredictionSampler.Sample(batch.Planned);
        PredictionSample after = PredictionSampler.Sample(course.Expected);

        Assert.True((after.Yield.High - after.Yield.Low) < 0.9 * (before.Yield.High - before.Yield.Low));

        // The draws and the band worked out by shares must tell the same story.
        Assert.InRange((after.Yield.High - after.Yield.Low) / (course.Expected.Yield.High - course.Expected.Yield.Low), 0.6, 1.3);
    }

    /// <summary>A log that does and finds what the plan says, minute by minute.</summary>
    internal static Batches.LogWriter Following(Batch batch, int checks = 99)
    {
        BatchPlan plan = batch.Planned;
        Batches.LogWriter log = batch.Writing();
        foreach (PlanStep step in plan.Timeline.Steps.Where(step => step.Kind < StepKind.Stand || step.Kind == StepKind.Stand))
        {
            double at = (step.At - plan.Timeline.HeatOn).TotalMinutes;
            if (step.CheckIndex is { } index)
            {
                if (index >= checks)
                {
                    break;
                }

                SimmerCheck check = plan.Simmer.Checks[index];
                log.Level(at, check.LevelBeforeFromRim.Central);
                if (check.TopUp.Central > Volume.Zero)
                {
                    log.Water(at, check.TopUp.Central.Liters);
                }
            }

            log.Enter(step.Kind < StepKind.HeatUp ? step.End : step.At, new LogFact.StepDone(step.Key));
        }

        return log;
    }

    private static SimmerOutcome Truth(Batch batch, double loss, double heat, double water)
    {
        PlanWorkings workings = batch.Planned.Workings;
        SimmerScript script = workings.Script with
        {
            StartWaterKilograms = workings.Script.StartWaterKilograms * water,
            Events = [.. Enumerable.Range(1, 16).Select(i => new PotEvent((i * 1800) + 1e-3, PotEventKind.Look, i))],
        };
        return SimmerRun.Execute(
            workings.Environment, script, loss * SimmerAssumptions.Standard.SurfaceFilm.Value, 1, heat * batch.Planned.Request.Hob.Efficiency.Value.DecimalFractions, sampled: false);
    }

    private static void Alike(BatchPlan planned, BatchPlan expected, double relative)
    {
        void Close(double one, double other) => Assert.Equal(one, other, relative * Math.Max(1, Math.Abs(one)));
        Close(planned.Yield.Central.Liters, expected.Yield.Central.Liters);
        Close(planned.Simmer.Evaporated.Central.Liters, expected.Simmer.Evaporated.Central.Liters);
        Close(planned.Simmer.ToppedUp.Central.Liters, expected.Simmer.ToppedUp.Central.Liters);
        Close(planned.HeatUp.Time.Central.TotalMinutes, expected.HeatUp.Time.Central.TotalMinutes);
        Close(planned.Timeline.Ready.ToUnixTimeSeconds() / 60.0 % 100_000, expected.Timeline.Ready.ToUnixTimeSeconds() / 60.0 % 100_000);
        Close(planned.Simmer.HobEnergy.Central.Megajoules, expected.Simmer.HobEnergy.Central.Megajoules);
        Assert.Equal(planned.Simmer.Checks.Count, expected.Simmer.Checks.Count);
        foreach ((SimmerCheck one, SimmerCheck other) in planned.Simmer.Checks.Zip(expected.Simmer.Checks))
        {
            Assert.Equal(one.LevelBefore.Millimeters, other.LevelBefore.Millimeters, Math.Max(1e-6, relative * 500));
        }
    }
}
