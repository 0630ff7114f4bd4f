using Stockwright.Kitchen;
using Stockwright.Larder;
using Stockwright.Planning;
using Stockwright.Recipes;
using Stockwright.Storage.Documents;
using Stockwright.Storage.Mapping;

namespace Stockwright.Storage;

/// <summary>
/// Everything a plan was worked out from, so that a saved plan reads the same after the kitchen, the recipe or the
/// larder has changed: the recipe, the ingredients it uses, and the kitchen with the plan's pot and hob first.
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

    /// <summary>Keeps what a request was made from.</summary>
    /// <param name="request">The resolved request.</param>
    /// <param name="kitchenName">What the cook calls the kitchen.</param>
    /// <param name="timeZoneId">IANA name of the kitchen's time zone.</param>
    public static PlanSnapshot Of(PlanRequest request, string kitchenName, string timeZoneId)
    {
        ArgumentNullException.ThrowIfNull(request);

        HashSet<string> used = [.. request.Recipe.IngredientIds];
        if (request.Goal is PlanGoal.UseBones goal)
        {
            used.UnionWith(goal.Bones.Select(bones => bones.IngredientId));
        }

        return new PlanSnapshot
        {
            Recipe = request.Recipe,
            Larder = new LarderTable(request.Larder.Ingredients.Where(row => used.Contains(row.Id))),
            Kitchen = new KitchenSetup
            {
                Name = kitchenName,
                TimeZoneId = timeZoneId,
                Site = request.Site,
                Pots = [request.Pot, .. request.OtherPots.Where(pot => !string.Equals(pot.Id, request.Pot.Id, StringComparison.Ordinal))],
                Hobs = [request.Hob],
                Oven = request.Oven,
                Trays = request.Trays,
            },
        };
    }

    /// <summary>Reads a stored snapshot.</summary>
    /// <exception cref="StoredDocumentException">The text is damaged or was written by a newer version.</exception>
    public static PlanSnapshot Parse(string json)
    {
        SnapshotDocument document = DocumentJson.Read<SnapshotDocument>(json, "plan");
        return document.Format == SnapshotDocument.CurrentFormat
            ? SnapshotMapping.FromDocument(document)
            : throw new StoredDocumentException($"The stored plan has format {document.Format}; this version reads format {SnapshotDocument.CurrentFormat}.");
    }

    /// <summary>Writes the snapshot as it is stored.</summary>
    public string ToJson() => DocumentJson.Write(SnapshotMapping.ToDocument(this));
}
