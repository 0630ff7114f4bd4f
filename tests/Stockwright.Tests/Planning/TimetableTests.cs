using Stockwright.Kitchen;
using Stockwright.Measures;
using Stockwright.Planning;
using Stockwright.Simmering;
using Stockwright.Tests.Physics;
using UnitsNet;
using Xunit;

namespace Stockwright.Tests.Planning;

/// <summary>The whole wish in the timetable (F.9 and F.10 in docs/equations.md): when rounds begin, what each pot takes, and what is told at each step.</summary>
public sealed class TimetableTests
{
    private static readonly StepKind[] PerPot = [StepKind.Gather, StepKind.Fill, StepKind.Skim, StepKind.Check, StepKind.Add, StepKind.Strain];

    // By hand: two pots side by side are weighed, filled, skimmed, looked at, added to and strained one after the other.
    [Fact]
    public void Each_pot_takes_its_own_handwork()
    {
        PlanRequest request = Twenty("white-beef").Making(16);
        Timeline apart = (request with { Way = SplitWay.OneAfterAnother }).Plan().Timeline;
        Timeline together = (request with { Way = SplitWay.SideBySide, PotCount = 2, HobCount = 2 }).Plan().Timeline;
        Assert.Equal((2, 1), (apart.Rounds.Count, together.Rounds.Count));
        foreach (StepKind kind in PerPot)
        {
            PlanStep one = apart.Steps.First(step => step.Kind == kind);
            PlanStep both = together.Steps.First(step => step.Kind == kind);
            Assert.Equal(one.HandsOn * 2, both.HandsOn);
            Assert.True(both.Duration >= both.HandsOn, $"{kind}");
        }

        // The second pot is a quarter of an hour in hand before it cools as the first did: 90 minutes and 15.
        PlanStep cool = together.Steps.Single(step => step.Kind == StepKind.Cool);
        Assert.Equal((105.0, 30.0), (cool.Duration.TotalMinutes, cool.HandsOn.TotalMinutes));
    }

    // Three potfuls in two rounds: the second has one pot, and is told and timed as that.
    [Fact]
    public void The_last_round_has_the_pots_that_are_left()
    {
        Timeline timeline = (Twenty("brown-beef").Making(25) with { PotCount = 2, HobCount = 2 }).Plan().Timeline;
        PlanStep[] strain = [.. timeline.Steps.Where(step => step.Kind == StepKind.Strain)];
        Assert.Equal([40, 20], strain.Select(step => step.HandsOn.TotalMinutes));
        Assert.EndsWith("(round 1 of 2, both pots)", strain[0].Title, StringComparison.Ordinal);
        Assert.EndsWith("(round 2 of 2)", strain[1].Title, StringComparison.Ordinal);
        PlanStep[] gather = [.. timeline.Steps.Where(step => step.Kind == StepKind.Gather)];
        Assert.Equal([30, 15], gather.Select(step => step.HandsOn.TotalMinutes));

        // Every step of every round is told by its round.
        Assert.All(timeline.Steps.Where(step => step.Kind is StepKind.Check or StepKind.Skim), step => Assert.Contains("round ", step.Title, StringComparison.Ordinal));
        Assert.Equal(2 * timeline.Steps.Count(step => step.Kind == StepKind.Check && step.Title.Contains("round 1", StringComparison.Ordinal)), timeline.Steps.Count(step => step.Kind == StepKind.Check));
    }

    // Getting up for it: the next round begins when the hands are free, a quarter of an hour a pot into the cooling, whatever the hour.
    [Theory]
    [InlineData(1, 15)]
    [InlineData(2, 30)]
    public void A_round_begins_when_the_hands_are_free(int pots, double minutes)
    {
        Timeline timeline = (Twenty("brown-beef").Making(25).Starting(PlanRequests.Morning) with { PotCount = pots, HobCount = pots }).Plan().Timeline;
        Assert.True(pots == 2 || timeline.Rounds[1].HeatOff.Date > timeline.Rounds[1].Start.Date);
        Close.To(minutes, (timeline.Rounds[1].Start - timeline.Rounds[0].Strained).TotalMinutes, 1e-6);
    }

