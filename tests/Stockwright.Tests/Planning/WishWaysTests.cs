using Stockwright.Kitchen;
using Stockwright.Planning;
using Stockwright.Simmering;
using Stockwright.Tests.Physics;
using UnitsNet;
using Xunit;

namespace Stockwright.Tests.Planning;

/// <summary>The ways to meet a wish that does not fit (F.8 in docs/equations.md): which are offered, in which order, and that each is what it promises.</summary>
public sealed class WishWaysTests
{
    // A 20 L pot gives 9.3 L of brown beef at once. 10 L is a little too big: less water first. 13 L would lack over a quarter: potfuls first, less water beside
    // them. All the bones of 25 L stand out of one pot. Side by side takes two pots and two hobs; three ways are enough.
    [Theory]
    [InlineData(8, 1, 1, "")]
    [InlineData(10, 1, 1, "LetDown Stronger OneAfterAnother")]
    [InlineData(10, 2, 1, "LetDown Stronger OneAfterAnother")]
    [InlineData(10, 2, 2, "LetDown Stronger SideBySide")]
    [InlineData(13, 1, 1, "OneAfterAnother LetDown Stronger")]
    [InlineData(13, 2, 2, "SideBySide LetDown Stronger")]
    [InlineData(25, 2, 2, "SideBySide OneAfterAnother")]
    [InlineData(25, 1, 2, "OneAfterAnother")]
    public void They_are_those_that_can_be_had_each_once(double litres, int pots, int hobs, string expected)
    {
        BatchPlan plan = (Beef().Making(litres) with { PotCount = pots, HobCount = hobs }).Plan();
        IReadOnlyList<WishWay> ways = WishWays.Of(plan);
        Assert.Equal(expected, string.Join(' ', ways.Select(way => way.Way)), StringComparer.Ordinal);
        Assert.True(ways.Count == 0 || ReferenceEquals(plan, ways[0].Plan));
        foreach (WishWay way in ways.Skip(1))
        {
            Assert.Equal(way.Way, way.Plan.Request.Way);
            BatchPlan again = way.Plan.Request.Plan();
            Assert.Equal(way.Plan.Total.Central, again.Total.Central);
            Assert.Equal(way.Plan.Timeline.Ready, again.Timeline.Ready);
            Assert.NotEqual((plan.Total.Central, plan.Timeline.Ready, plan.Fit.Potfuls), (way.Plan.Total.Central, way.Plan.Timeline.Ready, way.Plan.Fit.Potfuls));
        }
    }

    // What is asked for is had, but for the stronger stock, which is less: 10 L's bones leave room for three quarters of it at least, 13 L's for less.
    [Theory]
    [InlineData(10)]
    [InlineData(13)]
    public void All_but_the_stronger_give_what_was_asked(double litres)
    {
        foreach (WishWay way in WishWays.Of(Beef().Making(litres).Plan()))
        {
            double made = way.Plan.Total.Central.Liters;
            if (way.Way == SplitWay.Stronger)
            {
                Assert.InRange(made, (litres < 11 ? 0.75 : 0.4) * litres, (litres < 11 ? 0.98 : 0.75) * litres);
            }
            else
            {
                Close.Relative(litres, made, 0.02);
            }
        }
    }

    // F.8: one batch while it gives three quarters of the wish or more. Asked for, less water is had below that too.
    [Fact]
    public void Less_than_three_quarters_is_not_one_batch_unless_asked()
    {
        List<double> single = [];
        List<double> several = [];
        for (double litres = 10; litres <= 13.4; litres += 0.2)
        {
            BatchPlan strong = (Beef().Making(litres) with { Way = SplitWay.Stronger }).Plan();
            Assert.Equal(FitVerdict.FitsStronger, strong.Fit.Verdict);
            double share = strong.Yield.Central.Liters / litres;
            (Beef().Making(litres).Plan().Fit.Potfuls == 1 ? single : several).Add(share);
        }

        Assert.InRange(single.Min(), 0.75, 0.79);
        Assert.InRange(several.Max(), 0.71, 0.75);
    }

    // Where covering the bones makes more of each potful, no more potfuls are made than the wish needs: one fewer would lack over 2 %.
    [Theory]
    [InlineData("white-chicken", 25)]
    [InlineData("white-chicken", 40)]
    [InlineData("shellfish", 40)]
    [InlineData("game", 31)]
    [InlineData("brown-beef", 25)]
    public void No_potful_more_than_the_wish_needs(string recipe, double litres)
    {
        BatchPlan plan = (PlanRequests.For(recipe).In(Twenty()).Making(litres) with { Way = SplitWay.OneAfterAnother }).Plan();
        Assert.True(plan.Fit.Potfuls > 1);
        Assert.True(plan.Total.Central.Liters >= 0.975 * litres, $"{plan.Total.Central}");
        Assert.True((plan.Fit.Potfuls - 1) * plan.Yield.Central.Liters < 0.985 * litres, $"{plan.Fit.Potfuls} potfuls of {plan.Yield.Central}");
    }

    // All bones at hand go in: the potfuls together take what was brought.
    [Theory]
    [InlineData("white-chicken", "chicken-back", 25)]
    [InlineData("brown-beef", "beef-knuckle", 30)]
    public void Bones_at_hand_all_go_in(string recipe, string cut, double kilograms)
    {
        BatchPlan plan = (PlanRequests.For(recipe).In(Twenty()).Using((cut, kilograms)) with { Way = SplitWay.OneAfterAnother }).Plan();
        Assert.True(plan.Fit.Potfuls > 1);
        Close.Relative(kilograms, plan.Fit.Potfuls * plan.Amounts.Where(line => string.Equals(line.Ingredient.Id, cut, StringComparison.Ordinal)).Sum(line => line.Mass.Kilograms), 1e-9);
    }

    // The other pots that hold the whole wish are named. By hand: 28 cm across, 27.5 cm deep under the line gives 9.3 L, so 12 L takes 35.5 cm of it, 40.5 cm high.
    [Fact]
    public void A_pot_that_holds_one_potful_but_not_all_is_not_named()
    {
        PlanRequest request = PlanRequests.For("brown-beef").Making(13) with
        {
            OtherPots = [PlanRequests.Straight(28, 36) with { Name = "Higher" }, PlanRequests.Straight(28, 50) with { Name = "Highest" }],
        };
        BatchPlan plan = request.Plan();
        Assert.Equal(2, plan.Fit.Potfuls);
        Assert.Equal(["Highest"], plan.Fit.PotsThatFit, StringComparer.Ordinal);
    }

    // The most the pot makes at once is what the same pot gives filled, whatever is asked of it.
    [Fact]
    public void The_most_at_once_is_that_of_the_pot_filled()
    {
        BatchPlan filled = (Beef() with { Goal = new PlanGoal.FillPot() }).Plan();
        Close.Relative(filled.Yield.Central.Liters, Beef().Making(25).Plan().Fit.LargestYield.Liters, 0.002);
        BatchPlan untopped = (Beef().Uncovered() with { Goal = new PlanGoal.FillPot(), TopUp = TopUpRule.None }).Plan();
        Close.Relative(untopped.Yield.Central.Liters, untopped.Fit.LargestYield.Liters, 0.01);
    }

    private static Pot Twenty() => Pot.FromBrimVolume("pot", "Pot", Volume.FromLiters(20), Length.FromCentimeters(28));

    private static PlanRequest Beef() => PlanRequests.For("brown-beef").In(Twenty());
}
