using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using Xunit;

namespace Stockwright.Storage.Tests.Contract;

/// <summary>A database of one provider for one test; opening it again starts the program anew on the same data.</summary>
public abstract class TestDatabase : IAsyncDisposable
{
    private ServiceProvider? services;

    public SetClock Clock { get; } = new();

    public KitchenStore Kitchen => Get<KitchenStore>();

    public RecipeStore Recipes => Get<RecipeStore>();

    public LarderStore Larder => Get<LarderStore>();

    public PlanStore Plans => Get<PlanStore>();

    public BatchStore Batches => Get<BatchStore>();

    public LogStore Logs => Get<LogStore>();

    public KitchenScope Scope => Get<KitchenScope>();

    public FirstStart FirstStart => Get<FirstStart>();

    public IStockwrightDatabase Database => Get<IStockwrightDatabase>();

    public IDbContextFactory<StockwrightContext> Contexts => Get<IDbContextFactory<StockwrightContext>>();

    /// <summary>Starts the program; true when the data were fresh.</summary>
    public async Task<bool> StartAsync(bool withDemo = true)
    {
        await StopAsync();
        ServiceCollection collection = new();
        collection.AddSingleton<TimeProvider>(Clock);
        AddProvider(collection);
        services = collection.BuildServiceProvider(validateScopes: true);
        await Database.PrepareAsync(TestContext.Current.CancellationToken);
        return await Get<FirstStart>().EnsureKitchenAsync(withDemo, TestContext.Current.CancellationToken);
    }

    public async Task StopAsync()
    {
        if (services is not null)
        {
            await services.DisposeAsync();
            services = null;
        }

        await LetGoAsync();
    }

    public async ValueTask DisposeAsync()
    {
        await StopAsync();
        await DropAsync();
        GC.SuppressFinalize(this);
    }

    protected abstract void AddProvider(IServiceCollection collection);

    /// <summary>Closes pooled connections.</summary>
    protected abstract Task LetGoAsync();

    /// <summary>Removes the data.</summary>
    protected abstract Task DropAsync();

    private T Get<T>()
        where T : notnull =>
        (services ?? throw new InvalidOperationException("Start the database first.")).GetRequiredService<T>();
}

/// <summary>A clock that stands until a test moves it.</summary>
public sealed class SetClock : TimeProvider
{
    public DateTimeOffset Now { get; set; } = new(2026, 3, 1, 9, 30, 0, TimeSpan.Zero);

    public override DateTimeOffset GetUtcNow() => Now;
}
