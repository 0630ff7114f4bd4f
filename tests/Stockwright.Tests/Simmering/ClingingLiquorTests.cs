using Stockwright.Evidence;
using Stockwright.Kitchen;
using Stockwright.Planning;
using Stockwright.Simmering;
using Stockwright.Tests.Planning;
using Stockwright.Tests.Predicting;
using UnitsNet;
using Xunit;

namespace Stockwright.Tests.Simmering;

/// <summary>What clings to drained solids, in a kitchen that weighed it and in one that did not (S.7).</summary>
public sealed class ClingingLiquorTests
{
    /// <summary>Two kilograms of bare bones with 160 g on them: 2.16 kg; 140 g drip and are wiped off, 20 g (the hundredth stated) stay.</summary>
    [Fact]
    public void A_weighed_colander_gives_back_what_clung() =>
        Assert.Equal(0.08, ClingingLiquor.FromWeighedColander(Mass.FromKilograms(2.16), Mass.FromGrams(140)).DecimalFractions, 1e-12);

    [Theory]
    [InlineData(0, 0.1)]
    [InlineData(-1, 0.1)]
    [InlineData(2, 0)]
    [InlineData(2, -0.1)]
    [InlineData(2, 1)]
    [InlineData(2, 3)]
    public void Nonsense_from_the_scales_is_refused(double drained, double cameOff) => Assert.Throws<ArgumentOutOfRangeException>(
        () => ClingingLiquor.FromWeighedColander(Mass.FromKilograms(drained), Mass.FromKilograms(cameOff)));

    /// <summary>15 % either way; where a hundredth of the bones is more than that, by that: at 0.02, 1.5 times.</summary>
    [Theory]
    [InlineData(0.08, 1.15)]
    [InlineData(0.3, 1.15)]
    [InlineData(0.02, 1.5)]
    [InlineData(0.01, 2)]
    public void A_kitchens_own_figure_replaces_the_default(double own, double within)
    {
        Stated<Ratio> clings = ClingingLiquor.For(new KitchenSite { OwnClinging = Ratio.FromDecimalFractions(own) });
        Assert.Equal(own, clings.Value.DecimalFractions, 1e-12);
        Assert.Equal(own / within, clings.Low.DecimalFractions, 1e-12);
        Assert.Equal(own * within, clings.High.DecimalFractions, 1e-12);
        Assert.Equal(Provenance.CookStated, clings.Provenance);
        Assert.Equal(SimmerAssumptions.Standard.Clinging, ClingingLiquor.For(new KitchenSite()));
    }

    /// <summary>The default, weighed: the same plan, with what is held back and the yield known better.</summary>
    [Theory]
    [InlineData("white-chicken")]
    [InlineData("fish-fumet")]
    [InlineData("kelp-and-dried-fish")]
    public void Weighing_what_was_assumed_changes_no_figure_and_narrows_its_band(string recipe)
    {
        BatchPlan assumed = PlanRequests.For(recipe).Plan();
        BatchPlan weighed = PlanRequests.For(recipe).Clinging(SimmerAssumptions.Standard.Clinging.Value.DecimalFractions).Plan();
        Assert.Equal(assumed.Yield.Central.Liters, weighed.Yield.Central.Liters, 1e-9);
        Assert.Equal(assumed.SpentSolids.Central.Kilograms, weighed.SpentSolids.Central.Kilograms, 1e-9);
        Assert.True(weighed.Yield.High - weighed.Yield.Low < assumed.Yield.High - assumed.Yield.Low);
        Assert.True(weighed.SpentSolids.High - weighed.SpentSolids.Low < assumed.SpentSolids.High - assumed.SpentSolids.Low);
    }

