using Stockwright.Planning;
using Stockwright.Recipes;
using Stockwright.Simmering;
using Stockwright.Tests.Physics;
using UnitsNet;
using Xunit;

namespace Stockwright.Tests.Planning;

/// <summary>Levels in the pot, worked by hand in straight pots, where volume and height go together (F.1, F.3 in docs/equations.md).</summary>
public sealed class FillLevelTests
{
    // 28 cm across is 615.75 cm2: water and solids under the line stand as high as their volumes over that. Only what is in from the start counts.
    [Theory]
    [InlineData("brown-beef")]
    [InlineData("white-beef")]
    [InlineData("vegetable")]
    public void Water_and_what_it_covers_stand_as_high_as_their_volume(string recipe)
    {
        BatchPlan plan = PlanRequests.For(recipe).Making(5).Plan();
        double liquids = plan.Ledger.In.Where(row => row.Key is "other-liquids").Sum(row => row.Volume.Central.Liters);
        double litres = plan.Fit.WaterToLine.Liters + liquids + plan.Fit.SolidsDisplacement.Liters;
        Close.Relative(litres / 0.61575, plan.Fit.FillLine.Centimeters, 0.0015);
        Close.To(32.5, plan.Fit.FillLine.Centimeters + plan.Fit.FillLineFromRim.Centimeters, 1e-9);
        Close.To(32.5, plan.Fit.PeakLevel.Centimeters + plan.Fit.Freeboard.Centimeters, 1e-9);
        Close.To(plan.Fit.FillLine.Centimeters, plan.Fit.SolidsHeight.Centimeters + plan.Fit.CoverDepth.Centimeters, 1e-9);
    }

    // Let fall: the pot is filled to the line, which covers by 2.5 cm, and the lower line is where it is kept.
    [Fact]
    public void What_falls_first_is_filled_to_the_cover()
    {
        BatchPlan plan = PlanRequests.For("brown-beef").In(PlanRequests.Straight(40, 12)).Uncovered().Making(2).Plan();
        Assert.True(plan.Fit.HeldLine < plan.Fit.FillLine - Length.FromMillimeters(5));
        Close.To(12, plan.Fit.FillLine.Centimeters + plan.Fit.FillLineFromRim.Centimeters, 1e-9);
        Close.To(2.5, plan.Fit.CoverDepth.Centimeters, 0.02);

        // What it falls to gives the wish: covering decides the line, not the yield.
        Assert.False(plan.Fit.CoverDecidesWater);
    }

    // Practice: covered by 2.5 cm where covering decides. The wine of a fumet covers as water does.
    [Theory]
    [InlineData("white-chicken")]
    [InlineData("fish-fumet")]
    public void The_cover_is_two_and_a_half_centimetres(string recipe)
    {
        BatchPlan plan = (PlanRequests.For(recipe).In(PlanRequests.Straight(45, 30)).Making(2) with { TopUp = TopUpRule.None }).Plan();
        Assert.True(plan.Fit.CoverDecidesWater);
        Close.To(2.5, plan.Fit.CoverDepth.Centimeters, 0.02);
    }

    // Blanched under 2.5 cm of water as well: the blanched bones heap in 28 cm as high as they do in the pot alone.
    [Fact]
    public void Bones_are_blanched_under_two_and_a_half_centimetres()
    {
        BatchPlan plan = PlanRequests.For("white-veal").Plan();
        PotContents contents = new(plan.Request.Pot);
        contents.Add([.. plan.Workings.Fitted.Load.Items.Where(item => item.Line.Preparation == Preparation.Blanch).Select(item => item.Charge!)], default);
        double level = contents.Level(plan.Blanch!.Water.Liters, 15, default);
        Close.To(2.5, (level - contents.HeapHeight(default)) * 100, 0.03);
    }

