using CsCheck;
using Stockwright.Cooking;
using Stockwright.Evidence;
using Stockwright.Planning;
using Stockwright.Predicting;
using Stockwright.Simmering;
using UnitsNet;
using Xunit;

namespace Stockwright.Tests.Cooking;

/// <summary>What holds of every batch, whatever was entered: it is worked out, its numbers are numbers, and mass and energy are kept (exact, no source needed).</summary>
public sealed class ReplanPropertyTests
{
    [Fact]
    public void Any_log_is_understood_and_keeps_the_books() =>
        CourseGenerator.Courses.Sample(
            made => Assert.Empty(Broken(BatchReplanner.Replan(made.Batch, made.Log, made.Now))),
            iter: 1500,
            threads: 2,
            print: made => $"{made.Batch.Planned.Request.Recipe.Id} now {made.Now:dd HH:mm}\n{string.Join('\n', made.Log.All.Select(entry => $"{entry.Number} {entry.HappenedAt:dd HH:mm:ss} {entry.Fact} {entry.Corrects}"))}");

    private static List<string> Broken(BatchCourse course)
    {
        List<string> broken = [];
        void Need(bool holds, string what)
        {
            if (!holds)
            {
                broken.Add(what);
            }
        }

        BatchPlan plan = course.Expected;
        SimmerBooks books = plan.Simmer.Books;
        Need(Balances(books.MassIn.Kilograms, books.MassOut.Kilograms + books.MassLeft.Kilograms), $"mass {books}");
        Need(Balances(books.EnergyIn.Joules, books.EnergyOut.Joules + books.EnergyLeft.Joules), $"energy {books}");
        Need(Balances(plan.Ledger.TotalIn.Liters, plan.Ledger.TotalOut.Liters), $"ledger {plan.Ledger.TotalIn} {plan.Ledger.TotalOut}");
        Need(IsBand(plan.Yield, volume => volume.Liters), $"yield {plan.Yield}");
        Need(IsBand(plan.Simmer.Evaporated, volume => volume.Liters), "evaporated");
        Need(IsBand(course.LossOverPlan, value => value) && course.LossOverPlan.Low > 0, $"loss {course.LossOverPlan}");
        Need(IsBand(plan.HeatUp.Time, time => time.TotalSeconds), $"heat-up {plan.HeatUp}");
        Need(plan.Simmer.Samples.Count is > 1 and <= 300 && plan.Simmer.LevelBand.Count == plan.Simmer.Samples.Count, $"{plan.Simmer.Samples.Count} samples");
        Need(plan.Simmer.Samples.All(sample => double.IsFinite(sample.Temperature.DegreesCelsius) && sample.Temperature.DegreesCelsius is >= -1e-6 and < 131 && double.IsFinite(sample.Level.Meters)), FormattableString.Invariant($"a sample is no number: {plan.Simmer.Samples.Min(sample => sample.Temperature.DegreesCelsius)} to {plan.Simmer.Samples.Max(sample => sample.Temperature.DegreesCelsius)}"));
        Need(plan.Simmer.Samples.All(sample => sample.Liquid.Liters >= -1), "less than nothing in the pot");
        Need(Ordered(plan.Simmer.Samples.Select(sample => sample.At.Ticks)), "samples out of order");
        Need(Ordered(course.Steps.Select(step => step.Step.At.UtcTicks)), "steps out of order");
        Need(plan.Timeline.HeatOn <= plan.Timeline.HeatOff, "the heat is off before it is on");
        Need(course.Batch.Planned.Timeline.Steps.All(step => course.Steps.Count(one => string.Equals(one.Key, step.Key, StringComparison.Ordinal)) == 1), "a planned step is lost or doubled");
        Need(course.Steps.All(step => step.Standing != StepStanding.Done || step.Entry is not null), "a step is done by nobody");
        Need(course.Steps.All(step => step.Entry is null || step.Entry.HappenedAt <= course.Now), "an entry from the future counts");
        Need(course.Pot is null || (IsBand(course.Pot.BelowRim, length => length.Meters) && IsBand(course.Pot.Liquid, volume => volume.Liters) && course.Pot.Liquid.Low >= Volume.Zero), $"pot {course.Pot}");
        Need(course.Risk is not { UncoveredAt: { } at, UncoveredAtEarliest: var first } || first <= at, "the earliest is late");
        Need(course.HeatGaps.All(gap => gap.BelowHot >= TimeSpan.Zero && gap.BelowHot <= gap.Delay + TimeSpan.FromSeconds(1) && gap.Advice.Length > 0 && !gap.Advice.Contains("is safe", StringComparison.OrdinalIgnoreCase)), "a gap makes no sense");
        BatchPrediction prediction = Predictor.Predict(plan);
        Need(double.IsFinite(prediction.Body.Effective.Percent) || plan.Yield.Central.Liters < 0.05, $"body {prediction.Body.Effective}");
        return broken;
    }

    private static bool Balances(double one, double other) => Math.Abs(one - other) <= 1e-9 * Math.Max(1, Math.Max(Math.Abs(one), Math.Abs(other)));

    private static bool IsBand<T>(Band<T> band, Func<T, double> number) =>
        double.IsFinite(number(band.Low)) && double.IsFinite(number(band.High)) && number(band.Low) <= number(band.Central) + 1e-9 && number(band.Central) <= number(band.High) + 1e-9;

    private static bool Ordered(IEnumerable<long> moments)
    {
        long last = long.MinValue;
        foreach (long moment in moments)
        {
            if (moment < last)
            {
                return false;
            }

            last = moment;
        }

        return true;
    }
}
