using System.Globalization;

namespace Stockwright.Web.Wording;

/// <summary>Moments as the kitchen's clock and calendar show them.</summary>
/// <param name="Zone">Time zone of the kitchen.</param>
/// <param name="Units">Measures of the reader: readers of US measures read <c>5:45 pm</c>.</param>
public readonly record struct KitchenClock(TimeZoneInfo Zone, UnitSystem Units)
{
    /// <summary>Date and time as the zone has it.</summary>
    public DateTimeOffset Local(DateTimeOffset moment) => TimeZoneInfo.ConvertTime(moment, Zone);

    /// <summary>Time of day: <c>17:45</c>, or <c>5:45 pm</c>.</summary>
    public string Clock(DateTimeOffset moment) => Clock(TimeOnly.FromTimeSpan(Local(moment).TimeOfDay));

    /// <summary>Time of day.</summary>
    public string Clock(TimeOnly time) => TimeOfDay(time, Units);

    /// <summary>Time of day in the measures of a reader.</summary>
    public static string TimeOfDay(TimeOnly time, UnitSystem units) => units == UnitSystem.UsCustomary
        ? time.ToString("h:mm", CultureInfo.InvariantCulture) + (time.Hour < 12 ? " am" : " pm")
        : time.ToString("HH:mm", CultureInfo.InvariantCulture);

    /// <summary>Day: <c>Thu 26 Nov</c>.</summary>
    public string Day(DateTimeOffset moment) => Day(DateOnly.FromDateTime(Local(moment).DateTime));

    /// <summary>Day.</summary>
    public string Day(DateOnly date) => date.ToString(Units == UnitSystem.UsCustomary ? "ddd, MMM d" : "ddd d MMM", CultureInfo.InvariantCulture);

    /// <summary>Day and time.</summary>
    public string Moment(DateTimeOffset moment) => $"{Day(moment)}, {Clock(moment)}";

    /// <summary>The time alone while the day is clear, with its day otherwise.</summary>
    public string Near(DateTimeOffset moment, DateTimeOffset now) =>
        Local(moment).Date == Local(now).Date ? Clock(moment) : Moment(moment);

    /// <summary>
    /// As it is typed into a form, to the second where there are any: <c>2026-11-26 17:45</c>. A time that comes twice, when
    /// the clock is put back, carries its offset.
    /// </summary>
    public string Typed(DateTimeOffset moment)
    {
        DateTimeOffset local = Local(moment);
        string text = local.ToString(local.Second == 0 ? "yyyy-MM-dd HH:mm" : "yyyy-MM-dd HH:mm:ss", CultureInfo.InvariantCulture);
        return Zone.IsAmbiguousTime(local.DateTime) ? text + local.ToString("zzz", CultureInfo.InvariantCulture) : text;
    }

    /// <summary>Absolute, for attributes that scripts read.</summary>
    public static string Utc(DateTimeOffset moment) => moment.UtcDateTime.ToString("yyyy-MM-dd'T'HH:mm:ss'Z'", CultureInfo.InvariantCulture);
}
