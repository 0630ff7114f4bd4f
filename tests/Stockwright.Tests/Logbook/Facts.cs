using CsCheck;
using Stockwright.Cooling.Limits;
using Stockwright.Kitchen;
using Stockwright.Logbook;
using Stockwright.Predicting;
using UnitsNet;

namespace Stockwright.Tests.Logbook;

/// <summary>Random facts of every kind. Quantities in SI, so that equal means equal to the last bit.</summary>
internal static class Facts
{
    private static readonly Gen<string> Text = Gen.OneOf(
        Gen.OneOfConst("", "second shelf", "Märta: \"läuft\"", "鍋 \\ / \b \t", "line one\nline two", "</script>", "🍲", "{\"a\":1}", "  "),
        Gen.String[Gen.Char.AlphaNumeric, 0, 40]);

    private static readonly Gen<double> Positive = Gen.OneOf(Gen.Double[1e-6, 0.5], Gen.Double[0, 3], Gen.Const(0.1), Gen.Const(1.0 / 3));

    private static readonly Gen<DateTimeOffset> Moment = Gen.Long[new DateTime(2000, 1, 1).Ticks, new DateTime(2200, 1, 1).Ticks]
        .Select(Gen.Int[-14 * 60, 14 * 60], (ticks, minutes) => new DateTimeOffset(ticks, TimeSpan.FromMinutes(minutes)));

    private static readonly Gen<Temperature> Degrees = Gen.OneOf(
        Gen.Decimal[-30m, 130m].Select(value => Temperature.FromDegreesCelsius((double)Math.Round(value, 1))),
        Gen.Decimal[-22m, 266m].Select(value => Temperature.FromDegreesFahrenheit((double)Math.Round(value, 1))),
        Gen.Double[-30, 130].Select(value => Temperature.FromDegreesCelsius(value)),
        Gen.Double[-22, 266].Select(value => Temperature.FromDegreesFahrenheit(value)));

    private static readonly Gen<LidPosition> Lid = Gen.OneOf(
        Gen.Const(LidPosition.Off), Gen.Const(LidPosition.On), Gen.Double[0.01, 0.6].Select(open => LidPosition.Ajar(Ratio.FromDecimalFractions(open))));

    /// <summary>One generator a word, in the order of <see cref="FactDocument.Words"/>.</summary>
    public static readonly Gen<LogFact>[] Each =
    [
        Text.Where(text => text.Length > 0).Select(LogFact (key) => new LogFact.StepDone(key)),
        Positive.Select(LogFact (metres) => new LogFact.LevelRead(Length.FromMeters(metres))),
        Positive.Select(LogFact (volume) => new LogFact.WaterAdded(Volume.FromCubicMeters(volume))),
        Gen.Select(Degrees, Gen.Enum<ReadingPlace>(), Text).Select(LogFact (read, place, probe) => new LogFact.TemperatureRead(read, place, probe)),
        Gen.Const<LogFact>(new LogFact.Skimmed()),
        Text.Select(LogFact (hob) => new LogFact.HeatMoved(hob)),
        Lid.Select(LogFact (lid) => new LogFact.LidChanged(lid)),
        Gen.Select(Moment.Nullable(), Text).Select(LogFact (until, why) => new LogFact.HeatLost(until, why)),
        Gen.Const<LogFact>(new LogFact.OffTheBoil()),
        Gen.Const<LogFact>(new LogFact.Simmers()),
        Positive.Nullable().Select(LogFact (lost) => new LogFact.BoiledOver(lost is { } volume ? Volume.FromCubicMeters(volume) : null)),
        Gen.Const<LogFact>(new LogFact.RanLow()),
        Text.Select(LogFact (why) => new LogFact.Paused(why)),
        Gen.Const<LogFact>(new LogFact.Resumed()),
        Positive.Select(LogFact (volume) => new LogFact.Strained(Volume.FromCubicMeters(volume))),
        Positive.Select(LogFact (kilograms) => new LogFact.SpentWeighed(Mass.FromKilograms(kilograms))),
        Text.Select(LogFact (method) => new LogFact.CoolingBegan(method)),
        Text.Select(LogFact (sign) => new LogFact.ColdUnmeasured(sign)),
        Gen.Select(Gen.Enum<CorrectiveStep>(), Text).Select(LogFact (step, text) => new LogFact.CorrectionMade(step, text)),
        Positive.Select(LogFact (kilograms) => new LogFact.FatWeighed(Mass.FromKilograms(kilograms))),
        Gen.Double[0, 85].Select(LogFact (brix) => new LogFact.RefractometerRead(brix)),
        Gen.Enum<BodyClass>().Select(LogFact (body) => new LogFact.SetFelt(body)),
        Positive.Select(LogFact (volume) => new LogFact.Portioned(Volume.FromCubicMeters(volume))),
        Text.Select(LogFact (text) => new LogFact.Noted(text)),
        Text.Select(LogFact (text) => new LogFact.PhotoTaken(text)),
        Gen.Select(Text, Gen.Long[0, TimeSpan.FromHours(100).Ticks].Nullable(), Gen.Double[0, 1e10].Nullable()).Select(LogFact (text, ticks, joules) => new LogFact.Closed(
            text, ticks is { } time ? TimeSpan.FromTicks(time) : null, joules is { } energy ? Energy.FromJoules(energy) : null)),
        Text.Select(LogFact (why) => new LogFact.NeverCooked(why)),
        Text.Select(LogFact (why) => new LogFact.Withdrawn(why)),
    ];

    public static readonly Gen<LogFact> Any = Gen.OneOf(Each);

    private static Gen<T?> Nullable<T>(this Gen<T> values)
        where T : struct => Gen.OneOf(values.Select(value => (T?)value), Gen.Const((T?)null));
}
