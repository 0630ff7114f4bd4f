using System.Reflection;

namespace Stockwright.Larder;

/// <summary>The classes of cuts that come with the tool.</summary>
public static class StandardCuts
{
    private static readonly Lazy<CutTable> Loaded = new(Load);

    /// <summary>The table, read from the embedded data file the first time it is asked for.</summary>
    public static CutTable Table => Loaded.Value;

    private static CutTable Load()
    {
        Assembly assembly = typeof(StandardCuts).Assembly;
        using Stream stream = assembly.GetManifestResourceStream("Stockwright.Larder.Data.cuts.json")
            ?? throw new InvalidOperationException("The data file of cuts is missing from the build.");
        using StreamReader reader = new(stream);
        return CutFile.Parse(reader.ReadToEnd());
    }
}
