using Stockwright.Cooking;
using Stockwright.Logbook;
using Stockwright.Predicting;
using UnitsNet;
using Xunit;

namespace Stockwright.Tests.Cooking;

/// <summary>Plan against reality: what was entered comes back as measured, what was not stays open.</summary>
public class BatchOutcomeTests
{
    [Fact]
    public void What_was_entered_stands_beside_the_plan()
    {
        Batch batch = Batches.Chicken();
        double end = batch.Planned.Simmer.Length.TotalMinutes;
        BatchCourse course = batch.Writing().Done(0, "heatup-1").Enter(20, new LogFact.Simmers()).Water(100, 0.4).Water(160, 0.3).Done(end, "stand-1")
            .Enter(end + 30, new LogFact.Strained(Volume.FromLiters(3.7))).Enter(end + 35, new LogFact.SpentWeighed(Mass.FromGrams(2150)))
            .Enter(end + 800, new LogFact.FatWeighed(Mass.FromGrams(180)))
            .Enter(end + 805, new LogFact.RefractometerRead(4)).Enter(end + 806, new LogFact.SetFelt(BodyClass.SoftJelly))
            .Enter(end + 830, new LogFact.Portioned(Volume.FromLiters(3.6)))
            .Enter(end + 840, new LogFact.Closed("less water", TimeSpan.FromMinutes(95), Energy.FromKilowattHours(2.4))).Now(end + 900);
        BatchOutcome outcome = BatchOutcome.Of(course);

        Assert.Equal(batch.Planned.Yield, outcome.Yield.Planned);
        Assert.Equal(3.6, outcome.Yield.Measured!.Value.Liters, 1e-9);
        Assert.Equal(3.7, outcome.Strained.Measured!.Value.Liters, 1e-9);
        Assert.Equal(0.7, outcome.WaterAdded.Measured!.Value.Liters, 1e-9);
        Assert.Equal(2150, outcome.Spent.Measured!.Value.Grams, 1e-9);
        Assert.Equal(batch.Planned.SpentSolids, outcome.Spent.Planned);
        Assert.Equal(course.Expected.SpentSolids, outcome.Spent.Expected);
        Assert.Equal(180, outcome.Fat.Measured!.Value.Grams, 1e-9);
        Assert.Equal(20, outcome.HeatUp.Measured!.Value.TotalMinutes, 1e-9);
        Assert.Equal(end - 20, outcome.Simmer.Measured!.Value.TotalMinutes, 1e-6);
        Assert.Equal(95, outcome.Attended.Measured!.Value.TotalMinutes, 1e-9);
        Assert.Equal(2.4, outcome.Energy.Measured!.Value.KilowattHours, 1e-9);
        Assert.Equal(BodyClass.SoftJelly, outcome.Body.Measured);

        // B.16: 1.30 degrees a per cent of gelatin were it all gelatin; a poultry stock is some part of it.
        Assert.InRange(outcome.Gelatin.Measured!.Value.Percent, 0.3 * 4 / 1.30, 4 / 1.30);
        Assert.Equal(course.Expected.Timeline.HeatOff + TimeSpan.FromMinutes(830), outcome.Ready.Measured!.Value, TimeSpan.FromSeconds(1));
        Assert.Null(outcome.Evaporated.Measured);
        Assert.True(outcome.Gelatin.Expected.Low <= outcome.Gelatin.Expected.Central && outcome.Gelatin.Expected.Central <= outcome.Gelatin.Expected.High);
        Assert.True(outcome.Attended.Expected.Central < outcome.Attended.Planned.Central);
    }

    /// <summary>Six hours of simmer more than planned: more has left the bones, so that less lies in the colander.</summary>
    [Fact]
    public void Spent_solids_are_expected_by_the_log_and_not_by_the_plan()
    {
        Batch batch = Batches.Chicken(Stockwright.Simmering.TopUpRule.KeepToLine);
        double end = batch.Planned.Simmer.Length.TotalMinutes + 360;
        BatchCourse course = batch.Writing().Done(0, "heatup-1").Enter(20, new LogFact.Simmers()).Water(200, 1.5).Water(400, 1.5).Done(end, "stand-1").Now(end + 5);
        OutcomeFigure<Mass> spent = BatchOutcome.Of(course).Spent;
        Assert.True(spent.Expected.Central < spent.Planned.Central * 0.99, $"{spent.Expected} against {spent.Planned}");
        Assert.True(spent.Expected.Low < spent.Expected.Central && spent.Expected.Central < spent.Expected.High);
    }

    [Fact]
    public void Solids_on_the_scale_say_that_it_was_strained()
    {
        Batch batch = Batches.Chicken();
        double end = batch.Planned.Simmer.Length.TotalMinutes;
        Batches.LogWriter Log() => batch.Writing().Done(0, "heatup-1").Enter(20, new LogFact.Simmers()).Done(end, "stand-1");
        BatchPhase strained = Log().Enter(end + 30, new LogFact.Strained(Volume.FromLiters(3.7))).Now(end + 31).Phase;
        Assert.NotEqual(strained, Log().Now(end + 31).Phase);
        Assert.Equal(strained, Log().Enter(end + 30, new LogFact.SpentWeighed(Mass.FromKilograms(2))).Now(end + 31).Phase);
    }

    [Fact]
    public void What_was_not_entered_stays_open()
    {
        BatchOutcome outcome = BatchOutcome.Of(Batches.Chicken().Writing().Now(-400));

        Assert.Null(outcome.Yield.Measured);
        Assert.Null(outcome.Strained.Measured);
        Assert.Null(outcome.Spent.Measured);
        Assert.Null(outcome.WaterAdded.Measured);
        Assert.Null(outcome.Gelatin.Measured);
        Assert.Null(outcome.Body.Measured);
        Assert.Null(outcome.HeatUp.Measured);
        Assert.Null(outcome.Energy.Measured);
        Assert.Equal(TimeSpan.Zero, outcome.Attended.Expected.Central);
    }
}
