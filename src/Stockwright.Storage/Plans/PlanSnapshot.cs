using Stockwright.Kitchen;
using Stockwright.Larder;
using Stockwright.Recipes;

namespace Stockwright.Storage.Plans;

/// <summary>
/// What versions before documents kept beside the address of a plan: the recipe, the ingredients it uses, and the kitchen with the plan's pot and
/// hob first. Read to turn such plans into documents; no longer written.
/// </summary>
public sealed record PlanSnapshot
{
    /// <summary>The recipe.</summary>
    public required StockRecipe Recipe { get; init; }

    /// <summary>The ingredients the recipe and the goal name, and no others.</summary>
    public required LarderTable Larder { get; init; }

    /// <summary>The kitchen: the plan's pot first, its hob alone, its oven and trays.</summary>
    public required KitchenSetup Kitchen { get; init; }

    /// <summary>A recipe book of the one recipe.</summary>
    public RecipeBook Recipes => new([Recipe]);

    /// <summary>Reads a stored snapshot.</summary>
    /// <exception cref="StoredDocumentException">The text is damaged or was written by a newer version.</exception>
    public static PlanSnapshot Parse(string json)
    {
        SnapshotDocument document = DocumentJson.Read<SnapshotDocument>(json, "plan");
        return document.Format == SnapshotDocument.CurrentFormat
            ? SnapshotMapping.FromDocument(document)
            : throw new StoredDocumentException($"The stored plan has format {document.Format}; this version reads format {SnapshotDocument.CurrentFormat}.");
    }
}
