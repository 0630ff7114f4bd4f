using System.Globalization;
using Stockwright.Evidence;
using Stockwright.Kitchen;
using Stockwright.Planning;
using Stockwright.Predicting;
using Stockwright.Simmering;
using UnitsNet;
using Xunit;

namespace Stockwright.Tests.Planning;

/// <summary>What a plan that was kept is worked on from: the pot as it was settled, and the figures it was planned with.</summary>
public sealed class PlanWorkingsTests
{
    /// <summary>Words and pages beside the plan use these: what a warm setting is called, and stock that is reduced or cooled by itself.</summary>
    private static readonly string[] OfNoPlan = ["slow-warm", "fat-left-on-defatted", "clean-surface"];

    public static TheoryData<string> Requests => [.. Plans.Keys];

    public static TheoryData<string> Figures => [.. SimmerAssumptions.Standard.Figures.Keys.Except(OfNoPlan, StringComparer.Ordinal)];

    private static Dictionary<string, PlanRequest> Plans { get; } = Named();

    [Theory]
    [MemberData(nameof(Requests))]
    public void The_pot_of_a_plan_runs_again_as_it_ran(string name)
    {
        BatchPlan plan = BatchPlanner.Plan(Plans[name]).Plan!;
        SimmerOutcome first = plan.Workings.Central;
        PlanWorkings again = PlanWorkings.Of(plan);
        Assert.NotSame(first, again.Central);
        Assert.Equal(first.SteamKilograms, again.Central.SteamKilograms, 1e-9);
        Assert.Equal(first.LiquidLeftKilograms, again.Central.LiquidLeftKilograms, 1e-9);
        Assert.Equal(first.ToppedUpKilograms, again.Central.ToppedUpKilograms, 1e-9);
        Assert.Equal(first.TotalSeconds, again.Central.TotalSeconds, 1e-6);
        Assert.Equal(first.HeatUpSeconds, again.Central.HeatUpSeconds, 1e-6);
        Assert.Equal(first.Points.Count, again.Central.Points.Count);
        Assert.Equal(first.Checks.Select(check => check.Key), again.Central.Checks.Select(check => check.Key), StringComparer.Ordinal);
        Assert.Equal(plan.Workings.Fitted.Litres, again.Fitted.Litres, 1e-9);
        Assert.Equal(plan.Workings.Fitted.LetDownKilograms, again.Fitted.LetDownKilograms, 1e-9);
        Assert.Equal(plan.Workings.Fitter.YieldKilograms(first), again.Fitter.YieldKilograms(again.Central), 1e-9);
    }

    /// <summary>Another size is another pot, not the one that was run before.</summary>
    [Fact]
    public void A_plan_with_another_size_runs_its_pot_anew()
    {
        BatchPlan plan = BatchPlanner.Plan(PlanRequests.For("white-chicken")).Plan!;
        BatchPlan fuller = plan with { Size = plan.Size with { Water = plan.Size.Water + Mass.FromKilograms(0.5) } };
        Assert.Equal(plan.Workings.Script.StartWaterKilograms + 0.5, fuller.Workings.Script.StartWaterKilograms, 1e-9);
    }

    /// <summary>A figure that some code still takes from the program, and not from the request, would move no plan here.</summary>
    [Theory]
    [MemberData(nameof(Figures))]
    public void Every_figure_is_that_of_the_request(string figure)
    {
        Stated<double> usual = SimmerAssumptions.Standard.Get(figure);
        SimmerAssumptions other = SimmerAssumptions.Standard.With(
            figure, usual with { Value = (usual.Value + usual.High) / 2 * (usual.Value == usual.High ? 2 : 1), Low = (usual.Low + usual.Value) / 2, High = usual.High * 1.2 });
        Assert.Contains(Plans.Values, request => !string.Equals(Told(request), Told(request with { Assumptions = other }), StringComparison.Ordinal));
    }

