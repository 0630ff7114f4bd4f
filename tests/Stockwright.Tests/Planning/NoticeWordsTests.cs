using Stockwright.Evidence;
using Stockwright.Kitchen;
using Stockwright.Planning;
using Stockwright.Simmering;
using UnitsNet;
using Xunit;

namespace Stockwright.Tests.Planning;

/// <summary>What each notice says, and the edge it is said at: from a plan with one figure of it changed.</summary>
public sealed class NoticeWordsTests
{
    private static readonly PlanNotice None = new(NoticeLevel.Hint, "", null);

    // Over by more than half a percent is told, by how much: 0.6 % of 27.5 cm is 2 mm.
    [Fact]
    public void A_peak_over_the_safe_maximum_is_told_by_how_much()
    {
        BatchPlan plan = Beef().Plan();
        Length safe = plan.Fit.SafeMaximum;
        Assert.Same(None, Told(plan, plan.Fit with { PeakLevel = safe * 1.004 }, "over-safe-maximum"));
        PlanNotice notice = Told(plan, plan.Fit with { PeakLevel = safe * 1.02 }, "over-safe-maximum");
        Assert.Equal(NoticeLevel.Warning, notice.Level);
        Assert.Equal(0.02 * safe.Meters, Assert.Single(notice.Figures).Value, 1e-9);
    }

    // 4.2 L of which 0.5 L is stirred in: 3.7 L of stronger stock.
    [Fact]
    public void Less_water_tells_the_stronger_stock_and_the_water()
    {
        BatchPlan plan = Beef().Plan();
        Band<Volume> yield = Litres(4.2);
        FitReport fit = plan.Fit with { Verdict = FitVerdict.FitsStronger, LetDown = Volume.FromLiters(0.5) };
        PlanNotice notice = Told(plan, fit, "less-water", yield: yield);
        Assert.True(notice.Says(NoticePhrase.LetDownAfterStraining));
        Assert.Equal([0.0037, 0.0005], notice.Sizes(FigureKind.Volume).Select(volume => Math.Round(volume, 6)));
        PlanNotice later = Told(plan, fit with { LetDown = Volume.Zero }, "less-water", yield: yield);
        Assert.True(later.Says(NoticePhrase.LetDownInUse));
        Assert.Equal(0.0042, Assert.Single(later.Sizes(FigureKind.Volume)), 1e-9);
    }

    // Six potfuls: one pot makes six rounds, six pots none, two pots three rounds.
    [Theory]
    [InlineData(1, NoticePhrase.InRounds, new[] { 6.0, 6 })]
    [InlineData(6, NoticePhrase.SideBySide, new[] { 6.0, 6 })]
    [InlineData(2, NoticePhrase.InRoundsSideBySide, new[] { 6.0, 3, 2 })]
    public void Rounds_and_pots_are_told(int atOnce, string how, double[] numbers)
    {
        BatchPlan plan = Beef().Plan();
        FitReport fit = plan.Fit with { Verdict = FitVerdict.NeedsRounds, Potfuls = 6, AtOnce = atOnce, LargestYield = Volume.FromLiters(9.3), PotsThatFit = ["Big"] };
        PlanNotice notice = Told(plan, fit, "does-not-fit", yield: Litres(8));
        Assert.True(notice.Says(how));
        Assert.Equal(numbers, notice.Sizes(FigureKind.Number));
        Assert.Equal(0.0093, Assert.Single(notice.Sizes(FigureKind.Volume)), 1e-9);
        Assert.True(notice.Says(NoticePhrase.FitsInOneGo) && notice.Says("Big"));
    }

    // In a pot 32.5 cm high held at 12 cm, filled to 14: let it fall to 20.5 cm under the rim. Nothing is told where nothing is topped up.
    [Fact]
    public void How_far_it_may_fall_is_told_from_the_rim()
    {
        BatchPlan plan = Beef().Plan();
        FitReport fit = plan.Fit with { FillLine = Length.FromCentimeters(14), HeldLine = Length.FromCentimeters(12) };
        SimmerOutcome topped = Beef().Uncovered().Plan().Workings.Central;
        Assert.True(topped.ToppedUpKilograms > 0);
        Assert.Equal(0.205, Assert.Single(Told(plan, fit, "falls-first", topped).Figures).Value, 1e-9);
        Assert.Same(None, Told(plan, fit with { HeldLine = Length.FromCentimeters(13.6) }, "falls-first", topped));
        BatchPlan alone = (PlanRequests.For("white-chicken").In(PlanRequests.SlowCooker(26, 18)).Making(2) with { Lid = LidPosition.On }).SimmeringFor(6).Plan();
        Assert.Equal(0, alone.Workings.Central.ToppedUpKilograms);
        Assert.Same(None, Told(alone, alone.Fit with { HeldLine = alone.Fit.FillLine / 2 }, "falls-first"));
    }

