using Stockwright.Logbook;
using Stockwright.Simmering;

namespace Stockwright.Cooking;

/// <summary>A planned action at the pot that was done.</summary>
/// <param name="At">When.</param>
/// <param name="Entry">The entry that says so.</param>
internal readonly record struct PotVisit(DateTimeOffset At, LogEntry Entry);

/// <summary>
/// Which planned actions at the pot were done (R.3). A step entered as done is done. A level, water or a skim entered without its step counts for the
/// check or skim it lies nearest to, when that is not further off than half an interval.
/// </summary>
internal static class CourseVisits
{
    /// <summary>Entries this near to each other are one visit.</summary>
    private static readonly TimeSpan SameVisit = TimeSpan.FromMinutes(5);

    private static readonly TimeSpan SkimReach = TimeSpan.FromMinutes(10);
    private static readonly TimeSpan HoldReach = TimeSpan.FromHours(2);

    /// <summary>Visits by key of the action.</summary>
    /// <param name="view">The log.</param>
    /// <param name="times">Heat on and off.</param>
    /// <param name="due">Planned actions with the moment each is due.</param>
    public static IReadOnlyDictionary<string, PotVisit> Of(LogView view, HeatTimes times, IReadOnlyList<(PotAction Action, DateTimeOffset At)> due)
    {
        Dictionary<string, PotVisit> visits = new(StringComparer.Ordinal);
        foreach ((PotAction action, _) in due)
        {
            if (view.Done(action.Key) is { } entry)
            {
                visits[action.Key] = new PotVisit(entry.HappenedAt, entry);
            }
        }

        TimeSpan half = view.Plan.Request.CheckInterval / 2;
        foreach (LogEntry entry in view.Entries.Where(entry => entry.HappenedAt >= times.HeatOn))
        {
            (PotActionKind kind, TimeSpan reach)? sought = entry.Fact switch
            {
                LogFact.LevelRead or LogFact.WaterAdded or LogFact.RanLow => (PotActionKind.Check, half),
                LogFact.Skimmed => (PotActionKind.Skim, SkimReach),
                LogFact.HeatMoved { HobId: LogFact.HeatMoved.Oven } => (PotActionKind.HoldBegins, HoldReach),
                LogFact.HeatMoved { HobId: not LogFact.HeatMoved.NoHeat } => (PotActionKind.HoldEnds, HoldReach),
                _ => null,
            };
            if (sought is ({ } kind, { } reach) && Nearest(due, kind, reach, entry.HappenedAt, visits) is { } key && (!visits.TryGetValue(key, out PotVisit known) || SharesVisit(known, entry)))
            {
                DateTimeOffset at = visits.TryGetValue(key, out known) && known.At < entry.HappenedAt ? known.At : entry.HappenedAt;
                visits[key] = new PotVisit(at, known.Entry ?? entry);
            }
        }

        return visits;
    }

    /// <summary>The action an entry belongs to: one visited at the same time, else the nearest due one.</summary>
    private static string? Nearest(
        IReadOnlyList<(PotAction Action, DateTimeOffset At)> due, PotActionKind kind, TimeSpan reach, DateTimeOffset at, Dictionary<string, PotVisit> visits)
    {
        string? best = null;
        TimeSpan least = reach;
        foreach ((PotAction action, DateTimeOffset dueAt) in due.Where(one => one.Action.Kind == kind))
        {
            if (visits.TryGetValue(action.Key, out PotVisit visit) && (visit.At - at).Duration() <= SameVisit)
            {
                return action.Key;
            }

            TimeSpan off = (dueAt - at).Duration();
            if (off <= least)
            {
                least = off;
                best = action.Key;
            }
        }

        return best;
    }

    private static bool SharesVisit(PotVisit visit, LogEntry entry) => (visit.At - entry.HappenedAt).Duration() <= SameVisit;
}
