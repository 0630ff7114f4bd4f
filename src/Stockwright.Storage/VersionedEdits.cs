using Microsoft.EntityFrameworkCore;
using Stockwright.Storage.Entities;

namespace Stockwright.Storage;

/// <summary>Edits that lose nothing: the row is written only if it still is as the cook saw it.</summary>
internal static class VersionedEdits
{
    private const int MostAttempts = 8;

    public static async Task<SaveOutcome> EditAsync<T>(
        this StockwrightContext context, T? row, int version, Action<T> change, CancellationToken cancellationToken)
        where T : class, IVersioned
    {
        if (row is null)
        {
            return SaveOutcome.Gone;
        }

        context.Entry(row).Property(entity => entity.Version).OriginalValue = version;
        change(row);
        return await context.TrySaveAsync(cancellationToken);
    }

    public static async Task<SaveOutcome> RemoveAsync<T>(
        this StockwrightContext context, T? row, int version, CancellationToken cancellationToken)
        where T : class, IVersioned
    {
        if (row is null)
        {
            return SaveOutcome.Gone;
        }

        context.Entry(row).Property(entity => entity.Version).OriginalValue = version;
        context.Remove(row);
        return await context.TrySaveAsync(cancellationToken);
    }

    /// <summary>Adds a row under a stable name that was free when looked up, and looks again if somebody took it meanwhile.</summary>
    public static async Task<string> AddNamedAsync(
        this IDbContextFactory<StockwrightContext> contexts,
        Func<StockwrightContext, Task<string>> add,
        CancellationToken cancellationToken)
    {
        for (int attempt = 1; ; attempt++)
        {
            await using StockwrightContext context = await contexts.CreateDbContextAsync(cancellationToken);
            string id = await add(context);
            try
            {
                await context.SaveChangesAsync(cancellationToken);
                return id;
            }
            catch (DbUpdateException) when (attempt < MostAttempts)
            {
            }
        }
    }

    private static async Task<SaveOutcome> TrySaveAsync(this StockwrightContext context, CancellationToken cancellationToken)
    {
        try
        {
            await context.SaveChangesAsync(cancellationToken);
            return SaveOutcome.Saved;
        }
        catch (DbUpdateConcurrencyException conflict)
        {
            var now = await conflict.Entries[0].GetDatabaseValuesAsync(cancellationToken);
            return now is null ? SaveOutcome.Gone : SaveOutcome.ChangedMeanwhile;
        }
    }
}
