using Stockwright.Evidence;
using Stockwright.Kitchen;
using Stockwright.Planning;
using UnitsNet;
using Xunit;

namespace Stockwright.Tests.Planning;

/// <summary>What is refused of lines, pots, hobs and vessels, and at which edge; each beside its field.</summary>
public sealed class FillChecksTests
{
    // A pot 28 cm high has its safe maximum at 23 cm, 5 cm under the rim.
    [Theory]
    [InlineData(0.9, ProblemCode.FilledTooLow)]
    [InlineData(1.1, null)]
    [InlineData(23, null)]
    [InlineData(23.2, ProblemCode.FilledTooHigh)]
    [InlineData(25, ProblemCode.FilledTooHigh)]
    [InlineData(28.1, ProblemCode.FilledOverRim)]
    public void A_line_lies_between_a_centimetre_and_the_safe_maximum(double centimetres, ProblemCode? told)
    {
        PlanRequest request = Beef() with { Goal = new PlanGoal.FillPot(), FillTo = new FillMark.Depth(Length.FromCentimeters(centimetres)) };
        if (told is null)
        {
            Assert.DoesNotContain(Problems(request), problem => problem.Part is PlanPart.FillTo);
            return;
        }

        Problem problem = Assert.Single(Problems(request));
        Assert.Equal(PlanPart.FillTo, problem.Part);
        Assert.Equal(told, problem.Code);
        Assert.Equal(centimetres < 1 ? 0.01 : 0.05, Assert.Single(problem.Figures).Value, 1e-9);
    }

    // One to eight of each; side by side takes two of both, and what there is too few of is named.
    [Theory]
    [InlineData(0, 1, null, PlanPart.PotCount)]
    [InlineData(1, 0, null, PlanPart.HobCount)]
    [InlineData(8, 8, null, "")]
    [InlineData(9, 8, null, PlanPart.PotCount)]
    [InlineData(8, 9, null, PlanPart.HobCount)]
    [InlineData(1, 2, SplitWay.SideBySide, PlanPart.PotCount)]
    [InlineData(2, 1, SplitWay.SideBySide, PlanPart.HobCount)]
    [InlineData(2, 2, SplitWay.SideBySide, "")]
    [InlineData(1, 2, SplitWay.OneAfterAnother, "")]
    public void Pots_and_hobs_are_one_to_eight(int pots, int hobs, SplitWay? way, string part) =>
        Assert.Equal(part, Problems(Beef() with { PotCount = pots, HobCount = hobs, Way = way }).Select(problem => problem.Part).FirstOrDefault() ?? "", StringComparer.Ordinal);

    // By hand: a crock 14 cm across holds 0.15394 L a centimetre: 6.4 cm are 0.985 L, 6.6 cm 1.016; 28 cm across 0.61575 L: 19.4 cm are 11.95 L, 19.6 cm 12.07.
    [Theory]
    [InlineData(14, 6.4, true)]
    [InlineData(14, 6.6, false)]
    [InlineData(28, 19.4, false)]
    [InlineData(28, 19.6, true)]
    public void A_crock_holds_one_to_twelve_litres(double across, double high, bool refused) =>
        Assert.Equal(refused, PotRules.Problems(PlanRequests.SlowCooker(across, high)).Any(problem => problem.Part is PlanPart.PotHeight));

    // Ten centimetres stay free in a kettle, so that one of 12.9 cm has none left to speak of: 60 cm across, 13.1 cm are 37 L.
    [Theory]
    [InlineData(60, 12.9, true)]
    [InlineData(60, 13.1, false)]
    public void A_kettle_is_higher_than_its_room(double across, double high, bool refused) =>
        Assert.Equal(refused, PotRules.Problems(PlanRequests.Kettle(across, high)).Any(problem => problem.Part is PlanPart.PotHeight));

