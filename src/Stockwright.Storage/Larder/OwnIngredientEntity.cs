namespace Stockwright.Storage.Larder;

internal sealed class OwnIngredientEntity : IVersioned
{
    public int KitchenId { get; set; }

    public required string Id { get; set; }

    public required string Name { get; set; }

    /// <summary>The row as an <see cref="IngredientDocument"/>.</summary>
    public required string Document { get; set; }

    public DateTime UpdatedUtc { get; set; }

    public int Version { get; set; }
}
