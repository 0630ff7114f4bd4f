using Stockwright.Evidence;
using Stockwright.Kitchen;
using Stockwright.Planning;
using UnitsNet;
using Xunit;

namespace Stockwright.Tests.Planning;

/// <summary>The pressure of a cooker decides how hot it gets.</summary>
public sealed class GaugePressureTests
{
    /// <summary>
    /// Steam tables (IAPWS R7-97): water boils at 111.35 °C under 1.50 bar and 112.38 under 1.55; at 120.21 under 2.00 bar and 121.76 under 2.10.
    /// The sea's 1.01325 bar with 0.5 bar over it is 1.51325: 111.62 °C, straight between. With 1 bar 2.01325: 120.42. With 15 psi 2.04746: 120.95.
    /// </summary>
    [Theory]
    [InlineData(0.5, 111.62)]
    [InlineData(1.0, 120.42)]
    [InlineData(1.0342, 120.95)]
    public void How_hot_a_cooker_gets(double bar, double celsius)
    {
        BatchPlan plan = Chicken(Pressure.FromBars(bar)).Plan();
        Assert.Equal(celsius, plan.Boiling.Reached.DegreesCelsius, 0.03);
        Assert.Equal(celsius, plan.Boiling.Hottest.DegreesCelsius, 0.03);
    }

    [Fact]
    public void Unless_it_is_given_it_is_one_bar() =>
        Assert.Equal(120.42, Chicken(null).Plan().Boiling.Reached.DegreesCelsius, 0.03);

    [Fact]
    public void The_hold_names_the_pressure_in_both_measures()
    {
        PlanStep hold = Chicken(Pressure.FromBars(0.7)).Plan().Timeline.Steps.Single(step => step.Kind == StepKind.HoldPressure);
        Assert.Contains("0.7 bar (10.2 psi)", hold.Detail.Replace('\u00A0', ' '), StringComparison.Ordinal);
    }

    /// <summary>What every maker's instructions say (common practice, no source), each at its step.</summary>
    [Fact]
    public void The_script_of_a_locked_pot_says_what_guards_the_hands()
    {
        IReadOnlyList<PlanStep> steps = Chicken(null).Plan().Timeline.Steps;
        PlanStep Step(StepKind kind) => steps.Single(step => step.Kind == kind);
        string Said(StepKind kind) => Step(kind).Detail + " " + string.Join(' ', Step(kind).Cautions.Select(caution => caution.Text));
        Assert.Contains("Valve and vent clear, gasket clean", Said(StepKind.Lock), StringComparison.Ordinal);
        Assert.Contains("two thirds for most, half for what foams or swells", Said(StepKind.Lock), StringComparison.Ordinal);
        Assert.Contains("less liquid than the maker asks", Said(StepKind.Lock), StringComparison.Ordinal);
        Assert.Contains("until the air is out", Said(StepKind.Pressurize), StringComparison.Ordinal);
        Assert.Contains("Never force the lid", Said(StepKind.HoldPressure), StringComparison.Ordinal);
        Assert.Contains("do not vent it", Said(StepKind.Release), StringComparison.Ordinal);
        Assert.Contains("Only when the pressure indicator is down", Said(StepKind.Open), StringComparison.Ordinal);
        Assert.Contains("away from you", Said(StepKind.Open), StringComparison.Ordinal);
        Assert.All(steps.SelectMany(step => step.Cautions), caution => Assert.NotEmpty(caution.Source));
    }

    [Theory]
    [InlineData(0.4)]
    [InlineData(1.2)]
    public void Outside_half_a_bar_to_15_psi_nothing_is_planned(double bar)
    {
        Problem problem = Chicken(Pressure.FromBars(bar)).Problem();
        Assert.Equal(PlanPart.PotGauge, problem.Part);
        Assert.Equal([Figure.Gauge(Pressure.FromBars(0.5)), Figure.Gauge(Pressure.FromPoundsForcePerSquareInch(15))], problem.Figures);
    }

    [Fact]
    public void No_other_vessel_holds_a_pressure()
    {
        Pressure bar = Pressure.FromBars(1);
        Problem kettle = PlanRequests.For("white-chicken").In(PlanRequests.Kettle(40, 40) with { GaugePressure = bar }).Problem();
        Assert.Equal(PlanPart.PotGauge, kettle.Part);
        Assert.Equal(ProblemCode.KettleHoldsNoPressure, kettle.Code);
        Assert.Equal(PlanPart.PotGauge, PlanRequests.For("white-chicken").In(PlanRequests.Straight(28, 30) with { GaugePressure = bar }).Problem().Part);
    }

    /// <summary>With its lid off a cooker is an open pot, whatever pressure it could hold: 4 h at 93 °C, checks and all.</summary>
    [Fact]
    public void With_the_lid_off_it_cooks_as_an_open_pot()
    {
        BatchPlan plan = (Chicken(Pressure.FromBars(0.5)) with { Lid = LidPosition.Off, SimmerTime = null }).Plan();
        Assert.Equal(93, plan.Boiling.Reached.DegreesCelsius, 1e-6);
        Assert.NotEmpty(plan.Simmer.Checks);
        Assert.DoesNotContain(plan.Timeline.Steps, step => step.Kind == StepKind.Lock);
    }

    /// <summary>
    /// A mushroom stock of 1.7 L of water leaves about 1.4 L after four hours at the leak of 0.05 kg/h; a valve of 0.15 kg/h takes 0.1 kg an hour
    /// more, which leaves 1.0. After eight hours it is 1.2 and 0.4, less than the half litre that has to be left.
    /// </summary>
    [Fact]
    public void Little_liquid_locked_for_long_is_told()
    {
        PlanRequest little = (PlanRequests.For("mushroom") with { Lid = LidPosition.On }).In(PlanRequests.PressureCooker(20, 14)).Making(0.8);
        BatchPlan shortly = little.SimmeringFor(4).Plan();
        Assert.False(shortly.HasNotice("sealed-nears-dry"));
        BatchPlan plan = little.SimmeringFor(8).Plan();
        Assert.True(plan.HasNotice("sealed-nears-dry"));
        Assert.False(plan.HasNotice("runs-dry"));
    }

    /// <summary>Three days at 0.05 kg/h take 3.6 L, more than is in it.</summary>
    [Fact]
    public void What_would_run_dry_behind_the_lid_is_refused()
    {
        PlanRequest little = (PlanRequests.For("mushroom") with { Lid = LidPosition.On }).In(PlanRequests.PressureCooker(20, 14)).Making(0.8);
        Problem problem = little.SimmeringFor(72).Problem();
        Assert.Equal(PlanPart.SimmerTime, problem.Part);
        Assert.Equal(ProblemCode.LockedRunsDry, problem.Code);
    }

    private static PlanRequest Chicken(Pressure? gauge) =>
        (PlanRequests.For("white-chicken") with { Lid = LidPosition.On }).In(PlanRequests.PressureCooker(26, 20) with { GaugePressure = gauge }).Making(2).SimmeringFor(1.5);
}