    private static readonly Dictionary<PlanRequest, string> Known = new(ReferenceEqualityComparer.Instance);

    /// <summary>The numbers of a plan and its prediction, without the list of what it leans on.</summary>
    private static string Told(PlanRequest request)
    {
        if (Known.TryGetValue(request, out string? known))
        {
            return known;
        }

        PlanResult answer = BatchPlanner.Plan(request);
        if (answer.Plan is not { } plan)
        {
            return string.Join(' ', answer.Problems.Select(problem => problem.Code));
        }

        PredictionSettings settings = new() { KitchenFactor = request.Assumptions.KitchenFactor };
        BatchPrediction stock = Predictor.Predict(plan, settings);
        string told = string.Create(
            CultureInfo.InvariantCulture,
            $"{Of(plan.Yield)} {Of(plan.Simmer.Evaporated)} {Of(plan.Simmer.ToppedUp)} {plan.Fit.WaterToLine.Liters:R} {plan.Fit.HeldLine.Meters:R} {Of(plan.SpentSolids)} {plan.Timeline.Ready:O} {plan.HeatUp.Time.Central} {string.Join(' ', plan.Notices.Select(notice => notice.Code))} {stock.GelatinInStock.Grams:R} {stock.Body.Effective.Percent:R} {stock.Fat.Floating.Grams:R}");
        Known[request] = told;
        return told;
    }

    private static string Of<T>(Band<T> band)
        where T : IQuantity => string.Create(CultureInfo.InvariantCulture, $"{(double)band.Low.Value:R} {(double)band.Central.Value:R} {(double)band.High.Value:R}");

    private static Dictionary<string, PlanRequest> Named()
    {
        string[] recipes = ["white-chicken", "brown-chicken", "fish-fumet", "shellfish", "vegetable", "kelp-and-dried-fish", "dried-mushroom-stock", "pork-bone-broth", "glace"];
        Dictionary<string, PlanRequest> plans = recipes.ToDictionary(recipe => recipe, PlanRequests.For, StringComparer.Ordinal);
        PlanRequest beef = PlanRequests.For("white-beef");
        Pot cooker = beef.Pot with { Kind = PotKind.PressureCooker, GaugePressure = Pressure.FromBars(1) };
        plans["beef in the oven overnight"] = beef with { Schedule = beef.Schedule with { StartAt = PlanRequests.Morning.AddHours(9), Night = NightPlan.OvenHold } };
        plans["beef stopped overnight"] = beef with { Schedule = beef.Schedule with { StartAt = PlanRequests.Morning.AddHours(9), Night = NightPlan.StopAndCool } };
        plans["night kept free"] = beef with { Schedule = beef.Schedule with { ReadyBy = PlanRequests.Morning.AddHours(50), StartAt = null, Night = NightPlan.KeepFree } };
        plans["chicken under pressure"] = PlanRequests.For("white-chicken") with { Pot = cooker, Lid = LidPosition.On, Goal = new PlanGoal.FillPot() };
        plans["little under pressure"] = PlanRequests.For("white-chicken").In(PlanRequests.PressureCooker(20, 14)).Making(0.6) with { Lid = LidPosition.On };
        plans["chicken in a slow cooker"] = PlanRequests.For("white-chicken").Making(2) with { Pot = PlanRequests.Straight(24, 16) with { Kind = PotKind.SlowCooker, HeaterPower = Power.FromWatts(250) }, Lid = LidPosition.On, Setting = SlowCookerSetting.Low, SimmerTime = TimeSpan.FromHours(8) };
        plans["several potfuls"] = beef.Making(40);
        plans["let down"] = beef.Making(14) with { Way = SplitWay.LetDown };
        plans["near the boil"] = beef.Uncovered().At(Temperature.FromDegreesCelsius(99.6));
        plans["cool"] = beef.At(Temperature.FromDegreesCelsius(62));
        plans["in large pieces"] = beef with { PieceSize = Length.FromCentimeters(15) };
        return plans;
    }
}
