using Stockwright.Logbook;
using Xunit;

namespace Stockwright.Storage.Tests.Contract;

/// <summary>What every provider owes batches.</summary>
public abstract class BatchContract
{
    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    protected abstract TestDatabase NewDatabase();

    [Fact]
    public async Task A_batch_comes_back_as_it_was_started_also_after_a_restart()
    {
        await using TestDatabase database = NewDatabase();
        await database.StartAsync();
        NewBatch batch = await StartedBatches.NewAsync(database, "O'Brien's \"best\" 鍋", database.Clock.Now.AddHours(2));
        await database.Batches.StartAsync(batch, Stop);
        await database.StartAsync();
        StoredBatch stored = (await database.Batches.FindAsync(batch.Id, Stop))!;
        Assert.Equal(
            new BatchSummary(batch.Id, batch.Name, batch.Document.Request.Recipe.Name, "10 L pot", batch.Begins, database.Clock.Now, false), stored.Summary);
        StoredBatchPlan plan = await database.Batches.PlanAsync(batch.Id, Stop);
        Assert.Equal((null, batch.PlanText, batch.LimitId, null), (plan.OldQuery, stored.PlanText, stored.LimitId, plan.Trouble));
        Same.As(batch.Document, plan.Document);
        Assert.Equal(batch.Document.ToJson(), plan.Document!.ToJson());
        Assert.Null(await database.Batches.FindAsync(Guid.CreateVersion7(), Stop));
    }

    [Fact]
    public async Task A_form_sent_twice_starts_one_batch_and_leaves_the_first_as_it_was()
    {
        await using TestDatabase database = NewDatabase();
        await database.StartAsync();
        NewBatch batch = await StartedBatches.NewAsync(database);
        await Task.WhenAll(Enumerable.Range(0, 6).Select(_ => Task.Run(() => database.Batches.StartAsync(batch, Stop), Stop)));
        await database.Batches.StartAsync(batch with { Name = "Another name", PlanText = "" }, Stop);
        Assert.Equal("Sunday", Assert.Single((await database.Batches.AfterAsync(null, 100, Stop))!).Name);
        Assert.Equal(batch.PlanText, (await database.Batches.FindAsync(batch.Id, Stop))!.PlanText);
    }

    [Fact]
    public async Task Batches_are_listed_by_when_they_begin_and_open_ones_can_be_told_apart()
    {
        await using TestDatabase database = NewDatabase();
        await database.StartAsync();
        DateTimeOffset now = database.Clock.Now;
        Guid early = await StartedBatches.StartAsync(database, "early", now.AddHours(-5));
        Guid late = await StartedBatches.StartAsync(database, "late", now.AddHours(5));
        Guid middle = await StartedBatches.StartAsync(database, "middle", now);
        Assert.Equal([late, middle, early], (await database.Batches.AfterAsync(null, 100, Stop))!.Select(row => row.Id));
        Assert.Equal([late, middle], (await database.Batches.AfterAsync(null, 2, Stop))!.Select(row => row.Id));

        NewEntry closing = StartedBatches.Entry(database, middle, new LogFact.Closed("Less water"));
        await database.Logs.AppendAsync(closing, Stop);
        Assert.Equal([late, early], (await database.Batches.OpenAsync(Stop)).Select(row => row.Id));
        Assert.True((await database.Batches.FindAsync(middle, Stop))!.Summary.IsClosed);
        Assert.Equal([false, true, false], (await database.Batches.AfterAsync(null, 100, Stop))!.Select(row => row.IsClosed));

        // A closing taken back opens the record again; closing it once more closes it.
        NewEntry back = StartedBatches.Entry(database, middle, new LogFact.Withdrawn(), closing.Id);
        await database.Logs.AppendAsync(back, Stop);
        Assert.Equal([late, middle, early], (await database.Batches.OpenAsync(Stop)).Select(row => row.Id));
        await database.Logs.AppendAsync(StartedBatches.Entry(database, middle, new LogFact.Closed()), Stop);
        Assert.Equal([late, early], (await database.Batches.OpenAsync(Stop)).Select(row => row.Id));
    }

    [Fact]
    public async Task A_corrected_closing_still_closes_as_the_log_itself_has_it()
    {
        await using TestDatabase database = NewDatabase();
        await database.StartAsync();
        Guid batch = await StartedBatches.StartAsync(database);
        NewEntry closing = StartedBatches.Entry(database, batch, new LogFact.Closed("Less water"));
        await database.Logs.AppendAsync(closing, Stop);
        await database.Logs.AppendAsync(StartedBatches.Entry(database, batch, new LogFact.Closed("More water"), closing.Id), Stop);
        Assert.True((await database.Logs.ReadAsync(batch, Stop)).IsClosed);
        Assert.Empty(await database.Batches.OpenAsync(Stop));
    }

