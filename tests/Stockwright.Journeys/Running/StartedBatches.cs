using Microsoft.Extensions.DependencyInjection;
using Stockwright.Kitchen;
using Stockwright.Larder;
using Stockwright.Planning;
using Stockwright.Recipes;
using Stockwright.Storage;
using Stockwright.Storage.Batches;
using Stockwright.Storage.Kitchen;
using Stockwright.Storage.Plans;
using Stockwright.Storage.Sqlite;
using UnitsNet;

namespace Stockwright.Journeys.Running;

/// <summary>A data folder with batches under way, written with the app's own stores before the app starts.</summary>
internal static class StartedBatches
{
    /// <summary>Makes the database, the demonstration kitchen and some batches that begin now.</summary>
    /// <returns>Ids of the batches.</returns>
    public static Task<IReadOnlyList<Guid>> MakeAsync(DirectoryInfo data, int count, CancellationToken cancellationToken) =>
        MakeAsync(data, count, TimeProvider.System.GetUtcNow(), cancellationToken);

    /// <summary>Makes the database, the demonstration kitchen and some batches that begin, or began, at a moment.</summary>
    /// <returns>Ids of the batches.</returns>
    public static async Task<IReadOnlyList<Guid>> MakeAsync(DirectoryInfo data, int count, DateTimeOffset now, CancellationToken cancellationToken)
    {
        await using ServiceProvider services = new ServiceCollection().AddStockwrightSqlite(data.FullName).BuildServiceProvider();
        await services.GetRequiredService<IStockwrightDatabase>().PrepareAsync(cancellationToken);
        await services.GetRequiredService<FirstStart>().EnsureKitchenAsync(true, cancellationToken);
        KitchenSetup kitchen = (await services.GetRequiredService<KitchenStore>().ReadAsync(cancellationToken)).Setup;
        if (!StandardRecipes.Book.TryFind("brown-chicken", out StockRecipe? recipe))
        {
            throw new InvalidOperationException("There is no such standing recipe.");
        }

        PlanRequest request = new()
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
            Goal = new PlanGoal.MakeVolume(Volume.FromLiters(3.5)),
            Schedule = new PlanSchedule { Zone = TimeZoneInfo.FindSystemTimeZoneById(kitchen.TimeZoneId), StartAt = now },
        };
        StoredPlan plan = StoredPlan.Of(BatchPlanner.Plan(request).Plan!, kitchen.Name);
        List<Guid> ids = [];
        for (int index = 0; index < count; index++)
        {
            NewBatch batch = new(Guid.CreateVersion7(), $"Batch {index + 1}", plan, "{}", "us-food-code", now);
            await services.GetRequiredService<BatchStore>().StartAsync(batch, cancellationToken);
            ids.Add(batch.Id);
        }

        return ids;
    }
}
