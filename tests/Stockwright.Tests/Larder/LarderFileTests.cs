using System.Diagnostics;
using System.Text.Json;
using System.Text.Json.Nodes;
using CsCheck;
using Stockwright.Files;
using Stockwright.Larder;
using Xunit;

namespace Stockwright.Tests.Larder;

/// <summary>Typing errors in a hand-edited larder file are named, never swallowed.</summary>
public sealed class LarderFileTests
{
    private const string Good = """
        {
          // Comments and trailing commas are welcome.
          "sources": { "sr": "A table", },
          "ingredients": [
            {
              "id": "onion", "name": "Onions", "group": "Vegetable", "use": "sweet",
              "water": [89.1, 88, 90, "published", "sr"],
              "protein": [1.1, 1, 1.2, "published", "sr"],
              "fat": [0.1, 0.1, 0.1, "published", "sr"],
              "ash": [0.35, 0.3, 0.4, "published", "sr"],
              "trueDensity": [1.04, 1.02, 1.06, "computed", "sr"],
              "refuse": [10, 7, 13, "published", "sr"],
              "pieces": [{ "name": "leaf", "plural": "leaves", "grams": [110, 90, 130, "estimate", "sr"], "trimmed": true }],
              "allergens": ["celery"]
            }
          ]
        }
        """;

    [Fact]
    public void A_sound_row_is_read_whole()
    {
        Ingredient row = Assert.Single(LarderFile.Parse(Good).Ingredients);
        Assert.Equal(0.891, row.Water.Value.DecimalFractions, 1e-12);
        Assert.Equal(0.88, row.Water.Low.DecimalFractions, 1e-12);
        Assert.Equal("A table", row.Water.Source);
        Assert.Null(row.Collagen);
        Assert.Equal("leaves", Assert.Single(row.Pieces).Plural);
    }

    [Theory]
    [InlineData("\"water\": [89.1, 88, 90, \"published\", \"sr\"],", "", "water")]
    [InlineData("[89.1, 88, 90,", "[89.1, 90, 88,", "water")]
    [InlineData("[89.1, 88, 90,", "[120, 88, 130,", "water")]
    [InlineData("[89.1, 88, 90,", "[-1, -2, 90,", "water")]
    [InlineData("[89.1, 88, 90,", "[\"89.1\", 88, 90,", "water")]
    [InlineData("[89.1, 88, 90,", "[1e999, 88, 90,", "water")]
    [InlineData("[1.1, 1, 1.2,", "[20, 1, 20,", "add up")]
    [InlineData("[89.1, 88, 90, \"published\"", "[89.1, 88, 90, \"guessed\"", "guessed")]
    [InlineData("[89.1, 88, 90, \"published\", \"sr\"]", "[89.1, 88, 90, \"published\", \"nowhere\"]", "nowhere")]
    [InlineData("[89.1, 88, 90, \"published\", \"sr\"]", "[89.1, 88, 90, \"published\"]", "water")]
    [InlineData("[89.1, 88, 90, \"published\", \"sr\"]", "89.1", "water")]
    [InlineData("\"Vegetable\"", "\"Vegetables\"", "group")]
    [InlineData("\"Vegetable\"", "\"3\"", "group")]
    [InlineData("\"celery\"", "\"sellery\"", "sellery")]
    [InlineData("\"use\": \"sweet\"", "\"use\": 7", "use")]
    [InlineData("\"use\": \"sweet\"", "\"use\": null", "use")]
    [InlineData("\"use\": \"sweet\"", "\"use\": \"sweet\", \"uses\": \"x\"", "uses")]
    [InlineData("\"refuse\": [10, 7, 13", "\"refuse\": [100, 7, 100", "refuse")]
    [InlineData("\"trueDensity\": [1.04, 1.02, 1.06", "\"trueDensity\": [1040, 1020, 1060", "trueDensity")]
    [InlineData("\"refuse\": [10", "\"collagen\": [2, 2, 2, \"estimate\", \"sr\"], \"refuse\": [10", "collagen")]
    [InlineData("\"refuse\": [10", "\"collagen\": [1, 1, 2, \"estimate\", \"sr\"], \"refuse\": [10", "high end")]
    [InlineData("[1.1, 1, 1.2,", "[11.5, 11, 12,", "add up")]
    [InlineData("\"trueDensity\": [1.04, 1.02, 1.06", "\"trueDensity\": [1.2, 1.15, 1.25", "1.04 kg per litre")]
    [InlineData("\"refuse\": [10", "\"boneShare\": [10, 9, 11, \"published\", \"sr\"], \"refuse\": [10", "usda")]
    [InlineData("\"use\": \"sweet\"", "\"use\": \"sweet\", \"offered\": \"no\"", "offered")]
    [InlineData("\"trimmed\": true", "\"trimmed\": \"yes\"", "trimmed")]
    [InlineData("[110, 90, 130,", "[110, 0, 130,", "grams")]
    public void A_slip_names_its_row_and_field(string was, string becomes, string named)
    {
        string broken = Good.Replace(was, becomes, StringComparison.Ordinal);
        Assert.NotEqual(Good, broken, StringComparer.Ordinal);
        DataFileException error = Assert.Throws<DataFileException>(() => LarderFile.Parse(broken));
        Assert.Contains("onion", error.Message, StringComparison.Ordinal);
        Assert.Contains(named, error.Message, StringComparison.Ordinal);
    }

