using Microsoft.EntityFrameworkCore;

namespace Stockwright.Storage.Sqlite;

/// <summary>The database file: made, migrated and backed up.</summary>
internal sealed class SqliteDatabase(string folder, IDbContextFactory<StockwrightContext> contexts, TimeProvider time) : IStockwrightDatabase
{
    private static readonly TimeSpan LongestWait = TimeSpan.FromSeconds(30);

    /// <summary>Up to here every page is read before the first answer: under a second even from a slow disk (docs/operating.md).</summary>
    private const long LargestCheckedAtStart = 48 * 1024 * 1024;

    private readonly DatabaseFile file = new(folder);
    private bool isCheckedWhole;

    public string Place => folder;

    public async Task PrepareAsync(CancellationToken cancellationToken = default)
    {
        try
        {
            FileRights.MakeFolder(folder);
            await using FileStream alone = await WaitForLockAsync(cancellationToken);
            file.Tighten();
            file.Inspect();
            await using StockwrightContext context = await contexts.CreateDbContextAsync(cancellationToken);
            await context.Database.OpenConnectionAsync(cancellationToken);
            await MigrateAsync(context, cancellationToken);
            await DrawGenerationAsync(context, cancellationToken);
        }
        catch (Exception trouble) when (SqliteTrouble.Behind(trouble) is { } cause && SqliteTrouble.Explain(cause, $"\"{folder}\"") is { } message)
        {
            throw new StorageTroubleException(message, trouble);
        }
        catch (UnauthorizedAccessException trouble)
        {
            throw new StorageTroubleException(
                $"This program may not write in the data folder \"{folder}\". Give it the right to, or name another folder in STOCKWRIGHT_DATA.", trouble);
        }
        catch (IOException trouble)
        {
            throw new StorageTroubleException(
                $"The data folder \"{folder}\" cannot be used: {trouble.Message} Check the folder and the disk, or name another folder in STOCKWRIGHT_DATA.", trouble);
        }
    }

    public async Task<string?> FindDamageAsync(CancellationToken cancellationToken = default)
    {
        if (isCheckedWhole)
        {
            return null;
        }

        await using StockwrightContext context = await contexts.CreateDbContextAsync(cancellationToken);
        await context.Database.OpenConnectionAsync(cancellationToken);
        return await DatabaseContent.DamageAsync(context, withPhotos: true, cancellationToken);
    }

    public Task<long> BackupAsync(string file, CancellationToken cancellationToken = default) =>
        new DatabaseBackup(this.file, contexts).WriteAsync(file, cancellationToken);

    private async Task MigrateAsync(StockwrightContext context, CancellationToken cancellationToken)
    {
        DatabaseContent content = await DatabaseContent.ReadAsync(context, cancellationToken);
        HashSet<string> known = [.. context.Database.GetMigrations()];
        HashSet<string> applied = content.HasHistory ? [.. await context.Database.GetAppliedMigrationsAsync(cancellationToken)] : [];
        if (content.IsForeign || (content.Program == 0 && applied.Count > 0 && !applied.Overlaps(known)))
        {
            throw new StorageTroubleException(
                $"The database \"{file.Path}\" belongs to another program; it was left alone. Put a backup of ours in its place, or name another folder in STOCKWRIGHT_DATA.");
        }

        if (applied.Count == 0 && file.WasHereBefore)
        {
            throw file.Lost("is empty");
        }

        if (applied.Except(known, StringComparer.Ordinal).Any())
        {
            throw new StorageTroubleException(
                $"The database in \"{folder}\" was written by a newer version of Stockwright. Start that version, or name another folder in STOCKWRIGHT_DATA.");
        }

        // A table that a later migration makes is not there to be checked yet.
        isCheckedWhole = !applied.IsSupersetOf(known) || new FileInfo(file.Path).Length <= LargestCheckedAtStart;
        if (applied.Count > 0 && await DatabaseContent.DamageAsync(context, isCheckedWhole, cancellationToken) is { } damage)
        {
            throw new StorageTroubleException(
                $"The database in \"{folder}\" is damaged ({damage}). Put a backup in its place, or name another folder in STOCKWRIGHT_DATA.");
        }

        // EF sets write-ahead logging only on a file it creates; a restored backup comes without.
        await context.Database.ExecuteSqlRawAsync("PRAGMA journal_mode = WAL;", cancellationToken);
        if (!applied.SetEquals(known))
        {
            await DropAbandonedLockAsync(context, cancellationToken);
            await context.Database.MigrateAsync(cancellationToken);
        }

        if (content.Program != DatabaseFile.ApplicationId)
        {
            await DatabaseContent.RunAsync(context, $"PRAGMA application_id = {DatabaseFile.ApplicationId}", cancellationToken);
        }
    }

    /// <summary>
    /// Makes this copy of the database another than every backup taken of it before, so that a write-ahead log left by a crash is
    /// never played into one of those. Runs after the migrations: they change the mark too.
    /// </summary>
    private async Task DrawGenerationAsync(StockwrightContext context, CancellationToken cancellationToken)
    {
        // Until the first checkpoint the file may have no header to tell apart.
        await context.Database.ExecuteSqlRawAsync("PRAGMA wal_checkpoint(PASSIVE);", cancellationToken);
        int generation = DatabaseFile.NewGeneration();
        file.NoteComing(generation);
        await DatabaseContent.RunAsync(context, $"PRAGMA user_version = {generation}", cancellationToken);
        await context.Database.ExecuteSqlRawAsync("PRAGMA wal_checkpoint(PASSIVE);", cancellationToken);
        file.NoteArrived(generation);
    }

    /// <summary>
    /// EF's own lock is a row that a killed program leaves behind, and the next start would wait for it for ever.
    /// We hold the lock file, which the operating system frees with its process, so any such row is abandoned.
    /// </summary>
    private static async Task DropAbandonedLockAsync(StockwrightContext context, CancellationToken cancellationToken)
    {
        List<string> tables = await context.Database
            .SqlQuery<string>($"SELECT name AS Value FROM sqlite_master WHERE type = 'table' AND name = '__EFMigrationsLock'")
            .ToListAsync(cancellationToken);
        if (tables.Count > 0)
        {
            await context.Database.ExecuteSqlRawAsync("DELETE FROM \"__EFMigrationsLock\";", cancellationToken);
        }
    }

    private async Task<FileStream> WaitForLockAsync(CancellationToken cancellationToken)
    {
        long started = time.GetTimestamp();
        while (true)
        {
            try
            {
                return FileRights.Open(file.LockPath, FileMode.OpenOrCreate, FileShare.None);
            }
            catch (IOException trouble) when (IsHeldByAnother(trouble) && time.GetElapsedTime(started) < LongestWait)
            {
                await Task.Delay(TimeSpan.FromMilliseconds(100), time, cancellationToken);
            }
        }
    }

    /// <summary>A disk that is read-only or broken is no reason to wait: only EAGAIN (Linux, macOS) and a sharing violation (Windows) are.</summary>
    private static bool IsHeldByAnother(IOException trouble) => trouble.HResult is 11 or 35 or unchecked((int)0x80070020);
}
