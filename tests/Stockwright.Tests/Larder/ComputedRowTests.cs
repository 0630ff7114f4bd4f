using System.Globalization;
using Stockwright.Evidence;
using Stockwright.Larder;
using UnitsNet;
using Xunit;

namespace Stockwright.Tests.Larder;

/// <summary>
/// Rows put together from SR28's edible part and the bone, skin, sinew and loose fat that go in the pot with it, put together
/// again here as docs/larder.md says, from Larder/Data/sr28.csv, parts.csv and computed-rows.csv.
/// </summary>
public sealed class ComputedRowTests
{
    private const double Tenth = 0.06;

    private static readonly string[] Fields = ["water", "protein", "fat", "ash"];

    private static readonly Dictionary<string, IReadOnlyDictionary<string, string>> Foods =
        CsvTable.Read("Larder.Data.sr28.csv").ToDictionary(row => row["ndb"], StringComparer.Ordinal);

    private static readonly Dictionary<string, IReadOnlyDictionary<string, string>> Parts =
        CsvTable.Read("Larder.Data.parts.csv").ToDictionary(row => row["part"], StringComparer.Ordinal);

    private static readonly Dictionary<string, IReadOnlyDictionary<string, string>> Lines =
        CsvTable.Read("Larder.Data.computed-rows.csv").ToDictionary(row => row["ingredient"], StringComparer.Ordinal);

    private static IEnumerable<Ingredient> Computed => StandardLarder.Table.Ingredients.Where(row =>
        row.Water is { Provenance: Provenance.Computed } water && water.Source.StartsWith("Computed: USDA SR28 edible part", StringComparison.Ordinal));

    [Fact]
    public void Every_computed_row_has_its_line_and_every_line_its_row() =>
        Assert.Equal(Computed.Select(row => row.Id).Order(StringComparer.Ordinal), Lines.Keys.Order(StringComparer.Ordinal));

    [Fact]
    public void Every_computed_row_can_be_put_together_again()
    {
        Differences found = new();
        foreach (Ingredient row in Computed.Where(row => Lines.ContainsKey(row.Id)))
        {
            Assert.Equal(row.UsdaNumber, Lines[row.Id]["ndb"]);
            double[] again = PutTogether(Lines[row.Id]);
            Stated<Ratio>[] stated = [row.Water, row.Protein, row.Fat, row.Ash];
            for (int field = 0; field < Fields.Length; field++)
            {
                Assert.Equal(Provenance.Computed, stated[field].Provenance);
                found.Compare($"{row.Id} {Fields[field]}", again[field], stated[field].Value.Percent, Tenth);
            }

            (double bonePercent, _) = Assert.Single(Added(Lines[row.Id]), part => part.Name.EndsWith("-bone", StringComparison.Ordinal));
            found.Compare($"{row.Id} bone", bonePercent, row.BoneShare!.Value.Percent, 1e-9);
        }

        found.AssertNone(atLeast: 130);
    }

    /// <summary>
    /// By hand: SR28 13227 (shank, lean only: water 73.03, protein 21.75, fat 3.85, ash 1.44), refuse "Bone 34%, separable fat 6%".
    /// Water 0.60 x 73.03 + 0.34 x 30 + 0.06 x 20.21 = 55.2; fat 0.60 x 3.85 + 0.34 x 21 + 0.06 x 70.89 = 13.7; ash 11.1.
    /// </summary>
    [Fact]
    public void Beef_shank_by_hand()
    {
        double[] shank = PutTogether(Lines["beef-shank"]);
        Assert.Equal([55.2, 20.0, 13.7, 11.1], shank.Select(part => Math.Round(part, 1)));
    }

    /// <summary>By hand: quail (69.65, 19.63, 12.05, 0.90) nine parts and bone (57.5, 15.6, 9.5, 14.7) one make 101.7; over 1.017: 67.3, 18.9, 11.6, 2.2.</summary>
    [Fact]
    public void What_adds_up_to_more_than_the_whole_is_scaled_to_it() =>
        Assert.Equal([67.3, 18.9, 11.6, 2.2], PutTogether(Lines["quail"]).Select(part => Math.Round(part, 1)));

    private static double[] PutTogether(IReadOnlyDictionary<string, string> line)
    {
        (double Percent, string Name)[] added = Added(line);
        double edible = 100 - added.Sum(part => part.Percent);
        double[] sums = [.. Fields.Select(field =>
            ((edible * Foods[line["ndb"]].Number(field)) + added.Sum(part => part.Percent * Parts[part.Name].Number(field))) / 100)];
        double whole = Math.Max(100, sums.Sum());
        return [.. sums.Select(part => part * 100 / whole)];
    }

    private static (double Percent, string Name)[] Added(IReadOnlyDictionary<string, string> line) =>
        [.. line["added"].Split(" + ").Select(part => part.Split(' ')).Select(words => (double.Parse(words[0], CultureInfo.InvariantCulture), words[1]))];
}
