using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore.Diagnostics;

namespace Stockwright.Storage.Sqlite;

/// <summary>Turns a full disk or a read-only file met while saving into a message for the cook.</summary>
internal sealed class TroubleInterceptor : SaveChangesInterceptor
{
    public override void SaveChangesFailed(DbContextErrorEventData eventData) => Explain(eventData.Exception);

    public override Task SaveChangesFailedAsync(DbContextErrorEventData eventData, CancellationToken cancellationToken = default)
    {
        Explain(eventData.Exception);
        return Task.CompletedTask;
    }

    private static void Explain(Exception failure)
    {
        for (Exception? cause = failure; cause is not null; cause = cause.InnerException)
        {
            if (cause is SqliteException sqlite && SqliteTrouble.Explain(sqlite, "the data folder") is { } message)
            {
                throw new StorageTroubleException($"Nothing was saved. {message}", failure);
            }
        }
    }
}
