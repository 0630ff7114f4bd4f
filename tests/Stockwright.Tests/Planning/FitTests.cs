using Stockwright.Kitchen;
using Stockwright.Planning;
using Stockwright.Predicting;
using Stockwright.Simmering;
using Stockwright.Tests.Physics;
using UnitsNet;
using Xunit;

namespace Stockwright.Tests.Planning;

/// <summary>The fitter's rules one by one, each worked by hand (F.1, F.2, F.3 and F.8 in docs/equations.md).</summary>
public sealed class FitTests
{
    // Freeboard is the lesser of 5 cm and a fifth of the height (common practice, no source): 20 cm high 4 cm, 25 cm both, 40 cm 5 cm.
    [Theory]
    [InlineData(20, 16, FillLimit.FifthOfHeight)]
    [InlineData(25, 20, FillLimit.FiveCentimetresFreeboard)]
    [InlineData(40, 35, FillLimit.FiveCentimetresFreeboard)]
    public void Room_under_the_rim_is_the_lesser_of_five_centimetres_and_a_fifth(double height, double safe, FillLimit rule)
    {
        (Length level, FillLimit limit) = PotFitter.SafeMaximum(PlanRequests.Straight(28, height));
        Close.To(safe, level.Centimeters, 1e-9);
        Assert.Equal(rule, limit);
    }

    // Two thirds of the brim volume (common practice, no source): in a straight cooker 12 of 18 cm.
    [Fact]
    public void A_pressure_cooker_is_filled_to_two_thirds()
    {
        (Length level, FillLimit limit) = PotFitter.SafeMaximum(PlanRequests.PressureCooker(24, 18));
        Close.To(12, level.Centimeters, 1e-9);
        Assert.Equal(FillLimit.TwoThirds, limit);
    }

    // A pot 20 cm high: three quarters is 15 cm, 7 cm below the rim is 13.
    [Fact]
    public void How_full_is_said_in_three_ways()
    {
        Pot pot = PlanRequests.Straight(28, 20);
        Close.To(15, new FillMark.ShareOfHeight(Ratio.FromPercent(75)).LevelIn(pot).Centimeters, 1e-9);
        Close.To(13, new FillMark.BelowRim(Length.FromCentimeters(7)).LevelIn(pot).Centimeters, 1e-9);
        Close.To(9, new FillMark.Depth(Length.FromCentimeters(9)).LevelIn(pot).Centimeters, 1e-9);
    }

    // Common practice, no source: about half of a stock pot comes out as stock.
    [Theory]
    [InlineData("brown-beef")]
    [InlineData("white-chicken")]
    [InlineData("brown-veal")]
    [InlineData("lamb")]
    public void About_half_of_a_full_stock_pot_comes_out(string recipe)
    {
        BatchPlan plan = (PlanRequests.For(recipe).In(Litres(20, 28)) with { Goal = new PlanGoal.FillPot() }).Plan();
        Assert.InRange(plan.Yield.Central.Liters, 0.42 * 20, 0.55 * 20);
        Close.Relative(plan.Fit.SafeMaximum.Centimeters, plan.Fit.PeakLevel.Centimeters, 0.002);
        Assert.True(plan.Fit.IsCovered);
    }

    [Fact]
    public void A_full_pot_is_no_emptier_of_bones_for_what_boils_away()
    {
        PlanRequest fill = PlanRequests.For("brown-beef").In(Litres(10, 24)) with { Goal = new PlanGoal.FillPot() };
        BatchPlan calm = fill.Plan();
        BatchPlan wild = (fill.Uncovered().SimmeringFor(12).WithFilm(0.6)).Plan();
        BatchPlan untopped = (fill.Uncovered() with { TopUp = TopUpRule.None }).Plan();
        double bones = calm.Amounts[0].Mass.Kilograms;
        Close.Relative(bones, wild.Amounts[0].Mass.Kilograms, 0.06);
        Close.Relative(bones, untopped.Amounts[0].Mass.Kilograms, 0.06);
        Assert.True(wild.HasNotice("boils-away") && !calm.HasNotice("boils-away"));
        Assert.True(wild.Simmer.ToppedUp.Central.Liters > 3);

        // Nothing is added: as many bones in less stock.
        Assert.True(untopped.Yield.Central < 0.9 * calm.Yield.Central);
    }

    [Fact]
    public void A_level_asked_for_is_the_line_the_pot_is_filled_to()
    {
        PlanRequest fill = PlanRequests.For("brown-beef") with { Goal = new PlanGoal.FillPot(), FillTo = new FillMark.Depth(Length.FromCentimeters(20)) };
        BatchPlan plan = fill.Plan();
        Assert.Equal(FillLimit.AsAsked, plan.Fit.Limit);
        Close.To(20, plan.Fit.FillLine.Centimeters, 0.05);
    }

    // Tried by new users: each a little too big, or so it was told.
    [Fact]
    public void Three_kilos_in_an_eight_and_a_half_litre_pot_are_one_batch() =>
        Assert.Equal(1, PlanRequests.For("brown-beef").In(Litres(8.5, 24)).Using(("beef-knuckle", 3)).Plan().Fit.Potfuls);

    [Fact]
    public void Fifteen_portions_of_200_mL_from_it_are_one_batch()
    {
        PlanRequest portions = PlanRequests.For("brown-beef").In(Litres(8.5, 24)) with { Goal = new PlanGoal.MakeVolume(Volume.FromLiters(3), Volume.FromMilliliters(200)) };
        BatchPlan plan = portions.Plan();
        Assert.Equal(1, plan.Fit.Potfuls);
        Close.Relative(3, plan.Yield.Central.Liters, 0.01);
    }

