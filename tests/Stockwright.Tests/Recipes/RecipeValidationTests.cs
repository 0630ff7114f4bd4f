using Stockwright.Evidence;
using Stockwright.Larder;
using Stockwright.Recipes;
using UnitsNet;
using Xunit;

namespace Stockwright.Tests.Recipes;

public sealed class RecipeValidationTests
{
    private static readonly StockRecipe Good = StandardRecipes.Book.Recipes.Single(recipe => recipe.Kind == StockKind.BrownBeef);

    [Fact]
    public void Nothing_in_the_pot_is_said_so() => AssertFound(Good with { Lines = [] }, "Lines");

    [Fact]
    public void Only_optional_things_are_no_recipe() =>
        AssertFound(Good with { Lines = [Good.Lines[0] with { IsOptional = true }] }, "Lines");

    [Fact]
    public void An_ingredient_the_larder_does_not_know_is_named() =>
        Assert.Contains("unicorn", AssertFound(WithLine(line => line with { IngredientId = "unicorn" }), "Lines[0].IngredientId"), StringComparison.Ordinal);

    [Theory]
    [InlineData(0)]
    [InlineData(-5)]
    [InlineData(20_000)]
    public void Amounts_must_make_sense(double grams) => Assert.Contains(
        "Beef marrow bone",
        AssertFound(WithLine(line => line with { PerLitre = line.PerLitre with { Value = Mass.FromGrams(grams) } }), "Lines[0].PerLitre"),
        StringComparison.Ordinal);

    [Theory]
    [InlineData(0)]
    [InlineData(double.NaN)]
    [InlineData(21)]
    public void Water_must_make_sense(double litres) =>
        AssertFound(Good with { WaterLitresPerLitre = Good.WaterLitresPerLitre with { Value = litres } }, "WaterLitresPerLitre");

    [Fact]
    public void The_pot_is_filled_with_a_liquid_of_the_larder()
    {
        AssertFound(Good with { Wetting = "onion" }, "Wetting");
        AssertFound(Good with { Wetting = "unicorn" }, "Wetting");
        Assert.Empty(RecipeValidation.Check(Good with { Wetting = "brown-stock-ready" }, StandardLarder.Table));
        Assert.Empty(RecipeValidation.Check(Good with { Wetting = "brown-stock-ready", Lines = [] }, StandardLarder.Table));
    }

    [Fact]
    public void What_boils_down_has_no_clock_to_put_things_in_by()
    {
        Stated<Ratio> tenth = new(Ratio.FromPercent(10), Ratio.FromPercent(8), Ratio.FromPercent(12), Provenance.CommonPractice, "trade");
        SimmerStage down = Good.Stages[0] with { ReducesTo = tenth };
        StockRecipe recipe = Good with { Stages = [down], Lines = [.. Good.Lines.Select(line => line with { Joins = JoinMoment.Start, BeforeEnd = null })] };
        Assert.Empty(RecipeValidation.Check(recipe, StandardLarder.Table));
        AssertFound(recipe with { Lines = [recipe.Lines[0] with { Joins = JoinMoment.AfterFirstSkim }] }, "Lines[0].Joins");
        AssertFound(recipe with { Lines = [recipe.Lines[0] with { Joins = JoinMoment.BeforeEnd, BeforeEnd = TimeSpan.FromMinutes(30) }] }, "Lines[0].Joins");
        AssertFound(recipe with { Stages = [down with { ClimbsSlowly = true }] }, "Stages[0].ReducesTo");
        AssertFound(recipe with { Stages = [down with { ReducesTo = tenth with { Low = Ratio.FromPercent(2) } }] }, "Stages[0].ReducesTo");
    }

    [Fact]
    public void A_simmer_upside_down_is_caught()
    {
        SimmerStage stage = Good.Stages[0];
        AssertFound(Good with { Stages = [stage with { Least = stage.Most, Most = stage.Least }] }, "Stages[0].Target");
        AssertFound(Good with { Stages = [stage with { ShortestTime = stage.LongestTime, LongestTime = stage.ShortestTime }] }, "Stages[0].Time");
        AssertFound(Good with { Stages = [stage with { Most = Temperature.FromDegreesCelsius(200) }] }, "Stages[0].Target");
        AssertFound(Good with { Stages = [] }, "Stages");
    }

    [Theory]
    [InlineData(73)]
    [InlineData(0)]
    [InlineData(-1)]
    public void Absurd_times_are_caught(double hours)
    {
        TimeSpan time = TimeSpan.FromHours(hours);
        AssertFound(Good with { Stages = [Good.Stages[0] with { Time = time }] }, "Stages[0].Time");
        AssertFound(Good with { Soak = time }, "Soak");
        AssertFound(Good with { Blanch = new BlanchSetting(time, "") }, "Blanch.Time");
        AssertFound(WithLine(line => line with { Joins = JoinMoment.BeforeEnd, BeforeEnd = time }), "Lines[0].BeforeEnd");
    }

    [Fact]
    public void What_is_to_be_done_needs_its_setting()
    {
        AssertFound(Good with { Roast = null }, "Lines[0].Preparation");
        AssertFound(WithLine(line => line with { Preparation = Preparation.Blanch }), "Lines[0].Preparation");
        AssertFound(WithLine(line => line with { Preparation = Preparation.Soak }), "Lines[0].Preparation");
        AssertFound(WithLine(line => line with { Joins = JoinMoment.BeforeEnd, BeforeEnd = null }), "Lines[0].BeforeEnd");
        AssertFound(WithLine(line => line with { Joins = JoinMoment.WithStage, Stage = 1 }), "Lines[0].Stage");
    }

    [Fact]
    public void The_same_ingredient_twice_is_allowed() =>
        Assert.Empty(RecipeValidation.Check(Good with { Lines = [Good.Lines[0], Good.Lines[0]] }, StandardLarder.Table));

    private static StockRecipe WithLine(Func<RecipeLine, RecipeLine> change) => Good with { Lines = [change(Good.Lines[0]), Good.Lines[1]] };

    private static string AssertFound(StockRecipe recipe, string field) =>
        Assert.Single(RecipeValidation.Check(recipe, StandardLarder.Table).Where(found => string.Equals(found.Field, field, StringComparison.Ordinal)).DistinctBy(found => found.Field, StringComparer.Ordinal)).Message;
}
