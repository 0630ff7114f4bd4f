using CsCheck;
using Stockwright.Cooking;
using Stockwright.Cooling.Limits;
using Stockwright.Logbook;
using Stockwright.Planning;
using Stockwright.Simmering;
using Stockwright.Tests.Planning;
using UnitsNet;
using Xunit;

namespace Stockwright.Tests.Cooking;

/// <summary>What comes first (R.14; the order is our own: fire, then food, then the plan; common practice, no source).</summary>
public class CourseMatterTests
{
    /// <summary>The order, written down once more: a kind left out, or moved, fails here.</summary>
    private static readonly MatterKind[] Order =
    [
        MatterKind.RunsDry, MatterKind.CoolingAlarm, MatterKind.Uncovered, MatterKind.HeatAway, MatterKind.Cooling,
        MatterKind.HeatOff, MatterKind.Visit, MatterKind.Step, MatterKind.Addition,
    ];

    [Fact]
    public void The_card_never_shows_what_is_less_urgent_than_something_else_that_is_open() =>
        CourseGenerator.Courses.Sample(
            made => Assert.Empty(Broken(BatchReplanner.Replan(made.Batch, made.Log, made.Now))),
            iter: 600,
            threads: 2,
            seed: "0000Stove014",
            print: made => $"{made.Batch.Planned.Request.Recipe.Id} now {made.Now:dd HH:mm}\n{string.Join('\n', made.Log.All.Select(entry => $"{entry.Number} {entry.HappenedAt:dd HH:mm:ss} {entry.Fact} {entry.Corrects}"))}");

    [Fact]
    public void Heat_off_missed_by_21_hours_with_an_addition_forgotten_is_a_pot_to_look_at_not_parsley_to_add()
    {
        Batch batch = Batches.Of((PlanRequests.For("brown-beef") with { TopUp = TopUpRule.KeepToLine }).Uncovered().WithFilm(1.5).Making(3).Plan());
        PlanStep addition = batch.Planned.Timeline.Steps.Last(step => step.Kind == StepKind.Add);
        double end = batch.Planned.Simmer.Length.TotalMinutes;
        Batches.LogWriter log = batch.Writing().Done(0, "heatup-1").Enter(16, new LogFact.Simmers());

        // The hour it is due off: the addition is missed and the heat comes first.
        BatchCourse due = log.Now(end + 15);
        Assert.Equal(StepStanding.Missed, due.Step(addition.Key).Standing);
        Assert.Equal("stand-1", due.Next!.Key);
        Assert.Equal(due.Now, due.Matters.Single(matter => matter.Kind == MatterKind.HeatOff).At + TimeSpan.FromMinutes(15), TimeSpan.FromMinutes(2));

        // Open and with a film that loses half as much again, this pot loses more than a litre an hour: nothing of it is left after 21.
        BatchCourse late = log.Now(end + (21 * 60));
        Assert.Equal(StepStanding.Missed, late.Step(addition.Key).Standing);
        Assert.Equal(MatterKind.RunsDry, late.Matters[0].Kind);
        Assert.Equal("stand-1", late.Next!.Key);
        Assert.Contains(late.Notices, notice => notice.Code is "ran-dry");
        Assert.True(late.Matters[0].At < late.Now.AddHours(-1), $"dry since {late.Matters[0].At}, now {late.Now}");
    }

    [Fact]
    public void A_pot_that_is_about_to_run_dry_comes_before_its_check()
    {
        Batch batch = Batches.Of((PlanRequests.For("brown-beef") with { TopUp = TopUpRule.KeepToLine }).Uncovered().WithFilm(1.5).Making(3).Plan());
        Batches.LogWriter log = batch.Writing().Done(0, "heatup-1");
        DateTimeOffset dry = log.Now(120).Risk!.DryAt!.Value;
        BatchCourse before = log.Now((dry - log.At(0)).TotalMinutes - 20);

        Assert.Contains(before.Steps, step => step.Step.Kind == StepKind.Check && step.Standing is StepStanding.Due or StepStanding.Overdue);
        Assert.Equal(MatterKind.RunsDry, before.Matters[0].Kind);
        Assert.Equal(dry, before.Matters[0].At, TimeSpan.FromMinutes(10));
    }

    [Fact]
    public void Solids_standing_out_come_before_an_overdue_check_and_say_what_covers_them()
    {
        Batch batch = Batches.Of((PlanRequests.For("brown-beef") with { TopUp = TopUpRule.KeepToLine }).Uncovered().WithFilm(1.5).Making(3).Plan());
        Batches.LogWriter log = batch.Writing().Done(0, "heatup-1");
        DateTimeOffset uncovered = log.Now(120).Risk!.UncoveredAt!.Value;
        BatchCourse course = log.Now((uncovered - log.At(0)).TotalMinutes + 10);
        CourseMatter first = course.Matters[0];

        Assert.Equal(MatterKind.Uncovered, first.Kind);
        Assert.Equal(uncovered, first.At, TimeSpan.FromMinutes(20));

        // A cylinder of 28 cm holds 0.62 L a centimetre (geometry).
        double centimetres = (course.Pot!.BelowRim.Central - course.Pot.HeapBelowRim).Centimeters;
        Assert.Equal(Math.PI / 4 * 28 * 28 * centimetres / 1000, first.Cover!.Value.Liters, 0.01);

        BatchCourse covered = log.Water((course.Now - log.At(0)).TotalMinutes, first.Cover.Value.Liters + 1).Now((course.Now - log.At(0)).TotalMinutes + 1);
        Assert.DoesNotContain(covered.Matters, matter => matter.Kind == MatterKind.Uncovered);
    }

