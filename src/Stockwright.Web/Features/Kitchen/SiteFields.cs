using Stockwright.Storage;
using Stockwright.Kitchen;
using Stockwright.Web.Fields;
using UnitsNet;

namespace Stockwright.Web.Features.Kitchen;

/// <summary>Name, place and air of the kitchen as a form; the planner has the same numbers.</summary>
internal sealed class SiteFields : DetailsFields
{
    public static readonly NumberRow<Length> Altitude = NumberRow.Length("altitude", "Altitude", Measure.Height, KitchenSite.AltitudeRange) with { Description = "Altitude of the kitchen; m or ft." };

    public static readonly NumberRow<Pressure> Pressure = NumberRow.Pressure("pressure", "Air pressure, measured", Measure.AirPressure, KitchenSite.PressureRange) with
    {
        Told = "Air pressure",
        Placeholder = "from the altitude",
        Hint = "Read in the kitchen, not from the weather report, which is corrected to sea level. Counts over the altitude.",
        Description = "Air pressure measured at the kitchen; hPa or inHg.",
    };

    public static readonly NumberRow<Temperature> Room = NumberRow.Temperature("room", "Room", KitchenSite.RoomRange) with { Told = "Room temperature" };

    public static readonly NumberRow<Ratio> Humidity = NumberRow.Percent("humidity", "Humidity of the room", KitchenSite.HumidityRange) with { Told = "Humidity" };

    public static readonly NumberRow<Temperature> Tap = NumberRow.Temperature("tap", "Cold tap", KitchenSite.TapRange) with
    {
        Told = "Tap water",
        Description = "Cold tap temperature; degrees Celsius or Fahrenheit.",
    };

    public static readonly NumberRow<double> Film = NumberRow.Number("film", "Weighed figure (film factor)", KitchenSite.OwnFilmRange) with
    {
        Told = "Film factor",
        Placeholder = "usual, with a wide band",
        Hint = "Fat and scum hold steam back. From a pot you weighed: the water it really lost as a part of what clean water would; 0.3 means three tenths.",
        Description = "The kitchen's own film factor, from a weighed pot.",
    };

    public static readonly NumberRow<Ratio> Clings = NumberRow.Percent("clings", "Liquor that clings to drained bones", KitchenSite.OwnClingingRange) with
    {
        Told = "Liquor that clings",
        Placeholder = "usual, with a wide band",
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

    private static readonly TextRow Zone = new("zone", "Time zone") { List = "zones", Hint = "Continent and city, like Europe/London.", Missing = "Name the time zone, like Europe/London." };

    public static readonly SiteFields Form = new();

    public override IReadOnlyList<FieldGroup<KitchenView<KitchenDetails>>> Groups { get; } =
    [
        Group(
            null,
            new TextRow("name", "Name of the kitchen") { Missing = "Give the kitchen a name." }.Of<KitchenDetails>(details => details.Name, (details, name) => details with { Name = name }),
            Zone.Of<KitchenDetails>(details => details.TimeZoneId, (details, zone) => details with { TimeZoneId = zone })),
        Group(
            "How hot water boils here",
            In((Altitude with { Hint = "Above the sea. Every 300 m takes about 1 °C off the boil." }).Of<KitchenSite>(site => site.Altitude, (site, altitude) => site with { Altitude = altitude })),
            In(Pressure.Of<KitchenSite>(site => site.MeasuredPressure, (site, pressure) => site with { MeasuredPressure = pressure }))),
        Group(
            "Room and tap",
            In(OfRoom[0]),
            In(Humidity.Of<KitchenSite>(site => site.Humidity, (site, share) => site with { Humidity = share })),
            In(OfRoom[1])),
        Group("How much your pots lose", In(OfRoom[2])),
        Group("How much stays on drained bones", In(OfRoom[3])),
    ];

    /// <summary>Blank numbers take the usual value.</summary>
    public override KitchenDetails Usual => Blank("");

    public override string Text(KitchenDetails part, UnitSystem units) => $"{part.Name}, {KitchenText.Air(part.Site, units)}, {part.TimeZoneId}";

    internal override KitchenDetails? Read(FieldReader reader, string id, KitchenDetails? stored)
    {
        string zone = PlainText.OneLine(reader.Form[Zone.Name]);
        if (zone.Length > 0 && !TimeZoneInfo.TryFindSystemTimeZoneById(zone, out _))
        {
            reader.Report(Zone.Name, $"{KitchenNumber.Quote(zone)} is not a time zone known here. Write continent and city, like Europe/London.");
        }

        return base.Read(reader, id, stored);
    }

    protected override KitchenDetails Blank(string id) => new("", "", new KitchenSite());

    private static FieldBinding<KitchenDetails> In(FieldBinding<KitchenSite> field) => field.In<KitchenDetails>(details => details.Site, (details, site) => details with { Site = site });
}

/// <summary>A form for the kitchen itself, without what stands in it: there is one of it, and it stays.</summary>
internal abstract class DetailsFields() : KitchenFields<KitchenDetails>("page", "/kitchen")
{
    internal override IReadOnlyList<Kept<KitchenDetails>> In(KeptKitchen kitchen) => [kitchen.Details];

    internal override Task<SaveOutcome> SaveAsync(KitchenStore store, KitchenDetails part, int version, CancellationToken cancellationToken) => store.SaveDetailsAsync(part, version, cancellationToken);
}
