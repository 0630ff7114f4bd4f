using Stockwright.Storage;
using Stockwright.Storage.Sqlite;
using Stockwright.Web.Planner;
using Stockwright.Web.Shell;

namespace Stockwright.Web.Keeping;

/// <summary>Registers the database and gets it ready before the first page.</summary>
internal static class StorageStart
{
    public static void AddStorage(this IServiceCollection services, StockwrightOptions options)
    {
        services.AddStockwrightSqlite(options.DataFolder);
        services.AddHostedService<DamageCheckService>();
        services.AddSingleton<IKitchenSource, StoredKitchenSource>();
        services.AddSingleton<LarderShelf>();
        services.AddSingleton<RecipeShelf>();
    }

    /// <summary>Makes or migrates the database; fills a fresh one.</summary>
    /// <exception cref="StorageTroubleException">The data folder cannot be used.</exception>
    public static async Task PrepareStorageAsync(this WebApplication app)
    {
        await app.Services.GetRequiredService<IStockwrightDatabase>().PrepareAsync();
        bool demo = app.Services.GetRequiredService<StockwrightOptions>().Demo;
        await app.Services.GetRequiredService<FirstStart>().EnsureKitchenAsync(demo);
    }
}
