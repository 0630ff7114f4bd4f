namespace Stockwright.Numerics;

/// <summary>A numerical method found no answer; the message says where and why.</summary>
public sealed class NumericalFailureException : Exception
{
    /// <summary>Without a message.</summary>
    public NumericalFailureException()
    {
    }

    /// <summary>With a message.</summary>
    public NumericalFailureException(string message)
        : base(message)
    {
    }

    /// <summary>With a message and a cause.</summary>
    public NumericalFailureException(string message, Exception innerException)
        : base(message, innerException)
    {
    }
}
