namespace Stockwright.Logbook;

/// <summary>
/// The text of a fact cannot be read. Unlike a data file, which someone has to put right, it may simply be of a newer version: whoever reads a
/// log catches this and shows the entry as a remark.
/// </summary>
public sealed class FactFormatException : FormatException
{
    /// <summary>A fact that cannot be read.</summary>
    public FactFormatException()
    {
    }

    /// <summary>A fact that cannot be read.</summary>
    /// <param name="message">What is wrong, in plain words.</param>
    public FactFormatException(string message)
        : base(message)
    {
    }

    /// <summary>A fact that cannot be read.</summary>
    /// <param name="message">What is wrong, in plain words.</param>
    /// <param name="innerException">What lies behind it.</param>
    public FactFormatException(string message, Exception? innerException)
        : base(message, innerException)
    {
    }
}
