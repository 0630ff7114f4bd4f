using System.Globalization;
using Stockwright.Storage;
using Stockwright.Storage.Sqlite;

namespace Stockwright.Web.Shell;

/// <summary><c>--backup FILE</c>: copies the database, also while the program runs, and ends.</summary>
internal static class BackupCommand
{
    private const string Name = "--backup";

    /// <summary>File asked for on the command line; empty when none is named, null when no backup is asked for.</summary>
    public static string? FileIn(string[] args)
    {
        int at = Array.FindIndex(args, arg => string.Equals(arg, Name, StringComparison.Ordinal) || arg.StartsWith(Name + "=", StringComparison.Ordinal));
        return at < 0 ? null
            : args[at].Length > Name.Length ? args[at][(Name.Length + 1)..]
            : at + 1 < args.Length && !args[at + 1].StartsWith("--", StringComparison.Ordinal) ? args[at + 1]
            : "";
    }

    /// <summary>Takes the backup and says in one line what became of it.</summary>
    /// <returns>Exit code: 0 when the copy is written and sound, otherwise 1.</returns>
    public static async Task<int> RunAsync(StockwrightOptions options, string file)
    {
        if (string.IsNullOrWhiteSpace(file))
        {
            await Console.Error.WriteLineAsync("Name the file to write: --backup /srv/backups/stockwright-2026-03-01.db");
            return 1;
        }

        await using ServiceProvider services = new ServiceCollection().AddLogging().AddStockwrightSqlite(options.DataFolder).BuildServiceProvider();
        try
        {
            long bytes = await services.GetRequiredService<IStockwrightDatabase>().BackupAsync(file);
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"Backed up to {Path.GetFullPath(file)}: {bytes / 1e6:0.0} MB, checked."));
            return 0;
        }
        catch (StorageTroubleException trouble)
        {
            await Console.Error.WriteLineAsync(trouble.Message);
            return 1;
        }
    }
}