    /// <summary>The near misses of the checks above: at the limit, and where the grade does not claim it.</summary>
    [Theory]
    [InlineData("\"refuse\": [10", "\"collagen\": [1.1, 1, 1.2, \"estimate\", \"sr\"], \"refuse\": [10")]
    [InlineData("[1.1, 1, 1.2,", "[10.45, 10, 11,")]
    [InlineData("[1.04, 1.02, 1.06, \"computed\"", "[1.2, 1.15, 1.25, \"estimate\"")]
    [InlineData("\"refuse\": [10", "\"boneShare\": [10, 9, 11, \"estimate\", \"sr\"], \"refuse\": [10")]
    [InlineData("\"refuse\": [10", "\"usda\": \"11282\", \"boneShare\": [10, 9, 11, \"published\", \"sr\"], \"refuse\": [10")]
    public void What_only_looks_like_a_slip_is_read(string was, string becomes) =>
        Assert.Single(LarderFile.Parse(Good.Replace(was, becomes, StringComparison.Ordinal)).Ingredients);

    [Theory]
    [InlineData("")]
    [InlineData("null")]
    [InlineData("[]")]
    [InlineData("7")]
    [InlineData("{}")]
    [InlineData("{\"sources\": {}}")]
    [InlineData("{\"sources\": [], \"ingredients\": []}")]
    [InlineData("{\"sources\": {\"a\": 1}, \"ingredients\": []}")]
    [InlineData("{\"sources\": {}, \"ingredients\": {}}")]
    [InlineData("{\"sources\": {}, \"ingredients\": [null]}")]
    [InlineData("{\"sources\": {}, \"ingredients\": [{\"id\": \"\\ud800\"}]}")]
    [InlineData("{\"sources\": {}, \"ingredients\": [{\"id\": NaN}]}")]
    [InlineData("{\"sources\": {}, \"sources\": {}, \"ingredients\": []}")]
    public void Hostile_text_gets_the_clear_exception(string json) =>
        Assert.Throws<DataFileException>(() => LarderFile.Parse(json));

    [Fact]
    public void Two_rows_of_one_name_are_refused()
    {
        JsonObject file = JsonNode.Parse(Good, documentOptions: new JsonDocumentOptions { AllowTrailingCommas = true, CommentHandling = JsonCommentHandling.Skip })!.AsObject();
        JsonArray rows = file["ingredients"]!.AsArray();
        rows.Add(rows[0]!.DeepClone());
        DataFileException error = Assert.Throws<DataFileException>(() => LarderFile.Parse(file.ToJsonString()));
        Assert.Contains("two ingredients", error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Cutting_the_file_anywhere_or_dropping_a_letter_never_gives_another_exception()
    {
        (from at in Gen.Int[0, Good.Length - 1]
         from length in Gen.Int[1, 40]
         select Good.Remove(at, Math.Min(length, Good.Length - at)))
            .Sample(json =>
            {
                try
                {
                    LarderFile.Parse(json);
                }
                catch (DataFileException)
                {
                    // Clear, and meant.
                }
            });
    }

    [Fact]
    public void The_standing_larder_is_read_in_less_than_a_cook_notices()
    {
        _ = StandardLarder.Table;
        using Stream stream = typeof(StandardLarder).Assembly.GetManifestResourceStream("Stockwright.Larder.Data.ingredients.json")!;
        using StreamReader reader = new(stream);
        string json = reader.ReadToEnd();
        Stopwatch watch = Stopwatch.StartNew();
        LarderFile.Parse(json);

        // 50 ms is the aim for a cold start; a warm one on a shared machine stays well inside it.
        Assert.True(watch.Elapsed < TimeSpan.FromMilliseconds(200), $"took {watch.Elapsed.TotalMilliseconds} ms");
    }
}
