using Stockwright.Kitchen;
using Stockwright.Cooling;
using Stockwright.Cooling.Growth;
using Stockwright.Cooling.Limits;
using Stockwright.Cooling.Readings;
using Stockwright.Web.Fields;
using UnitsNet;

namespace Stockwright.Web.Features.Cooling;

/// <summary>One way of cooling, forecast and judged.</summary>
/// <param name="Forecast">Its forecast.</param>
/// <param name="Verdict">Against the home limit.</param>
/// <param name="ChillingStarted">When chilling began, for limits that count from there.</param>
public sealed record JudgedMethod(CoolingForecast Forecast, BandVerdict Verdict, TimeSpan? ChillingStarted)
{
    /// <summary>Judges a forecast; standing on the bench with nothing done is not yet chilling.</summary>
    public static JudgedMethod Of(CoolingForecast forecast, CoolingLimit limit)
    {
        ArgumentNullException.ThrowIfNull(forecast);
        int first = forecast.Method.Steps.TakeWhile(IsWaiting).Count();
        TimeSpan? started = first < forecast.Central.StepStarts.Count ? forecast.Central.StepStarts[first] : null;
        return new JudgedMethod(forecast, CoolingJudge.JudgeBand(forecast.Fast.Curve, forecast.Central.Curve, forecast.Slow.Curve, limit, started), started);
    }

    private static bool IsWaiting(CoolingStep step) =>
        step is { Place: CoolingPlace.Bench, Wands: 0, Pour: null } && step.IceAdded <= Mass.Zero && step.WaterAdded <= Mass.Zero;
}

/// <summary>What the thermometer said.</summary>
/// <param name="Parsed">Rows kept and rows put aside.</param>
/// <param name="Verdict">The limit held against the readings alone; null without readings.</param>
/// <param name="Action">What to do about it.</param>
/// <param name="Around">Temperature the stock is taken to cool towards.</param>
/// <param name="Rate">How fast it cools; null when the readings do not tell.</param>
/// <param name="Expected">Readings carried on at that rate, judged; null without a rate.</param>
/// <param name="CarriedOn">The middle course of that.</param>
public sealed record MeasuredAnswer(
    ParsedReadings Parsed, CoolingVerdict? Verdict, CorrectiveAction? Action, Temperature Around, CoolingRate? Rate, BandVerdict? Expected, CoolingCurve? CarriedOn);

/// <summary>Everything the cooling page says.</summary>
/// <param name="Ask">What was asked.</param>
/// <param name="Asked">The way that was asked for.</param>
/// <param name="Advice">Every other way, ranked.</param>
/// <param name="Growth">Growth along the middle course, each with the slow edge beside.</param>
/// <param name="Measured">The readings, or null when none were typed.</param>
public sealed record CoolingAnswer(
    CoolingQuestion Ask, JudgedMethod Asked, CoolingAdvice Advice, IReadOnlyList<(GrowthEstimate Middle, GrowthEstimate Slow)> Growth, MeasuredAnswer? Measured);

/// <summary>A case as a page shows it: what was typed, what is wrong with it, and the answer if there is one.</summary>
/// <param name="Typed">Everything that was sent.</param>
/// <param name="Units">Measures it is in.</param>
/// <param name="Home">The home limit, whether or not there is an answer.</param>
/// <param name="Answer">The answer, or null.</param>
/// <param name="Problems">What has to be put right.</param>
public sealed record CoolingView(Fields.TypedForm Typed, UnitSystem Units, CoolingLimit Home, CoolingAnswer? Answer, IReadOnlyList<InputProblem> Problems) : Fields.IFieldView
{
    /// <summary>Pots, room and tap.</summary>
    public required KitchenSetup Kitchen { get; init; }

    /// <summary>The readings, also while something else is wrong.</summary>
    public MeasuredAnswer? Measured { get; init; }

    string? Fields.IFieldView.Usual(Fields.FieldBinding field) => null;
}
