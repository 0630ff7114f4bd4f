using Microsoft.EntityFrameworkCore;

namespace Stockwright.Storage.Batches;

/// <summary>One line of the list of batches.</summary>
/// <param name="Id">Permanent id.</param>
/// <param name="Name">What the cook calls it.</param>
/// <param name="RecipeName">Recipe.</param>
/// <param name="PotName">Pot.</param>
/// <param name="Begins">When the cook begins by the plan.</param>
/// <param name="Started">When it was stored.</param>
/// <param name="IsClosed">True when its record is closed.</param>
public sealed record BatchSummary(Guid Id, string Name, string RecipeName, string PotName, DateTimeOffset Begins, DateTimeOffset Started, bool IsClosed)
{
    /// <summary>True when it was put aside as never cooked, which closes the record too.</summary>
    public bool IsNeverCooked { get; init; }
}

/// <summary>A batch as stored.</summary>
/// <param name="Summary">Name and dates.</param>
/// <param name="PlanText">The whole plan as the interface for programs gave it then, for exports.</param>
/// <param name="LimitId">Cooling limit chosen.</param>
public sealed record StoredBatch(BatchSummary Summary, string PlanText, string LimitId);

/// <summary>The plan a batch was started from.</summary>
/// <param name="Document">What was asked and the plan that came of it; null when that cannot be read.</param>
/// <param name="Trouble">Why it cannot be read, for the cook; null when it can.</param>
public sealed record StoredBatchPlan(StoredPlan? Document, string? Trouble)
{
    /// <summary>The planner's address it was kept as by a version before documents, where it could not be turned into one; else null.</summary>
    public string? OldQuery { get; init; }

    /// <summary>IANA name of the time zone of the kitchen it was started in; UTC where that cannot be read.</summary>
    public required string TimeZoneId { get; init; }
}

/// <summary>What a new batch is made of.</summary>
/// <param name="Id">Made where the batch was started, so that a form sent twice starts one batch.</param>
/// <param name="Name">What the cook calls it.</param>
/// <param name="Document">What was asked, and the plan of one potful that came of it.</param>
/// <param name="PlanText">The whole plan as the interface for programs gives it, for exports.</param>
/// <param name="LimitId">Cooling limit chosen.</param>
/// <param name="Begins">When the cook begins by the plan.</param>
public sealed record NewBatch(Guid Id, string Name, StoredPlan Document, string PlanText, string LimitId, DateTimeOffset Begins);

/// <summary>Batches as they were started.</summary>
public sealed class BatchStore(IDbContextFactory<StockwrightContext> contexts, KitchenScope scope, TimeProvider time)
{
    private const string ClosedWord = "closed";
    private const string NeverCookedWord = "never-cooked";

    private int Key => scope.KitchenId;

    /// <summary>Every batch whose record is open, those begun last first.</summary>
    public async Task<IReadOnlyList<BatchSummary>> OpenAsync(CancellationToken cancellationToken = default)
    {
        await using StockwrightContext context = await contexts.CreateDbContextAsync(cancellationToken);
        return await ReadAsync(Sorted(Summaries(context).Where(batch => !batch.IsClosed)), cancellationToken);
    }

    /// <summary>A page of the batches, those begun last first.</summary>
    /// <param name="closed">True for those whose record is closed, false for the open ones.</param>
    /// <param name="page">Number of the page, from 1.</param>
    /// <param name="size">Rows on a page.</param>
    /// <param name="cancellationToken">Cancels the work.</param>
    public async Task<ListPage<BatchSummary>> PageAsync(bool closed, int page, int size, CancellationToken cancellationToken = default)
    {
        await using StockwrightContext context = await contexts.CreateDbContextAsync(cancellationToken);
        IQueryable<SummaryRow> rows = Summaries(context).Where(batch => batch.IsClosed == closed);
        ListPage<BatchSummary> empty = ListPage<BatchSummary>.Of(await rows.CountAsync(cancellationToken), page, size);
        return empty with { Rows = await ReadAsync(Sorted(rows).Skip(empty.Skipped).Take(size), cancellationToken) };
    }

    /// <summary>Batches after one of the list, those begun last first: what was started meanwhile does not shift the rest.</summary>
    /// <param name="after">The last batch read before; null to begin at the top.</param>
    /// <param name="most">As many as this.</param>
    /// <param name="cancellationToken">Cancels the work.</param>
    /// <returns>The batches; null when there is none with that id.</returns>
    public async Task<IReadOnlyList<BatchSummary>?> AfterAsync(Guid? after, int most, CancellationToken cancellationToken = default)
    {
        await using StockwrightContext context = await contexts.CreateDbContextAsync(cancellationToken);
        IQueryable<SummaryRow> rows = Summaries(context);
        if (after is { } last)
        {
            DateTime? begun = await rows.Where(batch => batch.Id == last).Select(batch => (DateTime?)batch.Begins).SingleOrDefaultAsync(cancellationToken);
            if (begun is not { } begins)
            {
                return null;
            }

            rows = rows.Where(batch => batch.Begins < begins || (batch.Begins == begins && batch.Id.CompareTo(last) > 0));
        }

        return await ReadAsync(Sorted(rows).Take(most), cancellationToken);
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

        BatchSummary summary = (await ReadAsync(Summaries(context).Where(batch => batch.Id == id), cancellationToken))[0];
        return new StoredBatch(summary, row.PlanText, row.LimitId);
    }

