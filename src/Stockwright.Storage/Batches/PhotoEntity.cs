namespace Stockwright.Storage.Batches;

/// <summary>The picture of an entry. In the database, so that entry and picture are stored together or not at all.</summary>
internal sealed class PhotoEntity
{
    public Guid EntryId { get; set; }

    public required byte[] Jpeg { get; set; }

    public int Width { get; set; }

    public int Height { get; set; }
}
