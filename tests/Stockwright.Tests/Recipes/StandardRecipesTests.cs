using Stockwright.Evidence;
using Stockwright.Kitchen;
using Stockwright.Larder;
using Stockwright.Recipes;
using Xunit;

namespace Stockwright.Tests.Recipes;

/// <summary>The standing recipes against the ratios the trade teaches.</summary>
public sealed class StandardRecipesTests
{
    private const double PoundKilograms = 0.45359237;
    private const double OunceGrams = 28.349523125;
    private const double QuartLitres = 0.946352946;
    private const double GallonLitres = 3.785411784;

    /// <summary>Stocks on the school's 8 : 6 : 1 : 1.</summary>
    public static TheoryData<string> SchoolStocks =>
        ["white-veal", "brown-veal", "white-beef", "brown-beef", "white-chicken", "brown-chicken", "turkey", "pork", "lamb", "game"];

    public static TheoryData<string> All => [.. StandardRecipes.Book.Recipes.Select(recipe => recipe.Id)];

    [Fact]
    public void There_is_a_recipe_for_every_kind_of_stock() =>
        Assert.Equal(Enum.GetValues<StockKind>(), StandardRecipes.Book.Recipes.Select(recipe => recipe.Kind).Distinct().Order());

    [Theory]
    [MemberData(nameof(All))]
    public void Every_recipe_can_be_planned_from(string id) =>
        Assert.Empty(RecipeValidation.Check(Find(id), StandardLarder.Table));

    [Theory]
    [MemberData(nameof(SchoolStocks))]
    public void Bones_mirepoix_and_water_follow_the_school_ratio(string id)
    {
        // US culinary-school study cards: 8 lb bones, 1 lb mirepoix, 6 qt water give 1 US gal.
        StockRecipe recipe = Find(id);
        Within(8 * PoundKilograms * 1000 / GallonLitres, Grams(recipe, LineRole.Bones), 0.002);
        Within(1 * PoundKilograms * 1000 / GallonLitres, Grams(recipe, LineRole.Mirepoix), 0.002);
        Within(6 * QuartLitres / GallonLitres, recipe.WaterLitresPerLitre.Value, 0.002);
    }

    [Theory]
    [MemberData(nameof(SchoolStocks))]
    [InlineData("fish-fumet")]
    [InlineData("shellfish")]
    [InlineData("mushroom")]
    [InlineData("remouillage")]
    public void Mirepoix_is_two_of_onion_to_one_and_one(string id)
    {
        // Brown-stock sheet of a hotel school and a student handout: 50/25/25 by weight.
        double[] parts = [.. Find(id).Lines.Where(line => line.Role == LineRole.Mirepoix).Select(line => line.PerLitre.Value.Grams)];
        Assert.Equal(3, parts.Length);
        Assert.Equal(parts[0], 2 * parts[1], 1e-9);
        Assert.Equal(parts[0], 2 * parts[2], 1e-9);
    }

    [Theory]
    [InlineData("brown-veal")]
    [InlineData("brown-beef")]
    public void Brown_stocks_take_six_ounces_of_paste_a_gallon(string id) =>
        Within(6 * OunceGrams / GallonLitres, Grams(Find(id), LineRole.Paste), 0.005); // Culinary-school library card.

    [Fact]
    public void Fumet_follows_its_own_ratio()
    {
        // US culinary-school study cards: 11 lb fish bones, 1 lb white mirepoix, 5 qt water, 4 oz mushrooms, 1 cup wine for 1 US gal.
        StockRecipe fumet = Find("fish-fumet");
        Within(11 * PoundKilograms * 1000 / GallonLitres, Grams(fumet, LineRole.Bones), 0.002);
        Within(1 * PoundKilograms * 1000 / GallonLitres, Grams(fumet, LineRole.Mirepoix), 0.002);
        Within(5 * QuartLitres / GallonLitres, fumet.WaterLitresPerLitre.Value, 0.002);
        Within(4 * OunceGrams / GallonLitres, fumet.Lines.Single(line => string.Equals(line.IngredientId, "mushroom", StringComparison.Ordinal)).PerLitre.Value.Grams, 0.002);
        Within(236.588 * 0.994 / GallonLitres, Grams(fumet, LineRole.Acid), 0.01);
    }

    [Fact]
    public void Vegetable_stock_takes_five_pounds_a_gallon() =>
        Within(5 * PoundKilograms * 1000 / GallonLitres, Grams(Find("vegetable"), LineRole.Bones), 0.002); // US culinary-school study cards.

