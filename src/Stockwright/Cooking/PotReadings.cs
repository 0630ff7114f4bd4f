using Stockwright.Logbook;
using Stockwright.Numerics;
using Stockwright.Planning;
using Stockwright.Simmering;

namespace Stockwright.Cooking;

/// <summary>
/// What a thermometer in the pot says of it (R.4, R.6, R.15). A cook's few readings are all followed; of a probe's thousands as many as show what all of
/// them show within a stated bound.
/// </summary>
internal sealed class PotReadings
{
    /// <summary>Standard deviation of a kitchen thermometer in a pot that is not stirred, K (estimate).</summary>
    public const double ThermometerKelvins = 2;

    /// <summary>Most readings of the heat-up that are held against the pot, and the bound aimed at, K: half of what a reading may be off.</summary>
    public const int MostOfHeatUp = 24;
    public const double HeatUpKelvins = ThermometerKelvins / 2;

    /// <summary>Most readings followed in one stretch without heat, and the bound aimed at, K.</summary>
    public const int MostOfAbsence = 40;
    public const double AbsenceKelvins = ThermometerKelvins / 2;

    /// <summary>Most changes of the simmer that are followed, and the bound aimed at, K: no cook keeps it nearer than that.</summary>
    public const int MostOfSimmer = 24;
    public const double SimmerKelvins = 1;

    /// <summary>A reading this much below the simmer is not of a simmering pot, K.</summary>
    private const double OfSimmerKelvins = 12;

    /// <summary>A pot this near its simmer has come back to it, K.</summary>
    private const double BackKelvins = 3;

    private readonly LogView view;
    private readonly HeatTimes times;
    private readonly IReadOnlyList<HeatAbsence> absences;
    private readonly double hottest;
    private readonly List<(LogEntry Entry, double At, double Celsius)> readings = [];
    private readonly List<LogEntry> odd = [];
    private readonly HashSet<LogEntry> observed;

    public PotReadings(LogView view, HeatTimes times, IReadOnlyList<HeatAbsence> absences)
    {
        this.view = view;
        this.times = times;
        this.absences = absences;
        hottest = view.Plan.Workings.Environment.HottestReachableCelsius;
        foreach ((LogEntry entry, LogFact.TemperatureRead read) in times.IsOn ? view.Of<LogFact.TemperatureRead>() : [])
        {
            double at = times.Seconds(entry.HappenedAt);
            if (read.Place != ReadingPlace.Pot || at < 0 || at >= times.LimitSeconds)
            {
                continue;
            }

            double celsius = read.Temperature.DegreesCelsius;
            if (celsius < 0 || celsius > hottest + 3)
            {
                odd.Add(entry);
            }
            else
            {
                readings.Add((entry, at, Math.Min(celsius, hottest)));
            }
        }

        (observed, HeatUpDeviation) = OfHeatUp();
        if (view.Plan.Workings.Script.Stages is [{ Climbs: false } stage])
        {
            SimmerStartSeconds = times.Simmers is { } simmers ? times.Seconds(simmers) : view.Plan.HeatUp.Time.Central.TotalSeconds;
            (Shifts, SimmerDeviation) = OfSimmer(Math.Min(stage.SetCelsius, hottest), SimmerStartSeconds.Value);
        }
    }

    /// <summary>Readings no pot can have.</summary>
    public IReadOnlyList<LogEntry> Odd => odd;

    /// <summary>True for a reading on the way up that is held against the pot.</summary>
    public bool IsObserved(LogEntry entry) => observed.Contains(entry);

    /// <summary>No reading on the way up lies further than this from the straight lines between those held against the pot, K.</summary>
    public double HeatUpDeviation { get; }

    /// <summary>No reading of the simmer lies further than this from what is followed in its stead, K.</summary>
    public double SimmerDeviation { get; }

    /// <summary>When it first simmered, s; null for a recipe whose simmer has no one temperature to hold it against.</summary>
    public double? SimmerStartSeconds { get; }

    /// <summary>How far off its set temperature the simmer was kept (R.4).</summary>
    public IReadOnlyList<PotEvent> Shifts { get; } = [];

    /// <summary>A reading as the pot can have it, C.</summary>
    public double Taken(LogFact.TemperatureRead read) => Math.Min(read.Temperature.DegreesCelsius, hottest);

