using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;

namespace Stockwright.Storage.Sqlite;

/// <summary>Takes a copy of a database that may be in use, and checks the copy.</summary>
internal sealed class DatabaseBackup(DatabaseFile file, IDbContextFactory<StockwrightContext> contexts)
{
    /// <summary>Writes the copy; it bears its name only once it is whole and checked.</summary>
    /// <param name="target">File to write; must not exist.</param>
    /// <param name="cancellationToken">Cancels the work.</param>
    /// <returns>Size of the copy in bytes.</returns>
    /// <exception cref="StorageTroubleException">There is no database, the file exists, it cannot be written, or the copy is damaged.</exception>
    public async Task<long> WriteAsync(string target, CancellationToken cancellationToken)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(target);
        string whole = Path.GetFullPath(target);
        if (Path.Exists(whole))
        {
            throw new StorageTroubleException($"The backup file \"{whole}\" exists already. Name a new one.");
        }

        if (!File.Exists(file.Path))
        {
            throw new StorageTroubleException($"There is no database \"{file.Path}\" to back up. Name its folder in STOCKWRIGHT_DATA.");
        }

        string part = $"{whole}.{Guid.NewGuid():N}.part";
        try
        {
            // Opening it would play a log that is not its own into it.
            file.Inspect();
            Directory.CreateDirectory(Path.GetDirectoryName(whole)!);
            FileRights.Open(part, FileMode.CreateNew, FileShare.ReadWrite).Dispose();
            await using (StockwrightContext context = await contexts.CreateDbContextAsync(cancellationToken))
            {
                // Never a copy of the live file: its last writes may still stand in the write-ahead log.
                await context.Database.ExecuteSqlAsync($"VACUUM INTO {part}", cancellationToken);
            }

            await CheckAsync(part, cancellationToken);
            File.Move(part, whole);
            return new FileInfo(whole).Length;
        }
        catch (Exception trouble) when (SqliteTrouble.Behind(trouble) is { } cause)
        {
            throw new StorageTroubleException(
                SqliteTrouble.Explain(cause, $"\"{whole}\"") ?? $"The backup \"{whole}\" could not be written: {trouble.Message}", trouble);
        }
        catch (Exception trouble) when (trouble is IOException or UnauthorizedAccessException)
        {
            throw new StorageTroubleException($"The backup \"{whole}\" could not be written: {trouble.Message}", trouble);
        }
        finally
        {
            File.Delete(part);
        }
    }

    /// <summary>Checks the copy as a start would, and makes it another than the database it was taken of.</summary>
    private static async Task CheckAsync(string copy, CancellationToken cancellationToken)
    {
        string connection = new SqliteConnectionStringBuilder { DataSource = copy, Mode = SqliteOpenMode.ReadWrite, Pooling = false }.ConnectionString;
        await using StockwrightContext context = new(new DbContextOptionsBuilder<StockwrightContext>().UseSqlite(connection).Options);
        await context.Database.OpenConnectionAsync(cancellationToken);
        if (await DatabaseContent.DamageAsync(context, withPhotos: true, cancellationToken) is { } damage)
        {
            throw new StorageTroubleException($"The backup was not kept: the copy is damaged ({damage}), so the database is. Keep an older backup.");
        }

        await DatabaseContent.RunAsync(context, $"PRAGMA user_version = {DatabaseFile.NewGeneration()}", cancellationToken);
    }
}
