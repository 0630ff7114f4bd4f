using Stockwright.Cooking;
using Stockwright.Kitchen;
using Stockwright.Logbook;
using Stockwright.Planning;
using UnitsNet;
using Xunit;

namespace Stockwright.Tests.Cooking;

/// <summary>What is refused before it is stored, with its field (our own rules, no source needed).</summary>
public class EntryChecksTests
{
    private static readonly Batch Made = Batches.Chicken();

    private static readonly DateTimeOffset Now = Made.Planned.Timeline.HeatOn.AddHours(2);

    public static TheoryData<string, LogFact> Refused => new()
    {
        { "below", new LogFact.LevelRead(Length.FromCentimeters(33)) },
        { "below", new LogFact.LevelRead(Length.FromCentimeters(-1)) },
        { "water", new LogFact.WaterAdded(Volume.FromLiters(20.1)) },
        { "water", new LogFact.WaterAdded(Volume.Zero) },
        { "strained", new LogFact.Strained(Volume.FromLiters(21)) },
        { "lost", new LogFact.BoiledOver(Volume.FromLiters(-1)) },
        { "degrees", new LogFact.TemperatureRead(Temperature.FromDegreesCelsius(131), ReadingPlace.Pot) },
        { "degrees", new LogFact.TemperatureRead(Temperature.FromDegreesFahrenheit(-23), ReadingPlace.Cooling) },
        { "step", new LogFact.StepDone("check-99") },
        { "until", new LogFact.HeatLost(Now.AddHours(-1)) },
        { "until", new LogFact.HeatLost(Now.AddHours(1)) },
        { "lid", new LogFact.LidChanged(new LidPosition(LidKind.Ajar, Ratio.FromDecimalFractions(0.9))) },
        { "fat", new LogFact.FatWeighed(Mass.FromKilograms(40)) },
        { "spent", new LogFact.SpentWeighed(Mass.Zero) },
        { "spent", new LogFact.SpentWeighed(Mass.FromKilograms(-1)) },
        { "spent", new LogFact.SpentWeighed(Mass.FromKilograms(Made.Planned.Amounts.Sum(line => line.Mass.Kilograms) * 1.15)) },
        { "brix", new LogFact.RefractometerRead(86) },
        { "text", new LogFact.Noted(" ") },
        { "hob", new LogFact.HeatMoved("") },
        { "attended", new LogFact.Closed("", TimeSpan.FromMinutes(-1)) },
        { "metered", new LogFact.Closed("", null, Energy.FromKilowattHours(-1)) },
        { "corrects", new LogFact.Withdrawn() },
    };

    public static TheoryData<LogFact> Accepted =>
    [
        new LogFact.LevelRead(Length.FromCentimeters(32.5)),
        new LogFact.LevelRead(Length.Zero),
        new LogFact.WaterAdded(Volume.FromLiters(20)),
        new LogFact.TemperatureRead(Temperature.FromDegreesFahrenheit(266), ReadingPlace.Pot),
        new LogFact.StepDone("check-1"),
        new LogFact.HeatLost(null),
        new LogFact.SpentWeighed(Made.Planned.SpentSolids.Low * 0.5),
        new LogFact.SpentWeighed(Made.Planned.SpentSolids.High * 1.1),
        new LogFact.BoiledOver(),
        new LogFact.Noted("smells right"),
        new LogFact.Closed("less celery", TimeSpan.FromHours(2), Energy.FromKilowattHours(3)),
    ];

