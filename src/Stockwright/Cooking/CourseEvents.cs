using Stockwright.Kitchen;
using Stockwright.Logbook;
using Stockwright.Numerics;
using Stockwright.Physics;
using Stockwright.Planning;
using Stockwright.Simmering;
using UnitsNet;

namespace Stockwright.Cooking;

/// <summary>Turns entries into what befell the pot and what was observed of it (R.2 to R.6).</summary>
internal sealed class CourseEvents(LogView view, HeatTimes times, IReadOnlyList<HeatAbsence> absences)
{
    /// <summary>Standard deviation of a level read against a ruler in a simmering pot, m (estimate).</summary>
    public const double LevelMetres = 0.004;

    /// <summary>Standard deviation of a kitchen thermometer in a pot that is not stirred, K (estimate).</summary>
    public const double ThermometerKelvins = 2;

    /// <summary>Standard deviation of the moment a cook calls a simmer, s (estimate).</summary>
    public const double SimmerSeconds = 180;

    /// <summary>Liquid lost in boiling over when nobody can say, share of it (estimate).</summary>
    public const double BoiledOverShare = 0.02;

    /// <summary>How much cooler a pot is that went off the simmer (estimate), and how long it takes to be noticed, s.</summary>
    private const double OffTheBoilKelvins = 5;
    private const double OffTheBoilSeconds = 30 * 60;

    private const double RanLowMetres = 0.02;

    /// <summary>Most levels held against the pot, and the bound aimed at, m: a quarter of what a reading may be off (R.15).</summary>
    private const int MostLevels = 60;
    private const double LevelBoundMetres = LevelMetres / 4;

    /// <summary>The level is read before the water goes in: water entered so shortly before it belongs after it.</summary>
    private static readonly TimeSpan SameVisit = TimeSpan.FromMinutes(3);

    private readonly PotEnvironment environment = view.Plan.Workings.Environment;
    private readonly List<PlanNotice> notices = [];
    private readonly List<PotObservation> observations = [];
    private readonly DateTimeOffset[] pours = [.. view.Of<LogFact.WaterAdded>().Select(one => one.Entry.HappenedAt)];

    public IReadOnlyList<PlanNotice> Notices => notices;

    public IReadOnlyList<PotObservation> Observations => observations;

    private double Limit => times.HeatOff is { } off ? times.Seconds(off) : CourseScript.Horizon.TotalSeconds;

    /// <summary>In order of time; what is looked at, before what is done.</summary>
    public static IReadOnlyList<PotEvent> Sorted(IEnumerable<PotEvent> events) =>
        [.. events.OrderBy(one => one.AtSeconds).ThenBy(one => one.Kind switch
        {
            PotEventKind.Look => 0,
            PotEventKind.Act => 1,
            PotEventKind.HeatAway => 2,
            PotEventKind.Read => 3,
            _ => 4,
        })];

    /// <summary>The heat going and coming, and no more.</summary>
    public IReadOnlyList<PotEvent> OfHeat()
    {
        List<PotEvent> events = [];
        foreach (HeatAbsence absence in absences)
        {
            events.Add(new PotEvent(times.Seconds(absence.From), PotEventKind.HeatAway));
            if (absence.IsNightStop)
            {
                // Strained and cooled outside the pot, as in the plan.
                events.Add(new PotEvent(times.Seconds(absence.From), PotEventKind.Read, 5));
            }

            events.Add(new PotEvent(times.Seconds(absence.Until), PotEventKind.HeatBack));
        }

        events.AddRange(view.Of<LogFact.Simmers>()
            .Where(one => times.IsOn && one.Entry.HappenedAt > (times.Simmers ?? times.HeatOn))
            .Select(one => new PotEvent(times.Seconds(one.Entry.HappenedAt), PotEventKind.SimmersAgain)));
        return Sorted(events.Where(one => one.AtSeconds < Limit));
    }

