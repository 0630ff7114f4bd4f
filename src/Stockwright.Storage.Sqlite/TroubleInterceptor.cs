using System.Data.Common;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore.Diagnostics;

namespace Stockwright.Storage.Sqlite;

/// <summary>
/// Turns a full disk, a read-only or busy file and their like into a message for the cook, wherever they are met: opening,
/// reading, writing, and beginning or ending a transaction.
/// </summary>
internal sealed class TroubleInterceptor : ISaveChangesInterceptor, IDbCommandInterceptor, IDbConnectionInterceptor, IDbTransactionInterceptor
{
    public void SaveChangesFailed(DbContextErrorEventData eventData) => Explain(eventData.Exception, "Nothing was saved. ");

    public Task SaveChangesFailedAsync(DbContextErrorEventData eventData, CancellationToken cancellationToken = default) => ExplainAsync(eventData.Exception, "Nothing was saved. ");

    public void CommandFailed(DbCommand command, CommandErrorEventData eventData) => Explain(eventData.Exception);

    public Task CommandFailedAsync(DbCommand command, CommandErrorEventData eventData, CancellationToken cancellationToken = default) => ExplainAsync(eventData.Exception);

    public void ConnectionFailed(DbConnection connection, ConnectionErrorEventData eventData) => Explain(eventData.Exception);

    public Task ConnectionFailedAsync(DbConnection connection, ConnectionErrorEventData eventData, CancellationToken cancellationToken = default) => ExplainAsync(eventData.Exception);

    public void TransactionFailed(DbTransaction transaction, TransactionErrorEventData eventData) => Explain(eventData.Exception);

    public Task TransactionFailedAsync(DbTransaction transaction, TransactionErrorEventData eventData, CancellationToken cancellationToken = default) => ExplainAsync(eventData.Exception);

    private static Task ExplainAsync(Exception failure, string before = "")
    {
        Explain(failure, before);
        return Task.CompletedTask;
    }

    private static void Explain(Exception failure, string before = "")
    {
        if (SqliteTrouble.Behind(failure) is SqliteException cause && SqliteTrouble.Explain(cause, "the data folder") is { } message)
        {
            throw new StorageTroubleException(before + message, failure);
        }
    }
}
