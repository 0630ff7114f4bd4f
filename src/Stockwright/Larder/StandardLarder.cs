using Stockwright.Files;

namespace Stockwright.Larder;

/// <summary>The larder that comes with the tool.</summary>
public static class StandardLarder
{
    private static readonly Lazy<LarderTable> Loaded = new(() => LarderFile.Parse(EmbeddedText.Read("Larder.Data.ingredients.json")));

    /// <summary>The table, read from the embedded data file the first time it is asked for.</summary>
    public static LarderTable Table => Loaded.Value;
}
