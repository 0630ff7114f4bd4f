using System.Globalization;
using Stockwright.Web.Fields;
using Stockwright.Logbook;
using Stockwright.Web.Features.Cooking.Log;
using Xunit;

namespace Stockwright.Web.Tests.Features.Cooking.Log;

/// <summary>When an entry happened, whatever the phone's clock says. Clock changes: see <see cref="MomentReaderTests"/>.</summary>
public sealed class EntryTimesTests
{
    private const string Berlin = "Europe/Berlin";

    private static readonly DateTimeOffset Now = Utc("2026-06-01T12:00:00Z");

    [Theory]
    [InlineData(7)]
    [InlineData(-7)]
    [InlineData(0)]
    public void A_phone_minutes_off_and_hours_offline_still_has_the_moment_right(int minutesFast)
    {
        TimeSpan fast = TimeSpan.FromMinutes(minutesFast);
        DateTimeOffset happened = Now.AddHours(-5);
        NewEntry entry = Read(Now, ("device-time", Iso(happened + fast)), ("sent", Iso(Now + fast)), ("device-zone", "America/New_York"));
        Assert.Equal(happened, entry.HappenedAt);
        Assert.Equal(fast, entry.DeviceOffset);
        Assert.Equal("America/New_York", entry.DeviceZone);
    }

    [Fact]
    public void A_phone_set_to_another_zone_says_the_same_moment_in_other_words()
    {
        NewEntry entry = Read(Now, ("device-time", "2026-06-01T05:30:00.000-04:00"), ("sent", "2026-06-01T08:00:00.000-04:00"));
        Assert.Equal(Utc("2026-06-01T09:30:00Z"), entry.HappenedAt);
        Assert.Equal(TimeSpan.Zero, entry.DeviceOffset);
    }

    /// <summary>14:20 typed at 14:25 kitchen time and sent at midnight is that afternoon's, by the kitchen's clock and not the phone's.</summary>
    [Theory]
    [InlineData(0)]
    [InlineData(7)]
    [InlineData(-7)]
    public void A_typed_time_is_read_at_the_moment_it_was_typed_and_by_the_kitchens_clock(int minutesFast)
    {
        TimeSpan fast = TimeSpan.FromMinutes(minutesFast);
        DateTimeOffset typed = Utc("2026-06-01T12:25:00Z");
        DateTimeOffset sent = Utc("2026-06-01T22:00:00Z");
        NewEntry entry = Read(sent, ("at", "14:20"), ("device-time", Iso(typed + fast)), ("sent", Iso(sent + fast)), ("device-zone", "Asia/Tokyo"));
        Assert.Equal(Utc("2026-06-01T12:20:00Z"), entry.HappenedAt);

        // Typed at 14:25 and sent the next morning, 14:40 was ahead when it was typed; yesterday is the day before that.
        EntryReader asked = TestBatch.Reader(TestBatch.In(Berlin), Utc("2026-06-02T06:00:00Z"), ("kind", "skimmed"), ("at", "14:40"), ("device-time", Iso(typed)), ("sent", "2026-06-02T06:00:00Z"));
        Assert.Null(asked.Read());
        Assert.Contains("yesterday 14:40", Assert.Single(asked.Fields.Problems).Message, StringComparison.Ordinal);
        NewEntry before = Read(Utc("2026-06-02T06:00:00Z"), ("at", "14:40"), ("at-day", "yesterday"), ("device-time", Iso(typed)), ("sent", "2026-06-02T06:00:00Z"));
        Assert.Equal(Utc("2026-05-31T12:40:00Z"), before.HappenedAt);
    }

    [Fact]
    public void An_entry_made_before_a_clock_change_and_sent_after_it_stays_where_it_was()
    {
        NewEntry entry = Read(Utc("2026-10-25T06:00:00Z"), ("at", "02:30"), ("device-time", "2026-10-25T00:35:00Z"), ("sent", "2026-10-25T06:00:00Z"));
        Assert.Equal(Utc("2026-10-25T00:30:00Z"), entry.HappenedAt);
    }

    [Theory]
    [InlineData("2026-06-01T13:00:00Z", "2026-06-01T12:30:00Z", "2026-06-01T12:00:00Z")]
    [InlineData("2026-06-01T11:00:00Z", "", "2026-06-01T12:00:00Z")]
    [InlineData("11:00", "12:00", "2026-06-01T12:00:00Z")]
    [InlineData("yesterday", "2026-06-01T12:00:00Z", "2026-06-01T12:00:00Z")]
    [InlineData("0001-01-01T00:00:00Z", "9999-12-31T23:59:59Z", "2026-06-01T12:00:00Z")]
    public void A_clock_that_makes_no_sense_is_left_aside(string made, string sent, string happened) =>
        Assert.Equal(Utc(happened), Read(Now, ("device-time", made), ("sent", sent)).HappenedAt);

    [Theory]
    [InlineData("02:10", "04:40", "2026-06-01T06:00Z", "2026-06-01T00:10Z", "2026-06-01T02:40Z")]
    [InlineData("yesterday 23:50", "00:10", "2026-05-31T22:30Z", "2026-05-31T21:50Z", "2026-05-31T22:10Z")]
    [InlineData("yesterday 14:00", "08:00", "2026-06-02T08:00Z", "2026-06-01T12:00Z", "2026-06-02T06:00Z")]
    [InlineData("2026-05-30 22:00", "2026-06-01 06:00", "2026-06-01T06:00Z", "2026-05-30T20:00Z", "2026-06-01T04:00Z")]

