namespace Stockwright.Storage.Batches;

/// <summary>A batch as it was started. Never changed afterwards: what happens to it stands in its log.</summary>
internal sealed class BatchEntity
{
    public Guid Id { get; set; }

    public int KitchenId { get; set; }

    public required string Name { get; set; }

    /// <summary>For lists, so that they need not open every snapshot.</summary>
    public required string RecipeName { get; set; }

    public required string PotName { get; set; }

    /// <summary>The planner's address, as versions before documents kept it; empty since.</summary>
    public string Query { get; set; } = "";

    /// <summary>What it named, as a <see cref="SnapshotDocument"/>; empty since.</summary>
    public string Snapshot { get; set; } = "";

    /// <summary>The whole answer as the interface for programs gave it then, for exports.</summary>
    public required string PlanText { get; set; }

    public required string LimitId { get; set; }

    /// <summary>When the cook begins by the plan.</summary>
    public DateTime BeginsUtc { get; set; }

    public DateTime StartedUtc { get; set; }
}

/// <summary>The plan a batch was started from: added with it, or once for a batch of a version before documents, and never changed.</summary>
internal sealed class BatchPlanEntity
{
    public Guid BatchId { get; set; }

    /// <summary>As a <see cref="StoredPlan"/>.</summary>
    public required string Document { get; set; }
}
