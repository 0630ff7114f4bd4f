using Stockwright.Logbook;
using Stockwright.Simmering;

namespace Stockwright.Cooking;

/// <summary>A stretch without heat as the log has it.</summary>
/// <param name="Entry">The entry that tells of it.</param>
/// <param name="From">Heat gone.</param>
/// <param name="Until">Heat back, or the moment supposed while it is away.</param>
/// <param name="IsOpen">True while it is away.</param>
/// <param name="IsNightStop">True when it was planned: strained, cooled and kept cold.</param>
internal sealed record HeatAbsence(LogEntry Entry, DateTimeOffset From, DateTimeOffset Until, bool IsOpen, bool IsNightStop);

/// <summary>Finds the stretches without heat (R.2). While the heat is away it is supposed to come back now, the soonest it can.</summary>
internal static class HeatAbsences
{
    /// <summary>A pause entered this near to a planned stop for the night is that stop.</summary>
    private static readonly TimeSpan NearStop = TimeSpan.FromHours(2);

    /// <summary>Stretches in order, those that overlap put together.</summary>
    /// <param name="view">The log.</param>
    /// <param name="times">Heat on and off.</param>
    /// <param name="stops">Planned stops for the night: key, expected moment, length.</param>
    public static IReadOnlyList<HeatAbsence> Of(LogView view, HeatTimes times, IReadOnlyList<(PotAction Action, DateTimeOffset At)> stops)
    {
        if (!times.IsOn)
        {
            return [];
        }

        DateTimeOffset end = times.HeatOff ?? view.Now;
        List<HeatAbsence> found = [];
        for (int i = 0; i < view.Entries.Count; i++)
        {
            LogEntry entry = view.Entries[i];
            PotAction? stop = StopAt(entry, stops);
            bool away = stop is not null || entry.Fact is LogFact.HeatLost or LogFact.Paused or LogFact.HeatMoved { HobId: LogFact.HeatMoved.NoHeat };
            if (!away || entry.HappenedAt < times.HeatOn || entry.HappenedAt >= end)
            {
                continue;
            }

            DateTimeOffset? back = (entry.Fact as LogFact.HeatLost)?.Until ?? BackAt(view.Entries.Skip(i + 1));
            if (back is null && stop is not null)
            {
                back = entry.HappenedAt + TimeSpan.FromSeconds(stop.PauseSeconds);
            }

            bool open = back is null || back > view.Now;
            DateTimeOffset until = back is { } known && known > entry.HappenedAt ? known : open ? Later(view.Now, entry.HappenedAt) : entry.HappenedAt;
            found.Add(new HeatAbsence(entry, entry.HappenedAt, until < end || times.HeatOff is null ? until : end, open && times.HeatOff is null, stop is not null));
        }

        return Together(found);
    }

    /// <summary>Key of the planned stop an entry tells of, or null.</summary>
    public static PotAction? StopAt(LogEntry entry, IReadOnlyList<(PotAction Action, DateTimeOffset At)> stops) => entry.Fact switch
    {
        LogFact.StepDone done => stops.FirstOrDefault(stop => string.Equals(stop.Action.Key, done.StepKey, StringComparison.Ordinal)).Action,
        LogFact.Paused => stops.Where(stop => (stop.At - entry.HappenedAt).Duration() <= NearStop).OrderBy(stop => (stop.At - entry.HappenedAt).Duration()).FirstOrDefault().Action,
        _ => null,
    };

    private static DateTimeOffset? BackAt(IEnumerable<LogEntry> later) => later
        .Select(entry => entry.Fact switch
        {
            LogFact.Resumed or LogFact.Simmers => entry.HappenedAt,
            LogFact.HeatMoved moved when !string.Equals(moved.HobId, LogFact.HeatMoved.NoHeat, StringComparison.Ordinal) => entry.HappenedAt,
            LogFact.HeatLost { Until: { } until } => until,
            _ => (DateTimeOffset?)null,
        })
        .FirstOrDefault(back => back is not null);

    private static List<HeatAbsence> Together(List<HeatAbsence> found)
    {
        List<HeatAbsence> joined = [];
        foreach (HeatAbsence absence in found.OrderBy(one => one.From))
        {
            if (joined.Count > 0 && absence.From <= joined[^1].Until)
            {
                HeatAbsence last = joined[^1];
                joined[^1] = last with { Until = Later(last.Until, absence.Until), IsOpen = last.IsOpen || absence.IsOpen };
            }
            else
            {
                joined.Add(absence);
            }
        }

        return joined;
    }

    private static DateTimeOffset Later(DateTimeOffset one, DateTimeOffset other) => one > other ? one : other;
}
