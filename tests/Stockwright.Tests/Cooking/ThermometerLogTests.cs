using Stockwright.Cooking;
using Stockwright.Cooling;
using Stockwright.Cooling.Limits;
using Stockwright.Evidence;
using Stockwright.Logbook;
using Stockwright.Planning;
using Stockwright.Simmering;
using Stockwright.Tests.Planning;
using UnitsNet;
using Xunit;

namespace Stockwright.Tests.Cooking;

/// <summary>A probe writes thousands of readings into the log: the calculation takes as many as it needs, the limit is judged on all of them, and none is hidden.</summary>
public sealed class ThermometerLogTests
{
    [Fact]
    public void The_calculation_takes_no_more_of_ten_thousand_readings_than_of_some_hundred()
    {
        BatchCourse course = Simmering(10_000, absurdAt: null);

        // Every thing that happens is a stop in each of five hundred draws.
        Assert.InRange(course.Expected.Workings.Script.Events.Count, 1, 250);
        Assert.DoesNotContain(course.Expected.Notices, notice => notice.Code is "odd-reading" or "readings-jump");
    }

    [Fact]
    public void What_a_pot_that_keeps_to_its_plan_shows_leaves_the_plan_as_it_was()
    {
        BatchCourse few = Simmering(20, absurdAt: null);
        BatchCourse many = Simmering(2_000, absurdAt: null);

        // Same pot, same probe: what is expected differs by less than a single reading's weight would move it.
        Assert.Equal(few.Expected.Yield.Central.Liters, many.Expected.Yield.Central.Liters, 0.02);
        Assert.Equal(few.Expected.HeatUp.Time.Central.TotalMinutes, many.Expected.HeatUp.Time.Central.TotalMinutes, 2.0);
    }

    [Fact]
    public void A_single_absurd_reading_among_thousands_is_named()
    {
        BatchCourse onTheWayUp = Simmering(2_000, absurdAt: 12, absurd: 5);
        BatchCourse impossible = Simmering(2_000, absurdAt: 12, absurd: 120);

        Assert.Contains(onTheWayUp.Expected.Notices, notice => notice.Code is "odd-reading" && notice.Says(NoticePhrase.OddTemperature));
        Assert.Contains(impossible.Expected.Notices, notice => notice.Code is "odd-temperature" && notice.Figures.Contains(Figure.Of(Temperature.FromDegreesCelsius(120))));
    }

    [Fact]
    public void A_probe_that_hangs_in_the_air_is_told_of_once_and_not_two_thousand_times()
    {
        Batch batch = Batches.Chicken();
        Batches.LogWriter log = batch.Writing().Done(0, "heatup-1");
        for (int i = 0; i < 2_000; i++)
        {
            log.Reads(0.1 * (i + 1), -4);
        }

        BatchCourse course = log.Now(210);
        Assert.InRange(course.Expected.Notices.Count(notice => notice.Code is "odd-temperature"), 1, 4);
        Assert.Contains(course.Expected.Notices, notice => notice.Code is NoticeCode.OddTemperatures && notice.Figures.Contains(Figure.Of(2000)));
    }

    [Fact]
    public void Readings_that_jump_are_followed_as_far_as_is_said()
    {
        Batch batch = Batches.Chicken();
        Batches.LogWriter log = batch.Writing().Done(0, "heatup-1").Enter(40, new LogFact.Simmers());
        for (int i = 0; i < 2_000; i++)
        {
            log.Reads(41 + (0.1 * i), i % 2 == 0 ? 86 : 98);
        }

        Assert.Contains(log.Now(245).Expected.Notices, notice => notice.Code is "readings-jump");
    }

    [Theory]
    [InlineData(null)]
    [InlineData(1_234)]
    public void The_limit_is_judged_on_every_reading(int? dip)
    {
        Batch batch = Batches.Chicken();
        Batches.LogWriter log = batch.Writing().Done(0, "heatup-1").Done(300, "stand-1").Enter(330, new LogFact.Strained(Volume.FromLiters(3.5)));
        List<CoolingPoint> read = [];
        for (int i = 0; i < 5_000; i++)
        {
            // Newton towards 3 °C at 0.5 an hour, which misses 21 °C within 2 h of 57; one reading alone dips below 21 in time.
            double celsius = i == dip ? 20 : 3 + (85 * Math.Exp(-0.5 * i / 600.0));
            log.Reads(331 + (0.1 * i), celsius, ReadingPlace.Cooling);
            read.Add(new CoolingPoint(TimeSpan.FromMinutes(0.1 * i), Temperature.FromDegreesCelsius(celsius)));
        }

        CoolingWatch watch = log.Now(900).Cooling!;
        CoolingVerdict expected = CoolingJudge.Judge(new CoolingCurve(read), batch.Limit);
        Assert.Equal(5_000, watch.Measured!.Points.Count);
        Assert.Equal(expected.Outcome, watch.Verdict!.Outcome);
        Assert.Equal(expected.Stages.Select(stage => stage.Outcome), watch.Verdict.Stages.Select(stage => stage.Outcome));
        Assert.Equal(dip is null ? CoolingOutcome.Fails : CoolingOutcome.Meets, watch.Verdict.Stages[0].Outcome);
    }

    [Fact]
    public void A_stretch_without_heat_is_as_cold_as_the_coldest_reading()
    {
        Batch batch = Batches.Chicken();
        Batches.LogWriter log = batch.Writing().Done(0, "heatup-1").Enter(40, new LogFact.Simmers()).Enter(100, new LogFact.HeatLost(null));
        Random random = new(1);
        for (int i = 0; i < 3_000; i++)
        {
            log.Reads(100.05 + (0.04 * i), i == 1_500 ? 41 : 95 - (0.012 * i) + random.NextDouble(), ReadingPlace.Pot);
        }

        Assert.Equal(41, Assert.Single(log.Now(221).HeatGaps).Coldest.DegreesCelsius, 0.01);
    }

    /// <summary>A pot that keeps to its plan, read evenly from heat on for four hours with half a kelvin of noise.</summary>
    private static BatchCourse Simmering(int readings, double? absurdAt, double absurd = 0)
    {
        Batch batch = Batches.Chicken();
        Batches.LogWriter log = batch.Writing().Done(0, "heatup-1");
        IReadOnlyList<SimmerSample> plan = batch.Planned.Simmer.Samples;
        Random random = new(3);
        for (int i = 0; i < readings; i++)
        {
            double minutes = 240.0 * (i + 1) / readings;
            int next = plan.ToList().FindIndex(sample => sample.At.TotalMinutes > minutes);
            double part = (minutes - plan[next - 1].At.TotalMinutes) / (plan[next].At - plan[next - 1].At).TotalMinutes;
            double celsius = plan[next - 1].Temperature.DegreesCelsius + (part * (plan[next].Temperature - plan[next - 1].Temperature).Kelvins);
            log.Reads(minutes, celsius + random.NextDouble() - 0.5);
        }

        if (absurdAt is { } odd)
        {
            log.Reads(odd + 0.001, absurd);
        }

        return log.Now(241);
    }
}
