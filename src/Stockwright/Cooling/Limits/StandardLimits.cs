using Stockwright.Files;

namespace Stockwright.Cooling.Limits;

/// <summary>The cooling limits that come with the tool.</summary>
public static class StandardLimits
{
    /// <summary>The limit used until the cook chooses one.</summary>
    public const string DefaultId = "us-food-code";

    private static readonly Lazy<IReadOnlyList<CoolingLimit>> Loaded =
        new(() => CoolingLimitFile.Parse(EmbeddedText.Read("Cooling.Data.limits.json")));

    /// <summary>All of them, in the order of the data file.</summary>
    public static IReadOnlyList<CoolingLimit> All => Loaded.Value;

    /// <summary>The default limit.</summary>
    public static CoolingLimit Default => Find(DefaultId)!;

    /// <summary>A limit by its stable name, or null.</summary>
    public static CoolingLimit? Find(string id) =>
        All.FirstOrDefault(limit => string.Equals(limit.Id, id, StringComparison.Ordinal));
}
