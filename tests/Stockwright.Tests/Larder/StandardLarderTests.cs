using Stockwright.Evidence;
using Stockwright.Larder;
using UnitsNet;
using Xunit;

namespace Stockwright.Tests.Larder;

/// <summary>The larder's numbers against the publications they are said to come from.</summary>
public sealed class StandardLarderTests
{
    /// <summary>USDA SR28 (2016), raw unless the name says otherwise; water, protein, fat per 100 g, to two decimals from memory.</summary>
    public static TheoryData<string, string, double, double, double> Sr28 => new()
    {
        { "onion", "11282", 89.11, 1.10, 0.10 },
        { "carrot", "11124", 88.29, 0.93, 0.24 },
        { "celery", "11143", 95.43, 0.69, 0.17 },
        { "leek", "11246", 83.00, 1.50, 0.30 },
        { "garlic", "11215", 58.58, 6.36, 0.50 },
        { "mushroom", "11260", 92.45, 3.09, 0.34 },
        { "tomato", "11529", 94.52, 0.88, 0.20 },
        { "tomato-paste", "11546", 73.50, 4.32, 0.47 },
        { "parsley", "11297", 87.71, 2.97, 0.79 },
        { "peppercorn", "02030", 12.46, 10.39, 3.26 },
        { "bay-leaf", "02004", 5.44, 7.61, 8.36 },
        { "chicken-skin", "05015", 54.22, 13.33, 32.35 },
        { "beef-suet", "13335", 4.00, 1.50, 94.00 },
        { "egg-white", "01124", 87.57, 10.90, 0.17 },
        { "gelatin-powder", "19177", 13.00, 85.60, 0.10 },
    };

    /// <summary>USDA SR28 weights of one piece, edible part, as held in the notes.</summary>
    public static TheoryData<string, string, double> Sr28Pieces => new()
    {
        { "onion", "small onion", 70 },
        { "onion", "medium onion", 110 },
        { "onion", "large onion", 150 },
        { "carrot", "small carrot", 50 },
        { "carrot", "medium carrot", 61 },
        { "carrot", "large carrot", 72 },
        { "celery", "small stalk", 17 },
        { "celery", "medium stalk", 40 },
        { "celery", "large stalk", 64 },
        { "garlic", "clove", 3 },
        { "mushroom", "medium mushroom", 18 },
        { "tomato", "medium tomato", 123 },
        { "fennel", "bulb", 234 },
        { "chicken-wing", "wing", 107 },
        { "tomato-paste", "tablespoon", 16 },
        { "egg-white", "large white", 33 },
        { "gelatin-powder", "envelope", 7 },
        { "salt", "tablespoon", 18 },
    };

    /// <summary>USDA SR28 refuse, per cent of the bought mass.</summary>
    public static TheoryData<string, double> Sr28Refuse => new()
    {
        { "onion", 10 },
        { "carrot", 11 },
        { "celery", 11 },
        { "leek", 56 },
        { "garlic", 13 },
        { "parsnip", 15 },
        { "fennel", 28 },
        { "mushroom", 3 },
        { "tomato", 9 },
    };

    [Fact]
    public void The_whole_table_of_84_rows_and_our_four_of_our_own_are_there()
    {
        // Rows 72 (thyme), 79 (wine) and 80 (vinegar) of the table each hold two items: 84 + 3 + 4.
        Assert.Equal(91, StandardLarder.Table.Ingredients.Count);
        foreach (string own in new[] { "veal-bones", "turkey-carcass", "vegetable-trimmings", "spent-bones" })
        {
            Assert.Equal(Provenance.Estimate, StandardLarder.Table.Get(own).Protein.Provenance);
        }
    }

    [Theory]
    [MemberData(nameof(Sr28))]
    public void Make_up_agrees_with_SR28(string id, string number, double water, double protein, double fat)
    {
        Ingredient row = StandardLarder.Table.Get(id);
        Assert.Equal(number, row.UsdaNumber);

        // The table is rounded to a tenth.
        Assert.Equal(water, row.Water.Value.Percent, 0.06);
        Assert.Equal(protein, row.Protein.Value.Percent, 0.06);
        Assert.Equal(fat, row.Fat.Value.Percent, 0.06);
        Assert.Equal(Provenance.Published, row.Protein.Provenance);
    }

    [Theory]
    [MemberData(nameof(Sr28Pieces))]
    public void Pieces_agree_with_SR28(string id, string name, double grams)
    {
        Piece piece = Assert.Single(StandardLarder.Table.Get(id).Pieces, piece => string.Equals(piece.Name, name, StringComparison.Ordinal));
        Assert.Equal(grams, piece.Mass.Value.Grams, 1e-9);
        Assert.Equal(Provenance.Published, piece.Mass.Provenance);
    }

