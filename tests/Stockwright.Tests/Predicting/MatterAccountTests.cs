using CsCheck;
using Stockwright.Planning;
using Stockwright.Predicting;
using Stockwright.Simmering;
using Stockwright.Tests.Planning;
using Xunit;

namespace Stockwright.Tests.Predicting;

/// <summary>Water, fat, protein and ash: what goes in comes out, in every plan (exact, no source needed).</summary>
public sealed class MatterAccountTests
{
    private const double Books = 1e-9;

    [Fact]
    public void The_account_closes_in_every_plan() =>
        PlanGenerator.Requests.Where(request => BatchPlanner.Plan(request).Plan is not null).Sample(
            request => Holds(request.Plan()),
            iter: 300,
            threads: 2,
            print: request => $"{request.Recipe.Id} {request.Goal} {request.SimmerTime} {request.SimmerTemperature}");

    public static TheoryData<string> Recipes => [.. Stockwright.Recipes.StandardRecipes.Book.Recipes.Select(recipe => recipe.Id)];

    [Theory]
    [MemberData(nameof(Recipes))]
    public void It_closes_in_every_recipe(string recipe) => Holds(PlanRequests.For(recipe).Plan());

    /// <summary>Pot and prediction read the same laws; the prediction walks along the drawn course, which is cut into stretches: a hundredth apart at most.</summary>
    [Theory]
    [MemberData(nameof(Recipes))]
    public void Pot_and_prediction_give_one_account(string recipe)
    {
        BatchPlan plan = PlanRequests.For(recipe).Plan();
        BatchPrediction prediction = Predictor.Predict(plan);
        SimmerOutcome run = plan.Workings.Central;
        if (plan.Wetting is null && run.Gave.Sum(gave => gave.Solid.Release.Gelatin(gave.Since)) is var gelatin and > 0.001)
        {
            Assert.Equal(1, prediction.Extraction.Gelatin.Kilograms / gelatin, 0.015);
        }

        double oils = plan.Workings.Fitted.Load.Items.Where(item => item.Charge is null).Sum(item => item.Raw.Fat);
        Assert.Equal(run.FloatingFatKilograms, prediction.Fat.Freed.Kilograms, (0.01 * run.FloatingFatKilograms) + oils + (plan.Wetting is null ? 1e-6 : 0.1));
    }

    private static void Holds(BatchPlan plan)
    {
        List<string> broken = Broken(plan);
        Assert.True(broken.Count == 0, string.Join("; ", broken));
    }

    private static List<string> Broken(BatchPlan plan)
    {
        List<string> broken = [];
        MatterAccount account = MatterAccount.Of(PredictionCase.Of(plan, new PredictionSettings()));
        SimmerOutcome run = plan.Workings.Central;
        (Matter put, Matter taken) = (account.TotalIn, account.TotalOut);
        double all = put.Kilograms;
        void Same(double one, double other, string what)
        {
            if (!(Math.Abs(one - other) <= Books * all))
            {
                broken.Add($"{what}: {one:R} against {other:R}");
            }
        }

        Same(put.Kilograms, taken.Kilograms, "mass");
        Same(put.Water, taken.Water, "water");
        Same(put.Fat, taken.Fat, "fat");
        Same(put.Protein, taken.Protein, "protein");
        Same(put.Ash, taken.Ash, "ash");

        // The pot's own balance, kept by the integrator, is the outside of it.
        Matter free = account.Out.First(row => row.Key is "free-fat").Matter;
        Same(run.LiquidLeftKilograms + run.SpiltKilograms + run.FloatingFatKilograms, account.Liquor.Kilograms + free.Kilograms, "liquor and fat in the pot");
        Same(run.SpentSolidsKilograms, account.Solids.Sum(row => row.Matter.Kilograms), "spent solids");
        foreach (MatterRow row in account.In.Concat(account.Out))
        {
            Matter m = row.Matter;
            double least = new[] { m.Water, m.Protein, m.Fat, m.Ash, m.Other }.Min();
            if (least < -1e-6 * all && row.Key is not "liquor")
            {
                broken.Add($"{row.Key} holds less than nothing of {all} kg: {m}");
            }
        }

        return broken;
    }
}
