using Microsoft.AspNetCore.WebUtilities;
using Stockwright.Kitchen;
using Stockwright.Planning;
using Stockwright.Simmering;
using Stockwright.Web.Features.Kitchen;
using Stockwright.Web.Features.Planning;
using Stockwright.Web.Fields;
using UnitsNet;
using Xunit;
using UnitSystem = Stockwright.Measures.UnitSystem;

namespace Stockwright.Web.Tests.Features.Planning;

public class PlanQueryTests
{
    [Fact]
    public void An_empty_link_is_a_sensible_plan()
    {
        PlanRequest request = Reads("");
        Assert.Equal("brown-chicken", request.Recipe.Id);
        Assert.Equal("pot-10", request.Pot.Id);
        Assert.Equal("induction", request.Hob.Id);
        Assert.IsType<PlanGoal.FillPot>(request.Goal);
        Assert.Equal(request.Recipe.Lid, request.Lid);
        Assert.Equal(new DateTimeOffset(2026, 11, 26, 8, 0, 0, TimeSpan.Zero), request.Schedule.StartAt);
        Assert.Equal(TopUpRule.KeepToLine, request.TopUp);
        Assert.Null(request.SimmerTemperature);
    }

    [Fact]
    public void Every_field_is_read()
    {
        PlanRequest request = Reads(
            "recipe=white-veal&pot=own&pot-shape=tapered&pot-diameter=20&pot-brim-diameter=24,5&pot-height=18&pot-material=copper&pot-mass=3&pot-kind=pressure" +
            "&lid=ajar&gap=25&hob=own&hob-kind=coil&hob-power=1.8&hob-efficiency=70&goal=portions&portion-count=12&portion-size=250&when=ready&date=2026-12-01&time=17:30" +
            "&simmer=90&hours=7 1/2&check=90&topup=line&wakes=05:00&sleeps=21:00&night=oven&altitude=800&pressure=920&room=25&tap=8&film=0.2&clings=13&leave-onion=1");
        Assert.Equal("white-veal", request.Recipe.Id);
        Assert.Equal(0.245, request.Pot.BrimDiameter.Meters, 1e-12);
        Assert.Equal(WallMaterial.Copper, request.Pot.Material);
        Assert.Equal(PotKind.PressureCooker, request.Pot.Kind);
        Assert.Equal(3, request.Pot.EmptyMass.Kilograms, 1e-12);
        Assert.Equal(LidKind.Ajar, request.Lid.Kind);
        Assert.Equal(0.25, request.Lid.OpenFraction.DecimalFractions, 1e-12);
        Assert.Equal(HobKind.Coil, request.Hob.Kind);
        Assert.Equal(0.7, request.Hob.OwnEfficiency!.Value.DecimalFractions, 1e-12);
        PlanGoal.MakeVolume goal = Assert.IsType<PlanGoal.MakeVolume>(request.Goal);
        Assert.Equal(3, goal.Yield.Liters, 1e-12);
        Assert.Equal(new DateTimeOffset(2026, 12, 1, 17, 30, 0, TimeSpan.Zero), request.Schedule.ReadyBy);
        Assert.Null(request.Schedule.StartAt);
        Assert.Equal(90, request.SimmerTemperature!.Value.DegreesCelsius, 1e-9);
        Assert.Equal(TimeSpan.FromHours(7.5), request.SimmerTime);
        Assert.Equal(TimeSpan.FromMinutes(90), request.CheckInterval);
        Assert.Equal(TopUpRule.KeepToLine, request.TopUp);
        Assert.Equal(new TimeOnly(21, 0), request.Schedule.SleepsAt);
        Assert.Equal(NightPlan.OvenHold, request.Schedule.Night);
        Assert.Equal(800, request.Site.Altitude.Meters, 1e-9);
        Assert.Equal(920, request.Site.MeasuredPressure!.Value.Hectopascals, 1e-9);
        Assert.Equal(25, request.Site.Room.DegreesCelsius, 1e-9);
        Assert.Equal(0.2, request.Site.OwnFilmFactor);
        Assert.Equal(0.13, request.Site.OwnClinging!.Value.DecimalFractions, 1e-12);
        Assert.Contains("onion", request.LeftOut);
    }

    // Factors: NIST SP 811 (2008) appendix B: quart 0.946 352 9 L, pound 0.453 592 37 kg, inch 2.54 cm, fluid ounce 29.573 53 mL, foot 0.3048 m, inHg 3386.389 Pa.
    [Fact]
    public void US_fields_are_quarts_pounds_inches_Fahrenheit_feet_and_inches_of_mercury()
    {
        PlanRequest request = Reads("units=us&pot=own&pot-diameter=10&pot-height=9&goal=litres&litres=4&simmer=200&altitude=5280&pressure=29.92&room=72");
        Assert.Equal(0.254, request.Pot.BaseDiameter.Meters, 1e-9);
        Assert.Equal(4 * 0.9463529, Assert.IsType<PlanGoal.MakeVolume>(request.Goal).Yield.Liters, 1e-6);
        Assert.Equal(93.3333, request.SimmerTemperature!.Value.DegreesCelsius, 1e-4);
        Assert.Equal(1609.344, request.Site.Altitude.Meters, 1e-6);
        Assert.Equal(101320.76, request.Site.MeasuredPressure!.Value.Pascals, 0.1);
        Assert.Equal(22.2222, request.Site.Room.DegreesCelsius, 1e-4);
    }

