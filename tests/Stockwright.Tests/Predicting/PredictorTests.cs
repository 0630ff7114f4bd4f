using Stockwright.Kitchen;
using Stockwright.Larder;
using Stockwright.Planning;
using Stockwright.Predicting;
using Stockwright.Tests.Planning;
using UnitsNet;
using Xunit;

namespace Stockwright.Tests.Predicting;

/// <summary>Whole predictions of the standing recipes.</summary>
public sealed class PredictorTests
{
    /// <summary>
    /// Plausible range (estimate): a bone stock of half to a kilogram of bones a litre, 3 to 8 h, holds 1.5 to 5.5 % protein; the SR28 (2016) trio 06170,
    /// 06172 and 06174 holds 1.97 to 2.52. The published figures are taken as they stand; at that, with
    /// none lost to a kitchen's own ways, veal gives a little more than the rounded end of that range.
    /// </summary>
    [Theory]
    [InlineData("white-chicken")]
    [InlineData("brown-chicken")]
    [InlineData("white-veal")]
    [InlineData("brown-veal")]
    [InlineData("white-beef")]
    [InlineData("turkey")]
    [InlineData("pork")]
    [InlineData("lamb")]
    [InlineData("game")]
    public void Protein_is_plausible(string recipe)
    {
        BatchPrediction prediction = Predictor.Predict(Pots.Plan(recipe), Pots.AsPublished);
        Assert.InRange(prediction.Composition.Protein.Percent, 1.5, 5.6);

        // 06170 weighs 1.014 kg/L by its cup, 06172 1.020 by its make-up; water is the other end.
        Assert.InRange(prediction.Composition.Density.KilogramsPerLiter, 1.0, 1.022);

        // SR28 has 143 to 198 mg of sodium, with salt that its recipes do not state; ours has none added.
        Assert.InRange(prediction.Composition.Sodium.DecimalFractions * 1e5, 5, 198);

        // SR28: 13 to 36 kcal in 100 g; ours may be stronger.
        Assert.InRange(prediction.Nutrition.PerHundredMillilitres.Energy.Kilocalories, 6, 36);

        // Chilled and lifted: residual 0.1 to 0.3 g in 100 g (estimate; 06170 has 0.09).
        Assert.InRange(prediction.Composition.Fat.Percent, 0.05, 0.4);
    }

    [Theory]
    [InlineData("vegetable")]
    [InlineData("mushroom")]
    [InlineData("shellfish")]
    public void Without_collagen_it_is_watery_and_said_so(string recipe)
    {
        BatchPrediction prediction = Predictor.Predict(Pots.Plan(recipe, 3));
        Assert.Equal(BodyClass.Watery, prediction.Body.Class);
        Assert.Equal(0, prediction.Body.Gelatin.Percent);
        Assert.Null(prediction.Body.SetsBelow);
        Assert.Contains(prediction.Notices, notice => notice.Code is "no-collagen");
        Assert.True(prediction.Composition.Brix > 0.3);
    }

    /// <summary>Standard Tables of Food Composition in Japan, 17021, kelp and dried-bonito dashi (from memory): 0.3 g carbohydrate per 100 mL.</summary>
    [Fact]
    public void Dashi_has_a_little_carbohydrate() =>
        Assert.InRange(Predictor.Predict(PlanRequests.For("kelp-and-dried-fish").Plan()).Nutrition.PerHundredMillilitres.Carbohydrate.Grams, 0.15, 0.45);

    [Fact]
    public void Fish_sets_only_in_the_cold()
    {
        BatchPrediction prediction = Predictor.Predict(Pots.Plan("fish-fumet", 3, request => request with
        {
            Goal = new PlanGoal.UseBones([new BonesAtHand("fish-skin", Mass.FromKilograms(1)), new BonesAtHand("fish-head", Mass.FromKilograms(1))]),
        }));
        Assert.True(prediction.Body.SetsBelow!.Value.DegreesCelsius < 12);
        Assert.Contains(prediction.Allergens[1].Flags, flag => flag.Name is "fish");
    }

