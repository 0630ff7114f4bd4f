using System.Runtime.Versioning;

namespace Stockwright.Storage.Sqlite;

/// <summary>
/// Who may read the data: the account the program runs under, nobody else. SQLite gives its write-ahead log the rights of the
/// database file. On Windows the rights of the folder above are inherited, and nothing is done here.
/// </summary>
internal static class FileRights
{
    private const UnixFileMode OwnFolder = UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute;
    private const UnixFileMode OwnFile = UnixFileMode.UserRead | UnixFileMode.UserWrite;

    /// <summary>Makes a folder for the owner alone; one that is there already is left as it is.</summary>
    public static void MakeFolder(string folder)
    {
        if (OperatingSystem.IsWindows())
        {
            Directory.CreateDirectory(folder);
            return;
        }

        // The folders above it, such as a home, keep the usual rights.
        if (Path.GetDirectoryName(folder) is { Length: > 0 } above)
        {
            Directory.CreateDirectory(above);
        }

        Directory.CreateDirectory(folder, OwnFolder);
    }

    /// <summary>Opens a file for the owner alone, made when missing.</summary>
    public static FileStream Open(string file, FileMode mode, FileShare share)
    {
        FileStreamOptions options = new() { Mode = mode, Access = FileAccess.ReadWrite, Share = share };
        if (!OperatingSystem.IsWindows())
        {
            options.UnixCreateMode = OwnFile;
        }

        return new FileStream(file, options);
    }

    /// <summary>Takes the rights of others from the data folder of an earlier version.</summary>
    /// <param name="folder">Data folder.</param>
    /// <param name="ours">Files of ours in it, which may be missing.</param>
    /// <param name="keys">Folder of keys in it, which may be missing.</param>
    public static void Tighten(string folder, IEnumerable<string> ours, string keys)
    {
        if (OperatingSystem.IsWindows())
        {
            return;
        }

        string[] files = [.. ours];
        foreach (string file in files.Concat(Directory.Exists(keys) ? Directory.EnumerateFiles(keys) : []).Where(File.Exists))
        {
            Set(file, OwnFile);
        }

        if (Directory.Exists(keys))
        {
            Set(keys, OwnFolder);
        }

        // A folder that also holds other things, say a home, is not ours to close.
        if (Directory.EnumerateFileSystemEntries(folder).All(entry => files.Contains(entry, StringComparer.Ordinal) || string.Equals(entry, keys, StringComparison.Ordinal)))
        {
            Set(folder, OwnFolder);
        }
    }

    /// <summary>A disk that knows no rights, or a file that another account owns, is no reason not to cook.</summary>
    [UnsupportedOSPlatform("windows")]
    private static void Set(string path, UnixFileMode rights)
    {
        try
        {
            File.SetUnixFileMode(path, rights);
        }
        catch (Exception trouble) when (trouble is UnauthorizedAccessException or IOException)
        {
        }
    }
}
