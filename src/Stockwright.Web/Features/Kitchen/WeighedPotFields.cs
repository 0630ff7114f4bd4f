using Stockwright.Kitchen;
using Stockwright.Simmering;
using Stockwright.Web.Fields;
using UnitsNet;

namespace Stockwright.Web.Features.Kitchen;

/// <summary>A pot weighed before and after some hours of simmering, as a form; it gives the kitchen's own film factor.</summary>
internal static class WeighedPotFields
{
    public const string Lost = "lost";
    public const string Hours = "hours";
    public const string Simmer = "simmer";

    /// <summary>Film factor from what was typed; null when something has to be put right.</summary>
    public static double? Read(FieldReader reader, KitchenSite site)
    {
        Length? diameter = EquipmentFields.PotDiameter.Read(reader, "How wide is the pot inside, at the level of the stock?");
        double? lost = reader.Number(Lost, "Weight lost", Measure.Mass, 0.01, 100, "How much lighter was it at the end, without what you took out or put in?");
        double? seconds = reader.Number(Hours, "Time", Measure.Hours, 900, 72 * 3600, "How long did it simmer between the two weighings?");
        double? kelvins = reader.Number(Simmer, "Temperature", Measure.Temperature, 323.15, 372.15, "How hot was the stock?");
        LidPosition? lid = EquipmentReader.ReadLid(reader, null);
        if (reader.Problems.Count > 0 || diameter is null || lost is null || seconds is null || kelvins is null)
        {
            return null;
        }

        if (kelvins <= site.Room.Kelvins + 20)
        {
            reader.Report(Simmer, "That is hardly warmer than the room: nothing to weigh.");
            return null;
        }

        double film = SurfaceFilm.FromWeighedPot(
            Mass.FromKilograms(lost.Value),
            TimeSpan.FromSeconds(seconds.Value),
            diameter.Value,
            Temperature.FromKelvins(kelvins.Value),
            lid ?? LidPosition.Off,
            site);
        if (film >= SurfaceFilm.Range.Least && film <= SurfaceFilm.Range.Most)
        {
            return Math.Round(film, 3);
        }

        reader.Report(Lost, film > SurfaceFilm.Range.Most
            ? "That is more than clean water loses: did it boil, or was something taken out? Check the two weights, the time and the width."
            : "That is almost nothing for an open simmer: check the two weights, the time and the lid.");
        return null;
    }
}
