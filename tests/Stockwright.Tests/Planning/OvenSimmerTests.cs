using Stockwright.Cooking;
using Stockwright.Kitchen;
using Stockwright.Logbook;
using Stockwright.Planning;
using Stockwright.Recipes;
using Stockwright.Tests.Cooking;
using UnitsNet;
using Xunit;

namespace Stockwright.Tests.Planning;

/// <summary>A pot that is skimmed on the hob and simmers in the oven (common practice, no source).</summary>
public sealed class OvenSimmerTests
{
    /// <summary>Nothing goes in late: in the oven from 20 minutes after it simmers to the end, four hours less 20 minutes.</summary>
    [Fact]
    public void It_goes_in_after_the_skims_and_comes_out_at_the_end()
    {
        BatchPlan plan = WithoutLateAdditions().Plan();
        IReadOnlyList<PlanStep> steps = plan.Timeline.Steps;
        DateTimeOffset simmers = steps.Single(step => step.Kind == StepKind.Simmer).At;
        PlanStep[] holds = [.. steps.Where(step => step.Kind == StepKind.NightHold)];
        Assert.Equal(2, holds.Length);
        Assert.Equal("Lid on, into the oven", holds[0].Title);
        Assert.Equal(simmers.AddMinutes(20), holds[0].At, TimeSpan.FromSeconds(1));
        Assert.Equal("Out of the oven", holds[1].Title);
        Assert.Equal(simmers.AddHours(4), holds[1].At, TimeSpan.FromSeconds(1));
        Assert.Equal([5.0, 15.0], steps.Where(step => step.Kind == StepKind.Skim).Select(step => Math.Round((step.At - simmers).TotalMinutes)));
        Assert.Empty(plan.Simmer.Checks);
        Assert.Equal("Let it stand", steps.Single(step => step.Kind == StepKind.Stand).Title);
        Assert.Contains("110 to 120 °C (230 to 250 °F)", holds[0].Detail, StringComparison.Ordinal);
        Assert.Contains("common practice, no source", holds[0].Detail, StringComparison.Ordinal);
        Assert.False(plan.HasNotice("oven-late"));
    }

    [Fact]
    public void Each_caution_stands_at_its_step()
    {
        PlanStep[] holds = [.. WithoutLateAdditions().Plan().Timeline.Steps.Where(step => step.Kind == StepKind.NightHold)];
        Assert.Contains(holds[0].Cautions, caution => caution.Code is "pot-into-oven" && caution.Text.Contains("knee height", StringComparison.Ordinal));
        Assert.Contains(holds[1].Cautions, caution => caution.Code is "pot-out-of-oven" && caution.Text.Contains("dry, thick cloths", StringComparison.Ordinal));
    }

    /// <summary>Vegetables and herbs of the last hour take it out for good, so that it is lifted only twice.</summary>
    [Fact]
    public void What_goes_in_late_takes_it_out()
    {
        BatchPlan plan = Chicken().Plan();
        PlanStep[] holds = [.. plan.Timeline.Steps.Where(step => step.Kind == StepKind.NightHold)];
        PlanStep add = Assert.Single(plan.Timeline.Steps, step => step.Kind == StepKind.Add);
        Assert.Equal(2, holds.Length);
        Assert.Equal(add.At, holds[1].At + StepTimes.OvenLift, TimeSpan.FromSeconds(1));
        Assert.Equal(1, (plan.Timeline.HeatOff - holds[1].At).TotalHours, 1e-3);
        Assert.True(plan.HasNotice("oven-late"));
        Assert.Equal("Heat off, let it stand", plan.Timeline.Steps.Single(step => step.Kind == StepKind.Stand).Title);
    }

    /// <summary>In the oven with its lid on it loses a fraction of what it loses on the hob, and takes no heat from it.</summary>
    [Fact]
    public void It_loses_less_and_spares_the_hob()
    {
        BatchPlan oven = WithoutLateAdditions().Plan();
        BatchPlan hob = (WithoutLateAdditions() with { SimmersInOven = false }).Plan();
        Assert.True(oven.Simmer.Evaporated.Central < hob.Simmer.Evaporated.Central * 0.5);
        Assert.True(oven.Simmer.HobEnergy.Central < hob.Simmer.HobEnergy.Central);
        Assert.Empty(PlanInvariants.Broken(oven));
        Assert.Equal(93, oven.Simmer.Samples[^1].Temperature.DegreesCelsius, 0.5);
    }

