using Stockwright.Cooling.Limits;
using Stockwright.Logbook;
using UnitsNet;
using UnitsNet.Units;
using Xunit;

namespace Stockwright.Storage.Tests.Contract;

/// <summary>What every provider owes logs: added to and never changed, each entry once.</summary>
public abstract class LogContract
{
    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    protected abstract TestDatabase NewDatabase();

    [Fact]
    public async Task Entries_come_back_in_order_of_receipt_and_stand_in_order_of_happening()
    {
        await using TestDatabase database = NewDatabase();
        await database.StartAsync();
        Guid batch = await StartedBatches.StartAsync(database);
        Guid other = await StartedBatches.StartAsync(database, "Another pot");
        DateTimeOffset now = database.Clock.Now;
        LogFact[] facts =
        [
            new LogFact.LevelRead(Length.FromMeters(0.065)),
            new LogFact.TemperatureRead(Temperature.FromDegreesFahrenheit(70), ReadingPlace.Cooling, "probe 2"),
            new LogFact.Noted("Smells right — 良い\nsecond line"),
        ];
        int[] minutesAgo = [5, 90, 1];
        for (int index = 0; index < facts.Length; index++)
        {
            NewEntry entry = StartedBatches.Entry(database, batch, facts[index]) with
            {
                HappenedAt = now.AddMinutes(-minutesAgo[index]),
                DeviceOffset = TimeSpan.FromSeconds(-420),
                DeviceZone = "America/New_York",
                Who = "Märta",
            };
            Appended answer = await database.Logs.AppendAsync(entry, Stop);
            Assert.Equal((AppendStanding.Stored, index + 1), (answer.Standing, answer.Entry!.Number));
            await database.Logs.AppendAsync(StartedBatches.Entry(database, other, new LogFact.Skimmed()), Stop);
        }

        await database.StartAsync();
        BatchLog log = await database.Logs.ReadAsync(batch, Stop);
        Assert.Equal(facts, log.All.Select(entry => entry.Fact));
        Assert.Equal([1, 2, 3], log.All.Select(entry => entry.Number));
        Assert.Equal([2, 1, 3], log.Standing.Select(entry => entry.Number));
        Assert.All(log.All, entry => Assert.Equal((now, "Märta", TimeSpan.FromSeconds(-420), "America/New_York"), (entry.ReceivedAt, entry.Who, entry.DeviceOffset, entry.DeviceZone)));
        Temperature read = Assert.IsType<LogFact.TemperatureRead>(log.All[1].Fact).Temperature;
        Assert.Equal((70.0, TemperatureUnit.DegreeFahrenheit), ((double)read.Value, read.Unit));
        Assert.Equal(3, await database.Logs.CountAsync(batch, Stop));
        Assert.Equal(0, await database.Logs.CountAsync(Guid.CreateVersion7(), Stop));
    }

    [Fact]
    public async Task A_log_that_is_known_is_read_on_from_there()
    {
        await using TestDatabase database = NewDatabase();
        await database.StartAsync();
        Guid batch = await StartedBatches.StartAsync(database);
        Guid other = await StartedBatches.StartAsync(database, "Another pot");
        BatchLog none = await database.Logs.ReadAsync(batch, BatchLog.Empty, Stop);
        Assert.Empty(none.All);
        NewEntry first = StartedBatches.Entry(database, batch, new LogFact.Noted("first"));
        await database.Logs.AppendAsync(first, Stop);
        await database.Logs.AppendAsync(StartedBatches.Entry(database, other, new LogFact.Noted("of another pot")), Stop);
        BatchLog one = await database.Logs.ReadAsync(batch, none, Stop);
        Assert.Same(one, await database.Logs.ReadAsync(batch, one, Stop));

        await database.Logs.AppendAsync(StartedBatches.Entry(database, batch, new LogFact.Noted("corrected")) with { Corrects = first.Id }, Stop);
        await database.Logs.AppendAsync(StartedBatches.Entry(database, batch, new LogFact.Skimmed()), Stop);
        BatchLog grown = await database.Logs.ReadAsync(batch, one, Stop);
        BatchLog whole = await database.Logs.ReadAsync(batch, Stop);
        Assert.Equal(3, whole.All.Count);
        Assert.Equal(whole.All, grown.All);
        Assert.Equal(whole.Standing, grown.Standing);

        // A log of another book, as after another file was put in the place of the database.
        Assert.Equal(whole.All, (await database.Logs.ReadAsync(batch, await database.Logs.ReadAsync(other, Stop), Stop)).All);
    }

