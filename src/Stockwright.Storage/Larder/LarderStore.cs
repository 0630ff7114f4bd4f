using Microsoft.EntityFrameworkCore;
using Stockwright.Larder;

namespace Stockwright.Storage.Larder;

/// <summary>An ingredient of the cook's own, or a standard one the cook has changed.</summary>
/// <param name="Id">Stable name; that of the standard row when it replaces one.</param>
/// <param name="Name">What the cook calls it.</param>
/// <param name="Ingredient">The row; null when the stored text cannot be read.</param>
/// <param name="Trouble">Why it cannot be read, for the cook; null when it can.</param>
/// <param name="Updated">When it was last written.</param>
/// <param name="Version">Version an edit must hand back.</param>
public sealed record OwnIngredient(string Id, string Name, Ingredient? Ingredient, string? Trouble, DateTimeOffset Updated, int Version);

/// <summary>The cook's own ingredients, beside and over the standard table.</summary>
public sealed class LarderStore(IDbContextFactory<StockwrightContext> contexts, KitchenScope scope, TimeProvider time)
{
    private int Key => scope.KitchenId;

    /// <summary>The cook's own ingredients, by name.</summary>
    public async Task<IReadOnlyList<OwnIngredient>> ListAsync(CancellationToken cancellationToken = default)
    {
        await using StockwrightContext context = await contexts.CreateDbContextAsync(cancellationToken);
        List<OwnIngredientEntity> rows = await context.Ingredients.AsNoTracking()
            .Where(row => row.KitchenId == Key)
            .OrderBy(row => row.Name).ThenBy(row => row.Id)
            .ToListAsync(cancellationToken);
        return [.. rows.Select(Read)];
    }

    /// <summary>Finds one of the cook's own ingredients; null when there is none.</summary>
    public async Task<OwnIngredient?> FindAsync(string id, CancellationToken cancellationToken = default)
    {
        await using StockwrightContext context = await contexts.CreateDbContextAsync(cancellationToken);
        OwnIngredientEntity? row = await context.Ingredients.AsNoTracking()
            .SingleOrDefaultAsync(ingredient => ingredient.KitchenId == Key && ingredient.Id == id, cancellationToken);
        return row is null ? null : Read(row);
    }

    /// <summary>The standard table with the cook's own rows in place and added.</summary>
    public async Task<LarderTable> TableAsync(LarderTable standard, CancellationToken cancellationToken = default)
    {
        ArgumentNullException.ThrowIfNull(standard);
        IReadOnlyList<OwnIngredient> own = await ListAsync(cancellationToken);
        return own.Count == 0 ? standard : standard.With(own.Select(row => row.Ingredient).OfType<Ingredient>());
    }

    /// <summary>Keeps a new ingredient under a new stable name made from its name.</summary>
    /// <param name="ingredient">The ingredient; its stable name is not used.</param>
    /// <param name="standard">The standard table, whose stable names are taken.</param>
    /// <param name="formKey">Key of the form: the same one sent again adds nothing. Null when it has none.</param>
    /// <param name="cancellationToken">Cancels the work.</param>
    /// <returns>The stable name given.</returns>
    public Task<string> AddAsync(Ingredient ingredient, LarderTable standard, string? formKey = null, CancellationToken cancellationToken = default)
    {
        ArgumentNullException.ThrowIfNull(ingredient);
        ArgumentNullException.ThrowIfNull(standard);

        return contexts.AddNamedAsync(
            formKey,
            time.GetUtcNow(),
            async context =>
            {
                List<string> own = await context.Ingredients.Where(row => row.KitchenId == Key).Select(row => row.Id).ToListAsync(cancellationToken);
                HashSet<string> taken = [.. own, .. standard.Ingredients.Select(row => row.Id)];
                return Insert(context, ingredient with { Id = StableNames.Make(ingredient.Name, "ingredient", taken) });
            },
            cancellationToken);
    }

    /// <summary>Writes an ingredient over the one with the same stable name.</summary>
    /// <param name="ingredient">The ingredient.</param>
    /// <param name="version">Version the cook opened; zero for a standard row not changed before.</param>
    /// <param name="cancellationToken">Cancels the work.</param>
    public async Task<SaveOutcome> SaveAsync(Ingredient ingredient, int version, CancellationToken cancellationToken = default)
    {
        ArgumentNullException.ThrowIfNull(ingredient);
        await using StockwrightContext context = await contexts.CreateDbContextAsync(cancellationToken);
        OwnIngredientEntity? row = await context.Ingredients.FindAsync([Key, ingredient.Id], cancellationToken);
        if (row is null && version == 0)
        {
            Insert(context, ingredient);
            try
            {
                await context.SaveChangesAsync(cancellationToken);
                return SaveOutcome.Saved;
            }
            catch (DbUpdateException)
            {
                // Somebody changed the same standard row a moment earlier.
                return SaveOutcome.ChangedMeanwhile;
            }
        }

        return await context.EditAsync(row, version, entity => Take(entity, ingredient), cancellationToken);
    }

    /// <summary>Deletes one of the cook's own ingredients; a standard row it replaced shows again.</summary>
    public async Task<SaveOutcome> DeleteAsync(string id, int version, CancellationToken cancellationToken = default)
    {
        await using StockwrightContext context = await contexts.CreateDbContextAsync(cancellationToken);
        OwnIngredientEntity? row = await context.Ingredients.FindAsync([Key, id], cancellationToken);
        return await context.RemoveAsync(row, version, cancellationToken);
    }

    private static OwnIngredient Read(OwnIngredientEntity row)
    {
        try
        {
            Ingredient ingredient = DocumentJson.Read<IngredientDocument>(row.Document, "ingredient").ToIngredient();
            return new OwnIngredient(row.Id, row.Name, ingredient with { Id = row.Id }, null, UtcMoment.Of(row.UpdatedUtc), row.Version);
        }
        catch (StoredDocumentException trouble)
        {
            return new OwnIngredient(row.Id, row.Name, null, trouble.Message, UtcMoment.Of(row.UpdatedUtc), row.Version);
        }
    }

    private string Insert(StockwrightContext context, Ingredient ingredient)
    {
        OwnIngredientEntity row = new() { KitchenId = Key, Id = ingredient.Id, Name = "", Document = "", Version = 1 };
        Take(row, ingredient);
        context.Add(row);
        return row.Id;
    }

    private void Take(OwnIngredientEntity row, Ingredient ingredient)
    {
        row.Name = ingredient.Name;
        row.Document = DocumentJson.Write(IngredientDocument.From(ingredient));
        row.UpdatedUtc = time.GetUtcNow().UtcDateTime;
    }
}
