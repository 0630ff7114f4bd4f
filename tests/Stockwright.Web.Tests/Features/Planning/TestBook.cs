using Stockwright.Kitchen;
using Stockwright.Larder;
using Stockwright.Recipes;
using Stockwright.Web.Features.Kitchen;
using UnitsNet;

namespace Stockwright.Web.Tests.Features.Planning;

/// <summary>A kitchen for the codec's tests.</summary>
internal static class TestBook
{
    public static readonly DateTimeOffset Now = new(2026, 11, 25, 12, 0, 0, TimeSpan.Zero);

    public static readonly PlanningInputs London = In("Europe/London");

    public static PlanningInputs In(string zone, KitchenSite? site = null) => new(
        StandardRecipes.Book,
        StandardLarder.Table,
        new KitchenSetup
        {
            Name = "Test kitchen",
            TimeZoneId = zone,
            Site = site ?? new KitchenSite { Altitude = Length.FromMeters(120) },
            Pots =
            [
                Pot.Straight("pot-10", "10 L pot", Length.FromCentimeters(24), Length.FromCentimeters(22.1)),
                Pot.Straight("pot-24", "24 L pot", Length.FromCentimeters(32), Length.FromCentimeters(30)),
            ],
            Hobs =
            [
                new Hob { Id = "induction", Name = "Induction hob", Kind = HobKind.Induction, RatedPower = Power.FromKilowatts(3.5) },
                new Hob { Id = "gas", Name = "Gas ring", Kind = HobKind.Gas, RatedPower = Power.FromKilowatts(6) },
            ],
        });
}
