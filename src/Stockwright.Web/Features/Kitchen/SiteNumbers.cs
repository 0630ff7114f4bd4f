using Stockwright.Kitchen;
using Stockwright.Web.Fields;

namespace Stockwright.Web.Features.Kitchen;

/// <summary>Reads what a cook types of a kitchen's air, room and tap, in SI; the core says what is in range. Null when blank or wrong.</summary>
internal static class SiteNumbers
{
    public static double? Altitude(this FieldReader reader, string field) =>
        reader.Number(field, "Altitude", Measure.Height, KitchenSite.AltitudeRange.Least.Meters, KitchenSite.AltitudeRange.Most.Meters);

    public static double? AirPressure(this FieldReader reader, string field) =>
        reader.Number(field, "Air pressure", Measure.AirPressure, KitchenSite.PressureRange.Least.Pascals, KitchenSite.PressureRange.Most.Pascals);

    public static double? Room(this FieldReader reader, string field) =>
        reader.Number(field, "Room temperature", Measure.Temperature, KitchenSite.RoomRange.Least.Kelvins, KitchenSite.RoomRange.Most.Kelvins);

    public static double? Tap(this FieldReader reader, string field) =>
        reader.Number(field, "Tap water", Measure.Temperature, KitchenSite.TapRange.Least.Kelvins, KitchenSite.TapRange.Most.Kelvins);

    public static double? Film(this FieldReader reader, string field) =>
        reader.Number(field, "Film factor", Measure.Number, KitchenSite.OwnFilmRange.Least, KitchenSite.OwnFilmRange.Most);

    /// <summary>A kitchen's own clinging figure, of the weight of the drained bones.</summary>
    public static double? Clings(this FieldReader reader, string field) =>
        reader.Number(field, "Liquor that clings", Measure.Percent, KitchenSite.OwnClingingRange.Least.DecimalFractions, KitchenSite.OwnClingingRange.Most.DecimalFractions);
}
