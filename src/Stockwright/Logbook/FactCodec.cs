using System.Globalization;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using Stockwright.Cooling.Limits;
using Stockwright.Files;
using Stockwright.Kitchen;
using Stockwright.Predicting;
using UnitsNet;
using UnitsNet.Units;

namespace Stockwright.Logbook;

/// <summary>
/// Facts as JSON objects in SI units, the unit in the name of the field: for storage, exports and the HTTP interface.
/// Temperatures are in °C or °F as they were read.
/// </summary>
public static class FactCodec
{
    private static readonly JsonWriterOptions Options = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>Writes a fact without its word.</summary>
    public static string Write(LogFact fact)
    {
        ArgumentNullException.ThrowIfNull(fact);
        using MemoryStream stream = new();
        using (Utf8JsonWriter json = new(stream, Options))
        {
            json.WriteStartObject();
            WriteFields(json, fact);
            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(stream.ToArray());
    }

    /// <summary>Reads a fact.</summary>
    /// <param name="word">Its word, as in <see cref="FactWords"/>.</param>
    /// <param name="json">As written by <see cref="Write"/>.</param>
    /// <exception cref="FactFormatException">The word or a field is unknown, or a value is missing or of the wrong kind.</exception>
    public static LogFact Read(string word, string json) =>
        JsonRow.ReadFile(json, $"entry '{word}'", static (message, inner) => new FactFormatException(message, inner), row => ReadFields(word, row));

    private static void WriteFields(Utf8JsonWriter json, LogFact fact)
    {
        switch (fact)
        {
            case LogFact.StepDone done:
                json.WriteString("step", done.StepKey);
                break;
            case LogFact.LevelRead level:
                json.WriteNumber("belowRimMetres", level.BelowRim.Meters);
                break;
            case LogFact.WaterAdded water:
                json.WriteNumber("cubicMetres", water.Volume.CubicMeters);
                break;
            case LogFact.TemperatureRead read:
                bool fahrenheit = read.Temperature.Unit == TemperatureUnit.DegreeFahrenheit;
                json.WriteNumber(fahrenheit ? "degreesFahrenheit" : "degreesCelsius", fahrenheit ? read.Temperature.DegreesFahrenheit : read.Temperature.DegreesCelsius);
                json.WriteString("place", read.Place.ToString());
                WriteText(json, "probe", read.Probe);
                break;
            case LogFact.HeatMoved moved:
                json.WriteString("hob", moved.HobId);
                break;
            case LogFact.LidChanged lid:
                json.WriteString("lid", lid.Lid.Kind.ToString());
                if (lid.Lid.Kind == LidKind.Ajar)
                {
                    json.WriteNumber("openFraction", lid.Lid.OpenFraction.DecimalFractions);
                }

                break;
            case LogFact.HeatLost lost:
                if (lost.Until is { } until)
                {
                    json.WriteString("until", until.ToUniversalTime().ToString("O", CultureInfo.InvariantCulture));
                }

                WriteText(json, "why", lost.Why);
                break;
            case LogFact.BoiledOver { Lost: { } volume }:
                json.WriteNumber("lostCubicMetres", volume.CubicMeters);
                break;
            case LogFact.Paused paused:
                WriteText(json, "why", paused.Why);
                break;
            case LogFact.Strained strained:
                json.WriteNumber("cubicMetres", strained.Volume.CubicMeters);
                break;
            case LogFact.SpentWeighed spent:
                json.WriteNumber("kilograms", spent.Spent.Kilograms);
                break;
            case LogFact.CoolingBegan began:
                WriteText(json, "method", began.Method);
                break;
            case LogFact.ColdUnmeasured cold:
                WriteText(json, "sign", cold.Sign);
                break;
            case LogFact.CorrectionMade made:
                json.WriteString("action", made.Step.ToString());
                WriteText(json, "text", made.Text);
                break;
            case LogFact.FatWeighed fat:
                json.WriteNumber("kilograms", fat.Fat.Kilograms);
                break;
            case LogFact.RefractometerRead read:
                json.WriteNumber("brix", read.Brix);
                break;
            case LogFact.SetFelt felt:
                json.WriteString("body", felt.Body.ToString());
                break;
            case LogFact.Portioned portioned:
                json.WriteNumber("cubicMetres", portioned.Volume.CubicMeters);
                break;
            case LogFact.Noted noted:
                json.WriteString("text", noted.Text);
                break;
            case LogFact.PhotoTaken photo:
                WriteText(json, "caption", photo.Caption);
                break;
            case LogFact.Closed closed:
                WriteText(json, "nextTime", closed.NextTime);
                WriteNumber(json, "attendedSeconds", closed.Attended?.TotalSeconds);
                WriteNumber(json, "meteredJoules", closed.Metered?.Joules);
                break;
            case LogFact.NeverCooked aside:
                WriteText(json, "why", aside.Why);
                break;
            case LogFact.Withdrawn withdrawn:
                WriteText(json, "why", withdrawn.Why);
                break;
        }
    }

    private static LogFact ReadFields(string word, JsonRow row) => word switch
    {
        "step-done" => new LogFact.StepDone(row.Text("step")),
        "level" => new LogFact.LevelRead(Length.FromMeters(row.Number("belowRimMetres"))),
        "water" => new LogFact.WaterAdded(Volume.FromCubicMeters(row.Number("cubicMetres"))),
        "temperature" => new LogFact.TemperatureRead(ReadTemperature(row), row.Choice<ReadingPlace>("place"), row.OptionalText("probe") ?? ""),
        "skimmed" => new LogFact.Skimmed(),
        "heat-moved" => new LogFact.HeatMoved(row.Text("hob")),
        "lid" => new LogFact.LidChanged(ReadLid(row)),
        "heat-lost" => new LogFact.HeatLost(ReadMoment(row, "until"), row.OptionalText("why") ?? ""),
        "off-the-boil" => new LogFact.OffTheBoil(),
        "simmers" => new LogFact.Simmers(),
        "boiled-over" => new LogFact.BoiledOver(row.OptionalNumber("lostCubicMetres") is { } lost ? Volume.FromCubicMeters(lost) : null),
        "ran-low" => new LogFact.RanLow(),
        "paused" => new LogFact.Paused(row.OptionalText("why") ?? ""),
        "resumed" => new LogFact.Resumed(),
        "strained" => new LogFact.Strained(Volume.FromCubicMeters(row.Number("cubicMetres"))),
        "spent" => new LogFact.SpentWeighed(Mass.FromKilograms(row.Number("kilograms"))),
        "cooling-began" => new LogFact.CoolingBegan(row.OptionalText("method") ?? ""),
        "no-thermometer" => new LogFact.ColdUnmeasured(row.OptionalText("sign") ?? ""),
        "correction-made" => new LogFact.CorrectionMade(row.Choice<CorrectiveStep>("action"), row.OptionalText("text") ?? ""),
        "fat" => new LogFact.FatWeighed(Mass.FromKilograms(row.Number("kilograms"))),
        "refractometer" => new LogFact.RefractometerRead(row.Number("brix")),
        "set-felt" => new LogFact.SetFelt(row.Choice<BodyClass>("body")),
        "portioned" => new LogFact.Portioned(Volume.FromCubicMeters(row.Number("cubicMetres"))),
        "note" => new LogFact.Noted(row.Text("text")),
        "photo" => new LogFact.PhotoTaken(row.OptionalText("caption") ?? ""),
        "closed" => new LogFact.Closed(
            row.OptionalText("nextTime") ?? "",
            ReadTime(row, "attendedSeconds"),
            row.OptionalNumber("meteredJoules") is { } joules ? Energy.FromJoules(joules) : null),
        "never-cooked" => new LogFact.NeverCooked(row.OptionalText("why") ?? ""),
        "withdrawn" => new LogFact.Withdrawn(row.OptionalText("why") ?? ""),
        _ => throw row.Fail($"there is no kind of entry called '{word}'"),
    };

    private static Temperature ReadTemperature(JsonRow row) => row.OptionalNumber("degreesFahrenheit") is { } fahrenheit
        ? Temperature.FromDegreesFahrenheit(fahrenheit)
        : Temperature.FromDegreesCelsius(row.Number("degreesCelsius"));

    private static LidPosition ReadLid(JsonRow row)
    {
        LidKind kind = row.Choice<LidKind>("lid");
        if (kind != LidKind.Ajar)
        {
            return kind == LidKind.On ? LidPosition.On : LidPosition.Off;
        }

        double open = row.Number("openFraction");
        return open is >= 0.01 and <= 0.6
            ? LidPosition.Ajar(Ratio.FromDecimalFractions(open))
            : throw row.Fail("'openFraction' must be between 0.01 and 0.6");
    }

    private static TimeSpan? ReadTime(JsonRow row, string field) => row.OptionalNumber(field) switch
    {
        null => null,
        { } seconds and >= 0 and < 1e9 => TimeSpan.FromTicks((long)Math.Round(seconds * TimeSpan.TicksPerSecond)),
        _ => throw row.Fail($"'{field}' must be between nothing and a thousand million"),
    };

    private static DateTimeOffset? ReadMoment(JsonRow row, string field)
    {
        if (row.OptionalText(field) is not { } text)
        {
            return null;
        }

        return DateTimeOffset.TryParseExact(text, "O", CultureInfo.InvariantCulture, DateTimeStyles.None, out DateTimeOffset moment)
            || DateTimeOffset.TryParseExact(text, "yyyy-MM-dd'T'HH:mm:ssK", CultureInfo.InvariantCulture, DateTimeStyles.AssumeUniversal, out moment)
            ? moment
            : throw row.Fail($"'{field}' must be a moment such as 2026-12-31T23:59:00Z");
    }

    private static void WriteText(Utf8JsonWriter json, string field, string text)
    {
        if (text.Length > 0)
        {
            json.WriteString(field, text);
        }
    }

    private static void WriteNumber(Utf8JsonWriter json, string field, double? number)
    {
        if (number is { } value)
        {
            json.WriteNumber(field, value);
        }
    }
}
