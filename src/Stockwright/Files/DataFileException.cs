namespace Stockwright.Files;

/// <summary>A data file that cannot be used: larder, cuts, recipe, limits, keeping, assumptions. The message names the row and the field.</summary>
public sealed class DataFileException : FormatException
{
    /// <summary>With no message.</summary>
    public DataFileException()
    {
    }

    /// <summary>With a message.</summary>
    public DataFileException(string message)
        : base(message)
    {
    }

    /// <summary>With a message and what lay behind it.</summary>
    public DataFileException(string message, Exception? innerException)
        : base(message, innerException)
    {
    }
}
