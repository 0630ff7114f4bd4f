using Stockwright.Kitchen;
using UnitsNet;

namespace Stockwright.Storage.Demo;

/// <summary>
/// The demonstration: a village-hall kitchen that cooks a weekly lunch. Invented; nothing here is evidence for anything.
/// </summary>
public static class DemoKitchen
{
    /// <summary>The hall and its air.</summary>
    public static KitchenDetails Details { get; } = new(
        "Village hall kitchen",
        "Europe/London",
        new KitchenSite
        {
            Altitude = Length.FromMeters(120),
            Room = Temperature.FromDegreesCelsius(20),
            Humidity = Ratio.FromDecimalFractions(0.5),
            TapWater = Temperature.FromDegreesCelsius(12),
        });

    /// <summary>A ten-litre pot for the week's soup and a 24-litre pot for the big lunch.</summary>
    public static IReadOnlyList<Pot> Pots { get; } =
    [
        Pot.Straight("pot-10", "10 L pot", Length.FromMillimeters(240), Length.FromMillimeters(221)),
        Pot.Straight("pot-24", "24 L pot", Length.FromMillimeters(320), Length.FromMillimeters(300)),
    ];

    /// <summary>One induction hob with a large and a small ring.</summary>
    public static IReadOnlyList<Hob> Hobs { get; } =
    [
        new() { Id = "large-ring", Name = "Large ring", Kind = HobKind.Induction, RatedPower = Power.FromKilowatts(3.5) },
        new() { Id = "small-ring", Name = "Small ring", Kind = HobKind.Induction, RatedPower = Power.FromKilowatts(1.8) },
    ];

    /// <summary>A fan oven that takes three trays of the standard size.</summary>
    public static Oven Oven { get; } = new("fan-oven", "Fan oven", HasFan: true, Levels: 3, Length.FromMillimeters(530), Length.FromMillimeters(325));

    /// <summary>Three trays of size GN 1/1 (EN 631-1: 530 mm by 325 mm outside).</summary>
    public static IReadOnlyList<Tray> Trays { get; } =
    [
        new("gn-1-1", "GN 1/1 tray", Length.FromMillimeters(530), Length.FromMillimeters(325), Count: 3),
    ];
}
