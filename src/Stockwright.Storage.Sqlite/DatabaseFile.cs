using System.Security.Cryptography;

namespace Stockwright.Storage.Sqlite;

/// <summary>
/// The database file as it lies in the data folder, looked at before SQLite may touch it. SQLite takes an empty file for a new
/// database, and plays any write-ahead log of the right name into whatever database stands beside it.
/// </summary>
internal sealed class DatabaseFile(string folder)
{
    /// <summary>Ours in the header of the file ("Stkw").</summary>
    public const int ApplicationId = 0x53746B77;

    /// <summary>
    /// Says which copy of the database the write-ahead log belongs to: a line for each mark (<see cref="DatabaseHeader.Mark"/>) the
    /// file may bear. Two while a new one is on its way into the file.
    /// </summary>
    private const string NoteName = "stockwright.run";

    private const string LockName = "stockwright.lock";

    /// <summary>A checkpoint follows the commit that fills the log at once; a file written this long after its log was put there.</summary>
    private static readonly TimeSpan CheckpointTime = TimeSpan.FromMinutes(1);

    public string Path { get; } = System.IO.Path.Combine(folder, SqliteStorage.FileName);

    public string LockPath { get; } = System.IO.Path.Combine(folder, LockName);

    private string LogPath => Path + "-wal";

    private string NotePath => System.IO.Path.Combine(folder, NoteName);

    private string KeysPath => System.IO.Path.Combine(folder, "keys");

    /// <summary>
    /// True when a database was made here before: its note, keys of forms or a backup lie in the folder. Keys are made once a page has
    /// been shown; what else lies beside them may be older than the database.
    /// </summary>
    public bool WasHereBefore =>
        File.Exists(NotePath)
        || (Directory.Exists(KeysPath) && Directory.EnumerateFiles(KeysPath, "key-*.xml").Any())
        || Directory.EnumerateFiles(folder, "stockwright*.db").Any(file => !string.Equals(file, Path, StringComparison.Ordinal));

    /// <summary>Takes the rights of others from what is here.</summary>
    public void Tighten() => FileRights.Tighten(folder, [Path, LogPath, Path + "-shm", LockPath, NotePath], KeysPath);

    /// <summary>Refuses a file that would be lost or mixed up if SQLite opened it; makes an empty one on a fresh folder.</summary>
    /// <exception cref="StorageTroubleException">The database is missing or empty though there was one, or the log beside it is not its own.</exception>
    public void Inspect()
    {
        if (!File.Exists(Path) || new FileInfo(Path).Length == 0)
        {
            // SQLite deletes the log of an empty file, and with it the only copy of what was entered.
            if (HasLog || WasHereBefore)
            {
                throw Lost(File.Exists(Path) ? "is empty" : "is missing");
            }

            FileRights.Open(Path, FileMode.OpenOrCreate, FileShare.ReadWrite).Dispose();
            return;
        }

        // What is no database at all is refused by SQLite itself.
        if (HasLog && File.Exists(NotePath) && DatabaseHeader.Read(Path) is { } header
            && (!File.ReadAllLines(NotePath).Contains(header.Mark, StringComparer.Ordinal) || IsNewerThanLog))
        {
            throw new StorageTroubleException(
                $"The database \"{Path}\" is not the one that the write-ahead log beside it (\"{SqliteStorage.FileName}-wal\") was written for, so starting would mix the two. "
                + $"If you have put a backup there: move {SqliteStorage.FileName}-wal and {SqliteStorage.FileName}-shm away and start again. "
                + $"If nothing was put back: delete {NoteName} and start again.");
        }
    }

    /// <summary>The database is not there though it should be.</summary>
    /// <param name="what">For instance <c>is empty</c>.</param>
    public StorageTroubleException Lost(string what) => new(
        $"The database \"{Path}\" {what}, though this folder has been in use: nothing was changed. Check that the right disk is there, or put a backup in its place. "
        + "To begin with an empty kitchen, name another folder in STOCKWRIGHT_DATA.");

    /// <summary>A number for a new copy; never that of a file without one.</summary>
    public static int NewGeneration() => RandomNumberGenerator.GetInt32(1, int.MaxValue);

    /// <summary>Notes that the file will bear a new generation from now on, or still the present one.</summary>
    public void NoteComing(int generation)
    {
        if (DatabaseHeader.Read(Path) is { } now)
        {
            string[] before = File.Exists(NotePath) ? File.ReadAllLines(NotePath) : [];
            Write(before.Append(now.Mark).Append((now with { Generation = (uint)generation }).Mark).Distinct(StringComparer.Ordinal));
        }
    }

    /// <summary>Notes the generation alone once it stands in the file; another program at work may hold that up, and then both stay noted.</summary>
    public void NoteArrived(int generation)
    {
        if (DatabaseHeader.Read(Path) is { } now && now.Generation == (uint)generation)
        {
            Write([now.Mark]);
        }
    }

    private bool HasLog => File.Exists(LogPath) && new FileInfo(LogPath).Length > 0;

    /// <summary>True for a file copied over the old one: a program at work writes the log last.</summary>
    private bool IsNewerThanLog => File.GetLastWriteTimeUtc(Path) > File.GetLastWriteTimeUtc(LogPath) + CheckpointTime;

    private void Write(IEnumerable<string> marks)
    {
        string fresh = NotePath + ".new";
        using (FileStream stream = FileRights.Open(fresh, FileMode.Create, FileShare.None))
        {
            stream.Write(System.Text.Encoding.ASCII.GetBytes(string.Join('\n', marks) + "\n"));
            stream.Flush(flushToDisk: true);
        }

        File.Move(fresh, NotePath, overwrite: true);
    }
}