    /// <summary>
    /// Readings that override the calculated temperature: only those while the heat is away or on its way back do, so none before it first went.
    /// </summary>
    public IEnumerable<PotEvent> Overrides()
    {
        for (int i = 0; i < absences.Count; i++)
        {
            DateTimeOffset until = i + 1 < absences.Count ? absences[i + 1].From : DateTimeOffset.MaxValue;
            List<(LogEntry Entry, double At, double Celsius)> within = [.. readings.Where(one => one.Entry.HappenedAt >= absences[i].From && one.Entry.HappenedAt < until)];
            double[] celsius = [.. within.Select(one => one.Celsius)];
            double line = HeatGapReader.HotLine(view.Batch.Limit).DegreesCelsius;
            foreach (int kept in SeriesThinning.Lines([.. within.Select(one => one.At)], celsius, AbsenceKelvins, MostOfAbsence, Crossings(celsius, line)).Kept)
            {
                yield return new PotEvent(within[kept].At, PotEventKind.Read, within[kept].Celsius);
            }
        }
    }

    /// <summary>
    /// A reading near the simmer is the true temperature from half-way back to the reading before to half-way on to the next (R.4); of many, stretches that
    /// one figure stands for.
    /// </summary>
    /// <param name="set">Temperature of the simmer asked for, C.</param>
    /// <param name="start">When it first simmered, s.</param>
    private (IReadOnlyList<PotEvent> Shifts, double Deviation) OfSimmer(double set, double start)
    {
        List<(double At, double Kelvins)> near = [.. NearSimmer(set, start)];
        (IReadOnlyList<SeriesStep> steps, double deviation) = SeriesThinning.Steps([.. near.Select(one => one.Kelvins)], SimmerKelvins, MostOfSimmer);
        return ([.. steps.Select(step => new PotEvent(
            ((step.First == 0 ? start : near[step.First - 1].At) + near[step.First].At) / 2, PotEventKind.Shift, step.Value))], deviation);
    }

    /// <summary>Readings on the way up that are held against the pot, and how far the others lie from them.</summary>
    private (HashSet<LogEntry> Observed, double Deviation) OfHeatUp()
    {
        BatchPlan plan = view.Plan;
        double final = plan.HeatUp.FinalTemperature.DegreesCelsius;
        if (plan.Workings.Script.Stages[0].Climbs)
        {
            return ([], 0);
        }

        List<(LogEntry Entry, double At, double Celsius)> up = [.. readings.Where(one =>
            (times.Simmers is { } simmers ? one.Entry.HappenedAt < simmers : one.At < plan.HeatUp.Time.Central.TotalSeconds)
            && one.Celsius < final - 1
            && !absences.Any(absence => absence.From <= one.Entry.HappenedAt))];
        ThinnedSeries thinned = SeriesThinning.Lines([.. up.Select(one => one.At)], [.. up.Select(one => one.Celsius)], HeatUpKelvins, MostOfHeatUp);
        return (new HashSet<LogEntry>(thinned.Kept.Select(kept => up[kept].Entry), ReferenceEqualityComparer.Instance), thinned.Deviation);
    }

    private IEnumerable<(double At, double Kelvins)> NearSimmer(double set, double start)
    {
        // Moments the pot was seen at its simmer, in order: looked up for every reading below it.
        DateTimeOffset[] seen = [.. view.Entries.Where(entry => entry.Fact is LogFact.Simmers
            || (entry.Fact is LogFact.TemperatureRead { Place: ReadingPlace.Pot } read && read.Temperature.DegreesCelsius > set - BackKelvins)).Select(entry => entry.HappenedAt)];
        foreach ((LogEntry entry, double at, double celsius) in readings)
        {
            double kelvins = celsius - set;
            if (at >= start && Math.Abs(kelvins) <= OfSimmerKelvins && !IsWithoutHeat(entry) && !(kelvins < -BackKelvins && IsOnItsWayBack(entry, seen)))
            {
                yield return (at, kelvins);
            }
        }
    }

    private bool IsWithoutHeat(LogEntry entry) => absences.Any(absence => absence.From <= entry.HappenedAt && entry.HappenedAt < absence.Until);

    /// <summary>True for a reading after the heat came back, before the pot was seen to simmer again.</summary>
    private bool IsOnItsWayBack(LogEntry reading, DateTimeOffset[] seen)
    {
        HeatAbsence? last = absences.LastOrDefault(absence => absence.Until <= reading.HappenedAt);
        if (last is null || reading.HappenedAt - last.Until >= TimeSpan.FromHours(3))
        {
            return false;
        }

        int first = OrderedLookup.FirstAtOrAfter(seen, last.Until);
        return first == seen.Length || seen[first] >= reading.HappenedAt;
    }

    /// <summary>Both sides of the first and the last passage through a line.</summary>
    private static int[] Crossings(double[] values, double line)
    {
        int[] after = [.. Enumerable.Range(1, Math.Max(0, values.Length - 1)).Where(i => values[i] < line != values[i - 1] < line)];
        return after.Length == 0 ? [] : [after[0] - 1, after[0], after[^1] - 1, after[^1]];
    }
}
