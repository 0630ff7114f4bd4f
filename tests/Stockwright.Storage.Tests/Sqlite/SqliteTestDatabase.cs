using Microsoft.Data.Sqlite;
using Microsoft.Extensions.DependencyInjection;
using Stockwright.Storage.Sqlite;
using Stockwright.Storage.Tests.Contract;

namespace Stockwright.Storage.Tests.Sqlite;

/// <summary>A real file in a temporary folder.</summary>
public sealed class SqliteTestDatabase(string? folder = null) : TestDatabase
{
    public string Folder { get; } = folder ?? Path.Combine(Path.GetTempPath(), $"stockwright-test-{Guid.NewGuid():N}");

    public string File => Path.Combine(Folder, SqliteStorage.FileName);

    protected override void AddProvider(IServiceCollection collection) => collection.AddStockwrightSqlite(Folder);

    protected override Task LetGoAsync()
    {
        SqliteConnection.ClearAllPools();
        return Task.CompletedTask;
    }

    protected override Task DropAsync()
    {
        if (Directory.Exists(Folder))
        {
            Directory.Delete(Folder, recursive: true);
        }

        return Task.CompletedTask;
    }
}
