using System.Globalization;
using Stockwright.Cooking;
using Stockwright.Cooling.Limits;
using Stockwright.Kitchen;
using Stockwright.Logbook;
using Stockwright.Measures;
using Stockwright.Predicting;
using Stockwright.Recipes;
using Stockwright.Web.Features.Cooking.Stove;
using Stockwright.Web.Features.Kitchen;
using Stockwright.Web.Fields;
using UnitsNet;
using static Stockwright.Web.Features.Cooking.Log.EntryField;
using static Stockwright.Web.Features.Cooking.Log.EntryKind;

namespace Stockwright.Web.Features.Cooking.Log;

/// <summary>The kinds of entries a cook may make: one row a kind, in the order of their buttons, and which of them fit a phase.</summary>
internal static class EntryRows
{
    private const string MayBeBlank = "May be left blank";

    public static readonly (string Word, ReadingPlace Value)[] Places = [("pot", ReadingPlace.Pot), ("cooling", ReadingPlace.Cooling)];

    private static readonly (string Word, CorrectiveStep Value)[] Actions =
    [
        ("keep-cooling", CorrectiveStep.KeepCooling), ("reheat", CorrectiveStep.ReheatAndCoolAgain), ("discard", CorrectiveStep.Discard), ("put-away", CorrectiveStep.PutAway),
    ];

    private static readonly (string Word, BodyClass Value)[] Bodies =
    [
        ("watery", BodyClass.Watery), ("syrupy", BodyClass.Syrupy), ("trembling", BodyClass.Trembling), ("soft-jelly", BodyClass.SoftJelly),
        ("firm-jelly", BodyClass.FirmJelly), ("very-firm", BodyClass.VeryFirm), ("demi-glace", BodyClass.DemiGlace), ("glace", BodyClass.Glace),
    ];

    private static readonly EntryQuantity<Length> PotLength = new(Measure.PotLength, si => Length.FromMeters(si), length => length.Meters);
    private static readonly EntryQuantity<Volume> Stock = new(Measure.Stock, si => Volume.FromCubicMeters(si), volume => volume.CubicMeters);
    private static readonly EntryQuantity<Mass> Weight = new(Measure.Mass, si => Mass.FromKilograms(si), mass => mass.Kilograms);
    private static readonly EntryQuantity<Mass> SmallWeight = new(Measure.SmallMass, si => Mass.FromKilograms(si), mass => mass.Kilograms);
    private static readonly EntryQuantity<Ratio> Part = new(Measure.Percent, si => Ratio.FromDecimalFractions(si), ratio => ratio.DecimalFractions);
    private static readonly EntryQuantity<double> Plain = new(Measure.Number, number => number, number => number);
    private static readonly EntryQuantity<TimeSpan> Hours = new(Measure.Hours, TimeSpan.FromSeconds, time => time.TotalSeconds);
    private static readonly FieldUnit KilowattHour = new("kWh", 3.6e6);
    private static readonly EntryQuantity<Energy> Metered = new(new Measure(KilowattHour, KilowattHour), si => Energy.FromJoules(si), energy => energy.Joules);

    private static readonly Ratio UsualOpen = Ratio.FromPercent(10);

    private static readonly EntryField<LogFact.LidChanged, Ratio?> LidOpen = Number<LogFact.LidChanged, Ratio>(
        "lid-open", "Ajar: open part of the mouth", Part, LidPosition.OpenRange, fact => fact.Lid.Kind == LidKind.Ajar ? fact.Lid.OpenFraction : null, "Open part of the mouth") with
    { Placeholder = "10", Description = "open part of the mouth, when ajar" };

