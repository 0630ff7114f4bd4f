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

    public static readonly EntryKind[] All =
    [
        EntryKind.Measured(
            "Level",
            "Level read",
            new NumberField<LogFact.LevelRead, Length>("below", "From the rim down to the liquid", PotLength, LogFact.LevelRead.Range, fact => fact.BelowRim)
            {
                Told = "Level below the rim",
                Missing = "How far below the rim does it stand?",
                Description = "distance from the rim down",
                Expected = ExpectedText.Level,
            },
            below => new LogFact.LevelRead(below),
            (fact, words) => $"Level {StoveText.Level(fact.BelowRim, words.Units)} below the rim",
            fact => (fact.BelowRim.Millimeters, "mm")),
        EntryKind.Measured(
            "Water added",
            "Water added",
            new NumberField<LogFact.WaterAdded, Volume>("water", "Water added, measured cold", Stock, LogFact.VolumeRange, fact => fact.Volume)
            {
                Told = "Water added",
                Missing = "How much water went in?",
                Description = "added",
                Expected = ExpectedText.Water,
            },
            water => new LogFact.WaterAdded(water),
            (fact, words) => $"{KitchenFormat.Precise(fact.Volume, words.Units)} of water added",
            fact => (fact.Volume.Liters, "L")),
        EntryKind.Bare<LogFact.Skimmed>("Skimmed", "Skimmed", "Skimmed") with { IsOneTap = true, IsCorrectable = false },
        EntryKind.Of(
            "Temperature",
            "Temperature read",
            new DegreesField("degrees", "Thermometer reads") { Description = "as read" },
            new WordField<LogFact.TemperatureRead, ReadingPlace>(
                "place", "Where", "Where it was read", Places, place => place == ReadingPlace.Pot ? "In the pot" : "In the stock, cooling", fact => fact.Place)
            {
                Shape = EntryFieldShape.Radios,
                Default = view => view.Course.Phase is BatchPhase.Cooling or BatchPhase.Finishing or BatchPhase.Straining ? "cooling" : "pot",
                Description = "pot (default) or cooling",
            },
            new LineField<LogFact.TemperatureRead>("probe", "Which thermometer", fact => fact.Probe) { Hint = MayBeBlank, Longest = CookName.Longest, Description = "which thermometer" },
            (read, place, probe) => new LogFact.TemperatureRead(read, place, probe),
            (fact, words) => $"{FactText.AsRead(fact.Temperature)} {FactText.Where(fact)}") with
        {
            Units = fact => FactText.UnitsOf(fact.Temperature),
            Figure = fact => FactText.UnitsOf(fact.Temperature) == UnitSystem.UsCustomary ? (fact.Temperature.DegreesFahrenheit, "°F") : (fact.Temperature.DegreesCelsius, "°C"),
        },
        EntryKind.Bare<LogFact.Simmers>("It simmers", "Simmers", "Simmers") with
        {
            // Kelp does not simmer.
            TitleIn = course => $"It {HeatWords.Of(course.Batch.Planned.Request.Recipe).Does}",
        },
        EntryKind.Of(
            "Lid",
            "Lid moved",
            new WordField<LogFact.LidChanged, LidKind>(
                "lid", "The lid is", "The lid", [.. EquipmentFields.Lid.Words.Select(word => (word.Word, word.Value))], EquipmentFields.Lid.LabelOf, fact => fact.Lid.Kind)
            {
                Shape = EntryFieldShape.Radios,
                Default = _ => "off",
                Description = "off, ajar or on",
            },
            new NumberField<LogFact.LidChanged, Ratio>(
                "lid-open", "Ajar: open part of the mouth", Part, LidPosition.OpenRange, fact => fact.Lid.Kind == LidKind.Ajar ? fact.Lid.OpenFraction : null)
            {
                Told = "Open part of the mouth",
                Asked = form => string.Equals(form["lid"].Trim(), "ajar", StringComparison.OrdinalIgnoreCase),
                Placeholder = "10",
                Blank = Ratio.FromPercent(10),
                Description = "open part of the mouth, when ajar",
            },
            (kind, open) => new LogFact.LidChanged(open is { } part ? LidPosition.Ajar(part) : kind == LidKind.On ? LidPosition.On : LidPosition.Off),
            (fact, _) => $"Lid {StoveText.Of(fact.Lid)}"),
        EntryKind.Of(
            "Other heat",
            "Moved to another heat",
            new LineField<LogFact.HeatMoved>("hob", "It stands on", fact => fact.HobId)
            {
                Shape = EntryFieldShape.List,
                Options = (view, _) => view.Heats,
                Missing = "Say which heat it stands on now.",
                Description = "stable name of the hob, or oven, or none",
            },
            hob => new LogFact.HeatMoved(hob),
            (fact, words) => $"Moved to {words.Heat(fact.HobId)}"),
        EntryKind.Bare<LogFact.OffTheBoil>("Off the boil", "Off the boil", "Went off the boil"),
        EntryKind.Of(
            "Heat was gone",
            "Heat gone",
            new UntilField<LogFact.HeatLost>("until", "Back at", fact => fact.Until)
            {
                Placeholder = "still away",
                Hint = "Blank while it is away",
                Longest = 40,
                TooEarly = "The heat came back after it went: write a later time.",
                TooLate = "That is still to come. Leave this blank while the heat is away.",
                Description = "when it came back; left out while it is away",
            },
            Why<LogFact.HeatLost>(fact => fact.Why, "Power cut, flame out; may be left blank"),
            (until, why) => new LogFact.HeatLost(until, why),
            (fact, words) => With($"Heat gone{(fact.Until is { } until ? $" until {words.Clock.Moment(until)}" : ", and still away")}", fact.Why)) with
        {
            Moment = ("Gone from", "02:10"),
        },
        EntryKind.Of("Paused", "Paused", Why<LogFact.Paused>(fact => fact.Why), why => new LogFact.Paused(why), (fact, _) => With("Paused", fact.Why)),
        EntryKind.Bare<LogFact.Resumed>("Taken up again", "Taken up again", "Taken up again"),
        EntryKind.Of(
            "Boiled over",
            "Boiled over",
            new NumberField<LogFact.BoiledOver, Volume>("lost", "Lost, about", Stock, LogFact.VolumeRange, fact => fact.Lost)
            {
                Told = "Lost over the rim",
                Hint = "Blank when you cannot say",
                Description = "lost over the rim",
            },
            lost => new LogFact.BoiledOver(lost),
            (fact, words) => fact.Lost is { } lost ? $"Boiled over, about {KitchenFormat.Precise(lost, words.Units)} lost" : "Boiled over") with
        {
            Figure = fact => fact.Lost is { } lost ? (lost.Liters, "L") : null,
        },
        EntryKind.Bare<LogFact.RanLow>("Ran low", "Ran low", "Ran low: found uncovered or nearly dry"),
        EntryKind.Measured(
            "Strained",
            "Strained",
            new NumberField<LogFact.Strained, Volume>("strained", "Stock strained", Stock, LogFact.VolumeRange, fact => fact.Volume)
            {
                Told = "Strained stock",
                Missing = "How much stock did you strain?",
                Description = "stock",
            },
            volume => new LogFact.Strained(volume),
            (fact, words) => $"{KitchenFormat.Precise(fact.Volume, words.Units)} strained",
            fact => (fact.Volume.Liters, "L")),
        EntryKind.Measured(
            "Spent solids",
            "Spent solids weighed",
            new NumberField<LogFact.SpentWeighed, Mass>("spent", "Spent solids, drained", Weight, LogFact.SpentWeighed.Range, fact => fact.Spent)
            {
                Told = "Weight of the spent solids",
                Missing = "How much do the drained solids weigh?",
                HintIn = (view, units) => $"All of them, without bowl or colander. Likely {KitchenFormat.Band(view.Course.Expected.SpentSolids, units)}.",
                Description = "weight of the drained solids",
            },
            spent => new LogFact.SpentWeighed(spent),
            (fact, words) => $"{FactText.Weighed(fact.Spent, words.Units)} of spent solids, drained",
            fact => (fact.Spent.Kilograms, "kg")),
        EntryKind.Of(
            "Cooling began",
            "Cooling began",
            new LineField<LogFact.CoolingBegan>("method", "How", fact => fact.Method) { Hint = "Ice bath, shallow pans; may be left blank", Description = "how" },
            method => new LogFact.CoolingBegan(method),
            (fact, _) => With("Cooling began", fact.Method)),
        EntryKind.Of(
            "No thermometer",
            "Said to be cold, no thermometer",
            new LineField<LogFact.ColdUnmeasured>("text", "How you can tell", fact => fact.Sign) { Hint = MayBeBlank, Description = "how the cook can tell that it is cold" },
            sign => new LogFact.ColdUnmeasured(sign),
            (fact, _) => With("Said to be cold, no thermometer", fact.Sign)) with
        {
            Submit = "It is cold right through",
            IsOffered = false,
            Caution = "A hand cannot tell 5 °C from 15 °C (41 °F from 59 °F), and without a reading nobody can say whether the limit was met; your local rule may ask for one. "
                + "Enter this only when there is no thermometer to be had and the stock is as cold as the fridge right to its middle.",
        },
        EntryKind.Of(
            "Corrective action",
            "Corrective action",
            new WordField<LogFact.CorrectionMade, CorrectiveStep>("action", "What was done", "What was done", Actions, StoveText.Of, fact => fact.Step)
            {
                Description = "keep-cooling, reheat, discard or put-away",
            },
            new LineField<LogFact.CorrectionMade>("text", "In your words", fact => fact.Text) { Description = "in the cook's words" },
            (step, text) => new LogFact.CorrectionMade(step, text),
            (fact, _) => With($"Corrective action: {StoveText.Of(fact.Step)}", fact.Text)),
        EntryKind.Measured(
            "Fat",
            "Fat weighed",
            new NumberField<LogFact.FatWeighed, Mass>("fat", "Fat weighed", SmallWeight, LogFact.FatWeighed.Range, fact => fact.Fat)
            {
                Told = "Weight of the fat",
                Missing = "How much does the fat weigh?",
                Description = "weight",
            },
            fat => new LogFact.FatWeighed(fat),
            (fact, words) => $"{KitchenFormat.Precise(fact.Fat, words.Units)} of fat",
            fact => (fact.Fat.Grams, "g")),
        EntryKind.Measured(
            "Refractometer",
            "Refractometer read",
            new NumberField<LogFact.RefractometerRead, double>("brix", "Refractometer reads", Plain, LogFact.RefractometerRead.Range, fact => fact.Brix)
            {
                Told = "Degrees Brix",
                Unit = "°Brix",
                Missing = "What does the refractometer read?",
                Description = "degrees Brix",
            },
            brix => new LogFact.RefractometerRead(brix),
            (fact, _) => string.Create(CultureInfo.InvariantCulture, $"Refractometer {fact.Brix:0.##} °Brix"),
            fact => (fact.Brix, "°Brix")),
        EntryKind.Of(
            "Set",
            "Set felt",
            new WordField<LogFact.SetFelt, BodyClass>("body", "Cold from the fridge it is", "The set", Bodies, FactText.Set, fact => fact.Body)
            {
                Description = "watery, syrupy, trembling, soft-jelly, firm-jelly, very-firm, demi-glace or glace",
            },
            body => new LogFact.SetFelt(body),
            (fact, _) => $"Cold it is {FactText.Set(fact.Body)}"),
        EntryKind.Measured(
            "Portioned",
            "Portioned",
            new NumberField<LogFact.Portioned, Volume>("portioned", "Stock portioned", Stock, LogFact.VolumeRange, fact => fact.Volume)
            {
                Told = "Stock portioned",
                Missing = "How much stock did you portion?",
                Description = "stock",
            },
            volume => new LogFact.Portioned(volume),
            (fact, words) => $"{KitchenFormat.Precise(fact.Volume, words.Units)} portioned",
            fact => (fact.Volume.Liters, "L")),
        EntryKind.Of(
            "Note",
            "Note",
            new NoteField<LogFact.Noted>("text", "Note", fact => fact.Text) { Missing = "Write something to note.", Description = "in the cook's words" },
            text => new LogFact.Noted(text),
            (fact, _) => fact.Text),
        EntryKind.Of(
            "Photo",
            "Photo",
            new PictureField<LogFact.PhotoTaken>(EntryFields.Photo, "Picture") { Hint = "Made smaller, and without place or device." },
            new LineField<LogFact.PhotoTaken>("text", "Caption", fact => fact.Caption),
            (_, caption) => new LogFact.PhotoTaken(caption),
            (fact, _) => With("Photo", fact.Caption)) with
        {
            IsCorrectable = false,
        },
        EntryKind.Of(
            "Step done earlier",
            "Step done",
            new LineField<LogFact.StepDone>(EntryFields.Step, "Which step", fact => fact.StepKey)
            {
                Shape = EntryFieldShape.List,

                // The ones not yet done; the one asked for stays, whatever became of it.
                Options = (view, typed) =>
                    [.. view.Course.Steps
                        .Where(step => step.Standing != StepStanding.Done || string.Equals(step.Key, typed, StringComparison.Ordinal))
                        .Select(step => new ChoiceOption(step.Key, $"{view.Clock.Near(step.Step.At, view.Now)} {step.Step.Title}"))],
                Missing = "Say which step was done.",
                Description = "key of the step",
            },
            step => new LogFact.StepDone(step),
            (fact, words) => $"Done: {words.Step(fact.StepKey)}"),
        EntryKind.Of(
            "Close the record",
            "Record closed",
            new NoteField<LogFact.Closed>("next-time", "What to change next time", fact => fact.NextTime) { Description = "what to change next time" },
            new NumberField<LogFact.Closed, TimeSpan>("attended", "Your own time, all told", Hours, LogFact.Closed.AttendedRange, fact => fact.Attended)
            {
                Told = "Your own time",
                HintIn = (view, _) => $"The plan expected {KitchenFormat.Text(view.Course.Batch.Planned.Timeline.HandsOn)}",
                Description = "own time spent",
            },
            new NumberField<LogFact.Closed, Energy>("metered", "Energy off a meter", Metered, LogFact.Closed.MeteredRange, fact => fact.Metered)
            {
                Told = "Energy off the meter",
                Hint = "Blank when nobody read one",
                Description = "energy off the meter",
            },
            (nextTime, attended, metered) => new LogFact.Closed(nextTime, attended, metered),
            (fact, words) => words.Closed(fact)) with
        {
            IsOffered = false,
        },
        EntryKind.Of("Put aside: never cooked", "Put aside as never cooked", Why<LogFact.NeverCooked>(fact => fact.Why), why => new LogFact.NeverCooked(why), (fact, _) => With("Put aside: never cooked", fact.Why)) with
        {
            IsOffered = false,
        },
        EntryKind.Of("Take back", "Taken back", Why<LogFact.Withdrawn>(fact => fact.Why), why => new LogFact.Withdrawn(why), (fact, _) => With("Taken back", fact.Why)) with
        {
            IsOffered = false,
            IsCorrectable = false,
        },
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

    private static LineField<TFact> Why<TFact>(Func<TFact, string> get, string hint = MayBeBlank) => new("why", "Why", get) { Hint = hint, Description = "why" };
}
