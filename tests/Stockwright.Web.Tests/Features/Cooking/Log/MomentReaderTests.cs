using System.Globalization;
using CsCheck;
using Stockwright.Measures;
using Stockwright.Web.Features.Cooking.Log;
using Stockwright.Web.Fields;
using Xunit;

namespace Stockwright.Web.Tests.Features.Cooking.Log;

/// <summary>
/// Times typed by the kitchen's clock. Rules of the changes: IANA time zone database. Europe/Berlin goes from 02:00 to 03:00 on
/// 2026-03-29 and from 03:00 back to 02:00 on 2026-10-25, both at 01:00 UTC (Directive 2000/84/EC); America/New_York from 02:00 to
/// 03:00 on 2026-03-08 (07:00 UTC) and from 02:00 back to 01:00 on 2026-11-01 (06:00 UTC) (15 U.S.C. 260a).
/// </summary>
public sealed class MomentReaderTests
{
    [Theory]
    [InlineData("Europe/Berlin", "2026-06-01T12:20Z", "14:20", "2026-06-01T12:20Z")]
    [InlineData("Europe/Berlin", "2026-06-01T12:20Z", "14:22", "2026-06-01T12:22Z")]
    [InlineData("Europe/Berlin", "2026-06-01T12:20Z", "9:05", "2026-06-01T07:05Z")]
    [InlineData("Europe/Berlin", "2026-06-01T12:20Z", "2026-05-30 23:10", "2026-05-30T21:10Z")]
    [InlineData("Europe/Berlin", "2026-06-01T12:20Z", "12:20Z", "2026-06-01T12:20Z")]
    [InlineData("Europe/Berlin", "2026-06-01T21:59:30Z", "00:00", "2026-06-01T22:00Z")]
    [InlineData("Europe/Berlin", "2026-06-01T12:20Z", "21:20+09:00", "2026-06-01T12:20Z")]
    [InlineData("America/New_York", "2026-06-01T03:30Z", "23:25", "2026-06-01T03:25Z")]
    [InlineData("Asia/Kathmandu", "2026-06-01T12:20Z", "18:05", "2026-06-01T12:20Z")]

    // Put forward in the night: what was before and after it.
    [InlineData("Europe/Berlin", "2026-03-29T06:00Z", "01:59", "2026-03-29T00:59Z")]
    [InlineData("Europe/Berlin", "2026-03-29T06:00Z", "03:00", "2026-03-29T01:00Z")]
    [InlineData("Europe/Berlin", "2026-06-01T21:59:30Z", "23:50", "2026-06-01T21:50Z")]
    [InlineData("America/New_York", "2026-03-08T12:00Z", "01:59", "2026-03-08T06:59Z")]
    [InlineData("America/New_York", "2026-03-08T12:00Z", "03:00", "2026-03-08T07:00Z")]

    // Put back in the night: only what has been is meant, and 02:10 in the second hour can still be the first hour's 02:40.
    [InlineData("Europe/Berlin", "2026-10-25T06:00Z", "01:59", "2026-10-24T23:59Z")]
    [InlineData("Europe/Berlin", "2026-10-25T06:00Z", "03:00", "2026-10-25T02:00Z")]
    [InlineData("Europe/Berlin", "2026-10-25T00:40Z", "02:30", "2026-10-25T00:30Z")]
    [InlineData("Europe/Berlin", "2026-10-25T01:10Z", "02:40", "2026-10-25T00:40Z")]
    [InlineData("Europe/Berlin", "2026-10-25T06:00Z", "2026-10-25 02:30+02:00", "2026-10-25T00:30Z")]
    [InlineData("Europe/Berlin", "2026-10-25T06:00Z", "2026-10-25 02:30+01:00", "2026-10-25T01:30Z")]
    [InlineData("America/New_York", "2026-11-01T05:40Z", "01:30", "2026-11-01T05:30Z")]
    [InlineData("America/New_York", "2026-11-01T06:10Z", "01:40", "2026-11-01T05:40Z")]
    [InlineData("America/New_York", "2026-11-01T12:00Z", "02:00", "2026-11-01T07:00Z")]
    public void A_time_is_todays(string zone, string now, string typed, string expected)
    {
        FieldReader reader = Reader(typed);
        DateTimeOffset? read = reader.Moment("at", Zone(zone), Utc(now));
        Assert.Empty(reader.Problems);
        Assert.Equal(Utc(expected), read);
    }

    [Theory]
    [InlineData("Europe/Berlin", "2026-06-01T12:20Z", "14:25", "2026-05-31T12:25Z")]
    [InlineData("Europe/Berlin", "2026-06-01T22:30Z", "23:50", "2026-06-01T21:50Z")]
    [InlineData("Europe/Berlin", "2026-03-29T00:30Z", "02:30", "2026-03-28T01:30Z")]
    [InlineData("Asia/Kathmandu", "2026-06-01T12:20Z", "18:30", "2026-05-31T12:45Z")]
    public void A_time_still_ahead_is_asked_about_and_yesterday_said(string zone, string now, string typed, string yesterday)
    {
        FieldReader asked = Reader(typed);
        Assert.Null(asked.Moment("at", Zone(zone), Utc(now)));
        Assert.True(MomentReader.AsksForYesterday(Assert.Single(asked.Problems)));
        Assert.Equal(Utc(yesterday), Reader(typed).Moment("at", Zone(zone), Utc(now), yesterday: true));
    }

