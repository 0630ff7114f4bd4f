using Stockwright.Cooling;
using Stockwright.Cooling.Limits;
using Stockwright.Cooling.Readings;
using Stockwright.Web.Fields;
using UnitsNet;
using UnitsNet.Units;

namespace Stockwright.Web.Features.Cooling;

/// <summary>Reads what the thermometer said, judges it, and calculates how it goes on.</summary>
internal sealed class MeasuredReader(FieldReader reader, CoolingLimit limit)
{
    /// <summary>More belongs into the interface; a link holds no more.</summary>
    public const int MostCharacters = 20_000;

    /// <summary>The readings with what follows from them; null when none were typed.</summary>
    /// <param name="ask">The case, for what surrounds the stock at the end; may be null.</param>
    public MeasuredAnswer? Read(CoolingQuestion? ask)
    {
        Temperature? around = CoolingFields.Around.Read(reader);
        TimeSpan? since = CoolingFields.Now.Read(reader);
        string text = reader.Form[CoolingFields.Readings.Name];
        ReadingScale? scale = reader.Form.Has(CoolingFields.Scale.Name) ? CoolingFields.Scale.Read(reader) : CoolingFields.ScaleOf(reader.Units);
        if (string.IsNullOrWhiteSpace(text) || scale is null)
        {
            return null;
        }

        if (text.Length > ReadingParser.MostCharacters)
        {
            reader.Report(CoolingFields.Readings.Name, "That is too long a list of readings: at most a million characters.");
            return null;
        }

        ParsedReadings parsed = ReadingParser.Parse(text, scale.Value);
        Temperature surroundings = around ?? Around(ask);
        if (parsed.Curve is not { } curve)
        {
            reader.Report(CoolingFields.Readings.Name, "None of these rows is a time and a temperature. Write one reading a line, like 10:30 57.2 or 45; 57,2.");
            return new MeasuredAnswer(parsed, null, null, surroundings, null, null, null);
        }

        CoolingVerdict verdict = CoolingJudge.Judge(curve, limit);
        TimeSpan now = since > curve.End ? since.Value : curve.End;
        bool reheated = CoolingFields.Reheated.Read(reader) == true;
        CoolingRate? rate = parsed.Readings.Count < 2 ? null : CoolingRate.Fit([.. Latest(curve)], surroundings);
        (CoolingCurve Fast, CoolingCurve Central, CoolingCurve Slow, BandVerdict Verdict)? on = rate?.CarryOn(curve, limit);
        return new MeasuredAnswer(parsed, verdict, CorrectiveAction.For(verdict, now, reheated), surroundings, rate, on?.Verdict, on?.Central);
    }

    /// <summary>The latter half of the readings, three at least: how it cools where it stands now, not where it stood before.</summary>
    private static IEnumerable<CoolingPoint> Latest(CoolingCurve curve)
    {
        IEnumerable<CoolingPoint> celsius = curve.Points.Select(point => new CoolingPoint(point.At, point.Temperature.ToUnit(TemperatureUnit.DegreeCelsius)));
        return celsius.Skip(Math.Max(0, curve.Points.Count - Math.Max(3, (curve.Points.Count + 1) / 2)));
    }

    private static Temperature Around(CoolingQuestion? ask) => ask?.Method.Steps[^1].Place switch
    {
        CoolingPlace.Bench => ask.Stock.Site.Room,
        CoolingPlace.TapSink => ask.Stock.Site.TapWater,
        CoolingPlace.IceBath => Temperature.FromDegreesCelsius(0),
        CoolingPlace.ColdAir air => air.Store.Air,
        _ => ColdStore.DomesticFridge.Air,
    };
}