    [Fact]
    public void Rows_of_bones_may_have_gaps_and_say_their_unit_themselves()
    {
        PlanQueryResult result = Parse("goal=bones&bones-2-cut=chicken-back&bones-2-kg=1,5&bones-7-cut=chicken-wing&bones-7-lb=2&bones-9-cut=&bones-9-kg=&bones-4-cut=chicken-back&bones-4-kg=1");
        PlanGoal.UseBones goal = Assert.IsType<PlanGoal.UseBones>(result.Request!.Goal);
        Assert.Equal(["chicken-back", "chicken-wing"], goal.Bones.Select(row => row.IngredientId), StringComparer.Ordinal);
        Assert.Equal(2.5, goal.Bones[0].Mass.Kilograms, 1e-9);
        Assert.Equal(0.90718474, goal.Bones[1].Mass.Kilograms, 1e-9);
        Assert.Equal("chicken-wing", result.Form["bones-2-cut"]);
    }

    [Theory]
    [InlineData("litres=abc&goal=litres", "litres", "'abc' is not a number")]
    [InlineData("goal=litres", "litres", "how much")]
    [InlineData("litres=0&goal=litres", "litres", "too small")]
    [InlineData("litres=-2&goal=litres", "litres", "too small")]
    [InlineData("litres=1e9&goal=litres", "litres", "not a number")]
    [InlineData("litres=9000&goal=litres", "litres", "too large")]
    [InlineData("portion-count=2.5&portion-size=200&goal=portions", "portion-count", "whole number")]
    [InlineData("portion-count=10000&portion-size=5000&goal=portions", "portion-count", "2000 litres")]
    [InlineData("goal=everything", "goal", "fill, litres, portions, bones")]
    [InlineData("goal=bones", "bones-0-cut", "which bones")]
    [InlineData("goal=bones&bones-0-cut=unicorn&bones-0-kg=1", "bones-0-cut", "no ingredient called 'unicorn'")]
    [InlineData("goal=bones&bones-0-cut=chicken-back", "bones-0-kg", "How much")]
    [InlineData("goal=bones&bones-0-kg=2", "bones-0-cut", "which bones")]
    [InlineData("goal=bones&bones-3-cut=chicken-back&bones-3-kg=heaps", "bones-0-kg", "not a number")]
    [InlineData("recipe=primordial", "recipe", "no recipe called")]
    [InlineData("pot=cauldron", "pot", "no pot called")]
    [InlineData("pot=own&pot-diameter=24&pot-height=300", "pot-height", "4 to 120 cm")]
    [InlineData("pot=own&pot-diameter=24", "pot-height", "from the base to the rim")]
    [InlineData("pot=own&pot-shape=volume&pot-diameter=8&pot-volume=200", "pot-volume", "tall")]
    [InlineData("pot=own&pot-shape=round&pot-diameter=24&pot-height=20", "pot-shape", "straight, tapered, volume")]
    [InlineData("hob=bonfire", "hob", "no hob called")]
    [InlineData("hob=own&hob-power=0", "hob-power", "too small")]
    [InlineData("lid=ajar&gap=80", "gap", "1 to 60 %")]
    [InlineData("simmer=400", "simmer", "40 to 125 °C")]
    [InlineData("simmer=-4", "simmer", "too small")]
    [InlineData("hours=1000", "hours", "too large")]
    [InlineData("check=1", "check", "20 to 360 minutes")]
    [InlineData("date=31.12.2026", "date", "not a date")]
    [InlineData("date=2026-02-30", "date", "not a date")]
    [InlineData("date=0001-01-01", "date", "year 1")]
    [InlineData("time=25:00", "time", "not a time")]
    [InlineData("when=ready", "date", "which day")]
    [InlineData("date=2027-03-28&time=01:30", "time", "clocks go forward")]
    [InlineData("wakes=07:00&sleeps=07:00", "sleeps", "same time")]
    [InlineData("altitude=9000", "altitude", "-400 to 5000 m")]
    [InlineData("pressure=30", "pressure", "too small")]
    [InlineData("film=7", "film", "too large")]
    [InlineData("clings=51", "clings", "too large")]
    [InlineData("clings=0.9", "clings", "too small")]
    [InlineData("clings=much", "clings", "not a number")]
    [InlineData("leave-unicorn=1", "leave-unicorn", "no ingredient")]
    [InlineData("recipe=kelp&leave-kombu=1", "leave-kombu", "cannot be left out")]
    [InlineData("units=imperial", "units", "metric, us")]
    public void What_is_wrong_is_said_at_its_field_and_everything_typed_is_kept(string query, string field, string words)
    {
        PlanQueryResult result = Parse(query + "&room=23&mystery=yes");
        Assert.Null(result.Request);
        InputProblem problem = Assert.Single(result.Problems);
        Assert.Equal(field, problem.Field);
        Assert.Contains(words, problem.Message, StringComparison.Ordinal);
        Assert.Equal("23", result.Form["room"]);
        Assert.Equal("yes", result.Form["mystery"]);
    }

