using Ical.Net;
using Ical.Net.CalendarComponents;
using Ical.Net.DataTypes;
using Ical.Net.Serialization;
using Stockwright.Cooking;
using Stockwright.Measures;
using Stockwright.Planning;
using Stockwright.Simmering;

namespace Stockwright.Web.Features.Cooking.Calendars;

/// <summary>
/// What the cook's hands are needed for, as a calendar (RFC 5545). Times are UTC; the identity of an event is batch and step, so
/// that a calendar that reads it again moves the event instead of doubling it; SEQUENCE is the length of the log, which grows with
/// every re-plan. A convenience, never the safety alarm.
/// </summary>
internal static class StepCalendar
{
    private const string Product = "-//Stockwright//Stockwright 1//EN";
    private const string Reminder = "A convenience, never the safety alarm: keep a kitchen timer.";

    /// <summary>Asked of programs that read the address again and again (RFC 7986, 5.7).</summary>
    private const string ReadAgainAfter = "PT15M";

    private static readonly TimeSpan Shortest = TimeSpan.FromMinutes(1);

    /// <summary>Writes a calendar.</summary>
    /// <param name="name">Name shown by the calendar program.</param>
    /// <param name="views">Batches; those that cannot be worked out are left out.</param>
    /// <param name="withDone">
    /// True for a file that is read in: it holds steps done or missed as cancelled (RFC 5545, 3.8.1.11), for reading it in again would
    /// not take their alarms away otherwise. False for an address that is subscribed to: it is read whole each time, so what
    /// is left out is gone.
    /// </param>
    /// <param name="units">Measures of the descriptions.</param>
    /// <param name="home">Address of this app, for links.</param>
    /// <param name="now">The present.</param>
    public static string Write(string name, IEnumerable<BatchView> views, bool withDone, UnitSystem units, Uri home, DateTimeOffset now)
    {
        Calendar calendar = new() { ProductId = Product, Method = CalendarMethods.Publish };
        calendar.Properties.Add(new CalendarProperty("NAME", name));
        CalendarProperty refresh = new("REFRESH-INTERVAL", ReadAgainAfter);
        refresh.Parameters.Add(new CalendarParameter("VALUE", "DURATION"));
        calendar.Properties.Add(refresh);
        foreach (BatchView view in views)
        {
            if (view.Course is not { } course)
            {
                continue;
            }

            foreach (CourseStep step in course.Steps.Where(step => step.Step.HandsOn > TimeSpan.Zero))
            {
                bool ahead = course.Phase != BatchPhase.Closed && step.Standing is StepStanding.Ahead or StepStanding.Due or StepStanding.Overdue;
                if (ahead || withDone)
                {
                    calendar.Events.Add(Event(view, course, step, ahead, units, home, now));
                }
            }
        }

        return LineFolding.Refold(new CalendarSerializer().SerializeToString(calendar) ?? "");
    }

    private static CalendarEvent Event(BatchView view, BatchCourse course, CourseStep step, bool ahead, UnitSystem units, Uri home, DateTimeOffset now)
    {
        TimeSpan takes = step.Step.HandsOn > Shortest ? step.Step.HandsOn : Shortest;
        CalendarEvent told = new()
        {
            Uid = $"{view.Id:D}-{step.Key}@stockwright",
            Sequence = view.Log.All.Count,
            DtStamp = Moment(now),
            LastModified = Moment(view.Log.All is [.., var last] ? last.ReceivedAt : view.Stored.Summary.Started),
            Summary = $"{step.Step.Title} – {view.Name}",
            Description = Describe(course, step.Step, units),
            Start = Moment(step.Step.At),
            End = Moment(step.Step.At + takes),
            Status = ahead ? EventStatus.Confirmed : EventStatus.Cancelled,
            Transparency = TransparencyType.Transparent,
            Url = new Uri(home, $"batches/{view.Id:D}"),
        };
        if (ahead)
        {
            told.Alarms.Add(Alarm(step.Step.Title, TimeSpan.Zero));
            told.Alarms.Add(Alarm($"In five minutes: {step.Step.Title}", TimeSpan.FromMinutes(-5)));
        }

        return told;
    }

    private static Alarm Alarm(string text, TimeSpan from) => new()
    {
        Action = AlarmAction.Display,
        Description = text,
        Trigger = new Trigger(Duration.FromTimeSpanExact(from)),
    };

    private static string Describe(BatchCourse course, PlanStep step, UnitSystem units)
    {
        List<string> lines = [];
        if (step.Detail.Length > 0)
        {
            lines.Add(step.Detail);
        }

        if (step.CheckIndex is { } index && index < course.Expected.Simmer.Checks.Count)
        {
            SimmerCheck check = course.Expected.Simmer.Checks[index];
            string water = check.TopUp.Central > UnitsNet.Volume.FromMilliliters(1) ? $" Add about {KitchenFormat.Text(check.TopUp.Central, units)} of water." : "";
            lines.Add($"The level should stand {KitchenFormat.Level(check.LevelBeforeFromRim, units)} below the rim.{water}");
        }

        lines.AddRange(step.Cautions.Select(caution => $"Caution: {caution.Text}"));
        lines.Add(Reminder);
        return string.Join('\n', lines);
    }

    private static CalDateTime Moment(DateTimeOffset moment)
    {
        DateTime utc = moment.UtcDateTime;
        return new CalDateTime(new DateTime(utc.Ticks - (utc.Ticks % TimeSpan.TicksPerSecond), DateTimeKind.Utc));
    }
}
