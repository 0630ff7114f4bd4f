using Microsoft.AspNetCore.WebUtilities;
using Stockwright.Cooking;
using Stockwright.Cooling.Limits;
using Stockwright.Logbook;
using Stockwright.Storage;
using Stockwright.Web.Forms;
using Stockwright.Web.Planner;

namespace Stockwright.Web.Batches;

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

/// <summary>Opens batches: what was planned from the snapshot kept with it, what happened from its log.</summary>
internal sealed class BatchDesk(BatchStore batches, LogStore logs, PlanDesk plans, TimeProvider clock)
{
    /// <summary>Opens a batch; null when there is none.</summary>
    /// <param name="id">Its id.</param>
    /// <param name="units">Measures of the reader.</param>
    /// <param name="cancellationToken">Gives up.</param>
    public async Task<BatchView?> OpenAsync(Guid id, UnitSystem units, CancellationToken cancellationToken)
    {
        if (await batches.FindAsync(id, cancellationToken) is not { } stored)
        {
            return null;
        }

        BatchLog log = await logs.ReadAsync(id, cancellationToken);
        return View(stored, log, units);
    }

    private BatchView View(StoredBatch stored, BatchLog log, UnitSystem units)
    {
        DateTimeOffset now = clock.GetUtcNow();
        BatchView bare = new(stored, log, now) { Zone = ZoneOf(stored.Snapshot?.Kitchen.TimeZoneId) };
        if (stored.Snapshot is not { } snapshot)
        {
            return bare;
        }

        TypedForm query = TypedForm.From(QueryHelpers.ParseQuery(stored.Query));
        PlanView plan = plans.Plan(PlanQuery.InUnits(query, units, units), units, new PlanningBook(snapshot.Recipes, snapshot.Larder, snapshot.Kitchen), stored.Summary.Begins);
        if (plan.Plan is not { } planned)
        {
            return bare;
        }

        Batch batch = new()
        {
            Id = stored.Summary.Id,
            Name = stored.Summary.Name,
            Planned = planned,
            Limit = StandardLimits.Find(stored.LimitId) ?? StandardLimits.Default,
            StartedAt = stored.Summary.Started,
        };
        return bare with { Course = BatchReplanner.Replan(batch, log, now), Plan = plan };
    }

    private static TimeZoneInfo ZoneOf(string? id) =>
        id is not null && TimeZoneInfo.TryFindSystemTimeZoneById(id, out TimeZoneInfo? zone) ? zone : TimeZoneInfo.Utc;
}
