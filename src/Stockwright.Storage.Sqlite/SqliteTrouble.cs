using Microsoft.Data.Sqlite;

namespace Stockwright.Storage.Sqlite;

/// <summary>SQLite's result codes in the cook's words (result codes: SQLite documentation, "Result and Error Codes").</summary>
internal static class SqliteTrouble
{
    /// <summary>SQLite's own complaint behind a failure; null when there is none.</summary>
    public static SqliteException? Behind(Exception failure)
    {
        for (Exception? cause = failure; cause is not null; cause = cause.InnerException)
        {
            if (cause is SqliteException sqlite)
            {
                return sqlite;
            }
        }

        return null;
    }

    /// <summary>What went wrong at a place; null when it is not about the place (a broken rule of the tables, a cancelled call).</summary>
    public static string? Explain(SqliteException trouble, string place) => trouble.SqliteErrorCode switch
    {
        5 or 6 => $"Another program keeps the database in {place} busy. Close it, or wait and try again.",
        8 => $"The database in {place} is read-only. Give this program the right to write there, or name another folder in STOCKWRIGHT_DATA.",
        10 => $"The disk that holds {place} reported an error while reading or writing. Check the disk.",
        11 or 26 => $"The database in {place} is damaged or is not one of ours. Put a backup in its place, or name another folder in STOCKWRIGHT_DATA.",
        13 => $"The disk that holds {place} is full. Free some room and try again.",
        14 => $"The database in {place} cannot be opened. Check that the folder exists and that this program may write there, or name another folder in STOCKWRIGHT_DATA.",
        _ => null,
    };
}
