using Stockwright.Evidence;
using Stockwright.Kitchen;
using Stockwright.Planning;
using Stockwright.Recipes;
using Stockwright.Simmering;
using UnitsNet;
using Xunit;

namespace Stockwright.Tests.Planning;

/// <summary>Whatever is asked, the answer is a plan or a problem beside a part of the request.</summary>
public sealed class BadInputTests
{
    [Fact]
    public void A_hundredweight_of_bones_does_not_go_in_a_small_pot()
    {
        Problem problem = PlanRequests.For("brown-beef").In(PlanRequests.Straight(20, 16)).Using(("beef-knuckle", 400)).Problem();
        Assert.Equal(PlanPart.BonesMass, problem.Part);
        Assert.Equal(ProblemCode.TooManyPotfuls, problem.Code);
        Assert.Equal(Figure.Of(192), problem.Figures[0]);
    }

    [Fact]
    public void Too_much_stock_for_a_small_pot_is_told_at_its_field()
    {
        PlanRequest request = PlanRequests.For("brown-beef").In(PlanRequests.Straight(20, 16));
        Assert.Equal(PlanPart.Yield, request.Making(400).Problem().Part);
        Assert.Equal(PlanPart.Portions, (request with { Goal = new PlanGoal.MakeVolume(Volume.FromLiters(400), Volume.FromMilliliters(200)) }).Problem().Part);
    }

    public static TheoryData<string, string> Wrong => new()
    {
        { "pot 3 m tall", PlanPart.PotHeight },
        { "pot 3 cm high", PlanPart.PotHeight },
        { "filled above the rim", PlanPart.FillTo },
        { "filled to the brim", PlanPart.FillTo },
        { "hardly filled", PlanPart.FillTo },
        { "pieces of a metre", PlanPart.PieceSize },
        { "no pot", PlanPart.PotCount },
        { "no free hob", PlanPart.HobCount },
        { "side by side in one pot", PlanPart.PotCount },
        { "side by side on one hob", PlanPart.HobCount },
        { "pot 3 m wide", PlanPart.PotDiameter },
        { "pot without weight", PlanPart.PotMass },
        { "negative power", PlanPart.HobPower },
        { "no power", PlanPart.HobPower },
        { "efficiency over one", PlanPart.HobEfficiency },
        { "on the moon", PlanPart.Altitude },
        { "no air", PlanPart.AirPressure },
        { "freezing room", PlanPart.Room },
        { "humidity over one", PlanPart.Humidity },
        { "hot tap", PlanPart.TapWater },
        { "film", PlanPart.FilmFactor },
        { "no cling", PlanPart.Clinging },
        { "more cling than bone", PlanPart.Clinging },
        { "start and ready", PlanPart.Schedule },
        { "neither start nor ready", PlanPart.Schedule },
        { "year 9999", PlanPart.StartAt },
        { "never sleeps", PlanPart.WakesAt },
        { "unknown bones", PlanPart.BonesCut },
        { "weightless bones", PlanPart.BonesMass },
        { "no bones", PlanPart.Bones },
        { "all bones left out", PlanPart.Recipe },
        { "unknown ingredient", PlanPart.Recipe },
        { "nothing wanted", PlanPart.Yield },
        { "negative litres", PlanPart.Yield },
        { "a sea of stock", PlanPart.Yield },
        { "simmer 200", PlanPart.SimmerTemperature },
        { "simmer 0 h", PlanPart.SimmerTime },
        { "simmer 100 h", PlanPart.SimmerTime },
        { "check every minute", PlanPart.CheckInterval },
        { "lid open by 90 %", PlanPart.LidOpening },
        { "oven without shelf", PlanPart.Oven },
        { "tray without size", PlanPart.Trays },
        { "oven off the scale", PlanPart.Recipe },
    };

    [Theory]
    [MemberData(nameof(Wrong))]
    public void Each_slip_is_told_beside_its_part_of_the_request(string what, string part)
    {
        Problem problem = Slip(what, PlanRequests.For("brown-chicken")).Problem();
        Assert.Equal(part, problem.Part);
        Assert.Equal(part is PlanPart.BonesCut or PlanPart.BonesMass ? 0 : null, problem.Row);
    }

    [Fact]
    public void Several_slips_are_all_told()
    {
        PlanRequest request = Slip("hot tap", Slip("negative power", Slip("pot 3 m tall", PlanRequests.For("brown-chicken"))));
        Assert.Equal([PlanPart.PotHeight, PlanPart.HobPower, PlanPart.TapWater], BatchPlanner.Plan(request).Problems.Select(problem => problem.Part), StringComparer.Ordinal);
    }

    [Fact]
    public void A_simmer_hotter_than_the_boil_is_planned_at_the_boil_and_said()
    {
        BatchPlan plan = PlanRequests.For("brown-chicken").At(Temperature.FromDegreesCelsius(105)).Plan();
        PlanNotice notice = Assert.Single(plan.Notices, notice => string.Equals(notice.Code, "simmer-out-of-reach", StringComparison.Ordinal));
        Assert.Equal(PlanPart.SimmerTemperature, notice.Part);
        Assert.Equal(plan.Boiling.BoilingPoint, plan.Boiling.Reached);
        Assert.InRange(plan.HeatUp.FinalTemperature.DegreesCelsius, 99, 100);
    }

    [Fact]
    public void A_hob_too_weak_is_said_beside_the_hob()
    {
        BatchPlan plan = PlanRequests.For("brown-beef").In(PlanRequests.Straight(45, 45)).Making(30).Uncovered().On(PlanRequests.Hob(HobKind.Gas, 0.5)).Plan();
        Assert.False(plan.HeatUp.IsReached);
        Assert.Equal(PlanPart.Hob, plan.Notice("hob-too-weak").Part);
    }

