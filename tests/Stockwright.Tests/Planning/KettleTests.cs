using Stockwright.Kitchen;
using Stockwright.Planning;
using UnitsNet;
using Xunit;

namespace Stockwright.Tests.Planning;

/// <summary>A tilting or steam-jacketed kettle stays where it is: it is drained, never lifted (common practice, no source).</summary>
public sealed class KettleTests
{
    [Fact]
    public void It_is_drained_by_valve_or_tilt_and_never_lifted()
    {
        IReadOnlyList<PlanStep> steps = Chicken().Plan().Timeline.Steps;
        PlanStep strain = steps.Single(step => step.Kind == StepKind.Strain);
        Assert.Equal("Drain and strain", strain.Title);
        Assert.Contains("draw-off valve", strain.Detail, StringComparison.Ordinal);
        Assert.Contains("tilt the kettle slowly", strain.Detail, StringComparison.Ordinal);
        Caution draining = Assert.Single(strain.Cautions, caution => caution.Code is "kettle-draining");
        Assert.Contains("stand aside", draining.Text, StringComparison.Ordinal);
        Assert.DoesNotContain(steps, step => step.Cautions.Any(caution => caution.Code is "heavy-pot"));
        Assert.Contains(steps.Single(step => step.Kind == StepKind.Fill).Cautions, caution => caution.Code is "kettle-valve");
        Assert.Contains(steps.Single(step => step.Kind == StepKind.HeatUp).Cautions, caution => caution.Code is "kettle-lid");
        Assert.StartsWith("Lid open", steps.Single(step => step.Kind == StepKind.HeatUp).Detail, StringComparison.Ordinal);
    }

    /// <summary>It is looked into like any pot, and takes its heat from its own jacket: twice the power is about half the time.</summary>
    [Fact]
    public void It_has_its_own_heat()
    {
        BatchPlan plan = Chicken().Plan();
        Assert.NotEmpty(plan.Simmer.Checks);
        Assert.Equal(HobKind.Jacket, plan.Request.Heat.Kind);
        double twice = Chicken().In(PlanRequests.Kettle(60, 40, 24)).Plan().HeatUp.Time.Central / plan.HeatUp.Time.Central;
        Assert.InRange(twice, 0.44, 0.52);
    }

    /// <summary>
    /// By hand, without losses: water at 4188.8 J/(kg K), bones at about 3000 (2700 to 3400) and the steel at 500, over 78 K from 15 to 93 °C, by
    /// 0.85 of 12 kW. Wall and open surface take 5 to 25 % more.
    /// </summary>
    [Fact]
    public void Its_heat_up_follows_from_its_power()
    {
        BatchPlan plan = Chicken().Making(25).Plan();
        double bones = plan.Amounts.Where(line => line.JoinsAt == TimeSpan.Zero).Sum(line => line.MassInPot.Kilograms);
        double capacity = (plan.Fit.WaterToLine.Liters * 4188.8) + (plan.Request.Pot.EmptyMass.Kilograms * 500);
        double Minutes(double boneHeat) => (capacity + (bones * boneHeat)) * 78 / 10_200 / 60;
        Assert.InRange(plan.HeatUp.Time.Central.TotalMinutes, Minutes(2700) * 1.05, Minutes(3400) * 1.25);
    }

    [Theory]
    [InlineData(null)]
    [InlineData(0.3)]
    public void It_needs_the_power_of_its_heater(double? kilowatts)
    {
        Problem problem = Chicken().In(PlanRequests.Kettle(60, 40, kilowatts)).Problem();
        Assert.Equal(PlanPart.PotHeater, problem.Part);
        Assert.Equal(ProblemCode.KettlePower, problem.Code);
    }

    /// <summary>18 x 40 cm holds 10 L, 80 x 100 cm 503 L.</summary>
    [Theory]
    [InlineData(18, 40)]
    [InlineData(80, 100)]
    public void It_holds_20_to_300_litres(double across, double high) =>
        Assert.Equal(PlanPart.PotHeight, Chicken().In(PlanRequests.Kettle(across, high)).Problem().Part);

    [Fact]
    public void It_goes_into_no_oven()
    {
        Assert.Equal(PlanPart.SimmersInOven, (Chicken() with { SimmersInOven = true }).Problem().Part);
        BatchPlan plan = Chicken().SimmeringFor(10).Starting(PlanRequests.Morning.AddHours(8), NightPlan.OvenHold).Plan();
        Assert.True(plan.HasNotice("kettle-night"));
        Assert.DoesNotContain(plan.Timeline.Steps, step => step.Kind == StepKind.NightHold);
        Assert.Contains(plan.Timeline.Steps, step => step.InNight && step.Kind == StepKind.Check);
    }

    /// <summary>A heater of a crock or kettle is no ring to set another pot on.</summary>
    [Fact]
    public void Its_heater_is_no_hob() =>
        Assert.Equal(PlanPart.HobKind, PlanRequests.For("white-chicken").On(PlanRequests.Hob(HobKind.Jacket, 12)).Problem().Part);

    [Fact]
    public void Mass_and_heat_close() => Assert.Empty(PlanInvariants.Broken(Chicken().Plan()));

    private static PlanRequest Chicken() => PlanRequests.For("white-chicken").In(PlanRequests.Kettle(60, 40)).Making(30);
}
