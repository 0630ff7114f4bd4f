using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Infrastructure;
using Microsoft.EntityFrameworkCore.Migrations;
using Stockwright.Logbook;
using Stockwright.Storage.Tests.Contract;
using Xunit;

namespace Stockwright.Storage.Tests.Sqlite;

/// <summary>What the file itself sees to: nobody changes a log afterwards, and an older file becomes a newer one whole.</summary>
public sealed class SqliteLogbookTests
{
    private static readonly string[] AppendOnly = ["BatchPlans", "Batches", "LogEntries", "Photos"];

    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    /// <summary>EF rebuilds a table for many a change of it, and a rebuilt table has lost its triggers.</summary>
    [Fact]
    public async Task After_all_migrations_every_table_of_the_log_has_its_triggers()
    {
        await using SqliteTestDatabase database = new();
        await database.StartAsync();
        await using StockwrightContext context = await database.Contexts.CreateDbContextAsync(Stop);
        List<string> triggers = await context.Database.SqlQuery<string>($"SELECT name AS Value FROM sqlite_master WHERE type = 'trigger' ORDER BY name").ToListAsync(Stop);
        Assert.Equal(AppendOnly.SelectMany(table => new[] { $"{table}_NoDelete", $"{table}_NoUpdate" }), triggers, StringComparer.Ordinal);
    }

    [Theory]
    [InlineData("UPDATE Batches SET Name = 'x'")]
    [InlineData("UPDATE LogEntries SET Body = '{}'")]
    [InlineData("UPDATE LogEntries SET ReceivedUtc = '2020-01-01 00:00:00'")]
    [InlineData("UPDATE Photos SET Width = 1")]
    [InlineData("UPDATE BatchPlans SET Document = '{}'")]
    [InlineData("DELETE FROM BatchPlans")]
    [InlineData("DELETE FROM Batches")]
    [InlineData("DELETE FROM LogEntries")]
    [InlineData("DELETE FROM Photos")]
    public async Task Nobody_changes_or_deletes_what_was_entered(string statement)
    {
        await using SqliteTestDatabase database = new();
        await database.StartAsync();
        Guid batch = await StartedBatches.StartAsync(database);
        NewEntry entry = StartedBatches.Entry(database, batch, new LogFact.PhotoTaken()) with { Photo = new StoredPhoto([1, 2, 3], 4, 3) };
        await database.Logs.AppendAsync(entry, Stop);
        await using SqliteConnection connection = new($"Data Source={database.File};Pooling=False");
        await connection.OpenAsync(Stop);
        await using SqliteCommand command = connection.CreateCommand();
        command.CommandText = statement;
        SqliteException refused = await Assert.ThrowsAsync<SqliteException>(() => command.ExecuteNonQueryAsync(Stop));
        Assert.Contains("Entries are only added", refused.Message, StringComparison.Ordinal);
        Assert.Equal([1, 2, 3], (await database.Logs.PhotoAsync(entry.Id, Stop))!.Jpeg);
    }

    [Fact]
    public async Task A_file_of_the_version_before_batches_keeps_its_kitchen_and_takes_batches()
    {
        await using SqliteTestDatabase database = new();
        Directory.CreateDirectory(database.Folder);
        await MakeOlderAsync(database);
        Assert.False(await database.StartAsync());
        KeptKitchen kitchen = await database.Kitchen.ReadAsync(Stop);
        Assert.Equal("Old kitchen", kitchen.Details.Value.Name);
        Assert.Null(kitchen.Details.Value.Site.OwnClinging);
        Assert.Equal("Old pot", Assert.Single(kitchen.Pots).Value.Name);
        Assert.Equal(7, kitchen.Pots[0].Version);
        PlanSummary plan = Assert.Single((await database.Plans.PageAsync(1, 100, Stop)).Rows);
        SavedPlan old = (await database.Plans.FindAsync(plan.Id, Stop))!;
        Assert.Equal(("Old plan", "q=1", null), (plan.Name, old.OldQuery, old.Document));
        Assert.NotNull(old.Trouble);
        Assert.Matches("^[0-9a-f]{40}$", await database.Batches.CalendarTokenAsync(cancellationToken: Stop));
    }

    /// <summary>Migrates a new file to the first migration only, and writes rows as that version's tables had them.</summary>
    private static async Task MakeOlderAsync(SqliteTestDatabase database)
    {
        DbContextOptionsBuilder<StockwrightContext> options = new();
        options.UseSqlite($"Data Source={database.File};Pooling=False", sqlite => sqlite.MigrationsAssembly("Stockwright.Storage.Sqlite"));
        await using StockwrightContext context = new(options.Options);
        await context.GetService<IMigrator>().MigrateAsync("20261125095111_InitialTables", Stop);
        await context.Database.ExecuteSqlRawAsync(
            """
            INSERT INTO Kitchens (Id, Name, TimeZoneId, AltitudeMetres, MeasuredPressurePascals, RoomKelvins, HumidityFraction, TapWaterKelvins, OwnFilmFactor, Version)
            VALUES (1, 'Old kitchen', 'Europe/Berlin', 30, NULL, 294.15, 0.5, 285.15, NULL, 3);
            INSERT INTO Pots (KitchenId, Id, Name, BaseDiameterMetres, BrimDiameterMetres, InnerHeightMetres, Material, Kind, EmptyMassKilograms, Position, Version)
            VALUES (1, 'old-pot', 'Old pot', 0.24, 0.24, 0.22, 'StainlessSteel', 'Open', 1.9, 1, 7);
            INSERT INTO Plans (Id, KitchenId, Name, Note, RecipeName, PotName, Query, Snapshot, CreatedUtc, UpdatedUtc, Version)
            VALUES ('00000000-0000-0000-0000-000000000001', 1, 'Old plan', '', 'R', 'P', 'q=1', '[]', '2026-01-01 00:00:00', '2026-01-01 00:00:00', 1);
            """,
            Stop);
        Assert.Single(await context.Database.GetAppliedMigrationsAsync(Stop));
    }
}