    [Fact]
    public async Task Of_many_closings_sent_at_once_one_stands_and_the_others_are_told()
    {
        await using TestDatabase database = NewDatabase();
        await database.StartAsync();
        Guid batch = await StartedBatches.StartAsync(database);
        NewEntry[] closings = [.. Enumerable.Range(0, 20).Select(number => StartedBatches.Entry(database, batch, number % 2 == 0 ? new LogFact.Closed($"no. {number}") : new LogFact.NeverCooked()))];
        Appended[] answers = await Task.WhenAll(closings.Select(closing => Task.Run(() => database.Logs.AppendAsync(closing, Stop), Stop)));
        Assert.Single(answers, answer => answer.Standing == AppendStanding.Stored);
        Assert.Equal(19, answers.Count(answer => answer == new Appended(AppendStanding.ClosedAlready, null)));
        BatchLog log = await database.Logs.ReadAsync(batch, Stop);
        Assert.True(Assert.Single(log.All).Fact.ClosesRecord);

        // The first is still answered as the first time, may be corrected, and taken back makes room for another.
        NewEntry first = closings.Single(closing => closing.Id == log.All[0].Id);
        Assert.Equal(AppendStanding.StoredBefore, (await database.Logs.AppendAsync(first, Stop)).Standing);
        NewEntry better = StartedBatches.Entry(database, batch, new LogFact.Closed("better"), first.Id);
        Assert.Equal(AppendStanding.Stored, (await database.Logs.AppendAsync(better, Stop)).Standing);
        Assert.Equal(AppendStanding.ClosedAlready, (await database.Logs.AppendAsync(StartedBatches.Entry(database, batch, new LogFact.Closed()), Stop)).Standing);
        await database.Logs.AppendAsync(StartedBatches.Entry(database, batch, new LogFact.Withdrawn(), better.Id), Stop);
        Assert.Equal(AppendStanding.Stored, (await database.Logs.AppendAsync(StartedBatches.Entry(database, batch, new LogFact.Closed()), Stop)).Standing);
    }

    [Fact]
    public async Task A_batch_put_aside_is_no_longer_open_until_that_is_taken_back()
    {
        await using TestDatabase database = NewDatabase();
        await database.StartAsync();
        Guid batch = await StartedBatches.StartAsync(database);
        NewEntry aside = StartedBatches.Entry(database, batch, new LogFact.NeverCooked("wrong pot"));
        await database.Logs.AppendAsync(aside, Stop);
        await database.StartAsync();
        Assert.Empty(await database.Batches.OpenAsync(Stop));
        BatchSummary summary = (await database.Batches.FindAsync(batch, Stop))!.Summary;
        Assert.Equal((true, true), (summary.IsClosed, summary.IsNeverCooked));
        Assert.Equal(aside.Fact, Assert.Single((await database.Logs.ReadAsync(batch, Stop)).All).Fact);
        await database.Logs.AppendAsync(StartedBatches.Entry(database, batch, new LogFact.Withdrawn(), aside.Id), Stop);
        Assert.False(Assert.Single(await database.Batches.OpenAsync(Stop)).IsNeverCooked);
    }

    [Fact]
    public async Task Pages_together_hold_every_batch_once_in_order()
    {
        await using TestDatabase database = NewDatabase();
        await database.StartAsync();
        List<Guid> ids = [];
        for (int number = 0; number < 30; number++)
        {
            // Three begin at the same moment, so that the order among them counts.
            ids.Add(await StartedBatches.StartAsync(database, $"no. {number}", database.Clock.Now.AddHours(number / 3)));
        }

        foreach (Guid closed in ids.Take(4))
        {
            await database.Logs.AppendAsync(StartedBatches.Entry(database, closed, new LogFact.Closed()), Stop);
        }

        IReadOnlyList<BatchSummary> open = await database.Batches.OpenAsync(Stop);
        Assert.Equal(26, open.Count);
        Assert.Equal(open.OrderByDescending(batch => batch.Begins), open);
        List<Guid> paged = [];
        for (int page = 1; page <= 3; page++)
        {
            ListPage<BatchSummary> rows = await database.Batches.PageAsync(closed: false, page, 10, Stop);
            Assert.Equal((26, page, 3), (rows.Count, rows.Number, rows.Pages));
            paged.AddRange(rows.Rows.Select(row => row.Id));
        }

        Assert.Equal(open.Select(batch => batch.Id), paged);
        Assert.Equal(3, (await database.Batches.PageAsync(closed: false, 99, 10, Stop)).Number);
        Assert.Equal(4, (await database.Batches.PageAsync(closed: true, 1, 10, Stop)).Rows.Count);

        // By the last one read, also while others are started on top.
        List<Guid> followed = [];
        for (IReadOnlyList<BatchSummary> rows = (await database.Batches.AfterAsync(null, 7, Stop))!; rows.Count > 0; rows = (await database.Batches.AfterAsync(followed[^1], 7, Stop))!)
        {
            followed.AddRange(rows.Select(row => row.Id));
            await StartedBatches.StartAsync(database, "on top", database.Clock.Now.AddDays(9));
        }

        Assert.Equal(30, followed.Distinct().Count());
        Assert.Equal(open.Select(batch => batch.Id), followed.Where(id => !ids.Take(4).Contains(id)));
        Assert.Null(await database.Batches.AfterAsync(Guid.CreateVersion7(), 7, Stop));
    }

    [Fact]
    public async Task The_secret_of_the_calendar_stays_until_it_is_renewed()
    {
        await using TestDatabase database = NewDatabase();
        await database.StartAsync();
        string[] first = await Task.WhenAll(Enumerable.Range(0, 4).Select(_ => Task.Run(() => database.Batches.CalendarTokenAsync(cancellationToken: Stop), Stop)));
        Assert.Matches("^[0-9a-f]{40}$", Assert.Single(first.Distinct(StringComparer.Ordinal)));
        await database.StartAsync();
        Assert.Equal(first[0], await database.Batches.CalendarTokenAsync(cancellationToken: Stop));
        await database.Batches.RenewCalendarTokenAsync(Stop);
        string renewed = await database.Batches.CalendarTokenAsync(Stop);
        Assert.NotEqual(first[0], renewed, StringComparer.Ordinal);
        Assert.Equal(renewed, await database.Batches.CalendarTokenAsync(cancellationToken: Stop));
    }
}
