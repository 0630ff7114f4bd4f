using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Diagnostics;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Logging;

namespace Stockwright.Storage.Sqlite;

/// <summary>Registers storage in one file of a data folder.</summary>
public static class SqliteStorage
{
    /// <summary>Name of the database file in the data folder.</summary>
    public const string FileName = "stockwright.db";

    /// <summary>Adds the context factory, the stores and <see cref="IStockwrightDatabase"/> over a data folder.</summary>
    /// <param name="services">Services to add to.</param>
    /// <param name="dataFolder">Folder of the database file; made by <see cref="IStockwrightDatabase.PrepareAsync"/> when missing.</param>
    public static IServiceCollection AddStockwrightSqlite(this IServiceCollection services, string dataFolder)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(dataFolder);

        string folder = Path.GetFullPath(dataFolder);
        services.AddStockwrightStores();
        services.AddDbContextFactory<StockwrightContext>(options => Configure(options, Path.Combine(folder, FileName)));
        services.AddSingleton<IStockwrightDatabase>(provider => new SqliteDatabase(
            folder,
            provider.GetRequiredService<IDbContextFactory<StockwrightContext>>(),
            provider.GetRequiredService<TimeProvider>()));
        return services;
    }

    internal static void Configure(DbContextOptionsBuilder options, string file)
    {
        string connection = new SqliteConnectionStringBuilder
        {
            DataSource = file,
            Mode = SqliteOpenMode.ReadWriteCreate,
            ForeignKeys = true,

            // Else the library itself would go on trying for thirty seconds after SQLite stopped waiting for a busy file.
            DefaultTimeout = ConnectionPragmas.BusySeconds,
        }.ConnectionString;
        options
            .UseSqlite(connection, sqlite => sqlite.MigrationsAssembly(typeof(SqliteStorage).Assembly.GetName().Name))
            .AddInterceptors(new ConnectionPragmas(), new TroubleInterceptor())

            // The same entry sent twice at once runs into the unique key: expected, and no news for the operator. What is not
            // expected is thrown, and logged where it is caught.
            .ConfigureWarnings(warnings => warnings.Log((RelationalEventId.CommandError, LogLevel.Debug), (CoreEventId.SaveChangesFailed, LogLevel.Debug)));
    }
}