    // Over the night clocks go forward, and back: the length is the true one.
    [InlineData("01:30", "03:30", "2026-03-29T05:00Z", "2026-03-29T00:30Z", "2026-03-29T01:30Z")]
    [InlineData("01:30", "03:30", "2026-10-25T05:00Z", "2026-10-24T23:30Z", "2026-10-25T02:30Z")]
    [InlineData("01:30", "2026-10-25 02:30+01:00", "2026-10-25T05:00Z", "2026-10-24T23:30Z", "2026-10-25T01:30Z")]
    public void Heat_came_back_at_the_next_such_time(string at, string until, string now, string wentAt, string backAt)
    {
        string[] words = at.Split("yesterday ");
        NewEntry entry = Read(Utc(now), ("kind", "heat-lost"), ("at", words[^1]), ("at-day", words.Length > 1 ? "yesterday" : "today"), ("until", until));
        Assert.Equal(Utc(wentAt), entry.HappenedAt);
        Assert.Equal(Utc(backAt), Assert.IsType<LogFact.HeatLost>(entry.Fact).Until);
    }

    [Theory]
    [InlineData("02:10", "02:10", "2026-06-01T06:00Z", "write a later time")]
    [InlineData("02:10", "2026-06-01 02:00", "2026-06-01T06:00Z", "write a later time")]
    [InlineData("02:10", "01:00", "2026-06-01T06:00Z", "still to come")]
    [InlineData("", "14:05", "2026-06-01T12:00Z", "still to come")]
    [InlineData("02:10", "02:10", "2026-03-28T06:00Z", "write a later time")]
    [InlineData("01:30", "02:30", "2026-10-25T05:00Z", "came twice")]
    [InlineData("01:30", "02:30", "2026-03-29T05:00Z", "was not on the clock")]
    public void A_return_of_the_heat_that_cannot_be_is_asked_about(string at, string until, string now, string message)
    {
        EntryReader reader = TestBatch.Reader(TestBatch.In(Berlin), Utc(now), ("kind", "heat-lost"), ("at", at), ("until", until));
        Assert.Null(reader.Read());
        Assert.Contains(message, Assert.Single(reader.Fields.Problems, problem => problem.Field is "until").Message, StringComparison.Ordinal);
    }

    /// <summary>A day wrong in the record of a cooling is worse than one more tap.</summary>
    [Theory]
    [InlineData("15:40", "2026-06-01T10:05Z", "15:40 is still ahead: it is 12:05. Did you mean yesterday 15:40, or another time?", "2026-05-31T13:40Z")]
    [InlineData("23:50", "2026-05-31T22:30Z", "23:50 is still ahead: it is 00:30. Did you mean yesterday 23:50, or another time?", "2026-05-31T21:50Z")]
    [InlineData("12:08", "2026-06-01T10:05Z", "12:08 is still ahead", "2026-05-31T10:08Z")]
    public void A_time_still_ahead_is_asked_about_and_yesterday_is_said(string at, string now, string question, string yesterday)
    {
        EntryReader asked = TestBatch.Reader(TestBatch.In(Berlin), Utc(now), ("kind", "heat-lost"), ("at", at), ("until", "00:10"));
        Assert.Null(asked.Read());
        InputProblem problem = Assert.Single(asked.Fields.Problems);
        Assert.Equal("at", problem.Field);
        Assert.Contains(question, problem.Message, StringComparison.Ordinal);
        Assert.Equal(Utc(yesterday), Read(Utc(now), ("kind", "skimmed"), ("at", at), ("at-day", "yesterday")).HappenedAt);
    }

    [Theory]
    [InlineData("12:06", "today", "2026-06-01T10:06Z")]
    [InlineData("09:00", "today", "2026-06-01T07:00Z")]
    [InlineData("09:00", "yesterday", "2026-05-31T07:00Z")]
    [InlineData("2026-05-31 15:40", "today", "2026-05-31T13:40Z")]
    [InlineData("2026-05-31 15:40", "yesterday", "2026-05-31T13:40Z")]
    public void What_has_been_is_taken_as_it_is_written(string at, string day, string expected) =>
        Assert.Equal(Utc(expected), Read(Utc("2026-06-01T10:05Z"), ("kind", "skimmed"), ("at", at), ("at-day", day)).HappenedAt);

    [Theory]
    [InlineData("", "yesterday", "at", "at what time yesterday")]
    [InlineData("2026-05-30 15:40", "yesterday", "at", "was not yesterday")]
    [InlineData("09:00", "tomorrow", "at-day", "tomorrow")]
    public void A_day_that_fits_nothing_is_refused(string at, string day, string field, string message)
    {
        EntryReader reader = TestBatch.Reader(TestBatch.In(Berlin), Utc("2026-06-01T10:05Z"), ("kind", "skimmed"), ("at", at), ("at-day", day));
        Assert.Null(reader.Read());
        Assert.Contains(message, Assert.Single(reader.Fields.Problems, problem => string.Equals(problem.Field, field, StringComparison.Ordinal)).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Heat_still_away_has_no_end() =>
        Assert.Null(Assert.IsType<LogFact.HeatLost>(Read(Now, ("kind", "heat-lost"), ("at", "13:50")).Fact).Until);

    private static NewEntry Read(DateTimeOffset now, params (string Name, string Value)[] fields)
    {
        (string Name, string Value)[] all = fields.Any(field => field.Name is "kind") ? fields : [("kind", "skimmed"), .. fields];
        EntryReader reader = TestBatch.Reader(TestBatch.In(Berlin), now, all);
        NewEntry? entry = reader.Read();
        Assert.True(entry is not null, string.Join(' ', reader.Fields.Problems));
        return entry;
    }

    private static string Iso(DateTimeOffset moment) => moment.ToString("yyyy-MM-dd'T'HH:mm:ss.fff'Z'", CultureInfo.InvariantCulture);

    private static DateTimeOffset Utc(string text) => DateTimeOffset.Parse(text, CultureInfo.InvariantCulture);
}