    [Theory]
    [MemberData(nameof(Sr28Refuse))]
    public void Refuse_agrees_with_SR28(string id, double percent)
    {
        Assert.Equal(percent, StandardLarder.Table.Get(id).Refuse!.Value.Percent, 1e-9);
    }

    [Fact]
    public void A_tablespoon_of_peppercorns_is_six_to_nine_grams()
    {
        // Common practice, no source; SR28 gives the teaspoon as 2.9 g and three make a tablespoon.
        Piece tablespoon = Assert.Single(StandardLarder.Table.Get("peppercorn").Pieces, piece => string.Equals(piece.Name, "tablespoon", StringComparison.Ordinal));
        Assert.InRange(tablespoon.Mass.Value.Grams, 6, 9);
        Assert.Equal(3 * 2.9, tablespoon.Mass.Value.Grams, 1e-9);
    }

    [Fact]
    public void True_density_follows_from_the_make_up()
    {
        // Handbook densities of the components (from memory): water 0.998, protein 1.33, fat 0.92, carbohydrate 1.55, bone mineral 2.9 kg/L.
        foreach (Ingredient row in StandardLarder.Table.Ingredients.Where(row => row.TrueDensity.Provenance == Provenance.Computed))
        {
            double water = row.Water.Value.DecimalFractions;
            double protein = row.Protein.Value.DecimalFractions;
            double fat = row.Fat.Value.DecimalFractions;
            double ash = row.Ash.Value.DecimalFractions;
            double carbohydrate = row.Carbohydrate.DecimalFractions;
            double litres = (water / 0.998) + (protein / 1.33) + (fat / 0.92) + (carbohydrate / 1.55) + (ash / 2.9);
            double density = (water + protein + fat + ash + carbohydrate) / litres;
            Assert.True(
                density >= row.TrueDensity.Low.KilogramsPerLiter - 0.005 && density <= row.TrueDensity.High.KilogramsPerLiter + 0.005,
                $"{row.Id}: computed {density:0.000}");
        }
    }

    [Fact]
    public void Bones_displace_what_the_density_says()
    {
        // 3.63 kg at 1.20 kg/L displace 3.03 L (8 lb in the trade's ratio; computed).
        Assert.Equal(3.03, 3.63 / StandardLarder.Table.Get("beef-knuckle").TrueDensity.Value.KilogramsPerLiter, 0.03);
    }

    [Theory]
    [InlineData("celery", "celery")]
    [InlineData("celeriac", "celery")]
    [InlineData("fish-frame", "fish")]
    [InlineData("fish-head", "fish")]
    [InlineData("flatfish-bone", "fish")]
    [InlineData("bonito-flakes", "fish")]
    [InlineData("shrimp-shell", "crustacean")]
    [InlineData("crab-shell", "crustacean")]
    [InlineData("lobster-shell", "crustacean")]
    [InlineData("white-wine", "sulphites")]
    [InlineData("red-wine", "sulphites")]
    [InlineData("soy-sauce", "soy")]
    [InlineData("soy-sauce", "gluten")]
    [InlineData("egg-white", "egg")]
    public void Allergens_of_the_EU_list_are_flagged(string id, string allergen)
    {
        // Regulation (EU) 1169/2011, Annex II.
        Assert.Contains(allergen, StandardLarder.Table.Get(id).Allergens, StringComparer.Ordinal);
    }

    [Fact]
    public void Plain_bones_and_vegetables_carry_no_flag()
    {
        foreach (string id in new[] { "chicken-carcass", "beef-knuckle", "veal-knuckle", "onion", "carrot", "leek", "kombu" })
        {
            Assert.Empty(StandardLarder.Table.Get(id).Allergens);
        }
    }

    [Fact]
    public void Broken_carcasses_pack_closer_than_whole_ones()
    {
        Stated<Density> pack = StandardLarder.Table.Get("chicken-carcass").PackDensity!;
        Assert.Equal(0.5, pack.Value.KilogramsPerLiter, 1e-9);
        Assert.Equal(0.25, pack.Low.KilogramsPerLiter, 1e-9);
        Assert.Contains("Break", StandardLarder.Table.Get("chicken-carcass").Note!, StringComparison.Ordinal);
    }

    [Fact]
    public void Every_row_can_be_loaded_in_a_pot()
    {
        foreach (Ingredient row in StandardLarder.Table.Ingredients)
        {
            Assert.NotNull(row.PackDensity);
            Assert.True(row.PackDensity.Value <= row.TrueDensity.Value * 1.1, $"{row.Id} packs denser than it is");
        }
    }
}