    [Theory]
    [InlineData("white-veal", 6, 8)]
    [InlineData("brown-veal", 6, 8)]
    [InlineData("white-beef", 8, 10)]
    [InlineData("brown-beef", 8, 10)]
    [InlineData("white-chicken", 3, 6)]
    [InlineData("fish-fumet", 20 / 60.0, 45 / 60.0)] // French practice 20 to 30 min, US cards 35 to 45.
    [InlineData("vegetable", 45 / 60.0, 1)]
    public void Times_are_the_schools(string id, double shortest, double longest)
    {
        // US culinary-school study cards; chicken 3 to 4 h taught, carcasses 4 to 6 h common practice.
        SimmerStage stage = Assert.Single(Find(id).Stages);
        Assert.Equal(shortest, stage.ShortestTime.TotalHours, 1e-6);
        Assert.Equal(longest, stage.LongestTime.TotalHours, 1e-6);
    }

    [Fact]
    public void Kelp_climbs_to_sixty_degrees_and_is_lifted_out_before_the_flakes()
    {
        // Culinary reference page and a Japanese cooking page: kelp from cold to 60 °C in 30 to 40 min, out; flakes at 80 to 85 °C, 2 to 5 min.
        StockRecipe recipe = Find("kelp-and-dried-fish");
        Assert.Equal(2, recipe.Stages.Count);
        Assert.True(recipe.Stages[0].LiftsOut);
        Assert.True(recipe.Stages[0].ClimbsSlowly);
        Assert.Equal(60, recipe.Stages[0].Target.DegreesCelsius, 1e-9);
        Assert.InRange(recipe.Stages[1].Target.DegreesCelsius, 80, 85);
        RecipeLine flakes = recipe.Lines.Single(line => string.Equals(line.IngredientId, "bonito-flakes", StringComparison.Ordinal));
        Assert.Equal((JoinMoment.WithStage, 1), (flakes.Joins, flakes.Stage));
    }

    [Theory]
    [MemberData(nameof(All))]
    public void Only_bone_stocks_are_chilled_for_their_fat(string id)
    {
        string[] lean =
        [
            "fish-fumet", "shellfish", "court-bouillon", "vegetable", "vegetable-without-celery", "sweetcorn-cob-stock", "mushroom", "dried-mushroom-stock",
            "kelp-and-dried-fish", "second-dashi", "kelp", "dried-anchovy-stock", "pork-bone-broth", "demi-glace", "glace",
        ];
        Assert.Equal(!lean.Contains(id, StringComparer.Ordinal), Find(id).ChillsAndDefats);
    }

    [Theory]
    [InlineData("white-veal", true)]
    [InlineData("white-beef", true)]
    [InlineData("fish-fumet", false)]
    public void White_veal_and_beef_are_blanched_and_fish_never(string id, bool blanched) =>
        Assert.Equal(blanched, Find(id).Blanch is not null); // Common practice, as taught (unnamed teaching sheets).

    [Theory]
    [MemberData(nameof(All))]
    public void Every_number_names_its_source_and_lies_in_its_range(string id)
    {
        StockRecipe recipe = Find(id);
        Assert.NotEmpty(recipe.Sources);
        Assert.True(recipe.Lid.Kind is LidKind.Off or LidKind.Ajar);
        foreach (RecipeLine line in recipe.Lines)
        {
            Assert.False(string.IsNullOrEmpty(line.PerLitre.Source));
            Assert.NotEqual(Provenance.CookStated, line.PerLitre.Provenance);
            Assert.InRange(line.PerLitre.Value, line.PerLitre.Low, line.PerLitre.High);
        }
    }

    [Fact]
    public void Remouillage_warns_that_warm_bones_must_not_stand() =>
        Assert.Contains(Find("remouillage").Notes, note => note.Contains("straight back on", StringComparison.Ordinal));

    private static StockRecipe Find(string id) => StandardRecipes.Book.TryFind(id, out StockRecipe? recipe) ? recipe : throw new InvalidOperationException(id);

    private static double Grams(StockRecipe recipe, LineRole role) =>
        recipe.Lines.Where(line => line.Role == role && !line.IsOptional).Sum(line => line.PerLitre.Value.Grams);

    private static void Within(double expected, double actual, double share) => Assert.Equal(expected, actual, share * expected);
}