    // More than a third of the water: of 6 L of steam, 17 L is more than thrice that, 19 L is not. A lid ajar is offered to who has none.
    [Fact]
    public void Over_a_third_boiling_away_is_told()
    {
        BatchPlan open = Beef().Uncovered().Plan();
        double steam = open.Workings.Central.SteamKilograms;
        Assert.Same(None, Told(open, open.Fit with { WaterToLine = Volume.FromLiters(3.1 * steam) }, "boils-away"));
        Assert.True(Told(open, open.Fit with { WaterToLine = Volume.FromLiters(2.9 * steam) }, "boils-away").Says(NoticePhrase.LidSaves));
        BatchPlan ajar = Beef().Plan();
        PlanNotice covered = Told(ajar, ajar.Fit with { WaterToLine = Volume.FromLiters(ajar.Workings.Central.SteamKilograms) }, "boils-away");
        Assert.NotSame(None, covered);
        Assert.False(covered.Says(NoticePhrase.LidSaves));
    }

    // Low is both: under 4 cm, and under 0.15 of the height.
    [Theory]
    [InlineData(3.9, 32.5, true)]
    [InlineData(4.1, 32.5, false)]
    [InlineData(3.9, 25, false)]
    public void A_pot_is_too_wide_where_the_liquid_stands_low_in_it(double line, double height, bool told)
    {
        BatchPlan plan = Beef().In(PlanRequests.Straight(28, height)).Plan();
        Length level = Length.FromCentimeters(line);
        Assert.Equal(told, Told(plan, plan.Fit with { FillLine = level, HeldLine = level }, "pot-too-wide") != None);
    }

    // A tenth of the level it began with is all but dry.
    [Theory]
    [InlineData(0.09, true)]
    [InlineData(0.11, false)]
    public void Running_all_but_dry_is_told(double share, bool told)
    {
        BatchPlan plan = Beef().Plan();
        SimmerOutcome outcome = Beef().Plan().Workings.Central;
        outcome.LowestMetres = share * outcome.StartMetres;
        Assert.Equal(told, Told(plan, plan.Fit, "runs-dry", outcome) != None);
        Assert.Same(None, Told(plan, plan.Fit, "uncovered", outcome));
        BatchPlan untopped = (Beef() with { TopUp = TopUpRule.None }).Plan();
        Assert.NotSame(None, Told(untopped, untopped.Fit, "uncovered", outcome));
    }

    // Three per cent off is another yield than was asked. A full pot, one batch with less water and bones filled to a line are as asked.
    [Theory]
    [InlineData(1.02, "")]
    [InlineData(1.04, "yield-differs")]
    [InlineData(0.96, "yield-differs")]
    [InlineData(0.98, "")]
    public void A_yield_other_than_asked_is_told(double times, string code)
    {
        BatchPlan plan = Beef().Making(5).Plan();
        Assert.Equal(code, Told(plan, plan.Fit, "yield-differs", yield: Litres(5 * times), litres: 5).Code, StringComparer.Ordinal);
        Assert.Equal("", Told(plan, plan.Fit with { Verdict = FitVerdict.FitsStronger }, "yield-differs", yield: Litres(5 * times), litres: 5).Code);
        Assert.Equal(times > 1.03 ? "covered" : "", Told(plan, plan.Fit with { CoverDecidesWater = true }, "covered", yield: Litres(5 * times), litres: 5).Code);
        Assert.Equal("", Told(plan, plan.Fit with { CoverDecidesWater = true }, "yield-differs", yield: Litres(5 * times), litres: 5).Code);
        BatchPlan full = (Beef() with { Goal = new PlanGoal.FillPot() }).Plan();
        Assert.Equal("", Told(full, full.Fit with { CoverDecidesWater = true }, "covered", yield: Litres(5 * times), litres: 5).Code);
        Assert.Equal("", Told(full, full.Fit, "yield-differs", yield: Litres(5 * times), litres: 5).Code);
        BatchPlan line = (Beef().Using(("beef-knuckle", 3)) with { FillTo = new FillMark.Depth(Length.FromCentimeters(15)) }).Plan();
        Assert.Equal("", Told(line, line.Fit, "yield-differs", yield: Litres(5 * times), litres: 5).Code);
    }

