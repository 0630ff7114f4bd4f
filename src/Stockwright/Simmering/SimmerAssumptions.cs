using System.Reflection;
using Stockwright.Evidence;
using Stockwright.Files;
using UnitsNet;

namespace Stockwright.Simmering;

/// <summary>
/// The uncertain figures of solids and surface, read from <c>Simmering/Data/assumptions.json</c>: one row each with range, grade and source,
/// so that a food scientist can read and question them.
/// </summary>
public static class SimmerAssumptions
{
    private static readonly Lazy<Dictionary<string, Stated<double>>> Loaded = new(Load);

    /// <summary>Stable names of all figures.</summary>
    public static IReadOnlyCollection<string> Keys => Loaded.Value.Keys;

    /// <summary>A figure by its stable name.</summary>
    /// <exception cref="KeyNotFoundException">No figure has that name.</exception>
    public static Stated<double> Get(string key) => Loaded.Value.TryGetValue(key, out Stated<double>? figure)
        ? figure
        : throw new KeyNotFoundException($"No assumption is called '{key}'.");

    /// <summary>A figure that is a share.</summary>
    internal static Stated<Ratio> Share(string key)
    {
        Stated<double> figure = Get(key);
        return new Stated<Ratio>(
            Ratio.FromDecimalFractions(figure.Value), Ratio.FromDecimalFractions(figure.Low), Ratio.FromDecimalFractions(figure.High), figure.Provenance, figure.Source);
    }

    internal static Dictionary<string, Stated<double>> Parse(string json) => JsonRow.ReadFile(
        json,
        "File of assumptions",
        static file =>
        {
            file.OptionalText("about");
            Dictionary<string, string> sources = file.TextTable("sources");
            Dictionary<string, Stated<double>> figures = new(StringComparer.Ordinal);
            file.Rows("figures", "figure", row =>
            {
                string key = row.Text("key");
                row.Rename($"Figure '{key}'");
                row.Text("means");
                return figures.TryAdd(key, row.Stated("value", sources)) ? key : throw row.Fail("'key' is used twice");
            });
            return figures;
        });

    private static Dictionary<string, Stated<double>> Load()
    {
        Assembly assembly = typeof(SimmerAssumptions).Assembly;
        using Stream stream = assembly.GetManifestResourceStream("Stockwright.Simmering.Data.assumptions.json")
            ?? throw new InvalidOperationException("The data file of assumptions is missing from the build.");
        using StreamReader reader = new(stream);
        return Parse(reader.ReadToEnd());
    }
}
