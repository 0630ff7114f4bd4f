using System.Globalization;
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
    private readonly KitchenClock clock;

    /// <summary>Words for one batch.</summary>
    /// <param name="view">The batch.</param>
    /// <param name="units">Measures of the reader.</param>
    /// <param name="hobs">Hobs of the kitchen, for their names.</param>
    internal FactText(BatchView view, UnitSystem units, IReadOnlyList<Hob> hobs)
    {
        this.hobs = hobs;
        clock = new KitchenClock(view.Zone, units);
        IEnumerable<Stockwright.Planning.PlanStep> known = view.Course is { } course
            ? [.. course.Batch.Planned.Timeline.Steps, .. course.Steps.Select(step => step.Step)]
            : [];
        steps = known.GroupBy(step => step.Key, StringComparer.Ordinal).ToDictionary(group => group.Key, group => group.First().Title, StringComparer.Ordinal);
    }

    private UnitSystem Units => clock.Units;

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
    public string Of(LogFact fact) => fact switch
    {
        LogFact.StepDone done => $"Done: {Step(done.StepKey)}",
        LogFact.LevelRead level => $"Level {StoveText.Level(level.BelowRim, Units)} below the rim",
        LogFact.WaterAdded water => $"{KitchenFormat.Precise(water.Volume, Units)} of water added",
        LogFact.TemperatureRead read => $"{AsRead(read.Temperature)} {StoveText.Of(read.Place)}{(read.Probe.Length > 0 ? $", thermometer {read.Probe}" : "")}",
        LogFact.Skimmed => "Skimmed",
        LogFact.HeatMoved moved => $"Moved to {Heat(moved.HobId)}",
        LogFact.LidChanged lid => $"Lid {StoveText.Of(lid.Lid)}",
        LogFact.HeatLost lost => With($"Heat gone{(lost.Until is { } until ? $" until {clock.Moment(until)}" : ", and still away")}", lost.Why),
        LogFact.OffTheBoil => "Went off the boil",
        LogFact.Simmers => "Simmers",
        LogFact.BoiledOver over => over.Lost is { } volume ? $"Boiled over, about {KitchenFormat.Precise(volume, Units)} lost" : "Boiled over",
        LogFact.RanLow => "Ran low: found uncovered or nearly dry",
        LogFact.Paused paused => With("Paused", paused.Why),
        LogFact.Resumed => "Taken up again",
        LogFact.Strained strained => $"{KitchenFormat.Precise(strained.Volume, Units)} strained",
        LogFact.SpentWeighed spent => $"{Weighed(spent.Spent, Units)} of spent solids, drained",
        LogFact.CoolingBegan began => With("Cooling began", began.Method),
        LogFact.ColdUnmeasured cold => With("Said to be cold, no thermometer", cold.Sign),
        LogFact.CorrectionMade made => With($"Corrective action: {StoveText.Of(made.Step)}", made.Text),
        LogFact.FatWeighed fat => $"{KitchenFormat.Precise(fat.Fat, Units)} of fat",
        LogFact.RefractometerRead read => string.Create(CultureInfo.InvariantCulture, $"Refractometer {read.Brix:0.##} °Brix"),
        LogFact.SetFelt felt => $"Cold it is {BodyClasses.Name(felt.Body)}: {BodyClasses.Look(felt.Body)}",
        LogFact.Portioned portioned => $"{KitchenFormat.Precise(portioned.Volume, Units)} portioned",
        LogFact.Noted noted => noted.Text,
        LogFact.PhotoTaken photo => With("Photo", photo.Caption),
        LogFact.Closed closed => Closed(closed),
        LogFact.NeverCooked aside => With("Put aside: never cooked", aside.Why),
        LogFact.Withdrawn withdrawn => With("Taken back", withdrawn.Why),
        _ => FactDocument.Word(fact),
    };

    /// <summary>The figure of an entry, with its unit as it is exported; null when it has none.</summary>
    public static (double Value, string Unit)? Figure(LogFact fact) => fact switch
    {
        LogFact.LevelRead level => (level.BelowRim.Millimeters, "mm"),
        LogFact.WaterAdded water => (water.Volume.Liters, "L"),
        LogFact.TemperatureRead { Temperature: { Unit: TemperatureUnit.DegreeFahrenheit } fahrenheit } => ((double)fahrenheit.Value, "°F"),
        LogFact.TemperatureRead read => (read.Temperature.DegreesCelsius, "°C"),
        LogFact.BoiledOver { Lost: { } lost } => (lost.Liters, "L"),
        LogFact.Strained strained => (strained.Volume.Liters, "L"),
        LogFact.SpentWeighed spent => (spent.Spent.Kilograms, "kg"),
        LogFact.FatWeighed fat => (fat.Fat.Grams, "g"),
        LogFact.RefractometerRead read => (read.Brix, "°Brix"),
        LogFact.Portioned portioned => (portioned.Volume.Liters, "L"),
        _ => null,
    };

    /// <summary>A weight of kilograms as a scale shows it: grams, or pounds and ounces.</summary>
    public static string Weighed(Mass mass, UnitSystem units) =>
        units == UnitSystem.UsCustomary ? KitchenFormat.Text(mass, units) : KitchenFormat.Precise(mass, units);

    /// <summary>A temperature in the scale it was read in.</summary>
    public static string AsRead(Temperature read) =>
        KitchenFormat.Precise(read, read.Unit == TemperatureUnit.DegreeFahrenheit ? UnitSystem.UsCustomary : UnitSystem.Metric);

    private string Closed(LogFact.Closed closed)
    {
        string said = "Record closed";
        said += closed.Attended is { } attended ? $", {KitchenFormat.Text(attended)} of own time" : "";
        said += closed.Metered is { } metered ? $", {KitchenFormat.Text(metered, Units)} by the meter" : "";
        return closed.NextTime.Length > 0 ? $"{said}. Next time: {closed.NextTime}" : said;
    }

    private static string With(string what, string more) => more.Length > 0 ? $"{what}: {more}" : what;
}
