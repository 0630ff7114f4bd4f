using System.Buffers.Binary;
using System.Globalization;

namespace Stockwright.Storage.Sqlite;

/// <summary>
/// The first hundred bytes of a database file as they stand on the disk, what waits in the write-ahead log left out
/// (SQLite documentation, "Database File Format", 1.3).
/// </summary>
/// <param name="ChangesOfTables">Schema cookie, offset 40.</param>
/// <param name="Generation">User version, offset 60: here a random number drawn at each start and for each backup.</param>
/// <param name="Program">Application id, offset 68.</param>
internal sealed record DatabaseHeader(uint ChangesOfTables, uint Generation, uint Program)
{
    private const int Length = 100;

    private static ReadOnlySpan<byte> Magic => "SQLite format 3\0"u8;

    /// <summary>What tells this copy of a database from another: <c>VACUUM INTO</c> changes the schema cookie, our own backups the generation too.</summary>
    public string Mark => string.Create(CultureInfo.InvariantCulture, $"{Generation:x8}-{ChangesOfTables}");

    /// <summary>Reads it; null when the file is no SQLite database.</summary>
    public static DatabaseHeader? Read(string file)
    {
        using FileStream stream = new(file, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete);
        byte[] bytes = new byte[Length];
        return stream.ReadAtLeast(bytes, Length, throwOnEndOfStream: false) == Length && bytes.AsSpan().StartsWith(Magic)
            ? new DatabaseHeader(At(bytes, 40), At(bytes, 60), At(bytes, 68))
            : null;
    }

    private static uint At(byte[] bytes, int offset) => BinaryPrimitives.ReadUInt32BigEndian(bytes.AsSpan(offset));
}
