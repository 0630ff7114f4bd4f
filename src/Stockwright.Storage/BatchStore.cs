using Microsoft.EntityFrameworkCore;
using Stockwright.Storage.Entities;

namespace Stockwright.Storage;

/// <summary>One line of the list of batches.</summary>
/// <param name="Id">Permanent id.</param>
/// <param name="Name">What the cook calls it.</param>
/// <param name="RecipeName">Recipe.</param>
/// <param name="PotName">Pot.</param>
/// <param name="Begins">When the cook begins by the plan.</param>
/// <param name="Started">When it was started in the book.</param>
/// <param name="IsClosed">True when its record is closed.</param>
public sealed record BatchSummary(Guid Id, string Name, string RecipeName, string PotName, DateTimeOffset Begins, DateTimeOffset Started, bool IsClosed);

/// <summary>A batch as stored.</summary>
/// <param name="Summary">Name and dates.</param>
/// <param name="Query">The planner's query, the moment it begins spelled out.</param>
/// <param name="Snapshot">What the plan was reckoned with; null when that cannot be read.</param>
/// <param name="Trouble">Why it cannot be read, for the cook; null when it can.</param>
/// <param name="PlanText">The whole plan as it was given then, as JSON.</param>
/// <param name="LimitId">Cooling limit chosen.</param>
public sealed record StoredBatch(BatchSummary Summary, string Query, PlanSnapshot? Snapshot, string? Trouble, string PlanText, string LimitId);

/// <summary>What a new batch is made of.</summary>
/// <param name="Id">Made where the batch was started, so that a form sent twice starts one batch.</param>
/// <param name="Name">What the cook calls it.</param>
/// <param name="Query">The planner's query, the moment it begins spelled out.</param>
/// <param name="Snapshot">What the plan was reckoned with.</param>
/// <param name="PlanText">The whole plan as given, as JSON.</param>
/// <param name="LimitId">Cooling limit chosen.</param>
/// <param name="Begins">When the cook begins by the plan.</param>
public sealed record NewBatch(Guid Id, string Name, string Query, PlanSnapshot Snapshot, string PlanText, string LimitId, DateTimeOffset Begins);

/// <summary>Batches as they were started.</summary>
public sealed class BatchStore(IDbContextFactory<StockwrightContext> contexts, TimeProvider time)
{
    private const int Key = StockwrightContext.TheKitchen;
    private const string ClosedWord = "closed";

    /// <summary>Batches, those begun last first.</summary>
    /// <param name="open">True for those whose record is open only.</param>
    /// <param name="most">As many as this.</param>
    /// <param name="cancellationToken">Gives up.</param>
    public async Task<IReadOnlyList<BatchSummary>> ListAsync(bool open = false, int most = 200, CancellationToken cancellationToken = default)
    {
        await using StockwrightContext context = await contexts.CreateDbContextAsync(cancellationToken);
        return await Summaries(context)
            .Where(batch => !open || !batch.IsClosed)
            .OrderByDescending(batch => batch.Begins).ThenBy(batch => batch.Id)
            .Take(most)
            .Select(batch => new BatchSummary(
                batch.Id, batch.Name, batch.RecipeName, batch.PotName, UtcMoment.Of(batch.Begins), UtcMoment.Of(batch.Started), batch.IsClosed))
            .ToListAsync(cancellationToken);
    }

    /// <summary>Finds a batch; null when there is none.</summary>
    public async Task<StoredBatch?> FindAsync(Guid id, CancellationToken cancellationToken = default)
    {
        await using StockwrightContext context = await contexts.CreateDbContextAsync(cancellationToken);
        BatchEntity? row = await context.Batches.AsNoTracking().SingleOrDefaultAsync(batch => batch.KitchenId == Key && batch.Id == id, cancellationToken);
        if (row is null)
        {
            return null;
        }

        bool closed = await Summaries(context).Where(batch => batch.Id == id).Select(batch => batch.IsClosed).SingleAsync(cancellationToken);
        BatchSummary summary = new(row.Id, row.Name, row.RecipeName, row.PotName, UtcMoment.Of(row.BeginsUtc), UtcMoment.Of(row.StartedUtc), closed);
        try
        {
            return new StoredBatch(summary, row.Query, PlanSnapshot.Parse(row.Snapshot), null, row.PlanText, row.LimitId);
        }
        catch (StoredDocumentException trouble)
        {
            return new StoredBatch(summary, row.Query, null, trouble.Message, row.PlanText, row.LimitId);
        }
    }

    /// <summary>Starts a batch; one that was started under the same id before is left as it is.</summary>
    public async Task StartAsync(NewBatch batch, CancellationToken cancellationToken = default)
    {
        ArgumentNullException.ThrowIfNull(batch);
        await using StockwrightContext context = await contexts.CreateDbContextAsync(cancellationToken);
        context.Add(new BatchEntity
        {
            Id = batch.Id,
            KitchenId = Key,
            Name = batch.Name,
            RecipeName = batch.Snapshot.Recipe.Name,
            PotName = batch.Snapshot.Kitchen.Pots[0].Name,
            Query = batch.Query,
            Snapshot = batch.Snapshot.ToJson(),
            PlanText = batch.PlanText,
            LimitId = batch.LimitId,
            BeginsUtc = batch.Begins.UtcDateTime,
            StartedUtc = time.GetUtcNow().UtcDateTime,
        });
        try
        {
            await context.SaveChangesAsync(cancellationToken);
        }
        catch (DbUpdateException) when (context.Batches.AsNoTracking().Any(row => row.Id == batch.Id))
        {
        }
    }

    /// <summary>The secret part of the address of the kitchen's calendar feed; made when first asked for.</summary>
    /// <param name="renew">True to make a new one: the old address stops working.</param>
    /// <param name="cancellationToken">Gives up.</param>
    public async Task<string> CalendarTokenAsync(bool renew = false, CancellationToken cancellationToken = default)
    {
        await using StockwrightContext context = await contexts.CreateDbContextAsync(cancellationToken);
        string fresh = Convert.ToHexStringLower(System.Security.Cryptography.RandomNumberGenerator.GetBytes(20));
        await context.Kitchens
            .Where(row => row.Id == Key && (renew || row.CalendarToken == null))
            .ExecuteUpdateAsync(row => row.SetProperty(kitchen => kitchen.CalendarToken, fresh), cancellationToken);
        return await context.Kitchens.Where(row => row.Id == Key).Select(row => row.CalendarToken!).SingleAsync(cancellationToken);
    }

    private static IQueryable<SummaryRow> Summaries(StockwrightContext context) =>
        context.Batches.AsNoTracking().Where(row => row.KitchenId == Key).Select(row => new SummaryRow
        {
            Id = row.Id,
            Name = row.Name,
            RecipeName = row.RecipeName,
            PotName = row.PotName,
            Begins = row.BeginsUtc,
            Started = row.StartedUtc,
            IsClosed = context.LogEntries.Any(entry => entry.BatchId == row.Id && entry.Kind == ClosedWord
                && !context.LogEntries.Any(later => later.BatchId == row.Id && later.Corrects == entry.Id)),
        });

    private sealed class SummaryRow
    {
        public Guid Id { get; init; }

        public required string Name { get; init; }

        public required string RecipeName { get; init; }

        public required string PotName { get; init; }

        public DateTime Begins { get; init; }

        public DateTime Started { get; init; }

        public bool IsClosed { get; init; }
    }
}
