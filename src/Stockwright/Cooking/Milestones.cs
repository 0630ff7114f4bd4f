using Stockwright.Logbook;
using Stockwright.Planning;

namespace Stockwright.Cooking;

/// <summary>What is known of the work after the heat: when each part of it was finished, entered or following from what came later.</summary>
internal static class Milestones
{
    /// <summary>Work after the heat, in order.</summary>
    private static readonly StepKind[] Order = [StepKind.Strain, StepKind.Cool, StepKind.Chill, StepKind.Defat, StepKind.Remelt, StepKind.Portion];

    /// <summary>When it was strained, or null.</summary>
    public static DateTimeOffset? Strained(LogView view) => (view.First<LogFact.Strained>() ?? view.Done("strain-1"))?.HappenedAt;

    /// <summary>The first sign that straining is over, when straining itself was not entered.</summary>
    public static LogEntry? AfterStraining(LogView view) => view.Entries.FirstOrDefault(entry => entry.Fact
        is LogFact.SpentWeighed or LogFact.CoolingBegan or LogFact.ColdUnmeasured or LogFact.CorrectionMade or LogFact.Portioned or LogFact.TemperatureRead { Place: ReadingPlace.Cooling }
        || view.StepOf(entry) is { Kind: >= StepKind.Cool });

    /// <summary>When a part was entered as finished, by its step or by what was measured; null when it was not.</summary>
    public static LogEntry? Entered(LogView view, StepKind kind)
    {
        LogEntry? step = view.Plan.Timeline.Steps.LastOrDefault(planned => planned.Kind == kind) is { } planned ? view.Done(planned.Key) : null;
        return step ?? kind switch
        {
            StepKind.Strain => view.First<LogFact.Strained>(),
            StepKind.Defat => view.First<LogFact.FatWeighed>(),
            StepKind.Portion => view.First<LogFact.Portioned>(),
            _ => null,
        };
    }

    /// <summary>The entry that says, or implies, that a part is finished: nobody portions what was not strained.</summary>
    public static LogEntry? Finished(LogView view, StepKind kind)
    {
        for (int i = Array.IndexOf(Order, kind); i >= 0 && i < Order.Length; i++)
        {
            if (Entered(view, Order[i]) is { } entry)
            {
                return entry;
            }
        }

        return kind == StepKind.Strain ? AfterStraining(view) : null;
    }

    /// <summary>When a part really ended, given when it was to end: as entered, or not before now while it is under way.</summary>
    /// <param name="view">The log.</param>
    /// <param name="kind">The part.</param>
    /// <param name="end">When it was to end.</param>
    /// <param name="cold">The entry that says the stock is cold, or null: a tap that the hands are free does not end the cooling.</param>
    public static DateTimeOffset Ended(LogView view, StepKind kind, DateTimeOffset end, LogEntry? cold)
    {
        if (kind == StepKind.Cool)
        {
            return (cold ?? Finished(view, StepKind.Chill))?.HappenedAt ?? (end > view.Now ? end : view.Now);
        }

        if (kind == StepKind.Stand)
        {
            // It may be strained sooner than it would stand.
            return Finished(view, StepKind.Strain)?.HappenedAt is { } strained && strained < end ? strained : end;
        }

        return Finished(view, kind)?.HappenedAt ?? (end > view.Now ? end : view.Now);
    }
}
