using Stockwright.Cooling.Limits;
using Stockwright.Kitchen;
using Stockwright.Logbook;
using Stockwright.Predicting;
using UnitsNet;
using Xunit;

namespace Stockwright.Tests.Logbook;

/// <summary>
/// Facts in the form in which they are stored since the first release. A text here is never changed: logs are full of them, and a
/// repeated entry is known by its text, letter for letter.
/// </summary>
public sealed class StoredFactTests
{
    public static TheoryData<string, string, LogFact> Stored => new()
    {
        { "step-done", """{"step":"check-1"}""", new LogFact.StepDone("check-1") },
        { "level", """{"belowRimMetres":0.065}""", new LogFact.LevelRead(Length.FromMeters(0.065)) },
        { "level", """{"belowRimMetres":0}""", new LogFact.LevelRead(Length.Zero) },
        { "water", """{"cubicMetres":0.0012}""", new LogFact.WaterAdded(Volume.FromCubicMeters(0.0012)) },
        { "temperature", """{"degreesCelsius":92.5,"place":"Pot"}""", new LogFact.TemperatureRead(Temperature.FromDegreesCelsius(92.5), ReadingPlace.Pot) },
        { "temperature", """{"degreesFahrenheit":70,"place":"Cooling","probe":"red one"}""", new LogFact.TemperatureRead(Temperature.FromDegreesFahrenheit(70), ReadingPlace.Cooling, "red one") },
        { "skimmed", "{}", new LogFact.Skimmed() },
        { "heat-moved", """{"hob":"oven"}""", new LogFact.HeatMoved(LogFact.HeatMoved.Oven) },
        { "lid", """{"lid":"Off"}""", new LogFact.LidChanged(LidPosition.Off) },
        { "lid", """{"lid":"On"}""", new LogFact.LidChanged(LidPosition.On) },
        { "lid", """{"lid":"Ajar","openFraction":0.1}""", new LogFact.LidChanged(LidPosition.Ajar(Ratio.FromDecimalFractions(0.1))) },
        { "heat-lost", "{}", new LogFact.HeatLost(null) },
        { "heat-lost", """{"why":"power cut"}""", new LogFact.HeatLost(null, "power cut") },
        { "heat-lost", """{"until":"2026-11-26T03:40:00.0000000+00:00"}""", new LogFact.HeatLost(new DateTimeOffset(2026, 11, 26, 4, 40, 0, TimeSpan.FromHours(1))) },
        { "heat-lost", """{"until":"2026-11-26T03:40:00.1234567+00:00","why":"flame out"}""", new LogFact.HeatLost(new DateTimeOffset(2026, 11, 26, 3, 40, 0, TimeSpan.Zero).AddTicks(1234567), "flame out") },
        { "off-the-boil", "{}", new LogFact.OffTheBoil() },
        { "simmers", "{}", new LogFact.Simmers() },
        { "boiled-over", "{}", new LogFact.BoiledOver() },
        { "boiled-over", """{"lostCubicMetres":0.0005}""", new LogFact.BoiledOver(Volume.FromCubicMeters(0.0005)) },
        { "ran-low", "{}", new LogFact.RanLow() },
        { "paused", "{}", new LogFact.Paused() },
        { "paused", """{"why":"market"}""", new LogFact.Paused("market") },
        { "resumed", "{}", new LogFact.Resumed() },
        { "strained", """{"cubicMetres":0.000946352946}""", new LogFact.Strained(Volume.FromCubicMeters(0.000946352946)) },
        { "spent", """{"kilograms":1.9}""", new LogFact.SpentWeighed(Mass.FromKilograms(1.9)) },
        { "cooling-began", "{}", new LogFact.CoolingBegan() },
        { "cooling-began", """{"method":"ice bath"}""", new LogFact.CoolingBegan("ice bath") },
        { "no-thermometer", "{}", new LogFact.ColdUnmeasured() },
        { "no-thermometer", """{"sign":"set to the middle"}""", new LogFact.ColdUnmeasured("set to the middle") },
        { "correction-made", """{"action":"ReheatAndCoolAgain"}""", new LogFact.CorrectionMade(CorrectiveStep.ReheatAndCoolAgain) },
        { "correction-made", """{"action":"Discard","text":"all of it"}""", new LogFact.CorrectionMade(CorrectiveStep.Discard, "all of it") },
        { "fat", """{"kilograms":0.085}""", new LogFact.FatWeighed(Mass.FromKilograms(0.085)) },
        { "refractometer", """{"brix":4.25}""", new LogFact.RefractometerRead(4.25) },
        { "set-felt", """{"body":"SoftJelly"}""", new LogFact.SetFelt(BodyClass.SoftJelly) },
        { "portioned", """{"cubicMetres":0.0034}""", new LogFact.Portioned(Volume.FromCubicMeters(0.0034)) },
        { "note", """{"text":"Märta: \"läuft\" <b>&amp;</b> 鍋 ½\n1\\2"}""", new LogFact.Noted("Märta: \"läuft\" <b>&amp;</b> 鍋 ½\n1\\2") },
        { "note", """{"text":""}""", new LogFact.Noted("") },
        { "photo", "{}", new LogFact.PhotoTaken() },
        { "photo", """{"caption":"the raft"}""", new LogFact.PhotoTaken("the raft") },
        { "closed", "{}", new LogFact.Closed() },
        { "closed", """{"nextTime":"less celery","attendedSeconds":5400,"meteredJoules":10800000}""", new LogFact.Closed("less celery", TimeSpan.FromMinutes(90), Energy.FromJoules(10_800_000)) },
        { "closed", """{"attendedSeconds":0.5}""", new LogFact.Closed("", TimeSpan.FromSeconds(0.5)) },
        { "never-cooked", "{}", new LogFact.NeverCooked() },
        { "never-cooked", """{"why":"wrong pot"}""", new LogFact.NeverCooked("wrong pot") },
        { "withdrawn", "{}", new LogFact.Withdrawn() },
        { "withdrawn", """{"why":"another pot"}""", new LogFact.Withdrawn("another pot") },
    };