    /// <summary>
    /// Twice as much clings to bones, to fish frames, and to kelp lifted out before the fish goes in: what the solids keep doubles, but for the
    /// little that a changed size changes the solids themselves.
    /// </summary>
    [Theory]
    [InlineData("white-chicken")]
    [InlineData("fish-fumet")]
    [InlineData("vegetable")]
    [InlineData("kelp-and-dried-fish")]
    public void Everything_that_drains_moves_with_the_bones(string recipe)
    {
        BatchPlan usual = PlanRequests.For(recipe).Plan();
        BatchPlan twice = PlanRequests.For(recipe).Clinging(0.16).Plan();
        Assert.Equal(2, Held(twice) / Held(usual), 0.02);
        Assert.Equal(Held(twice) - Held(usual), (twice.SpentSolids.Central - usual.SpentSolids.Central).Kilograms / 0.9982, 0.05 * Held(usual));
    }

    /// <summary>Where the stock wanted decides the water, what clings is poured in beside it: F.5, so much water more as clings more, but for what the losses take of it.</summary>
    [Fact]
    public void The_same_stock_is_made_of_more_water()
    {
        BatchPlan usual = PlanRequests.For("vegetable").Plan();
        BatchPlan twice = PlanRequests.For("vegetable").Clinging(0.16).Plan();
        Assert.False(usual.Fit.CoverDecidesWater || twice.Fit.CoverDecidesWater);
        Assert.True(Held(twice) > 1.9 * Held(usual));
        Assert.Equal(usual.Yield.Central.Liters, twice.Yield.Central.Liters, 0.001);
        Assert.Equal(Held(twice) - Held(usual), (twice.Fit.WaterToLine - usual.Fit.WaterToLine).Liters, 0.1 * Held(usual));
    }

    /// <summary>Where covering the bones decides the water it is the same, and the stock is less by what clings more, after the shares lost.</summary>
    [Fact]
    public void The_same_water_makes_less_stock()
    {
        BatchPlan usual = PlanRequests.For("white-chicken").Plan();
        BatchPlan twice = PlanRequests.For("white-chicken").Clinging(0.16).Plan();
        Assert.True(usual.Fit.CoverDecidesWater && twice.Fit.CoverDecidesWater);
        Assert.True(Held(twice) > 1.9 * Held(usual));
        Assert.Equal(usual.Fit.WaterToLine.Liters, twice.Fit.WaterToLine.Liters, 0.001);
        Assert.Equal((Held(twice) - Held(usual)) * 0.975 * 0.98, (usual.Yield.Central - twice.Yield.Central).Liters, 0.02 * Held(usual));
    }

    [Fact]
    public void The_plan_leans_on_the_kitchens_own_figure()
    {
        Assumption own = Retained(PlanRequests.For("white-chicken").Clinging(0.2).Plan());
        Assert.Equal(0.2, ((Ratio)own.Value.Central).DecimalFractions, 1e-12);
        Assert.Equal((Provenance.CookStated, "weighed in this kitchen"), (own.Provenance, own.Source));
        Assert.Equal(Provenance.Estimate, Retained(PlanRequests.For("white-chicken").Plan()).Provenance);

        static Assumption Retained(BatchPlan plan) => plan.Assumptions.Single(one => one.Key is "retained");
    }

    /// <summary>The prediction draws from it too: the ten and ninety per cent points of what clings lie 15 % off, not 38 and 50.</summary>
    [Fact]
    public void The_sample_draws_from_the_kitchens_own_figure()
    {
        BatchPlan plan = PlanRequests.For("white-beef").Clinging(0.2).Plan();
        double Yield(double deviations) => Draws.At(plan, "clinging liquor", deviations).YieldKilograms;

        // F.5: what clings leaves the yield but for what straining and defatting would have taken of it.
        double kept = (1 - SimmerAssumptions.Standard.StrainLoss.Value.DecimalFractions) * (plan.Request.Recipe.ChillsAndDefats ? 1 - SimmerAssumptions.Standard.DefatLoss.Value.DecimalFractions : 1);
        double clings = Held(plan) * 0.9982 * kept;
        Assert.Equal(0.15 * clings, Yield(0) - Yield(1.2815515655446), 0.001 * clings);
        Assert.Equal((1 - (1 / 1.15)) * clings, Yield(-1.2815515655446) - Yield(0), 0.001 * clings);
    }

    private static double Held(BatchPlan plan) => plan.Ledger.Out.Single(row => row.Key is "held-by-solids").Volume.Central.Liters;
}
