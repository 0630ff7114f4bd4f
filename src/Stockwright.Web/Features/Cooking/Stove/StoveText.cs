using System.Globalization;
using Stockwright.Cooking;
using Stockwright.Cooling.Limits;
using Stockwright.Evidence;
using Stockwright.Kitchen;
using Stockwright.Logbook;
using Stockwright.Measures;
using Stockwright.Recipes;
using UnitsNet;

namespace Stockwright.Web.Features.Cooking.Stove;

/// <summary>The state of a batch as a cook reads it.</summary>
internal static class StoveText
{
    public static string Of(BatchCourse course) => course.Phase == BatchPhase.Simmering
        ? Capital(HeatText.Of(course.Batch.Planned.Request.Recipe).Doing)
        : Of(course.Phase);

    private static string Of(BatchPhase phase) => phase switch
    {
        BatchPhase.NotBegun => "Not begun",
        BatchPhase.Preparing => "Preparing",
        BatchPhase.HeatingUp => "Heating up",
        BatchPhase.HeatAway => "Without heat",
        BatchPhase.Straining => "Standing, straining",
        BatchPhase.Cooling => "Cooling",
        BatchPhase.Finishing => "Cold: fat, portions",
        BatchPhase.Closed => "Closed",
        _ => throw new ArgumentOutOfRangeException(nameof(phase), phase, "Unknown phase."),
    };

    public static string Of(StepStanding standing) => standing switch
    {
        StepStanding.Done => "done",
        StepStanding.Due => "due",
        StepStanding.Overdue => "overdue",
        StepStanding.Missed => "missed",
        StepStanding.Waiting => "once it is cold",
        _ => "ahead",
    };

    public static string Of(CorrectiveStep step) => step switch
    {
        CorrectiveStep.PutAway => "Put it away",
        CorrectiveStep.KeepCooling => "Keep cooling",
        CorrectiveStep.ReheatAndCoolAgain => "Reheat and cool again, once",
        _ => "Discard it",
    };

    public static string Of(ReadingPlace place) => place == ReadingPlace.Pot ? "in the pot" : "in the stock, cooling";

    public static string Of(LidPosition lid) => lid.Kind switch
    {
        LidKind.On => "on",
        LidKind.Off => "off",
        _ => $"ajar, {KitchenFormat.Text(lid.OpenFraction)} of the mouth open",
    };

    /// <summary>A level in the unit it is typed in, so that the eye and the field agree: centimetres, or inches in fractions.</summary>
    public static string Level(Length below, UnitSystem units) => units == UnitSystem.UsCustomary ? KitchenFormat.Level(below, units) : $"{Centimetres(below)}\u00A0cm";

    /// <summary>A band of levels.</summary>
    public static string Level(Band<Length> below, UnitSystem units) => units == UnitSystem.UsCustomary
        ? KitchenFormat.Level(below, units)
        : $"{Centimetres(below.Low)} to {Centimetres(below.High)}\u00A0cm";

    /// <summary>How far off a moment is: <c>in 12 min</c>, <c>now</c>, <c>25 min ago</c>.</summary>
    public static string Away(DateTimeOffset moment, DateTimeOffset now)
    {
        TimeSpan ahead = moment - now;
        return Math.Abs(ahead.TotalSeconds) < 30 ? "now"
            : ahead > TimeSpan.Zero ? $"in {KitchenFormat.Text(ahead)}"
            : $"{KitchenFormat.Text(-ahead)} ago";
    }

    /// <summary>A shift against the plan: <c>40 min later than planned</c>; empty when it does not matter.</summary>
    public static string Shift(TimeSpan late) =>
        late.Duration() < TimeSpan.FromMinutes(3) ? "as planned" : $"{KitchenFormat.Text(late.Duration())} {(late > TimeSpan.Zero ? "later" : "earlier")} than planned";

    private static string Capital(string words) => char.ToUpperInvariant(words[0]) + words[1..];

    private static string Centimetres(Length length) => length.Centimeters.ToString("0.0", CultureInfo.InvariantCulture);
}
