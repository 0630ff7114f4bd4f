using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Storage;
using Stockwright.Logbook;

namespace Stockwright.Storage.Batches;

/// <summary>An entry on its way into a log.</summary>
public sealed record NewEntry
{
    /// <summary>Made by the device: the same id delivered again is the same entry.</summary>
    public required Guid Id { get; init; }

    /// <summary>The batch.</summary>
    public required Guid BatchId { get; init; }

    /// <summary>When it happened, by the server's clock.</summary>
    public required DateTimeOffset HappenedAt { get; init; }

    /// <summary>Who says so.</summary>
    public required string Who { get; init; }

    /// <summary>How far the device's clock was ahead; null when it did not say.</summary>
    public TimeSpan? DeviceOffset { get; init; }

    /// <summary>IANA name of the device's time zone; empty when it did not say.</summary>
    public string DeviceZone { get; init; } = "";

    /// <summary>What happened.</summary>
    public required LogFact Fact { get; init; }

    /// <summary>Entry it replaces or takes back, or null.</summary>
    public Guid? Corrects { get; init; }

    /// <summary>Picture, with <see cref="LogFact.PhotoTaken"/>; null otherwise.</summary>
    public StoredPhoto? Photo { get; init; }
}

/// <summary>A picture as stored: JPEG without any data about place, device or time.</summary>
/// <param name="Jpeg">The file.</param>
/// <param name="Width">Pixels.</param>
/// <param name="Height">Pixels.</param>
public sealed record StoredPhoto(byte[] Jpeg, int Width, int Height);

/// <summary>What became of an entry that was sent.</summary>
public enum AppendStanding
{
    /// <summary>Stored now.</summary>
    Stored,

    /// <summary>It was stored before; this was a repeat.</summary>
    StoredBefore,

    /// <summary>Refused: its id belongs to an entry that says something else.</summary>
    IdInUse,

    /// <summary>Refused: there is no such batch.</summary>
    NoSuchBatch,

    /// <summary>Refused: another entry closed the record first.</summary>
    ClosedAlready,
}

/// <summary>Answer to an entry.</summary>
/// <param name="Standing">What became of it.</param>
/// <param name="Entry">The entry as it stands in the log; null when it was refused.</param>
public sealed record Appended(AppendStanding Standing, LogEntry? Entry);

/// <summary>
/// The logs of all batches. Entries are only added. What is answered as stored is on the disk: the write is one transaction,
/// flushed before it returns.
/// </summary>
public sealed class LogStore(IDbContextFactory<StockwrightContext> contexts, KitchenScope scope, TimeProvider time)
{
    private int Key => scope.KitchenId;

    /// <summary>Adds an entry, once however often it is sent.</summary>
    /// <exception cref="StorageTroubleException">It could not be stored; nothing of it was.</exception>
    public async Task<Appended> AppendAsync(NewEntry entry, CancellationToken cancellationToken = default)
    {
        ArgumentNullException.ThrowIfNull(entry);
        await using StockwrightContext context = await contexts.CreateDbContextAsync(cancellationToken);
        if (!await context.Batches.AnyAsync(batch => batch.KitchenId == Key && batch.Id == entry.BatchId, cancellationToken))
        {
            return new Appended(AppendStanding.NoSuchBatch, null);
        }

        if (await BeforeAsync(context, entry, cancellationToken) is { } before)
        {
            return before;
        }

        // Takes the right to write at once (BEGIN IMMEDIATE), so that of many closings sent together one is first and the others see it.
        await using IDbContextTransaction? alone = entry.Fact.ClosesRecord ? await context.Database.BeginTransactionAsync(cancellationToken) : null;
        if (alone is not null && await IsClosedByAnotherAsync(context, entry, cancellationToken))
        {
            return await BeforeAsync(context, entry, cancellationToken) ?? new Appended(AppendStanding.ClosedAlready, null);
        }

        LogEntryEntity row = Row(entry, time.GetUtcNow());
        context.Add(row);
        if (entry.Photo is { } photo)
        {
            context.Add(new PhotoEntity { EntryId = entry.Id, Jpeg = photo.Jpeg, Width = photo.Width, Height = photo.Height });
        }

        try
        {
            await context.SaveChangesAsync(cancellationToken);
            if (alone is not null)
            {
                await alone.CommitAsync(cancellationToken);
            }
        }
        catch (DbUpdateException)
        {
            // Somebody else delivered it between the look and the write.
            context.ChangeTracker.Clear();
            if (await BeforeAsync(context, entry, cancellationToken) is { } meanwhile)
            {
                return meanwhile;
            }

            throw;
        }

        return new Appended(AppendStanding.Stored, await NumberedAsync(context, row, cancellationToken));
    }

    /// <summary>The whole log of a batch.</summary>
    public async Task<BatchLog> ReadAsync(Guid batchId, CancellationToken cancellationToken = default)
    {
        await using StockwrightContext context = await contexts.CreateDbContextAsync(cancellationToken);
        List<LogEntryEntity> rows = await Entries(context).AsNoTracking()
            .Where(row => row.BatchId == batchId).OrderBy(row => row.Sequence).ToListAsync(cancellationToken);
        return new BatchLog(rows.Select((row, index) => Entry(row, index + 1)));
    }

