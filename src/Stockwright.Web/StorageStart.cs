using Stockwright.Storage;
using Stockwright.Storage.Sqlite;
using Stockwright.Web.Features.Kitchen;
using Stockwright.Web.Features.Larder;
using Stockwright.Web.Features.Planning.Saved;
using Stockwright.Web.Features.Recipes;
using Stockwright.Web.Shell;

namespace Stockwright.Web;

/// <summary>Registers the database and gets it ready before the first page.</summary>
internal static class StorageStart
{
    public static void AddStorage(this IServiceCollection services, StockwrightOptions options)
    {
        services.AddStockwrightSqlite(options.DataFolder);
        services.AddHostedService<DamageCheckService>();
        services.AddSingleton<IKitchenSource, StoredKitchenSource>();
        services.AddSingleton<OldPlanService>();
        services.AddSingleton<LarderService>();
        services.AddSingleton<RecipeService>();
    }

    /// <summary>Makes or migrates the database; fills a fresh one; turns what earlier versions kept of plans into documents.</summary>
    /// <exception cref="StorageTroubleException">The data folder cannot be used.</exception>
    public static async Task PrepareStorageAsync(this WebApplication app)
    {
        await app.Services.GetRequiredService<IStockwrightDatabase>().PrepareAsync();
        bool demo = app.Services.GetRequiredService<StockwrightOptions>().Demo;
        await app.Services.GetRequiredService<FirstStart>().EnsureKitchenAsync(demo);
        await app.Services.GetRequiredService<OldPlanService>().TurnAsync();
    }
}