    // What is not chilled is portioned when it is cold, before the next pot is filled.
    [Fact]
    public void A_stock_without_fat_is_portioned_round_by_round()
    {
        BatchPlan plan = (Twenty("vegetable").Making(25) with { Way = SplitWay.OneAfterAnother }).Plan();
        PlanStep[] portions = [.. plan.Timeline.Steps.Where(step => step.Kind == StepKind.Portion)];
        Assert.Equal(plan.Fit.Potfuls, portions.Length);
        Assert.Equal(portions[0].End, plan.Timeline.Rounds[1].Start);
        Assert.All(portions, step => Assert.Equal(Portioning(plan.Yield.Central.Liters), step.Duration.TotalMinutes));
    }

    // Ten minutes and two a litre, of what there is: of all rounds once where no night lies between, of each apart where one does.
    [Fact]
    public void Portioning_takes_two_minutes_a_litre_of_what_is_there()
    {
        BatchPlan day = Twenty("brown-chicken").Making(18).Starting(PlanRequests.Morning).Plan();
        Assert.Equal([Portioning(day.Total.Central.Liters)], Portions(day));
        BatchPlan night = Twenty("brown-chicken").Making(18).Starting(PlanRequests.Morning.AddHours(4), NightPlan.StopAndCool).Plan();
        Assert.Equal([Portioning(night.Yield.Central.Liters), Portioning(night.Yield.Central.Liters)], Portions(night));
        BatchPlan pairs = (Twenty("brown-chicken").Making(32).Starting(PlanRequests.Morning.AddHours(4), NightPlan.StopAndCool) with { PotCount = 2, HobCount = 2 }).Plan();
        Assert.Equal((4, 2), (pairs.Fit.Potfuls, pairs.Fit.Rounds));
        Assert.Equal([Portioning(pairs.Total.Central.Liters / 2), Portioning(pairs.Total.Central.Liters / 2)], Portions(pairs));

        // Let down, the water is portioned with it.
        BatchPlan letDown = PlanRequests.For("brown-beef").Making(10).Plan();
        Assert.True(letDown.Fit.LetDown.Liters > 0.5);
        Assert.Equal([Portioning(10)], Portions(letDown));
    }

    // The night is the kitchen's: in Auckland a round of the evening and one of the next morning fall on one day of UTC, and are two days there.
    [Fact]
    public void A_night_between_rounds_is_the_kitchens()
    {
        TimeZoneInfo auckland = TimeZoneInfo.FindSystemTimeZoneById("Pacific/Auckland");
        DateTimeOffset noon = new(2026, 1, 13, 12, 0, 0, TimeSpan.FromHours(13));
        BatchPlan plan = Twenty("brown-chicken").Making(18).Starting(noon, NightPlan.StopAndCool, auckland).Plan();
        Assert.Equal(2, plan.Timeline.Rounds.Count);
        Assert.True(plan.Timeline.Rounds[1].Start >= new DateTimeOffset(2026, 1, 14, 6, 30, 0, TimeSpan.FromHours(13)));
        Assert.True(plan.Timeline.Steps.First(step => step.Kind == StepKind.Portion).End <= plan.Timeline.Rounds[1].Start);
    }

