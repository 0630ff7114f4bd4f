using Microsoft.AspNetCore.WebUtilities;
using Stockwright.Cooking;
using Stockwright.Cooling.Limits;
using Stockwright.Logbook;
using Stockwright.Planning;
using Stockwright.Storage;
using Stockwright.Web.Features.Kitchen;
using Stockwright.Web.Features.Planning;
using Stockwright.Web.Fields;

namespace Stockwright.Web.Features.Cooking;

/// <summary>A batch as a page shows it.</summary>
/// <param name="Stored">As it was started.</param>
/// <param name="Log">Everything entered.</param>
/// <param name="Now">The present.</param>
public sealed record BatchView(StoredBatch Stored, BatchLog Log, DateTimeOffset Now)
{
    /// <summary>How it stands; null when the stored plan cannot be worked out any more (its record can still be read).</summary>
    public BatchCourse? Course { get; init; }

    /// <summary>The plan as a page shows it, for its clocks and links; null as for <see cref="Course"/>.</summary>
    public PlanView? Plan { get; init; }

    public Guid Id => Stored.Summary.Id;

    public string Name => Stored.Summary.Name;

    /// <summary>The kitchen's zone when the batch was started.</summary>
    public required TimeZoneInfo Zone { get; init; }
}

/// <summary>A batch as its log needs it.</summary>
/// <param name="Batch">As it was planned; null when the stored plan cannot be worked out any more.</param>
/// <param name="Log">Everything entered.</param>
internal sealed record LoggedBatch(Batch? Batch, BatchLog Log);

/// <summary>Opens batches: what was planned from the snapshot kept with it, what happened from its log.</summary>
internal sealed class BatchService(BatchStore batches, LogStore logs, PlanService plans, OpenBatchCache cache, OutlookCache outlooks, TimeProvider clock)
{
    /// <summary>Opens a batch; null when there is none.</summary>
    /// <param name="id">Its id.</param>
    /// <param name="units">Measures of the reader.</param>
    /// <param name="cancellationToken">Cancels the work.</param>
    public async Task<BatchView?> OpenAsync(Guid id, UnitSystem units, CancellationToken cancellationToken)
    {
        if (await batches.FindAsync(id, cancellationToken) is not { } stored)
        {
            return null;
        }

        BatchLog log = await cache.LogAsync(id, logs, cancellationToken);
        return View(stored, log, units);
    }

    /// <summary>Opens a batch to write in its log: the plan and what was entered, without what is to be expected. Null when there is none.</summary>
    /// <param name="id">Its id.</param>
    /// <param name="cancellationToken">Cancels the work.</param>
    public async Task<LoggedBatch?> OpenBookAsync(Guid id, CancellationToken cancellationToken)
    {
        if (await batches.FindAsync(id, cancellationToken) is not { } stored)
        {
            return null;
        }

        BatchLog log = await cache.LogAsync(id, logs, cancellationToken);
        Batch? batch = stored.Snapshot is { } snapshot && Planned(stored, snapshot, UnitSystem.Metric).Plan is { } planned
            ? BatchOf(stored, planned)
            : null;
        return new LoggedBatch(batch, log);
    }

    private BatchView View(StoredBatch stored, BatchLog log, UnitSystem units)
    {
        DateTimeOffset now = clock.GetUtcNow();
        BatchView bare = new(stored, log, now) { Zone = ZoneOf(stored.Snapshot?.Kitchen.TimeZoneId) };
        if (stored.Snapshot is not { } snapshot)
        {
            return bare;
        }

        PlanView plan = Planned(stored, snapshot, units) with { Now = now };
        return plan.Plan is { } planned
            ? bare with { Course = BatchReplanner.Replan(BatchOf(stored, planned), log, now), Plan = plan with { Judged = new(() => outlooks.Take(stored.Summary.Id, null, units, () => plan.Outlook)) } }
            : bare;
    }

    private PlanView Planned(StoredBatch stored, PlanSnapshot snapshot, UnitSystem units) => cache.Plan(
        stored.Summary.Id, units, () => ForOnePot(plans.Plan(Query(stored, units), units, Book(snapshot), stored.Summary.Begins)));

    /// <summary>A batch is one potful of what was planned.</summary>
    private static PlanView ForOnePot(PlanView view) => view with { Plan = view.Plan?.ForOnePot() };

    private static TypedForm Query(StoredBatch stored, UnitSystem units) => PlanQuery.InUnits(TypedForm.From(QueryHelpers.ParseQuery(stored.Query)), units, units);

    private static PlanningInputs Book(PlanSnapshot snapshot) => new(snapshot.Recipes, snapshot.Larder, snapshot.Kitchen);

    private static Batch BatchOf(StoredBatch stored, BatchPlan planned) => new()
    {
        Id = stored.Summary.Id,
        Name = stored.Summary.Name,
        Planned = planned,
        Limit = StandardLimits.Find(stored.LimitId) ?? StandardLimits.Default,
        StartedAt = stored.Summary.Started,
    };

    private static TimeZoneInfo ZoneOf(string? id) =>
        id is not null && TimeZoneInfo.TryFindSystemTimeZoneById(id, out TimeZoneInfo? zone) ? zone : TimeZoneInfo.Utc;
}
