using System.Collections.Concurrent;
using Stockwright.Kitchen;
using Stockwright.Larder;
using Stockwright.Logbook;
using Stockwright.Planning;
using Stockwright.Recipes;
using UnitsNet;
using Xunit;

namespace Stockwright.Storage.Tests.Contract;

/// <summary>Batches and entries to store.</summary>
internal static class StartedBatches
{
    private static readonly ConcurrentDictionary<(Pot, Hob, DateTimeOffset), StoredPlan> Planned = new();

    public static async Task<NewBatch> NewAsync(TestDatabase database, string name = "Sunday", DateTimeOffset? begins = null)
    {
        KitchenSetup kitchen = (await database.Kitchen.ReadAsync(TestContext.Current.CancellationToken)).Setup;
        Assert.True(StandardRecipes.Book.TryFind("brown-chicken", out StockRecipe? recipe));
        return new NewBatch(
            Guid.CreateVersion7(),
            name,
            Planned.GetOrAdd((kitchen.Pots[0], kitchen.Hobs[0], database.Clock.Now), _ => Document(recipe!, kitchen, database.Clock.Now)),
            """{"plan":1}""",
            "uk-cook-chill",
            begins ?? database.Clock.Now);
    }

    private static StoredPlan Document(StockRecipe recipe, KitchenSetup kitchen, DateTimeOffset start) =>
        StoredPlan.Of(BatchPlanner.Plan(Request(recipe, kitchen, start)).Plan!, kitchen.Name);

    public static PlanRequest Request(StockRecipe recipe, KitchenSetup kitchen, DateTimeOffset start)
    {
        return new()
        {
            Recipe = recipe,
            Larder = StandardLarder.Table,
            Pot = kitchen.Pots[0],
            OtherPots = kitchen.Pots,
            Hob = kitchen.Hobs[0],
            Lid = recipe.Lid,
            Site = kitchen.Site,
            Oven = kitchen.Oven,
            Trays = kitchen.Trays,
            Goal = new PlanGoal.MakeVolume(Volume.FromLiters(3)),
            Schedule = new PlanSchedule { StartAt = start },
        };
    }

    public static async Task<Guid> StartAsync(TestDatabase database, string name = "Sunday", DateTimeOffset? begins = null)
    {
        NewBatch batch = await NewAsync(database, name, begins);
        await database.Batches.StartAsync(batch, TestContext.Current.CancellationToken);
        return batch.Id;
    }

    public static NewEntry Entry(TestDatabase database, Guid batch, LogFact fact, Guid? corrects = null) => new()
    {
        Id = Guid.CreateVersion7(),
        BatchId = batch,
        HappenedAt = database.Clock.Now.AddMinutes(-1),
        Who = "RT",
        Fact = fact,
        Corrects = corrects,
    };
}
