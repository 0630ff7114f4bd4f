using CsCheck;
using Stockwright.Cooking;
using Stockwright.Kitchen;
using Stockwright.Planning;
using Stockwright.Recipes;
using Stockwright.Tests.Cooking;
using UnitsNet;
using Xunit;

namespace Stockwright.Tests.Planning;

/// <summary>
/// A locked lid: nobody skims, checks, tops up or adds until it is open again (common practice, and in every maker's instructions;
/// no source).
/// </summary>
public sealed class PressurePlanTests
{
    private static readonly StepKind[] Order = [StepKind.HeatUp, StepKind.Lock, StepKind.Pressurize, StepKind.HoldPressure, StepKind.Release, StepKind.Open, StepKind.Stand, StepKind.Strain];

    private static readonly Gen<PlanRequest> Requests =
        Gen.Select(PlanGenerator.Requests, Gen.Double[14, 45], Gen.Double[10, 40], Gen.Bool).Select((request, across, high, asked) => request with
        {
            Pot = PlanRequests.PressureCooker(across, high),
            Lid = LidPosition.On,
            SimmerTemperature = asked ? request.SimmerTemperature : null,
        });

    [Fact]
    public void Nothing_is_done_to_the_pot_between_lock_and_opening()
    {
        int seen = 0;
        Requests.Sample(
            request =>
            {
                if (BatchPlanner.Plan(request).Plan is { Request.IsUnderPressure: true } plan)
                {
                    Interlocked.Increment(ref seen);
                    Assert.Empty(Broken(plan.ForOnePot().Timeline.Steps));
                    Assert.Empty(plan.Simmer.Checks);
                    Assert.Empty(PlanInvariants.Broken(plan));
                }
            },
            seed: "0N0XIzNsQ0O2",
            iter: 120,
            threads: 1);
        Assert.InRange(seen, 30, 120);
    }

    /// <summary>White chicken: onion, carrot and celery after the first skim, as this cook has it, herbs an hour before the end.</summary>
    [Theory]
    [InlineData(0, 120.4)]
    [InlineData(1800, 117.2)]
    public void White_chicken_in_a_pressure_cooker(double metres, double celsius)
    {
        BatchPlan plan = (Chicken() with { Mirepoix = MirepoixTime.Early }).AtAltitude(metres).SimmeringFor(1.5).Plan();
        Assert.Empty(Broken(plan.Timeline.Steps));

        // Steam tables (IAPWS): one bar over 1013.25 and over 816 hPa boils at 120.4 and 117.2 °C.
        Assert.Equal(celsius, plan.Boiling.Reached.DegreesCelsius, 0.2);
        Assert.False(plan.Boiling.IsOutOfReach);
        Assert.False(plan.HasNotice("simmer-out-of-reach"));

        IReadOnlyList<PlanStep> steps = plan.Timeline.Steps;
        PlanStep locked = steps.Single(step => step.Kind == StepKind.Lock);
        PlanStep open = steps.Single(step => step.Kind == StepKind.Open);
        PlanStep hold = steps.Single(step => step.Kind == StepKind.HoldPressure);
        Assert.Equal(TimeSpan.FromHours(1.5), hold.Duration);
        Assert.Equal(2, steps.Count(step => step.Kind == StepKind.Skim && step.At < locked.At));
        PlanStep early = Assert.Single(steps, step => step.Kind == StepKind.Add && step.At < locked.At);
        Assert.Contains("onion", early.Title, StringComparison.Ordinal);
        PlanStep late = Assert.Single(steps, step => step.Kind == StepKind.Add && step.At > open.At);
        Assert.Contains("thyme", late.Title, StringComparison.Ordinal);

        // The herbs' own hour in the open pot is part of the time to straining.
        TimeSpan own = plan.Request.Recipe.Lines.Where(line => line.Joins == JoinMoment.BeforeEnd).Max(line => line.BeforeEnd ?? TimeSpan.FromHours(1));
        Assert.True(steps.Single(step => step.Kind == StepKind.Stand).At - late.At >= own - TimeSpan.FromSeconds(1));
    }

    /// <summary>As the recipe has it the vegetables wait with the herbs for the open pot.</summary>
    [Fact]
    public void Vegetables_of_the_last_hour_go_in_after_opening()
    {
        IReadOnlyList<PlanStep> steps = Chicken().SimmeringFor(1.5).Plan().Timeline.Steps;
        PlanStep added = Assert.Single(steps, step => step.Kind == StepKind.Add);
        Assert.Contains("onion", added.Title, StringComparison.Ordinal);
        Assert.Contains("thyme", added.Title, StringComparison.Ordinal);
        Assert.True(added.At >= steps.Single(step => step.Kind == StepKind.Open).End);
    }

