using Stockwright.Kitchen;
using Stockwright.Storage;
using Stockwright.Web.Fields;
using UnitsNet;

namespace Stockwright.Web.Features.Kitchen;

/// <summary>Name, place and air of the kitchen as a form; the planner has the same numbers.</summary>
internal static class SiteFields
{
    public const string Name = "name";
    public const string Zone = "zone";

    public static readonly NumberRow<Length> Altitude = NumberRow.Length("altitude", "Altitude", Measure.Height, KitchenSite.AltitudeRange) with { Description = "Altitude of the kitchen; m or ft." };

    public static readonly NumberRow<Pressure> Pressure = NumberRow.Pressure("pressure", "Air pressure, measured", Measure.AirPressure, KitchenSite.PressureRange) with
    {
        Told = "Air pressure",
        Placeholder = "from the altitude",
        Hint = "As read in the kitchen, not reduced to sea level.",
        Description = "Air pressure measured at the kitchen; hPa or inHg.",
    };

    public static readonly NumberRow<Temperature> Room = NumberRow.Temperature("room", "Room", KitchenSite.RoomRange) with { Told = "Room temperature" };

    public static readonly NumberRow<Ratio> Humidity = NumberRow.Percent("humidity", "Humidity", KitchenSite.HumidityRange);

    public static readonly NumberRow<Temperature> Tap = NumberRow.Temperature("tap", "Cold tap", KitchenSite.TapRange) with
    {
        Told = "Tap water",
        Description = "Cold tap temperature; degrees Celsius or Fahrenheit.",
    };

    public static readonly NumberRow<double> Film = NumberRow.Number("film", "Film factor", KitchenSite.OwnFilmRange) with
    {
        Placeholder = "as usual",
        Hint = "From a pot you weighed: water lost, over what clean water would lose. 1 is clean water.",
        Description = "The kitchen's own film factor, from a weighed pot.",
    };

    public static readonly NumberRow<Ratio> Clings = NumberRow.Percent("clings", "Clings to drained bones", KitchenSite.OwnClingingRange) with
    {
        Told = "Liquor that clings",
        Placeholder = "as usual",
        Hint = "From a colander you weighed: liquor, of the weight of the bare bones.",
        Description = "Liquor that clings to drained bones in this kitchen, from a weighed colander; per cent of their weight.",
    };

    /// <summary>Room, tap, and the kitchen's own figures.</summary>
    public static readonly IReadOnlyList<FieldBinding<KitchenSite>> OfRoom =
    [
        Room.Of<KitchenSite>(site => site.Room, (site, room) => site with { Room = room }),
        Tap.Of<KitchenSite>(site => site.TapWater, (site, tap) => site with { TapWater = tap }),
        Film.Of<KitchenSite>(site => site.OwnFilmFactor, (site, film) => site with { OwnFilmFactor = film }),
        Clings.Of<KitchenSite>(site => site.OwnClinging, (site, share) => site with { OwnClinging = share }),
    ];

    private static readonly IReadOnlyList<FieldBinding<KitchenSite>> OfSite =
    [
        Altitude.Of<KitchenSite>(site => site.Altitude, (site, altitude) => site with { Altitude = altitude }),
        Pressure.Of<KitchenSite>(site => site.MeasuredPressure, (site, pressure) => site with { MeasuredPressure = pressure }),
        Humidity.Of<KitchenSite>(site => site.Humidity, (site, share) => site with { Humidity = share }),
        .. OfRoom,
    ];

    public static TypedForm Write(KitchenDetails details, UnitSystem units) => new Typing(units)
        .Put(Name, details.Name)
        .Put(Zone, details.TimeZoneId)
        .Put(OfSite, details.Site)
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

        Func<KitchenSite, KitchenSite> typed = OfSite.ReadKept(reader, stored.Site, Write(stored, reader.Units));
        return reader.Problems.Count > 0 ? null : new KitchenDetails(name, zone, typed(new KitchenSite()));
    }
}
