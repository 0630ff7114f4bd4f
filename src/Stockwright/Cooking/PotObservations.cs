using Stockwright.Logbook;
using Stockwright.Numerics;
using Stockwright.Simmering;

namespace Stockwright.Cooking;

/// <summary>What the entries say was seen of the pot (R.6, R.15), numbered as the script looks for it.</summary>
internal sealed class PotObservations
{
    /// <summary>Standard deviation of a level read against a ruler in a simmering pot, m (estimate).</summary>
    private const double LevelMetres = 0.004;

    /// <summary>Standard deviation of the moment a cook calls a simmer, s (estimate).</summary>
    private const double SimmerSeconds = 180;

    private const double RanLowMetres = 0.02;

    /// <summary>Most levels held against the pot, and the bound aimed at, m: a quarter of what a reading may be off (R.15).</summary>
    private const int MostLevels = 60;
    private const double LevelBoundMetres = LevelMetres / 4;

    /// <summary>The level is read before the water goes in: water entered so shortly before it belongs after it.</summary>
    private static readonly TimeSpan SameVisit = TimeSpan.FromMinutes(3);

    private readonly LogView view;
    private readonly HeatTimes times;
    private readonly PotReadings readings;
    private readonly DateTimeOffset[] pours;
    private readonly HashSet<LogEntry> levels;

    private PotObservations(LogView view, HeatTimes times, PotReadings readings)
    {
        this.view = view;
        this.times = times;
        this.readings = readings;
        pours = [.. view.Of<LogFact.WaterAdded>().Select(one => one.Entry.HappenedAt)];
        levels = Levels();
    }

    /// <summary>All of them, in the order of their entries; none before the heat is on.</summary>
    public static IReadOnlyList<PotObservation> Of(LogView view, HeatTimes times, PotReadings readings) =>
        times.IsOn ? [.. new PotObservations(view, times, readings).All().Select((seen, i) => seen.AtSeconds is null ? seen : seen with { Look = i + 1 })] : [];

    private IEnumerable<PotObservation> All()
    {
        if (times.Simmers is { } simmers && !view.Plan.Workings.Script.Stages[0].Climbs)
        {
            LogEntry entry = view.Entries.First(one => one.HappenedAt == simmers);
            yield return new PotObservation(ObservationKind.Simmer, null, times.Seconds(simmers), SimmerSeconds, entry);
        }

        foreach (LogEntry entry in view.Entries)
        {
            if (Seen(entry, times.Seconds(entry.HappenedAt)) is { } seen)
            {
                yield return seen;
            }
        }

        if (view.Last<LogFact.Strained>() is { Fact: LogFact.Strained strained } measured)
        {
            yield return new PotObservation(ObservationKind.Strained, null, strained.Volume.CubicMeters * SimmerForecaster.ColdDensity, double.NaN, measured);
        }
    }

    private PotObservation? Seen(LogEntry entry, double at) => entry.Fact switch
    {
        LogFact.LevelRead level when levels.Contains(entry) =>
            new(ObservationKind.Level, LookTime(entry), view.Plan.Request.Pot.InnerHeight.Meters - level.BelowRim.Meters, LevelMetres, entry),
        LogFact.RanLow when at >= 0 && at < times.LimitSeconds => new(ObservationKind.Cover, at, -RanLowMetres / 2, RanLowMetres, entry),
        LogFact.TemperatureRead read when readings.IsObserved(entry) =>
            new(ObservationKind.Temperature, at, readings.Taken(read), PotReadings.ThermometerKelvins, entry),
        _ => null,
    };

    /// <summary>Levels held against the pot: all that a cook reads, and of a gauge's thousands as many as show what all of them do.</summary>
    private HashSet<LogEntry> Levels()
    {
        List<(LogEntry Entry, LogFact.LevelRead Fact)> all = [.. view.Of<LogFact.LevelRead>()
            .Where(one => times.Seconds(one.Entry.HappenedAt) is > -3600 and double at && at < times.LimitSeconds)];
        ThinnedSeries thinned = SeriesThinning.Lines(
            [.. all.Select(one => times.Seconds(one.Entry.HappenedAt))], [.. all.Select(one => one.Fact.BelowRim.Meters)], LevelBoundMetres, MostLevels);
        return new HashSet<LogEntry>(thinned.Kept.Select(kept => all[kept].Entry), ReferenceEqualityComparer.Instance);
    }

    private double LookTime(LogEntry level)
    {
        int first = OrderedLookup.FirstAtOrAfter(pours, level.HappenedAt - SameVisit);
        return times.Seconds(first < pours.Length && pours[first] <= level.HappenedAt ? pours[first] : level.HappenedAt);
    }
}
