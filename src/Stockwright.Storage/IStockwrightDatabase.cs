namespace Stockwright.Storage;

/// <summary>What differs between databases: getting one ready, and taking a copy of it.</summary>
public interface IStockwrightDatabase
{
    /// <summary>Where the data are, for the cook to read: a folder or a server.</summary>
    string Place { get; }

    /// <summary>Makes the database if there is none and brings its tables up to this version.</summary>
    /// <exception cref="StorageTroubleException">The place cannot be written, or was written by a newer version.</exception>
    Task PrepareAsync(CancellationToken cancellationToken = default);

    /// <summary>Copies the database to a new file while it stays in use.</summary>
    /// <param name="file">File to write; must not exist.</param>
    /// <param name="cancellationToken">Gives up.</param>
    /// <exception cref="StorageTroubleException">The file exists or cannot be written.</exception>
    Task BackupAsync(string file, CancellationToken cancellationToken = default);
}
