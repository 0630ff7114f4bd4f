using System.Globalization;
using System.Text.RegularExpressions;
using Stockwright.Web.Fields;

namespace Stockwright.Web.Features.Cooking.Log;

/// <summary>The day of a time typed without a date.</summary>
internal enum TypedDay
{
    /// <summary>Today, by the kitchen's clock.</summary>
    Today,

    /// <summary>The day before.</summary>
    Yesterday,
}

/// <summary>
/// Reads moments by the kitchen's clock: <c>14:20</c> is twenty past two today, or the first one after another moment. A time that
/// is still ahead today is asked about, for a day off is a day's error: yesterday is said, never guessed. Rules of clock changes: the IANA time zone database, as installed.
/// </summary>
internal static partial class MomentReader
{
    /// <summary>A minute hand read a little ahead is no slip.</summary>
    private static readonly TimeSpan Ahead = TimeSpan.FromMinutes(2);

    /// <summary>Days looked through: a time of day that clocks jumped over is a day further off.</summary>
    private const int MostDays = 3;

    /// <summary>The day of a time typed without a date.</summary>
    public static readonly (string Word, TypedDay Value)[] Days = [("today", TypedDay.Today), ("yesterday", TypedDay.Yesterday)];

    private const string Question = "Did you mean yesterday";

    /// <summary>Reads a moment that has been; null when blank or reported.</summary>
    /// <param name="reader">The form.</param>
    /// <param name="field">Field.</param>
    /// <param name="zone">The kitchen's zone.</param>
    /// <param name="now">The present; a time of day without a date is of this day, and asked about when it is still ahead.</param>
    /// <param name="yesterday">True when the cook said that it was the day before.</param>
    public static DateTimeOffset? Moment(this FieldReader reader, string field, TimeZoneInfo zone, DateTimeOffset now, bool yesterday = false) =>
        new Reading(reader, field, zone, now + Ahead, Backwards: true, yesterday).Read();

    /// <summary>True for the question whether yesterday was meant: one tap may answer it.</summary>
    public static bool AsksForYesterday(InputProblem problem) => problem.Message.Contains(Question, StringComparison.Ordinal);

    /// <summary>Reads a moment that follows another; null when blank or reported.</summary>
    /// <param name="reader">The form.</param>
    /// <param name="field">Field.</param>
    /// <param name="zone">The kitchen's zone.</param>
    /// <param name="from">A time of day without a date is the first such time from the minute of this on.</param>
    public static DateTimeOffset? MomentFrom(this FieldReader reader, string field, TimeZoneInfo zone, DateTimeOffset from) =>
        new Reading(reader, field, zone, new DateTimeOffset(from.UtcTicks - (from.UtcTicks % TimeSpan.TicksPerMinute), TimeSpan.Zero), Backwards: false, Yesterday: false).Read();

    private sealed record Reading(FieldReader Reader, string Field, TimeZoneInfo Zone, DateTimeOffset Limit, bool Backwards, bool Yesterday)
    {
        public DateTimeOffset? Read()
        {
            string text = Reader.Form[Field].Trim();
            if (text.Length == 0)
            {
                return Yesterday ? Refuse("Write at what time yesterday it was.") : null;
            }

            Match match = Shape().Match(text);
            if (!match.Success || !TimeOnly.TryParseExact(match.Groups["time"].Value, ["H:mm", "H:mm:ss"], CultureInfo.InvariantCulture, DateTimeStyles.None, out TimeOnly time))
            {
                return Refuse($"{KitchenNumber.Quote(text)} is not a time. Write hours and minutes, like 14:20, with the day before it if it was not today: 2026-12-31 14:20.");
            }

            TimeZoneInfo clock = Zone;
            if (match.Groups["offset"] is { Success: true } offset)
            {
                if (FixedClock(offset.Value) is not { } fixedClock)
                {
                    return Refuse($"{KitchenNumber.Quote(text)}: no place on earth is that far from UTC.");
                }

                clock = fixedClock;
            }

            if (match.Groups["date"] is not { Success: true } day)
            {
                return !Backwards ? Next(time, clock) : Yesterday ? On(Today(clock).AddDays(-1), time, clock) : OfToday(time, clock);
            }

            if (DateOnly.TryParseExact(day.Value, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out DateOnly date) && date.Year is >= 2000 and <= 2200)
            {
                return Yesterday && date != Today(clock).AddDays(-1)
                    ? Refuse($"{KitchenNumber.Quote(day.Value)} was not yesterday. Leave the day out, or do not choose yesterday.")
                    : On(date, time, clock);
            }

            return Refuse($"{KitchenNumber.Quote(day.Value)} is not a day. Write year-month-day, like 2026-12-31.");
        }

        private DateOnly Today(TimeZoneInfo clock) => DateOnly.FromDateTime(TimeZoneInfo.ConvertTime(Limit - Ahead, clock).DateTime);

