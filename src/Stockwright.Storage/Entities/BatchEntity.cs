namespace Stockwright.Storage.Entities;

/// <summary>A batch as it was started. Never changed afterwards: what happens to it stands in its log.</summary>
internal sealed class BatchEntity
{
    public Guid Id { get; set; }

    public int KitchenId { get; set; }

    public required string Name { get; set; }

    /// <summary>For lists, so that they need not open every snapshot.</summary>
    public required string RecipeName { get; set; }

    public required string PotName { get; set; }

    public required string Query { get; set; }

    /// <summary>What the plan was worked out from, as a <see cref="Documents.SnapshotDocument"/>.</summary>
    public required string Snapshot { get; set; }

    /// <summary>The whole answer as it was given, so that a later version of the model cannot change what was planned.</summary>
    public required string PlanText { get; set; }

    public required string LimitId { get; set; }

    /// <summary>When the cook begins by the plan.</summary>
    public DateTime BeginsUtc { get; set; }

    public DateTime StartedUtc { get; set; }
}
