using Stockwright.Cooking;
using Stockwright.Evidence;
using Stockwright.Kitchen;
using Stockwright.Planning;
using Stockwright.Recipes;
using Stockwright.Simmering;
using Stockwright.Tests.Cooking;
using UnitsNet;
using Xunit;

namespace Stockwright.Tests.Planning;

/// <summary>A slow cooker: its own heater, the lid on to the end, hours to get hot (common practice, no source).</summary>
public sealed class SlowCookerTests
{
    [Fact]
    public void Its_steps_in_order()
    {
        IReadOnlyList<PlanStep> steps = Chicken().Plan().Timeline.Steps;
        StepKind[] order = [.. steps.Select(step => step.Kind).TakeWhile(kind => kind != StepKind.Cool)];
        Assert.Equal([StepKind.Gather, StepKind.Fill, StepKind.HeatUp, StepKind.Simmer, StepKind.Add, StepKind.Skim, StepKind.Stand, StepKind.Strain], order);
        Assert.StartsWith("Lid on, switch on: high", steps.Single(step => step.Kind == StepKind.HeatUp).Title, StringComparison.Ordinal);

        // Once, two minutes before it is switched off.
        PlanStep skim = steps.Single(step => step.Kind == StepKind.Skim);
        Assert.Equal(steps.Single(step => step.Kind == StepKind.Stand).At - TimeSpan.FromMinutes(2), skim.At, TimeSpan.FromSeconds(1));
    }

    [Fact]
    public void Nobody_looks_in_and_nothing_is_topped_up()
    {
        BatchPlan plan = (Chicken() with { TopUp = TopUpRule.KeepToLine }).Plan();
        Assert.Empty(plan.Simmer.Checks);
        Assert.Equal(0, plan.Simmer.ToppedUp.Central.Liters, 1e-9);
        Assert.DoesNotContain(plan.Timeline.Steps, step => step.Kind is StepKind.Check or StepKind.NightHold);
    }

    /// <summary>What would wait for the first skim goes in with the water, and is part of the load under the line.</summary>
    [Fact]
    public void What_waits_for_the_first_skim_goes_in_at_the_start()
    {
        BatchPlan plan = (Chicken() with { Mirepoix = MirepoixTime.Early }).Plan();
        Assert.DoesNotContain(plan.Timeline.Steps, step => step.Title.Contains("onion", StringComparison.Ordinal));
        Assert.Equal(TimeSpan.Zero, plan.Amounts.First(line => string.Equals(line.Line.IngredientId, "onion", StringComparison.Ordinal)).JoinsAt);
    }

    [Fact]
    public void Each_caution_stands_at_its_step()
    {
        IReadOnlyList<PlanStep> steps = Chicken().Plan().Timeline.Steps;
        AssertCaution(steps, StepKind.Fill, "slow-start");
        AssertCaution(steps, StepKind.HeatUp, "slow-cooker");
        AssertCaution(steps, StepKind.HeatUp, "slow-warm-setting");
        AssertCaution(steps, StepKind.Skim, "slow-lid");
        AssertCaution(steps, StepKind.Strain, "hot-crock");
        Assert.DoesNotContain(steps, step => step.Cautions.Any(caution => caution.Code is "unattended"));
    }

    /// <summary>However strong the hob beside it is, the crock takes no heat from it.</summary>
    [Fact]
    public void The_hob_does_not_count()
    {
        BatchPlan weak = Chicken().On(PlanRequests.Hob(HobKind.Gas, 0.5)).Plan();
        BatchPlan strong = Chicken().On(PlanRequests.Hob(HobKind.Induction, 10)).Plan();
        Assert.Equal(weak.HeatUp.Time.Central, strong.HeatUp.Time.Central);
        Assert.True(strong.HasNotice("own-heater"));
        Assert.False(PlanRequests.For("white-chicken").Plan().HasNotice("own-heater"));
    }

    /// <summary>The lid is on from the start, whatever is asked of the heat-up.</summary>
    [Fact]
    public void It_heats_up_with_its_lid_on()
    {
        // Narrow and strong: open, too, it would get there, only later.
        PlanRequest strong = Chicken().In(PlanRequests.SlowCooker(16, 14, 400)).Making(0.5);
        Assert.Equal((strong with { HeatsUpCovered = true }).Plan().HeatUp.Time.Central, strong.Plan().HeatUp.Time.Central);
    }

