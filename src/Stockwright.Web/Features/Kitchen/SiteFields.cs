using Stockwright.Kitchen;
using Stockwright.Storage;
using Stockwright.Web.Fields;
using UnitsNet;

namespace Stockwright.Web.Features.Kitchen;

/// <summary>Name, place and air of the kitchen as a form; the numbers under the planner's field names.</summary>
internal static class SiteFields
{
    public const string Name = "name";
    public const string Zone = "zone";
    public const string Humidity = "humidity";
    public const string Altitude = "altitude";
    public const string Pressure = "pressure";
    public const string Room = "room";
    public const string Tap = "tap";
    public const string Film = "film";
    public const string Clings = "clings";

    public static TypedForm Write(KitchenDetails details, UnitSystem units) => new Typing(units)
        .Put(Name, details.Name)
        .Put(Zone, details.TimeZoneId)
        .Put(Altitude, Measure.Height, details.Site.Altitude.Meters)
        .Put(Pressure, Measure.AirPressure, details.Site.MeasuredPressure?.Pascals)
        .Put(Room, Measure.Temperature, details.Site.Room.Kelvins)
        .Put(Humidity, Measure.Percent, details.Site.Humidity.DecimalFractions)
        .Put(Tap, Measure.Temperature, details.Site.TapWater.Kelvins)
        .Put(Film, Measure.Number, details.Site.OwnFilmFactor)
        .Put(Clings, Measure.Percent, details.Site.OwnClinging?.DecimalFractions)
        .Form;

    /// <summary>Reads the kitchen; null when something has to be put right. Blank numbers take the usual value.</summary>
    public static KitchenDetails? Read(FieldReader reader, KitchenDetails stored)
    {
        string name = reader.Name(Name, "Give the kitchen a name.");
        string zone = reader.Form[Zone].Trim();
        if (zone.Length == 0)
        {
            reader.Report(Zone, "Name the time zone, like Europe/London.");
        }
        else if (zone.Length > 60 || !TimeZoneInfo.TryFindSystemTimeZoneById(zone, out _))
        {
            reader.Report(Zone, $"{KitchenNumber.Quote(zone)} is not a time zone known here. Write continent and city, like Europe/London.");
        }

        double? altitude = reader.Altitude(Altitude);
        double? pressure = reader.AirPressure(Pressure);
        double? room = reader.Room(Room);
        double? humidity = reader.Number(Humidity, "Humidity", Measure.Percent, 0, 1);
        double? tap = reader.Tap(Tap);
        double? film = reader.Film(Film);
        double? clings = reader.Clings(Clings);
        if (reader.Problems.Count > 0)
        {
            return null;
        }

        TypedForm shown = Write(stored, reader.Units);
        KitchenSite usual = new();
        bool Same(string field) => Typing.Unchanged(reader.Form, shown, field);
        return new KitchenDetails(name, zone, new KitchenSite
        {
            Altitude = Same(Altitude) ? stored.Site.Altitude : altitude is { } metres ? Length.FromMeters(metres) : usual.Altitude,
            MeasuredPressure = Same(Pressure) ? stored.Site.MeasuredPressure : pressure is { } pascals ? UnitsNet.Pressure.FromPascals(pascals) : null,
            Room = Same(Room) ? stored.Site.Room : room is { } kelvins ? Temperature.FromKelvins(kelvins) : usual.Room,
            Humidity = Same(Humidity) ? stored.Site.Humidity : humidity is { } share ? Ratio.FromDecimalFractions(share) : usual.Humidity,
            TapWater = Same(Tap) ? stored.Site.TapWater : tap is { } cold ? Temperature.FromKelvins(cold) : usual.TapWater,
            OwnFilmFactor = Same(Film) ? stored.Site.OwnFilmFactor : film,
            OwnClinging = Same(Clings) ? stored.Site.OwnClinging : clings is { } part ? Ratio.FromDecimalFractions(part) : null,
        });
    }
}
