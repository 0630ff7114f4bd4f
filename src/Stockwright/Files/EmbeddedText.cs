namespace Stockwright.Files;

/// <summary>Text files that travel inside the assembly.</summary>
internal static class EmbeddedText
{
    /// <summary>Reads a file by its resource name below <c>Stockwright.</c>.</summary>
    /// <exception cref="InvalidOperationException">The file is missing from the build.</exception>
    internal static string Read(string name)
    {
        using Stream stream = typeof(EmbeddedText).Assembly.GetManifestResourceStream($"Stockwright.{name}")
            ?? throw new InvalidOperationException($"The data file {name} is missing from the build.");
        using StreamReader reader = new(stream);
        return reader.ReadToEnd();
    }
}
