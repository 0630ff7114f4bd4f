using Stockwright.Evidence;
using Stockwright.Numerics;
using Stockwright.Planning;
using Stockwright.Predicting;
using UnitsNet;
using Xunit;

namespace Stockwright.Tests.Predicting;

/// <summary>Spreads, draws and the bands of a plan.</summary>
public sealed class SamplingTests
{
    /// <summary>A stated range is the 10 and 90 % points; inverting it is exact.</summary>
    [Fact]
    public void Ends_of_a_range_are_its_ten_and_ninety_per_cent_points()
    {
        Spread factor = Spread.ByFactor(0.08, 0.16, 0.32);
        Assert.Equal(0.08, factor.At(-NormalQuantile.Ninety), 1e-12);
        Assert.Equal(0.16, factor.At(0), 1e-12);
        Assert.Equal(0.32, factor.At(NormalQuantile.Ninety), 1e-12);
        Spread difference = Spread.ByDifference(-0.03, 0.04, 0.12);
        Assert.Equal(-0.03, difference.At(-NormalQuantile.Ninety), 1e-12);
        Assert.Equal(0.12, difference.At(NormalQuantile.Ninety), 1e-12);
        Assert.Equal(factor.At(2.5), factor.At(9), 1e-12);
    }

    /// <summary>A linear model of normal figures has a normal answer: variance the sum of the squares, 10 and 90 % points 1.2816 
    /// deviations out. The ends may be off by two standard errors of a quantile of as many free draws, sqrt(0.09/n)/0.1755 of a deviation.</summary>
    [Theory]
    [InlineData(512, 1)]
    [InlineData(512, 2)]
    [InlineData(512, 99)]
    [InlineData(4096, 1)]
    [InlineData(4096, 2)]
    public void A_linear_model_gets_its_analytic_band(int count, int seed)
    {
        double[] weights = [1, -0.5, 2, 0.3, 1.5, -1, 0.7, 0.2];
        Spread[] spreads = [.. weights.Select((_, i) => Spread.ByDifference(5 - (0.1 * (i + 1) * NormalQuantile.Ninety), 5, 5 + (0.1 * (i + 1) * NormalQuantile.Ninety)))];
        double[] draws = SampleBands.Run(count, weights.Length, (ulong)seed, point => weights.Select((weight, i) => weight * spreads[i].At(point[i])).Sum());
        double mean = 5 * weights.Sum();
        double deviation = Math.Sqrt(weights.Select((weight, i) => weight * weight * 0.01 * (i + 1) * (i + 1)).Sum());
        Assert.Equal(mean, draws.Average(), 0.02 * deviation);
        double variance = draws.Sum(draw => (draw - mean) * (draw - mean)) / draws.Length;
        Assert.InRange(variance / (deviation * deviation), 0.96, 1.04);
        double ends = 2 * Math.Sqrt(0.09 / count) / 0.1755 * deviation;
        Band<double> band = SampleBands.Band(draws, static value => value);
        Assert.Equal(mean - (NormalQuantile.Ninety * deviation), band.Low, ends);
        Assert.Equal(mean, band.Central, ends);
        Assert.Equal(mean + (NormalQuantile.Ninety * deviation), band.High, ends);
    }

    [Fact]
    public void One_thread_or_many_the_answer_is_the_same()
    {
        BatchPlan plan = Pots.Plan("white-chicken", 4);
        PredictionSample one = PredictionSampler.Sample(plan, new PredictionSettings(), 512, 3, threads: 1);
        PredictionSample many = PredictionSampler.Sample(plan, new PredictionSettings(), 512, 3, threads: 4);
        Assert.Equivalent(one, many, strict: true);
        Assert.NotEqual(one.Yield, PredictionSampler.Sample(plan, seed: 4).Yield);
    }