    [Theory]
    [InlineData("Europe/Berlin", "2026-10-25T06:00Z", "02:30", "came twice", "2026-10-25 02:30+02:00", "2026-10-25 02:30+01:00")]
    [InlineData("Europe/Berlin", "2026-10-25T06:00Z", "2026-10-25 02:00", "came twice", "2026-10-25 02:00+02:00", "2026-10-25 02:00+01:00")]
    [InlineData("Europe/Berlin", "2026-10-25T01:10Z", "02:05", "came twice", "2026-10-25 02:05+02:00", "2026-10-25 02:05+01:00")]
    [InlineData("America/New_York", "2026-11-01T12:00Z", "01:30", "came twice", "2026-11-01 01:30-04:00", "2026-11-01 01:30-05:00")]
    [InlineData("Europe/Berlin", "2026-03-29T06:00Z", "02:30", "was not on the clock", "put forward", "")]
    [InlineData("Europe/Berlin", "2026-06-01T06:00Z", "2026-03-29 02:00", "was not on the clock", "put forward", "")]
    [InlineData("America/New_York", "2026-03-08T12:00Z", "02:30", "was not on the clock", "put forward", "")]
    public void A_time_that_came_twice_or_never_is_asked_about(string zone, string now, string typed, string first, string second, string third)
    {
        FieldReader reader = Reader(typed);
        Assert.Null(reader.Moment("at", Zone(zone), Utc(now)));
        string message = Assert.Single(reader.Problems).Message;
        Assert.Contains(first, message, StringComparison.Ordinal);
        Assert.Contains(second, message, StringComparison.Ordinal);
        Assert.Contains(third, message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("25:00")]
    [InlineData("2:3")]
    [InlineData("noon")]
    [InlineData("14.20")]
    [InlineData("٠٩:٣٠")]
    [InlineData("2026-02-30 10:00")]
    [InlineData("1999-01-01 10:00")]
    [InlineData("9999-12-31 23:59")]
    [InlineData("10:00+24:00")]
    [InlineData("10:00+99:59")]
    [InlineData("10:00-15:00")]
    [InlineData("2026-01-01 10:00 +14:30")]
    public void What_is_no_time_is_refused(string typed)
    {
        FieldReader reader = Reader(typed);
        Assert.Null(reader.Moment("at", Zone("Europe/Berlin"), Utc("2026-06-01T12:00Z")));
        Assert.Single(reader.Problems);
    }

    /// <summary>What is written out for the cook's choice reads back as that moment, in every zone and at every minute of a year.</summary>
    [Fact]
    public void What_a_clock_shows_reads_back_as_the_moment_or_is_asked_about() => Gen.Select(
        Gen.Int[0, (365 * 24 * 60) - 1], Gen.OneOfConst("Europe/Berlin", "America/New_York", "Australia/Lord_Howe", "Asia/Kathmandu", "America/St_Johns", "UTC"), Gen.Int[0, 23 * 60]).Sample(
        (minute, id, later) =>
        {
            TimeZoneInfo zone = Zone(id);
            DateTimeOffset moment = Utc("2026-01-01T00:00Z").AddMinutes(minute);
            DateTime shown = TimeZoneInfo.ConvertTime(moment, zone).DateTime;
            FieldReader reader = Reader(shown.ToString("yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture));
            DateTimeOffset? read = reader.Moment("at", zone, moment.AddMinutes(later));
            if (read is null)
            {
                Assert.True(zone.IsAmbiguousTime(shown));
                return;
            }

            // Within the hour that comes twice a single answer can be the other one only when that is the only one that has been.
            Assert.Equal(moment, read.Value);
        },
        iter: 4000);

    [Fact]
    public void Nothing_typed_fails_the_reader() => Gen.OneOf(
        Gen.String[0, 30], Gen.String[Gen.OneOfConst([.. "0123456789:-+TZz ./"]), 0, 25]).Sample(
        text =>
        {
            FieldReader reader = Reader(text);
            DateTimeOffset? read = reader.Moment("at", Zone("Europe/Berlin"), Utc("2026-10-25T01:10Z"));
            DateTimeOffset? later = reader.MomentFrom("at", Zone("America/New_York"), Utc("2026-11-01T05:10Z"));
            Assert.True(string.IsNullOrWhiteSpace(text) || (read is not null && later is not null) || reader.Problems.Count > 0);
        },
        iter: 5000);

    private static FieldReader Reader(string typed) => new(TestBatch.Form(("at", typed)), UnitSystem.Metric);

    private static TimeZoneInfo Zone(string id) => TimeZoneInfo.FindSystemTimeZoneById(id);

    private static DateTimeOffset Utc(string text) => DateTimeOffset.Parse(text, CultureInfo.InvariantCulture);
}
