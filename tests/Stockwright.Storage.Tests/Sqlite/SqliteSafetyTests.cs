using System.Globalization;
using Microsoft.Data.Sqlite;
using Stockwright.Storage.Tests.Contract;
using Xunit;

namespace Stockwright.Storage.Tests.Sqlite;

/// <summary>
/// A start never takes a lost, foreign, damaged or mixed-up database for a good one. What SQLite itself does with an empty file, and
/// with a write-ahead log beside the wrong file: SQLite documentation, "How To Corrupt An SQLite Database File", 1.4, and "WAL-mode File Format".
/// </summary>
public sealed class SqliteSafetyTests
{
    private const long OurApplicationId = 0x53746B77;

    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    [Theory]
    [InlineData("keys/key-1.xml", true)]
    [InlineData("keys/key-1.xml", false)]
    [InlineData("stockwright-2026-03-01.db", true)]
    [InlineData("stockwright.db-wal", true)]
    public async Task An_empty_or_missing_file_is_refused_where_something_says_that_there_was_one(string trace, bool isThere)
    {
        await using SqliteTestDatabase database = new();
        string left = Path.Combine(database.Folder, trace);
        Directory.CreateDirectory(Path.GetDirectoryName(left)!);
        await File.WriteAllTextAsync(left, "left over", Stop);
        if (isThere)
        {
            await File.WriteAllBytesAsync(database.File, [], Stop);
        }

        StorageTroubleException trouble = await Assert.ThrowsAsync<StorageTroubleException>(() => database.StartAsync());
        Assert.Contains(isThere ? "is empty" : "is missing", trouble.Message, StringComparison.Ordinal);
        Assert.DoesNotContain('\n', trouble.Message);
        Assert.Equal(isThere ? 0L : null, File.Exists(database.File) ? new FileInfo(database.File).Length : (long?)null);
        Assert.Equal("left over", await File.ReadAllTextAsync(left, Stop));
    }

    [Fact]
    public async Task A_database_deleted_after_the_first_start_is_missed()
    {
        await using SqliteTestDatabase database = new();
        await database.StartAsync();
        await database.StopAsync();
        File.Delete(database.File);
        Assert.Contains("is missing", (await Assert.ThrowsAsync<StorageTroubleException>(() => database.StartAsync())).Message, StringComparison.Ordinal);

        // A database without a single table is as empty as a file without a byte.
        await RunAsync(database.File, "CREATE TABLE x (y); DROP TABLE x");
        Assert.Contains("is empty", (await Assert.ThrowsAsync<StorageTroubleException>(() => database.StartAsync())).Message, StringComparison.Ordinal);
    }

    [Fact]
    public async Task An_empty_file_in_a_fresh_folder_becomes_the_database()
    {
        await using SqliteTestDatabase database = new();
        Directory.CreateDirectory(database.Folder);
        await File.WriteAllBytesAsync(database.File, [], Stop);
        Assert.True(await database.StartAsync());
    }

    [Theory]
    [InlineData("CREATE TABLE Shopping (Item TEXT)")]
    [InlineData("PRAGMA application_id = 252006674")]
    [InlineData("CREATE TABLE \"__EFMigrationsHistory\" (\"MigrationId\" TEXT NOT NULL PRIMARY KEY, \"ProductVersion\" TEXT NOT NULL); INSERT INTO \"__EFMigrationsHistory\" VALUES ('20200101000000_Blog', '9.0.0')")]
    public async Task A_database_of_another_program_is_left_alone(string sql)
    {
        await using SqliteTestDatabase database = new();
        Directory.CreateDirectory(database.Folder);
        await RunAsync(database.File, sql);
        byte[] before = await File.ReadAllBytesAsync(database.File, Stop);
        StorageTroubleException trouble = await Assert.ThrowsAsync<StorageTroubleException>(() => database.StartAsync());
        Assert.Contains("another program", trouble.Message, StringComparison.Ordinal);
        SqliteConnection.ClearAllPools();
        Assert.Equal(before, await File.ReadAllBytesAsync(database.File, Stop));
    }

    [Fact]
    public async Task A_database_of_an_earlier_version_is_taken_over_and_marked_as_ours()
    {
        await using SqliteTestDatabase database = new();
        await database.StartAsync();
        await database.StopAsync();
        foreach (string note in Directory.EnumerateFiles(database.Folder).Where(file => !string.Equals(file, database.File, StringComparison.Ordinal)))
        {
            File.Delete(note);
        }

        await RunAsync(database.File, "PRAGMA application_id = 0; PRAGMA user_version = 0");
        Assert.False(await database.StartAsync());
        await database.StopAsync();
        Assert.Equal(OurApplicationId, await ScalarAsync(database.File, "PRAGMA application_id"));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(60_000_000)]
    public async Task Damage_in_the_middle_is_found_at_the_start(int photo)
    {
        await using SqliteTestDatabase database = new();
        await WithPhotoAsync(database, photo);
        await DamageAsync(database.File, await ScalarAsync(database.File, "SELECT rootpage FROM sqlite_master WHERE name = 'Pots'"));
        StorageTroubleException trouble = await Assert.ThrowsAsync<StorageTroubleException>(() => database.StartAsync());
        Assert.Contains("is damaged", trouble.Message, StringComparison.Ordinal);
        Assert.DoesNotContain('\n', trouble.Message);
    }