    // A later round begins at once where it is done by bedtime, else in the morning: how long it takes is that of the first.
    [Fact]
    public void A_later_round_is_done_by_bedtime()
    {
        int waited = 0;
        int followed = 0;
        for (double hour = -1.5; hour <= 12; hour += 0.25)
        {
            BatchPlan plan = Twenty("brown-chicken").Making(18).SimmeringFor(1.5).Starting(PlanRequests.Morning.AddHours(hour), NightPlan.StopAndCool).Plan();
            if (plan.Timeline.Steps.Any(step => step.Kind == StepKind.NightHold))
            {
                continue;
            }

            (RoundTimes first, RoundTimes second) = (plan.Timeline.Rounds[0], plan.Timeline.Rounds[1]);
            DateTimeOffset free = first.Strained + StepTimes.CoolHands;
            TimeSpan takes = free - first.Start;
            bool inTime = plan.Request.Schedule.IsAwake(free) && (free + takes).TimeOfDay <= new TimeSpan(22, 30, 0) && (free + takes).Date == free.Date;
            (followed, waited) = inTime ? (followed + 1, waited) : (followed, waited + 1);
            if (inTime)
            {
                Assert.Equal(free, second.Start);
            }
            else
            {
                Assert.True(second.Start > free && plan.Request.Schedule.IsAwake(second.Start), $"{hour}: {second.Start}");
            }
        }

        Assert.True(waited > 5 && followed > 5, $"{waited} waited, {followed} followed");
    }

    // Put away for the night, the next round begins at the hour of the first, so that its night falls alike.
    [Fact]
    public void Rounds_put_away_begin_at_one_hour()
    {
        Timeline timeline = Twenty("brown-beef").Making(18).Starting(PlanRequests.Morning.AddHours(6), NightPlan.OvenHold).Plan().Timeline;
        Assert.Equal(2, timeline.Rounds.Count);
        Assert.Equal(new TimeSpan(14, 0, 0), timeline.Rounds[1].Start.TimeOfDay);
        Assert.DoesNotContain(timeline.Steps, step => step.InNight);
    }

    // Two hours from 20:15 and the night in the oven are more than the four it simmers: the next such night begins at the hour of this one, though the day were long enough for it.
    [Fact]
    public void A_night_is_not_spent_by_day()
    {
        PlanRequest request = Twenty("white-chicken").Making(18).SimmeringFor(4).Starting(PlanRequests.Morning.AddHours(11), NightPlan.OvenHold) with { Way = SplitWay.OneAfterAnother };
        Timeline timeline = request.Plan().Timeline;
        Assert.True(timeline.Rounds[0].Strained < PlanRequests.Morning.AddDays(1));
        Assert.All(timeline.Rounds, round => Assert.Equal(new TimeSpan(19, 0, 0), round.Start.TimeOfDay));
    }

    // A hard boil of 15 hours fits between no waking and bedtime: its second round begins at the hour of the first, and it is never put away.
    [Fact]
    public void A_round_longer_than_the_day_begins_at_the_hour_of_the_first()
    {
        Timeline timeline = Twenty("pork-bone-broth").Making(14).SimmeringFor(15).Starting(PlanRequests.Morning.AddHours(6), NightPlan.StopAndCool).Plan().Timeline;
        Assert.Equal(2, timeline.Rounds.Count);
        Assert.Equal(new TimeSpan(14, 0, 0), timeline.Rounds[1].Start.TimeOfDay);
        Assert.DoesNotContain(timeline.Steps, step => step.Kind == StepKind.NightHold);
    }

    // One potful is begun when the whole is: with one pot in hand its heat is on the sooner.
    [Fact]
    public void One_potful_begins_with_the_whole()
    {
        BatchPlan plan = (Twenty("white-beef").Making(16) with { PotCount = 2, HobCount = 2, Way = SplitWay.SideBySide }).Plan();
        Assert.Equal((2, 1), (plan.Fit.Potfuls, plan.Fit.Rounds));
        Assert.Equal(plan.Timeline.Start, plan.OnePotTimeline!.Start);
        Assert.Equal(plan.Timeline.Start, plan.OnePotTimeline.Steps[0].At);
        Assert.DoesNotContain(plan.ForOnePot().Timeline.Steps, step => step.Title.Contains("pots", StringComparison.Ordinal));

        // A quarter of an hour to weigh, ten minutes to drain and rinse, five to fill.
        Assert.Equal(30, (plan.Timeline.HeatOn - plan.OnePotTimeline.HeatOn).TotalMinutes, 1e-6);
    }