    /// <summary>At 76 K over a room of 22 °C: 1.2 W/K (0.8 to 1.8) is 91 W (61 to 137).</summary>
    [Fact]
    public void The_plan_says_what_it_leans_on()
    {
        BatchPlan plan = (Chicken() with { Setting = SlowCookerSetting.Low }).Plan();
        Assumption loss = plan.Assumptions.Single(one => one.Key is "slow-loss");
        Assert.Equal(91.2, (double)((Power)loss.Value.Central).Watts, 0.1);
        Assert.Equal(136.8, (double)((Power)loss.Value.High).Watts, 0.1);
        Assert.Equal(75, ((Ratio)plan.Assumptions.Single(one => one.Key is "slow-low").Value.Central).Percent, 1e-9);
        Assert.DoesNotContain(Chicken().Plan().Assumptions, one => one.Key is "slow-low");
        Assert.DoesNotContain(PlanRequests.For("white-chicken").Plan().Assumptions, one => one.Key is "slow-loss");
    }

    /// <summary>Just under the boil on either setting: 100 °C at 1013.25 hPa less 2 K; low only takes longer.</summary>
    [Fact]
    public void Low_and_high_end_at_the_same_temperature()
    {
        BatchPlan high = Chicken().Plan();
        BatchPlan low = (Chicken() with { Setting = SlowCookerSetting.Low }).Plan();
        Assert.Equal(97.97, high.Boiling.Reached.DegreesCelsius, 0.02);
        Assert.Equal(97.97, low.HeatUp.FinalTemperature.DegreesCelsius, 0.02);
        Assert.True(low.HeatUp.Time.Central > high.HeatUp.Time.Central * 1.33, "three quarters of the power takes a third longer, and losses add to that");
    }

    /// <summary>100 W into a full crock of 8 L: below 60 °C for more than four hours. 300 W into 3 L: not.</summary>
    [Fact]
    public void A_slow_way_past_60_degrees_is_told()
    {
        PlanRequest big = (PlanRequests.For("white-chicken") with { Lid = LidPosition.On, Goal = new PlanGoal.FillPot() }).In(PlanRequests.SlowCooker(28, 14, 100)).SimmeringFor(8);
        PlanNotice told = big.Plan().Notices.Single(notice => notice.Code is "slow-warm-up");
        Assert.Equal(NoticeLevel.Warning, told.Level);
        Assert.Equal([60, 5], told.Sizes(FigureKind.Temperature));
        Assert.False(Chicken().Plan().HasNotice("slow-warm-up"));
    }

    [Fact]
    public void Its_lid_is_on_unless_the_cook_says_otherwise()
    {
        PlanRequest open = PlanRequests.For("white-chicken");
        Assert.Equal(LidPosition.On, PlanRequest.UsualLid(PlanRequests.SlowCooker(26, 14), open.Recipe));
        Assert.Equal(open.Recipe.Lid, PlanRequest.UsualLid(PlanRequests.Kettle(60, 40), open.Recipe));
    }

    [Fact]
    public void A_crock_less_than_half_full_is_told()
    {
        Assert.True(Chicken().In(PlanRequests.SlowCooker(26, 18)).Making(1).Plan().HasNotice("slow-half-full"));
        Assert.False(Chicken().Plan().HasNotice("slow-half-full"));
    }

    [Fact]
    public void Bones_are_blanched_in_a_pot_on_the_hob()
    {
        PlanRequest veal = (PlanRequests.For("white-veal") with { Lid = LidPosition.On }).In(PlanRequests.SlowCooker(26, 14)).Making(1.5);
        PlanStep blanch = veal.Plan().Timeline.Steps.Single(step => step.Kind == StepKind.Blanch);
        Assert.Contains("not in the crock", blanch.Detail, StringComparison.Ordinal);
        Assert.True(blanch.Duration < TimeSpan.FromHours(1), "a few litres boil within the hour on 3.5 kW, and take hours on 250 W");
    }

    [Fact]
    public void A_quarter_of_an_hour_is_refused_and_what_works_is_said()
    {
        Problem problem = Chicken().SimmeringFor(0.25).Problem();
        Assert.Equal(PlanPart.SimmerTime, problem.Part);
        Assert.Equal(ProblemCode.SlowTooShort, problem.Code);
        Assert.Equal([Figure.Of(TimeSpan.FromHours(1))], problem.Figures);
    }

    [Theory]
    [InlineData(null)]
    [InlineData(50.0)]
    [InlineData(900.0)]
    public void It_needs_the_power_of_its_heater(double? watts)
    {
        Problem problem = Chicken().In(PlanRequests.SlowCooker(26, 14, watts)).Problem();
        Assert.Equal(PlanPart.PotHeater, problem.Part);
        Assert.Equal([Figure.Of(Power.FromWatts(100)), Figure.Of(Power.FromWatts(400))], problem.Figures);
    }