    /// <summary>The whole log of a batch, of which the beginning is known: only what was added is read.</summary>
    /// <param name="batchId">The batch.</param>
    /// <param name="known">Its log as it was read before, or an empty one.</param>
    /// <param name="cancellationToken">Ends the reading.</param>
    /// <returns><paramref name="known"/> itself when nothing was added.</returns>
    public async Task<BatchLog> ReadAsync(Guid batchId, BatchLog known, CancellationToken cancellationToken = default)
    {
        ArgumentNullException.ThrowIfNull(known);
        if (known.All is not [.., LogEntry last])
        {
            return await ReadAsync(batchId, cancellationToken);
        }

        await using StockwrightContext context = await contexts.CreateDbContextAsync(cancellationToken);
        List<LogEntryEntity> rows = await Entries(context).AsNoTracking()
            .Where(row => row.BatchId == batchId).OrderBy(row => row.Sequence).Skip(known.All.Count - 1).ToListAsync(cancellationToken);
        if (rows is not [LogEntryEntity first, ..] || first.Id != last.Id)
        {
            // Another file was put in the place of the database.
            return await ReadAsync(batchId, cancellationToken);
        }

        return rows.Count == 1 ? known : new BatchLog([.. known.All, .. rows.Skip(1).Select((row, index) => Entry(row, known.All.Count + index + 1))]);
    }

    /// <summary>How many entries a log has: it grows with every entry and never shrinks.</summary>
    public async Task<int> CountAsync(Guid batchId, CancellationToken cancellationToken = default)
    {
        await using StockwrightContext context = await contexts.CreateDbContextAsync(cancellationToken);
        return await Entries(context).CountAsync(row => row.BatchId == batchId, cancellationToken);
    }

    /// <summary>How many batches and entries the kitchen has in all: it grows with every one and never shrinks.</summary>
    public async Task<int> CountAllAsync(CancellationToken cancellationToken = default)
    {
        await using StockwrightContext context = await contexts.CreateDbContextAsync(cancellationToken);
        return await Entries(context).CountAsync(cancellationToken) + await context.Batches.CountAsync(batch => batch.KitchenId == Key, cancellationToken);
    }

    /// <summary>The picture of an entry; null when it has none.</summary>
    public async Task<StoredPhoto?> PhotoAsync(Guid entryId, CancellationToken cancellationToken = default)
    {
        await using StockwrightContext context = await contexts.CreateDbContextAsync(cancellationToken);
        IQueryable<LogEntryEntity> own = Entries(context);
        PhotoEntity? row = await context.Photos.AsNoTracking()
            .SingleOrDefaultAsync(photo => photo.EntryId == entryId && own.Any(entry => entry.Id == entryId), cancellationToken);
        return row is null ? null : new StoredPhoto(row.Jpeg, row.Width, row.Height);
    }

    /// <summary>Entries of the batches of this kitchen.</summary>
    private IQueryable<LogEntryEntity> Entries(StockwrightContext context) =>
        context.LogEntries.Where(row => context.Batches.Any(batch => batch.KitchenId == Key && batch.Id == row.BatchId));

    private static async Task<bool> IsClosedByAnotherAsync(StockwrightContext context, NewEntry entry, CancellationToken cancellationToken)
    {
        List<LogEntryEntity> rows = await context.LogEntries.AsNoTracking()
            .Where(row => row.BatchId == entry.BatchId).OrderBy(row => row.Sequence).ToListAsync(cancellationToken);
        return new BatchLog(rows.Select((row, index) => Entry(row, index + 1))).Closing is { } closing && closing.Id != entry.Corrects;
    }

    private static async Task<Appended?> BeforeAsync(StockwrightContext context, NewEntry entry, CancellationToken cancellationToken)
    {
        LogEntryEntity? row = await context.LogEntries.AsNoTracking().SingleOrDefaultAsync(stored => stored.Id == entry.Id, cancellationToken);
        if (row is null)
        {
            return null;
        }

        // The moment may differ: it was put right by the device's clock at the time of each sending.
        bool same = row.BatchId == entry.BatchId
            && row.Corrects == entry.Corrects
            && string.Equals(row.Kind, FactDocument.Word(entry.Fact), StringComparison.Ordinal)
            && string.Equals(row.Body, FactDocument.Write(entry.Fact), StringComparison.Ordinal);
        return same
            ? new Appended(AppendStanding.StoredBefore, await NumberedAsync(context, row, cancellationToken))
            : new Appended(AppendStanding.IdInUse, null);
    }

    private static async Task<LogEntry> NumberedAsync(StockwrightContext context, LogEntryEntity row, CancellationToken cancellationToken) =>
        Entry(row, await context.LogEntries.CountAsync(other => other.BatchId == row.BatchId && other.Sequence <= row.Sequence, cancellationToken));

    private static LogEntryEntity Row(NewEntry entry, DateTimeOffset now) => new()
    {
        Id = entry.Id,
        BatchId = entry.BatchId,
        HappenedUtc = entry.HappenedAt.UtcDateTime,
        ReceivedUtc = now.UtcDateTime,
        Who = entry.Who,
        DeviceOffsetSeconds = entry.DeviceOffset?.TotalSeconds,
        DeviceZone = entry.DeviceZone,
        Kind = FactDocument.Word(entry.Fact),
        Body = FactDocument.Write(entry.Fact),
        Corrects = entry.Corrects,
    };

    private static LogEntry Entry(LogEntryEntity row, int number) => new()
    {
        Id = row.Id,
        Number = number,
        HappenedAt = UtcMoment.Of(row.HappenedUtc),
        ReceivedAt = UtcMoment.Of(row.ReceivedUtc),
        Who = row.Who,
        DeviceOffset = row.DeviceOffsetSeconds is { } seconds ? TimeSpan.FromSeconds(seconds) : null,
        DeviceZone = row.DeviceZone,
        Fact = Fact(row),
        Corrects = row.Corrects,
    };

    /// <summary>A fact of a newer version is shown as a remark rather than lost with its whole log.</summary>
    private static LogFact Fact(LogEntryEntity row)
    {
        try
        {
            return FactDocument.Read(row.Kind, row.Body);
        }
        catch (FactFormatException)
        {
            return new LogFact.Noted($"[{row.Kind}] {row.Body}");
        }
    }
}
