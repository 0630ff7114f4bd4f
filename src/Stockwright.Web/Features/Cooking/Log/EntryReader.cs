using Stockwright.Cooking;
using Stockwright.Cooling.Limits;
using Stockwright.Kitchen;
using Stockwright.Logbook;
using Stockwright.Predicting;
using Stockwright.Storage;
using Stockwright.Web.Features.Kitchen;
using Stockwright.Web.Fields;
using UnitsNet;
using UnitsNet.Units;

namespace Stockwright.Web.Features.Cooking.Log;

/// <summary>Reads an entry off a form, whoever sent it: a browser, its outbox, or a program.</summary>
internal sealed class EntryReader(TypedForm form, UnitSystem units, Batch batch, DateTimeOffset now)
{
    private const int LongestWho = 40;
    private const int LongestLine = 200;
    private const string UsualAjar = "10";

    /// <summary>A minute hand read a little ahead is no slip.</summary>
    private static readonly TimeSpan Slip = TimeSpan.FromMinutes(2);

    public static readonly (string Word, ReadingPlace Value)[] Places = [("pot", ReadingPlace.Pot), ("cooling", ReadingPlace.Cooling)];

    public static readonly (string Word, CorrectiveStep Value)[] Actions =
    [
        ("keep-cooling", CorrectiveStep.KeepCooling),
        ("reheat", CorrectiveStep.ReheatAndCoolAgain),
        ("discard", CorrectiveStep.Discard),
        ("put-away", CorrectiveStep.PutAway),
    ];

    public static readonly (string Word, BodyClass Value)[] Bodies =
    [
        ("watery", BodyClass.Watery),
        ("syrupy", BodyClass.Syrupy),
        ("trembling", BodyClass.Trembling),
        ("soft-jelly", BodyClass.SoftJelly),
        ("firm-jelly", BodyClass.FirmJelly),
        ("very-firm", BodyClass.VeryFirm),
        ("demi-glace", BodyClass.DemiGlace),
        ("glace", BodyClass.Glace),
    ];

    private readonly FieldReader reader = new(form, units);

    public FieldReader Fields => reader;

    /// <summary>The entry; null when something in it has to be put right, which then stands among the problems.</summary>
    public NewEntry? Read()
    {
        Guid id = Key(EntryFields.Entry, required: true) ?? Guid.Empty;
        Guid? corrects = Key(EntryFields.Corrects, required: false);
        string who = reader.Text(EntryFields.Who, LongestWho);
        DeviceClock device = DeviceClock.Read(form, now);
        DateTimeOffset made = device.Made ?? now;
        bool yesterday = form.Has(EntryFields.AtDay) && reader.Word(EntryFields.AtDay, "The day", MomentReader.Days) is TypedDay.Yesterday;
        DateTimeOffset happened = reader.Moment(EntryFields.At, batch.Zone, made, yesterday) ?? made;
        LogFact? fact = Fact(happened);
        return reader.Problems.Count > 0 || fact is null
            ? null
            : new NewEntry
            {
                Id = id,
                BatchId = batch.Id,
                HappenedAt = happened.ToUniversalTime(),
                Who = who,
                DeviceOffset = device.Offset,
                DeviceZone = device.Zone,
                Fact = fact,
                Corrects = corrects,
            };
    }

    private Guid? Key(string field, bool required)
    {
        string text = form[field].Trim();
        if (text.Length == 0 && !required)
        {
            return null;
        }

        if (Guid.TryParse(text, out Guid id) && id != Guid.Empty)
        {
            return id;
        }

        reader.Report(field, required ? "The entry carries no key of its own (a GUID)." : $"{KitchenNumber.Quote(text)} is not the key of an entry.");
        return null;
    }

