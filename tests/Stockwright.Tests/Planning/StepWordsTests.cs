using Stockwright.Measures;
using Stockwright.Planning;
using UnitsNet;
using Xunit;

namespace Stockwright.Tests.Planning;

/// <summary>What the steps tell: amounts of the plan, and the cautions of what is in hand.</summary>
public sealed class StepWordsTests
{
    // Meat, fish and shells drip; vegetables, mushrooms and kelp do not.
    [Theory]
    [InlineData("brown-beef", true)]
    [InlineData("white-veal", true)]
    [InlineData("white-chicken", true)]
    [InlineData("pork", true)]
    [InlineData("lamb", true)]
    [InlineData("game", true)]
    [InlineData("fish-fumet", true)]
    [InlineData("shellfish", true)]
    [InlineData("vegetable", false)]
    [InlineData("mushroom", false)]
    [InlineData("kelp", false)]
    public void Raw_bones_are_cautioned_where_they_are_weighed(string recipe, bool told) =>
        Assert.Equal(told, Step(PlanRequests.For(recipe), StepKind.Gather).Cautions.Any(caution => caution.Code is "raw-bones"));

    // Two hours in the room are enough for what is raw: a ham soaks for ten, in the fridge.
    [Fact]
    public void A_long_soak_is_in_the_fridge()
    {
        Assert.StartsWith("Keep it cold", Step(PlanRequests.For("fish-fumet"), StepKind.Soak).Detail, StringComparison.Ordinal);
        Assert.Contains("in the fridge", Step(PlanRequests.For("ham"), StepKind.Soak).Detail, StringComparison.Ordinal);
    }

    // Solids, water and the pot itself.
    [Fact]
    public void A_full_pot_is_as_heavy_as_what_is_in_it()
    {
        BatchPlan plan = PlanRequests.For("fish-fumet").Making(5).Plan();
        double kilograms = plan.Amounts.Sum(line => line.MassInPot.Kilograms) + (plan.Fit.WaterToLine.Liters * 0.9982) + plan.Request.Pot.EmptyMass.Kilograms;
        Caution heavy = plan.Timeline.Steps.Single(step => step.Kind == StepKind.Fill && step.Cautions.Any(caution => caution.Code is "heavy-pot")).Cautions.Single(caution => caution.Code is "heavy-pot");
        Assert.Contains($"about {KitchenFormat.Both(Mass.FromKilograms(kilograms))}.", heavy.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Blanching_and_letting_down_tell_their_water()
    {
        BatchPlan blanched = PlanRequests.For("white-veal").Plan();
        Assert.StartsWith($"Cover with {KitchenFormat.Both(blanched.Blanch!.Water)} of cold water", blanched.Timeline.Steps.Single(step => step.Kind == StepKind.Blanch).Detail, StringComparison.Ordinal);
        BatchPlan letDown = PlanRequests.For("brown-beef").Making(10).Plan();
        PlanStep strain = letDown.Timeline.Steps.Single(step => step.Kind == StepKind.Strain);
        Assert.EndsWith($"stir in {KitchenFormat.Both(letDown.Fit.LetDown)} of drinking water.", strain.Detail, StringComparison.Ordinal);
        Assert.EndsWith(" and let down", strain.Title, StringComparison.Ordinal);
        Assert.DoesNotContain("let down", Step(PlanRequests.For("brown-beef").Making(8), StepKind.Strain).Title, StringComparison.Ordinal);
    }

    private static PlanStep Step(PlanRequest request, StepKind kind) => request.Plan().Timeline.Steps.First(step => step.Kind == kind);
}
