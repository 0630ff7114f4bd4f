using Stockwright.Cooking;
using Stockwright.Cooling.Limits;
using Stockwright.Logbook;
using UnitsNet;
using Xunit;

namespace Stockwright.Tests.Cooking;

/// <summary>When stock counts as cold (R.13). US FDA Food Code 3-501.14(A): cooled to 5 °C (41 °F) or less.</summary>
public class ColdTests
{
    [Fact]
    public void A_tap_on_done_leaves_stock_of_78_degrees_cooling_and_watched()
    {
        Batches.LogWriter log = Strained(out double at);
        BatchCourse course = log.Reads(at + 5, 78, ReadingPlace.Cooling).Done(at + 10, "cool-1").Now(at + 11);

        Assert.Equal(BatchPhase.Cooling, course.Phase);
        Assert.Equal(StepStanding.Done, course.Step("cool-1").Standing);
        Assert.Equal(["chill-1", "defat-1", "remelt-1", "portion-1"], course.Steps.Where(step => step.Standing == StepStanding.Waiting).Select(step => step.Key), StringComparer.Ordinal);
        Assert.Null(course.Next);
        Assert.Null(course.Cooling!.Cold);
        Assert.Equal(MatterKind.Cooling, course.Matters[0].Kind);

        // Left like that for an hour, the watch asks for a reading; nothing else comes first.
        BatchCourse left = log.Now(at + 75);
        Assert.Contains("Measure it now", left.Cooling!.StoodTooLong, StringComparison.Ordinal);
        Assert.Equal(MatterKind.CoolingAlarm, left.Matters[0].Kind);
    }

    [Fact]
    public void A_reading_at_the_limits_end_makes_it_cold_and_what_follows_comes_next()
    {
        Batches.LogWriter log = Strained(out double at);
        log.Reads(at, 80, ReadingPlace.Cooling).Reads(at + 60, 20, ReadingPlace.Cooling).Reads(at + 200, 5.1, ReadingPlace.Cooling);
        Assert.Equal(BatchPhase.Cooling, log.Now(at + 201).Phase);

        BatchCourse cold = log.Reads(at + 240, 5, ReadingPlace.Cooling).Now(at + 241);
        Assert.Equal(BatchPhase.Finishing, cold.Phase);
        Assert.Equal("chill-1", cold.Next!.Key);
        Assert.Equal(StepStanding.Done, cold.Step("cool-1").Standing);
        Assert.DoesNotContain(cold.Matters, matter => matter.IsUrgent);
    }

    [Fact]
    public void Read_in_fahrenheit_it_is_cold_at_41()
    {
        Batches.LogWriter log = Strained(out double at);
        LogFact Reads(double fahrenheit) => new LogFact.TemperatureRead(Temperature.FromDegreesFahrenheit(fahrenheit), ReadingPlace.Cooling);
        Assert.Equal(BatchPhase.Cooling, log.Enter(at, Reads(170)).Enter(at + 100, Reads(41.2)).Now(at + 101).Phase);
        Assert.Equal(BatchPhase.Finishing, log.Enter(at + 110, Reads(41)).Now(at + 111).Phase);
    }

    [Fact]
    public void Without_a_thermometer_the_cooks_own_word_counts_and_a_warm_reading_stands_over_it()
    {
        Batches.LogWriter log = Strained(out double at);
        BatchCourse said = log.Done(at + 20, "cool-1").Enter(at + 500, new LogFact.ColdUnmeasured("set like jelly")).Now(at + 501);
        Assert.Equal(BatchPhase.Finishing, said.Phase);
        Assert.IsType<LogFact.ColdUnmeasured>(said.Cooling!.Cold!.Fact);
        Assert.Null(said.Cooling.Verdict);
        Assert.Equal("chill-1", said.Next!.Key);
        Assert.Equal(BatchPhase.Cooling, log.Reads(at + 510, 14, ReadingPlace.Cooling).Now(at + 511).Phase);
    }

    [Fact]
    public void Work_on_cold_stock_does_not_make_it_cold()
    {
        Batches.LogWriter log = Strained(out double at);
        BatchCourse course = log.Enter(at + 30, new LogFact.Portioned(Volume.FromLiters(3.5))).Done(at + 31, "portion-1").Now(at + 100);
        Assert.Equal(BatchPhase.Cooling, course.Phase);
        Assert.NotNull(course.Cooling!.StoodTooLong);
        Assert.Null(course.Next);
    }

    [Fact]
    public void Stock_reheated_or_read_warm_again_is_cooling_again()
    {
        Batches.LogWriter log = Strained(out double at);
        log.Reads(at, 57, ReadingPlace.Cooling).Reads(at + 60, 20, ReadingPlace.Cooling).Reads(at + 200, 4, ReadingPlace.Cooling);
        Assert.Equal(BatchPhase.Finishing, log.Reads(at + 210, 6, ReadingPlace.Cooling).Now(at + 211).Phase);

        BatchCourse warm = log.Reads(at + 220, 30, ReadingPlace.Cooling).Now(at + 221);
        Assert.Equal(BatchPhase.Cooling, warm.Phase);
        Assert.Contains("30 °C", warm.Cooling!.Warning!.Replace('\u00A0', ' '), StringComparison.Ordinal);
        Assert.NotEqual(CorrectiveStep.PutAway, warm.Cooling.Action?.Step);

        Batches.LogWriter again = Strained(out at);
        again.Reads(at, 57, ReadingPlace.Cooling).Reads(at + 60, 20, ReadingPlace.Cooling).Reads(at + 200, 4, ReadingPlace.Cooling);
        Assert.Equal(BatchPhase.Cooling, again.Enter(at + 230, new LogFact.CorrectionMade(CorrectiveStep.ReheatAndCoolAgain)).Now(at + 231).Phase);
    }

    [Fact]
    public void Warmed_to_be_poured_it_stays_as_cold_as_it_was()
    {
        Batches.LogWriter log = Strained(out double at);
        log.Reads(at, 57, ReadingPlace.Cooling).Reads(at + 60, 20, ReadingPlace.Cooling).Reads(at + 200, 4, ReadingPlace.Cooling);
        Assert.Equal(BatchPhase.Finishing, log.Done(at + 900, "remelt-1").Reads(at + 901, 35, ReadingPlace.Cooling).Now(at + 902).Phase);
    }

    private static Batches.LogWriter Strained(out double at)
    {
        Batch batch = Batches.Chicken();
        double end = batch.Planned.Simmer.Length.TotalMinutes;
        at = end + 40;
        return batch.Writing().Done(0, "heatup-1").Done(end, "stand-1").Enter(at, new LogFact.Strained(Volume.FromLiters(3.7)));
    }
}
