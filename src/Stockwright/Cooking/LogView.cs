using Stockwright.Kitchen;
using Stockwright.Logbook;
using Stockwright.Planning;

namespace Stockwright.Cooking;

/// <summary>The log of a batch as far as it has come by a moment.</summary>
internal sealed class LogView
{
    private readonly Dictionary<string, LogEntry> done = new(StringComparer.Ordinal);

    // A thermometer may fill a log with thousands of readings, so what is asked for by its kind is put together once.
    private readonly Dictionary<Type, List<LogEntry>> byKind = [];

    public LogView(Batch batch, BatchLog log, DateTimeOffset now)
    {
        Batch = batch;
        Now = now;
        Entries = [.. log.Standing.Where(entry => entry.HappenedAt <= now)];
        foreach (LogEntry entry in Entries)
        {
            Type kind = entry.Fact.GetType();
            if (!byKind.TryGetValue(kind, out List<LogEntry>? like))
            {
                byKind[kind] = like = [];
            }

            like.Add(entry);
            if (entry.Fact is LogFact.StepDone step)
            {
                done[step.StepKey] = entry;
            }
        }
    }

    public Batch Batch { get; }

    public BatchPlan Plan => Batch.Planned;

    public DateTimeOffset Now { get; }

    /// <summary>Standing entries up to now, in order of happening.</summary>
    public IReadOnlyList<LogEntry> Entries { get; }

    /// <summary>The entry that says a step is done, or null.</summary>
    public LogEntry? Done(string key) => done.GetValueOrDefault(key);

    /// <summary>Entries of one kind.</summary>
    public IEnumerable<(LogEntry Entry, T Fact)> Of<T>()
        where T : LogFact => Like<T>().Select(entry => (entry, (T)entry.Fact));

    /// <summary>The first entry of one kind, or null.</summary>
    public LogEntry? First<T>()
        where T : LogFact => Like<T>() is [LogEntry first, ..] ? first : null;

    /// <summary>The last entry of one kind, or null.</summary>
    public LogEntry? Last<T>()
        where T : LogFact => Like<T>() is [.., LogEntry last] ? last : null;

    private List<LogEntry> Like<T>()
        where T : LogFact => byKind.GetValueOrDefault(typeof(T)) ?? [];

    /// <summary>A hob of the kitchen or of the plan, or null when nothing is known of it.</summary>
    public Hob? Hob(string id) => Batch.Hobs.Append(Plan.Request.Heat).FirstOrDefault(hob => string.Equals(hob.Id, id, StringComparison.Ordinal));

    /// <summary>The entry that closed the record, or null.</summary>
    public LogEntry? Closing => Entries.LastOrDefault(entry => entry.Fact.ClosesRecord);

    /// <summary>The planned step an entry speaks of, or null.</summary>
    public PlanStep? StepOf(LogEntry entry) => entry.Fact is LogFact.StepDone step
        ? Plan.Timeline.Steps.FirstOrDefault(planned => string.Equals(planned.Key, step.StepKey, StringComparison.Ordinal))
        : null;
}