    [Fact]
    public void A_cupful_in_a_huge_pot_is_planned_with_a_word()
    {
        BatchPlan plan = PlanRequests.For("brown-chicken").In(PlanRequests.Straight(60, 60)).On(PlanRequests.Hob(HobKind.Gas, 12)).Making(0.25).Plan();
        Assert.True(plan.HasNotice("pot-too-wide"));
        Assert.True(plan.HasNotice("covered"));
        Assert.Empty(PlanInvariants.Broken(plan));
    }

    [Fact]
    public void A_minutes_simmer_is_a_plan()
    {
        BatchPlan plan = PlanRequests.For("brown-chicken").SimmeringFor(1.0 / 60).Plan();
        Assert.Empty(plan.Simmer.Checks);
        Assert.Empty(PlanInvariants.Broken(plan));
    }

    [Fact]
    public void Three_days_without_topping_up_boil_a_small_pot_dry()
    {
        PlanRequest request = PlanRequests.For("brown-chicken").In(PlanRequests.Straight(40, 12)).Uncovered().SimmeringFor(72) with { TopUp = TopUpRule.None };
        Problem problem = request.Problem();
        Assert.Equal(PlanPart.TopUp, problem.Part);
        Assert.Equal(ProblemCode.RunsDry, problem.Code);
    }

    private static PlanRequest Slip(string what, PlanRequest request) => what switch
    {
        "pot 3 m tall" => request.In(PlanRequests.Straight(28, 300)),
        "pot 3 cm high" => request.In(PlanRequests.Straight(28, 3)),
        "filled above the rim" => request with { FillTo = new FillMark.Depth(Length.FromCentimeters(33)) },
        "filled to the brim" => request with { FillTo = new FillMark.BelowRim(Length.FromCentimeters(1)) },
        "hardly filled" => request with { FillTo = new FillMark.ShareOfHeight(Ratio.FromPercent(1)) },
        "pieces of a metre" => request with { PieceSize = Length.FromMeters(1) },
        "no pot" => request with { PotCount = 0 },
        "no free hob" => request with { HobCount = 0 },
        "side by side in one pot" => request with { Way = SplitWay.SideBySide, HobCount = 2 },
        "side by side on one hob" => request with { Way = SplitWay.SideBySide, PotCount = 2 },
        "pot 3 m wide" => request.In(PlanRequests.Tapered(300, 28, 30) with { EmptyMass = Mass.FromKilograms(5) }),
        "pot without weight" => request with { Pot = request.Pot with { EmptyMass = Mass.Zero } },
        "negative power" => request.On(PlanRequests.Hob(HobKind.Gas, -2)),
        "no power" => request.On(PlanRequests.Hob(HobKind.Gas, 0)),
        "efficiency over one" => request.On(request.Hob with { OwnEfficiency = Ratio.FromDecimalFractions(1.2) }),
        "on the moon" => request.AtAltitude(400_000),
        "no air" => request with { Site = request.Site with { MeasuredPressure = Pressure.FromHectopascals(12) } },
        "freezing room" => request with { Site = request.Site with { Room = Temperature.FromDegreesCelsius(-5) } },
        "humidity over one" => request with { Site = request.Site with { Humidity = Ratio.FromDecimalFractions(50) } },
        "hot tap" => request with { Site = request.Site with { TapWater = Temperature.FromDegreesCelsius(65) } },
        "film" => request.WithFilm(5),
        "no cling" => request.Clinging(0.009),
        "more cling than bone" => request.Clinging(0.51),
        "start and ready" => request with { Schedule = request.Schedule with { ReadyBy = PlanRequests.Morning } },
        "neither start nor ready" => request with { Schedule = new PlanSchedule() },
        "year 9999" => request.Starting(DateTimeOffset.MaxValue),
        "never sleeps" => request with { Schedule = request.Schedule with { SleepsAt = request.Schedule.WakesAt } },
        "unknown bones" => request.Using(("dinosaur", 3)),
        "weightless bones" => request.Using(("chicken-carcass", 0)),
        "no bones" => request.Using(),
        "all bones left out" => request with { LeftOut = request.Recipe.Lines.Where(line => line.Role == LineRole.Bones).Select(line => line.IngredientId).ToHashSet(StringComparer.Ordinal) },
        "unknown ingredient" => request with { Recipe = request.Recipe with { Lines = [request.Recipe.Lines[0] with { IngredientId = "dinosaur" }] } },
        "nothing wanted" => request.Making(0),
        "negative litres" => request.Making(-3),
        "a sea of stock" => request.Making(1e9),
        "simmer 200" => request.At(Temperature.FromDegreesCelsius(200)),
        "simmer 0 h" => request.SimmeringFor(0),
        "simmer 100 h" => request.SimmeringFor(100),
        "check every minute" => request with { CheckInterval = TimeSpan.FromMinutes(1) },
        "lid open by 90 %" => request with { Lid = new LidPosition(LidKind.Ajar, Ratio.FromDecimalFractions(0.9)) },
        "oven without shelf" => request with { Oven = request.Oven! with { Levels = 0 } },
        "tray without size" => request with { Trays = [request.Trays[0] with { InnerWidth = Length.Zero }] },
        "oven off the scale" => request with { Recipe = request.Recipe with { Roast = request.Recipe.Roast! with { OvenTemperature = Temperature.FromDegreesCelsius(290) } } },
        _ => throw new ArgumentOutOfRangeException(nameof(what), what, "No such slip."),
    };
}
