using System.Reflection;

namespace Stockwright.Larder;

/// <summary>The larder that comes with the tool.</summary>
public static class StandardLarder
{
    private static readonly Lazy<LarderTable> Loaded = new(Load);

    /// <summary>The table, read from the embedded data file the first time it is asked for.</summary>
    public static LarderTable Table => Loaded.Value;

    private static LarderTable Load()
    {
        Assembly assembly = typeof(StandardLarder).Assembly;
        using Stream stream = assembly.GetManifestResourceStream("Stockwright.Larder.Data.ingredients.json")
            ?? throw new InvalidOperationException("The larder's data file is missing from the build.");
        using StreamReader reader = new(stream);
        return LarderFile.Parse(reader.ReadToEnd());
    }
}
