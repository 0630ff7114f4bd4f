namespace Stockwright.Larder;

/// <summary>A larder file that cannot be used; the message names the row and the field.</summary>
public sealed class LarderFileException : FormatException
{
    /// <summary>With no message.</summary>
    public LarderFileException()
    {
    }

    /// <summary>With a message.</summary>
    public LarderFileException(string message)
        : base(message)
    {
    }

    /// <summary>With a message and what lay behind it.</summary>
    public LarderFileException(string message, Exception? innerException)
        : base(message, innerException)
    {
    }
}