    [Fact]
    public void What_it_cannot_do_is_said_beside_the_field()
    {
        Assert.Equal(PlanPart.SlowSetting, (Chicken() with { Setting = SlowCookerSetting.Warm }).Problem().Part);
        Assert.Equal(PlanPart.Lid, (Chicken() with { Lid = LidPosition.Off }).Problem().Part);
        Assert.Equal(PlanPart.SimmerTemperature, Chicken().At(Temperature.FromDegreesCelsius(85)).Problem().Part);
        Assert.Equal(PlanPart.SimmersInOven, (Chicken() with { SimmersInOven = true }).Problem().Part);
        Assert.Equal(PlanPart.PotHeater, PlanRequests.For("white-chicken").In(PlanRequests.Straight(28, 30) with { HeaterPower = Power.FromWatts(300) }).Problem().Part);
        Assert.Equal(PlanPart.PotHeight, Chicken().In(PlanRequests.SlowCooker(40, 30)).Problem().Part);
    }

    [Theory]
    [InlineData("kelp-and-dried-fish")]
    [InlineData("glace")]
    [InlineData("pork-bone-broth")]
    public void What_is_drawn_cool_boiled_hard_or_boiled_down_is_made_in_an_open_pot(string recipe) =>
        Assert.Contains(BatchPlanner.Plan((PlanRequests.For(recipe) with { Lid = LidPosition.On }).In(PlanRequests.SlowCooker(26, 14)).Making(1)).Problems, problem => problem.Code == ProblemCode.SlowTakesOneSimmer);

    /// <summary>A stock of one simmer at 80 °C for two hours.</summary>
    [Fact]
    public void What_simmers_well_below_the_boil_is_refused()
    {
        PlanRequest chicken = Chicken();
        SimmerStage cool = chicken.Recipe.Stages[0] with { Target = Temperature.FromDegreesCelsius(80), Least = Temperature.FromDegreesCelsius(78) };
        Problem problem = (chicken with { Recipe = chicken.Recipe with { Stages = [cool] } }).Problem();
        Assert.Equal(PlanPart.Recipe, problem.Part);
        Assert.Equal(ProblemCode.SlowTakesOneSimmer, problem.Code);
    }

    /// <summary>Through the night it runs as by day, and the cook is told that the night's own plan does not count.</summary>
    [Fact]
    public void It_is_not_put_away_for_the_night()
    {
        BatchPlan plan = Chicken().Starting(PlanRequests.Morning.AddHours(12), NightPlan.StopAndCool).Plan();
        Assert.True(plan.HasNotice("slow-night"));

        // On from eight in the evening, four hours at the simmer are over before three, whatever is asked of the night.
        PlanRequest evening = Chicken().SimmeringFor(4);
        BatchPlan asked = evening.Starting(PlanRequests.Morning.AddHours(12), NightPlan.OvenHold).Plan();
        Assert.Equal(evening.Starting(PlanRequests.Morning.AddHours(12)).Plan().Timeline.HeatOff, asked.Timeline.HeatOff, TimeSpan.FromSeconds(1));
        Assert.DoesNotContain(plan.Timeline.Steps, step => step.Kind == StepKind.NightHold);
    }

    [Fact]
    public void Mass_and_heat_close()
    {
        BatchPlan plan = Chicken().Plan();
        Assert.Empty(PlanInvariants.Broken(plan));
    }

    /// <summary>A batch under way: no check is ever asked for.</summary>
    [Fact]
    public void A_batch_under_way_asks_for_no_check()
    {
        BatchPlan plan = Chicken().Plan();
        BatchCourse course = Batches.Of(plan, "nz-template").Writing().Done(0, "heatup-1").Now(300);
        Assert.DoesNotContain(course.Expected.Timeline.Steps, step => step.Kind == StepKind.Check);
        Assert.Equal(plan.HeatUp.Time.Central.TotalMinutes, course.Expected.HeatUp.Time.Central.TotalMinutes, 1);
    }

    /// <summary>Two litres in a 7 L crock on 250 W, eight hours.</summary>
    private static PlanRequest Chicken() => (PlanRequests.For("white-chicken") with { Lid = LidPosition.On }).In(PlanRequests.SlowCooker(26, 14)).Making(2).SimmeringFor(8);

    private static void AssertCaution(IReadOnlyList<PlanStep> steps, StepKind kind, string code) =>
        Assert.Contains(steps.Single(step => step.Kind == kind).Cautions, caution => string.Equals(caution.Code, code, StringComparison.Ordinal));
}
