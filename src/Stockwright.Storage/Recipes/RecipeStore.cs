using Microsoft.EntityFrameworkCore;
using Stockwright.Recipes;

namespace Stockwright.Storage.Recipes;

/// <summary>A recipe of the cook's own.</summary>
/// <param name="Id">Stable name used in links.</param>
/// <param name="Name">What the cook calls it.</param>
/// <param name="Recipe">The recipe; null when the stored text cannot be read.</param>
/// <param name="Trouble">Why it cannot be read, for the cook; null when it can.</param>
/// <param name="Updated">When it was last written.</param>
/// <param name="Version">Version an edit must hand back.</param>
public sealed record OwnRecipe(string Id, string Name, StockRecipe? Recipe, string? Trouble, DateTimeOffset Updated, int Version);

/// <summary>The cook's own recipes, beside the standing ones.</summary>
public sealed class RecipeStore(IDbContextFactory<StockwrightContext> contexts, KitchenScope scope, TimeProvider time)
{
    private int Key => scope.KitchenId;

    /// <summary>The cook's own recipes, by name.</summary>
    public async Task<IReadOnlyList<OwnRecipe>> ListAsync(CancellationToken cancellationToken = default)
    {
        await using StockwrightContext context = await contexts.CreateDbContextAsync(cancellationToken);
        List<OwnRecipeEntity> rows = await context.Recipes.AsNoTracking()
            .Where(row => row.KitchenId == Key)
            .OrderBy(row => row.Name).ThenBy(row => row.Id)
            .ToListAsync(cancellationToken);
        return [.. rows.Select(Read)];
    }

    /// <summary>A page of the cook's own recipes, by name.</summary>
    /// <param name="page">Number of the page, from 1.</param>
    /// <param name="size">Rows on a page.</param>
    /// <param name="cancellationToken">Cancels the work.</param>
    public async Task<ListPage<OwnRecipe>> PageAsync(int page, int size, CancellationToken cancellationToken = default)
    {
        await using StockwrightContext context = await contexts.CreateDbContextAsync(cancellationToken);
        IQueryable<OwnRecipeEntity> all = context.Recipes.AsNoTracking().Where(row => row.KitchenId == Key);
        ListPage<OwnRecipe> empty = ListPage<OwnRecipe>.Of(await all.CountAsync(cancellationToken), page, size);
        List<OwnRecipeEntity> rows = await all.OrderBy(row => row.Name).ThenBy(row => row.Id).Skip(empty.Skipped).Take(size).ToListAsync(cancellationToken);
        return empty with { Rows = [.. rows.Select(Read)] };
    }

    /// <summary>Finds one of the cook's own recipes; null when there is none.</summary>
    public async Task<OwnRecipe?> FindAsync(string id, CancellationToken cancellationToken = default)
    {
        await using StockwrightContext context = await contexts.CreateDbContextAsync(cancellationToken);
        OwnRecipeEntity? row = await context.Recipes.AsNoTracking()
            .SingleOrDefaultAsync(recipe => recipe.KitchenId == Key && recipe.Id == id, cancellationToken);
        return row is null ? null : Read(row);
    }

    /// <summary>The standing recipes followed by the cook's own that can be read.</summary>
    public async Task<RecipeBook> BookAsync(RecipeBook standing, CancellationToken cancellationToken = default)
    {
        ArgumentNullException.ThrowIfNull(standing);
        IReadOnlyList<OwnRecipe> own = await ListAsync(cancellationToken);
        return own.Count == 0
            ? standing
            : new RecipeBook([.. standing.Recipes, .. own.Select(row => row.Recipe).OfType<StockRecipe>()]);
    }

    /// <summary>Keeps a new recipe under a new stable name made from its name.</summary>
    /// <param name="recipe">The recipe; its stable name is not used.</param>
    /// <param name="standing">The standing recipes, whose stable names are taken.</param>
    /// <param name="formKey">Key of the form: the same one sent again adds nothing. Null when it has none.</param>
    /// <param name="cancellationToken">Cancels the work.</param>
    /// <returns>The stable name given.</returns>
    public Task<string> AddAsync(StockRecipe recipe, RecipeBook standing, string? formKey = null, CancellationToken cancellationToken = default)
    {
        ArgumentNullException.ThrowIfNull(recipe);
        ArgumentNullException.ThrowIfNull(standing);

        return contexts.AddNamedAsync(
            formKey,
            time.GetUtcNow(),
            async context =>
            {
                List<string> own = await context.Recipes.Where(row => row.KitchenId == Key).Select(row => row.Id).ToListAsync(cancellationToken);
                HashSet<string> taken = [.. own, .. standing.Recipes.Select(row => row.Id)];
                string id = StableNames.Make(recipe.Name, "recipe", taken);
                OwnRecipeEntity added = new() { KitchenId = Key, Id = id, Name = "", Document = "", Version = 1 };
                Take(added, recipe);
                context.Add(added);
                return id;
            },
            cancellationToken);
    }

    /// <summary>Writes a recipe over the one with the same stable name.</summary>
    public async Task<SaveOutcome> SaveAsync(StockRecipe recipe, int version, CancellationToken cancellationToken = default)
    {
        ArgumentNullException.ThrowIfNull(recipe);
        await using StockwrightContext context = await contexts.CreateDbContextAsync(cancellationToken);
        OwnRecipeEntity? row = await context.Recipes.FindAsync([Key, recipe.Id], cancellationToken);
        return await context.EditAsync(row, version, entity => Take(entity, recipe), cancellationToken);
    }

    /// <summary>Deletes one of the cook's own recipes; saved plans keep their copy.</summary>
    public async Task<SaveOutcome> DeleteAsync(string id, int version, CancellationToken cancellationToken = default)
    {
        await using StockwrightContext context = await contexts.CreateDbContextAsync(cancellationToken);
        OwnRecipeEntity? row = await context.Recipes.FindAsync([Key, id], cancellationToken);
        return await context.RemoveAsync(row, version, cancellationToken);
    }

    private static OwnRecipe Read(OwnRecipeEntity row)
    {
        try
        {
            // The row's stable name rules: it is what links and forms hold.
            return new OwnRecipe(row.Id, row.Name, RecipeText.Read(row.Document) with { Id = row.Id }, null, UtcMoment.Of(row.UpdatedUtc), row.Version);
        }
        catch (StoredDocumentException trouble)
        {
            return new OwnRecipe(row.Id, row.Name, null, trouble.Message, UtcMoment.Of(row.UpdatedUtc), row.Version);
        }
    }

    private void Take(OwnRecipeEntity row, StockRecipe recipe)
    {
        row.Name = recipe.Name;
        row.CopiedFrom = recipe.CopiedFrom;
        row.Document = RecipeText.Write(recipe with { Id = row.Id });
        row.UpdatedUtc = time.GetUtcNow().UtcDateTime;
    }
}
