namespace Stockwright.Storage.Entities;

internal sealed class SavedPlanEntity : IVersioned
{
    public Guid Id { get; set; }

    public int KitchenId { get; set; }

    public required string Name { get; set; }

    public string Note { get; set; } = "";

    /// <summary>For the list, so that it need not open every snapshot.</summary>
    public required string RecipeName { get; set; }

    public required string PotName { get; set; }

    public required string Query { get; set; }

    /// <summary>What the plan was worked out from, as a <see cref="Documents.SnapshotDocument"/>.</summary>
    public required string Snapshot { get; set; }

    public DateTime CreatedUtc { get; set; }

    public DateTime UpdatedUtc { get; set; }

    public int Version { get; set; }
}
