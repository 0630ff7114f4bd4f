using BenchmarkDotNet.Attributes;
using Stockwright.Larder;
using Stockwright.Planning;
using Stockwright.Predicting;
using UnitsNet;

namespace Stockwright.Bench;

/// <summary>
/// What the stock will be like. Limits: a plan with its prediction 15 ms median, 512 draws 400 ms on two cores,
/// the cheapest of twelve cuts 200 ms.
/// </summary>
[MemoryDiagnoser]
[MedianColumn]
public class PredictionBenchmarks
{
    private static readonly string[] TwelveCuts =
    [
        "chicken-feet", "chicken-wing", "chicken-back", "chicken-neck", "chicken-carcass", "veal-knuckle", "beef-knuckle", "calf-foot", "pig-trotter", "pork-skin", "beef-shank", "beef-neck",
    ];

    private BatchPlan plan = null!;
    private AvailableCut[] cuts = [];

    [GlobalSetup]
    public void SetUp()
    {
        plan = BatchPlanner.Plan(BenchRequests.FillPot).Plan ?? throw new InvalidOperationException("The planner refused a request that used to work.");

        // Names first, then whatever else of the larder gives gelatin, so that there are twelve whatever it holds today.
        string[] giving = [.. BenchRequests.FillPot.Larder.Ingredients
            .Where(ingredient => StandardCuts.Table.ClassOf(ingredient) is { } cut && cut.Collagen.Value > Ratio.Zero)
            .OrderByDescending(ingredient => TwelveCuts.Contains(ingredient.Id, StringComparer.Ordinal))
            .Select(ingredient => ingredient.Id)
            .Take(TwelveCuts.Length)];
        cuts = [.. giving.Select((id, index) => new AvailableCut(id, 2 + (0.7 * index), Mass.FromKilograms(0.3 + (0.1 * index))))];
        if (cuts.Length < TwelveCuts.Length)
        {
            throw new InvalidOperationException("The larder holds fewer than twelve cuts that give gelatin.");
        }
    }

    [Benchmark]
    public BatchPrediction PlanAndPrediction() =>
        Predictor.Predict(BatchPlanner.Plan(BenchRequests.FillPot).Plan ?? throw new InvalidOperationException("The planner refused a request that used to work."));

    [Benchmark]
    public PredictionSample FiveHundredAndTwelveDraws() => PredictionSampler.Sample(plan);

    [Benchmark]
    public SetAdvice CheapestOfTwelveCuts() => MakeItSet.Cheapest(plan, BodyClass.VeryFirm, cuts, new AvailablePowder(Mass.FromGrams(225), 40, Mass.FromGrams(100)));
}