    /// <summary>Two seeds agree as far as 512 draws can: ends within 6 % of each other.</summary>
    [Fact]
    public void The_seed_hardly_matters()
    {
        BatchPlan plan = Pots.Plan("white-beef", 5);
        PredictionSample one = PredictionSampler.Sample(plan, seed: 1);
        PredictionSample other = PredictionSampler.Sample(plan, seed: 2);
        Assert.Equal(1, one.Gelatin.Low / other.Gelatin.Low, 0.06);
        Assert.Equal(1, one.Gelatin.Central / other.Gelatin.Central, 0.06);
        Assert.Equal(1, one.Gelatin.High / other.Gelatin.High, 0.06);
        Assert.Equal(1, one.Yield.High / other.Yield.High, 0.03);
    }

    /// <summary>The band of the plan's yield, made by moving one figure at a time, and that of the sample are two ways to the same spread; a quarter of its width.</summary>
    [Theory]
    [InlineData("white-chicken")]
    [InlineData("brown-veal")]
    [InlineData("vegetable")]
    public void The_yield_agrees_with_the_plans_own_band(string recipe)
    {
        BatchPlan plan = Pots.Plan(recipe, 5);
        PredictionSample sample = PredictionSampler.Sample(plan);
        double width = plan.Yield.High.Liters - plan.Yield.Low.Liters;
        Assert.Equal(plan.Yield.Low.Liters, sample.Yield.Low.Liters, 0.25 * width);
        Assert.Equal(plan.Yield.Central.Liters, sample.Yield.Central.Liters, 0.25 * width);
        Assert.Equal(plan.Yield.High.Liters, sample.Yield.High.Liters, 0.25 * width);
    }

    [Theory]
    [InlineData("white-chicken")]
    [InlineData("white-veal")]
    [InlineData("fish-fumet")]
    public void The_central_prediction_lies_in_the_band(string recipe)
    {
        BatchPlan plan = Pots.Plan(recipe, 3);
        BatchPrediction central = Predictor.Predict(plan);
        PredictionSample sample = PredictionSampler.Sample(plan);
        Assert.InRange(central.Body.Gelatin.Percent, sample.Gelatin.Low.Percent, sample.Gelatin.High.Percent);
        Assert.InRange(central.Body.Effective.Percent, sample.Effective.Low.Percent, sample.Effective.High.Percent);
        Assert.InRange(central.Composition.Brix, sample.Brix.Low, sample.Brix.High);
        Assert.InRange(central.Fat.CapThickness.Millimeters, sample.FatCap.Low.Millimeters, sample.FatCap.High.Millimeters);
        Assert.InRange(plan.Timeline.Ready, sample.Ready.Low, sample.Ready.High);
        Assert.Equal(1, sample.Body.Sum(chance => chance.Chance.DecimalFractions), 1e-9);
        Assert.True(sample.Body.Single(chance => chance.Class == central.Body.Class).Chance.Percent > 20);

        // One batch lies within 35 % of the next (estimate); ten to ninety must be no narrower than half that and no wider than twice.
        double half = (sample.Gelatin.High.Percent - sample.Gelatin.Low.Percent) / 2 / sample.Gelatin.Central.Percent;
        Assert.InRange(half, 0.175, 0.7);
    }

    [Fact]
    public void A_measured_kitchen_is_surer()
    {
        BatchPlan plan = Pots.Plan("white-chicken", 4);
        Band<Ratio> unsure = PredictionSampler.Sample(plan).Gelatin;
        Band<Ratio> sure = PredictionSampler.Sample(plan, new PredictionSettings
        {
            KitchenFactor = new Stated<double>(0.85, 0.8, 0.9, Provenance.CookStated, "measured here"),
        }).Gelatin;
        Assert.True((sure.High - sure.Low) < 0.95 * (unsure.High - unsure.Low));
    }

    [Theory]
    [InlineData(499)]
    [InlineData(20_001)]
    public void Too_few_or_too_many_draws_are_refused(int draws) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => PredictionSampler.Sample(Pots.Plan("vegetable", 3), draws: draws));
}
