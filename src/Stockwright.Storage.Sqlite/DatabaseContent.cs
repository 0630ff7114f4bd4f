using System.Data.Common;
using System.Globalization;
using Microsoft.EntityFrameworkCore;
using Stockwright.Storage.Batches;

namespace Stockwright.Storage.Sqlite;

/// <summary>What an open database says of itself, before anything in it is trusted.</summary>
internal sealed class DatabaseContent
{
    private const string History = "__EFMigrationsHistory";
    private const string MigrationsLock = "__EFMigrationsLock";

    private readonly IReadOnlyList<string> tables;

    private DatabaseContent(int program, IReadOnlyList<string> tables)
    {
        this.tables = tables;
        Program = program;
    }

    /// <summary>Application id: ours, zero in a database of an earlier version or a fresh one, or that of another program.</summary>
    public int Program { get; }

    /// <summary>True when it lists migrations.</summary>
    public bool HasHistory => tables.Contains(History, StringComparer.Ordinal);

    /// <summary>True when it bears the id of another program, or none and tables that are not ours.</summary>
    public bool IsForeign => Program != DatabaseFile.ApplicationId
        && (Program != 0 || (!HasHistory && tables.Any(table => !string.Equals(table, MigrationsLock, StringComparison.Ordinal))));

    /// <summary>Reads it.</summary>
    /// <param name="context">Its connection is open and stays so.</param>
    /// <param name="cancellationToken">Cancels the work.</param>
    public static async Task<DatabaseContent> ReadAsync(StockwrightContext context, CancellationToken cancellationToken)
    {
        List<string> program = await RowsAsync(context, "PRAGMA application_id", cancellationToken);
        List<string> names = await RowsAsync(context, "SELECT name FROM sqlite_master WHERE type = 'table' AND name NOT LIKE 'sqlite\\_%' ESCAPE '\\'", cancellationToken);
        return new DatabaseContent(int.Parse(program[0], CultureInfo.InvariantCulture), names);
    }

    /// <summary>The first damage found by SQLite's <c>quick_check</c>; null when there is none.</summary>
    /// <param name="context">Its connection is open and stays so.</param>
    /// <param name="withPhotos">False to leave out the pictures, which are nearly all of a large file, and the pages in no use.</param>
    /// <param name="cancellationToken">Cancels the work.</param>
    public static async Task<string?> DamageAsync(StockwrightContext context, bool withPhotos, CancellationToken cancellationToken)
    {
        string[] checks = withPhotos
            ? ["PRAGMA quick_check(1)"]
            : [.. context.Model.GetEntityTypes().Where(type => type.ClrType != typeof(PhotoEntity)).Select(type => $"PRAGMA quick_check('{type.GetTableName()}')")];
        foreach (string check in checks)
        {
            List<string> rows = await RowsAsync(context, check, cancellationToken);
            if (rows is not ["ok"])
            {
                return rows.FirstOrDefault()?.ReplaceLineEndings(" ") ?? "no answer";
            }
        }

        return null;
    }

    /// <summary>Runs a statement that cannot take parameters.</summary>
    public static async Task RunAsync(StockwrightContext context, string sql, CancellationToken cancellationToken) =>
        await RowsAsync(context, sql, cancellationToken);

    private static async Task<List<string>> RowsAsync(StockwrightContext context, string sql, CancellationToken cancellationToken)
    {
        await using DbCommand command = context.Database.GetDbConnection().CreateCommand();
        command.CommandText = sql;
        await using DbDataReader reader = await command.ExecuteReaderAsync(cancellationToken);
        List<string> rows = [];
        while (await reader.ReadAsync(cancellationToken))
        {
            rows.Add(Convert.ToString(reader.GetValue(0), CultureInfo.InvariantCulture) ?? "");
        }

        return rows;
    }
}