    /// <summary>Everything; fills <see cref="Observations"/> and <see cref="Notices"/>.</summary>
    public IEnumerable<PotEvent> All()
    {
        if (!times.IsOn)
        {
            return [];
        }

        List<PotEvent> events = [.. OfHeat(), new PotEvent(Math.Clamp(times.Seconds(view.Now), 0, CourseScript.Horizon.TotalSeconds), PotEventKind.Look, CourseScript.LookNow)];
        if (times.Simmers is { } simmers && !view.Plan.Workings.Script.Stages[0].Climbs)
        {
            LogEntry entry = view.Entries.First(one => one.HappenedAt == simmers);
            observations.Add(new PotObservation(ObservationKind.Simmer, 0, times.Seconds(simmers), SimmerSeconds, entry));
        }

        PotReadings readings = new(view, times, absences, Limit);
        HashSet<LogEntry> levels = Levels();
        foreach (LogEntry entry in view.Entries)
        {
            Enter(events, entry, times.Seconds(entry.HappenedAt), readings, levels);
        }

        events.AddRange(readings.Overrides());
        events.AddRange(Shifts(readings));
        notices.AddRange(readings.Notices());
        if (view.Last<LogFact.Strained>() is { Fact: LogFact.Strained strained } measured)
        {
            observations.Add(new PotObservation(ObservationKind.Strained, 0, strained.Volume.CubicMeters * SimmerForecaster.ColdDensity, double.NaN, measured));
        }

        return events;
    }

    private void Enter(List<PotEvent> events, LogEntry entry, double at, PotReadings readings, HashSet<LogEntry> levels)
    {
        bool isBefore = at < 0;
        bool isAfter = at >= Limit;
        switch (entry.Fact)
        {
            case LogFact.LevelRead level when levels.Contains(entry):
                Observe(events, ObservationKind.Level, entry, LookTime(entry), environment.Pot.InnerHeight.Meters - level.BelowRim.Meters, LevelMetres);
                break;
            case LogFact.RanLow when !isAfter && !isBefore:
                Observe(events, ObservationKind.Cover, entry, at, -RanLowMetres / 2, RanLowMetres);
                break;
            case LogFact.WaterAdded water when isBefore:
                notices.Add(new PlanNotice(NoticeLevel.Hint, "water-before-heat", $"{KitchenFormat(water.Volume)} entered before the heat went on is taken as part of the water to the line."));
                break;
            case LogFact.WaterAdded water when !isAfter:
                events.Add(new PotEvent(at, PotEventKind.Pour, water.Volume.CubicMeters * SimmerForecaster.ColdDensity));
                break;
            case LogFact.BoiledOver { Lost: { } lost } when !isBefore && !isAfter:
                events.Add(new PotEvent(at, PotEventKind.Lose, lost.CubicMeters * SimmerForecaster.ColdDensity));
                break;
            case LogFact.BoiledOver when !isBefore && !isAfter:
                events.Add(new PotEvent(at, PotEventKind.LoseShare, BoiledOverShare));
                notices.Add(new PlanNotice(NoticeLevel.Hint, "boiled-over-unknown", "It boiled over and nobody could say how much was lost: taken as 2 % of the liquid. Read the level once more, and the calculation follows it."));
                break;
            case LogFact.LidChanged lid when !isAfter:
                events.Add(new PotEvent(Math.Max(0, at), PotEventKind.Lid, Escape(lid.Lid)));
                break;
            case LogFact.HeatMoved moved when !isBefore && !isAfter:
                Move(events, moved, at);
                break;
            case LogFact.TemperatureRead read when readings.IsObserved(entry):
                Observe(events, ObservationKind.Temperature, entry, at, readings.Taken(read), ThermometerKelvins);
                break;
        }
    }

