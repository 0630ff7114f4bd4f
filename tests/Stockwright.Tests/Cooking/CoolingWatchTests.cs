using Stockwright.Cooking;
using Stockwright.Cooling.Limits;
using Stockwright.Logbook;
using UnitsNet;
using Xunit;

namespace Stockwright.Tests.Cooking;

/// <summary>Cooling readings as they come in, against US FDA Food Code 3-501.14(A): 135 to 70 °F within 2 h, to 41 °F within 6 h in all.</summary>
public class CoolingWatchTests
{
    [Fact]
    public void Time_left_counts_from_the_fall_through_57()
    {
        Batches.LogWriter log = Strained(out double at);
        log.Reads(at, 90, ReadingPlace.Cooling).Reads(at + 30, 57, ReadingPlace.Cooling).Reads(at + 60, 40, ReadingPlace.Cooling);
        CoolingWatch watch = log.Now(at + 60).Cooling!;

        Assert.Equal(CoolingOutcome.Unfinished, watch.Verdict!.Outcome);
        Assert.Equal(90, watch.Verdict.Stages[0].TimeLeft!.Value.TotalMinutes, 0.01);
        Assert.Equal(CorrectiveStep.KeepCooling, watch.Action!.Step);
        Assert.Equal(90, watch.Action.TimeLeft!.Value.TotalMinutes, 0.01);
        Assert.Equal(150, watch.Verdict.Stages[0].DueAt!.Value.TotalMinutes, 0.01);
    }

    [Fact]
    public void A_trend_that_will_miss_is_told_early_and_one_that_will_not_is_not()
    {
        // Newton towards 4 °C from 57: 21 °C in 2 h needs ln(53/17)/2 = 0.57 an hour. At 0.35 it takes 3.2 h; at 1.2 under an hour.
        double[] slow = [57, Toward(0.35, 0.5), Toward(0.35, 1)];
        double[] fast = [57, Toward(1.2, 0.25), Toward(1.2, 0.5)];
        CoolingWatch misses = Watch(slow, 30, "fridge");
        CoolingWatch meets = Watch(fast, 15, "fridge");

        Assert.Equal(CoolingOutcome.Fails, misses.Trend!.Outcome);
        Assert.Contains("misses 21", misses.Warning, StringComparison.Ordinal);
        Assert.Equal(CoolingOutcome.Meets, meets.Trend!.Outcome);
        Assert.Null(meets.Warning);

        // It nearly misses: 0.62 an hour meets with 8 % to spare, and rates stray by 11 %.
        CoolingWatch nearly = Watch([57, Toward(0.62, 0.5), Toward(0.62, 1)], 30, "fridge");
        Assert.Equal(CoolingOutcome.MayFail, nearly.Trend!.Outcome);
        Assert.Contains("may miss", nearly.Warning, StringComparison.Ordinal);
    }

    [Fact]
    public void Mixed_scales_and_doubled_moments_are_understood()
    {
        Batches.LogWriter log = Strained(out double at);
        log.Enter(at, Fahrenheit(194)).Reads(at + 30, 57, ReadingPlace.Cooling).Enter(at + 30, Fahrenheit(135)).Enter(at + 90, Fahrenheit(70)).Reads(at + 200, 5, ReadingPlace.Cooling);
        CoolingWatch watch = log.Now(at + 201).Cooling!;

        Assert.Equal(4, watch.Measured!.Points.Count);
        Assert.Equal(CoolingOutcome.Meets, watch.Verdict!.Outcome);
        Assert.Equal(CorrectiveStep.PutAway, watch.Action!.Step);
    }

    [Fact]
    public void A_missed_stage_may_be_reheated_once()
    {
        // Guidance of the US National Restaurant Association: reheat to 165 °F within 2 h and cool again, once; else discard.
        Batches.LogWriter log = Strained(out double at);
        log.Reads(at, 57, ReadingPlace.Cooling).Reads(at + 125, 30, ReadingPlace.Cooling);
        Assert.Equal(CorrectiveStep.ReheatAndCoolAgain, log.Now(at + 126).Cooling!.Action!.Step);

        log.Enter(at + 130, new LogFact.CorrectionMade(CorrectiveStep.ReheatAndCoolAgain)).Reads(at + 160, 80, ReadingPlace.Cooling).Reads(at + 190, 57, ReadingPlace.Cooling).Reads(at + 220, 40, ReadingPlace.Cooling);
        CoolingWatch again = log.Now(at + 221).Cooling!;
        Assert.Equal(CorrectiveStep.KeepCooling, again.Action!.Step);
        Assert.Equal(310 - 220, again.Verdict!.Stages[0].TimeLeft!.Value.TotalMinutes, 0.01);

        log.Reads(at + 330, 30, ReadingPlace.Cooling);
        Assert.Equal(CorrectiveStep.Discard, log.Now(at + 331).Cooling!.Action!.Step);
    }

    [Fact]
    public void Standing_without_a_reading_is_told()
    {
        Batches.LogWriter log = Strained(out double at);
        Assert.Null(log.Now(at + 55).Cooling!.StoodTooLong);
        Assert.Contains("Measure it now", log.Now(at + 65).Cooling!.StoodTooLong, StringComparison.Ordinal);
        log.Reads(at + 66, 50, ReadingPlace.Cooling);
        Assert.Null(log.Now(at + 70).Cooling!.StoodTooLong);
        Assert.NotNull(log.Now(at + 130).Cooling!.StoodTooLong);
    }

    private static double Toward(double perHour, double hours) => 4 + (53 * Math.Exp(-perHour * hours));

    private static CoolingWatch Watch(double[] celsius, double everyMinutes, string method)
    {
        Batches.LogWriter log = Strained(out double at);
        log.Enter(at, new LogFact.CoolingBegan(method));
        for (int i = 0; i < celsius.Length; i++)
        {
            log.Reads(at + (i * everyMinutes), celsius[i], ReadingPlace.Cooling);
        }

        return log.Now(at + ((celsius.Length - 1) * everyMinutes)).Cooling!;
    }

    private static LogFact.TemperatureRead Fahrenheit(double degrees) => new(Temperature.FromDegreesFahrenheit(degrees), ReadingPlace.Cooling);

    private static Batches.LogWriter Strained(out double at)
    {
        Batch batch = Batches.Chicken();
        double end = batch.Planned.Simmer.Length.TotalMinutes;
        at = end + 40;
        return batch.Writing().Done(0, "heatup-1").Done(end, "stand-1").Enter(at, new LogFact.Strained(Volume.FromLiters(3.7)));
    }
}
