using Stockwright.Larder;
using Stockwright.Logbook;
using Stockwright.Recipes;
using Xunit;

namespace Stockwright.Storage.Tests.Contract;

/// <summary>What every provider owes two kitchens in one database: each sees only its own.</summary>
public abstract class KitchenScopeContract
{
    private const int Other = 2;

    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    protected abstract TestDatabase NewDatabase();

    [Fact]
    public async Task Parts_ingredients_and_recipes_of_another_kitchen_are_not_seen()
    {
        await using TestDatabase database = await TwoKitchensAsync();
        KeptKitchen first = await database.Kitchen.ReadAsync(Stop);
        string ingredient = await database.Larder.AddAsync(StandardLarder.Table.Get("onion"), StandardLarder.Table, cancellationToken: Stop);
        StockRecipe standing = StandardRecipes.Book.Recipes[0];
        string recipe = await database.Recipes.AddAsync(standing, StandardRecipes.Book, cancellationToken: Stop);
        using (database.Scope.Enter(Other))
        {
            KeptKitchen second = await database.Kitchen.ReadAsync(Stop);
            Assert.Equal(FirstStart.EmptyKitchenName, second.Details.Value.Name);
            Assert.Empty(second.Pots);
            Assert.Empty(second.Hobs);
            Assert.Empty(second.Ovens);
            Assert.Empty(second.Trays);
            Assert.Equal(SaveOutcome.Gone, await database.Kitchen.DeletePotAsync(first.Pots[0].Value.Id, 1, Stop));
            Assert.Equal(SaveOutcome.Gone, await database.Kitchen.SaveAsync(first.Hobs[0].Value, 1, Stop));

            Assert.Empty(await database.Larder.ListAsync(Stop));
            Assert.Null(await database.Larder.FindAsync(ingredient, Stop));
            Assert.Equal(SaveOutcome.Gone, await database.Larder.DeleteAsync(ingredient, 1, Stop));

            Assert.Empty(await database.Recipes.ListAsync(Stop));
            Assert.Empty((await database.Recipes.PageAsync(1, 10, Stop)).Rows);
            Assert.Null(await database.Recipes.FindAsync(recipe, Stop));
            Assert.Equal(SaveOutcome.Gone, await database.Recipes.SaveAsync(standing with { Id = recipe }, 1, Stop));
            Assert.Equal(SaveOutcome.Gone, await database.Recipes.DeleteAsync(recipe, 1, Stop));
        }

        Assert.NotNull(await database.Recipes.FindAsync(recipe, Stop));
        Assert.NotNull(await database.Larder.FindAsync(ingredient, Stop));
    }

    [Fact]
    public async Task Plans_of_another_kitchen_are_not_seen()
    {
        await using TestDatabase database = await TwoKitchensAsync();
        Guid plan = (await database.Plans.PageAsync(1, 10, Stop)).Rows[0].Id;
        using (database.Scope.Enter(Other))
        {
            Assert.Empty((await database.Plans.PageAsync(1, 10, Stop)).Rows);
            Assert.Null(await database.Plans.FindAsync(plan, Stop));
            Assert.Null(await database.Plans.CopyAsync(plan, "Copy", cancellationToken: Stop));
            Assert.Equal(SaveOutcome.Gone, await database.Plans.RenameAsync(plan, "Mine", "", 1, Stop));
            Assert.Equal(SaveOutcome.Gone, await database.Plans.DeleteAsync(plan, 1, Stop));
        }

        Assert.NotNull(await database.Plans.FindAsync(plan, Stop));
    }

    [Fact]
    public async Task Batches_entries_photos_and_the_calendar_of_another_kitchen_are_not_seen()
    {
        await using TestDatabase database = await TwoKitchensAsync();
        Guid batch = await StartedBatches.StartAsync(database);
        NewEntry entry = StartedBatches.Entry(database, batch, new LogFact.PhotoTaken("pot")) with { Photo = new StoredPhoto([1, 2, 3], 1, 1) };
        Assert.Equal(AppendStanding.Stored, (await database.Logs.AppendAsync(entry, Stop)).Standing);
        string token = await database.Batches.CalendarTokenAsync(Stop);
        BatchLog known = await database.Logs.ReadAsync(batch, Stop);
        using (database.Scope.Enter(Other))
        {
            Assert.Empty(await database.Batches.OpenAsync(Stop));
            Assert.Empty((await database.Batches.PageAsync(closed: false, 1, 10, Stop)).Rows);
            Assert.Empty((await database.Batches.AfterAsync(null, 10, Stop))!);
            Assert.Null(await database.Batches.AfterAsync(batch, 10, Stop));
            Assert.Null(await database.Batches.FindAsync(batch, Stop));
            await Assert.ThrowsAsync<InvalidOperationException>(() => database.Batches.PlanAsync(batch, Stop));

            Assert.Empty((await database.Logs.ReadAsync(batch, Stop)).All);
            Assert.Empty((await database.Logs.ReadAsync(batch, known, Stop)).All);
            Assert.Equal(0, await database.Logs.CountAsync(batch, Stop));
            Assert.Equal(0, await database.Logs.CountAllAsync(Stop));
            Assert.Null(await database.Logs.PhotoAsync(entry.Id, Stop));
            Assert.Equal(AppendStanding.NoSuchBatch, (await database.Logs.AppendAsync(entry, Stop)).Standing);

            Assert.NotEqual(token, await database.Batches.CalendarTokenAsync(Stop), StringComparer.Ordinal);
            await database.Batches.RenewCalendarTokenAsync(Stop);
        }

        Assert.Equal(token, await database.Batches.CalendarTokenAsync(Stop));
        Assert.NotNull(await database.Logs.PhotoAsync(entry.Id, Stop));
        Assert.Equal(2, await database.Logs.CountAllAsync(Stop));
    }

    /// <summary>The demonstration kitchen, and an empty one beside it.</summary>
    private async Task<TestDatabase> TwoKitchensAsync()
    {
        TestDatabase database = NewDatabase();
        await database.StartAsync();
        using (database.Scope.Enter(Other))
        {
            Assert.True(await database.FirstStart.EnsureKitchenAsync(withDemo: false, Stop));
        }

        return database;
    }
}
