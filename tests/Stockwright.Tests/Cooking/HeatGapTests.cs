using Stockwright.Cooking;
using Stockwright.Logbook;
using Stockwright.Simmering;
using Stockwright.Tests.Planning;
using Stockwright.Tests.Simmering;
using Xunit;

namespace Stockwright.Tests.Cooking;

/// <summary>Power cuts, pauses and what they mean. Times by the lumped law of cooling; advice by the rules named beside it in the code.</summary>
public class HeatGapTests
{
    private const double AwayAt = 60;

    [Fact]
    public void A_pot_without_heat_cools_as_a_lump()
    {
        // P.33, exact: 10 x 4180/20 ln(91/17) = 3506.280 s from 95 to 21 C in 4 C.
        Assert.Equal(3506.280, Lump(20, 10 * 4180, 95, 21, 4), 1e-3);

        // P.31 and P.32 worked apart from the code: a 28 cm steel pot with 10 L at 95 C in a 22 C room loses 95 W by its side, 36 W by convection and 30 W by radiation from
        // the top, evaporation aside. The side is taken as wetted to three quarters, so a pot 21.7 cm high stands for 10 L. UA falls by 3 % over 5 K.
        PotEnvironment environment = PotRuns.Kitchen(PlanRequests.Straight(28, 21.7));
        SimmerScript script = PotRuns.Water(10, 95, hours: 10) with
        {
            SimmersAtSeconds = 3600,
            Events = [new(4000, PotEventKind.HeatAway), new(4000, PotEventKind.Look, 1), .. Enumerable.Range(1, 60).Select(i => new PotEvent(4000 + (i * 60), PotEventKind.Look, 1 + i)), new(7601, PotEventKind.HeatBack)],
        };
        SimmerOutcome outcome = SimmerRun.Execute(environment, script, 0, 1, 0.8, sampled: false);
        SimmerOutcome.Sight first = outcome.Looks[1];
        SimmerOutcome.Sight below = outcome.Looks.Values.Where(look => look.Celsius <= 90).MinBy(look => look.Seconds);

        double capacity = (10 * 4188.8) + environment.PotHeatCapacity;
        double expected = Lump((95 + 36 + 30) / 73.0, capacity, first.Celsius, below.Celsius, 22);
        Assert.Equal(1, (below.Seconds - first.Seconds) / expected, 0.06);
    }

    [Fact]
    public void A_short_cut_in_a_full_pot_stays_hot_and_only_moves_the_end()
    {
        Batch batch = Batches.Of(PlanRequests.For("brown-beef").Making(8).Plan());
        BatchCourse plain = Gap(batch, null);
        BatchCourse cut = Gap(batch, TimeSpan.FromMinutes(20));
        HeatGap gap = Assert.Single(cut.HeatGaps);

        Assert.Equal(TimeSpan.Zero, gap.BelowHot);
        Assert.False(gap.IsSerious);
        Assert.Contains("Carry on", gap.Advice, StringComparison.Ordinal);
        Assert.InRange(gap.Delay.TotalMinutes, 20, 40);

        // The time at the simmer is kept: the end moves by just the time without it.
        Assert.Equal(gap.Delay.TotalSeconds, (cut.Expected.Timeline.HeatOff - plain.Expected.Timeline.HeatOff).TotalSeconds, 5.0);
        Assert.Equal((cut.Step("check-5").Step.At - plain.Step("check-5").Step.At).TotalSeconds, gap.Delay.TotalSeconds, 5.0);
        Assert.Equal(plain.Step("check-1").Step.At, cut.Step("check-1").Step.At);
    }

