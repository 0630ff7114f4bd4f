using Stockwright.Planning;
using Stockwright.Web.Fields;

namespace Stockwright.Web.Features.Planning;

/// <summary>Reads when: local date and time in the kitchen's zone, waking hours, and the night.</summary>
internal static class ScheduleReader
{
    /// <summary>A plan nobody has timed starts at eight in the morning.</summary>
    public static readonly TimeOnly UsualStart = new(8, 0);

    public static PlanSchedule Read(FieldReader reader, TimeZoneInfo zone, DateTimeOffset now)
    {
        WhenWay way = reader.Word(PlanFields.When, "When", PlanText.Whens) ?? WhenWay.Start;
        DateTimeOffset? moment = ReadMoment(reader, way, zone, now);
        PlanSchedule standing = new();
        TimeOnly wakes = reader.Time(PlanFields.Wakes) ?? standing.WakesAt;
        TimeOnly sleeps = reader.Time(PlanFields.Sleeps) ?? standing.SleepsAt;
        if (wakes == sleeps)
        {
            reader.Report(PlanFields.Sleeps, "Getting up and going to bed cannot be at the same time.");
        }

        return new PlanSchedule
        {
            StartAt = way == WhenWay.Start ? moment : null,
            ReadyBy = way == WhenWay.Ready ? moment : null,
            Zone = zone,
            WakesAt = wakes,
            SleepsAt = sleeps,
            Night = reader.Word(PlanFields.Night, "Checks in the night", PlanText.Nights) ?? NightPlan.KeepFree,
        };
    }

    /// <summary>The next time a clock in the zone shows a time of day.</summary>
    public static DateTime NextLocal(TimeZoneInfo zone, DateTimeOffset now, TimeOnly time)
    {
        DateTime local = TimeZoneInfo.ConvertTime(now, zone).DateTime;
        DateTime today = DateOnly.FromDateTime(local).ToDateTime(time);
        return today > local ? today : today.AddDays(1);
    }

    private static DateTimeOffset? ReadMoment(FieldReader reader, WhenWay way, TimeZoneInfo zone, DateTimeOffset now)
    {
        int before = reader.Problems.Count;
        DateOnly? date = reader.Date(PlanFields.Date);
        TimeOnly? time = reader.Time(PlanFields.Time);
        if (reader.Problems.Count > before)
        {
            return null;
        }

        if (way == WhenWay.Ready && date is null)
        {
            reader.Report(PlanFields.Date, "Say on which day the stock must be ready.");
            return null;
        }

        DateTime local = date is { } day ? day.ToDateTime(time ?? UsualStart) : NextLocal(zone, now, time ?? UsualStart);
        if (zone.IsInvalidTime(local))
        {
            reader.Report(PlanFields.Time, "The clocks go forward past this time on that day. Choose another time.");
            return null;
        }

        // When the clocks go back a time comes twice; the first of the two is meant.
        TimeSpan offset = zone.IsAmbiguousTime(local) ? zone.GetAmbiguousTimeOffsets(local).Max() : zone.GetUtcOffset(local);
        return new DateTimeOffset(local, offset);
    }
}
