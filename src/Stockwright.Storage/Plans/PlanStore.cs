using Microsoft.EntityFrameworkCore;

namespace Stockwright.Storage.Plans;

/// <summary>One line of the list of saved plans.</summary>
/// <param name="Id">Permanent id.</param>
/// <param name="Name">What the cook calls it.</param>
/// <param name="Note">The cook's note; empty when there is none.</param>
/// <param name="RecipeName">Recipe.</param>
/// <param name="PotName">Pot.</param>
/// <param name="Created">When it was saved.</param>
/// <param name="Updated">When it was last renamed or noted.</param>
/// <param name="Version">Version an edit must hand back.</param>
public sealed record PlanSummary(
    Guid Id,
    string Name,
    string Note,
    string RecipeName,
    string PotName,
    DateTimeOffset Created,
    DateTimeOffset Updated,
    int Version);

/// <summary>A saved plan.</summary>
/// <param name="Summary">Name and dates.</param>
/// <param name="Document">What was asked; null when that cannot be read.</param>
/// <param name="Trouble">Why it cannot be read, for the cook; null when it can.</param>
public sealed record SavedPlan(PlanSummary Summary, StoredPlan? Document, string? Trouble)
{
    /// <summary>The planner's address it was kept as by a version before documents, where it could not be turned into one; else null.</summary>
    public string? OldQuery { get; init; }
}

/// <summary>Saved plans.</summary>
public sealed class PlanStore(IDbContextFactory<StockwrightContext> contexts, KitchenScope scope, TimeProvider time)
{
    private int Key => scope.KitchenId;

    /// <summary>A page of the saved plans, the one touched last first.</summary>
    /// <param name="page">Number of the page, from 1.</param>
    /// <param name="size">Rows on a page.</param>
    /// <param name="cancellationToken">Cancels the work.</param>
    public async Task<ListPage<PlanSummary>> PageAsync(int page, int size, CancellationToken cancellationToken = default)
    {
        await using StockwrightContext context = await contexts.CreateDbContextAsync(cancellationToken);
        IQueryable<SavedPlanEntity> all = context.Plans.AsNoTracking().Where(row => row.KitchenId == Key);
        ListPage<PlanSummary> empty = ListPage<PlanSummary>.Of(await all.CountAsync(cancellationToken), page, size);
        var rows = await all
            .OrderByDescending(row => row.UpdatedUtc).ThenBy(row => row.Id)
            .Skip(empty.Skipped).Take(size)
            .Select(row => new { row.Id, row.Name, row.Note, row.RecipeName, row.PotName, row.CreatedUtc, row.UpdatedUtc, row.Version })
            .ToListAsync(cancellationToken);
        return empty with
        {
            Rows = [.. rows.Select(row => new PlanSummary(
                row.Id, row.Name, row.Note, row.RecipeName, row.PotName, UtcMoment.Of(row.CreatedUtc), UtcMoment.Of(row.UpdatedUtc), row.Version))],
        };
    }

    /// <summary>Finds a saved plan; null when there is none.</summary>
    public async Task<SavedPlan?> FindAsync(Guid id, CancellationToken cancellationToken = default)
    {
        await using StockwrightContext context = await contexts.CreateDbContextAsync(cancellationToken);
        SavedPlanEntity? row = await context.Plans.AsNoTracking()
            .SingleOrDefaultAsync(plan => plan.KitchenId == Key && plan.Id == id, cancellationToken);
        if (row is null)
        {
            return null;
        }

        PlanSummary summary = new(
            row.Id, row.Name, row.Note, row.RecipeName, row.PotName, UtcMoment.Of(row.CreatedUtc), UtcMoment.Of(row.UpdatedUtc), row.Version);
        (StoredPlan? document, string? trouble) = OldPlan.Read(row.Document);
        return new SavedPlan(summary, document, trouble) { OldQuery = document is null && row.Query.Length > 0 ? row.Query : null };
    }

    /// <summary>Saves a plan.</summary>
    /// <param name="name">What the cook calls it.</param>
    /// <param name="document">What was asked.</param>
    /// <param name="note">The cook's note; may be empty.</param>
    /// <param name="formKey">Key of the form: the same one sent again adds nothing. Null when it has none.</param>
    /// <param name="cancellationToken">Cancels the work.</param>
    /// <returns>Its permanent id.</returns>
    public Task<Guid> AddAsync(
        string name, StoredPlan document, string note = "", string? formKey = null, CancellationToken cancellationToken = default)
    {
        ArgumentNullException.ThrowIfNull(document);
        return AddRowAsync(NewRow(Key, name, document, note, time.GetUtcNow()), formKey, cancellationToken);
    }