    public static readonly EntryKind[] All =
    [
        Measured(
            "Level",
            "Level read",
            Number<LogFact.LevelRead, Length>(
                "below", "From the rim down to the liquid", PotLength, LogFact.LevelRead.Range, fact => fact.BelowRim, "Level below the rim", "How far below the rim does it stand?") with
            { Expected = ExpectedText.Level, Description = "distance from the rim down" },
            below => new LogFact.LevelRead(below),
            (fact, words) => $"Level {StoveText.Level(fact.BelowRim, words.Units)} below the rim",
            fact => (fact.BelowRim.Millimeters, "mm")),
        Measured(
            "Water added",
            "Water added",
            Number<LogFact.WaterAdded, Volume>("water", "Water added, measured cold", Stock, LogFact.VolumeRange, fact => fact.Volume, "Water added", "How much water went in?") with
            { Expected = ExpectedText.Water, Description = "added" },
            water => new LogFact.WaterAdded(water),
            (fact, words) => $"{KitchenFormat.Precise(fact.Volume, words.Units)} of water added",
            fact => (fact.Volume.Liters, "L")),
        Bare<LogFact.Skimmed>("Skimmed", "Skimmed", "Skimmed") with { IsOneTap = true, IsCorrectable = false },
        Of(
            "Temperature",
            "Temperature read",
            Degrees("degrees", "Thermometer reads") with { Description = "as read" },
            Words<LogFact.TemperatureRead, ReadingPlace>(
                "place", "Where", "Where it was read", Places, place => place == ReadingPlace.Pot ? "In the pot" : "In the stock, cooling", fact => fact.Place, EntryFieldShape.Radios) with
            {
                Default = view => view.Course.Phase is BatchPhase.Cooling or BatchPhase.Finishing or BatchPhase.Straining ? "cooling" : "pot",
                Description = "pot (default) or cooling",
            },
            Line<LogFact.TemperatureRead>("probe", "Which thermometer", fact => fact.Probe, longest: CookName.Longest) with { Hint = MayBeBlank, Description = "which thermometer" },
            (read, place, probe) => new LogFact.TemperatureRead(read, place, probe),
            (fact, _) => $"{FactText.AsRead(fact.Temperature)} {FactText.Where(fact)}") with
        {
            Units = fact => FactText.UnitsOf(fact.Temperature),
            Figure = fact => FactText.UnitsOf(fact.Temperature) == UnitSystem.UsCustomary ? (fact.Temperature.DegreesFahrenheit, "°F") : (fact.Temperature.DegreesCelsius, "°C"),
        },

        // Kelp does not simmer.
        Bare<LogFact.Simmers>("It simmers", "Simmers", "Simmers") with { TitleIn = course => $"It {HeatText.Of(course.Batch.Planned.Request.Recipe).Does}" },
        Of(
            "Lid",
            "Lid moved",
            Words<LogFact.LidChanged, LidKind>(
                "lid", "The lid is", "The lid", [.. EquipmentFields.Lid.Words.Select(word => (word.Word, word.Value))], EquipmentFields.Lid.LabelOf, fact => fact.Lid.Kind, EntryFieldShape.Radios) with
            { Default = _ => "off", Description = "off, ajar or on" },

            // Asked of a lid ajar only.
            LidOpen with { Read = entry => string.Equals(entry.Fields.Form["lid"].Trim(), "ajar", StringComparison.OrdinalIgnoreCase) ? LidOpen.Read(entry) : null },
            (kind, open) => new LogFact.LidChanged(kind == LidKind.Ajar ? LidPosition.Ajar(open ?? UsualOpen) : kind == LidKind.On ? LidPosition.On : LidPosition.Off),
            (fact, _) => $"Lid {StoveText.Of(fact.Lid)}"),
        Of(
            "Other heat",
            "Moved to another heat",
            Line<LogFact.HeatMoved>("hob", "It stands on", fact => fact.HobId, "Say which heat it stands on now.", EntryFieldShape.List) with
            { Options = (view, _) => view.Heats, Description = "stable name of the hob, or oven, or none" },
            hob => new LogFact.HeatMoved(hob),
            (fact, words) => $"Moved to {words.Heat(fact.HobId)}"),
        Bare<LogFact.OffTheBoil>("Off the boil", "Off the boil", "Went off the boil"),
        Of(
            "Heat was gone",
            "Heat gone",
            Until<LogFact.HeatLost>(
                "until", "Back at", fact => fact.Until, "The heat came back after it went: write a later time.", "That is still to come. Leave this blank while the heat is away.") with
            { Placeholder = "still away", Hint = "Blank while it is away", Longest = 40, Description = "when it came back; left out while it is away" },
            Why<LogFact.HeatLost>(fact => fact.Why) with { Hint = "Power cut, flame out; may be left blank" },
            (until, why) => new LogFact.HeatLost(until, why),
            (fact, words) => With($"Heat gone{(fact.Until is { } until ? $" until {words.Clock.Moment(until)}" : ", and still away")}", fact.Why)) with
        { Moment = ("Gone from", "02:10") },
        Of("Paused", "Paused", Why<LogFact.Paused>(fact => fact.Why), why => new LogFact.Paused(why), (fact, _) => With("Paused", fact.Why)),
        Bare<LogFact.Resumed>("Taken up again", "Taken up again", "Taken up again"),
        Of(
            "Boiled over",
            "Boiled over",
            Number<LogFact.BoiledOver, Volume>("lost", "Lost, about", Stock, LogFact.VolumeRange, fact => fact.Lost, "Lost over the rim") with
            { Hint = "Blank when you cannot say", Description = "lost over the rim" },
            lost => new LogFact.BoiledOver(lost),
            (fact, words) => fact.Lost is { } lost ? $"Boiled over, about {KitchenFormat.Precise(lost, words.Units)} lost" : "Boiled over") with
        { Figure = fact => fact.Lost is { } lost ? (lost.Liters, "L") : null },
        Bare<LogFact.RanLow>("Ran low", "Ran low", "Ran low: found uncovered or nearly dry"),
        Measured(
            "Strained",
            "Strained",
            Number<LogFact.Strained, Volume>("strained", "Stock strained", Stock, LogFact.VolumeRange, fact => fact.Volume, "Strained stock", "How much stock did you strain?") with
            { Description = "stock" },
            volume => new LogFact.Strained(volume),
            (fact, words) => $"{KitchenFormat.Precise(fact.Volume, words.Units)} strained",
            fact => (fact.Volume.Liters, "L")),
        Measured(
            "Spent solids",
            "Spent solids weighed",
            Number<LogFact.SpentWeighed, Mass>(
                "spent", "Spent solids, drained", Weight, LogFact.SpentWeighed.Range, fact => fact.Spent, "Weight of the spent solids", "How much do the drained solids weigh?") with
            {
                HintIn = (view, units) => $"All of them, without bowl or colander. Likely {KitchenFormat.Band(view.Course.Expected.SpentSolids, units)}.",
                Description = "weight of the drained solids",
            },
            spent => new LogFact.SpentWeighed(spent),
            (fact, words) => $"{FactText.Weighed(fact.Spent, words.Units)} of spent solids, drained",
            fact => (fact.Spent.Kilograms, "kg")),
        Of(
            "Cooling began",
            "Cooling began",
            Line<LogFact.CoolingBegan>("method", "How", fact => fact.Method) with { Hint = "Ice bath, shallow pans; may be left blank", Description = "how" },
            method => new LogFact.CoolingBegan(method),
            (fact, _) => With("Cooling began", fact.Method)),
        Of(
            "No thermometer",
            "Said to be cold, no thermometer",
            Line<LogFact.ColdUnmeasured>("text", "How you can tell", fact => fact.Sign) with { Hint = MayBeBlank, Description = "how the cook can tell that it is cold" },
            sign => new LogFact.ColdUnmeasured(sign),
            (fact, _) => With("Said to be cold, no thermometer", fact.Sign)) with
        {
            Submit = "It is cold right through",
            IsOffered = false,
            Caution = "A hand cannot tell 5 °C from 15 °C (41 °F from 59 °F), and without a reading nobody can say whether the limit was met; your local rule may ask for one. "
                + "Enter this only when there is no thermometer to be had and the stock is as cold as the fridge right to its middle.",
        },
        Of(
            "Corrective action",
            "Corrective action",
            Words<LogFact.CorrectionMade, CorrectiveStep>("action", "What was done", "What was done", Actions, StoveText.Of, fact => fact.Step) with
            { Description = "keep-cooling, reheat, discard or put-away" },
            Line<LogFact.CorrectionMade>("text", "In your words", fact => fact.Text) with { Description = "in the cook's words" },
            (step, text) => new LogFact.CorrectionMade(step, text),
            (fact, _) => With($"Corrective action: {StoveText.Of(fact.Step)}", fact.Text)),
        Measured(
            "Fat",
            "Fat weighed",
            Number<LogFact.FatWeighed, Mass>("fat", "Fat weighed", SmallWeight, LogFact.FatWeighed.Range, fact => fact.Fat, "Weight of the fat", "How much does the fat weigh?") with
            { Description = "weight" },
            fat => new LogFact.FatWeighed(fat),
            (fact, words) => $"{KitchenFormat.Precise(fact.Fat, words.Units)} of fat",
            fact => (fact.Fat.Grams, "g")),
        Measured(
            "Refractometer",
            "Refractometer read",
            Number<LogFact.RefractometerRead, double>(
                "brix", "Refractometer reads", Plain, LogFact.RefractometerRead.Range, fact => fact.Brix, "Degrees Brix", "What does the refractometer read?") with
            { Unit = "°Brix", Description = "degrees Brix" },
            brix => new LogFact.RefractometerRead(brix),
            (fact, _) => string.Create(CultureInfo.InvariantCulture, $"Refractometer {fact.Brix:0.##} °Brix"),
            fact => (fact.Brix, "°Brix")),
        Of(
            "Set",
            "Set felt",
            Words<LogFact.SetFelt, BodyClass>("body", "Cold from the fridge it is", "The set", Bodies, FactText.Set, fact => fact.Body) with
            { Description = "watery, syrupy, trembling, soft-jelly, firm-jelly, very-firm, demi-glace or glace" },
            body => new LogFact.SetFelt(body),
            (fact, _) => $"Cold it is {FactText.Set(fact.Body)}"),
        Measured(
            "Portioned",
            "Portioned",
            Number<LogFact.Portioned, Volume>("portioned", "Stock portioned", Stock, LogFact.VolumeRange, fact => fact.Volume, "Stock portioned", "How much stock did you portion?") with
            { Description = "stock" },
            volume => new LogFact.Portioned(volume),
            (fact, words) => $"{KitchenFormat.Precise(fact.Volume, words.Units)} portioned",
            fact => (fact.Volume.Liters, "L")),
        Of(
            "Note",
            "Note",
            Line<LogFact.Noted>("text", "Note", fact => fact.Text, "Write something to note.", EntryFieldShape.Note, FieldText.LongestNote) with { Description = "in the cook's words" },
            text => new LogFact.Noted(text),
            (fact, _) => fact.Text),
        Of(
            "Photo",
            "Photo",
            Picture<LogFact.PhotoTaken>(EntryFields.Photo, "Picture") with { Hint = "Made smaller, and without place or device." },
            Line<LogFact.PhotoTaken>("text", "Caption", fact => fact.Caption),
            (_, caption) => new LogFact.PhotoTaken(caption),
            (fact, _) => With("Photo", fact.Caption)) with
        { IsCorrectable = false },
        Of(
            "Step done earlier",
            "Step done",
            Line<LogFact.StepDone>(EntryFields.Step, "Which step", fact => fact.StepKey, "Say which step was done.", EntryFieldShape.List) with
            {
                // The ones not yet done; the one asked for stays, whatever became of it.
                Options = (view, typed) =>
                    [.. view.Course.Steps
                        .Where(step => step.Standing != StepStanding.Done || string.Equals(step.Key, typed, StringComparison.Ordinal))
                        .Select(step => new ChoiceOption(step.Key, $"{view.Clock.Near(step.Step.At, view.Now)} {step.Step.Title}"))],
                Description = "key of the step",
            },
            step => new LogFact.StepDone(step),
            (fact, words) => $"Done: {words.Step(fact.StepKey)}"),
        Of(
            "Close the record",
            "Record closed",
            Line<LogFact.Closed>("next-time", "What to change next time", fact => fact.NextTime, shape: EntryFieldShape.Note, longest: FieldText.LongestNote) with
            { Description = "what to change next time" },
            Number<LogFact.Closed, TimeSpan>("attended", "Your own time, all told", Hours, LogFact.Closed.AttendedRange, fact => fact.Attended, "Your own time") with
            { HintIn = (view, _) => $"The plan expected {KitchenFormat.Text(view.Course.Batch.Planned.Timeline.HandsOn)}", Description = "own time spent" },
            Number<LogFact.Closed, Energy>("metered", "Energy off a meter", Metered, LogFact.Closed.MeteredRange, fact => fact.Metered, "Energy off the meter") with
            { Hint = "Blank when nobody read one", Description = "energy off the meter" },
            (nextTime, attended, metered) => new LogFact.Closed(nextTime, attended, metered),
            (fact, words) => words.Closed(fact)) with
        { IsOffered = false },
        Of("Put aside: never cooked", "Put aside as never cooked", Why<LogFact.NeverCooked>(fact => fact.Why), why => new LogFact.NeverCooked(why), (fact, _) => With("Put aside: never cooked", fact.Why)) with
        { IsOffered = false },
        Of("Take back", "Taken back", Why<LogFact.Withdrawn>(fact => fact.Why), why => new LogFact.Withdrawn(why), (fact, _) => With("Taken back", fact.Why)) with
        { IsOffered = false, IsCorrectable = false },
    ];