    private LogFact? Fact(DateTimeOffset happened)
    {
        string kind = form[EntryFields.Kind].Trim();
        switch (kind)
        {
            case "step-done":
                return Line(EntryFields.Step, "Say which step was done.") is { } step ? new LogFact.StepDone(step) : null;
            case "level":
                return Number(EntryFields.Below, "Level below the rim", Measure.PotLength, 0, 3, "How far below the rim does it stand?") is { } below
                    ? new LogFact.LevelRead(Length.FromMeters(below)) : null;
            case "water":
                return Litres(EntryFields.Water, "Water added", "How much water went in?") is { } water ? new LogFact.WaterAdded(water) : null;
            case "temperature":
                return TemperatureRead();
            case "skimmed":
                return new LogFact.Skimmed();
            case "heat-moved":
                return Line(EntryFields.Hob, "Say which heat it stands on now.") is { } hob ? new LogFact.HeatMoved(hob) : null;
            case "lid":
                return Lid();
            case "heat-lost":
                return new LogFact.HeatLost(Until(happened), reader.Text(EntryFields.Why, LongestLine));
            case "off-the-boil":
                return new LogFact.OffTheBoil();
            case "simmers":
                return new LogFact.Simmers();
            case "boiled-over":
                double? lost = Number(EntryFields.Lost, "Lost over the rim", Measure.Stock, 1e-6, 0.5, null);
                return new LogFact.BoiledOver(lost is { } cubicMetres ? Volume.FromCubicMeters(cubicMetres) : null);
            case "ran-low":
                return new LogFact.RanLow();
            case "paused":
                return new LogFact.Paused(reader.Text(EntryFields.Why, LongestLine));
            case "resumed":
                return new LogFact.Resumed();
            case "strained":
                return Litres(EntryFields.Strained, "Strained stock", "How much stock did you strain?") is { } strained ? new LogFact.Strained(strained) : null;
            case "spent":
                return Number(EntryFields.Spent, "Weight of the spent solids", Measure.Mass, 1e-3, 200, "How much do the drained solids weigh?") is { } spent
                    ? new LogFact.SpentWeighed(Mass.FromKilograms(spent)) : null;
            case "cooling-began":
                return new LogFact.CoolingBegan(reader.Text(EntryFields.Method, LongestLine));
            case "no-thermometer":
                return new LogFact.ColdUnmeasured(reader.Text(EntryFields.Text, LongestLine));
            case "correction-made":
                return reader.Word(EntryFields.Action, "What was done", Actions) is { } action
                    ? new LogFact.CorrectionMade(action, reader.Text(EntryFields.Text, LongestLine)) : null;
            case "fat":
                return Number(EntryFields.Fat, "Weight of the fat", Measure.SmallMass, 1e-4, 50, "How much does the fat weigh?") is { } fat
                    ? new LogFact.FatWeighed(Mass.FromKilograms(fat)) : null;
            case "refractometer":
                return Number(EntryFields.Brix, "Degrees Brix", Measure.Number, 0, 85, "What does the refractometer read?") is { } brix
                    ? new LogFact.RefractometerRead(brix) : null;
            case "set-felt":
                return reader.Word(EntryFields.Body, "The set", Bodies) is { } body ? new LogFact.SetFelt(body) : null;
            case "portioned":
                return Litres(EntryFields.Portioned, "Stock portioned", "How much stock did you portion?") is { } portioned ? new LogFact.Portioned(portioned) : null;
            case "note":
                string note = reader.Note(EntryFields.Text);
                if (reader.IsBlank(EntryFields.Text))
                {
                    reader.Report(EntryFields.Text, "Write something to note.");
                }

                return new LogFact.Noted(note);
            case "photo":
                return new LogFact.PhotoTaken(reader.Text(EntryFields.Text, LongestLine));
            case "closed":
                double? attended = Number(EntryFields.Attended, "Your own time", Measure.Hours, 0, 100 * 3600, null);
                double? metered = Number(EntryFields.Metered, "Energy off the meter", Energy, 0, 1e10, null);
                return new LogFact.Closed(
                    reader.Note(EntryFields.NextTime),
                    attended is { } seconds ? TimeSpan.FromSeconds(seconds) : null,
                    metered is { } joules ? UnitsNet.Energy.FromJoules(joules) : null);
            case "never-cooked":
                return new LogFact.NeverCooked(reader.Text(EntryFields.Why, LongestLine));
            case "withdrawn":
                if (!form.Has(EntryFields.Corrects))
                {
                    reader.Report(EntryFields.Corrects, "Say which entry is taken back.");
                }

                return new LogFact.Withdrawn(reader.Text(EntryFields.Why, LongestLine));
            default:
                reader.Report(EntryFields.Kind, kind.Length == 0 ? "Say what happened." : $"{KitchenNumber.Quote(kind)} is not a kind of entry this version knows.");
                return null;
        }
    }

