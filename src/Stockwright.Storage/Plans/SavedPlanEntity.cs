namespace Stockwright.Storage.Plans;

internal sealed class SavedPlanEntity : IVersioned
{
    public Guid Id { get; set; }

    public int KitchenId { get; set; }

    public required string Name { get; set; }

    public string Note { get; set; } = "";

    /// <summary>For the list, so that it need not open every snapshot.</summary>
    public required string RecipeName { get; set; }

    public required string PotName { get; set; }

    /// <summary>What was asked, as a <see cref="StoredPlan"/>; null in a row of a version before it that could not be turned into one.</summary>
    public string? Document { get; set; }

    /// <summary>The planner's address, as versions before documents kept it; empty since.</summary>
    public string Query { get; set; } = "";

    /// <summary>What it named, as a <see cref="SnapshotDocument"/>; empty since.</summary>
    public string Snapshot { get; set; } = "";

    public DateTime CreatedUtc { get; set; }

    public DateTime UpdatedUtc { get; set; }

    public int Version { get; set; }
}