    /// <summary>The plan a batch was started from. It never changes, so it need be read once only.</summary>
    /// <param name="id">The batch, which is there.</param>
    /// <param name="cancellationToken">Cancels the work.</param>
    public async Task<StoredBatchPlan> PlanAsync(Guid id, CancellationToken cancellationToken = default)
    {
        await using StockwrightContext context = await contexts.CreateDbContextAsync(cancellationToken);
        var row = await context.Batches.AsNoTracking().Where(batch => batch.KitchenId == Key && batch.Id == id)
            .Select(batch => new { batch.Query, batch.Snapshot, Document = context.BatchPlans.Where(plan => plan.BatchId == id).Select(plan => plan.Document).FirstOrDefault() })
            .SingleAsync(cancellationToken);
        (StoredPlan? document, string? trouble) = OldPlan.Read(row.Document);
        return new StoredBatchPlan(document, trouble)
        {
            OldQuery = document is null && row.Query.Length > 0 ? row.Query : null,
            TimeZoneId = document?.Request.Schedule.Zone.Id ?? OldPlan.TimeZoneId(row.Snapshot),
        };
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
            RecipeName = batch.Document.Request.Recipe.Name,
            PotName = batch.Document.Request.Pot.Name,
            PlanText = batch.PlanText,
            LimitId = batch.LimitId,
            BeginsUtc = batch.Begins.UtcDateTime,
            StartedUtc = time.GetUtcNow().UtcDateTime,
        });
        context.Add(new BatchPlanEntity { BatchId = batch.Id, Document = batch.Document.ToJson() });
        try
        {
            await context.SaveChangesAsync(cancellationToken);
        }
        catch (DbUpdateException) when (context.Batches.AsNoTracking().Any(row => row.KitchenId == Key && row.Id == batch.Id))
        {
        }
    }

    /// <summary>Batches of a version before documents whose plan has not been turned into one.</summary>
    public async Task<IReadOnlyList<OldPlan>> OldAsync(CancellationToken cancellationToken = default)
    {
        await using StockwrightContext context = await contexts.CreateDbContextAsync(cancellationToken);
        return await context.Batches.AsNoTracking().Where(batch => batch.KitchenId == Key && !context.BatchPlans.Any(plan => plan.BatchId == batch.Id))
            .Select(batch => new OldPlan(batch.Id, batch.Query, batch.Snapshot, batch.PlanText) { Begins = UtcMoment.Of(batch.BeginsUtc) }).ToListAsync(cancellationToken);
    }

    /// <summary>Keeps the plan of an old batch as a document; the batch itself stays as it is.</summary>
    public async Task TurnAsync(Guid id, StoredPlan document, CancellationToken cancellationToken = default)
    {
        ArgumentNullException.ThrowIfNull(document);
        await using StockwrightContext context = await contexts.CreateDbContextAsync(cancellationToken);
        if (!await context.Batches.AnyAsync(batch => batch.KitchenId == Key && batch.Id == id, cancellationToken))
        {
            return;
        }

        context.Add(new BatchPlanEntity { BatchId = id, Document = document.ToJson() });
        try
        {
            await context.SaveChangesAsync(cancellationToken);
        }
        catch (DbUpdateException) when (context.BatchPlans.AsNoTracking().Any(row => row.BatchId == id))
        {
            // Another program started on the same data was first.
        }
    }

    /// <summary>The secret part of the address of the kitchen's calendar feed.</summary>
    public async Task<string> CalendarTokenAsync(CancellationToken cancellationToken = default)
    {
        await using StockwrightContext context = await contexts.CreateDbContextAsync(cancellationToken);
        return await context.Kitchens.Where(row => row.Id == Key).Select(row => row.CalendarToken!).SingleAsync(cancellationToken);
    }

    /// <summary>Makes a new secret: the old address of the calendar feed stops working.</summary>
    public async Task RenewCalendarTokenAsync(CancellationToken cancellationToken = default)
    {
        await using StockwrightContext context = await contexts.CreateDbContextAsync(cancellationToken);
        await context.GiveCalendarTokenAsync(Key, renew: true, cancellationToken);
    }

    private static IQueryable<SummaryRow> Sorted(IQueryable<SummaryRow> rows) => rows.OrderByDescending(batch => batch.Begins).ThenBy(batch => batch.Id);

    private static async Task<IReadOnlyList<BatchSummary>> ReadAsync(IQueryable<SummaryRow> rows, CancellationToken cancellationToken) =>
        [.. (await rows.ToListAsync(cancellationToken)).Select(Summary)];

    private static BatchSummary Summary(SummaryRow row) =>
        new(row.Id, row.Name, row.RecipeName, row.PotName, UtcMoment.Of(row.Begins), UtcMoment.Of(row.Started), row.IsClosed) { IsNeverCooked = row.IsNeverCooked };

    private IQueryable<SummaryRow> Summaries(StockwrightContext context) =>
        context.Batches.AsNoTracking().Where(row => row.KitchenId == Key).Select(row => new SummaryRow
        {
            Id = row.Id,
            Name = row.Name,
            RecipeName = row.RecipeName,
            PotName = row.PotName,
            Begins = row.BeginsUtc,
            Started = row.StartedUtc,
            IsClosed = context.LogEntries.Any(entry => entry.BatchId == row.Id && (entry.Kind == ClosedWord || entry.Kind == NeverCookedWord)
                && !context.LogEntries.Any(later => later.BatchId == row.Id && later.Corrects == entry.Id)),
            IsNeverCooked = context.LogEntries.Any(entry => entry.BatchId == row.Id && entry.Kind == NeverCookedWord
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

        public bool IsNeverCooked { get; init; }
    }
}
