using Microsoft.Data.Sqlite;
using Stockwright.Logbook;
using Stockwright.Storage.Tests.Contract;
using Xunit;

namespace Stockwright.Storage.Tests.Sqlite;

/// <summary>After a crash the write-ahead log is played in, and never into another file; a backup is taken from what is there, whole.</summary>
public sealed class SqliteCrashTests
{
    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    [Fact]
    public async Task After_a_crash_the_log_is_played_in()
    {
        await using SqliteTestDatabase database = new();
        Guid batch = await CrashedAsync(database, [], null);
        await database.StartAsync();
        Assert.Equal(["before", "after"], await NotesAsync(database, batch), StringComparer.Ordinal);

        // Also where the whole folder was moved to another machine.
        await using SqliteTestDatabase moved = new();
        Directory.CreateDirectory(moved.Folder);
        batch = await CrashedAsync(database, [], null);
        foreach (string file in Directory.EnumerateFiles(database.Folder))
        {
            File.Copy(file, Path.Combine(moved.Folder, Path.GetFileName(file)));
        }

        await moved.StartAsync();
        Assert.Equal(["before", "after"], await NotesAsync(moved, batch), StringComparer.Ordinal);
    }

    [Theory]
    [InlineData("backup")]
    [InlineData("by hand")]
    [InlineData("earlier run")]
    [InlineData("copied over")]
    public async Task A_database_put_back_beside_an_old_log_is_refused_until_the_log_is_moved_away(string how)
    {
        await using SqliteTestDatabase database = new();
        string copy = Path.Combine(Path.GetTempPath(), $"stockwright-test-{Guid.NewGuid():N}.db");
        try
        {
            Guid batch = await CrashedAsync(database, [how], copy);
            await using (FileStream target = new(database.File, FileMode.Create, FileAccess.Write))
            {
                await using FileStream source = File.OpenRead(copy);
                await source.CopyToAsync(target, Stop);
            }

            if (how is "copied over")
            {
                // Copied while the program ran, against the advice: nothing in the file tells it apart, but a program at work writes its log last.
                File.SetLastWriteTimeUtc(database.File, File.GetLastWriteTimeUtc(database.File + "-wal").AddMinutes(5));
            }

            byte[] log = await File.ReadAllBytesAsync(database.File + "-wal", Stop);
            StorageTroubleException trouble = await Assert.ThrowsAsync<StorageTroubleException>(() => database.StartAsync());
            Assert.Contains("stockwright.db-wal", trouble.Message, StringComparison.Ordinal);
            StorageTroubleException backup = await Assert.ThrowsAsync<StorageTroubleException>(() => database.Database.BackupAsync(copy + "2", Stop));
            Assert.Contains("stockwright.db-wal", backup.Message, StringComparison.Ordinal);
            SqliteConnection.ClearAllPools();
            Assert.Equal(log, await File.ReadAllBytesAsync(database.File + "-wal", Stop));

            File.Delete(database.File + "-wal");
            File.Delete(database.File + "-shm");
            await database.StartAsync();
            Assert.Equal(how is "copied over" or "earlier run" ? [] : ["before"], await NotesAsync(database, batch), StringComparer.Ordinal);
        }
        finally
        {
            File.Delete(copy);
        }
    }

    [Fact]
    public async Task A_backup_needs_a_database_and_leaves_nothing_else_behind()
    {
        await using SqliteTestDatabase database = new();
        string target = Path.Combine(database.Folder, "backups", "stock.db");
        await database.StartAsync();
        Assert.True(await database.Database.BackupAsync(target, Stop) > 4096);
        Assert.Equal([target], Directory.EnumerateFileSystemEntries(Path.GetDirectoryName(target)!), StringComparer.Ordinal);
        if (!OperatingSystem.IsWindows())
        {
            Assert.Equal("600", SqliteSafetyTests.Rights(target));
        }

        SqliteConnection.ClearAllPools();
        foreach (string file in Directory.EnumerateFiles(database.Folder))
        {
            File.Delete(file);
        }

        StorageTroubleException trouble = await Assert.ThrowsAsync<StorageTroubleException>(() => database.Database.BackupAsync(target + "2", Stop));
        Assert.Contains("no database", trouble.Message, StringComparison.Ordinal);
        Assert.Equal([], Directory.EnumerateFiles(database.Folder), StringComparer.Ordinal);
    }

    /// <summary>
    /// A folder as a killed program leaves it: an entry in the file, a copy taken of it, another entry in the log beside it. The files are
    /// copied while they are open, for a connection that is closed tidies up.
    /// </summary>
    private static async Task<Guid> CrashedAsync(SqliteTestDatabase database, string[] how, string? copy)
    {
        await using SqliteTestDatabase running = new();
        await running.StartAsync();
        Guid batch = await StartedBatches.StartAsync(running);
        if (how is ["earlier run"] or ["copied over"])
        {
            if (how is ["earlier run"])
            {
                // The second start draws another generation.
                await running.StopAsync();
                File.Copy(running.File, copy!);
                await running.StartAsync();
            }
            else
            {
                await SqliteSafetyTests.RunAsync(running.File, "PRAGMA wal_checkpoint(TRUNCATE)");
                File.Copy(running.File, copy!);
            }
        }

        // Another test that clears all pools would else close the last connection, and with it the log.
        await using SqliteConnection holds = new($"Data Source={running.File};Pooling=False");
        await holds.OpenAsync(Stop);
        await using (SqliteCommand reads = holds.CreateCommand())
        {
            reads.CommandText = "SELECT count(*) FROM Batches";
            await reads.ExecuteScalarAsync(Stop);
        }

        await running.Logs.AppendAsync(StartedBatches.Entry(running, batch, new LogFact.Noted("before")), Stop);
        if (how is ["backup"])
        {
            await running.Database.BackupAsync(copy!, Stop);
        }
        else if (how is ["by hand"])
        {
            await SqliteSafetyTests.RunAsync(running.File, $"VACUUM INTO '{copy}'");
        }

        await running.Logs.AppendAsync(StartedBatches.Entry(running, batch, new LogFact.Noted("after")), Stop);
        if (Directory.Exists(database.Folder))
        {
            Directory.Delete(database.Folder, recursive: true);
        }

        Directory.CreateDirectory(database.Folder);
        foreach (string file in Directory.EnumerateFiles(running.Folder).Where(file => !file.EndsWith("-shm", StringComparison.Ordinal)))
        {
            File.Copy(file, Path.Combine(database.Folder, Path.GetFileName(file)));
        }

        Assert.True(new FileInfo(database.File + "-wal").Length > 0);
        return batch;
    }

    /// <summary>A database that was stopped, with one picture of so many bytes in it.</summary>
    private static async Task<IEnumerable<string>> NotesAsync(SqliteTestDatabase database, Guid batch) =>
        [.. (await database.Logs.ReadAsync(batch, Stop)).Of<LogFact.Noted>().Select(note => note.Fact.Text)];
}