    /// <summary>The gelatin is spread evenly: what is in the stock is less than what was drawn by what stays in the spent solids and is lost.</summary>
    [Fact]
    public void Gelatin_in_the_stock_is_part_of_what_was_drawn()
    {
        BatchPlan plan = Pots.Plan("white-chicken");
        BatchPrediction prediction = Predictor.Predict(plan);
        double share = prediction.GelatinInStock / prediction.Extraction.Gelatin;
        double kept = plan.Yield.Central.Liters / (plan.Ledger.Out.Where(entry => entry.Key is "yield" or "held-by-solids" or "straining" or "defatting").Sum(entry => entry.Volume.Central.Liters));
        Assert.Equal(kept, share, 0.01);
        double collagen = plan.Amounts.Sum(line => line.Mass.Grams * (line.Ingredient.Collagen?.Value.DecimalFractions ?? 0));
        Assert.Equal(0.85 * collagen, prediction.Extraction.Collagen.Grams, 1e-6 * collagen);
    }

    /// <summary>In a whole plan near sea level the plan's own course gives what a plain hold gives, with the heat-up on top.</summary>
    [Fact]
    public void The_plans_course_is_a_little_more_than_a_plain_hold()
    {
        BatchPlan plan = Pots.Plan("white-chicken", change: request => request with { SimmerTemperature = Temperature.FromDegreesCelsius(96), SimmerTime = TimeSpan.FromHours(4) });
        BatchPrediction prediction = Predictor.Predict(plan, Pots.AsPublished);
        CutInPot[] cuts = [.. plan.Amounts.Where(line => line.Ingredient.Group == IngredientGroup.Poultry).Select(line =>
            new CutInPot(line.Ingredient.Id, StandardCuts.Table.ClassOf(line.Ingredient)!, line.Mass, line.Ingredient.Collagen!.Value))];
        double hold = Pots.Hold(96, 4, cuts).Gelatin.Grams;
        Assert.InRange(prediction.Extraction.Gelatin.Grams / hold, 0.98, 1.1);
    }

    /// <summary>Textbook altitude: 95 °C at a mile, 90 °C at 3000 m (McGee 2004); by B.1 it takes 1.6 and 2.7 times as long for the same gelatin.</summary>
    [Fact]
    public void High_up_it_draws_less_in_the_same_time()
    {
        BatchPrediction At(double metres) => Predictor.Predict(Pots.Plan("white-beef", change: request => request with
        {
            Site = new KitchenSite { Altitude = Length.FromMeters(metres) },
            SimmerTemperature = Temperature.FromDegreesCelsius(97),
            SimmerTime = TimeSpan.FromHours(8),
        }));
        double sea = At(0).Extraction.Extracted.DecimalFractions;
        double high = At(3000).Extraction.Extracted.DecimalFractions;
        Assert.InRange(high / sea, 0.4, 0.75);
    }

    [Fact]
    public void A_pressure_cooker_is_quicker_and_wears_more()
    {
        Pot cooker = Pot.Straight("pc", "Pressure cooker", Length.FromCentimeters(26), Length.FromCentimeters(20)) with { Kind = PotKind.PressureCooker };
        BatchPrediction open = Predictor.Predict(Pots.Plan("white-chicken", 3, request => request with { SimmerTime = TimeSpan.FromHours(2) }));
        BatchPrediction sealedPot = Predictor.Predict(Pots.Plan("white-chicken", 3, request => request with
        {
            Pot = cooker,
            Lid = LidPosition.On,
            SimmerTemperature = Temperature.FromDegreesCelsius(120),
            SimmerTime = TimeSpan.FromHours(2),
        }));
        Assert.True(sealedPot.Extraction.Extracted > 1.5 * open.Extraction.Extracted);
        Assert.True(sealedPot.Extraction.Intactness < open.Extraction.Intactness);
    }

    [Fact]
    public void Fat_goes_somewhere()
    {
        BatchPlan plan = Pots.Plan("brown-chicken");
        BatchPrediction prediction = Predictor.Predict(plan, new PredictionSettings { ContainerDiameter = Length.FromCentimeters(20), Defat = DefatMethod.Ladle });
        FatPrediction fat = prediction.Fat;
        double brought = plan.Amounts.Where(line => line.Ingredient.Group == IngredientGroup.Poultry).Sum(line => line.Mass.Grams * line.Ingredient.Fat.Value.DecimalFractions);
        Assert.InRange(fat.DrainedInRoast.Grams / brought, 0.3, 0.6);
        Assert.True((fat.DrainedInRoast + fat.Freed).Grams < brought);
        Assert.Equal(fat.Floating.Kilograms / 0.918 / (Math.PI / 4 * 4) * 1000, fat.CapThickness.Millimeters * 10, 0.5);
        Assert.Equal(0.7 * fat.Floating.Grams, fat.Recovered.Grams, 1e-6);
        Assert.True(fat.RecoveredBy(DefatMethod.Ladle) < fat.RecoveredBy(DefatMethod.Jug));
        Assert.True(fat.RecoveredBy(DefatMethod.Jug) < fat.RecoveredBy(DefatMethod.Chill));
    }

