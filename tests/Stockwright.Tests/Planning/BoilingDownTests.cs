using Stockwright.Kitchen;
using Stockwright.Planning;
using Stockwright.Predicting;
using Stockwright.Recipes;
using Xunit;

namespace Stockwright.Tests.Planning;

/// <summary>Pots kept at a rolling boil, pots boiled down, and pots filled with stock instead of water.</summary>
public sealed class BoilingDownTests
{
    /// <summary>Latent heat of water at 100 °C, IAPWS-95 (as in the steam tables): 2256.5 kJ/kg.</summary>
    private const double LatentKilojoules = 2256.5;

    [Theory]
    [InlineData(1)]
    [InlineData(1.2)]
    public void A_glace_is_as_much_as_was_asked_for_and_all_else_went_as_steam(double litres)
    {
        BatchPlan plan = Planned(PlanRequests.For("glace").Making(litres));
        Assert.Equal(litres, plan.Yield.Central.Liters, 0.01 * litres);

        // A tenth is left, and of that a few per cent in strainer and spoon: a little over ten times as much goes in.
        Assert.InRange(plan.Fit.WaterToLine.Liters, 10 * litres, 10.8 * litres);
        double steam = plan.Workings.Central.SteamKilograms;
        Assert.Equal(0.9 * plan.Workings.Fitted.WaterKilograms, steam, 0.02 * steam);
    }

    [Fact]
    public void A_small_ring_sets_the_time_a_glace_takes()
    {
        // 1.2 kW on induction at 85 %: 1.02 kW, less what the bare wall of a 10 L pot loses at the boil (0.2 to 0.4 kW: 0.3 m2 at 10 W/m2K and 75 K).
        BatchPlan plan = Planned(PlanRequests.For("glace").Making(0.6).On(PlanRequests.Hob(HobKind.Induction, 1.2)));
        double kilograms = plan.Workings.Central.SteamKilograms;
        double hours = (plan.Timeline.HeatOff - plan.Timeline.HeatOn).TotalHours - plan.HeatUp.Time.Central.TotalHours;
        double kilowatts = kilograms * LatentKilojoules / (hours * 3600);
        Assert.InRange(kilowatts, 0.62, 0.85);
    }

    [Fact]
    public void A_rolling_boil_loses_a_few_times_what_a_gentle_one_does_and_no_more_than_the_hob_gives()
    {
        PlanRequest request = PlanRequests.For("pork-bone-broth").Making(5);
        StockRecipe gentle = request.Recipe with { Stages = [.. request.Recipe.Stages.Select(stage => stage with { IsRolling = false })] };
        BatchPlan rolling = Planned(request);
        double hours = rolling.Simmer.Length.TotalHours;
        double perHour = rolling.Workings.Central.SteamKilograms / hours;

        // Estimate of the trade: 20 to 40 kg an hour from a square metre; this pot is 28 cm across, 0.0616 m2.
        Assert.InRange(perHour, 20 * 0.0616, 40 * 0.0616);
        Assert.InRange(perHour, 2.5 * Planned(request with { Recipe = gentle }).Workings.Central.SteamKilograms / hours, double.MaxValue);

        BatchPlan small = Planned(request.On(PlanRequests.Hob(HobKind.Induction, 1.8)));
        Assert.InRange(small.Workings.Central.SteamKilograms * LatentKilojoules / 3600 / small.Simmer.Length.TotalHours, 0.7, 1.53);
    }

    [Fact]
    public void A_rolling_boil_is_at_the_boil_wherever_the_kitchen_lies()
    {
        BatchPlan sea = Planned(PlanRequests.For("pork-bone-broth"));
        Assert.False(sea.Boiling.IsOutOfReach);

        // At 1500 m water boils at 95 °C (ICAO standard atmosphere and IAPWS): that is said, for the bones give less.
        BatchPlan high = Planned(PlanRequests.For("pork-bone-broth").AtAltitude(1500));
        Assert.True(high.Boiling.IsOutOfReach);
        Assert.Equal(95.0, high.Boiling.Reached.DegreesCelsius, 0.3);
    }

    [Fact]
    public void Stock_instead_of_water_brings_its_own_gelatin()
    {
        PlanRequest request = PlanRequests.For("double-chicken").Making(4);
        BatchPlan plan = Planned(request);
        BatchPlan watered = Planned(request with { Recipe = request.Recipe with { Wetting = null } });
        double more = Predictor.Predict(plan).Composition.Gelatin.DecimalFractions - Predictor.Predict(watered).Composition.Gelatin.DecimalFractions;

        // By hand: all of the stock's gelatin, through as much liquor as the pot holds at the end.
        double brought = request.Larder.Get("white-stock-ready").Collagen!.Value.DecimalFractions * plan.Workings.Fitted.WaterKilograms;
        double liquor = plan.Workings.Central.LiquidLeftKilograms;
        Assert.Equal(brought / liquor, more, 0.1 * more);
        Assert.Contains(plan.Ledger.In, entry => string.Equals(entry.Key, "stock-to-line", StringComparison.Ordinal));
    }