    [Fact]
    public void The_longer_it_is_away_the_graver()
    {
        // A US gallon falls to the 57 C of the Food Code within some two hours; 2 h and 4 h are the bounds of R.12.
        Batch batch = Batches.Chicken();
        HeatGap[] gaps = [.. new[] { 1.0, 3, 6, 10 }.Select(hours => Gap(batch, TimeSpan.FromHours(hours)).HeatGaps[0])];

        for (int i = 1; i < gaps.Length; i++)
        {
            Assert.True(gaps[i].Coldest < gaps[i - 1].Coldest);
            Assert.True(gaps[i].BelowHot >= gaps[i - 1].BelowHot);
            Assert.True(gaps[i].Delay > gaps[i - 1].Delay);
        }

        Assert.All(gaps, gap => Assert.Equal(57, gap.HotLine.DegreesCelsius, 1e-9));
        Assert.All(gaps, gap => Assert.Equal((gap.IsSerious, gap.Advice.Contains("discard", StringComparison.Ordinal)), (gap.BelowHot >= HeatGapReader.Short, gap.BelowHot >= HeatGapReader.Short)));
        Assert.Contains("careful answer", gaps[^1].Advice, StringComparison.Ordinal);
        Assert.True(gaps[^1].BelowHot > HeatGapReader.Long);
        Assert.Contains("full simmer at once", gaps.First(gap => gap.BelowHot > TimeSpan.Zero).Advice, StringComparison.Ordinal);
    }

    [Fact]
    public void A_thermometer_overrules_the_calculation()
    {
        Batch batch = Batches.Chicken();
        Batches.LogWriter log = batch.Writing().Done(0, "heatup-1").Enter(AwayAt, new LogFact.HeatLost(batch.Writing().At(AwayAt + 120)));
        HeatGap expected = log.Now(AwayAt + 200).HeatGaps[0];
        HeatGap read = log.Reads(AwayAt + 100, 45).Now(AwayAt + 200).HeatGaps[0];

        Assert.True(expected.Coldest.DegreesCelsius > 50);
        Assert.InRange(read.Coldest.DegreesCelsius, 42, 45.001);
        Assert.True(read.BelowHot > expected.BelowHot);
    }

    [Fact]
    public void While_it_is_away_nothing_is_due_and_the_end_moves_on()
    {
        Batch batch = Batches.Chicken();
        Batches.LogWriter log = batch.Writing().Done(0, "heatup-1").Enter(AwayAt, new LogFact.HeatLost(null, "power cut"));
        BatchCourse one = log.Now(AwayAt + 30);
        BatchCourse two = log.Now(AwayAt + 90);

        Assert.Equal(BatchPhase.HeatAway, two.Phase);
        Assert.Null(two.Risk);
        Assert.Null(two.HeatGaps[0].Until);
        Assert.True(two.Expected.Timeline.HeatOff - one.Expected.Timeline.HeatOff >= TimeSpan.FromMinutes(60));
        Assert.Equal(StepStanding.Ahead, two.Step("check-2").Standing);
        Assert.True(two.Pot!.Temperature < one.Pot!.Temperature);

        BatchCourse back = log.Enter(AwayAt + 95, new LogFact.Resumed()).Enter(AwayAt + 105, new LogFact.Simmers()).Now(AwayAt + 106);
        Assert.Equal(BatchPhase.Simmering, back.Phase);
        Assert.Equal(log.At(AwayAt + 95), back.HeatGaps[0].Until);
        Assert.Equal(105, back.HeatGaps[0].Delay.TotalMinutes, 0.1);
    }

    [Fact]
    public void A_cut_withdrawn_never_was()
    {
        Batch batch = Batches.Chicken();
        Batches.LogWriter log = batch.Writing().Done(0, "heatup-1").Enter(AwayAt, new LogFact.HeatLost(batch.Writing().At(AwayAt + 60)));
        Guid id = log.Log.All[^1].Id;
        log.Enter(log.At(AwayAt + 100), new LogFact.Withdrawn("wrong pot"), id);

        Assert.Empty(log.Now(AwayAt + 101).HeatGaps);
        Assert.Equal(batch.Planned.Timeline.HeatOff, log.Now(AwayAt + 101).Expected.Timeline.HeatOff, TimeSpan.FromSeconds(2));
    }

    private static BatchCourse Gap(Batch batch, TimeSpan? length)
    {
        Batches.LogWriter log = batch.Writing().Done(0, "heatup-1");
        if (length is { } time)
        {
            log.Enter(150, new LogFact.HeatLost(log.At(150) + time));
        }

        return log.Now(150 + (length?.TotalMinutes ?? 0) + 1);
    }

    private static double Lump(double wattsPerKelvin, double joulesPerKelvin, double from, double to, double around) =>
        joulesPerKelvin / wattsPerKelvin * Math.Log((from - around) / (to - around));
}
