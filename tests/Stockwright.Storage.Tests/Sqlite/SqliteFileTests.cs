using System.Globalization;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Stockwright.Recipes;
using Xunit;

namespace Stockwright.Storage.Tests.Sqlite;

/// <summary>What only a database in a file can get wrong.</summary>
public sealed class SqliteFileTests
{
    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    [Fact]
    public async Task The_migrations_make_the_tables_the_model_wants()
    {
        await using SqliteTestDatabase database = new();
        await database.StartAsync();
        await using StockwrightContext context = await database.Contexts.CreateDbContextAsync(Stop);
        Assert.False(context.Database.HasPendingModelChanges());
        Assert.Empty(await context.Database.GetPendingMigrationsAsync(Stop));
    }

    [Fact]
    public async Task A_connection_logs_ahead_flushes_every_commit_checks_keys_and_waits_for_others()
    {
        await using SqliteTestDatabase database = new();
        await database.StartAsync();
        Assert.Equal("wal", await PragmaAsync(database, "journal_mode"));
        Assert.Equal("2", await PragmaAsync(database, "synchronous"));
        Assert.Equal("1", await PragmaAsync(database, "foreign_keys"));
        Assert.Equal("5000", await PragmaAsync(database, "busy_timeout"));
    }

    [Fact]
    public async Task A_file_without_write_ahead_logging_gets_it_at_the_next_start()
    {
        await using SqliteTestDatabase database = new();
        await database.StartAsync();
        await database.StopAsync();
        await RunAsync(database.File, "PRAGMA journal_mode = DELETE");
        await database.StartAsync();
        Assert.Equal("wal", await PragmaAsync(database, "journal_mode"));
    }

    [Fact]
    public async Task A_lock_row_left_by_a_killed_start_does_not_hold_up_the_next()
    {
        await using SqliteTestDatabase database = new();
        Directory.CreateDirectory(database.Folder);

        // The table and row that EF Core 10 leaves when it is killed while migrating.
        await RunAsync(
            database.File,
            """
            CREATE TABLE "__EFMigrationsLock" ("Id" INTEGER NOT NULL CONSTRAINT "PK___EFMigrationsLock" PRIMARY KEY, "Timestamp" TEXT NOT NULL);
            INSERT INTO "__EFMigrationsLock" VALUES (1, '2026-01-01 00:00:00');
            """);
        Assert.True(await database.StartAsync().WaitAsync(TimeSpan.FromSeconds(20), Stop));
    }

    [Fact]
    public async Task Two_programs_started_at_once_on_a_fresh_folder_both_come_up()
    {
        await using SqliteTestDatabase first = new();
        await using SqliteTestDatabase second = new(first.Folder);
        await Task.WhenAll(
            Task.Run(() => first.StartAsync(), Stop),
            Task.Run(() => second.StartAsync(), Stop));
        Assert.Equal(2, (await first.Kitchen.ReadAsync(Stop)).Pots.Count);
    }

