namespace Stockwright.Logbook;

/// <summary>The log of one batch: everything ever entered, and what of it stands.</summary>
public sealed class BatchLog
{
    private readonly Dictionary<Guid, LogEntry> byId;
    private readonly Dictionary<Guid, LogEntry> supersededBy = [];

    /// <summary>A log of entries in any order.</summary>
    /// <param name="entries">Entries of one batch, each id once.</param>
    /// <exception cref="ArgumentException">Two entries have the same id.</exception>
    public BatchLog(IEnumerable<LogEntry> entries)
    {
        All = [.. entries.OrderBy(entry => entry.Number)];
        byId = All.ToDictionary(entry => entry.Id);

        foreach (LogEntry entry in All)
        {
            if (entry.Corrects is { } old)
            {
                Supersede(old, entry);
            }
        }

        Standing = [.. All
            .Where(entry => !supersededBy.ContainsKey(entry.Id) && entry.Fact is not LogFact.Withdrawn)
            .OrderBy(entry => entry.HappenedAt).ThenBy(entry => entry.Number)];
    }

    /// <summary>An empty log.</summary>
    public static BatchLog Empty { get; } = new([]);

    /// <summary>Every entry, corrected and withdrawn ones included, in order of receipt.</summary>
    public IReadOnlyList<LogEntry> All { get; }

    /// <summary>Entries that stand, in order of happening.</summary>
    public IReadOnlyList<LogEntry> Standing { get; }

    /// <summary>The entry that replaced or took back this one, or null when it stands.</summary>
    public LogEntry? SupersededBy(LogEntry entry)
    {
        ArgumentNullException.ThrowIfNull(entry);
        return supersededBy.GetValueOrDefault(entry.Id);
    }

    /// <summary>Finds an entry; null when there is none.</summary>
    public LogEntry? Find(Guid id) => byId.GetValueOrDefault(id);

    /// <summary>Standing entries of one kind of fact, in order of happening.</summary>
    public IEnumerable<(LogEntry Entry, T Fact)> Of<T>()
        where T : LogFact => Standing.Where(entry => entry.Fact is T).Select(entry => (entry, (T)entry.Fact));

    /// <summary>The last standing entry of one kind of fact, or null.</summary>
    public LogEntry? Last<T>()
        where T : LogFact => Standing.LastOrDefault(entry => entry.Fact is T);

    /// <summary>When a step was done, or null.</summary>
    public LogEntry? Done(string stepKey) =>
        Standing.LastOrDefault(entry => entry.Fact is LogFact.StepDone done && string.Equals(done.StepKey, stepKey, StringComparison.Ordinal));

    /// <summary>The entry that closed the record, or null while it is open.</summary>
    public LogEntry? Closing => Standing.LastOrDefault(entry => entry.Fact.ClosesRecord);

    /// <summary>True when the record is closed, also by being put aside.</summary>
    public bool IsClosed => Closing is not null;

    /// <summary>True when the batch was put aside as never cooked.</summary>
    public bool IsNeverCooked => Closing?.Fact is LogFact.NeverCooked;

    /// <summary>The first standing entry that shows stock on the heat, off it or in the fridge; null when nothing of it was cooked yet.</summary>
    public LogEntry? FirstCooked => Standing.FirstOrDefault(entry => entry.Fact
        is LogFact.Simmers or LogFact.OffTheBoil or LogFact.BoiledOver or LogFact.RanLow or LogFact.Strained or LogFact.SpentWeighed or LogFact.CoolingBegan or LogFact.CorrectionMade
        or LogFact.FatWeighed or LogFact.SetFelt or LogFact.Portioned or LogFact.TemperatureRead { Place: ReadingPlace.Cooling });

    /// <summary>The last word counts: when two cooks correct one entry, the later received stands, and not both.</summary>
    private void Supersede(Guid old, LogEntry entry)
    {
        // Steps are counted, for entries made by hand could point at each other in a circle.
        Guid last = old;
        for (int step = 0; step < All.Count && supersededBy.TryGetValue(last, out LogEntry? next); step++)
        {
            last = next.Id;
        }

        if (last != entry.Id)
        {
            supersededBy[last] = entry;
        }
    }
}