    [Fact]
    public void Celery_can_be_left_out_though_the_stock_is_made_of_it()
    {
        PlanRequest request = Reads("recipe=vegetable&leave-celery=1");
        Assert.DoesNotContain(BatchPlanner.Plan(request).Plan!.Amounts, line => string.Equals(line.Ingredient.Id, "celery", StringComparison.Ordinal));
    }

    [Fact]
    public void A_simmer_above_boiling_is_left_to_the_planner_to_warn_about() =>
        Assert.Equal(110, Reads("simmer=110").SimmerTemperature!.Value.DegreesCelsius, 1e-9);

    [Fact]
    public void A_link_from_the_future_says_so_and_the_rest_is_used()
    {
        PlanQueryResult result = Parse("v=9&pot=pot-24&cooling=ice");
        Assert.Equal("pot-24", result.Request!.Pot.Id);
        Assert.Contains(result.Ignored, sentence => sentence.Contains("newer version", StringComparison.Ordinal));
        Assert.Contains(result.Ignored, sentence => sentence.Contains("'cooling'", StringComparison.Ordinal));
    }

    [Fact]
    public void Of_a_field_given_twice_the_first_counts_and_that_is_said()
    {
        PlanQueryResult result = Parse("pot=pot-24&pot=pot-10");
        Assert.Equal("pot-24", result.Request!.Pot.Id);
        Assert.Contains("'pot'", Assert.Single(result.Ignored), StringComparison.Ordinal);
    }

    [Fact]
    public void Fields_of_ways_not_chosen_are_kept_but_not_looked_at()
    {
        PlanQueryResult result = Parse("goal=fill&litres=abc&pot-height=-1&hob-power=none&bones-0-kg=x");
        Assert.NotNull(result.Request);
        Assert.Equal("abc", result.Form["litres"]);
    }

    [Fact]
    public void An_empty_kitchen_asks_for_pot_and_hob()
    {
        PlanningInputs empty = TestBook.London with { Kitchen = TestBook.London.Kitchen with { Pots = [], Hobs = [] } };
        PlanQueryResult result = PlanQuery.Parse(TypedForm.Empty, empty, UnitSystem.Metric, TestBook.Now);
        Assert.Equal(["pot", "hob"], result.Problems.Select(problem => problem.Field), StringComparer.Ordinal);
    }

    [Fact]
    public void An_altitude_typed_here_counts_over_the_barometer_of_the_kitchen()
    {
        PlanningInputs book = TestBook.In("UTC", new KitchenSite { MeasuredPressure = Pressure.FromHectopascals(1001) });
        PlanRequest request = PlanQuery.Parse(Form("altitude=2000"), book, UnitSystem.Metric, TestBook.Now).Request!;
        Assert.Null(request.Site.MeasuredPressure);
        Assert.Equal(1001, PlanQuery.Parse(Form(""), book, UnitSystem.Metric, TestBook.Now).Request!.Site.MeasuredPressure!.Value.Hectopascals, 1e-9);
    }

    [Fact]
    public void Optional_lines_come_in_only_when_asked_for()
    {
        Assert.DoesNotContain("chicken-feet", Reads("").WithOptional);
        Assert.Contains("chicken-feet", Reads("with-chicken-feet=1").WithOptional);
    }

    private static PlanRequest Reads(string query)
    {
        PlanQueryResult result = Parse(query);
        Assert.Empty(result.Problems);
        return result.Request!;
    }

    private static PlanQueryResult Parse(string query) => PlanQuery.Parse(Form(query), TestBook.London, UnitSystem.Metric, TestBook.Now);

    private static TypedForm Form(string query) => TypedForm.From(QueryHelpers.ParseQuery(query));

    // A plan for the two equal pots of one kitchen says so, for it may be opened from a snapshot with one.
    [Fact]
    public void Several_pots_are_said_in_the_link()
    {
        PlanningInputs one = TestBook.London;
        Pot pot = one.Kitchen.Pots[0];
        KitchenSetup two = one.Kitchen with { Pots = [.. one.Kitchen.Pots, pot with { Id = "twin", Name = "Twin" }] };
        PlanRequest request = PlanQuery.Parse(TypedForm.Empty.With("pot", pot.Id), one with { Kitchen = two }, UnitSystem.Metric, TestBook.Now).Request!;
        Assert.Equal(2, request.PotCount);
        string query = PlanQuery.ToQuery(request, two, UnitSystem.Metric);
        Assert.Contains("pots=2", query, StringComparison.Ordinal);
        Assert.Equal(2, PlanQuery.Parse(TypedForm.From(QueryHelpers.ParseQuery(query)), one, UnitSystem.Metric, TestBook.Now).Request!.PotCount);
    }
}
