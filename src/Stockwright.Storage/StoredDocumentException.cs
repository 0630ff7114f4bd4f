namespace Stockwright.Storage;

/// <summary>A stored document is damaged, or was written by a newer version.</summary>
public sealed class StoredDocumentException : Exception
{
    /// <summary>Says what cannot be read.</summary>
    public StoredDocumentException(string message)
        : base(message)
    {
    }

    /// <summary>Says what cannot be read and why.</summary>
    public StoredDocumentException(string message, Exception inner)
        : base(message, inner)
    {
    }

    /// <summary>For serializers.</summary>
    public StoredDocumentException()
    {
    }
}
