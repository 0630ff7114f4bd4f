using Stockwright.Cooking;
using Stockwright.Logbook;
using Stockwright.Web.Features.Cooking.Log;
using Stockwright.Web.Features.Planning;
using Stockwright.Web.Fields;
using Stockwright.Web.Wording;

namespace Stockwright.Web.Features.Cooking.Stove;

/// <summary>An entry that was sent and not taken: it is shown again as it was typed.</summary>
/// <param name="Typed">Everything that was sent.</param>
/// <param name="Problems">Why it was not taken.</param>
/// <param name="IsTrouble">True when nothing is wrong with it: sending it again may do.</param>
public sealed record SentEntry(TypedForm Typed, IReadOnlyList<InputProblem> Problems, bool IsTrouble)
{
    public string Kind => Typed[EntryFields.Kind].Trim();

    /// <summary>True when it was sent from the form of this kind, correcting this entry.</summary>
    public bool IsOf(string kind, Guid? corrects) =>
        string.Equals(Kind, kind, StringComparison.Ordinal)
        && (Guid.TryParse(Typed[EntryFields.Corrects], out Guid sent) ? sent : null) == corrects;
}

/// <summary>One batch as the stove page shows it.</summary>
/// <param name="Batch">Stored batch and log.</param>
/// <param name="Course">How it stands.</param>
/// <param name="Plan">The plan as a page shows it.</param>
/// <param name="Units">Measures of the reader.</param>
public sealed record StoveView(BatchView Batch, BatchCourse Course, PlanView Plan, UnitSystem Units)
{
    /// <summary>What the stock is likely to be like now; null when that cannot be told.</summary>
    public StockOutlook? Outlook { get; init; }

    /// <summary>Name kept on this device.</summary>
    public string Who { get; init; } = "";

    /// <summary>Hobs of the kitchen.</summary>
    public IReadOnlyList<Stockwright.Kitchen.Hob> Hobs { get; init; } = [];

    /// <summary>Heats the pot may be moved to.</summary>
    public IReadOnlyList<ChoiceOption> Heats { get; init; } = [];

    /// <summary>Words of the log.</summary>
    public FactText Words { get; init; } = null!;

    /// <summary>An entry that was not taken, or null.</summary>
    public SentEntry? Refused { get; init; }

    /// <summary>The entry being corrected, or null.</summary>
    public LogEntry? Correcting { get; init; }

    /// <summary>The entry being taken back, or null.</summary>
    public LogEntry? TakingBack { get; init; }

    /// <summary>True when the cook is asked whether to put the batch aside as never cooked.</summary>
    public bool IsPuttingAside { get; init; }

    public Guid Id => Batch.Id;

    public string Address => $"/batches/{Batch.Id}";

    public BatchLog Log => Batch.Log;

    public DateTimeOffset Now => Course.Now;

    public KitchenClock Clock => new(Batch.Zone, Units);

    /// <summary>A fresh key for an entry.</summary>
    public Guid FreshKey() => Guid.CreateVersion7(Now);

    /// <summary>The check of the forecast a step makes, as expected now; null when it makes none.</summary>
    public Simmering.SimmerCheck? CheckOf(CourseStep step) =>
        step.Step.CheckIndex is { } index && index < Course.Expected.Simmer.Checks.Count ? Course.Expected.Simmer.Checks[index] : null;
}
