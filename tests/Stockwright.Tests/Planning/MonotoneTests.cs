using CsCheck;
using Stockwright.Kitchen;
using Stockwright.Planning;
using Stockwright.Simmering;
using UnitsNet;
using Xunit;

namespace Stockwright.Tests.Planning;

/// <summary>Which way a plan must move when one thing changes: plain physics, no source needed.</summary>
public sealed class MonotoneTests
{
    private static readonly Gen<string> Recipes = Gen.OneOfConst("white-veal", "brown-beef", "brown-chicken", "pork", "lamb", "remouillage", "turkey");

    [Fact]
    public void More_power_is_sooner_at_the_simmer() => Sample(
        Gen.Double[1.5, 6],
        (request, kilowatts) => request.On(PlanRequests.Hob(HobKind.Coil, kilowatts)),
        (request, kilowatts) => request.On(PlanRequests.Hob(HobKind.Coil, kilowatts * 1.2)),
        (one, other) => one.HeatUp.Time.Central > other.HeatUp.Time.Central);

    [Fact]
    public void More_stock_wanted_takes_more_water() => Sample(
        // Below that the fat of a little more covers this wide pot so much better that it can take less water.
        Gen.Double[3.5, 7],
        (request, litres) => request.Making(litres),
        (request, litres) => request.Making(litres * 1.1),
        (one, other) => one.Fit.WaterToLine < other.Fit.WaterToLine && one.Fit.FillLine < other.Fit.FillLine);

    [Fact]
    public void A_lid_keeps_the_water_in() => Sample(
        Gen.Double[0.02, 0.6],
        (request, open) => request with { Lid = LidPosition.Ajar(Ratio.FromDecimalFractions(open)) },
        (request, _) => request with { Lid = LidPosition.On },
        (one, other) => one.Simmer.EvaporationRate.Central > other.Simmer.EvaporationRate.Central && one.Simmer.Evaporated.Central > other.Simmer.Evaporated.Central);

    [Fact]
    public void No_lid_loses_the_most() => Sample(
        Gen.Double[0.02, 0.6],
        (request, _) => request.Uncovered(),
        (request, open) => request with { Lid = LidPosition.Ajar(Ratio.FromDecimalFractions(open)) },
        (one, other) => one.Simmer.EvaporationRate.Central > other.Simmer.EvaporationRate.Central);

    [Fact]
    public void Higher_up_it_boils_cooler() => Sample(
        Gen.Double[0, 4000],
        (request, metres) => request.AtAltitude(metres),
        (request, metres) => request.AtAltitude(metres + 200),
        (one, other) => one.Boiling.BoilingPoint > other.Boiling.BoilingPoint && one.Boiling.PlannedTime <= other.Boiling.PlannedTime);

    // From 2100 m on water boils below the 93 C the recipes ask for.
    [Fact]
    public void Far_enough_up_it_simmers_longer() => Sample(
        Gen.Double[2300, 4000],
        (request, metres) => request.AtAltitude(metres),
        (request, metres) => request.AtAltitude(metres + 600),
        (one, other) => one.Boiling.IsOutOfReach && one.Boiling.PlannedTime > one.Boiling.AskedTime && other.Boiling.PlannedTime > one.Boiling.PlannedTime);

    [Fact]
    public void A_wider_pot_loses_more() => Sample(
        Gen.Double[24, 40],
        (request, centimetres) => request.In(PlanRequests.Straight(centimetres, 40)),
        (request, centimetres) => request.In(PlanRequests.Straight(centimetres * 1.05, 40)),
        (one, other) => one.Simmer.EvaporationRate.Central < other.Simmer.EvaporationRate.Central && one.Fit.LargestYield < other.Fit.LargestYield);

    [Fact]
    public void A_longer_simmer_needs_more_water() => Sample(
        Gen.Double[2, 8],
        (request, hours) => request.SimmeringFor(hours),
        (request, hours) => request.SimmeringFor(hours + 1),
        (one, other) => one.Simmer.Evaporated.Central < other.Simmer.Evaporated.Central && (one.Fit.CoverDecidesWater || one.Fit.WaterToLine < other.Fit.WaterToLine));

    [Fact]
    public void A_longer_simmer_never_leaves_heavier_meat() => Sample(
        Gen.Double[0.5, 12],
        (request, hours) => request.SimmeringFor(hours),
        (request, hours) => request.SimmeringFor(hours * 1.1),
        (one, other) => SpentMeat(one) >= SpentMeat(other));

    [Fact]
    public void A_hotter_simmer_loses_more() => Sample(
        Gen.Double[82, 94],
        (request, celsius) => request.At(Temperature.FromDegreesCelsius(celsius)),
        (request, celsius) => request.At(Temperature.FromDegreesCelsius(celsius + 3)),
        (one, other) => one.Simmer.EvaporationRate.Central < other.Simmer.EvaporationRate.Central);

    /// <summary>Bones and meat as drained, of their raw weight.</summary>
    private static double SpentMeat(BatchPlan plan) =>
        plan.Workings.Central.Gave.Where(gave => gave.Solid.Release.MeatPerHour > 0).Sum(gave => gave.SpentKilograms) / plan.Workings.Fitted.Litres;

    private static void Sample<T>(Gen<T> gen, Func<PlanRequest, T, PlanRequest> one, Func<PlanRequest, T, PlanRequest> other, Func<BatchPlan, BatchPlan, bool> holds) =>
        Gen.Select(Recipes, gen).Sample(
            (recipe, value) =>
            {
                PlanRequest request = PlanRequests.For(recipe).In(PlanRequests.Straight(34, 40)).Uncovered().Making(4) with { TopUp = TopUpRule.None };
                return holds(one(request, value).Plan(), other(request, value).Plan());
            },
            iter: 30,
            threads: 2);
}