    [Fact]
    public async Task Damage_among_the_pictures_of_a_large_file_is_found_while_it_is_in_use()
    {
        await using SqliteTestDatabase database = new();
        await WithPhotoAsync(database, 60_000_000);
        await database.StartAsync();
        Assert.Null(await database.Database.FindDamageAsync(Stop));
        await database.StopAsync();
        await DamageAsync(database.File, await ScalarAsync(database.File, "PRAGMA page_count") - 100);
        await database.StartAsync();
        Assert.NotNull(await database.Database.FindDamageAsync(Stop));
        StorageTroubleException trouble = await Assert.ThrowsAsync<StorageTroubleException>(() => database.Database.BackupAsync(Path.Combine(database.Folder, "b", "x.db"), Stop));
        Assert.Contains("damaged", trouble.Message, StringComparison.Ordinal);
        Assert.Equal([], Directory.EnumerateFileSystemEntries(Path.Combine(database.Folder, "b")), StringComparer.Ordinal);
    }

    [Fact]
    public async Task Only_the_owner_may_read_the_data()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "Windows has no such rights.");
        await using SqliteTestDatabase database = new();
        await database.StartAsync();
        Guid batch = await StartedBatches.StartAsync(database);
        Assert.NotEqual(Guid.Empty, batch);
        Assert.Equal("700", Rights(database.Folder));
        string[] files = [.. Directory.EnumerateFiles(database.Folder)];
        Assert.Contains(database.File + "-wal", files, StringComparer.Ordinal);
        Assert.Equal([], files.Where(file => Rights(file) is not "600"), StringComparer.Ordinal);

        // As an earlier version left them.
        await database.StopAsync();
        string key = Path.Combine(database.Folder, "keys", "key-1.xml");
        Directory.CreateDirectory(Path.GetDirectoryName(key)!);
        await File.WriteAllTextAsync(key, "<key/>", Stop);
        Open(database.Folder, "755");
        Open(Path.GetDirectoryName(key)!, "755");
        Open(key, "644");
        Open(database.File, "644");
        await database.StartAsync();
        Assert.Equal(["700", "700", "600", "600"], new[] { database.Folder, Path.GetDirectoryName(key)!, key, database.File }.Select(Rights), StringComparer.Ordinal);
    }

    [Fact]
    public async Task A_folder_that_holds_other_things_keeps_its_rights()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "Windows has no such rights.");
        await using SqliteTestDatabase database = new();
        Directory.CreateDirectory(Path.Combine(database.Folder, "photos of the dog"));
        Open(database.Folder, "755");
        await database.StartAsync();
        Assert.Equal("755", Rights(database.Folder));
        Assert.Equal("600", Rights(database.File));
    }

    private static async Task WithPhotoAsync(SqliteTestDatabase database, int bytes)
    {
        await database.StartAsync();
        await database.StopAsync();
        if (bytes > 0)
        {
            await RunAsync(database.File, $"PRAGMA foreign_keys = OFF; INSERT INTO Photos VALUES ('x', zeroblob({bytes}), 1, 1)");
        }
    }

    private static async Task DamageAsync(string file, long page)
    {
        long size = await ScalarAsync(file, "PRAGMA page_size");
        await using FileStream stream = new(file, FileMode.Open, FileAccess.Write);
        stream.Position = (page - 1) * size;
        stream.Write(Enumerable.Repeat((byte)0xA5, (int)size).ToArray());
    }

    internal static async Task RunAsync(string file, string sql) => await ScalarAsync(file, sql);

    internal static async Task<long> ScalarAsync(string file, string sql)
    {
        await using SqliteConnection connection = new($"Data Source={file};Pooling=False");
        await connection.OpenAsync(Stop);
        await using SqliteCommand command = connection.CreateCommand();
        command.CommandText = sql;
        return Convert.ToInt64(await command.ExecuteScalarAsync(Stop), CultureInfo.InvariantCulture);
    }

    internal static string Rights(string path) =>
        OperatingSystem.IsWindows() ? "" : Convert.ToString((int)File.GetUnixFileMode(path), 8);

    private static void Open(string path, string rights)
    {
        if (!OperatingSystem.IsWindows())
        {
            File.SetUnixFileMode(path, (UnixFileMode)Convert.ToInt32(rights, 8));
        }
    }
}
