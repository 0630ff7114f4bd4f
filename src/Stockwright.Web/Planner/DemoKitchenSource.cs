using Stockwright.Kitchen;
using Stockwright.Larder;
using Stockwright.Recipes;
using UnitsNet;

namespace Stockwright.Web.Planner;

/// <summary>A kitchen of our own invention, until the database brings the cook's.</summary>
internal sealed class DemoKitchenSource : IKitchenSource
{
    private static readonly PlanningBook Book = new(StandardRecipes.Book, StandardLarder.Table, VillageHall());

    public ValueTask<PlanningBook> LoadAsync(CancellationToken cancellationToken) => ValueTask.FromResult(Book);

    internal static KitchenSetup VillageHall() => new()
    {
        Name = "Village hall",
        Site = new KitchenSite { Altitude = Length.FromMeters(120) },
        TimeZoneId = "Europe/London",
        Pots =
        [
            Pot.Straight("pot-10", "10 L pot", Length.FromCentimeters(24), Length.FromCentimeters(22.1)),
            Pot.Straight("pot-24", "24 L pot", Length.FromCentimeters(32), Length.FromCentimeters(30)),
        ],
        Hobs =
        [
            new Hob { Id = "induction", Name = "Induction hob", Kind = HobKind.Induction, RatedPower = Power.FromKilowatts(3.5) },
        ],
        Oven = new Oven("oven", "Oven", HasFan: true, Levels: 2, Length.FromCentimeters(60), Length.FromCentimeters(40)),
        Trays = [new Tray("tray", "Oven tray", Length.FromCentimeters(53), Length.FromCentimeters(32.5), 3)],
    };
}