    /// <summary>Levels held against the pot: all that a cook reads, and of a gauge's thousands as many as show what all of them do.</summary>
    private HashSet<LogEntry> Levels()
    {
        List<(LogEntry Entry, LogFact.LevelRead Fact)> all = [.. view.Of<LogFact.LevelRead>()
            .Where(one => times.Seconds(one.Entry.HappenedAt) is > -3600 and double at && at < Limit)];
        ThinnedSeries thinned = SeriesThinning.Lines(
            [.. all.Select(one => times.Seconds(one.Entry.HappenedAt))], [.. all.Select(one => one.Fact.BelowRim.Meters)], LevelBoundMetres, MostLevels);
        return new HashSet<LogEntry>(thinned.Kept.Select(kept => all[kept].Entry), ReferenceEqualityComparer.Instance);
    }

    private void Observe(List<PotEvent> events, ObservationKind kind, LogEntry entry, double at, double value, double sigma)
    {
        int look = observations.Count + 1;
        observations.Add(new PotObservation(kind, look, value, sigma, entry));
        events.Add(new PotEvent(Math.Max(0, at), PotEventKind.Look, look));
    }

    private double LookTime(LogEntry level)
    {
        int first = OrderedLookup.FirstAtOrAfter(pours, level.HappenedAt - SameVisit);
        return times.Seconds(first < pours.Length && pours[first] <= level.HappenedAt ? pours[first] : level.HappenedAt);
    }

    private static double Escape(LidPosition lid) => LidEscape.CentralFraction(lid);

    private void Move(List<PotEvent> events, LogFact.HeatMoved moved, double at)
    {
        if (string.Equals(moved.HobId, LogFact.HeatMoved.Oven, StringComparison.Ordinal))
        {
            events.Add(new PotEvent(at, PotEventKind.Oven));
            return;
        }

        if (string.Equals(moved.HobId, LogFact.HeatMoved.NoHeat, StringComparison.Ordinal))
        {
            return;
        }

        Hob planned = view.Plan.Request.Heat;
        Hob? hob = view.Batch.Hobs.Append(planned).FirstOrDefault(one => string.Equals(one.Id, moved.HobId, StringComparison.Ordinal));
        if (hob is null)
        {
            notices.Add(new PlanNotice(NoticeLevel.Hint, "unknown-hob", $"Nothing is known of the hob '{moved.HobId}': it is taken to heat like the planned one."));
        }

        Hob used = hob ?? planned;
        double watts = (double)used.RatedPower.Watts * (used.Efficiency.Value / planned.Efficiency.Value);
        events.Add(new PotEvent(at, PotEventKind.Hob, watts));
    }

    /// <summary>
    /// How far off its set temperature the simmer was kept (R.4). Only for recipes of one stage; from now on the simmer is as planned.
    /// </summary>
    private List<PotEvent> Shifts(PotReadings readings)
    {
        List<PotEvent> shifts = [];
        if (view.Plan.Workings.Script.Stages is not [{ Climbs: false } stage])
        {
            return shifts;
        }

        double set = Math.Min(stage.SetCelsius, environment.HottestReachableCelsius);
        double start = times.Simmers is { } simmers ? times.Seconds(simmers) : view.Plan.HeatUp.Time.Central.TotalSeconds;
        double now = Math.Min(times.Seconds(view.Now), Limit);
        shifts.AddRange(readings.Shifts(set, start));
        foreach ((LogEntry entry, _) in view.Of<LogFact.OffTheBoil>().Where(one => times.Seconds(one.Entry.HappenedAt) > start))
        {
            double from = times.Seconds(entry.HappenedAt);
            double? again = view.Of<LogFact.Simmers>().Select(one => (double?)times.Seconds(one.Entry.HappenedAt)).FirstOrDefault(at => at > from);
            shifts.Add(new PotEvent(from, PotEventKind.Shift, -OffTheBoilKelvins));
            shifts.Add(new PotEvent(Math.Min(again ?? (from + OffTheBoilSeconds), now), PotEventKind.Shift, 0));
        }

        shifts.RemoveAll(shift => shift.AtSeconds >= now);
        if (shifts.Count > 0)
        {
            shifts.Add(new PotEvent(now, PotEventKind.Shift, 0));
        }

        return shifts;
    }

    private static string KitchenFormat(Volume volume) => Measures.KitchenFormat.Both(volume);
}
