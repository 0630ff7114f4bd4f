using Stockwright.Logbook;
using Stockwright.Planning;

namespace Stockwright.Cooking;

/// <summary>Says what is wrong with an entry before it is stored.</summary>
public static class EntryChecks
{
    /// <summary>Checks an entry.</summary>
    /// <param name="draft">The entry.</param>
    /// <param name="batch">The batch.</param>
    /// <param name="log">Its log so far.</param>
    /// <param name="now">The present.</param>
    /// <returns>What is wrong, by field; empty when nothing is.</returns>
    public static IReadOnlyList<InputProblem> Problems(LogEntry draft, Batch batch, BatchLog log, DateTimeOffset now)
    {
        ArgumentNullException.ThrowIfNull(draft);
        ArgumentNullException.ThrowIfNull(batch);
        ArgumentNullException.ThrowIfNull(log);
        return draft.HappenedAt > now + TimeSpan.FromMinutes(2) ? [new InputProblem("at", "That is still to come.")] : [];
    }
}