    internal static readonly Measure Energy = new(new FieldUnit("kWh", 3.6e6), new FieldUnit("kWh", 3.6e6));

    private LogFact.TemperatureRead? TemperatureRead()
    {
        double? kelvins = Number(EntryFields.Degrees, "Temperature", Measure.Temperature, 243.15, 403.15, "What does the thermometer read?");
        ReadingPlace? place = reader.Word(EntryFields.Place, "Where it was read", Places);
        string probe = reader.Text(EntryFields.Probe, LongestWho);
        if (kelvins is null || place is not { } where || !KitchenNumber.TryParse(form[EntryFields.Degrees], out double typed, out _))
        {
            return null;
        }

        // As read, not through kelvins: 70 °F must stay 70 °F.
        Temperature read = Temperature.From(typed, units == UnitSystem.UsCustomary ? TemperatureUnit.DegreeFahrenheit : TemperatureUnit.DegreeCelsius);
        return new LogFact.TemperatureRead(read, where, probe);
    }

    private LogFact.LidChanged? Lid()
    {
        LidKind? kind = reader.Word(EntryFields.Lid, "The lid", EquipmentWords.Lids);
        if (kind is LidKind.Ajar)
        {
            TypedForm filled = form.Has(EntryFields.LidOpen) ? form : form.With(EntryFields.LidOpen, UsualAjar);
            FieldReader opening = new(filled, units);
            double? open = opening.Number(EntryFields.LidOpen, "Open part of the mouth", Measure.Percent, 0.01, 0.6);
            foreach (Stockwright.Planning.InputProblem problem in opening.Problems)
            {
                reader.Report(problem.Field, problem.Message);
            }

            // The reader lets a last digit slip over the limit; the lid does not.
            return open is { } part ? new LogFact.LidChanged(LidPosition.Ajar(Ratio.FromDecimalFractions(Math.Clamp(part, 0.01, 0.6)))) : null;
        }

        return kind is { } seated ? new LogFact.LidChanged(seated == LidKind.On ? LidPosition.On : LidPosition.Off) : null;
    }

    /// <summary>When heat came back: 04:40 after 02:10 is the next such time, also past midnight.</summary>
    private DateTimeOffset? Until(DateTimeOffset happened)
    {
        if (reader.MomentFrom(EntryFields.Until, batch.Zone, happened) is not { } until)
        {
            return null;
        }

        if (reader.Problems.Any(problem => problem.Field is EntryFields.At or EntryFields.AtDay))
        {
            // From when is asked first; what comes after it cannot be said yet.
            return until;
        }

        if (until <= happened)
        {
            reader.Report(EntryFields.Until, "The heat came back after it went: write a later time.");
        }
        else if (until > now + Slip)
        {
            reader.Report(EntryFields.Until, "That is still to come. Leave this blank while the heat is away.");
        }

        return until;
    }

    private string? Line(string field, string missing)
    {
        string text = reader.Text(field, LongestLine);
        if (text.Length > 0)
        {
            return text;
        }

        if (reader.IsBlank(field))
        {
            reader.Report(field, missing);
        }

        return null;
    }

    private Volume? Litres(string field, string what, string missing) =>
        Number(field, what, Measure.Stock, 1e-6, 0.5, missing) is { } cubicMetres ? Volume.FromCubicMeters(cubicMetres) : null;

    private double? Number(string field, string what, Measure measure, double least, double most, string? missing) =>
        reader.Number(field, what, measure, least, most, missing);
}
