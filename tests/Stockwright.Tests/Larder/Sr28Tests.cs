using System.Globalization;
using System.Text.RegularExpressions;
using Stockwright.Evidence;
using Stockwright.Larder;
using UnitsNet;
using Xunit;

namespace Stockwright.Tests.Larder;

/// <summary>
/// Every figure said to stand in USDA SR28 against the figures themselves (Larder/Data/sr28.csv and sr28-weights.csv: USDA
/// National Nutrient Database for Standard Reference, Release 28, public domain, read in a stored copy).
/// The larder rounds make-up to a tenth of a gram and densities to a hundredth; refuse, sodium and weights are taken as printed.
/// </summary>
public sealed partial class Sr28Tests
{
    private const string Source = "USDA SR28 (2016): National Nutrient Database for Standard Reference, release 28";
    private const string Scaled = "Computed: USDA SR28, whose four parts add up to more than 100, scaled to 100";
    private const string Piece = "USDA SR28's weight of one; it does not say whether the bone is in, and the range holds both";
    private const string CutSource = "USDA SR28 (2016)";
    private const double Tenth = 0.06;
    private const double Hundredth = 0.006;

    private static readonly Dictionary<string, IReadOnlyDictionary<string, string>> Foods =
        CsvTable.Read("Larder.Data.sr28.csv").ToDictionary(row => row["ndb"], StringComparer.Ordinal);

    private static readonly Dictionary<(string Ingredient, string Measure), IReadOnlyDictionary<string, string>> Weights =
        CsvTable.Read("Larder.Data.sr28-weights.csv").ToDictionary(row => (row["ingredient"], row["measure"]));

    private static IEnumerable<Ingredient> Rows => StandardLarder.Table.Ingredients;

