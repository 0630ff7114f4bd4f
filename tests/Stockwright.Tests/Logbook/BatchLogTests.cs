using CsCheck;
using Stockwright.Logbook;
using UnitsNet;
using Xunit;

namespace Stockwright.Tests.Logbook;

/// <summary>What of a log stands. No published rule for this; a paper log is kept so: struck through and written beside, never rubbed out.</summary>
public sealed class BatchLogTests
{
    private static readonly DateTimeOffset Noon = new(2026, 3, 1, 12, 0, 0, TimeSpan.Zero);

    [Fact]
    public void Entries_stand_in_the_order_they_happened_and_keep_the_order_they_came_in()
    {
        // The third came out of a phone's outbox hours late.
        LogEntry[] entries = [Entry(1, 10), Entry(2, 60), Entry(3, 30) with { ReceivedAt = Noon.AddHours(9) }, Entry(4, 60)];
        BatchLog log = new([entries[3], entries[0], entries[2], entries[1]]);
        Assert.Equal([1, 2, 3, 4], log.All.Select(entry => entry.Number));
        Assert.Equal([1, 3, 2, 4], log.Standing.Select(entry => entry.Number));
        Assert.Equal(4, log.Last<LogFact.LevelRead>()!.Number);
    }

    [Fact]
    public void A_late_entry_does_not_become_the_last_reading()
    {
        BatchLog log = new([Entry(1, 60), Entry(2, 10)]);
        Assert.Equal(1, log.Last<LogFact.LevelRead>()!.Number);
    }

    [Fact]
    public void A_correction_replaces_and_a_correction_of_it_replaces_that()
    {
        LogEntry first = Entry(1, 10);
        LogEntry second = Entry(2, 10) with { Corrects = first.Id };
        LogEntry third = Entry(3, 12) with { Corrects = second.Id };
        BatchLog log = new([first, second, third]);
        Assert.Equal(third, Assert.Single(log.Standing));
        Assert.Equal(second, log.SupersededBy(first));
        Assert.Equal(third, log.SupersededBy(second));
        Assert.Null(log.SupersededBy(third));
        Assert.Equal(3, log.All.Count);
    }

    [Fact]
    public void Of_two_corrections_of_one_entry_only_the_later_received_stands()
    {
        LogEntry wrong = Water(1, 1);
        LogEntry hers = Water(2, 2) with { Corrects = wrong.Id };
        LogEntry his = Water(3, 3) with { Corrects = wrong.Id };
        BatchLog log = new([wrong, hers, his]);
        Assert.Equal(his, Assert.Single(log.Standing));
        Assert.Equal(3, log.Of<LogFact.WaterAdded>().Sum(row => row.Fact.Volume.Liters));
    }

    [Fact]
    public void What_is_taken_back_does_not_stand_and_neither_does_the_taking_back()
    {
        LogEntry kept = Entry(1, 10);
        LogEntry wrong = Entry(2, 20);
        LogEntry back = Entry(3, 30) with { Corrects = wrong.Id, Fact = new LogFact.Withdrawn("not this pot") };
        BatchLog log = new([kept, wrong, back]);
        Assert.Equal(kept, Assert.Single(log.Standing));
        Assert.Equal(back, log.SupersededBy(wrong));
    }

    [Fact]
    public void Taking_back_a_correction_takes_back_the_whole_entry_and_does_not_bring_the_old_one_back()
    {
        LogEntry first = Entry(1, 10);
        LogEntry second = Entry(2, 10) with { Corrects = first.Id };
        LogEntry back = Entry(3, 30) with { Corrects = second.Id, Fact = new LogFact.Withdrawn() };
        Assert.Empty(new BatchLog([first, second, back]).Standing);
    }

    [Fact]
    public void A_step_is_done_when_its_last_word_says_so_and_a_record_closed_and_opened_is_open()
    {
        LogEntry done = Entry(1, 10) with { Fact = new LogFact.StepDone("fill") };
        LogEntry closed = Entry(2, 20) with { Fact = new LogFact.Closed() };
        LogEntry opened = Entry(3, 30) with { Corrects = closed.Id, Fact = new LogFact.Withdrawn() };
        Assert.Equal(done, new BatchLog([done, closed]).Done("fill"));
        Assert.Null(new BatchLog([done, closed]).Done("FILL"));
        Assert.True(new BatchLog([done, closed]).IsClosed);
        Assert.False(new BatchLog([done, closed, opened]).IsClosed);
    }

    [Fact]
    public void One_id_twice_is_refused()
    {
        LogEntry entry = Entry(1, 10);
        Assert.Throws<ArgumentException>(() => new BatchLog([entry, entry with { Number = 2 }]));
    }

    [Fact]
    public void However_entries_point_at_each_other_each_is_counted_once_and_a_correction_never_adds_to_what_stands() =>
        Gen.Int[-1, 11].Array[1, 12].Sample(
            targets =>
            {
                Guid[] ids = [.. targets.Select((_, index) => new Guid(index + 1, 0, 0, new byte[8]))];
                LogEntry[] entries = [.. targets.Select((target, index) => Entry(index + 1, index) with
                {
                    Id = ids[index],
                    Corrects = target < 0 ? null : target < ids.Length ? ids[target] : Guid.NewGuid(),
                })];
                BatchLog log = new(entries);
                Assert.Equal(entries.Length, log.All.Count);
                Assert.Equal(log.Standing.Count, log.Standing.Distinct().Count());

                // Entries that only point back, as all stored ones do: as many stand as were not corrections of something there.
                if (entries.Where((_, index) => targets[index] >= index).All(entry => entry.Corrects is null))
                {
                    Assert.Equal(targets.Count(target => target < 0), log.Standing.Count);
                }
            },
            iter: 3000);

    private static LogEntry Entry(int number, int minutes) => new()
    {
        Id = Guid.CreateVersion7(),
        Number = number,
        HappenedAt = Noon.AddMinutes(minutes),
        ReceivedAt = Noon.AddMinutes(minutes),
        Who = "RT",
        Fact = new LogFact.LevelRead(Length.FromCentimeters(number)),
    };

    private static LogEntry Water(int number, double litres) => Entry(number, 10) with { Fact = new LogFact.WaterAdded(Volume.FromLiters(litres)) };
}