    // What a check of the timetable tells is what the forecast has for it, in the pot put away for a night too.
    [Theory]
    [InlineData(NightPlan.GetUp)]
    [InlineData(NightPlan.OvenHold)]
    [InlineData(NightPlan.StopAndCool)]
    public void Each_check_tells_its_level_and_its_water(NightPlan night)
    {
        BatchPlan plan = PlanRequests.For("brown-beef").Uncovered().WithFilm(0.6).Starting(PlanRequests.Morning.AddHours(8), night).Plan();
        PlanStep[] checks = [.. plan.Timeline.Steps.Where(step => step.CheckIndex is not null)];
        Assert.Equal(plan.Simmer.Checks.Count, checks.Length);
        Assert.Contains(plan.Simmer.Checks, check => check.TopUp.Central.Liters > 0.3);
        foreach (PlanStep step in checks)
        {
            SimmerCheck check = plan.Simmer.Checks[step.CheckIndex!.Value];
            Assert.Contains($"Expect it {KitchenFormat.LevelBoth(plan.Request.Pot.InnerHeight - check.LevelBefore)} below the rim.", step.Detail, StringComparison.Ordinal);
            string water = check.TopUp.Central.Liters > 0 ? $"about {KitchenFormat.Both(check.TopUp.Central)}." : "No water expected.";
            Assert.EndsWith(water, step.Detail, StringComparison.Ordinal);
        }
    }

    // Hands that are busy at bedtime finish what they are at; what waits for them falls in the night.
    [Fact]
    public void What_waits_past_bedtime_falls_in_the_night()
    {
        DateTimeOffset late = PlanRequests.Morning.AddHours(14).AddMinutes(25);
        StepBuilder builder = new(new PlanSchedule { StartAt = late });
        builder.At(late, StepKind.Strain, "Strain", "", TimeSpan.FromMinutes(30), TimeSpan.FromMinutes(10));
        builder.At(late.AddMinutes(2), StepKind.Skim, "Skim", "", TimeSpan.FromMinutes(2), TimeSpan.FromMinutes(2));
        builder.At(late.AddMinutes(11), StepKind.Cool, "Cool", "", TimeSpan.FromMinutes(60), TimeSpan.FromMinutes(5));
        IReadOnlyList<PlanStep> steps = builder.InOrder();
        Assert.Equal([0, 10, 12], steps.Select(step => (step.At - late).TotalMinutes));
        Assert.Equal([false, true, true], steps.Select(step => step.InNight));
    }

    // Chilled 12 h: cold at about nine in the evening it is firm in the morning; what would be firm just before bed, with an hour's work after it, waits.
    [Fact]
    public void Fat_that_is_firm_just_before_bed_waits_for_the_morning()
    {
        int waits = 0;
        for (double hour = -8; hour < 16; hour += 0.5)
        {
            Timeline timeline = PlanRequests.For("white-chicken").Starting(PlanRequests.Morning.AddHours(hour), NightPlan.GetUp).Plan().Timeline;
            PlanStep portion = timeline.Steps.Single(step => step.Kind == StepKind.Portion);
            PlanStep defat = timeline.Steps.Single(step => step.Kind == StepKind.Defat);
            Assert.False(defat.InNight || portion.InNight, $"{hour}");
            Assert.True(portion.End.TimeOfDay <= new TimeSpan(22, 30, 0) && portion.End.Date == defat.At.Date, $"{hour}: {portion.End}");
            DateTimeOffset firm = timeline.Rounds[0].Cold.AddHours(12);
            waits += defat.At > firm.AddMinutes(1) ? 1 : 0;
            Assert.True(defat.At >= firm.AddMinutes(-0.01), $"{hour}");
        }

        Assert.InRange(waits, 10, 30);
    }

    private static double Portioning(double litres) => Math.Ceiling(10 + (2 * litres));

    private static IEnumerable<double> Portions(BatchPlan plan) => plan.Timeline.Steps.Where(step => step.Kind == StepKind.Portion).Select(step => step.Duration.TotalMinutes);

    private static PlanRequest Twenty(string recipe) =>
        PlanRequests.For(recipe).In(Pot.FromBrimVolume("pot", "Pot", Volume.FromLiters(20), Length.FromCentimeters(28)));
}
