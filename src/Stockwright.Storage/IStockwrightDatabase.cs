namespace Stockwright.Storage;

/// <summary>What differs between databases: getting one ready, and taking a copy of it.</summary>
public interface IStockwrightDatabase
{
    /// <summary>Where the data are, for the cook to read: a folder or a server.</summary>
    string Place { get; }

    /// <summary>Makes the database if there is none and brings its tables up to this version.</summary>
    /// <exception cref="StorageTroubleException">The place cannot be written; or what is there is damaged, lost, of another program or of a newer version.</exception>
    Task PrepareAsync(CancellationToken cancellationToken = default);

    /// <summary>Reads what was too much to read before the first answer and looks for damage; nothing to do for a small database.</summary>
    /// <returns>The first damage found; null when there is none.</returns>
    Task<string?> FindDamageAsync(CancellationToken cancellationToken = default);

    /// <summary>Copies the database to a new file while it stays in use, and checks the copy.</summary>
    /// <param name="file">File to write; must not exist.</param>
    /// <param name="cancellationToken">Cancels the work.</param>
    /// <returns>Size of the copy in bytes.</returns>
    /// <exception cref="StorageTroubleException">There is no database, the file exists or cannot be written, or the copy is damaged.</exception>
    Task<long> BackupAsync(string file, CancellationToken cancellationToken = default);
}