    [Fact]
    public void A_heater_is_asked_for_where_there_is_one_and_nowhere_else()
    {
        Assert.Equal(ProblemCode.SlowPower, Assert.Single(PotRules.Problems(PlanRequests.SlowCooker(24, 16, null))).Code);
        Assert.Equal(ProblemCode.KettlePower, Assert.Single(PotRules.Problems(PlanRequests.Kettle(45, 45, null))).Code);
        Pot pot = PlanRequests.Straight(28, 28);
        Assert.Empty(PotRules.Problems(pot));
        Assert.Equal(PlanPart.PotHeater, Assert.Single(PotRules.Problems(pot with { HeaterPower = Power.FromWatts(500) })).Part);
        Assert.Equal(PlanPart.PotHeater, Assert.Single(PotRules.Problems(PlanRequests.PressureCooker(24, 20) with { HeaterPower = Power.FromWatts(500) })).Part);
    }

    // A pot of 50 cm does not go on a shelf of 60 by 40 cm, one of 39 does; an hour is the shortest simmer that is left alone, the cook's own or the recipe's.
    [Theory]
    [InlineData(39, 8, "")]
    [InlineData(50, 8, PlanPart.SimmersInOven)]
    [InlineData(39, 1, "")]
    [InlineData(39, 0.98, PlanPart.SimmersInOven)]
    public void A_pot_that_simmers_in_the_oven_fits_it(double across, double hours, string part) =>
        Assert.Equal(part, Problems(Beef().In(PlanRequests.Straight(across, 22)).SimmeringFor(hours) with { SimmersInOven = true }).Select(problem => problem.Part).FirstOrDefault() ?? "", StringComparer.Ordinal);

    // What is drawn at 84 °C is spoilt just under the boil, what is drawn at 86 °C is not.
    [Theory]
    [InlineData(84, true)]
    [InlineData(86, false)]
    public void A_slow_cooker_is_not_for_what_is_drawn_cooler(double celsius, bool refused)
    {
        PlanRequest request = PlanRequests.For("white-chicken").In(PlanRequests.SlowCooker(26, 18)).Making(2).SimmeringFor(6) with { Lid = LidPosition.On };
        Stockwright.Recipes.SimmerStage stage = request.Recipe.Stages[0] with { Least = Temperature.FromDegreesCelsius(80), Target = Temperature.FromDegreesCelsius(celsius) };
        Assert.Equal(refused, Problems(request with { Recipe = request.Recipe with { Stages = [stage] } }).Any(problem => problem.Part is PlanPart.Recipe));
    }

    // Twelve potfuls are a plan, thirteen are not, and what one pot makes at once is told.
    [Fact]
    public void Twelve_potfuls_are_a_plan()
    {
        PlanRequest request = Beef() with { Way = SplitWay.OneAfterAnother };
        BatchPlan filled = (request with { Goal = new PlanGoal.FillPot() }).Plan();
        Assert.Equal(12, request.Making(filled.Yield.Central.Liters * 11.9).Plan().Fit.Potfuls);
        Problem problem = request.Making(filled.Yield.Central.Liters * 12.2).Problem();
        Assert.Equal(PlanPart.Yield, problem.Part);
        Assert.Equal(ProblemCode.TooManyPotfuls, problem.Code);
        Assert.Equal(Figure.Of(13), problem.Figures[0]);
        Mass bones = filled.Amounts.Where(line => line.Line.Role == Stockwright.Recipes.LineRole.Bones).Aggregate(Mass.Zero, (sum, line) => sum + line.Mass);
        Assert.Equal(filled.Yield.Central.CubicMeters, problem.Figures[1].Value, filled.Yield.Central.CubicMeters * 0.005);
        Assert.Equal(bones.Kilograms, problem.Figures[2].Value, bones.Kilograms * 0.005);
        Assert.Equal(Figure.Of("bones"), problem.Figures[3]);
    }

    private static IReadOnlyList<Problem> Problems(PlanRequest request) => BatchPlanner.Plan(request).Problems;

    private static PlanRequest Beef() => PlanRequests.For("brown-beef").In(PlanRequests.Straight(28, 28));
}