        /// <summary>The time on this day, or just past midnight by a clock that is a little ahead; what is still to come is asked about.</summary>
        private DateTimeOffset? OfToday(TimeOnly time, TimeZoneInfo clock)
        {
            DateOnly today = Today(clock);
            foreach (DateOnly date in (DateOnly[])[DateOnly.FromDateTime(TimeZoneInfo.ConvertTime(Limit, clock).DateTime), today])
            {
                DateTime local = date.ToDateTime(time);
                if (clock.IsInvalidTime(local) ? Moments(local.AddHours(1), clock)[0] <= Limit : Moments(local, clock).Any(Fits))
                {
                    return On(date, time, clock);
                }
            }

            DateTimeOffset here = TimeZoneInfo.ConvertTime(Limit - Ahead, Zone);
            string of = clock.Equals(Zone) ? "" : string.Create(CultureInfo.InvariantCulture, $" by the kitchen's clock, {Zone.Id}");
            return Refuse(string.Create(CultureInfo.InvariantCulture, $"{Clock(time)} is still ahead: it is {here:HH:mm}{of}. {Question} {Clock(time)}, or another time?"));
        }

        private DateTimeOffset? Next(TimeOnly time, TimeZoneInfo clock)
        {
            DateTime here = TimeZoneInfo.ConvertTime(Limit, clock).DateTime;
            for (int days = 0; days < MostDays; days++)
            {
                DateTime local = DateOnly.FromDateTime(here).AddDays(days).ToDateTime(time);
                if (clock.IsInvalidTime(local))
                {
                    if (local >= here)
                    {
                        return NeverCame(time);
                    }

                    continue;
                }

                DateTimeOffset[] moments = [.. Moments(local, clock).Where(Fits)];
                if (moments.Length > 0)
                {
                    return One(moments, local);
                }
            }

            return Refuse($"{Clock(time)} was not on the clock in those days. Write the day before it.");
        }

        private DateTimeOffset? On(DateOnly date, TimeOnly time, TimeZoneInfo clock)
        {
            DateTime local = date.ToDateTime(time);
            if (clock.IsInvalidTime(local))
            {
                return NeverCame(time);
            }

            DateTimeOffset[] moments = Moments(local, clock);
            DateTimeOffset[] fitting = [.. moments.Where(Fits)];
            return One(fitting.Length > 0 ? fitting : moments, local);
        }

        private bool Fits(DateTimeOffset moment) => Backwards ? moment <= Limit : moment >= Limit;

        /// <summary>When clocks are put back a time comes twice, and if either may be meant the cook is asked.</summary>
        private DateTimeOffset? One(DateTimeOffset[] moments, DateTime local)
        {
            if (moments is [var only])
            {
                return only.ToUniversalTime();
            }

            string Written(DateTimeOffset moment) => string.Create(CultureInfo.InvariantCulture, $"{moment:yyyy-MM-dd HH:mm}{Sign(moment.Offset)}");
            return Refuse($"{Clock(TimeOnly.FromDateTime(local))} came twice that night, for the clock was put back. Write {Written(moments[0])} for the first time, or {Written(moments[1])} for the second.");
        }

        private DateTimeOffset? NeverCame(TimeOnly time) =>
            Refuse($"{Clock(time)} was not on the clock that night: it was put forward. Write the time it showed before or after.");

        private DateTimeOffset? Refuse(string message)
        {
            Reader.Report(Field, message);
            return null;
        }
    }

    /// <summary>The moment or, when clocks were put back over it, the two moments at which a clock showed this; the first first.</summary>
    private static DateTimeOffset[] Moments(DateTime local, TimeZoneInfo clock) => clock.IsAmbiguousTime(local)
        ? [.. clock.GetAmbiguousTimeOffsets(local).OrderDescending().Select(offset => new DateTimeOffset(local, offset))]
        : [new DateTimeOffset(local, clock.GetUtcOffset(local))];

    /// <summary>A clock at a fixed distance from UTC; null when it is further than any place on earth.</summary>
    private static TimeZoneInfo? FixedClock(string offset)
    {
        if (offset is "Z" or "z")
        {
            return TimeZoneInfo.Utc;
        }

        int minutes = (int.Parse(offset[1..3], CultureInfo.InvariantCulture) * 60) + int.Parse(offset[4..], CultureInfo.InvariantCulture);
        TimeSpan ahead = TimeSpan.FromMinutes(offset[0] == '-' ? -minutes : minutes);
        return minutes <= 14 * 60 ? TimeZoneInfo.CreateCustomTimeZone(offset, ahead, null, null) : null;
    }

    private static string Clock(TimeOnly time) => time.ToString("HH:mm", CultureInfo.InvariantCulture);

    private static string Sign(TimeSpan offset) => (offset < TimeSpan.Zero ? "-" : "+") + offset.ToString("hh\\:mm", CultureInfo.InvariantCulture);

    [GeneratedRegex("^(?:(?<date>[0-9]{4}-[0-9]{2}-[0-9]{2})[ T]+)?(?<time>[0-9]{1,2}:[0-9]{2}(?::[0-9]{2})?)\\s*(?<offset>[zZ]|[+-][0-9]{2}:[0-5][0-9])?$", RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant, 5000)]
    private static partial Regex Shape();
}
