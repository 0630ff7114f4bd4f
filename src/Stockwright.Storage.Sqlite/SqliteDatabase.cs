using Microsoft.EntityFrameworkCore;

namespace Stockwright.Storage.Sqlite;

/// <summary>The database file: made, migrated and backed up.</summary>
internal sealed class SqliteDatabase(string folder, IDbContextFactory<StockwrightContext> contexts, TimeProvider time) : IStockwrightDatabase
{
    private const string LockFileName = "stockwright.lock";

    private static readonly TimeSpan LongestWait = TimeSpan.FromSeconds(30);

    public string Place => folder;

    public async Task PrepareAsync(CancellationToken cancellationToken = default)
    {
        try
        {
            Directory.CreateDirectory(folder);
            await using FileStream alone = await WaitForLockAsync(cancellationToken);
            await MigrateAsync(cancellationToken);
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

    public async Task BackupAsync(string file, CancellationToken cancellationToken = default)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(file);
        string target = Path.GetFullPath(file);
        if (File.Exists(target))
        {
            throw new StorageTroubleException($"The backup file \"{target}\" exists already. Name a new one.");
        }

        try
        {
            Directory.CreateDirectory(Path.GetDirectoryName(target)!);
            await using StockwrightContext context = await contexts.CreateDbContextAsync(cancellationToken);

            // Never a copy of the live file: its last writes may still stand in the write-ahead log.
            await context.Database.ExecuteSqlAsync($"VACUUM INTO {target}", cancellationToken);
        }
        catch (Exception trouble) when (SqliteTrouble.Behind(trouble) is { } cause)
        {
            throw new StorageTroubleException(
                SqliteTrouble.Explain(cause, $"\"{target}\"") ?? $"The backup \"{target}\" could not be written: {trouble.Message}", trouble);
        }
        catch (Exception trouble) when (trouble is IOException or UnauthorizedAccessException)
        {
            throw new StorageTroubleException($"The backup \"{target}\" could not be written: {trouble.Message}", trouble);
        }
    }

    private async Task MigrateAsync(CancellationToken cancellationToken)
    {
        await using StockwrightContext context = await contexts.CreateDbContextAsync(cancellationToken);

        // EF sets write-ahead logging only on a file it creates; a restored backup comes without.
        await context.Database.ExecuteSqlRawAsync("PRAGMA journal_mode = WAL;", cancellationToken);

        HashSet<string> known = [.. context.Database.GetMigrations()];
        HashSet<string> applied = [.. await context.Database.GetAppliedMigrationsAsync(cancellationToken)];
        if (applied.Except(known, StringComparer.Ordinal).Any())
        {
            throw new StorageTroubleException(
                $"The database in \"{folder}\" was written by a newer version of Stockwright. Start that version, or name another folder in STOCKWRIGHT_DATA.");
        }

        if (applied.SetEquals(known))
        {
            return;
        }

        await DropAbandonedLockAsync(context, cancellationToken);
        await context.Database.MigrateAsync(cancellationToken);
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
        string file = Path.Combine(folder, LockFileName);
        long started = time.GetTimestamp();
        while (true)
        {
            try
            {
                return new FileStream(file, FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None);
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
