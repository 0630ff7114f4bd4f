using Stockwright.Planning;
using Stockwright.Predicting;
using Xunit;

namespace Stockwright.Tests.Predicting;

/// <summary>One draw of the sample: at the middle it is the central prediction, and every uncertain figure pushes the way it must.</summary>
public sealed class SampleModelTests
{
    private static readonly BatchPlan Plan = Pots.Plan("white-beef", 4);

    [Theory]
    [InlineData("white-beef")]
    [InlineData("brown-chicken")]
    [InlineData("fish-fumet")]
    [InlineData("vegetable")]
    public void The_middle_draw_is_the_central_prediction(string recipe)
    {
        BatchPlan plan = Pots.Plan(recipe, 3);
        BatchPrediction central = PredictionMaker.Predict(plan);
        SampleModel.Draw draw = Model(plan).Run(new double[SampleModel.Dimensions]);
        Assert.Equal(plan.Yield.Central.Liters, draw.YieldKilograms / 0.9982, 1e-6);
        Assert.Equal(central.Body.Gelatin.Percent, draw.GelatinPercent, 1e-9);
        Assert.Equal(central.Body.Effective.Percent, draw.EffectivePercent, 1e-9);
        Assert.Equal(central.Composition.Brix, draw.Brix, 1e-9);
        Assert.Equal(central.Fat.CapThickness.Meters, draw.FatCapMetres, 1e-9);
        Assert.Equal(central.Fat.Recovered.Kilograms, draw.FatKilograms, 1e-9);
        Assert.Equal(0, draw.LaterSeconds, 1e-6);
        Assert.Equal(central.Composition.Protein.DecimalFractions, draw.Nutrients.Protein, 1e-9);
        Assert.Equal(central.Composition.Fat.DecimalFractions, draw.Nutrients.Fat, 1e-9);
        Assert.Equal(central.Composition.Sugars.DecimalFractions, draw.Nutrients.Sugars, 1e-9);
        Assert.Equal(central.Composition.Sodium.DecimalFractions, draw.Nutrients.Sodium, 1e-9);
    }

    // The ranges are ours (B.24): sugars and sodium by 0.6 to 1.6, fat beaten in by its own.
    [Fact]
    public void Sugars_sodium_and_fat_left_have_a_range_besides_that_of_the_water()
    {
        // The ends of a range are its 10 and 90 % points, 1.2816 deviations out.
        SampleModel.Nutrients low = At(17, -1.2815515655446).Nutrients;
        SampleModel.Nutrients high = At(17, 1.2815515655446).Nutrients;
        Assert.Equal(1.6 / 0.6, high.Sugars / low.Sugars, 1e-6);
        Assert.Equal(1.6 / 0.6, high.Sodium / low.Sodium, 1e-6);
        Assert.True(high.Fat > 1.1 * low.Fat);
    }

    [Fact]
    public void Nutrients_have_a_range_of_their_own_round_the_prediction()
    {
        NutritionFacts central = PredictionMaker.Predict(Plan).Nutrition.PerHundredMillilitres;
        NutritionBands bands = PredictionSampler.Sample(Plan).PerHundredMillilitres;
        Assert.True(bands.Energy.Low < central.Energy && central.Energy < bands.Energy.High);
        Assert.True(bands.Protein.Low < central.Protein && central.Protein < bands.Protein.High);
        Assert.True(bands.Fat.Low < central.Fat && central.Fat < bands.Fat.High);
        Assert.True(bands.Carbohydrate.Low < central.Carbohydrate && central.Carbohydrate < bands.Carbohydrate.High);
        Assert.True(bands.Sodium.Low < central.Sodium && central.Sodium < bands.Sodium.High);
    }

    /// <summary>Coordinate, and the signs of what it does to yield, gelatin and effective concentration when it goes up (0 where it must not move).</summary>
    [Theory]
    [InlineData(0, -1, 1, 1)] // film
    [InlineData(1, -1, 1, 1)] // lid
    [InlineData(3, -1, 0, 0)] // retained
    [InlineData(4, 1, -1, -1)] // released
    [InlineData(5, -1, 0, 0)] // strain loss
    [InlineData(6, -1, 0, 0)] // defat loss
    [InlineData(7, 0, 1, 1)] // collagen
    [InlineData(8, 0, 1, 1)] // soft rate
    [InlineData(9, 0, 1, 1)] // hard rate
    [InlineData(10, 0, -1, -1)] // activation of the drawing: a simmer below 98 °C is slower
    [InlineData(11, 0, 0, -1)] // breakdown
    [InlineData(12, 0, 0, 1)] // activation of the breakdown: slower below 98 °C
    [InlineData(13, 0, 1, 1)] // kitchen factor
    [InlineData(15, 0, 1, 1)] // simmer temperature
    public void Each_figure_pushes_its_way(int coordinate, int yield, int gelatin, int effective)
    {
        SampleModel.Draw low = At(coordinate, -1);
        SampleModel.Draw high = At(coordinate, 1);
        Assert.Equal(yield, Sign(high.YieldKilograms / low.YieldKilograms));
        Assert.Equal(gelatin, Sign(high.GelatinPercent / low.GelatinPercent));
        Assert.Equal(effective, Sign(high.EffectivePercent / low.EffectivePercent));
    }

    [Fact]
    public void A_better_hob_is_done_sooner_and_more_fat_stands_higher()
    {
        Assert.True(At(2, 1).LaterSeconds < -60);
        Assert.True(At(2, -1).LaterSeconds > 60);
        Assert.True(At(14, 1).FatCapMetres > 1.05 * At(14, -1).FatCapMetres);
        Assert.True(At(16, 1).Brix > At(16, -1).Brix);
    }

    /// <summary>A weaker hob is longer on the way up, and what is drawn on the way counts.</summary>
    [Fact]
    public void A_longer_heat_up_draws_more() => Assert.True(At(2, -1).GelatinPercent > At(2, 1).GelatinPercent);

    private static SampleModel.Draw At(int coordinate, double deviations)
    {
        double[] point = new double[SampleModel.Dimensions];
        point[coordinate] = deviations;
        return Model(Plan).Run(point);
    }

    private static SampleModel Model(BatchPlan plan) => new(PredictionCase.Of(plan, new PredictionSettings()));

    private static int Sign(double ratio) => Math.Abs(ratio - 1) < 1e-6 ? 0 : Math.Sign(ratio - 1);
}
