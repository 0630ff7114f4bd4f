using System.Data.Common;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore.Diagnostics;

namespace Stockwright.Storage.Sqlite;

/// <summary>
/// Sets what SQLite keeps per connection, not in the file. Foreign keys are set by the connection string; write-ahead
/// logging stays with the file and is set once by <see cref="SqliteDatabase"/>.
/// </summary>
internal sealed class ConnectionPragmas : DbConnectionInterceptor
{
    /// <summary>How long one writer waits for another.</summary>
    public const int BusySeconds = 5;

    // A second writer waits five seconds for the first. Every commit is flushed to disk: a kitchen pulls plugs, writes
    // are few, and with write-ahead logging NORMAL could lose the last of them.
    private const string Pragmas = "PRAGMA busy_timeout = 5000; PRAGMA synchronous = FULL;";

    public override void ConnectionOpened(DbConnection connection, ConnectionEndEventData eventData)
    {
        using DbCommand command = connection.CreateCommand();
        command.CommandText = Pragmas;
        try
        {
            command.ExecuteNonQuery();
        }
        catch (SqliteException trouble) when (SqliteTrouble.Explain(trouble, "the data folder") is { } message)
        {
            // The first words to a file that cannot be opened after all; no other interceptor sees them.
            throw new StorageTroubleException(message, trouble);
        }
    }

    public override async Task ConnectionOpenedAsync(
        DbConnection connection, ConnectionEndEventData eventData, CancellationToken cancellationToken = default)
    {
        await using DbCommand command = connection.CreateCommand();
        command.CommandText = Pragmas;
        try
        {
            await command.ExecuteNonQueryAsync(cancellationToken);
        }
        catch (SqliteException trouble) when (SqliteTrouble.Explain(trouble, "the data folder") is { } message)
        {
            throw new StorageTroubleException(message, trouble);
        }
    }
}
