using BenchmarkDotNet.Attributes;
using Stockwright.Kitchen;
using Stockwright.Larder;
using Stockwright.Planning;
using Stockwright.Predicting;
using Stockwright.Recipes;
using UnitsNet;

namespace Stockwright.Bench;

/// <summary>Wanted: plan with extraction under 15 ms median, band under 400 ms on two cores, "make it set" under 200 ms for 12 cuts.</summary>
public class PredictionBench
{
    private static readonly string[] Cuts =
    [
        "chicken-feet", "chicken-wing", "chicken-back", "chicken-skin", "pork-trotter", "pork-skin",
        "pork-ear", "calf-foot", "beef-foot", "beef-tendon", "veal-knuckle", "beef-knuckle",
    ];

    private PlanRequest request = null!;
    private BatchPlan plan = null!;
    private AvailableCut[] available = null!;

    [Params("white-chicken", "white-beef")]
    public string Recipe { get; set; } = "";

    [GlobalSetup]
    public void Setup()
    {
        StockRecipe recipe = StandardRecipes.Book.Recipes.First(entry => string.Equals(entry.Id, Recipe, StringComparison.Ordinal));
        request = new PlanRequest
        {
            Recipe = recipe,
            Larder = StandardLarder.Table,
            Pot = Pot.Straight("pot-24", "24 L pot", Length.FromCentimeters(32), Length.FromCentimeters(30)),
            Hob = new Hob { Id = "hob", Name = "Induction", Kind = HobKind.Induction, RatedPower = Power.FromKilowatts(3.5) },
            Lid = recipe.Lid,
            Site = new KitchenSite(),
            Goal = new PlanGoal.MakeVolume(Volume.FromLiters(6)),
            Schedule = new PlanSchedule { StartAt = new DateTimeOffset(2026, 1, 10, 7, 0, 0, TimeSpan.Zero) },
        };
        plan = BatchPlanner.Plan(request).Plan!;
        available = [.. Cuts.Select((id, i) => new AvailableCut(id, 2 + (i * 0.7), Mass.FromKilograms(0.1 + (0.05 * i))))];
    }

    [Benchmark]
    public BatchPrediction PlanAndPredict() => Predictor.Predict(BatchPlanner.Plan(request).Plan!);

    [Benchmark]
    public PredictionSample Band512() => PredictionSampler.Sample(plan);

    [Benchmark]
    public SetAdvice MakeItSet12() => MakeItSet.Cheapest(plan, BodyClass.VeryFirm, available, new AvailablePowder(Mass.FromGrams(200), 30));

    [Benchmark]
    public BodyAgainstTime AgainstTime() => WhatIf.AgainstTime(plan);
}
