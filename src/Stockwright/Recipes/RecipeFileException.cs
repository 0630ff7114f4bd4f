namespace Stockwright.Recipes;

/// <summary>A recipe file that cannot be used; the message names the line and the field.</summary>
public sealed class RecipeFileException : FormatException
{
    /// <summary>With no message.</summary>
    public RecipeFileException()
    {
    }

    /// <summary>With a message.</summary>
    public RecipeFileException(string message)
        : base(message)
    {
    }

    /// <summary>With a message and what lay behind it.</summary>
    public RecipeFileException(string message, Exception? innerException)
        : base(message, innerException)
    {
    }
}