    [Theory]
    [MemberData(nameof(Refused))]
    public void A_slip_is_named_by_its_field(string field, LogFact fact)
    {
        WordedProblem problem = Assert.Single(EntryChecks.Problems(Draft(Now, fact), Made, BatchLog.Empty, Now));
        Assert.Equal(field, problem.Field);
        Assert.EndsWith(".", problem.Message, StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Accepted))]
    public void What_can_be_true_is_taken(LogFact fact) => Assert.Empty(EntryChecks.Problems(Draft(Now, fact), Made, BatchLog.Empty, Now));

    [Theory]
    [InlineData(1.9, true)]
    [InlineData(2.1, false)]
    [InlineData(-26 * 60, true)]
    [InlineData(-29 * 60, false)]
    public void It_happened_neither_ahead_nor_long_before(double minutes, bool taken)
    {
        // The batch begins two and a half hours before the heat goes on, so its day before begins 28.5 h before now.
        IReadOnlyList<WordedProblem> problems = EntryChecks.Problems(Draft(Now.AddMinutes(minutes), new LogFact.Skimmed()), Made, BatchLog.Empty, Now);
        Assert.Equal(taken ? "" : "at", string.Join(",", problems.Select(problem => problem.Field)));
    }

    [Fact]
    public void Only_a_standing_entry_of_this_log_is_corrected()
    {
        Batches.LogWriter log = Made.Writing().Water(60, 1);
        Guid water = log.Log.All[0].Id;
        LogEntry correction = Draft(Now, new LogFact.WaterAdded(Volume.FromLiters(2))) with { Corrects = water };
        Assert.Empty(EntryChecks.Problems(correction, Made, log.Log, Now));
        Assert.Equal("corrects", Assert.Single(EntryChecks.Problems(correction with { Corrects = Guid.Parse("00000000-0000-0000-0000-00000000ffff") }, Made, log.Log, Now)).Field);

        log.Enter(Now, new LogFact.Withdrawn(), water);
        Assert.Contains("taken back", Assert.Single(EntryChecks.Problems(correction, Made, log.Log, Now)).Message, StringComparison.Ordinal);
        Assert.Equal("corrects", Assert.Single(EntryChecks.Problems(correction with { Corrects = log.Log.All[1].Id }, Made, log.Log, Now)).Field);
    }

    [Fact]
    public void A_closed_record_takes_notes_corrections_and_withdrawals_only()
    {
        Batches.LogWriter log = Made.Writing().Water(60, 1).Enter(100, new LogFact.Closed());
        Guid water = log.Log.All[0].Id;
        Assert.Equal("at", Assert.Single(EntryChecks.Problems(Draft(Now, new LogFact.Skimmed()), Made, log.Log, Now)).Field);
        Assert.Empty(EntryChecks.Problems(Draft(Now, new LogFact.Noted("good")), Made, log.Log, Now));
        Assert.Empty(EntryChecks.Problems(Draft(Now, new LogFact.Withdrawn()) with { Corrects = water }, Made, log.Log, Now));
        Assert.Empty(EntryChecks.Problems(Draft(Now, new LogFact.WaterAdded(Volume.FromLiters(2))) with { Corrects = water }, Made, log.Log, Now));
    }

    [Fact]
    public void What_was_cooked_cannot_be_put_aside_as_never_cooked()
    {
        LogEntry aside = Draft(Now, new LogFact.NeverCooked("wrong pot"));
        Assert.Empty(EntryChecks.Problems(aside, Made, Made.Writing().Water(60, 1).Log, Now));
        Batches.LogWriter log = Made.Writing().Water(60, 1).Enter(100, new LogFact.CoolingBegan());
        WordedProblem problem = Assert.Single(EntryChecks.Problems(aside, Made, log.Log, Now));
        Assert.Contains("Entry 2 says that this was cooked", problem.Message, StringComparison.Ordinal);

        // Put aside, it takes no more than a closed record does.
        Batches.LogWriter put = Made.Writing().Water(60, 1).Enter(100, new LogFact.NeverCooked());
        Assert.True(put.Log.IsClosed && put.Log.IsNeverCooked);
        Assert.Equal("at", Assert.Single(EntryChecks.Problems(Draft(Now, new LogFact.Skimmed()), Made, put.Log, Now)).Field);
    }

    private static LogEntry Draft(DateTimeOffset at, LogFact fact) => new() { Id = new Guid("00000000-0000-0000-0000-0000000000dd"), HappenedAt = at, ReceivedAt = Now, Who = "MK", Fact = fact };
}