    [Fact]
    public void Heat_away_for_three_hours_comes_before_the_check_that_was_missed()
    {
        Batch batch = Batches.Chicken();
        BatchCourse course = batch.Writing().Done(0, "heatup-1").Enter(16, new LogFact.Simmers()).Enter(60, new LogFact.HeatLost(null, "power cut")).Now(240);

        Assert.Equal(BatchPhase.HeatAway, course.Phase);
        Assert.Equal(MatterKind.HeatAway, course.Matters[0].Kind);
        Assert.Equal(course.Now.AddHours(-3), course.Matters[0].At);
    }

    [Fact]
    public void A_night_stop_that_was_planned_is_no_alarm()
    {
        Batch batch = Batches.Of(PlanRequests.For("brown-beef").Starting(PlanRequests.Morning.AddHours(8), NightPlan.StopAndCool).Plan());
        PlanStep stop = batch.Planned.Timeline.Steps.First(step => step.Kind == StepKind.NightHold);
        double at = (stop.At - batch.Planned.Timeline.HeatOn).TotalMinutes;
        BatchCourse course = batch.Writing().Done(0, "heatup-1").Done(at, stop.Key).Now(at + 60);

        Assert.Equal(BatchPhase.HeatAway, course.Phase);
        Assert.DoesNotContain(course.Matters, matter => matter.Kind == MatterKind.HeatAway);
    }

    [Fact]
    public void A_missed_limit_comes_before_everything_the_cold_stock_is_for()
    {
        Batch batch = Batches.Chicken();
        double at = batch.Planned.Simmer.Length.TotalMinutes + 40;
        BatchCourse course = batch.Writing().Done(0, "heatup-1").Done(at - 40, "stand-1").Enter(at, new LogFact.Strained(Volume.FromLiters(3.7)))
            .Reads(at, 57, ReadingPlace.Cooling).Reads(at + 400, 20, ReadingPlace.Cooling).Reads(at + 800, 4, ReadingPlace.Cooling).Now(at + 801);

        Assert.Equal(CorrectiveStep.Discard, course.Cooling!.Action!.Step);
        Assert.Equal(MatterKind.CoolingAlarm, course.Matters[0].Kind);
    }

    private static List<string> Broken(BatchCourse course)
    {
        List<string> broken = [];
        IReadOnlyList<CourseMatter> matters = course.Matters;
        int first = matters.Count > 0 ? Array.IndexOf(Order, matters[0].Kind) : Order.Length;
        void Outranks(bool isOpen, MatterKind kind, string what)
        {
            if (isOpen && first > Array.IndexOf(Order, kind))
            {
                broken.Add($"{what}, and the card shows {(matters.Count > 0 ? matters[0] : "nothing")}");
            }
        }

        if (course.Phase == BatchPhase.Closed)
        {
            return matters.Count == 0 ? broken : ["a closed record asks for something"];
        }

        bool Due(params StepKind[] kinds) => course.Steps.Any(step => kinds.Contains(step.Step.Kind) && step.Standing is StepStanding.Due or StepStanding.Overdue);
        bool onTheHeat = course.Phase is BatchPhase.HeatingUp or BatchPhase.Simmering;
        Outranks(onTheHeat && course.Pot is { } dry && dry.Liquid.Central.Liters < 0.05, MatterKind.RunsDry, "the pot is dry");
        Outranks(onTheHeat && course.Pot is { IsUncovered: true }, MatterKind.Uncovered, "the solids stand out");
        Outranks(course.HeatGaps.Any(gap => gap.Until is null) && course.Phase == BatchPhase.HeatAway, MatterKind.HeatAway, "the heat is away");
        Outranks(course.Phase == BatchPhase.Cooling, MatterKind.Cooling, "it cools");
        Outranks(course.Phase == BatchPhase.Cooling && course.Cooling!.Verdict?.Outcome == CoolingOutcome.Fails, MatterKind.CoolingAlarm, "it missed the limit");
        Outranks(Due(StepKind.Stand), MatterKind.HeatOff, "the heat is due off");
        Outranks(Due(StepKind.Check, StepKind.Skim), MatterKind.Visit, "a look is due");
        Outranks(Due(StepKind.Add), MatterKind.Addition, "something is due to go in");
        if (Due(StepKind.Stand) && Due(StepKind.Add))
        {
            broken.Add("the heat is due off and something is still to be added");
        }

        if (matters.Zip(matters.Skip(1)).Any(pair => Array.IndexOf(Order, pair.First.Kind) > Array.IndexOf(Order, pair.Second.Kind)))
        {
            broken.Add("matters out of order");
        }

        if (course.Phase == BatchPhase.Finishing && !course.Log.Standing.Any(entry => entry.HappenedAt <= course.Now && SaysCold(entry.Fact, course.Batch.Limit)))
        {
            broken.Add("cold by nobody's reading or word");
        }

        if (course.Phase is BatchPhase.Cooling or BatchPhase.Straining && course.Next is { Step.Kind: >= StepKind.Chill } next)
        {
            broken.Add($"{next.Key} of hot stock");
        }

        return broken;
    }

    /// <summary>By the limit's own figures: at or below its last, in the scale it was read in where the limit prints it.</summary>
    private static bool SaysCold(LogFact fact, CoolingLimit limit)
    {
        PrintedTemperature end = limit.Stages[^1].To;
        return fact is LogFact.ColdUnmeasured
            || (fact is LogFact.TemperatureRead { Place: ReadingPlace.Cooling } read
                && (end.Celsius is { } celsius && read.Temperature.DegreesCelsius <= celsius + 1e-6
                    || end.Fahrenheit is { } fahrenheit && read.Temperature.DegreesFahrenheit <= fahrenheit + 1e-6));
    }
}
