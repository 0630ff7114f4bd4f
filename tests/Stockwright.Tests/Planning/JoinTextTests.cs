using Stockwright.Planning;
using Xunit;

namespace Stockwright.Tests.Planning;

/// <summary>When a line goes in is told from the moment its recipe counts from, and the heat by what it is.</summary>
public sealed class JoinTextTests
{
    [Theory]
    [InlineData("brown-chicken", 4, "chicken-carcass", "")]
    [InlineData("brown-chicken", 4, "onion", "in 1 h after it simmers")]
    [InlineData("brown-chicken", 4, "bay-leaf", "in 1 h before the end")]
    [InlineData("brown-chicken", 1.25, "bay-leaf", "in 50 min before the end")] // A third of 75 min in, with the onions: 50 min are left.
    [InlineData("brown-beef", 9, "tomato-paste", "in after the first skim")]
    [InlineData("white-beef", 9, "onion", "in 1 h before the end")]
    [InlineData("white-beef", 1, "onion", "in as soon as it simmers")]
    [InlineData("star-anise-beef", 7, "clove", "in 50 min before the end")]
    [InlineData("vegetable", 0.75, "bay-leaf", "")]
    [InlineData("kelp-and-dried-fish", 0, "kombu", "")]
    [InlineData("kelp-and-dried-fish", 0, "bonito-flakes", "in at the start of the second stage")]
    public void A_line_goes_in_when_its_recipe_says(string recipe, double hours, string ingredient, string words)
    {
        PlanRequest request = PlanRequests.For(recipe);
        BatchPlan plan = (hours > 0 ? request.SimmeringFor(hours) : request).Plan();
        Assert.Equal(words, JoinText.Of(plan, Line(plan, ingredient)).Replace('\u00A0', ' '));
    }

    [Theory]
    [InlineData("onion", 0.5, "in before the lid is locked")]
    [InlineData("onion", 1.5, "in 1 h before the end")]
    public void Behind_a_locked_lid_nothing_goes_in(string ingredient, double hours, string words)
    {
        BatchPlan plan = (PlanRequests.For("white-chicken").SimmeringFor(hours) with { Pot = PlanRequests.PressureCooker(28, 32.5), Lid = Stockwright.Kitchen.LidPosition.On }).Plan();
        Assert.Equal(words, JoinText.Of(plan, Line(plan, ingredient)).Replace('\u00A0', ' '));
    }

    [Theory]
    [InlineData("white-veal", "Simmer", "simmering")]
    [InlineData("consomme", "Simmer", "simmering")]
    [InlineData("whole-chicken-broth", "Simmer", "simmering")]
    [InlineData("dried-mushroom-stock", "Simmer", "simmering")]
    [InlineData("kelp", "Warm slowly", "warming slowly")]
    [InlineData("kelp-and-dried-fish", "Steep", "steeping")]
    [InlineData("pork-bone-broth", "Keep it boiling hard", "boiling hard")]
    [InlineData("glace", "Boil it down", "boiling down")]
    public void Kelp_does_not_simmer(string recipe, string title, string doing)
    {
        BatchPlan plan = PlanRequests.For(recipe).Making(0.5).Plan();
        Assert.Equal(title, Assert.Single(plan.Timeline.Steps, step => step.Kind == StepKind.Simmer).Title);
        Assert.Equal(doing, plan.Timeline.OnHeat);
        bool simmers = string.Equals(title, "Simmer", StringComparison.Ordinal);
        Assert.DoesNotContain(plan.Timeline.Steps, step => !simmers && (step.Title + step.Detail).Contains("simmer", StringComparison.OrdinalIgnoreCase));
        Assert.DoesNotContain(plan.Notices, notice => !simmers && notice.Says("the simmer"));
    }

    private static AmountLine Line(BatchPlan plan, string ingredient) =>
        plan.Amounts.Single(line => string.Equals(line.Ingredient.Id, ingredient, StringComparison.Ordinal));
}