    /// <summary>Estimates by cut (f_free of B.18): grams of free fat from a kilogram after hours of simmering.</summary>
    [Theory]
    [InlineData("chicken-back", 110, 150)]
    [InlineData("chicken-carcass", 50, 65)]
    [InlineData("chicken-feet", 60, 80)]
    [InlineData("duck", 220, 260)]
    [InlineData("beef-marrow-bone", 200, 290)]
    [InlineData("beef-neck-bone", 70, 110)]
    [InlineData("pork-trotter", 60, 85)]
    [InlineData("lamb-neck", 85, 110)]
    [InlineData("fish-frame", 5, 8)]
    public void Free_fat_of_a_kilogram(string id, double least, double most)
    {
        Ingredient ingredient = StandardLarder.Table.Get(id);
        Assert.InRange(1000 * ingredient.Fat.Value.DecimalFractions * StandardCuts.Table.ClassOf(ingredient)!.FreedFat.Value.DecimalFractions, least, most);
    }

    [Fact]
    public void Every_meat_and_fish_of_the_larder_has_a_class()
    {
        foreach (Ingredient ingredient in StandardLarder.Table.Ingredients.Where(row => row.Collagen is { Value.Percent: > 0 }))
        {
            Assert.NotNull(StandardCuts.Table.ClassOf(ingredient));
        }
    }

    [Fact]
    public void Settings_out_of_range_are_named_and_refused()
    {
        PredictionSettings settings = new() { Ph = 2, PortionSize = Volume.FromLiters(5), Fridge = Temperature.FromDegreesCelsius(40), PieceSize = Length.Zero, ContainerDiameter = Length.FromCentimeters(2) };
        Assert.Equal("ph piece-size container-diameter fridge portion-size", string.Join(' ', settings.Check().Select(problem => problem.Field)));
        Assert.Throws<ArgumentException>(() => Predictor.Predict(Pots.Plan("vegetable", 3), settings));
        Assert.Empty(new PredictionSettings().Check());
    }

    [Fact]
    public void The_kitchens_factor_scales_the_gelatin()
    {
        BatchPlan plan = Pots.Plan("white-veal");
        double one = Predictor.Predict(plan, Pots.AsPublished).Extraction.Gelatin.Grams;
        double usual = Predictor.Predict(plan, Pots.AsPublished with { KitchenFactor = PredictionSettings.UsualKitchenFactor }).Extraction.Gelatin.Grams;
        Assert.Equal(0.85, usual / one, 1e-9);
    }

    /// <summary>B.5: the bones are out, but a stock that cools slowly goes on losing strength.</summary>
    [Fact]
    public void Slow_cooling_wears_the_gelatin()
    {
        BatchPlan plan = Pots.Plan("white-veal");
        ExtractionResult quick = Predictor.Predict(plan, new PredictionSettings { CoolingTo60 = TimeSpan.Zero }).Extraction;
        ExtractionResult slow = Predictor.Predict(plan, new PredictionSettings { CoolingTo60 = TimeSpan.FromHours(6) }).Extraction;
        Assert.Equal(quick.Gelatin.Grams, slow.Gelatin.Grams, 1e-6);
        Assert.InRange(slow.Intactness / quick.Intactness, 0.7, 0.97);
    }

    /// <summary>B.8: blanching pours half the juices away (estimate); the sugars of the vegetables and the salt of the seasoning stay.</summary>
    [Fact]
    public void Blanched_bones_give_half_their_juices()
    {
        Ingredient knuckle = StandardLarder.Table.Get("veal-knuckle");
        ExtractionEngine engine = new([], TemperatureHistory.Steady(Temperature.FromDegreesCelsius(95), TimeSpan.FromHours(6)));
        Solutes Of(bool blanched) => Solutes.Of(
            [new PotItem(knuckle, 2, 0, blanched, 0), new PotItem(StandardLarder.Table.Get("salt"), 0.01, 0, Blanched: false, 0)], StandardCuts.Table, engine, 6 * 3600);
        Assert.Equal(0.5, Of(blanched: true).Juices / Of(blanched: false).Juices, 1e-9);

        // 10 g of salt bring 3.876 g of sodium (SR28 02047) and the rest comes from the bones.
        Assert.InRange(Of(blanched: false).Sodium * 1000, 3.876, 3.876 + (2000 * 80e-5));
        Assert.True(Of(blanched: false).Minerals > 0.00998);
    }
}
