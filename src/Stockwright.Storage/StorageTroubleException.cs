namespace Stockwright.Storage;

/// <summary>The data folder or the database cannot be used: read-only, full, damaged. The message is for the cook.</summary>
public sealed class StorageTroubleException : Exception
{
    /// <summary>Says what is wrong and what to do.</summary>
    public StorageTroubleException(string message)
        : base(message)
    {
    }

    /// <summary>Says what is wrong and what to do, with the cause.</summary>
    public StorageTroubleException(string message, Exception inner)
        : base(message, inner)
    {
    }

    /// <summary>For serializers.</summary>
    public StorageTroubleException()
    {
    }
}
