using System.Globalization;
using System.Text.RegularExpressions;
using Stockwright.Web.Forms;
using Stockwright.Web.Planner;

namespace Stockwright.Web.Batches;

/// <summary>Reads moments by the kitchen's clock: <c>14:20</c> is the latest twenty past two that has been.</summary>
internal static partial class MomentReader
{
    /// <summary>A minute hand read a little ahead is no slip.</summary>
    private static readonly TimeSpan Ahead = TimeSpan.FromMinutes(2);

    /// <summary>Reads a moment; null when blank or reported.</summary>
    /// <param name="reader">The form.</param>
    /// <param name="field">Field.</param>
    /// <param name="zone">The kitchen's zone.</param>
    /// <param name="now">The present; a time of day without a date is the last such time up to here.</param>
    public static DateTimeOffset? Moment(this FieldReader reader, string field, TimeZoneInfo zone, DateTimeOffset now)
    {
        string text = reader.Form[field].Trim();
        if (text.Length == 0)
        {
            return null;
        }

        Match match = Shape().Match(text);
        if (!match.Success || !TimeOnly.TryParseExact(match.Groups["time"].Value, ["H:mm", "H:mm:ss"], CultureInfo.InvariantCulture, DateTimeStyles.None, out TimeOnly time))
        {
            reader.Report(field, $"{KitchenNumber.Quote(text)} is not a time. Write hours and minutes, like 14:20, with the day before it if it was not today: 2026-12-31 14:20.");
            return null;
        }

        DateOnly? date = null;
        if (match.Groups["date"] is { Success: true } day)
        {
            if (!DateOnly.TryParseExact(day.Value, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out DateOnly read) || read.Year is < 2000 or > 2200)
            {
                reader.Report(field, $"{KitchenNumber.Quote(day.Value)} is not a day. Write year-month-day, like 2026-12-31.");
                return null;
            }

            date = read;
        }

        if (match.Groups["offset"] is { Success: true } offset)
        {
            return WithOffset(reader, field, text, date, time, offset.Value, now);
        }

        return date is { } known ? Resolve(reader, field, known, time, zone) : LatestSuch(reader, field, time, zone, now);
    }

    private static DateTimeOffset? LatestSuch(FieldReader reader, string field, TimeOnly time, TimeZoneInfo zone, DateTimeOffset now)
    {
        DateTime here = TimeZoneInfo.ConvertTime(now + Ahead, zone).DateTime;
        DateOnly day = DateOnly.FromDateTime(here);
        return Resolve(reader, field, time <= TimeOnly.FromDateTime(here) ? day : day.AddDays(-1), time, zone);
    }

    /// <summary>A wall clock time; when clocks change it may have come twice, or not at all, and then the cook is asked.</summary>
    private static DateTimeOffset? Resolve(FieldReader reader, string field, DateOnly date, TimeOnly time, TimeZoneInfo zone)
    {
        DateTime local = date.ToDateTime(time, DateTimeKind.Unspecified);
        string clock = time.ToString("HH:mm", CultureInfo.InvariantCulture);
        if (zone.IsInvalidTime(local))
        {
            reader.Report(field, $"{clock} was not on the clock that night: it was put forward. Write the time it showed before or after.");
            return null;
        }

        if (zone.IsAmbiguousTime(local))
        {
            TimeSpan[] offsets = [.. zone.GetAmbiguousTimeOffsets(local).OrderDescending()];
            string Written(TimeSpan offset) => $"{date:yyyy-MM-dd} {clock}{Sign(offset)}";
            reader.Report(field, $"{clock} came twice that night, for the clock was put back. Write {Written(offsets[0])} for the first time, or {Written(offsets[1])} for the second.");
            return null;
        }

        return new DateTimeOffset(local, zone.GetUtcOffset(local)).ToUniversalTime();
    }

    private static DateTimeOffset? WithOffset(FieldReader reader, string field, string text, DateOnly? date, TimeOnly time, string offset, DateTimeOffset now)
    {
        TimeSpan ahead = offset is "Z" or "z" ? TimeSpan.Zero : TimeSpan.Parse(offset[1..], CultureInfo.InvariantCulture) * (offset[0] == '-' ? -1 : 1);
        if (ahead.Duration() > TimeSpan.FromHours(14))
        {
            reader.Report(field, $"{KitchenNumber.Quote(text)}: no place on earth is that far from UTC.");
            return null;
        }

        DateTimeOffset here = now.ToOffset(ahead);
        DateOnly day = date ?? (time <= TimeOnly.FromDateTime((here + Ahead).DateTime) ? DateOnly.FromDateTime(here.DateTime) : DateOnly.FromDateTime(here.DateTime).AddDays(-1));
        return new DateTimeOffset(day.ToDateTime(time), ahead).ToUniversalTime();
    }

    private static string Sign(TimeSpan offset) => (offset < TimeSpan.Zero ? "-" : "+") + offset.ToString("hh\\:mm", CultureInfo.InvariantCulture);

    [GeneratedRegex("^(?:(?<date>\\d{4}-\\d{2}-\\d{2})[ T]+)?(?<time>\\d{1,2}:\\d{2}(?::\\d{2})?)\\s*(?<offset>[zZ]|[+-]\\d{2}:[0-5]\\d)?$", RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant, 200)]
    private static partial Regex Shape();
}
