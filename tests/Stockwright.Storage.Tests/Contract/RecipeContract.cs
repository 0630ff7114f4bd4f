using CsCheck;
using Stockwright.Evidence;
using Stockwright.Recipes;
using UnitsNet;
using Xunit;

namespace Stockwright.Storage.Tests.Contract;

/// <summary>What every provider owes the cook's own recipes.</summary>
public abstract class RecipeContract
{
    private static readonly Gen<StockRecipe> Recipe =
        from standing in Gen.Int[0, StandardRecipes.Book.Recipes.Count - 1].Select(index => StandardRecipes.Book.Recipes[index])
        from name in Kitchens.Name.Where(name => name.Trim().Length > 0)
        from factor in Gen.Double[0.1, 3]
        from degrees in Gen.Double[-2, 2]
        from kept in Gen.Int[Math.Min(1, standing.Lines.Count), standing.Lines.Count]
        select standing with
        {
            Name = name,
            CopiedFrom = standing.Name,
            Lines = [.. standing.Lines.Take(kept).Select(line => line with { PerLitre = Scaled(line.PerLitre, factor), Note = name })],
            Stages = [.. standing.Stages.Select(stage => Shifted(stage, TemperatureDelta.FromKelvins(degrees / 1000)))],
        };

    private static SimmerStage Shifted(SimmerStage stage, TemperatureDelta by) =>
        stage with { Least = stage.Least + by, Target = stage.Target + by, Most = stage.Most + by };

    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    protected abstract TestDatabase NewDatabase();

    [Fact]
    public async Task Every_standing_recipe_can_be_copied_and_comes_back_the_same()
    {
        await using TestDatabase database = NewDatabase();
        await database.StartAsync(withDemo: false);
        foreach (StockRecipe recipe in StandardRecipes.Book.Recipes)
        {
            string id = await database.Recipes.AddAsync(recipe with { CopiedFrom = recipe.Name }, StandardRecipes.Book, cancellationToken: Stop);
            Assert.False(StandardRecipes.Book.TryFind(id, out _));
            OwnRecipe own = (await database.Recipes.FindAsync(id, Stop))!;
            Assert.Null(own.Trouble);
            Same.As(recipe with { Id = id, CopiedFrom = recipe.Name }, own.Recipe);
        }

        RecipeBook book = await database.Recipes.BookAsync(StandardRecipes.Book, Stop);
        Assert.Equal(2 * StandardRecipes.Book.Recipes.Count, book.Recipes.Count);
    }

    [Fact]
    public async Task Changed_recipes_come_back_as_they_went_in()
    {
        await using TestDatabase database = NewDatabase();
        await database.StartAsync(withDemo: false);
        await Recipe.SampleAsync(
            async recipe =>
            {
                string id = await database.Recipes.AddAsync(recipe, StandardRecipes.Book, cancellationToken: Stop);
                Same.As(recipe with { Id = id }, (await database.Recipes.FindAsync(id, Stop))!.Recipe);
            },
            iter: 60,
            threads: 1);
    }

    [Fact]
    public async Task The_second_of_two_writers_is_told_and_the_first_keeps_what_it_wrote()
    {
        await using TestDatabase database = NewDatabase();
        await database.StartAsync(withDemo: false);
        string id = await database.Recipes.AddAsync(StandardRecipes.Book.Recipes[0], StandardRecipes.Book, cancellationToken: Stop);
        OwnRecipe seen = (await database.Recipes.FindAsync(id, Stop))!;
        database.Clock.Now = database.Clock.Now.AddHours(1);
        Assert.Equal(SaveOutcome.Saved, await database.Recipes.SaveAsync(seen.Recipe! with { Name = "First" }, seen.Version, Stop));
        Assert.Equal(SaveOutcome.ChangedMeanwhile, await database.Recipes.SaveAsync(seen.Recipe! with { Name = "Second" }, seen.Version, Stop));
        OwnRecipe now = (await database.Recipes.FindAsync(id, Stop))!;
        Assert.Equal(("First", "First", database.Clock.Now), (now.Name, now.Recipe!.Name, now.Updated));
        Assert.Equal(SaveOutcome.Saved, await database.Recipes.DeleteAsync(id, now.Version, Stop));
        Assert.Equal(SaveOutcome.Gone, await database.Recipes.SaveAsync(now.Recipe, now.Version, Stop));
    }

    private static Stated<Mass> Scaled(Stated<Mass> stated, double factor) =>
        new(stated.Value * factor, stated.Low * factor, stated.High * factor, Provenance.CookStated, "the cook");
}
