namespace Stockwright.Storage;

/// <summary>A form that added something. Stored with what it added, so that the same form sent again adds nothing.</summary>
internal sealed class SentFormEntity
{
    /// <summary>Made from the form's hidden key and all that was typed.</summary>
    public required string Key { get; set; }

    /// <summary>Stable name or id of what it added.</summary>
    public required string Added { get; set; }

    public DateTime StoredUtc { get; set; }
}