    /// <summary>Other forms of the same, read as well: an editor's commas and remarks, nothing said of what may be left out, letters large or small.</summary>
    public static TheoryData<string, string, LogFact> AlsoRead => new()
    {
        { "level", """ { "belowRimMetres" : 65e-3, } """, new LogFact.LevelRead(Length.FromMeters(0.065)) },
        { "level", """{/* by hand */"belowRimMetres":0.065}""", new LogFact.LevelRead(Length.FromMeters(0.065)) },
        { "temperature", """{"place":"pot","probe":null,"degreesFahrenheit":null,"degreesCelsius":20}""", new LogFact.TemperatureRead(Temperature.FromDegreesCelsius(20), ReadingPlace.Pot) },
        { "heat-lost", """{"until":"2026-11-26T03:40:00Z","why":null}""", new LogFact.HeatLost(new DateTimeOffset(2026, 11, 26, 3, 40, 0, TimeSpan.Zero)) },
        { "heat-lost", """{"until":"2026-11-26T04:40:00+01:00"}""", new LogFact.HeatLost(new DateTimeOffset(2026, 11, 26, 3, 40, 0, TimeSpan.Zero)) },
        { "boiled-over", """{"lostCubicMetres":null}""", new LogFact.BoiledOver() },
        { "closed", """{"nextTime":null,"attendedSeconds":null,"meteredJoules":null}""", new LogFact.Closed() },
    };

    [Theory]
    [MemberData(nameof(Stored))]
    public void What_is_stored_is_read_and_written_letter_for_letter(string word, string json, LogFact fact)
    {
        Assert.Equal(fact, FactDocument.Read(word, json));
        Assert.Equal(json, FactDocument.Write(fact));
        Assert.Equal(word, FactDocument.Word(fact));
    }

    [Theory]
    [MemberData(nameof(AlsoRead))]
    public void What_was_put_right_by_hand_is_read(string word, string json, LogFact fact) => Assert.Equal(fact, FactDocument.Read(word, json));

    [Fact]
    public void Every_kind_is_here() => Assert.Equal(FactDocument.Words, Stored.Select(row => row.Data.Item1).Distinct(StringComparer.Ordinal), StringComparer.Ordinal);
}
