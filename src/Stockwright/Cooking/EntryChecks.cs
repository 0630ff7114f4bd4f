using System.Globalization;
using Stockwright.Logbook;
using Stockwright.Planning;

namespace Stockwright.Cooking;

/// <summary>What is wrong with an entry before it is stored, in the cook's words.</summary>
public static class EntryChecks
{
    private static readonly TimeSpan BeforeStart = TimeSpan.FromDays(1);

    /// <summary>Lists what is wrong; empty when the entry may be stored.</summary>
    /// <param name="draft">The entry, not stored yet.</param>
    /// <param name="batch">The batch it is for.</param>
    /// <param name="log">The batch's log without it.</param>
    /// <param name="now">The present by the server's clock.</param>
    /// <returns>Problems with the field each belongs to: at, corrects, or one of the fact's own.</returns>
    public static IReadOnlyList<WordedProblem> Problems(LogEntry draft, Batch batch, BatchLog log, DateTimeOffset now)
    {
        ArgumentNullException.ThrowIfNull(draft);
        ArgumentNullException.ThrowIfNull(batch);
        ArgumentNullException.ThrowIfNull(log);
        List<WordedProblem> problems = [];
        Time(problems, draft, batch, now);
        NeverCooked(problems, draft, log);
        Correction(problems, draft, log);
        if (log.IsClosed && draft.Corrects is null && draft.Fact is not (LogFact.Noted or LogFact.Withdrawn))
        {
            problems.Add(new WordedProblem("at", "This record is closed: it takes notes, corrections and withdrawals only."));
        }

        draft.Fact.Check(new FactChecks(batch.Planned, draft.HappenedAt, now, problems));
        return problems;
    }

    private static void Time(List<WordedProblem> problems, LogEntry draft, Batch batch, DateTimeOffset now)
    {
        DateTimeOffset start = batch.StartedAt < batch.Planned.Timeline.Start ? batch.StartedAt : batch.Planned.Timeline.Start;
        if (draft.HappenedAt > now + LogEntry.ClockSlack)
        {
            problems.Add(new WordedProblem("at", string.Create(
                CultureInfo.InvariantCulture, $"That has not happened yet: it is {TimeZoneInfo.ConvertTime(now, batch.Zone):HH:mm} here.")));
        }
        else if (draft.HappenedAt < start - BeforeStart)
        {
            problems.Add(new WordedProblem("at", string.Create(
                CultureInfo.InvariantCulture, $"That is more than a day before this batch began, on {TimeZoneInfo.ConvertTime(start, batch.Zone):d MMM HH:mm}.")));
        }
    }

    /// <summary>What is on the heat or cooling must not slip out of sight by being put aside.</summary>
    private static void NeverCooked(List<WordedProblem> problems, LogEntry draft, BatchLog log)
    {
        if (draft.Fact is LogFact.NeverCooked && log.FirstCooked is { } cooked)
        {
            problems.Add(new WordedProblem("", string.Create(
                CultureInfo.InvariantCulture, $"Entry {cooked.Number} says that this was cooked. Close the record instead, or take that entry back first if it is wrong.")));
        }
    }

    private static void Correction(List<WordedProblem> problems, LogEntry draft, BatchLog log)
    {
        if (draft.Corrects is not { } id)
        {
            if (draft.Fact is LogFact.Withdrawn)
            {
                problems.Add(new WordedProblem("corrects", "Say which entry is taken back."));
            }

            return;
        }

        LogEntry? old = log.Find(id);
        if (old is null || id == draft.Id)
        {
            problems.Add(new WordedProblem("corrects", "The entry to be corrected is not in this batch's log."));
        }
        else if (old.Fact is LogFact.Withdrawn)
        {
            problems.Add(new WordedProblem("corrects", "That entry takes another one back; make a new entry instead."));
        }
        else if (log.SupersededBy(old) is { } later)
        {
            problems.Add(new WordedProblem("corrects", string.Create(
                CultureInfo.InvariantCulture, $"That entry was {(later.Fact is LogFact.Withdrawn ? "taken back" : "corrected")} already, by entry {later.Number}.")));
        }
    }
}
