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
        NewBatch batch = await Batches.NewAsync(database, "O'Brien's \"best\" 鍋", database.Clock.Now.AddHours(2));
        await database.Batches.StartAsync(batch, Stop);
        await database.StartAsync();
        StoredBatch stored = (await database.Batches.FindAsync(batch.Id, Stop))!;
        Assert.Equal(
            new BatchSummary(batch.Id, batch.Name, batch.Snapshot.Recipe.Name, "10 L pot", batch.Begins, database.Clock.Now, false), stored.Summary);
        Assert.Equal((batch.Query, batch.PlanText, batch.LimitId, null), (stored.Query, stored.PlanText, stored.LimitId, stored.Trouble));
        Same.As(batch.Snapshot.Recipe, stored.Snapshot!.Recipe);
        Same.As(batch.Snapshot.Kitchen, stored.Snapshot.Kitchen);
        Assert.Null(await database.Batches.FindAsync(Guid.CreateVersion7(), Stop));
    }

    [Fact]
    public async Task A_form_sent_twice_starts_one_batch_and_leaves_the_first_as_it_was()
    {
        await using TestDatabase database = NewDatabase();
        await database.StartAsync();
        NewBatch batch = await Batches.NewAsync(database);
        await Task.WhenAll(Enumerable.Range(0, 6).Select(_ => Task.Run(() => database.Batches.StartAsync(batch, Stop), Stop)));
        await database.Batches.StartAsync(batch with { Name = "Another name", Query = "" }, Stop);
        Assert.Equal("Sunday", Assert.Single(await database.Batches.ListAsync(cancellationToken: Stop)).Name);
        Assert.Equal(Batches.Query, (await database.Batches.FindAsync(batch.Id, Stop))!.Query);
    }

    [Fact]
    public async Task Batches_are_listed_by_when_they_begin_and_open_ones_can_be_told_apart()
    {
        await using TestDatabase database = NewDatabase();
        await database.StartAsync();
        DateTimeOffset now = database.Clock.Now;
        Guid early = await Batches.StartAsync(database, "early", now.AddHours(-5));
        Guid late = await Batches.StartAsync(database, "late", now.AddHours(5));
        Guid middle = await Batches.StartAsync(database, "middle", now);
        Assert.Equal([late, middle, early], (await database.Batches.ListAsync(cancellationToken: Stop)).Select(row => row.Id));
        Assert.Equal([late, middle], (await database.Batches.ListAsync(most: 2, cancellationToken: Stop)).Select(row => row.Id));

        NewEntry closing = Batches.Entry(database, middle, new LogFact.Closed("Less water"));
        await database.Logs.AppendAsync(closing, Stop);
        Assert.Equal([late, early], (await database.Batches.ListAsync(open: true, cancellationToken: Stop)).Select(row => row.Id));
        Assert.True((await database.Batches.FindAsync(middle, Stop))!.Summary.IsClosed);
        Assert.Equal([false, true, false], (await database.Batches.ListAsync(cancellationToken: Stop)).Select(row => row.IsClosed));

        // A closing taken back opens the record again; closing it once more closes it.
        NewEntry back = Batches.Entry(database, middle, new LogFact.Withdrawn(), closing.Id);
        await database.Logs.AppendAsync(back, Stop);
        Assert.Equal([late, middle, early], (await database.Batches.ListAsync(open: true, cancellationToken: Stop)).Select(row => row.Id));
        await database.Logs.AppendAsync(Batches.Entry(database, middle, new LogFact.Closed()), Stop);
        Assert.Equal([late, early], (await database.Batches.ListAsync(open: true, cancellationToken: Stop)).Select(row => row.Id));
    }

    [Fact]
    public async Task A_corrected_closing_still_closes_as_the_log_itself_has_it()
    {
        await using TestDatabase database = NewDatabase();
        await database.StartAsync();
        Guid batch = await Batches.StartAsync(database);
        NewEntry closing = Batches.Entry(database, batch, new LogFact.Closed("Less water"));
        await database.Logs.AppendAsync(closing, Stop);
        await database.Logs.AppendAsync(Batches.Entry(database, batch, new LogFact.Closed("More water"), closing.Id), Stop);
        Assert.True((await database.Logs.ReadAsync(batch, Stop)).IsClosed);
        Assert.Empty(await database.Batches.ListAsync(open: true, cancellationToken: Stop));
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
        string renewed = await database.Batches.CalendarTokenAsync(renew: true, Stop);
        Assert.NotEqual(first[0], renewed, StringComparer.Ordinal);
        Assert.Equal(renewed, await database.Batches.CalendarTokenAsync(cancellationToken: Stop));
    }
}
