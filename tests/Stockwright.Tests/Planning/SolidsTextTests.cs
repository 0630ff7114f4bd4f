using Stockwright.Evidence;
using Stockwright.Larder;
using Stockwright.Planning;
using Stockwright.Recipes;
using Xunit;

namespace Stockwright.Tests.Planning;

/// <summary>What lies in the pot is called what it is.</summary>
public sealed class SolidsTextTests
{
    public static TheoryData<string> Recipes => [.. StandardRecipes.Book.Recipes.Select(recipe => recipe.Id)];

    [Theory]
    [InlineData("white-veal", "the bones")]
    [InlineData("fish-fumet", "the bones")]
    [InlineData("remouillage", "the bones")]
    [InlineData("pork-bone-broth", "the bones")]
    [InlineData("meat-broth", "the bones")]
    [InlineData("whole-chicken-broth", "the meat")]
    [InlineData("consomme", "the meat")]
    [InlineData("shellfish", "the shells")]
    [InlineData("vegetable", "the vegetables")]
    [InlineData("court-bouillon", "the vegetables")]
    [InlineData("sweetcorn-cob-stock", "the vegetables")]
    [InlineData("demi-glace", "the vegetables")]
    [InlineData("mushroom", "the mushrooms")]
    [InlineData("dried-mushroom-stock", "the mushrooms")]
    [InlineData("kelp", "the kelp")]
    [InlineData("kelp-and-dried-fish", "the kelp")]
    [InlineData("dried-anchovy-stock", "the dried fish")]
    [InlineData("second-dashi", "everything in the pot")]
    public void The_pot_holds_what_it_holds(string recipe, string word) =>
        Assert.Equal(word, PlanRequests.For(recipe).Making(2).Plan().Solids);

    [Theory]
    [InlineData("kelp-and-dried-fish", "everything in the pot")]
    [InlineData("vegetable", "the vegetables")]
    [InlineData("brown-veal", "the bones")]
    public void A_recipe_has_a_word_before_there_is_a_plan(string recipe, string word) =>
        Assert.Equal(word, SolidsText.Of(PlanRequests.For(recipe).Recipe, StandardLarder.Table));

    [Fact]
    public void Bones_at_hand_decide_the_word() =>
        Assert.Equal("the bones and meat", PlanRequests.For("white-beef").Using(("beef-knuckle", 1), ("lean-beef", 1)).Plan().Solids);

    // Carrots roasted for want of bones are turned as carrots.
    [Theory]
    [InlineData("brown-chicken", "carrot", "Spread the vegetables on trays")]
    [InlineData("brown-chicken", "carrot", "Turn the vegetables")]
    [InlineData("brown-chicken", "chicken-carcass", "Turn the bones")]
    [InlineData("white-veal", "mushroom", "Blanch the mushrooms")]
    [InlineData("white-veal", "veal-bones", "Blanch the bones")]
    public void Steps_name_what_is_handled(string recipe, string ingredient, string title) =>
        Assert.Contains(PlanRequests.For(recipe).Using((ingredient, 2)).Plan().Timeline.Steps, step => string.Equals(step.Title, title, StringComparison.Ordinal));

    [Theory]
    [InlineData("vegetable", "the vegetables")]
    [InlineData("mushroom", "the mushrooms")]
    [InlineData("white-beef", "the bones")]
    public void On_a_mountain_it_is_said_what_gives_less(string recipe, string words) =>
        Assert.Contains(PlanRequests.For(recipe).AtAltitude(3500).Plan().Notices, notice => notice.Code is NoticeCode.SimmerOutOfReach && notice.Says(words));

    [Theory]
    [MemberData(nameof(Recipes))]
    public void Nobody_reads_of_bones_or_paste_that_are_not_there(string recipe)
    {
        BatchPlan plan = PlanRequests.For(recipe).Making(2).Plan();
        string[] read =
        [
            .. plan.Timeline.Steps.SelectMany(step => (string[])[step.Title, step.Detail]),
            .. plan.Notices.Where(notice => notice.Code is not "not-covered").SelectMany(notice => notice.All()).Where(figure => figure.Kind == FigureKind.Name).Select(figure => figure.Word),
        ];
        Assert.NotEmpty(read);
        bool hasBones = plan.Amounts.Any(line => line.Ingredient.Group is IngredientGroup.Beef or IngredientGroup.Veal or IngredientGroup.Poultry or IngredientGroup.Pork
            or IngredientGroup.Lamb or IngredientGroup.Game or IngredientGroup.Fish || string.Equals(line.Ingredient.Id, "spent-bones", StringComparison.Ordinal));
        bool hasPaste = plan.Amounts.Any(line => line.Line.Role == LineRole.Paste);
        Assert.DoesNotContain(read, words => !hasBones && words.Contains("bones", StringComparison.OrdinalIgnoreCase));
        Assert.DoesNotContain(read.Concat(plan.Ledger.In.Select(entry => entry.Name)), words => !hasPaste && words.Contains("paste", StringComparison.OrdinalIgnoreCase));
    }

    [Fact]
    public void Paste_is_spread_only_when_it_is_taken()
    {
        BatchPlan with = PlanRequests.For("brown-beef").Plan();
        Assert.Equal(with.Roast!.Setting.PasteJoinsBeforeEnd, Assert.NotNull(with.Roast.PasteJoinsBeforeEnd));
        Assert.Contains(with.Timeline.Steps, step => string.Equals(step.Title, "Spread the paste", StringComparison.Ordinal));
        Assert.Contains(with.Ledger.In, entry => string.Equals(entry.Name, "Tomato paste", StringComparison.Ordinal));
        BatchPlan without = (PlanRequests.For("brown-beef") with { LeftOut = new HashSet<string>(["tomato-paste"], StringComparer.Ordinal) }).Plan();
        Assert.Null(without.Roast!.PasteJoinsBeforeEnd);
        Assert.NotNull(without.Roast.VegetablesJoinBeforeEnd);
        Assert.DoesNotContain(without.Timeline.Steps, step => string.Equals(step.Title, "Spread the paste", StringComparison.Ordinal));
        Assert.DoesNotContain(without.Ledger.In, entry => entry.Name.Contains("paste", StringComparison.OrdinalIgnoreCase));
    }
}