    // A wish one to five per cent over the most the pot makes is not simply poured over the line.
    [Theory]
    [InlineData(1.005)]
    [InlineData(1.01)]
    [InlineData(1.02)]
    [InlineData(1.03)]
    [InlineData(1.05)]
    public void A_wish_just_too_big_does_not_stand_over_the_line(double times)
    {
        PlanRequest request = PlanRequests.For("brown-beef");
        double most = (request with { Goal = new PlanGoal.FillPot() }).Plan().Yield.Central.Liters;
        BatchPlan plan = request.Making(most * times).Plan();
        Assert.Equal(1, plan.Fit.Potfuls);
        Assert.InRange(plan.Fit.PeakLevel / plan.Fit.SafeMaximum, 0.99, 1.005);
        Assert.InRange(plan.Yield.Central.Liters / (most * times), 0.98, 1.01);
        Assert.False(plan.Fit.CoverDecidesWater);
    }

    // Water swells by 4 % to the boil: bones filled cold to the very line would stand over it hot, so that line is not taken; one lower is, and is no limit.
    [Fact]
    public void Bones_filled_to_a_line_stay_under_the_rim_when_hot()
    {
        PlanRequest bones = PlanRequests.For("brown-beef").Using(("beef-knuckle", 7));
        BatchPlan brim = (bones with { FillTo = new FillMark.Depth(Length.FromCentimeters(27.5)) }).Plan();
        Assert.True(brim.Fit.PeakLevel <= brim.Fit.SafeMaximum * 1.005, $"{brim.Fit.PeakLevel}");
        BatchPlan lower = (bones with { FillTo = new FillMark.Depth(Length.FromCentimeters(25)) }).Plan();
        Close.To(25, lower.Fit.FillLine.Centimeters, 0.05);
        Assert.Equal(FillLimit.FiveCentimetresFreeboard, lower.Fit.Limit);
        Assert.False(lower.HasNotice("yield-differs"));
    }

    // Solids that stand out of a full pot are not one batch, however it is asked for.
    [Theory]
    [InlineData(SplitWay.Stronger)]
    [InlineData(SplitWay.LetDown)]
    public void Bones_that_stand_out_of_a_full_pot_take_another(SplitWay way)
    {
        for (double kilograms = 10; kilograms <= 22; kilograms += 2)
        {
            BatchPlan plan = (PlanRequests.For("brown-beef").Using(("beef-knuckle", kilograms)) with { Way = way }).Plan();
            Assert.True(plan.Fit.IsCovered, $"{kilograms} kg: {plan.Fit.CoverDepth}");
            Assert.True(kilograms < 18 || plan.Fit.Potfuls > 1, $"{kilograms} kg");
        }
    }

    // In a pot that widens, a litre less is no fixed height less: it is found by steps.
    [Fact]
    public void Less_water_fills_a_tapered_pot_to_the_limit()
    {
        PlanRequest request = PlanRequests.For("brown-beef").In(PlanRequests.Tapered(18, 36, 28));
        double most = (request with { Goal = new PlanGoal.FillPot() }).Plan().Yield.Central.Liters;
        BatchPlan plan = (request.Making(most * 1.15) with { Way = SplitWay.Stronger }).Plan();
        Assert.Equal(FitVerdict.FitsStronger, plan.Fit.Verdict);
        Assert.InRange(plan.Request.Pot.VolumeAt(plan.Fit.PeakLevel) / plan.Request.Pot.VolumeAt(plan.Fit.SafeMaximum), 0.998, 1.002);
    }

    // A pot with less water is as full as it may be: nothing of the wish is lost to caution.
    [Theory]
    [InlineData("brown-beef", 10)]
    [InlineData("game", 10)]
    [InlineData("lamb", 10.5)]
    public void Less_water_fills_the_pot_to_the_limit(string recipe, double litres)
    {
        BatchPlan plan = (PlanRequests.For(recipe).Making(litres) with { Way = SplitWay.Stronger }).Plan();
        Assert.Equal(FitVerdict.FitsStronger, plan.Fit.Verdict);
        Assert.InRange(plan.Fit.PeakLevel / plan.Fit.SafeMaximum, 0.997, 1.003);
    }
}
