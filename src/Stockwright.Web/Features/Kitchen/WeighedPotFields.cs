using Stockwright.Kitchen;
using Stockwright.Simmering;
using Stockwright.Web.Fields;
using UnitsNet;

namespace Stockwright.Web.Features.Kitchen;

/// <summary>A pot weighed before and after some hours of simmering, as a form; it gives the kitchen's own film factor.</summary>
internal sealed class WeighedPotFields : DetailsFields
{
    private static readonly NumberRow<Length> Diameter = EquipmentFields.PotDiameter with { Hint = null, Missing = "How wide is the pot inside, at the level of the stock?" };

    private static readonly NumberRow<Mass> Lost = NumberRow.Mass("lost", "Weight lost", SurfaceFilm.WeighedLossRange) with
    {
        Hint = "Or the weight of water that brought it back to the line.",
        Missing = "How much lighter was it at the end, without what you took out or put in?",
    };

    private static readonly NumberRow<TimeSpan> Hours = NumberRow.Span("hours", "Over", Measure.Hours, SurfaceFilm.WeighedTimeRange) with
    {
        Told = "Time",
        Missing = "How long did it simmer between the two weighings?",
    };

    private static readonly NumberRow<Temperature> Simmer = NumberRow.Temperature("simmer", "Held at", SurfaceFilm.WeighedTemperatureRange) with { Told = "Temperature", Missing = "How hot was the stock?" };

    public static readonly WeighedPotFields Form = new();

    public override IReadOnlyList<FieldGroup<KitchenView<KitchenDetails>>> Groups { get; } =
    [
        Group(
            null,
            "fields",
            Diameter,
            Lost,
            Hours,
            Simmer,
            EquipmentFields.Lid with { Label = "Lid", Class = null, None = null },
            EquipmentFields.Gap with { Label = "Open part of the mouth, if ajar", Placeholder = "10" }),
    ];

    public override string Text(KitchenDetails part, UnitSystem units) => KitchenText.Film(part.Site);

    internal override TypedForm Write(KitchenDetails? stored, UnitSystem units) => TypedForm.Empty;

    internal override KitchenDetails? Read(FieldReader reader, string id, KitchenDetails? stored) =>
        stored is not null && ReadFilm(reader, stored.Site) is { } film ? stored with { Site = stored.Site with { OwnFilmFactor = film } } : null;

    /// <summary>Film factor from what was typed; null when something has to be put right.</summary>
    private static double? ReadFilm(FieldReader reader, KitchenSite site)
    {
        Length? diameter = Diameter.Read(reader);
        Mass? lost = Lost.Read(reader);
        TimeSpan? time = Hours.Read(reader);
        Temperature? simmer = Simmer.Read(reader);
        LidPosition? lid = EquipmentReader.ReadLid(reader, null);
        if (reader.Problems.Count > 0 || diameter is null || lost is null || time is null || simmer is null)
        {
            return null;
        }

        if (simmer.Value.Kelvins <= site.Room.Kelvins + 20)
        {
            reader.Report(Simmer.Name, "That is hardly warmer than the room: nothing to weigh.");
            return null;
        }

        double film = SurfaceFilm.FromWeighedPot(lost.Value, time.Value, diameter.Value, simmer.Value, lid ?? LidPosition.Off, site);
        if (film >= SurfaceFilm.Range.Least && film <= SurfaceFilm.Range.Most)
        {
            return Math.Round(film, 3);
        }

        reader.Report(Lost.Name, film > SurfaceFilm.Range.Most
            ? "That is more than clean water loses: did it boil, or was something taken out? Check the two weights, the time and the width."
            : "That is almost nothing for an open simmer: check the two weights, the time and the lid.");
        return null;
    }
}
