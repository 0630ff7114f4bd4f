using Stockwright.Kitchen;
using Stockwright.Logbook;
using Stockwright.Measures;
using Stockwright.Predicting;
using Stockwright.Web.Features.Cooking.Stove;
using Stockwright.Web.Wording;
using UnitsNet;
using UnitsNet.Units;

namespace Stockwright.Web.Features.Cooking.Log;

/// <summary>Entries in words, as they stand in the log, on the record sheet and in exports.</summary>
public sealed class FactText
{
    private readonly Dictionary<string, string> steps;
    private readonly IReadOnlyList<Hob> hobs;

    /// <summary>Words for one batch.</summary>
    /// <param name="view">The batch.</param>
    /// <param name="units">Measures of the reader.</param>
    /// <param name="hobs">Hobs of the kitchen, for their names.</param>
    internal FactText(BatchView view, UnitSystem units, IReadOnlyList<Hob> hobs)
    {
        this.hobs = hobs;
        Clock = new KitchenClock(view.Zone, units);
        IEnumerable<Stockwright.Planning.PlanStep> known = view.Course is { } course
            ? [.. course.Batch.Planned.Timeline.Steps, .. course.Steps.Select(step => step.Step)]
            : [];
        steps = known.GroupBy(step => step.Key, StringComparer.Ordinal).ToDictionary(group => group.Key, group => group.First().Title, StringComparer.Ordinal);
    }

    /// <summary>The kitchen's clock, as the reader reads it.</summary>
    public KitchenClock Clock { get; }

    /// <summary>Measures of the reader.</summary>
    public UnitSystem Units => Clock.Units;

    /// <summary>Name of a step; its key when the plan does not know it.</summary>
    public string Step(string key) => steps.GetValueOrDefault(key, key);

    /// <summary>Name of a heat.</summary>
    public string Heat(string id) => id switch
    {
        LogFact.HeatMoved.Oven => "the oven, or a slow appliance",
        LogFact.HeatMoved.NoHeat => "no heat",
        _ => hobs.FirstOrDefault(hob => string.Equals(hob.Id, id, StringComparison.Ordinal))?.Name ?? id,
    };

    /// <summary>The entry in one line.</summary>
    public string Of(LogFact fact) => EntryKinds.Of(fact).Tell(fact, this);

    /// <summary>A weight of kilograms as a scale shows it: grams, or pounds and ounces.</summary>
    public static string Weighed(Mass mass, UnitSystem units) =>
        units == UnitSystem.UsCustomary ? KitchenFormat.Text(mass, units) : KitchenFormat.Precise(mass, units);

    /// <summary>A temperature in the scale it was read in.</summary>
    public static string AsRead(Temperature read) => KitchenFormat.Precise(read, UnitsOf(read));

    /// <summary>The measures a temperature was read in.</summary>
    public static UnitSystem UnitsOf(Temperature read) => read.Unit == TemperatureUnit.DegreeFahrenheit ? UnitSystem.UsCustomary : UnitSystem.Metric;

    /// <summary>Where a temperature was read, and with which thermometer.</summary>
    public static string Where(LogFact.TemperatureRead read) => $"{StoveText.Of(read.Place)}{(read.Probe.Length > 0 ? $", thermometer {read.Probe}" : "")}";

    /// <summary>How stock stands when cold.</summary>
    public static string Set(BodyClass body) => $"{BodyClasses.Name(body)}: {BodyClasses.Look(body)}";

    internal string Closed(LogFact.Closed closed)
    {
        string said = "Record closed";
        said += closed.Attended is { } attended ? $", {KitchenFormat.Text(attended)} of own time" : "";
        said += closed.Metered is { } metered ? $", {KitchenFormat.Text(metered, Units)} by the meter" : "";
        return closed.NextTime.Length > 0 ? $"{said}. Next time: {closed.NextTime}" : said;
    }
}
