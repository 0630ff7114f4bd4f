using Stockwright.Kitchen;
using Stockwright.Planning;
using Stockwright.Simmering;
using UnitsNet;
using Xunit;

namespace Stockwright.Tests.Planning;

/// <summary>Every notice where it belongs, and not where it does not.</summary>
public sealed class NoticeTests
{
    private static readonly Dictionary<string, (Func<PlanRequest> Told, Func<PlanRequest> Quiet)> Cases = new(StringComparer.Ordinal)
    {
        ["hob-too-weak"] = (() => Beef().Making(8).On(PlanRequests.Hob(HobKind.Gas, 0.3)), () => Beef()),
        ["covered"] = (() => PlanRequests.For("white-chicken"), () => PlanRequests.For("brown-chicken")),
        ["uncovered"] = (() => PlanRequests.For("white-chicken").In(PlanRequests.Straight(20, 36)).Uncovered().SimmeringFor(8).WithFilm(0.3).Making(2) with { TopUp = TopUpRule.None }, () => Beef() with { TopUp = TopUpRule.None }),
        ["runs-dry"] = (() => Beef().In(PlanRequests.Straight(40, 36)).Uncovered().WithFilm(1.5).SimmeringFor(14).Making(4) with { CheckInterval = TimeSpan.FromMinutes(240) }, () => Beef()),
        ["does-not-fit"] = (() => Beef().Making(30), () => Beef().Making(5)),
        ["less-water"] = (() => Beef().Making(10), () => Beef().Making(8)),
        ["falls-first"] = (() => Beef().In(PlanRequests.Straight(40, 12)).Uncovered().Making(2), () => Beef()),
        ["boils-away"] = (() => Beef().Uncovered().SimmeringFor(12).WithFilm(0.6), () => PlanRequests.For("brown-chicken")),
        ["stand-out"] = (() => Beef().Using(("beef-knuckle", 6)) with { FillTo = new FillMark.Depth(Length.FromCentimeters(12)) }, () => Beef()),
        ["pot-too-wide"] = (() => PlanRequests.For("vegetable").In(PlanRequests.Straight(60, 40)).Making(0.5), () => PlanRequests.For("vegetable")),
        ["simmer-out-of-reach"] = (() => Beef().AtAltitude(3000), () => Beef()),
        ["locked-lid"] = (() => Cooker(), () => Cooker() with { Lid = LidPosition.Off }),
        ["cooker-open"] = (() => Cooker() with { Lid = LidPosition.Off }, () => Cooker()),
        ["pressure-heat"] = (() => Cooker(), () => Cooker().At(Temperature.FromDegreesCelsius(115))),
        ["pressure-time"] = (() => Cooker(), () => Cooker().SimmeringFor(2)),
        ["pressure-night"] = (() => Night(Cooker(), NightPlan.OvenHold), () => Cooker()),
        ["attended-night"] = (() => Night(PlanRequests.For("pork-bone-broth"), NightPlan.StopAndCool), () => PlanRequests.For("pork-bone-broth")),
        ["fat-not-taken"] = (() => PlanRequests.For("vegetable"), () => PlanRequests.For("vegetable") with { WithOptional = new HashSet<string>(["butter"], StringComparer.Ordinal) }),
        ["not-covered"] = (() => PlanRequests.For("duck"), () => Beef()),
        ["ingredient-note"] = (() => Beef().Using(("beef-knuckle", 1)), () => Beef()),
        ["hours-outside-recipe"] = (() => Beef().SimmeringFor(2), () => Beef().SimmeringFor(9)),
        ["night-kept"] = (() => Night(Beef(), NightPlan.KeepFree, 14), () => Night(Beef(), NightPlan.KeepFree, 7)),
        ["night-work"] = (() => Night(Cooker().SimmeringFor(3), NightPlan.KeepFree, 22), () => Cooker().SimmeringFor(3)),
    };

    public static TheoryData<string> Codes => [.. Cases.Keys];