    [Fact]
    public void Celery_of_the_stock_a_pot_is_filled_with_is_told_where_it_is_portioned()
    {
        PlanStep portion = Planned(PlanRequests.For("glace")).Timeline.Steps.First(step => step.Kind == StepKind.Portion);
        Assert.Contains(portion.Cautions, caution => caution.Text.Contains("celery", StringComparison.Ordinal));
    }

    [Fact]
    public void What_boils_down_takes_no_time_no_night_and_no_locked_lid()
    {
        Assert.Equal(PlanPart.SimmerTime, Assert.Single(BatchPlanner.Plan(PlanRequests.For("glace").SimmeringFor(5)).Problems).Part);
        Assert.Equal(PlanPart.Lid, Assert.Single(BatchPlanner.Plan(PlanRequests.For("glace") with { Lid = LidPosition.On }).Problems).Part);
        Assert.Equal(PlanPart.Bones, Assert.Single(BatchPlanner.Plan(PlanRequests.For("glace").Using(("beef-knuckle", 2))).Problems).Part);
        BatchPlan night = Planned(PlanRequests.For("glace").Making(1.2).Starting(PlanRequests.Morning.AddHours(12), NightPlan.OvenHold));
        Assert.DoesNotContain(night.Timeline.Steps, step => step.Kind == StepKind.NightHold);
    }

    [Theory]
    [InlineData(MirepoixTime.Early)]
    [InlineData(MirepoixTime.LastHour)]
    public void The_cook_says_when_mirepoix_goes_in(MirepoixTime when)
    {
        BatchPlan plan = Planned(PlanRequests.For("white-beef") with { Mirepoix = when });
        AmountLine carrot = plan.Amounts.Single(line => string.Equals(line.Ingredient.Id, "carrot", StringComparison.Ordinal));
        TimeSpan simmer = plan.Simmer.Length - plan.HeatUp.Time.Central;
        TimeSpan joins = carrot.JoinsAt - plan.HeatUp.Time.Central;
        Assert.Equal(when == MirepoixTime.Early ? 1 : simmer.TotalHours - 1, joins.TotalHours, 0.1);
    }

    [Fact]
    public void What_is_not_counted_is_said()
    {
        BatchPlan plan = Planned(PlanRequests.For("pork-bone-broth"));
        Assert.Equal(
            plan.Request.Recipe.NotCovered,
            plan.Notices.Where(notice => string.Equals(notice.Code, "not-covered", StringComparison.Ordinal)).Select(notice => Assert.Single(notice.Figures).Word),
            StringComparer.Ordinal);
        Assert.NotEmpty(plan.Request.Recipe.NotCovered);
    }

    /// <summary>Forty metres of altitude once tripled the loss of a pot at 93 °C: what bubbles carry off comes in over two kelvins.</summary>
    [Theory]
    [InlineData(93.0)]
    [InlineData(null)]
    public void A_little_altitude_changes_the_loss_a_little(double? celsius)
    {
        PlanRequest At(double metres) => (PlanRequests.For("white-chicken") with { SimmerTemperature = celsius is { } asked ? UnitsNet.Temperature.FromDegreesCelsius(asked) : null })
            .Uncovered().AtAltitude(metres).SimmeringFor(4);
        for (int metres = 1500; metres < 2300; metres += 40)
        {
            double here = Planned(At(metres)).Simmer.EvaporationRate.Central.LitersPerHour;
            double above = Planned(At(metres + 40)).Simmer.EvaporationRate.Central.LitersPerHour;
            Assert.InRange(above / here, 0.9, 1.25);
        }
    }

    [Fact]
    public void A_recipes_simmer_stays_under_the_boil_where_that_is_low()
    {
        // ICAO standard atmosphere and IAPWS: water boils at 93.9 °C at 1800 m.
        BatchPlan plan = Planned(PlanRequests.For("white-chicken").AtAltitude(1800));
        Assert.Equal(91.9, plan.Boiling.Reached.DegreesCelsius, 0.2);
        Assert.Contains(plan.Notices, notice => notice.Says(NoticePhrase.KeptUnderTheBoil));
    }

    private static BatchPlan Planned(PlanRequest request)
    {
        PlanResult result = BatchPlanner.Plan(request);
        Assert.True(result.Plan is not null, string.Join(' ', result.Problems.Select(problem => $"{problem.Part}: {problem.Code}")));
        return result.Plan;
    }
}
