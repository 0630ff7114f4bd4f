using Stockwright.Evidence;
using Stockwright.Larder;
using UnitsNet;
using Xunit;

namespace Stockwright.Tests.Larder;

/// <summary>The larder's numbers against the publications they are said to come from.</summary>
public sealed class StandardLarderTests
{
    /// <summary>Names that recipes, saved plans and links hold: they may gain company but never go.</summary>
    private static readonly string[] Names =
    [
        "beef-marrow-bone", "beef-bones", "beef-knuckle", "beef-neck-bone", "beef-shank", "beef-short-rib", "oxtail", "beef-foot", "beef-tendon",
        "beef-suet", "beef-trim-fat", "veal-knuckle", "veal-breast", "veal-shank", "calf-foot", "veal-bones", "chicken-carcass", "chicken-back",
        "chicken-neck", "chicken-wing", "chicken-feet", "chicken-feet-boiled", "chicken-drumstick", "stewing-hen", "chicken-skin", "chicken-giblets",
        "turkey-neck", "turkey-wing", "turkey-back", "turkey-carcass", "turkey-skin", "duck-carcass", "goose", "pork-trotter", "pork-skin",
        "pork-ear", "pork-tail", "pork-neck-bone", "pork-back-rib", "pork-sparerib", "pork-hock", "ham-bone", "lamb-neck", "lamb-foreshank",
        "venison-bone", "rabbit-carcass", "pheasant", "quail", "fish-frame", "fish-head", "fish-skin", "flatfish-bone", "shrimp-shell", "shrimp-head",
        "crab-shell", "lobster-shell", "onion", "carrot", "celery", "leek", "garlic", "shallot", "parsnip", "celeriac", "fennel", "mushroom",
        "shiitake-dried", "mushroom-portabella", "tomato", "tomato-paste", "scallion", "turnip", "vegetable-trimmings", "parsley", "thyme",
        "thyme-dried", "bay-leaf", "peppercorn", "clove", "ginger", "kombu", "bonito-flakes", "white-wine", "red-wine", "vinegar", "cider-vinegar",
        "salt", "soy-sauce", "egg-white", "gelatin-powder", "spent-bones", "duck", "rabbit", "pheasant-carcass", "ham-shank", "fish-gelatin-powder",
    ];

    [Fact]
    public void No_name_is_ever_lost()
    {
        Assert.Empty(Names.Except(StandardLarder.Table.Ingredients.Select(row => row.Id), StringComparer.Ordinal));
        foreach (string own in new[] { "veal-bones", "turkey-carcass", "vegetable-trimmings", "spent-bones" })
        {
            Assert.Equal(Provenance.Estimate, StandardLarder.Table.Get(own).Protein.Provenance);
        }
    }

    /// <summary>A plan that names boiled feet still finds them; no list offers them.</summary>
    [Fact]
    public void Boiled_feet_are_kept_but_not_offered() =>
        Assert.Equal("chicken-feet-boiled", Assert.Single(StandardLarder.Table.Ingredients, row => !row.IsOffered).Id);

    /// <summary>
    /// A stripped carcass is bone and little fat, a whole bird or rabbit meat, skin and fat. Mechanically deboned duck carcass holds
    /// 13 to 18 % fat (a maker's specification); SR28 05139 gives 39 % for the meat and skin of a whole duck.
    /// </summary>
    [Theory]
    [InlineData("duck-carcass", "duck", 13, 18)]
    [InlineData("pheasant-carcass", "pheasant", 0, 9.3)]
    [InlineData("ham-bone", "ham-shank", 0, 17)]
    [InlineData("rabbit-carcass", "rabbit", 0, 14)]
    public void A_carcass_is_not_the_whole_animal(string carcass, string whole, double leastFat, double mostFat)
    {
        Ingredient bare = StandardLarder.Table.Get(carcass);
        Ingredient meaty = StandardLarder.Table.Get(whole);
        Assert.InRange(bare.Fat.Value.Percent, leastFat, mostFat);
        Assert.True(bare.Ash.Value > meaty.Ash.Value * 2, "more bone");
        Assert.True(bare.Collagen!.Value > meaty.Collagen!.Value * 1.5, "more collagen");
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
            Assert.True(Math.Abs(density - row.TrueDensity.Value.KilogramsPerLiter) < 0.015, $"{row.Id}: computed {density:0.000}");
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
    [InlineData("shrimp-shell", "sulphites")]
    [InlineData("shrimp-head", "sulphites")]
    [InlineData("crab-shell", "sulphites")]
    [InlineData("lobster-shell", "sulphites")]
    [InlineData("fish-gelatin-powder", "fish")]
    [InlineData("white-wine", "sulphites")]
    [InlineData("red-wine", "sulphites")]
    [InlineData("soy-sauce", "soy")]
    [InlineData("soy-sauce", "gluten")]
    [InlineData("egg-white", "egg")]
    public void Allergens_of_the_EU_list_are_flagged(string id, string allergen)
    {
        // Regulation (EU) 1169/2011, Annex II. Sulphite in whole prawns up to four times the edible part: Food Addit Contam B 2014, 7.
        Assert.Contains(allergen, StandardLarder.Table.Get(id).Allergens, StringComparer.Ordinal);
    }

    [Theory]
    [InlineData("shrimp-shell", "untreated")]
    [InlineData("shrimp-head", "untreated")]
    [InlineData("lobster-shell", "untreated")]
    [InlineData("crab-shell", "untreated")]
    [InlineData("ham-bone", "read the label")]
    [InlineData("ham-shank", "read the label")]
    public void The_note_says_what_to_ask_for(string id, string words) =>
        Assert.Contains(words, StandardLarder.Table.Get(id).Note!, StringComparison.Ordinal);

    [Fact]
    public void Plain_bones_and_vegetables_carry_no_flag()
    {
        foreach (string id in new[] { "chicken-carcass", "beef-knuckle", "veal-knuckle", "onion", "carrot", "leek", "kombu", "ham-bone", "ham-shank", "gelatin-powder" })
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