    [Fact]
    public void Every_row_that_names_a_food_has_its_line_and_every_line_its_row()
    {
        string[] named = [.. Rows.Select(row => row.UsdaNumber).OfType<string>().Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal)];
        Assert.Equal(named, Foods.Keys.Order(StringComparer.Ordinal), StringComparer.Ordinal);
    }

    [Fact]
    public void Make_up_is_that_of_SR28()
    {
        Differences found = new();
        foreach (Ingredient row in Rows)
        {
            (string Name, Stated<Ratio> Number)[] parts = [("water", row.Water), ("protein", row.Protein), ("fat", row.Fat), ("ash", row.Ash)];
            foreach ((string name, Stated<Ratio> number) in parts.Where(part => part.Number.Source is Source or Scaled))
            {
                IReadOnlyDictionary<string, string> food = Foods[row.UsdaNumber!];
                double whole = parts.Sum(part => food.Number(part.Name));
                double scale = number.Source is Scaled ? 100 / whole : 1;
                Assert.True(number.Source is Source || whole > 100, $"{row.Id}: its parts add up to {whole}, nothing to scale");
                Assert.Equal(number.Source is Source ? Provenance.Published : Provenance.Computed, number.Provenance);
                found.Compare($"{row.Id} {name}", food.Number(name) * scale, number.Value.Percent, Tenth);
            }
        }

        found.AssertNone(atLeast: 140);
    }

    [Fact]
    public void Refuse_and_bone_are_those_of_SR28()
    {
        Differences found = new();
        foreach (Ingredient row in Rows)
        {
            if (row.Refuse is { Source: Source, Provenance: Provenance.Published } refuse)
            {
                found.Compare($"{row.Id} refuse", Foods[row.UsdaNumber!].Number("refuse_pct"), refuse.Value.Percent, 1e-9);
            }

            if (row.BoneShare is { Source: Source, Provenance: Provenance.Published } bone)
            {
                found.Compare($"{row.Id} bone", Bone(Foods[row.UsdaNumber!]), bone.Value.Percent, 1e-9);
            }
        }

        found.AssertNone(atLeast: 35);
    }

    /// <summary>SR28's words on refuse: "Bone 34%, separable fat 6%" is 34 % bone, and "Bone" or no words is all of it.</summary>
    [Theory]
    [InlineData("13227", 34)]
    [InlineData("05121", 27)]
    [InlineData("10016", 13)]
    [InlineData("10192", 30)]
    [InlineData("05066", 33)]
    [InlineData("05734", 38)]
    public void Refuse_is_not_all_bone(string number, double bone) => Assert.Equal(bone, Bone(Foods[number]));

    [Fact]
    public void Pieces_weigh_what_SR28_says()
    {
        Differences found = new();
        HashSet<(string, string)> used = [];
        foreach (Ingredient row in Rows)
        {
            foreach (Piece piece in row.Pieces.Where(piece => piece.Mass.Source is Source or Piece))
            {
                Assert.Equal(piece.Mass.Source is Source ? Provenance.Published : Provenance.Estimate, piece.Mass.Provenance);
                found.Compare($"{row.Id} {piece.Name}", Weight(row, piece.Name, used).Number("grams"), piece.Mass.Value.Grams, 1e-9);
            }

            foreach (Stated<Density> density in new[] { row.PackDensity, row.TrueDensity }.OfType<Stated<Density>>().Where(density => density.Source is Source))
            {
                IReadOnlyDictionary<string, string> cup = Weight(row, "packed", used);
                found.Compare($"{row.Id} packed", cup.Number("grams") / cup.Number("millilitres"), density.Value.KilogramsPerLiter, Hundredth);
            }
        }

        found.AssertNone(atLeast: 60);
        Assert.DoesNotContain(Weights.Keys, key => !used.Contains(key));
    }

    /// <summary>Per 100 g of the edible part; where bone goes in too, times the share that is not bone.</summary>
    [Fact]
    public void Sugars_and_sodium_are_those_of_SR28()
    {
        Differences found = new();
        foreach (Ingredient row in Rows)
        {
            Solubles solubles = StandardCuts.Table.SolublesOf(row);
            foreach ((string name, Stated<Ratio> number, double unit) in new[] { ("sugar", solubles.Sugars, 1.0), ("sodium_mg", solubles.Sodium, 1000.0) })
            {
                bool loaded = number.Source.StartsWith("Computed: USDA SR28", StringComparison.Ordinal);
                if (!loaded && number.Source is not CutSource)
                {
                    continue;
                }

                Assert.Equal(loaded ? Provenance.Computed : Provenance.Published, number.Provenance);
                double kept = loaded ? 1 - row.BoneShare!.Value.DecimalFractions : 1;
                double rounding = loaded ? (name is "sugar" ? Hundredth : 0.5) : 1e-6;
                found.Compare($"{row.Id} {name}", Foods[row.UsdaNumber!].Number(name) * kept, number.Value.Percent * unit, rounding);
            }
        }

        found.AssertNone(atLeast: 55);
    }

    private static double Bone(IReadOnlyDictionary<string, string> food)
    {
        Match words = BoneInWords().Match(food["refuse_description"]);
        return words.Success
            ? double.Parse(words.Groups["after"].Success ? words.Groups["after"].ValueSpan : words.Groups["before"].ValueSpan, CultureInfo.InvariantCulture)
            : food.Number("refuse_pct");
    }

    private static IReadOnlyDictionary<string, string> Weight(Ingredient row, string measure, HashSet<(string, string)> used)
    {
        Assert.True(Weights.TryGetValue((row.Id, measure), out IReadOnlyDictionary<string, string>? line), $"sr28-weights.csv has no line for {row.Id}, {measure}");
        Assert.Equal(row.UsdaNumber, line["ndb"]);
        used.Add((row.Id, measure));
        return line;
    }

    [GeneratedRegex(@"(?<before>\d+)% bone|bone[^,%\d]*(?<after>\d+)%", RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant, matchTimeoutMilliseconds: 1000)]
    private static partial Regex BoneInWords();
}
