using Stockwright.Cooking;
using Stockwright.Cooling.Limits;
using Stockwright.Logbook;
using Stockwright.Planning;
using Stockwright.Simmering;
using Stockwright.Tests.Planning;
using UnitsNet;

namespace Stockwright.Tests.Cooking;

/// <summary>Batches and logs that read like what a cook writes down.</summary>
internal static class Batches
{
    internal static Batch Of(BatchPlan plan, string limit = "us-food-code") => new()
    {
        Id = new Guid("00000000-0000-0000-0000-0000000000b1"),
        Name = "Stock",
        Planned = plan,
        Limit = StandardLimits.Find(limit)!,
        StartedAt = plan.Timeline.Start,
    };

    /// <summary>A gallon of brown chicken stock, topped up only to stay covered, on 3.5 kW.</summary>
    internal static Batch Chicken(TopUpRule topUp = TopUpRule.None) => Of((PlanRequests.For("brown-chicken") with { TopUp = topUp }).Plan());

    internal static LogWriter Writing(this Batch batch) => new(batch);

    internal static PlanStep Step(this BatchPlan plan, string key) => plan.Timeline.Steps.First(step => string.Equals(step.Key, key, StringComparison.Ordinal));

    internal static CourseStep Step(this BatchCourse course, string key) => course.Steps.First(step => string.Equals(step.Key, key, StringComparison.Ordinal));

    /// <summary>A log in the making; times are minutes after the planned heat on.</summary>
    internal sealed class LogWriter(Batch batch)
    {
        private readonly List<LogEntry> entries = [];

        internal BatchLog Log => new(entries);

        internal DateTimeOffset At(double minutes) => batch.Planned.Timeline.HeatOn + TimeSpan.FromMinutes(minutes);

        internal LogWriter Enter(double minutes, LogFact fact) => Enter(At(minutes), fact);

        internal LogWriter Enter(DateTimeOffset at, LogFact fact, Guid? corrects = null)
        {
            byte[] id = new byte[16];
            BitConverter.TryWriteBytes(id, entries.Count + 1);
            entries.Add(new LogEntry { Id = new Guid(id), Number = entries.Count + 1, HappenedAt = at, ReceivedAt = at, Who = "MK", Fact = fact, Corrects = corrects });
            return this;
        }

        internal LogWriter Done(double minutes, string key) => Enter(minutes, new LogFact.StepDone(key));

        internal LogWriter Level(double minutes, Length below) => Enter(minutes, new LogFact.LevelRead(below));

        internal LogWriter Water(double minutes, double litres) => Enter(minutes, new LogFact.WaterAdded(Volume.FromLiters(litres)));

        internal LogWriter Reads(double minutes, double celsius, ReadingPlace place = ReadingPlace.Pot) =>
            Enter(minutes, new LogFact.TemperatureRead(Temperature.FromDegreesCelsius(celsius), place));

        internal BatchCourse Now(double minutes) => BatchReplanner.Replan(batch, Log, At(minutes));
    }
}
