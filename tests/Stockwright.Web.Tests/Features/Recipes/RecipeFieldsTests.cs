using Stockwright.Larder;
using Stockwright.Recipes;
using Stockwright.Web.Features.Recipes;
using Stockwright.Web.Fields;
using Xunit;
using UnitSystem = Stockwright.Measures.UnitSystem;

namespace Stockwright.Web.Tests.Features.Recipes;

/// <summary>A recipe as a form: what is not touched stays, rows move as a whole.</summary>
public sealed class RecipeFieldsTests
{
    public static TheoryData<string> Standing => [.. StandardRecipes.Book.Recipes.Select(recipe => recipe.Id)];

    [Theory]
    [MemberData(nameof(Standing))]
    public void A_recipe_read_as_it_was_shown_is_the_same_in_either_measure(string id)
    {
        StockRecipe recipe = StandardRecipes.Book.Recipes.Single(each => each.Id.Equals(id, StringComparison.Ordinal));
        foreach (UnitSystem units in new[] { UnitSystem.Metric, UnitSystem.UsCustomary })
        {
            FieldReader reader = new(RecipeFields.Write(recipe, units), units);
            StockRecipe? read = new RecipeReader(reader, recipe, StandardLarder.Table).Read();
            Assert.Empty(reader.Problems);
            Assert.Equal(recipe.Lines, read!.Lines);
            Assert.Equal(recipe.Stages, read.Stages);
            Assert.Equal((recipe.Roast, recipe.Blanch, recipe.Soak), (read.Roast, read.Blanch, read.Soak));
            Assert.Equal((recipe.Name, recipe.Summary), (read.Name, read.Summary));
        }
    }

    [Fact]
    public void A_changed_time_widens_its_range_and_a_first_roast_has_no_other()
    {
        StockRecipe recipe = StandardRecipes.Book.Recipes.First(each => each.Roast is null && each.Stages.Count == 1);
        TypedForm typed = RecipeFields.Write(recipe, UnitSystem.Metric)
            .With("stage-0-hours", "70").With("roast-temperature", "200").With("roast-minutes", "30");
        StockRecipe read = new RecipeReader(new FieldReader(typed, UnitSystem.Metric), recipe, StandardLarder.Table).Read()!;
        Assert.Equal(recipe.Stages[0] with { Time = TimeSpan.FromHours(70), LongestTime = TimeSpan.FromHours(70) }, read.Stages[0]);
        Assert.Equal((TimeSpan.FromMinutes(30), TimeSpan.FromMinutes(30), TimeSpan.FromMinutes(30)), (read.Roast!.ShortestTime, read.Roast.Time, read.Roast.LongestTime));
    }

    [Theory]
    [InlineData(0, "b c ")]
    [InlineData(1, "a c ")]
    [InlineData(2, "a b ")]
    [InlineData(3, "a b c ")]
    public void A_row_taken_out_moves_the_later_ones_up_and_touches_nothing_else(int dropped, string left)
    {
        TypedForm typed = TypedForm.Empty.With("name", "N").With("line-0-ingredient", "a").With("line-0-note", "1").With("line-1-ingredient", "b").With("line-2-ingredient", "c").With("stage-1-hours", "4");
        TypedForm after = RecipeFields.DropLine(typed, dropped);
        Assert.Equal(left, string.Concat(Enumerable.Range(0, RecipeFields.Lines(after)).Select(row => after[$"line-{row}-ingredient"] + " ")));
        Assert.Equal(dropped == 0 ? "" : "1", after["line-0-note"]);
        Assert.Equal(("N", "4"), (after["name"], after["stage-1-hours"]));
    }
}
