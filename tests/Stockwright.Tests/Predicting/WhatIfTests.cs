using Stockwright.Planning;
using Stockwright.Predicting;
using UnitsNet;
using Xunit;

namespace Stockwright.Tests.Predicting;

/// <summary>Body against time, temperature and cuts.</summary>
public sealed class WhatIfTests
{
    [Theory]
    [InlineData("white-chicken")]
    [InlineData("white-beef")]
    [InlineData("brown-veal")]
    public void Time_ends_in_small_return(string recipe)
    {
        BodyAgainstTime body = WhatIf.AgainstTime(Pots.Plan(recipe, 4));
        Assert.Equal(22, body.Points.Count);
        Assert.Equal(TimeSpan.FromHours(3), body.Points[0].Simmer);
        Assert.Equal(TimeSpan.FromHours(24), body.Points[^1].Simmer);
        for (int i = 1; i < body.Points.Count; i++)
        {
            Assert.True(body.Points[i].Gelatin >= body.Points[i - 1].Gelatin);
            Assert.True(body.Points[i].Intactness < body.Points[i - 1].Intactness);
            double gain = body.Points[i].Effective / body.Points[i - 1].Effective;
            Assert.Equal(body.Points[i - 1].Simmer < body.SmallReturn, gain >= 1.03);
        }

        Assert.NotNull(body.SmallReturn);
        Assert.True(body.Strongest >= body.SmallReturn);
    }

    /// <summary>The school's hours: chicken 3 to 4, beef 8 to 10, veal 6 to 8 (US study cards). Small return comes later for beef than for chicken, and inside a day.</summary>
    [Fact]
    public void Beef_pays_longer_than_chicken()
    {
        TimeSpan chicken = WhatIf.AgainstTime(Pots.Plan("white-chicken", 4)).SmallReturn!.Value;
        TimeSpan beef = WhatIf.AgainstTime(Pots.Plan("white-beef", 4)).SmallReturn!.Value;
        Assert.True(chicken < beef);
        Assert.InRange(chicken.TotalHours, 3, 12);
        Assert.InRange(beef.TotalHours, 6, 20);
    }

    /// <summary>The curve goes through the plan's own prediction.</summary>
    [Fact]
    public void The_curve_passes_through_the_plan()
    {
        BatchPlan plan = Pots.Plan("white-beef", 4, request => request with { SimmerTime = TimeSpan.FromHours(8) });
        BatchPrediction prediction = Predictor.Predict(plan);
        TimePoint point = WhatIf.AgainstTime(plan).Points.Single(entry => entry.Simmer == TimeSpan.FromHours(8));
        Assert.Equal(prediction.Body.Effective.Percent, point.Effective.Percent, 0.005 * point.Effective.Percent);
        TemperatureEffect same = WhatIf.AgainstTemperature(plan).MinBy(effect => Math.Abs(effect.Simmer.DegreesCelsius - plan.HeatUp.FinalTemperature.DegreesCelsius))!;
        double ratio = same.Effective / prediction.Body.Effective;
        double kelvins = same.Simmer.DegreesCelsius - plan.HeatUp.FinalTemperature.DegreesCelsius;
        Assert.InRange(ratio, 0.9 + (0.05 * Math.Min(0, kelvins)), 1.1 + (0.1 * Math.Max(0, kelvins)));
    }

    /// <summary>Common practice, no source (fumet is done in 45 minutes): after three quarters of an hour fish gains under 6 % in another quarter.</summary>
    [Fact]
    public void Fumet_is_flat_after_three_quarters_of_an_hour()
    {
        BodyAgainstTime body = WhatIf.AgainstTime(Pots.Plan("fish-fumet", 3, request => request with { SimmerTemperature = Temperature.FromDegreesCelsius(97) }));
        Assert.Equal(TimeSpan.FromMinutes(15), body.Step);
        TimePoint at = body.Points.Single(point => point.Simmer == TimeSpan.FromMinutes(45));
        TimePoint later = body.Points.Single(point => point.Simmer == TimeSpan.FromMinutes(60));
        Assert.InRange(later.Effective / at.Effective, 1, 1.06);
    }

    /// <summary>B.5: at 88 °C instead of 96 °C eight hours of beef give little more than half the gelatin (17 and 31 %).</summary>
    [Fact]
    public void Temperature_is_the_largest_lever()
    {
        BatchPlan plan = Pots.Plan("white-beef", 4, request => request with { SimmerTime = TimeSpan.FromHours(8), SimmerTemperature = Temperature.FromDegreesCelsius(96) });
        IReadOnlyList<TemperatureEffect> effects = WhatIf.AgainstTemperature(plan);
        Ratio Gelatin(double celsius) => effects.Single(effect => Math.Abs(effect.Simmer.DegreesCelsius - celsius) < 0.01).Gelatin;
        Assert.Equal(17.2 / 30.7, Gelatin(88) / Gelatin(96), 0.03);
        Assert.Equal(100, effects[^1].Simmer.DegreesCelsius, 0.2);
        Assert.All(effects.Zip(effects.Skip(1)), pair => Assert.True(pair.Second.Gelatin > pair.First.Gelatin));
    }

    [Fact]
    public void Feet_for_backs_make_it_firmer()
    {
        BatchPlan plan = Pots.Plan("white-chicken", 4);
        string back = plan.Amounts.First(line => line.Ingredient.Id.StartsWith("chicken-", StringComparison.Ordinal)).Ingredient.Id;
        BodyPrediction now = Predictor.Predict(plan).Body;
        BodyPrediction none = WhatIf.WithCuts(plan, []);
        BodyPrediction swapped = WhatIf.WithCuts(plan, [new CutChange(back, Mass.FromKilograms(-0.5)), new CutChange("chicken-feet", Mass.FromKilograms(0.5))]);
        Assert.Equal(now.Effective.Percent, none.Effective.Percent, 1e-9);
        Assert.True(swapped.Effective > now.Effective);
        Assert.Throws<ArgumentException>(() => WhatIf.WithCuts(plan, [new CutChange(back, Mass.FromKilograms(-500))]));
        Assert.Throws<KeyNotFoundException>(() => WhatIf.WithCuts(plan, [new CutChange("unicorn", Mass.FromKilograms(1))]));
    }

    [Fact]
    public void A_vegetable_stock_has_no_small_return()
    {
        BodyAgainstTime body = WhatIf.AgainstTime(Pots.Plan("vegetable", 3));
        Assert.Null(body.SmallReturn);
        Assert.All(body.Points, point => Assert.Equal(BodyClass.Watery, point.Class));
    }
}
