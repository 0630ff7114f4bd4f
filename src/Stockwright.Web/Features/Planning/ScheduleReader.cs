using Stockwright.Planning;
using Stockwright.Web.Fields;

namespace Stockwright.Web.Features.Planning;

/// <summary>Reads when: local date and time in the kitchen's zone.</summary>
internal static class ScheduleReader
{
    /// <summary>A plan nobody has timed starts at eight in the morning.</summary>
    public static readonly TimeOnly UsualStart = new(8, 0);

    /// <summary>The moment it starts or must be ready; waking, bedtime and the night have their own fields.</summary>
    public static PlanSchedule Read(FieldReader reader, TimeZoneInfo zone, DateTimeOffset now)
    {
        WhenWay way = PlanFields.When.ReadOrUsual(reader) ?? WhenWay.Start;
        DateTimeOffset? moment = ReadMoment(reader, way, zone, now);
        return new PlanSchedule { StartAt = way == WhenWay.Start ? moment : null, ReadyBy = way == WhenWay.Ready ? moment : null, Zone = zone };
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
        DateOnly? date = PlanFields.Date.Read(reader);
        TimeOnly? time = PlanFields.Time.Read(reader);
        if (reader.Problems.Count > before)
        {
            return null;
        }

        if (way == WhenWay.Ready && date is null)
        {
            reader.Report(PlanFields.Date.Name, "Say on which day the stock must be ready.");
            return null;
        }

        DateTime local = date is { } day ? day.ToDateTime(time ?? UsualStart) : NextLocal(zone, now, time ?? UsualStart);
        if (zone.IsInvalidTime(local))
        {
            reader.Report(PlanFields.Time.Name, "The clocks go forward past this time on that day. Choose another time.");
            return null;
        }

        // When the clocks go back a time comes twice; the first of the two is meant.
        TimeSpan offset = zone.IsAmbiguousTime(local) ? zone.GetAmbiguousTimeOffsets(local).Max() : zone.GetUtcOffset(local);
        return new DateTimeOffset(local, offset);
    }
}