    /// <summary>Nothing goes in late: after opening it stands and is strained, with no second simmer.</summary>
    [Fact]
    public void A_mushroom_stock_has_nothing_to_add_after_opening()
    {
        PlanRequest request = PlanRequests.For("mushroom") with { Lid = LidPosition.On };
        IReadOnlyList<PlanStep> steps = request.In(PlanRequests.PressureCooker(26, 20)).Making(2).Plan().Timeline.Steps;
        Assert.Empty(Broken(steps));
        PlanStep open = steps.Single(step => step.Kind == StepKind.Open);
        Assert.Equal(open.End, steps.Single(step => step.Kind == StepKind.Stand).At, TimeSpan.FromSeconds(1));
        Assert.Equal("Let it stand", steps.Single(step => step.Kind == StepKind.Stand).Title);
    }

    /// <summary>A recipe that lives below the boil is not locked in: it is made with the lid off the lock, with its own steps.</summary>
    [Fact]
    public void Kelp_is_drawn_in_the_open_pot() =>
        Assert.DoesNotContain((PlanRequests.For("kelp-and-dried-fish") with { Lid = LidPosition.On }).In(PlanRequests.PressureCooker(26, 20)).Making(2).Plan().Timeline.Steps, step => step.Kind == StepKind.Lock);

    /// <summary>15 psi cookers are sold as reaching 121 °C (250 °F); what this one reaches by the steam table is 120.4.</summary>
    [Fact]
    public void What_is_sold_as_121_is_within_reach_and_95_is_not_under_a_locked_lid()
    {
        Assert.False(Chicken().At(Temperature.FromDegreesCelsius(121)).Plan().HasNotice("simmer-out-of-reach"));
        Assert.True(Chicken().At(Temperature.FromDegreesCelsius(124)).Plan().HasNotice("simmer-out-of-reach"));
        Problem problem = Chicken().At(Temperature.FromDegreesCelsius(95)).Problem();
        Assert.Equal(PlanPart.SimmerTemperature, problem.Part);
        Assert.Equal(120.4, problem.Figures[1].Value, 0.1);
    }

    /// <summary>A running batch: whatever is late, nothing between lock and opening is ever to be done.</summary>
    [Theory]
    [InlineData(0)]
    [InlineData(40)]
    [InlineData(90)]
    [InlineData(200)]
    public void A_batch_under_way_asks_for_nothing_behind_the_lid(int minutesLate)
    {
        BatchPlan plan = Chicken().SimmeringFor(1.5).Plan();
        Batch batch = Batches.Of(plan, "nz-template");
        PlanStep hold = plan.Timeline.Steps.Single(step => step.Kind == StepKind.HoldPressure);
        BatchCourse course = batch.Writing().Done(0, "heatup-1").Now((hold.At - plan.Timeline.HeatOn).TotalMinutes + minutesLate);
        Assert.Empty(Broken(course.Expected.Timeline.Steps));
        PlanStep locked = course.Expected.Timeline.Steps.Single(step => step.Kind == StepKind.Lock);
        Assert.DoesNotContain(course.Steps, step =>
            step.Step.Kind is StepKind.Skim or StepKind.Add && step.Step.At <= locked.At && step.Standing is not (StepStanding.Done or StepStanding.Missed));
    }

    private static PlanRequest Chicken() => (PlanRequests.For("white-chicken") with { Lid = LidPosition.On }).In(PlanRequests.PressureCooker(26, 20)).Making(3);

    private static List<string> Broken(IReadOnlyList<PlanStep> steps)
    {
        List<string> broken = [];
        if (steps.Count(step => step.Kind == StepKind.Lock) != 1 || steps.Count(step => step.Kind == StepKind.Open) != 1)
        {
            return ["not locked and opened once"];
        }

        DateTimeOffset locked = steps.Single(step => step.Kind == StepKind.Lock).At;
        PlanStep open = steps.Single(step => step.Kind == StepKind.Open);
        broken.AddRange(steps
            .Where(step => step.At >= locked && step.At < open.End && step.Kind is not (StepKind.Lock or StepKind.Pressurize or StepKind.HoldPressure or StepKind.Release or StepKind.Open))
            .Where(step => step.At > locked)
            .Select(step => $"{step.Title} behind the lid"));
        StepKind[] order = [.. steps.Where(step => Order.Contains(step.Kind)).OrderBy(step => step.At).ThenBy(step => step.Kind).Select(step => step.Kind)];
        if (!order.SequenceEqual(Order))
        {
            broken.Add($"order {string.Join(", ", order)}");
        }

        broken.AddRange(steps.Where(step => step.Kind is StepKind.Check or StepKind.NightHold).Select(step => step.Title));
        broken.AddRange(steps.Where(step => step.Kind == StepKind.Skim && step.At >= locked).Select(step => step.Title));
        return broken;
    }
}