    // Each stands beside the field the wish is typed in.
    [Fact]
    public void A_notice_of_the_wish_stands_beside_its_field()
    {
        string? PartOf(PlanRequest request) => request.Plan().Notices.Single(notice => notice.Code is "less-water" or "does-not-fit").Part;
        Assert.Equal(PlanPart.Yield, PartOf(Beef().Making(10)));
        Assert.Equal(PlanPart.Portions, PartOf(Beef() with { Goal = new PlanGoal.MakeVolume(Volume.FromLiters(25), Volume.FromMilliliters(250)) }));
        Assert.Equal(PlanPart.BonesMass, PartOf(Beef().Using(("beef-knuckle", 30))));
    }

    // A heater of its own is told at its power, a hob at the hob.
    [Fact]
    public void What_is_too_weak_is_named()
    {
        BatchPlan hob = Beef().Making(8).On(PlanRequests.Hob(HobKind.Gas, 0.3)).Plan();
        Assert.Equal(PlanPart.Hob, hob.Notices.Single(notice => notice.Code is "hob-too-weak" or "heater-too-weak").Part);
        BatchPlan kettle = PlanRequests.For("white-chicken").Uncovered().In(PlanRequests.Kettle(60, 60, 3)).Making(60).Plan();
        Assert.Equal(PlanPart.PotHeater, kettle.Notices.Single(notice => notice.Code is "hob-too-weak" or "heater-too-weak").Part);
    }

    // At 3000 m water boils at 90 °C: a simmer of the recipe's 93 °C is kept a little under that, and runs the longer for it; a time of the cook's own is kept.
    [Fact]
    public void A_simmer_out_of_reach_tells_the_time()
    {
        BatchPlan longer = Beef().AtAltitude(3000).Plan();
        PlanNotice notice = longer.Notice("simmer-out-of-reach");
        Assert.True(longer.Boiling.PlannedTime > longer.Boiling.AskedTime);
        Assert.True(notice.Says(NoticePhrase.KeptUnderTheBoil));
        Assert.Equal(NoticePhrase.RunsLonger, notice.Figures[1].Word);
        Assert.Equal([longer.Boiling.PlannedTime.TotalSeconds, longer.Boiling.AskedTime.TotalSeconds], notice.Sizes(FigureKind.Time));
        PlanNotice own = Beef().AtAltitude(3000).SimmeringFor(9).Plan().Notice("simmer-out-of-reach");
        Assert.True(own.Says(NoticePhrase.WouldTakeLonger));
        Assert.InRange(Assert.Single(own.Sizes(FigureKind.Number)), 1.02, 2);
        PlanNotice hot = Beef().At(Temperature.FromDegreesCelsius(110)).Plan().Notice("simmer-out-of-reach");
        Assert.True(hot.Says(NoticePhrase.OutOfReachOpen));
        Assert.Equal(110, hot.Sizes(FigureKind.Temperature)[0], 1e-9);
    }

    // Hotter is faster: what a pressure cooker needs for as much from the bones is a part of the open pot's time.
    [Fact]
    public void A_pressure_cooker_needs_less_time()
    {
        BatchPlan plan = (PlanRequests.For("white-chicken").In(PlanRequests.PressureCooker(24, 20)).Making(2) with { Lid = LidPosition.On }).Plan();
        double factor = SimmerStretch.Between(plan.Request.Recipe.Stages[0].Target, plan.Boiling.Reached).Central;
        Assert.InRange(factor, 0.05, 0.5);
        Assert.Equal((plan.Boiling.PlannedTime * factor).TotalSeconds, plan.Notice("pressure-time").Sizes(FigureKind.Time)[1], 1e-6);
    }

    private static PlanNotice Told(BatchPlan plan, FitReport fit, string code, SimmerOutcome? outcome = null, Band<Volume>? yield = null, double? litres = null) =>
        Notices.List(plan.Request, plan.Workings.Fitted.Load, fit, plan.Boiling, outcome ?? plan.Workings.Central, yield ?? plan.Yield, litres ?? (yield ?? plan.Yield).Central.Liters)
            .Where(notice => string.Equals(notice.Code, code, StringComparison.Ordinal)).FirstOrDefault() ?? None;

    private static Band<Volume> Litres(double central) => new(Volume.FromLiters(central * 0.9), Volume.FromLiters(central), Volume.FromLiters(central * 1.1));

    private static PlanRequest Beef() => PlanRequests.For("brown-beef");
}
