using Stockwright.Evidence;
using Stockwright.Files;
using Stockwright.Larder;
using Stockwright.Tests.Predicting;
using UnitsNet;
using Xunit;

namespace Stockwright.Tests.Larder;

/// <summary>The file of cuts: what it must hold, and how it refuses.</summary>
public sealed class CutFileTests
{
    private const string Good = """
        {
          "sources": { "s": "a book" },
          "classes": [{
            "id": "one", "name": "One", "collagen": [10, 8, 12, "estimate", "s"], "softShare": [50, 40, 60, "estimate", "s"],
            "softRatePerHour": [0.3, 0.2, 0.4, "estimate", "s"], "hardRatePerHour": [0, 0, 0, "estimate", "s"],
            "freshBloomGrams": [230, 200, 260, "estimate", "s"], "referencePieceCentimetres": 4,
            "extractives": [1, 0.5, 1.5, "estimate", "s"], "freedFat": [60, 50, 70, "estimate", "s"], "ingredients": ["chicken-back"]
          }],
          "groups": [{ "group": "Poultry", "class": "one", "sodiumMilligrams": [75, 50, 100, "estimate", "s"] }],
          "solubles": [{ "ingredient": "onion", "sugars": [4.2, 4, 5, "estimate", "s"], "sodiumMilligrams": [4, 3, 5, "estimate", "s"] }]
        }
        """;

    [Fact]
    public void A_small_file_is_read()
    {
        CutTable table = CutFile.Parse(Good);
        CutClass cut = table.ClassOf(StandardLarder.Table.Get("chicken-back"))!;
        Assert.Equal(0.3, cut.SoftRate.Value.PerSecond * 3600, 1e-12);
        Assert.Equal(60, cut.ExtractsFrom.DegreesCelsius);
        Assert.Equal("One", table.ClassOf(StandardLarder.Table.Get("chicken-wing"))!.Name);
        Assert.Null(table.ClassOf(StandardLarder.Table.Get("onion")));
        Assert.Equal(75e-5, table.SolublesOf(StandardLarder.Table.Get("chicken-wing")).Sodium.Value.DecimalFractions, 1e-12);
    }

    [Theory]
    [InlineData("\"collagen\": [10,", "\"collagen\": [110,", "low <= value <= high")]
    [InlineData("\"softShare\": [50, 40, 60,", "\"softShare\": [50, 40, 160,", "'softShare' must lie between 0 and 100 %")]
    [InlineData("\"softRatePerHour\": [0.3, 0.2,", "\"softRatePerHour\": [0.3, -0.2,", "'softRatePerHour' must not be below zero")]
    [InlineData("\"referencePieceCentimetres\": 4", "\"referencePieceCentimetres\": 0", "must be above zero")]
    [InlineData("\"class\": \"one\"", "\"class\": \"two\"", "'class' names 'two'")]
    [InlineData("[\"chicken-back\"]", "[\"chicken-back\", \"chicken-back\"]", "which another class holds already")]
    [InlineData("\"name\": \"One\",", "", "'name' is missing")]
    public void A_slip_of_the_pen_is_named(string from, string to, string message)
    {
        DataFileException slip = Assert.Throws<DataFileException>(() => CutFile.Parse(Good.Replace(from, to, StringComparison.Ordinal)));
        Assert.Contains(message, slip.Message, StringComparison.Ordinal);
    }

    /// <summary>k_b of hard beef bone 0.025 (0.019 to 0.028; K1, K4, K5) and k_s of meaty beef 0.20 (K8), measurements named in docs/equations-body.md; every number has a source.</summary>
    [Fact]
    public void The_standing_file_says_where_its_numbers_come_from()
    {
        CutClass bone = Pots.Class("hard-beef-bone");
        Assert.Equal((0.019, 0.025, 0.028), (Hourly(bone.HardRate.Low), Hourly(bone.HardRate.Value), Hourly(bone.HardRate.High)));
        Assert.Contains("K1", bone.HardRate.Source, StringComparison.Ordinal);
        Assert.Equal(Provenance.Computed, bone.HardRate.Provenance);
        Assert.Contains("K8", Pots.Class("meaty-beef").SoftRate.Source, StringComparison.Ordinal);
        Assert.Contains("K3", Pots.Class("chicken-frame").HardRate.Source, StringComparison.Ordinal);
        Assert.All(StandardCuts.Table.Classes, cut => Assert.NotEmpty(cut.SoftRate.Source));
    }

    /// <summary>A cook's own vegetable without a row: 45 % of its carbohydrate by difference counts as sugar (estimate); shells and wine never by difference.</summary>
    [Fact]
    public void Sugars_of_an_unknown_vegetable()
    {
        Ingredient own = StandardLarder.Table.Get("carrot") with { Id = "own-root" };
        Assert.Equal(0.45 * own.Carbohydrate.Percent, StandardCuts.Table.SolublesOf(own).Sugars.Value.Percent, 1e-9);
        Assert.Equal(0, StandardCuts.Table.SolublesOf(StandardLarder.Table.Get("crab-shell")).Sugars.Value.Percent);
        Assert.True(StandardCuts.Table.SolublesOf(StandardLarder.Table.Get("white-wine")).Sugars.Value.Percent < 2);
        Assert.True(StandardLarder.Table.Get("white-wine").Carbohydrate.Percent > 10);
    }

    private static double Hourly(Frequency rate) => Math.Round(rate.PerSecond * 3600, 9);
}
