using Stockwright.Kitchen;
using Stockwright.Measures;
using Stockwright.Web.Fields;
using UnitsNet;

namespace Stockwright.Web.Features.Kitchen;

/// <summary>What stands in the kitchen, in words.</summary>
internal static class KitchenText
{
    public static string Of(Pot pot, UnitSystem units) => $"{pot.Name}: {Size(pot, units)}, {Make(pot)}";

    public static string Size(Pot pot, UnitSystem units) => (pot.IsTapered
        ? $"{KitchenFormat.Text(pot.BaseDiameter, units)} widening to {KitchenFormat.Text(pot.BrimDiameter, units)} across"
        : $"{KitchenFormat.Text(pot.BaseDiameter, units)} across") + $", {KitchenFormat.Text(pot.InnerHeight, units)} high";

    public static string Make(Pot pot)
    {
        string material = pot.Material switch
        {
            WallMaterial.Aluminium => "aluminium",
            WallMaterial.Copper => "copper",
            WallMaterial.EnamelledIron => "enamelled",
            WallMaterial.Stoneware => "stoneware",
            _ => "stainless steel",
        };
        string power = pot.HeaterPower is { } rated ? $" of {KitchenFormat.Text(rated, UnitSystem.Metric)}" : "";
        return pot.Kind switch
        {
            PotKind.PressureCooker => $"{material} pressure cooker{(pot.GaugePressure is { } gauge ? $" for {KitchenFormat.Gauge(gauge)}" : "")}",
            PotKind.SlowCooker => $"{material} slow cooker{power}",
            PotKind.Kettle => $"{material} kettle{power}",
            _ => material,
        };
    }

    public static string Of(Hob hob) =>
        $"{hob.Name}: {Kind(hob.Kind)}, {KitchenFormat.Text(hob.RatedPower, UnitSystem.Metric)}, {KitchenFormat.Text(hob.Efficiency.Value)} into the pot";

    public static string Kind(HobKind kind) => kind switch
    {
        HobKind.Crock => "slow cooker",
        HobKind.Jacket => "kettle",
        _ => EquipmentFields.HobKind.LabelOf(kind).ToLowerInvariant(),
    };

    public static string Of(Oven oven, UnitSystem units) =>
        $"{oven.Name}: {(oven.HasFan ? "with a fan" : "no fan")}, {oven.Levels} at once, shelf {Sides(oven.ShelfLength, oven.ShelfWidth, units)}";

    public static string Of(Tray tray, UnitSystem units) => $"{tray.Name}: {tray.Count} of {Sides(tray.InnerLength, tray.InnerWidth, units)}";

    public static string Sides(Length one, Length other, UnitSystem units) => $"{KitchenFormat.Text(one, units)} × {KitchenFormat.Text(other, units)}";

    public static string Air(KitchenSite site, UnitSystem units) => site.MeasuredPressure is { } pressure
        ? $"{KitchenFormat.Text(pressure, units)}, measured"
        : $"{Altitude(site.Altitude, units)} above the sea";

    public static string Film(KitchenSite site) => site.OwnFilmFactor is { } film
        ? $"your figure is {KitchenNumber.Write(film)}"
        : "no figure of your own yet";

    public static string Clinging(KitchenSite site) => site.OwnClinging is { } clings
        ? $"your figure is {KitchenFormat.Text(clings)} of the bare bones"
        : "no figure of your own yet";

    // Whole metres or feet: a length of pots would be written in millimetres.
    private static string Altitude(Length altitude, UnitSystem units) => units == UnitSystem.UsCustomary
        ? $"{altitude.Feet.ToString("0", System.Globalization.CultureInfo.InvariantCulture)}\u00A0ft"
        : $"{altitude.Meters.ToString("0", System.Globalization.CultureInfo.InvariantCulture)}\u00A0m";
}
