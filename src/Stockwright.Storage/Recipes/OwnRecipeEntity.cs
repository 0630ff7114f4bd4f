namespace Stockwright.Storage.Recipes;

internal sealed class OwnRecipeEntity : IVersioned
{
    public int KitchenId { get; set; }

    public required string Id { get; set; }

    public required string Name { get; set; }

    public string? CopiedFrom { get; set; }

    /// <summary>The recipe as a recipe file.</summary>
    public required string Document { get; set; }

    public DateTime UpdatedUtc { get; set; }

    public int Version { get; set; }
}
