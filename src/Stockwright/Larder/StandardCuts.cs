using Stockwright.Files;

namespace Stockwright.Larder;

/// <summary>The classes of cuts that come with the tool.</summary>
public static class StandardCuts
{
    private static readonly Lazy<CutTable> Loaded = new(() => CutFile.Parse(EmbeddedText.Read("Larder.Data.cuts.json")));

    /// <summary>The table, read from the embedded data file the first time it is asked for.</summary>
    public static CutTable Table => Loaded.Value;
}