    [Fact]
    public async Task A_repeat_is_answered_as_the_first_time()
    {
        await using TestDatabase database = NewDatabase();
        await database.StartAsync();
        Guid batch = await StartedBatches.StartAsync(database);
        await database.Logs.AppendAsync(StartedBatches.Entry(database, batch, new LogFact.Skimmed()), Stop);
        NewEntry entry = StartedBatches.Entry(database, batch, new LogFact.WaterAdded(Volume.FromCubicMeters(1e-4)));
        LogEntry first = (await database.Logs.AppendAsync(entry, Stop)).Entry!;
        await database.Logs.AppendAsync(StartedBatches.Entry(database, batch, new LogFact.Simmers()), Stop);
        database.Clock.Now += TimeSpan.FromHours(9);

        // Sent again by a device whose clock was put right meanwhile: the moment differs, the entry is the same.
        Appended again = await database.Logs.AppendAsync(entry with { HappenedAt = entry.HappenedAt.AddSeconds(2) }, Stop);
        Assert.Equal(AppendStanding.StoredBefore, again.Standing);
        Assert.Equal(first, again.Entry);
        Assert.Equal(3, await database.Logs.CountAsync(batch, Stop));
    }

    [Fact]
    public async Task An_id_in_use_for_something_else_is_refused()
    {
        await using TestDatabase database = NewDatabase();
        await database.StartAsync();
        Guid batch = await StartedBatches.StartAsync(database);
        Guid other = await StartedBatches.StartAsync(database, "Another pot");
        NewEntry entry = StartedBatches.Entry(database, batch, new LogFact.WaterAdded(Volume.FromCubicMeters(1e-4)));
        await database.Logs.AppendAsync(entry, Stop);
        NewEntry[] impostors =
        [
            entry with { Fact = new LogFact.WaterAdded(Volume.FromCubicMeters(2e-4)) },
            entry with { Fact = new LogFact.Strained(Volume.FromCubicMeters(1e-4)) },
            entry with { BatchId = other },
            entry with { Corrects = Guid.CreateVersion7() },
        ];
        foreach (NewEntry impostor in impostors)
        {
            Assert.Equal(new Appended(AppendStanding.IdInUse, null), await database.Logs.AppendAsync(impostor, Stop));
        }

        Assert.Equal(entry.Fact, Assert.Single((await database.Logs.ReadAsync(batch, Stop)).All).Fact);
        Assert.Empty((await database.Logs.ReadAsync(other, Stop)).All);
    }

    [Fact]
    public async Task An_entry_for_no_batch_is_refused()
    {
        await using TestDatabase database = NewDatabase();
        await database.StartAsync();
        Assert.Equal(
            new Appended(AppendStanding.NoSuchBatch, null),
            await database.Logs.AppendAsync(StartedBatches.Entry(database, Guid.CreateVersion7(), new LogFact.Skimmed()), Stop));
    }

    [Fact]
    public async Task Corrections_and_withdrawals_are_read_back_with_what_they_point_to()
    {
        await using TestDatabase database = NewDatabase();
        await database.StartAsync();
        Guid batch = await StartedBatches.StartAsync(database);
        NewEntry wrong = StartedBatches.Entry(database, batch, new LogFact.LevelRead(Length.FromCentimeters(60)));
        NewEntry right = StartedBatches.Entry(database, batch, new LogFact.LevelRead(Length.FromCentimeters(6)), wrong.Id);
        NewEntry action = StartedBatches.Entry(database, batch, new LogFact.CorrectionMade(CorrectiveStep.KeepCooling, "more ice"));
        NewEntry back = StartedBatches.Entry(database, batch, new LogFact.Withdrawn("not ours"), action.Id);
        foreach (NewEntry entry in new[] { wrong, right, action, back })
        {
            await database.Logs.AppendAsync(entry, Stop);
        }

        await database.StartAsync();
        BatchLog log = await database.Logs.ReadAsync(batch, Stop);
        Assert.Equal(right.Id, Assert.Single(log.Standing).Id);
        Assert.Equal([null, wrong.Id, null, action.Id], log.All.Select(entry => entry.Corrects));
        Assert.Equal(right.Id, log.SupersededBy(log.All[0])!.Id);
        Assert.Equal(back.Id, log.SupersededBy(log.All[2])!.Id);
    }

