using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.DependencyInjection.Extensions;

namespace Stockwright.Storage;

/// <summary>Registers the stores; a database provider calls this.</summary>
public static class StorageServices
{
    /// <summary>Adds the stores of kitchen, recipes, larder, plans, batches and logs over the registered context factory.</summary>
    public static IServiceCollection AddStockwrightStores(this IServiceCollection services)
    {
        services.TryAddSingleton(TimeProvider.System);
        services.TryAddSingleton<KitchenScope>();
        services.TryAddSingleton<KitchenStore>();
        services.TryAddSingleton<RecipeStore>();
        services.TryAddSingleton<LarderStore>();
        services.TryAddSingleton<PlanStore>();
        services.TryAddSingleton<BatchStore>();
        services.TryAddSingleton<LogStore>();
        services.TryAddSingleton<FirstStart>();
        return services;
    }
}