    [Theory]
    [MemberData(nameof(Codes))]
    public void It_is_told_where_it_belongs_and_only_there(string code)
    {
        (Func<PlanRequest> told, Func<PlanRequest> quiet) = Cases[code];
        BatchPlan plan = told().Plan();
        PlanNotice notice = plan.Notices.First(one => string.Equals(one.Code, code, StringComparison.Ordinal));
        Assert.Null(notice.Words);
        Assert.False(quiet().Plan().HasNotice(code));
    }

    // The other pots of the kitchen that would hold it are named, and no smaller ones: for 12 L, of 71 L and 4 L brim the first.
    [Fact]
    public void Pots_that_fit_are_named()
    {
        PlanRequest request = Beef().Making(12) with { OtherPots = [PlanRequests.Straight(45, 45) with { Name = "Big" }, PlanRequests.Straight(20, 12) with { Name = "Small" }] };
        Assert.Equal(["Big"], request.Plan().Fit.PotsThatFit, StringComparer.Ordinal);
        Assert.Empty(Beef().Plan().Fit.PotsThatFit);
    }

    // By hand, 3.785 L of vegetable stock in 4.76 L of water: (4.76 + 0.8 kg) x 4.1 kJ/(kg K) x 78 K and 2 kg of steel are 1.85 MJ; steam x 2.28 MJ/kg; walls and
    // surface some 0.17 kW for the time; over 0.80 of induction. What holds it is walls and steam an hour over 3.5 kW x 0.80.
    [Fact]
    public void Energy_and_setting_of_the_hob_come_out_by_hand()
    {
        BatchPlan plan = PlanRequests.For("vegetable").Plan();
        double steam = plan.Simmer.Evaporated.Central.Liters;
        double hours = plan.Simmer.Length.TotalHours;
        double solids = plan.Amounts.Sum(line => line.MassInPot.Kilograms);
        double warming = ((plan.Fit.WaterToLine.Liters * 4.19) + (solids * 3.9) + (plan.Request.Pot.EmptyMass.Kilograms * 0.5)) * (plan.Boiling.Reached.DegreesCelsius - 15) / 1000;
        double megajoules = (warming + (2.28 * steam) + (0.17 * 3.6 * hours)) / 0.80;
        Assert.Equal(megajoules, plan.Simmer.HobEnergy.Central.Megajoules, 0.12 * megajoules);

        double watts = (plan.Simmer.EvaporationRate.Central.LitersPerHour * 2.28e6 / 3600) + 190;
        Assert.Equal(watts / (3500 * 0.80), plan.Simmer.HoldSetting.DecimalFractions, 0.15 * watts / (3500 * 0.80));
    }

    // Keep covered, by hand: nothing is added while the bones lie under the liquid, and just what covers them until the next look when they would not.
    [Fact]
    public void Top_ups_that_keep_covered_add_no_more_than_that()
    {
        BatchPlan plan = (Beef().In(PlanRequests.Straight(40, 14)).Uncovered().WithFilm(1).Making(3) with { TopUp = TopUpRule.KeepCovered }).Plan();
        double cover = LiquorExchange.LeastCover.Meters;
        SimmerOutcome run = plan.Workings.Central;
        Assert.Contains(plan.Simmer.Checks, check => check.TopUp.Central > Volume.Zero);
        Assert.All(plan.Simmer.Checks, check => Assert.True(check.TopUp.Central.Milliliters < 0.01 || check.LevelAfter.Meters <= run.StartHeapMetres + cover + 0.02, $"{check.LevelAfter}"));
    }

    private static PlanRequest Beef() => PlanRequests.For("brown-beef");

    private static PlanRequest Cooker() => PlanRequests.For("white-chicken").In(PlanRequests.PressureCooker(24, 20)).Making(2) with { Lid = LidPosition.On };

    private static PlanRequest Night(PlanRequest request, NightPlan night, double hour = 8) =>
        request with { Schedule = request.Schedule with { Night = night, StartAt = PlanRequests.Morning.AddHours(hour - 8) } };
}
