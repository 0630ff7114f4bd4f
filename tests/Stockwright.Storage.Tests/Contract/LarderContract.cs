using Stockwright.Evidence;
using Stockwright.Larder;
using UnitsNet;
using Xunit;

namespace Stockwright.Storage.Tests.Contract;

/// <summary>What every provider owes the cook's own ingredients.</summary>
public abstract class LarderContract
{
    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    protected abstract TestDatabase NewDatabase();

    [Fact]
    public async Task Every_ingredient_can_be_copied_and_comes_back_the_same()
    {
        await using TestDatabase database = NewDatabase();
        await database.StartAsync(withDemo: false);
        foreach (Ingredient ingredient in StandardLarder.Table.Ingredients)
        {
            string id = await database.Larder.AddAsync(ingredient, StandardLarder.Table, cancellationToken: Stop);
            OwnIngredient own = (await database.Larder.FindAsync(id, Stop))!;
            Assert.Null(own.Trouble);

            // A row kept for checking is offered once a cook has made it an own one.
            Same.As(ingredient with { Id = id, IsOffered = true }, own.Ingredient);
        }

        LarderTable table = await database.Larder.TableAsync(StandardLarder.Table, Stop);
        Assert.Equal(2 * StandardLarder.Table.Ingredients.Count, table.Ingredients.Count);
    }

    [Fact]
    public async Task A_changed_standard_row_stands_in_its_place_until_it_is_reset()
    {
        await using TestDatabase database = NewDatabase();
        await database.StartAsync(withDemo: false);
        Ingredient onion = StandardLarder.Table.Get("onion");
        Stated<Ratio> loss = new(Ratio.FromPercent(40), Ratio.FromPercent(40), Ratio.FromPercent(40), Provenance.CookStated, "weighed");
        Assert.Equal(SaveOutcome.Saved, await database.Larder.SaveAsync(onion with { RoastLoss = loss }, 0, Stop));
        Assert.Equal(SaveOutcome.ChangedMeanwhile, await database.Larder.SaveAsync(onion with { Name = "Second" }, 0, Stop));
        LarderTable table = await database.Larder.TableAsync(StandardLarder.Table, Stop);
        Assert.Equal(StandardLarder.Table.Ingredients.Count, table.Ingredients.Count);
        Same.As(onion with { RoastLoss = loss }, table.Get("onion"));

        Assert.Equal(SaveOutcome.Saved, await database.Larder.DeleteAsync("onion", 1, Stop));
        Same.As(onion, (await database.Larder.TableAsync(StandardLarder.Table, Stop)).Get("onion"));
        Assert.Equal(SaveOutcome.Gone, await database.Larder.SaveAsync(onion, 1, Stop));
    }
}
