using Stockwright.Cooling;
using Stockwright.Cooling.Growth;
using Stockwright.Cooling.Limits;
using Stockwright.Web.Drawing;
using Stockwright.Web.Fields;

namespace Stockwright.Web.Features.Cooling;

/// <summary>Writes a cooling case as a document, by hand, so that the interface changes only when somebody means it to.</summary>
internal static class CoolingDocumentMapping
{
    public static CoolingDocument Make(CoolingView view, CoolingAnswer answer) => new(
        $"{CoolingWriter.Page}?{view.Typed.With(CoolingFields.Readings.Name, null).ToQuery()}",
        Limit(answer.Ask.Limit),
        Way(view, answer.Ask.Stock, answer.Asked.Forecast, answer.Asked.Verdict) with { HandsOnSeconds = null },
        Curve(answer.Asked.Forecast),
        [.. answer.Advice.Ranked.Select(way => Way(view, answer.Ask.Stock, way.Forecast, way.Verdict) with { HandsOnSeconds = way.HandMinutes * 60, SavedSeconds = way.Saved?.TotalSeconds })],
        [.. answer.Growth.Select(pair => new GrowthDocument(pair.Middle.Model.Organism, pair.Middle.Best, pair.Middle.Cautious, pair.Slow.Worst))],
        GrowthEstimate.Label,
        answer.Measured is { Verdict: { } verdict, Action: { } action } measured ? Measured(measured, verdict, action) : null);

    private static LimitDocument Limit(CoolingLimit limit) => new(
        limit.Id,
        limit.Name,
        limit.Clause,
        limit.Standing,
        CoolingText.Grade(limit.Provenance),
        limit.NeedsChecking,
        limit.Source,
        [.. limit.Stages.Select(stage => new LimitStageDocument(stage.From.Value.Kelvins, stage.To.Value.Kelvins, stage.Within.TotalSeconds, stage.Clock))],
        limit.Notes);

    private static CoolingWayDocument Way(CoolingView view, CoolingCase stock, CoolingForecast forecast, BandVerdict verdict) => new(
        CoolingWriter.LinkTo(view, forecast.Method),
        CoolingText.Name(forecast.Method.Steps, view.Units),
        verdict.Outcome,
        verdict.StageAtRisk,
        [.. verdict.Central.Stages.Select((stage, index) => Stage(stage) with
        {
            ReachedFastSeconds = verdict.Fast.Stages[index].ReachedAt?.TotalSeconds,
            ReachedSlowSeconds = verdict.Slow.Stages[index].ReachedAt?.TotalSeconds,
        })],
        forecast.Method.Steps.Sum(step => step.IceAdded.Kilograms + (step.Place is CoolingPlace.IceBath bath ? bath.Ice.Kilograms : 0)),
        null,
        null,
        forecast.StoreRise is { } rise ? BandDocument.Of(rise, delta => delta.Kelvins) : null,
        forecast.Central.Freezes,
        forecast.Central.FirstIceAt?.TotalSeconds,
        forecast.Central.Layering.Spread.Kelvins,
        [.. JarCautions.Of(stock, forecast).Select(caution => JarText.Of(caution, view.Units))]);

    private static StageDocument Stage(StageVerdict stage) => new(
        stage.Number, stage.DueAt?.TotalSeconds, null, stage.ReachedAt?.TotalSeconds, null, stage.OverBy?.TotalSeconds, stage.IsOverByAtLeast, stage.Outcome);

    private static CurvePointDocument[] Curve(CoolingForecast forecast)
    {
        IReadOnlyList<CoolingPoint> points = forecast.Central.Curve.Points;
        return
        [
            .. CurveThinning.Keep([.. points.Select(point => point.At.TotalHours)], Svg.MostPoints).Select(i => new CurvePointDocument(
                points[i].At.TotalSeconds, At(forecast.Fast.Curve, points[i].At), points[i].Temperature.Kelvins, At(forecast.Slow.Curve, points[i].At))),
        ];

        static double At(CoolingCurve curve, TimeSpan at) => curve.TemperatureAt(at > curve.End ? curve.End : at).Kelvins;
    }

    private static MeasuredDocument Measured(MeasuredAnswer measured, CoolingVerdict verdict, CorrectiveAction action) => new(
        verdict.Outcome,
        [.. verdict.Stages.Select(Stage)],
        action.Step,
        action.Text,
        $"{action.Clause}; {CoolingText.Grade(action.Provenance)}",
        action.TimeLeft?.TotalSeconds,
        measured.Expected?.Outcome,
        measured.Expected?.Central.FinishedAt?.TotalSeconds,
        measured.Parsed.Readings.Count,
        [.. measured.Parsed.Rejected.Select(row => new RejectedDocument(row.Line, row.Text, row.Reason))],
        [.. measured.Parsed.Warnings.Select(warning => $"Line {warning.Line}: {warning.Message}")],
        measured.Parsed.SuggestedScale is { } scale ? CoolingFields.Scale.WordOf(scale) : null);
}
