using System.Data;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Storage;

namespace Stockwright.Storage;

/// <summary>Edits that lose nothing: the row is written only if it still is as the cook saw it.</summary>
internal static class VersionedEdits
{
    // A queue in order of arrival: a database that is waited for by asking again and again lets one of many wait too long.
    private static readonly SemaphoreSlim Adding = new(1, 1);

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

    /// <summary>
    /// Adds a row under a stable name that is free. Looking it up and adding it are one serializable transaction, so that of many who
    /// add at once, in this program or another, each waits for the one before and sees the names it took. The same form sent again adds
    /// nothing: it is answered with what it added the first time.
    /// </summary>
    /// <param name="contexts">Makes contexts.</param>
    /// <param name="formKey">What tells the form from every other, or null when it cannot be told.</param>
    /// <param name="now">When it was sent.</param>
    /// <param name="add">Adds the row and gives its name.</param>
    /// <param name="cancellationToken">Cancels the wait.</param>
    /// <returns>The name given.</returns>
    public static async Task<string> AddNamedAsync(
        this IDbContextFactory<StockwrightContext> contexts,
        string? formKey,
        DateTimeOffset now,
        Func<StockwrightContext, Task<string>> add,
        CancellationToken cancellationToken)
    {
        await Adding.WaitAsync(cancellationToken);
        try
        {
            await using StockwrightContext context = await contexts.CreateDbContextAsync(cancellationToken);
            await using IDbContextTransaction transaction = await context.Database.BeginTransactionAsync(IsolationLevel.Serializable, cancellationToken);
            if (formKey is not null && await context.SentForms.FindAsync([formKey], cancellationToken) is { } before)
            {
                return before.Added;
            }

            string id = await add(context);
            if (formKey is not null)
            {
                context.Add(new SentFormEntity { Key = formKey, Added = id, StoredUtc = now.UtcDateTime });
            }

            await context.SaveChangesAsync(cancellationToken);
            await transaction.CommitAsync(cancellationToken);
            return id;
        }
        finally
        {
            Adding.Release();
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
