using Stockwright.Cooking;
using Stockwright.Cooling.Limits;
using Stockwright.Logbook;
using Stockwright.Planning;
using Stockwright.Web.Features.Planning;

namespace Stockwright.Web.Features.Cooking;

/// <summary>A batch as a page shows it.</summary>
/// <param name="Stored">As it was started.</param>
/// <param name="Log">Everything entered.</param>
/// <param name="Now">The present.</param>
public sealed record BatchView(StoredBatch Stored, BatchLog Log, DateTimeOffset Now)
{
    /// <summary>How it stands; null when the plan it was started from cannot be read (its record still can).</summary>
    public BatchCourse? Course { get; init; }

    /// <summary>The plan as a page shows it, for its clocks and links; null as for <see cref="Course"/>.</summary>
    public PlanView? Plan { get; init; }

    /// <summary>The plan it was started from, as kept.</summary>
    public required StoredBatchPlan Kept { get; init; }

    public Guid Id => Stored.Summary.Id;

    public string Name => Stored.Summary.Name;

    /// <summary>The kitchen's zone when the batch was started.</summary>
    public required TimeZoneInfo Zone { get; init; }
}

/// <summary>A batch as its log needs it.</summary>
/// <param name="Batch">As it was planned; null when that cannot be read.</param>
/// <param name="Log">Everything entered.</param>
internal sealed record LoggedBatch(Batch? Batch, BatchLog Log);

/// <summary>Opens batches: what was planned as it is kept with it, what happened from its log.</summary>
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
        DateTimeOffset now = clock.GetUtcNow();
        StoredBatchPlan kept = await cache.PlanAsync(id, batches, cancellationToken);
        BatchView bare = new(stored, log, now) { Kept = kept, Zone = ZoneOf(kept.TimeZoneId) };
        if (kept.Document is not { Plan: { } planned } document)
        {
            return bare;
        }

        PlanView plan = cache.View(id, units, () => plans.Open(document, units)) with { Now = now };
        return bare with
        {
            Course = BatchReplanner.Replan(BatchOf(stored, planned), log, now),
            Plan = plan with { Judged = new(() => outlooks.Take(id, null, units, () => plan.Outlook)) },
        };
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
        StoredBatchPlan kept = await cache.PlanAsync(id, batches, cancellationToken);
        return new LoggedBatch(kept.Document?.Plan is { } planned ? BatchOf(stored, planned) : null, log);
    }

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