    [Fact]
    public void Three_point_four_litres_from_a_ten_litre_pot_are_one_batch()
    {
        BatchPlan plan = PlanRequests.For("brown-beef").In(Litres(10, 24)).Making(3.4).Uncovered().Plan();
        Assert.Equal(1, plan.Fit.Potfuls);
        Close.Relative(3.4, plan.Yield.Central.Liters, 0.01);
    }

    [Fact]
    public void A_wish_a_little_too_big_is_one_strong_batch_let_down()
    {
        PlanRequest request = PlanRequests.For("brown-beef").In(Litres(8.5, 24));
        BatchPlan fits = request.Making(3.5).Plan();
        BatchPlan plan = request.Making(4.2).Plan();
        Assert.Equal((FitVerdict.FitsStronger, 1), (plan.Fit.Verdict, plan.Fit.Potfuls));
        Close.Relative(4.2, plan.Yield.Central.Liters, 0.005);
        Assert.InRange(plan.Fit.LetDown.Liters, 0.2, 0.25 * 4.2);
        Assert.True(plan.Fit.PeakLevel <= plan.Fit.SafeMaximum * 1.005);
        Assert.True(plan.Fit.IsCovered);
        Assert.True(plan.HasNotice("less-water"));

        // By hand: all of the bones of 4.2 L are in it, and what they gave is spread through 4.2 L again: the strength of a batch that fits.
        Close.Relative(fits.Amounts[0].Mass.Kilograms / 3.5, plan.Amounts[0].Mass.Kilograms / 4.2, 1e-6);
        Close.Relative(Gelatin(fits), Gelatin(plan), 0.08);

        BatchPlan strong = (request.Making(4.2) with { Way = SplitWay.Stronger }).Plan();
        Assert.Equal(Volume.Zero, strong.Fit.LetDown);
        Close.Relative(plan.Yield.Central.Liters - plan.Fit.LetDown.Liters, strong.Yield.Central.Liters, 1e-6);
        Close.Relative(Gelatin(plan) * plan.Yield.Central.Liters / strong.Yield.Central.Liters, Gelatin(strong), 1e-6);
        Assert.Contains(plan.Ledger.In, row => string.Equals(row.Key, "let-down", StringComparison.Ordinal) && row.Volume.Central.Equals(plan.Fit.LetDown, Volume.FromMilliliters(0.001)));
    }

    // Bones at hand make what they make: stronger, and nothing is stirred in unless asked.
    [Fact]
    public void Bones_a_little_too_many_are_one_strong_batch()
    {
        PlanRequest request = PlanRequests.For("brown-beef").In(Litres(8.5, 24)).Using(("beef-knuckle", 4));
        BatchPlan plan = request.Plan();
        Assert.Equal((FitVerdict.FitsStronger, Volume.Zero), (plan.Fit.Verdict, plan.Fit.LetDown));
        Assert.True((request with { Way = SplitWay.LetDown }).Plan().Fit.LetDown > Volume.FromLiters(0.2));
    }

    // 25 L from 20 L pots: at most 9.3 at once, so three potfuls of 8.33; two pots and two hobs make two rounds of them, the second with one pot.
    [Theory]
    [InlineData(1, 1, 1, 3)]
    [InlineData(2, 1, 1, 3)]
    [InlineData(2, 2, 2, 2)]
    [InlineData(8, 3, 3, 1)]
    public void Too_big_a_wish_is_equal_potfuls(int pots, int hobs, int atOnce, int rounds)
    {
        BatchPlan plan = (PlanRequests.For("brown-beef").In(Litres(20, 28)).Making(25) with { PotCount = pots, HobCount = hobs }).Plan();
        Assert.Equal((3, atOnce, rounds), (plan.Fit.Potfuls, plan.Fit.AtOnce, plan.Fit.Rounds));
        Close.Relative(25, plan.Yield.Central.Liters * plan.Fit.Potfuls, 0.01);
        Assert.Equal(3, Enumerable.Range(0, plan.Fit.Rounds).Sum(plan.Fit.PotsInRound));
        Assert.True(plan.Fit.LargestYield >= plan.Yield.Central * 0.99);
    }

    // A wide pot: covering the bones takes more than the wish, so it is let fall to where the wish is, and kept there.
    [Fact]
    public void What_covers_the_bones_and_is_too_much_falls_first()
    {
        BatchPlan plan = PlanRequests.For("brown-beef").In(PlanRequests.Straight(40, 12)).Uncovered().Making(2).Plan();
        Assert.True(plan.HasNotice("falls-first"));
        Assert.True(plan.Fit.HeldLine < plan.Fit.FillLine);
        Close.Relative(2, plan.Yield.Central.Liters, 0.01);
    }

    [Fact]
    public void Solids_that_stand_out_of_the_level_asked_for_are_told()
    {
        BatchPlan plan = (PlanRequests.For("brown-beef").Using(("beef-knuckle", 6)) with { FillTo = new FillMark.Depth(Length.FromCentimeters(12)) }).Plan();
        Assert.True(plan.HasNotice("stand-out"));
    }

    private static double Gelatin(BatchPlan plan) => Predictor.Predict(plan).Composition.Gelatin.Percent;

    private static Pot Litres(double brim, double centimetres) => Pot.FromBrimVolume("pot", "Pot", Volume.FromLiters(brim), Length.FromCentimeters(centimetres));
}