    [Fact]
    public async Task A_database_of_a_newer_version_is_left_alone()
    {
        await using SqliteTestDatabase database = new();
        await database.StartAsync();
        await database.StopAsync();
        await RunAsync(database.File, "INSERT INTO \"__EFMigrationsHistory\" VALUES ('29990101000000_Later', '99.0.0')");
        StorageTroubleException trouble = await Assert.ThrowsAsync<StorageTroubleException>(() => database.StartAsync());
        Assert.Contains("newer version", trouble.Message, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_backup_taken_while_in_use_opens_and_holds_the_same()
    {
        await using SqliteTestDatabase database = new();
        await database.StartAsync();
        KeptKitchen kitchen = await database.Kitchen.ReadAsync(Stop);
        await database.Kitchen.SaveAsync(kitchen.Pots[0].Value with { Name = "Still in the log" }, kitchen.Pots[0].Version, Stop);
        await using SqliteTestDatabase restored = new();
        await database.Database.BackupAsync(restored.File, Stop);
        Assert.Equal(await DumpAsync(database.File), await DumpAsync(restored.File));
        Assert.False(await restored.StartAsync());
        Assert.Equal("Still in the log", (await restored.Kitchen.ReadAsync(Stop)).Pots[0].Value.Name);

        StorageTroubleException twice = await Assert.ThrowsAsync<StorageTroubleException>(() => database.Database.BackupAsync(restored.File, Stop));
        Assert.Contains("exists already", twice.Message, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_folder_that_cannot_be_made_is_named_in_the_message()
    {
        string file = Path.GetTempFileName();
        try
        {
            await using SqliteTestDatabase database = new(Path.Combine(file, "data"));
            StorageTroubleException trouble = await Assert.ThrowsAsync<StorageTroubleException>(() => database.StartAsync());
            Assert.Contains(file, trouble.Message, StringComparison.Ordinal);
            Assert.Contains("STOCKWRIGHT_DATA", trouble.Message, StringComparison.Ordinal);
        }
        finally
        {
            File.Delete(file);
        }
    }

    [Fact]
    public async Task A_read_only_folder_is_named_in_the_message()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows() || Environment.IsPrivilegedProcess, "Folder rights do not bind this user.");
        await using SqliteTestDatabase database = new();
        Directory.CreateDirectory(database.Folder);
        if (!OperatingSystem.IsWindows())
        {
            File.SetUnixFileMode(database.Folder, UnixFileMode.UserRead | UnixFileMode.UserExecute);
        }

        StorageTroubleException trouble = await Assert.ThrowsAsync<StorageTroubleException>(() => database.StartAsync());
        Assert.Contains("may not write", trouble.Message, StringComparison.Ordinal);
        if (!OperatingSystem.IsWindows())
        {
            File.SetUnixFileMode(database.Folder, UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute);
        }
    }

    [Fact]
    public async Task A_file_that_is_no_database_is_refused_and_not_overwritten()
    {
        await using SqliteTestDatabase database = new();
        Directory.CreateDirectory(database.Folder);
        string text = string.Concat(Enumerable.Repeat("shopping list\n", 100));
        await File.WriteAllTextAsync(database.File, text, Stop);
        StorageTroubleException trouble = await Assert.ThrowsAsync<StorageTroubleException>(() => database.StartAsync());
        Assert.Contains("damaged or is not one of ours", trouble.Message, StringComparison.Ordinal);
        Assert.Equal(text, await File.ReadAllTextAsync(database.File, Stop));
    }

    [Fact]
    public async Task A_full_disk_is_said_in_plain_words_and_nothing_is_half_saved()
    {
        await using SqliteTestDatabase database = new();
        await database.StartAsync();
        await using StockwrightContext context = await database.Contexts.CreateDbContextAsync(Stop);
        await context.Database.OpenConnectionAsync(Stop);

        // SQLite answers "full" (result code 13) at its page limit as it does at the end of a disk.
        await context.Database.ExecuteSqlRawAsync("PRAGMA max_page_count = 1", Stop);
        context.Recipes.Add(new OwnRecipeEntity { KitchenId = 1, Id = "r", Name = "r", Document = new string('x', 1_000_000) });
        StorageTroubleException trouble = await Assert.ThrowsAsync<StorageTroubleException>(() => context.SaveChangesAsync(Stop));
        Assert.Contains("Nothing was saved", trouble.Message, StringComparison.Ordinal);
        Assert.Contains("full", trouble.Message, StringComparison.Ordinal);
        Assert.Empty(await database.Recipes.ListAsync(Stop));
    }

    [Fact]
    public async Task A_damaged_recipe_does_not_take_the_others_with_it()
    {
        await using SqliteTestDatabase database = new();
        await database.StartAsync();
        await database.Recipes.AddAsync(StandardRecipes.Book.Recipes[0] with { Name = "Good" }, StandardRecipes.Book, cancellationToken: Stop);
        await database.Recipes.AddAsync(StandardRecipes.Book.Recipes[0] with { Name = "Bad" }, StandardRecipes.Book, cancellationToken: Stop);
        await RunAsync(database.File, "UPDATE Recipes SET Document = '{\"x\": 1}' WHERE Id = 'bad'");
        IReadOnlyList<OwnRecipe> recipes = await database.Recipes.ListAsync(Stop);
        Assert.Equal(["bad", "good"], recipes.Select(recipe => recipe.Id), StringComparer.Ordinal);
        Assert.NotNull(recipes[0].Trouble);
        Assert.NotNull(recipes[1].Recipe);
        Assert.True((await database.Recipes.BookAsync(StandardRecipes.Book, Stop)).TryFind("good", out _));
    }

    private static async Task<string> PragmaAsync(SqliteTestDatabase database, string name)
    {
        await using StockwrightContext context = await database.Contexts.CreateDbContextAsync(Stop);
        await context.Database.OpenConnectionAsync(Stop);
        await using var command = context.Database.GetDbConnection().CreateCommand();
        command.CommandText = $"PRAGMA {name}";
        return Convert.ToString(await command.ExecuteScalarAsync(Stop), CultureInfo.InvariantCulture)!;
    }

    private static async Task RunAsync(string file, string sql)
    {
        await using SqliteConnection connection = new($"Data Source={file};Pooling=False");
        await connection.OpenAsync(Stop);
        await using SqliteCommand command = connection.CreateCommand();
        command.CommandText = sql;
        await command.ExecuteNonQueryAsync(Stop);
    }

    private static async Task<string> DumpAsync(string file)
    {
        await using SqliteConnection connection = new($"Data Source={file};Pooling=False");
        await connection.OpenAsync(Stop);
        List<string> lines = [];
        foreach (string table in await RowsAsync(connection, "SELECT name FROM sqlite_master WHERE type = 'table' ORDER BY name"))
        {
            lines.Add(table);
            lines.AddRange(await RowsAsync(connection, $"SELECT * FROM \"{table}\" ORDER BY 1, 2"));
        }

        return string.Join('\n', lines);
    }

    private static async Task<List<string>> RowsAsync(SqliteConnection connection, string sql)
    {
        await using SqliteCommand command = connection.CreateCommand();
        command.CommandText = sql;
        await using SqliteDataReader reader = await command.ExecuteReaderAsync(Stop);
        List<string> rows = [];
        while (await reader.ReadAsync(Stop))
        {
            rows.Add(string.Join('|', Enumerable.Range(0, reader.FieldCount).Select(index => Convert.ToString(reader.GetValue(index), CultureInfo.InvariantCulture))));
        }

        return rows;
    }
}