    [Fact]
    public async Task A_picture_is_stored_with_its_entry_or_not_at_all()
    {
        await using TestDatabase database = NewDatabase();
        await database.StartAsync();
        Guid batch = await StartedBatches.StartAsync(database);
        StoredPhoto photo = new([0xff, 0xd8, 0xff, 0, 1, 2], 4, 3);
        NewEntry entry = StartedBatches.Entry(database, batch, new LogFact.PhotoTaken("the raft")) with { Photo = photo };
        await database.Logs.AppendAsync(entry, Stop);
        await database.StartAsync();
        StoredPhoto kept = (await database.Logs.PhotoAsync(entry.Id, Stop))!;
        Assert.Equal(photo.Jpeg, kept.Jpeg);
        Assert.Equal((4, 3), (kept.Width, kept.Height));
        Assert.Null(await database.Logs.PhotoAsync(Guid.CreateVersion7(), Stop));

        // The picture cannot be stored (a column that must not be empty is): neither is its entry.
        NewEntry broken = StartedBatches.Entry(database, batch, new LogFact.PhotoTaken()) with { Photo = new StoredPhoto(null!, 1, 1) };
        await Assert.ThrowsAnyAsync<Exception>(() => database.Logs.AppendAsync(broken, Stop));
        Assert.Single((await database.Logs.ReadAsync(batch, Stop)).All);
        Assert.Null(await database.Logs.PhotoAsync(broken.Id, Stop));
    }

    [Fact]
    public async Task The_same_entry_sent_at_once_by_many_is_stored_once_and_all_answers_agree()
    {
        await using TestDatabase database = NewDatabase();
        await database.StartAsync();
        Guid batch = await StartedBatches.StartAsync(database);
        NewEntry[] entries = [.. Enumerable.Range(0, 5).Select(_ => StartedBatches.Entry(database, batch, new LogFact.Skimmed()))];
        Appended[] answers = await Task.WhenAll(Enumerable.Range(0, 100).Select(index => Task.Run(() => database.Logs.AppendAsync(entries[index % 5], Stop), Stop)));
        Assert.Equal(5, answers.Count(answer => answer.Standing == AppendStanding.Stored));
        Assert.Equal(5, answers.Select(answer => answer.Entry).Distinct().Count());
        Assert.Equal([1, 2, 3, 4, 5], (await database.Logs.ReadAsync(batch, Stop)).All.Select(entry => entry.Number));
    }

    [Fact]
    public async Task A_fact_of_a_newer_version_is_shown_as_a_remark()
    {
        await using TestDatabase database = NewDatabase();
        await database.StartAsync();
        Guid batch = await StartedBatches.StartAsync(database);
        await using (StockwrightContext context = await database.Contexts.CreateDbContextAsync(Stop))
        {
            context.Add(new LogEntryEntity
            {
                Id = Guid.CreateVersion7(),
                BatchId = batch,
                HappenedUtc = database.Clock.Now.UtcDateTime,
                ReceivedUtc = database.Clock.Now.UtcDateTime,
                Who = "",
                DeviceZone = "",
                Kind = "sang",
                Body = """{"song":"x"}""",
            });
            await context.SaveChangesAsync(Stop);
        }

        Assert.Equal(new LogFact.Noted("""[sang] {"song":"x"}"""), Assert.Single((await database.Logs.ReadAsync(batch, Stop)).All).Fact);
    }
}