    private async Task<Guid> AddRowAsync(SavedPlanEntity row, string? formKey, CancellationToken cancellationToken)
    {
        string added = await contexts.AddNamedAsync(
            formKey,
            time.GetUtcNow(),
            context =>
            {
                context.Add(row);
                return Task.FromResult(row.Id.ToString());
            },
            cancellationToken);
        return Guid.Parse(added);
    }

    internal static SavedPlanEntity NewRow(int kitchenId, string name, StoredPlan document, string note, DateTimeOffset now) => new()
    {
        Id = Guid.CreateVersion7(now),
        KitchenId = kitchenId,
        Name = name,
        Note = note,
        RecipeName = document.Request.Recipe.Name,
        PotName = document.Request.Pot.Name,
        Document = document.ToJson(),
        CreatedUtc = now.UtcDateTime,
        UpdatedUtc = now.UtcDateTime,
        Version = 1,
    };

    /// <summary>Renames a plan and sets its note.</summary>
    public async Task<SaveOutcome> RenameAsync(Guid id, string name, string note, int version, CancellationToken cancellationToken = default)
    {
        await using StockwrightContext context = await contexts.CreateDbContextAsync(cancellationToken);
        SavedPlanEntity? row = await context.Plans.SingleOrDefaultAsync(plan => plan.KitchenId == Key && plan.Id == id, cancellationToken);
        return await context.EditAsync(
            row,
            version,
            plan =>
            {
                plan.Name = name;
                plan.Note = note;
                plan.UpdatedUtc = time.GetUtcNow().UtcDateTime;
            },
            cancellationToken);
    }

    /// <summary>Copies a plan, document and all, under a new name.</summary>
    /// <param name="id">The plan.</param>
    /// <param name="name">Name of the copy.</param>
    /// <param name="formKey">Key of the form: the same one sent again copies nothing. Null when it has none.</param>
    /// <param name="cancellationToken">Cancels the work.</param>
    /// <returns>The id of the copy; null when the plan is gone.</returns>
    public async Task<Guid?> CopyAsync(Guid id, string name, string? formKey = null, CancellationToken cancellationToken = default)
    {
        await using StockwrightContext context = await contexts.CreateDbContextAsync(cancellationToken);
        SavedPlanEntity? row = await context.Plans.AsNoTracking()
            .SingleOrDefaultAsync(plan => plan.KitchenId == Key && plan.Id == id, cancellationToken);
        if (row is null)
        {
            return null;
        }

        DateTimeOffset now = time.GetUtcNow();
        row.Id = Guid.CreateVersion7(now);
        row.Name = name;
        row.CreatedUtc = now.UtcDateTime;
        row.UpdatedUtc = now.UtcDateTime;
        row.Version = 1;
        return await AddRowAsync(row, formKey, cancellationToken);
    }

    /// <summary>Plans of a version before documents that have not been turned into one.</summary>
    public async Task<IReadOnlyList<OldPlan>> OldAsync(CancellationToken cancellationToken = default)
    {
        await using StockwrightContext context = await contexts.CreateDbContextAsync(cancellationToken);
        return await context.Plans.AsNoTracking().Where(plan => plan.KitchenId == Key && plan.Document == null).Select(plan => new OldPlan(plan.Id, plan.Query, plan.Snapshot, null)).ToListAsync(cancellationToken);
    }

    /// <summary>Keeps an old plan as a document; name, note and dates stay as they are.</summary>
    public async Task TurnAsync(Guid id, StoredPlan document, CancellationToken cancellationToken = default)
    {
        ArgumentNullException.ThrowIfNull(document);
        string text = document.ToJson();
        await using StockwrightContext context = await contexts.CreateDbContextAsync(cancellationToken);
        await context.Plans.Where(plan => plan.KitchenId == Key && plan.Id == id && plan.Document == null).ExecuteUpdateAsync(row => row.SetProperty(plan => plan.Document, text), cancellationToken);
    }

    /// <summary>Deletes a plan.</summary>
    public async Task<SaveOutcome> DeleteAsync(Guid id, int version, CancellationToken cancellationToken = default)
    {
        await using StockwrightContext context = await contexts.CreateDbContextAsync(cancellationToken);
        SavedPlanEntity? row = await context.Plans.SingleOrDefaultAsync(plan => plan.KitchenId == Key && plan.Id == id, cancellationToken);
        return await context.RemoveAsync(row, version, cancellationToken);
    }
}
