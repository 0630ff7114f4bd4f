using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Stockwright.Logbook;
using Stockwright.Storage.Tests.Contract;
using Xunit;

namespace Stockwright.Storage.Tests.Sqlite;

/// <summary>A full disk, a read-only one, a busy file: said in plain words, and nothing is answered as stored that was not.</summary>
public sealed class SqliteTroubleTests
{
    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    [Fact]
    public async Task On_a_full_disk_nothing_is_acknowledged_that_was_not_stored()
    {
        using SmallDisk disk = SmallDisk.Mount(4);
        await using SqliteTestDatabase database = new(Path.Combine(disk.Folder, "data"));
        await database.StartAsync();
        Guid batch = await StartedBatches.StartAsync(database);
        List<Guid> acknowledged = [];
        NewEntry? refused = null;

        // The disk fills a little before the entries do, so that the end is met in the middle of some write, wherever that is.
        disk.Fill();
        for (int index = 0; index < 2000 && refused is null; index++)
        {
            NewEntry entry = StartedBatches.Entry(database, batch, new LogFact.Noted(new string('x', 300)));
            try
            {
                Assert.Equal(AppendStanding.Stored, (await database.Logs.AppendAsync(entry, Stop)).Standing);
                acknowledged.Add(entry.Id);
            }
            catch (StorageTroubleException trouble)
            {
                Assert.Contains("Nothing was saved", trouble.Message, StringComparison.Ordinal);
                Assert.Contains("full", trouble.Message, StringComparison.Ordinal);
                refused = entry;
            }
        }

        Assert.NotNull(refused);
        Assert.Equal(acknowledged, (await database.Logs.ReadAsync(batch, Stop)).All.Select(entry => entry.Id));

        disk.MakeRoom();
        Assert.Equal(AppendStanding.Stored, (await database.Logs.AppendAsync(refused, Stop)).Standing);
        await database.StartAsync();
        Assert.Equal([.. acknowledged, refused.Id], (await database.Logs.ReadAsync(batch, Stop)).All.Select(entry => entry.Id));
    }

    [Fact]
    public async Task A_picture_that_finds_no_room_leaves_no_entry_behind()
    {
        using SmallDisk disk = SmallDisk.Mount(4);
        await using SqliteTestDatabase database = new(Path.Combine(disk.Folder, "data"));
        await database.StartAsync();
        Guid batch = await StartedBatches.StartAsync(database);
        NewEntry entry = StartedBatches.Entry(database, batch, new LogFact.PhotoTaken()) with { Photo = new StoredPhoto(new byte[5_000_000], 1600, 1200) };
        StorageTroubleException trouble = await Assert.ThrowsAsync<StorageTroubleException>(() => database.Logs.AppendAsync(entry, Stop));
        Assert.Contains("full", trouble.Message, StringComparison.Ordinal);
        Assert.Empty((await database.Logs.ReadAsync(batch, Stop)).All);
    }

    [Fact]
    public async Task A_disk_gone_read_only_is_said_so_at_work_and_at_the_start()
    {
        using SmallDisk disk = SmallDisk.Mount(4);
        await using SqliteTestDatabase database = new(Path.Combine(disk.Folder, "data"));
        await database.StartAsync();
        Guid batch = await StartedBatches.StartAsync(database);
        NewEntry entry = StartedBatches.Entry(database, batch, new LogFact.Skimmed());

        // As Linux does with a disk that reports errors: it is mounted anew, read-only.
        SqliteConnection.ClearAllPools();
        disk.MakeReadOnly();
        StorageTroubleException trouble = await Assert.ThrowsAsync<StorageTroubleException>(() => database.Logs.AppendAsync(entry, Stop));
        Assert.Matches("read-only|cannot be opened", trouble.Message);
        StorageTroubleException reading = await Assert.ThrowsAsync<StorageTroubleException>(() => database.Logs.ReadAsync(batch, Stop));
        Assert.Matches("read-only|cannot be opened", reading.Message);
        StorageTroubleException starting = await Assert.ThrowsAsync<StorageTroubleException>(() => database.StartAsync());
        Assert.Contains(database.Folder, starting.Message, StringComparison.Ordinal);

        disk.MakeWritable();
        await database.StartAsync();
        Assert.Empty((await database.Logs.ReadAsync(batch, Stop)).All);
        Assert.Equal(AppendStanding.Stored, (await database.Logs.AppendAsync(entry, Stop)).Standing);
    }

    /// <summary>Where no disk can be mounted: SQLite's own answer (result code 8) on a connection told to be read-only.</summary>
    [Fact]
    public async Task A_read_only_database_is_said_in_plain_words()
    {
        await using SqliteTestDatabase database = new();
        await database.StartAsync();
        Guid batch = await StartedBatches.StartAsync(database);
        await using StockwrightContext context = await database.Contexts.CreateDbContextAsync(Stop);
        await context.Database.OpenConnectionAsync(Stop);
        await context.Database.ExecuteSqlRawAsync("PRAGMA query_only = 1", Stop);
        StorageTroubleException trouble = await Assert.ThrowsAsync<StorageTroubleException>(
            () => context.Kitchens.ExecuteUpdateAsync(row => row.SetProperty(kitchen => kitchen.Name, "x"), Stop));
        Assert.Contains("read-only", trouble.Message, StringComparison.Ordinal);
        Assert.Empty((await database.Logs.ReadAsync(batch, Stop)).All);
    }

    [Fact]
    public async Task A_file_that_another_program_holds_is_reported_after_some_seconds()
    {
        await using SqliteTestDatabase database = new();
        await database.StartAsync();
        Guid batch = await StartedBatches.StartAsync(database);
        await using SqliteConnection hog = new($"Data Source={database.File};Pooling=False");
        await hog.OpenAsync(Stop);
        await using SqliteCommand hold = hog.CreateCommand();
        hold.CommandText = "BEGIN IMMEDIATE";
        await hold.ExecuteNonQueryAsync(Stop);

        long asked = TimeProvider.System.GetTimestamp();
        NewEntry alone = StartedBatches.Entry(database, batch, new LogFact.Skimmed());
        NewEntry together = StartedBatches.Entry(database, batch, new LogFact.PhotoTaken()) with { Photo = new StoredPhoto([1], 1, 1) };
        StorageTroubleException[] troubles = await Task.WhenAll(
            Task.Run(() => Assert.ThrowsAsync<StorageTroubleException>(() => database.Logs.AppendAsync(alone, Stop)), Stop),
            Task.Run(() => Assert.ThrowsAsync<StorageTroubleException>(() => database.Logs.AppendAsync(together, Stop)), Stop));

        // Five seconds by SQLite, and once more at most by the library that calls it; never the thirty it would wait by itself.
        Assert.InRange(TimeProvider.System.GetElapsedTime(asked).TotalSeconds, 4, 15);
        Assert.All(troubles, trouble => Assert.Contains("busy", trouble.Message, StringComparison.Ordinal));

        // Reading goes on meanwhile: nothing half-written is there.
        Assert.Empty((await database.Logs.ReadAsync(batch, Stop)).All);
        hold.CommandText = "ROLLBACK";
        await hold.ExecuteNonQueryAsync(Stop);
        Assert.Equal(AppendStanding.Stored, (await database.Logs.AppendAsync(alone, Stop)).Standing);
    }
}
