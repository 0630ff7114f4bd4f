namespace Stockwright.Larder;

/// <summary>A file of cuts that cannot be used; the message names the row and the field.</summary>
public sealed class CutFileException : FormatException
{
    /// <summary>With no message.</summary>
    public CutFileException()
    {
    }

    /// <summary>With a message.</summary>
    public CutFileException(string message)
        : base(message)
    {
    }

    /// <summary>With a message and what lay behind it.</summary>
    public CutFileException(string message, Exception? innerException)
        : base(message, innerException)
    {
    }
}