    /// <summary>The oven of 110 to 120 °C holds what the cook wants, not the 93 °C of a night's low oven.</summary>
    [Fact]
    public void It_keeps_the_simmer_asked_for() =>
        Assert.Equal(96, WithoutLateAdditions().At(Temperature.FromDegreesCelsius(96)).Plan().Simmer.Samples[^1].Temperature.DegreesCelsius, 0.3);

    [Fact]
    public void What_it_needs_is_said_beside_the_field()
    {
        Assert.Equal(ProblemCode.NoOven, (Chicken() with { Oven = null }).Problem().Code);
        Assert.Equal(PlanPart.SimmersInOven, (Chicken() with { Oven = null }).Problem().Part);
        Assert.Equal(ProblemCode.PotTooWideForOven, Chicken().In(PlanRequests.Straight(45, 20)).Problem().Code);
        Assert.Equal(ProblemCode.OvenTooShort, Chicken().SimmeringFor(0.5).Problem().Code);
        Assert.Equal(ProblemCode.OvenTakesOpenPots, (Chicken() with { Lid = LidPosition.On }).In(PlanRequests.PressureCooker(26, 20)).Problem().Code);
        Assert.Equal(PlanPart.SimmersInOven, (PlanRequests.For("pork-bone-broth") with { SimmersInOven = true }).Problem().Part);
    }

    [Fact]
    public void The_night_is_spent_in_the_oven_already()
    {
        BatchPlan plan = WithoutLateAdditions().SimmeringFor(12).Starting(PlanRequests.Morning.AddHours(12), NightPlan.StopAndCool).Plan();
        Assert.Equal(2, plan.Timeline.Steps.Count(step => step.Kind == StepKind.NightHold));
        Assert.True(plan.HasNotice("oven-night"));
    }

    /// <summary>A batch under way: in the oven it stays without a check until its time is up.</summary>
    [Fact]
    public void A_batch_under_way_asks_for_no_check()
    {
        BatchPlan plan = WithoutLateAdditions().Plan();
        BatchCourse course = Batches.Of(plan, "nz-template").Writing().Done(0, "heatup-1").Now(120);
        Assert.DoesNotContain(course.Expected.Timeline.Steps, step => step.Kind == StepKind.Check);
        Assert.Equal(2, course.Expected.Timeline.Steps.Count(step => step.Kind == StepKind.NightHold));
    }

    /// <summary>It simmers 40 minutes late: the oven keeps to the simmer, not to the clock on the wall as a night does.</summary>
    [Fact]
    public void A_late_pot_goes_in_and_comes_out_later()
    {
        BatchPlan plan = WithoutLateAdditions().Plan();
        double late = plan.HeatUp.Time.Central.TotalMinutes + 40;
        BatchCourse course = Batches.Of(plan, "nz-template").Writing().Done(0, "heatup-1").Enter(late, new LogFact.Simmers()).Now(late + 1);
        PlanStep[] holds = [.. course.Expected.Timeline.Steps.Where(step => step.Kind == StepKind.NightHold)];
        Assert.Equal(late + 20, (holds[0].At - plan.Timeline.HeatOn).TotalMinutes, 0.1);
        Assert.Equal(late + 240, (holds[1].At - plan.Timeline.HeatOn).TotalMinutes, 0.1);
    }

    /// <summary>Moved into the oven and said so: the pot is taken to be there, and simmers on.</summary>
    [Fact]
    public void What_is_entered_stands_for_the_step()
    {
        BatchPlan plan = WithoutLateAdditions().Plan();
        double into = plan.HeatUp.Time.Central.TotalMinutes + 25;
        BatchCourse course = Batches.Of(plan, "nz-template").Writing().Done(0, "heatup-1").Enter(into, new LogFact.HeatMoved(LogFact.HeatMoved.Oven)).Now(into + 60);
        Assert.Equal(StepStanding.Done, course.Steps.Single(step => step.Step.Key is "nighthold-1").Standing);
        Assert.InRange(course.Pot!.Temperature.DegreesCelsius, 90, 93.5);
    }

    private static PlanRequest Chicken() => PlanRequests.For("white-chicken") with { SimmersInOven = true };

    private static PlanRequest WithoutLateAdditions()
    {
        PlanRequest chicken = Chicken();
        return chicken with { LeftOut = chicken.Recipe.Lines.Where(line => line.Joins == JoinMoment.BeforeEnd).Select(line => line.IngredientId).ToHashSet(StringComparer.Ordinal) };
    }
}
