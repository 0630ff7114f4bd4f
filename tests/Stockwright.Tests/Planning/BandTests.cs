using Stockwright.Evidence;
using Stockwright.Planning;
using Stockwright.Simmering;
using Stockwright.Tests.Physics;
using UnitsNet;
using Xunit;

namespace Stockwright.Tests.Planning;

/// <summary>The band of the yield put together by hand from its parts (F.6 in docs/equations.md).</summary>
public sealed class BandTests
{
    // Each part alone: more steam; 0.12 for 0.08 (or 0.05) of the drained bones clinging; 5 % (or 1 %) for 2.5 % lost in straining; 3 % (or 1 %) for 2 % with the fat;
    // what the solids give at the ends of its range, and by how much less clings to them; a share boiled down to by eye. Roots of the sums of squares are the ends.
    [Theory]
    [InlineData("white-chicken")]
    [InlineData("brown-beef")]
    [InlineData("vegetable")]
    [InlineData("kelp-and-dried-fish")]
    [InlineData("demi-glace")]
    public void The_ends_are_the_roots_of_the_sums_of_squares(string recipe)
    {
        PlanRequest request = PlanRequests.For(recipe).Uncovered().Making(3);
        Ends(request.Plan(), 0.08, 0.05, 0.12);
        Ends(request.Clinging(0.2).Plan(), 0.2, null, null);
    }

    // Let down, the water stirred in has no band of its own: the ends are those of the strong stock, and a litre more.
    [Fact]
    public void Water_that_lets_it_down_has_no_band()
    {
        BatchPlan letDown = PlanRequests.For("brown-beef").Making(10).Plan();
        BatchPlan strong = (PlanRequests.For("brown-beef").Making(10) with { Way = SplitWay.Stronger }).Plan();
        Assert.True(letDown.Fit.LetDown.Liters > 0.5);
        Close.Relative((strong.Yield.Central - strong.Yield.Low).Liters, (letDown.Yield.Central - letDown.Yield.Low).Liters, 1e-6);
        Close.Relative((strong.Yield.High - strong.Yield.Central).Liters, (letDown.Yield.High - letDown.Yield.Central).Liters, 1e-6);
    }

    // 0.5 to 2 % of the liquid is lifted with the scum, 1 % likely: half and twice. What lifted solids hold is in what the solids hold, at each end.
    [Fact]
    public void The_rows_of_the_ledger_have_their_ranges()
    {
        BatchPlan plan = PlanRequests.For("white-chicken").Plan();
        Band<Volume> skimmed = Row(plan, "skimmed");
        Close.Relative(0.5, skimmed.Low / skimmed.Central, 1e-9);
        Close.Relative(2, skimmed.High / skimmed.Central, 1e-9);
        Band<Volume> straining = Row(plan, "straining");
        Close.Relative(0.4, straining.Low / straining.Central, 1e-9);
        Close.Relative(2, straining.High / straining.Central, 1e-9);
        Band<Volume> defatting = Row(plan, "defatting");
        Close.Relative(0.5, defatting.Low / defatting.Central, 1e-9);
        Close.Relative(1.5, defatting.High / defatting.Central, 1e-9);

        BatchPlan kelp = PlanRequests.For("kelp-and-dried-fish").Plan();
        double lifted = kelp.Workings.Central.LiftedWithSolidsKilograms / 0.9982;
        Assert.True(lifted > 0.01);
        Band<Volume> held = Row(kelp, "held-by-solids");
        Close.Relative((held.Central.Liters - lifted) * 0.05 / 0.08, held.Low.Liters - lifted, 1e-6);
        Close.Relative((held.Central.Liters - lifted) * 0.12 / 0.08, held.High.Liters - lifted, 1e-6);
    }

    private static void Ends(BatchPlan plan, double clings, double? clingsLow, double? clingsHigh)
    {
        PlanWorkings workings = plan.Workings;
        SimmerRuns runs = new SimmerForecaster(workings.Environment, plan.Request.Heat, plan.Request.Lid, plan.Request.Site).RunAll(workings.Script);
        bool defats = plan.Request.Recipe.ChillsAndDefats;
        double keeps = 0.975 * (defats ? 0.98 : 1);
        double yield = plan.Yield.Central.Liters * 0.9982;
        double bones = runs.Central.ClingingKilograms / clings;
        double Drawn(double lean) => runs.Central.Gave.Sum(gave => gave.Solid.Release.Leaning(lean).Liquor(gave.Since, gave.Hottest));
        double eye = plan.Request.Recipe.Stages.Sum(stage => stage.ReducesTo is { } share ? 1 - (share.Low / share.Value) : 0);
        double eyeMore = plan.Request.Recipe.Stages.Sum(stage => stage.ReducesTo is { } share ? (share.High / share.Value) - 1 : 0);
        Stated<Ratio> holds = workings.Fitter.Clinging;
        double low = Root(
            workings.Fitter.YieldKilograms(runs.LosesMore) - yield,
            bones * ((clingsHigh ?? holds.High.DecimalFractions) - clings) * keeps,
            yield * 0.025 / 0.975,
            defats ? yield * 0.01 / 0.98 : 0,
            (Drawn(-1) - Drawn(0)) * (1 + clings),
            yield * eye);
        double high = Root(
            workings.Fitter.YieldKilograms(runs.LosesLess) - yield,
            bones * (clings - (clingsLow ?? holds.Low.DecimalFractions)) * keeps,
            yield * 0.015 / 0.975,
            defats ? yield * 0.01 / 0.98 : 0,
            (Drawn(1) - Drawn(0)) * (1 + clings),
            yield * eyeMore);
        Assert.NotEqual(low, high, 0.005 * low);
        Close.Relative(low, (plan.Yield.Central - plan.Yield.Low).Liters * 0.9982, 0.005);
        Close.Relative(high, (plan.Yield.High - plan.Yield.Central).Liters * 0.9982, 0.005);
    }

    private static double Root(params double[] parts) => Math.Sqrt(parts.Sum(part => part * part));

    private static Band<Volume> Row(BatchPlan plan, string key) => plan.Ledger.In.Concat(plan.Ledger.Out).Single(row => string.Equals(row.Key, key, StringComparison.Ordinal)).Volume;
}
