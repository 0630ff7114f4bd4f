using Microsoft.EntityFrameworkCore;
using Stockwright.Storage.Entities;

namespace Stockwright.Storage;

/// <summary>One line of the list of saved plans.</summary>
/// <param name="Id">Permanent id.</param>
/// <param name="Name">What the cook calls it.</param>
/// <param name="Note">The cook's note; empty when there is none.</param>
/// <param name="RecipeName">Recipe.</param>
/// <param name="PotName">Pot.</param>
/// <param name="Query">The planner's query.</param>
/// <param name="Created">When it was saved.</param>
/// <param name="Updated">When it was last renamed or noted.</param>
/// <param name="Version">Version an edit must hand back.</param>
public sealed record PlanSummary(
    Guid Id,
    string Name,
    string Note,
    string RecipeName,
    string PotName,
    string Query,
    DateTimeOffset Created,
    DateTimeOffset Updated,
    int Version);

/// <summary>A saved plan.</summary>
/// <param name="Summary">Name, dates, query.</param>
/// <param name="Snapshot">What it was worked out from; null when that cannot be read.</param>
/// <param name="Trouble">Why it cannot be read, for the cook; null when it can.</param>
public sealed record SavedPlan(PlanSummary Summary, PlanSnapshot? Snapshot, string? Trouble);

/// <summary>Saved plans.</summary>
public sealed class PlanStore(IDbContextFactory<StockwrightContext> contexts, TimeProvider time)
{
    private const int Key = StockwrightContext.TheKitchen;

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
            .Select(row => new { row.Id, row.Name, row.Note, row.RecipeName, row.PotName, row.Query, row.CreatedUtc, row.UpdatedUtc, row.Version })
            .ToListAsync(cancellationToken);
        return empty with
        {
            Rows = [.. rows.Select(row => new PlanSummary(
                row.Id, row.Name, row.Note, row.RecipeName, row.PotName, row.Query, UtcMoment.Of(row.CreatedUtc), UtcMoment.Of(row.UpdatedUtc), row.Version))],
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
            row.Id, row.Name, row.Note, row.RecipeName, row.PotName, row.Query, UtcMoment.Of(row.CreatedUtc), UtcMoment.Of(row.UpdatedUtc), row.Version);
        try
        {
            return new SavedPlan(summary, PlanSnapshot.Parse(row.Snapshot), null);
        }
        catch (StoredDocumentException trouble)
        {
            return new SavedPlan(summary, null, trouble.Message);
        }
    }

    /// <summary>Saves a plan.</summary>
    /// <param name="name">What the cook calls it.</param>
    /// <param name="query">The planner's query.</param>
    /// <param name="snapshot">What it was worked out from.</param>
    /// <param name="note">The cook's note; may be empty.</param>
    /// <param name="formKey">Key of the form: the same one sent again adds nothing. Null when it has none.</param>
    /// <param name="cancellationToken">Cancels the work.</param>
    /// <returns>Its permanent id.</returns>
    public Task<Guid> AddAsync(
        string name, string query, PlanSnapshot snapshot, string note = "", string? formKey = null, CancellationToken cancellationToken = default)
    {
        ArgumentNullException.ThrowIfNull(snapshot);
        return AddRowAsync(NewRow(name, query, snapshot, note, time.GetUtcNow()), formKey, cancellationToken);
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

    internal static SavedPlanEntity NewRow(string name, string query, PlanSnapshot snapshot, string note, DateTimeOffset now) => new()
    {
        Id = Guid.CreateVersion7(now),
        KitchenId = Key,
        Name = name,
        Note = note,
        RecipeName = snapshot.Recipe.Name,
        PotName = snapshot.Kitchen.Pots[0].Name,
        Query = query,
        Snapshot = snapshot.ToJson(),
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

    /// <summary>Copies a plan, snapshot and all, under a new name.</summary>
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

    /// <summary>Deletes a plan.</summary>
    public async Task<SaveOutcome> DeleteAsync(Guid id, int version, CancellationToken cancellationToken = default)
    {
        await using StockwrightContext context = await contexts.CreateDbContextAsync(cancellationToken);
        SavedPlanEntity? row = await context.Plans.SingleOrDefaultAsync(plan => plan.KitchenId == Key && plan.Id == id, cancellationToken);
        return await context.RemoveAsync(row, version, cancellationToken);
    }
}