    /// <summary>Words of the kinds that fit a phase, the likeliest first. All others stand behind.</summary>
    public static string[] Likely(BatchPhase phase) => phase switch
    {
        BatchPhase.NotBegun => ["note"],
        BatchPhase.Preparing => ["temperature", "level", "water", "note", "photo"],
        BatchPhase.HeatingUp => ["simmers", "skimmed", "temperature", "lid", "boiled-over", "note"],
        BatchPhase.Simmering => ["level", "water", "skimmed", "temperature", "lid", "heat-moved", "off-the-boil", "note", "photo"],
        BatchPhase.HeatAway => ["resumed", "simmers", "temperature", "heat-lost", "level", "note"],
        BatchPhase.Straining => ["strained", "spent", "cooling-began", "temperature", "fat", "note", "photo"],
        BatchPhase.Cooling => ["temperature", "no-thermometer", "correction-made", "cooling-began", "strained", "spent", "note", "photo"],
        BatchPhase.Finishing => ["set-felt", "fat", "refractometer", "portioned", "temperature", "note", "photo"],
        _ => [],
    };

    private static string With(string what, string more) => more.Length > 0 ? $"{what}: {more}" : what;

    private static EntryField<TFact, string> Why<TFact>(Func<TFact, string> get) => Line("why", "Why", get) with { Hint = MayBeBlank, Description = "why" };
}
