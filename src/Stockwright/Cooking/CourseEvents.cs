using Stockwright.Kitchen;
using Stockwright.Logbook;
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

    /// <summary>A reading this much below the simmer is not of a simmering pot, K.</summary>
    private const double SimmerKelvins = 12;

    /// <summary>A pot this near its simmer has come back to it, K.</summary>
    private const double BackKelvins = 3;

    private const double RanLowMetres = 0.02;

    /// <summary>The level is read before the water goes in: water entered so shortly before it belongs after it.</summary>
    private static readonly TimeSpan SameVisit = TimeSpan.FromMinutes(3);

    private readonly PotEnvironment environment = view.Plan.Workings.Environment;
    private readonly List<PlanNotice> notices = [];
    private readonly List<PotObservation> observations = [];

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

        foreach (LogEntry entry in view.Entries)
        {
            Enter(events, entry, times.Seconds(entry.HappenedAt));
        }

        events.AddRange(Shifts());
        if (view.Last<LogFact.Strained>() is { Fact: LogFact.Strained strained } measured)
        {
            observations.Add(new PotObservation(ObservationKind.Strained, 0, strained.Volume.CubicMeters * SimmerForecaster.ColdDensity, double.NaN, measured));
        }

        return events;
    }

    private void Enter(List<PotEvent> events, LogEntry entry, double at)
    {
        bool isBefore = at < 0;
        bool isAfter = at >= Limit;
        switch (entry.Fact)
        {
            case LogFact.LevelRead level when !isAfter && at > -3600:
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
                notices.Add(new PlanNotice(NoticeLevel.Hint, "boiled-over-unknown", "It boiled over and nobody could say how much was lost: reckoned as 2 % of the liquid. Read the level once more, and the reckoning follows it."));
                break;
            case LogFact.LidChanged lid when !isAfter:
                events.Add(new PotEvent(Math.Max(0, at), PotEventKind.Lid, Escape(lid.Lid)));
                break;
            case LogFact.HeatMoved moved when !isBefore && !isAfter:
                Move(events, moved, at);
                break;
            case LogFact.TemperatureRead { Place: ReadingPlace.Pot } read when !isBefore && !isAfter:
                Read(events, entry, read.Temperature.DegreesCelsius, at);
                break;
        }
    }

    private void Observe(List<PotEvent> events, ObservationKind kind, LogEntry entry, double at, double value, double sigma)
    {
        int look = observations.Count + 1;
        observations.Add(new PotObservation(kind, look, value, sigma, entry));
        events.Add(new PotEvent(Math.Max(0, at), PotEventKind.Look, look));
    }

    private double LookTime(LogEntry level)
    {
        LogEntry? water = view.Entries.FirstOrDefault(entry =>
            entry.Fact is LogFact.WaterAdded && entry.HappenedAt <= level.HappenedAt && entry.HappenedAt >= level.HappenedAt - SameVisit);
        return times.Seconds(water?.HappenedAt ?? level.HappenedAt);
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

        Hob planned = view.Plan.Request.Hob;
        Hob? hob = view.Batch.Hobs.Append(planned).FirstOrDefault(one => string.Equals(one.Id, moved.HobId, StringComparison.Ordinal));
        if (hob is null)
        {
            notices.Add(new PlanNotice(NoticeLevel.Hint, "unknown-hob", $"Nothing is known of the hob '{moved.HobId}': it is reckoned to heat like the planned one."));
        }

        Hob used = hob ?? planned;
        double watts = (double)used.RatedPower.Watts * (used.Efficiency.Value / planned.Efficiency.Value);
        events.Add(new PotEvent(at, PotEventKind.Hob, watts));
    }

    private void Read(List<PotEvent> events, LogEntry entry, double celsius, double at)
    {
        if (celsius < 0 || celsius > environment.HottestReachableCelsius + 3)
        {
            notices.Add(new PlanNotice(NoticeLevel.Warning, "odd-temperature", FormattableString.Invariant(
                $"{celsius:0.#} °C ({(celsius * 1.8) + 32:0.#} °F) cannot be the temperature of this pot: it is kept in the log and not reckoned with.")));
            return;
        }

        double taken = Math.Min(celsius, environment.HottestReachableCelsius);
        events.Add(new PotEvent(at, PotEventKind.Read, taken));
        bool isUp = times.Simmers is { } simmers ? entry.HappenedAt < simmers : at < view.Plan.HeatUp.Time.Central.TotalSeconds;
        bool climbs = view.Plan.Workings.Script.Stages[0].Climbs;
        if (isUp && !climbs && taken < view.Plan.HeatUp.FinalTemperature.DegreesCelsius - 1 && !absences.Any(absence => absence.From <= entry.HappenedAt))
        {
            Observe(events, ObservationKind.Temperature, entry, at, taken, ThermometerKelvins);
        }
    }

    /// <summary>
    /// A reading near the simmer is the true temperature from half-way back to the reading before to half-way on to the next (R.4). Only for recipes of one
    /// stage; from now on the simmer is as planned.
    /// </summary>
    private List<PotEvent> Shifts()
    {
        List<PotEvent> shifts = [];
        if (view.Plan.Workings.Script.Stages is not [{ Climbs: false } stage])
        {
            return shifts;
        }

        double set = Math.Min(stage.SetCelsius, environment.HottestReachableCelsius);
        double start = times.Simmers is { } simmers ? times.Seconds(simmers) : view.Plan.HeatUp.Time.Central.TotalSeconds;
        double now = Math.Min(times.Seconds(view.Now), Limit);
        List<(double At, double Kelvins)> readings = [.. SimmerReadings(set, start).OrderBy(one => one.At)];
        for (int i = 0; i < readings.Count; i++)
        {
            double from = i == 0 ? (start + readings[i].At) / 2 : (readings[i - 1].At + readings[i].At) / 2;
            shifts.Add(new PotEvent(from, PotEventKind.Shift, readings[i].Kelvins));
        }

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

    private IEnumerable<(double At, double Kelvins)> SimmerReadings(double set, double start)
    {
        foreach ((LogEntry entry, LogFact.TemperatureRead read) in view.Of<LogFact.TemperatureRead>())
        {
            double at = times.Seconds(entry.HappenedAt);
            double kelvins = Math.Min(read.Temperature.DegreesCelsius, environment.HottestReachableCelsius) - set;
            bool isOfSimmer = read.Place == ReadingPlace.Pot && at >= start && at < Limit && Math.Abs(kelvins) <= SimmerKelvins
                && read.Temperature.DegreesCelsius <= environment.HottestReachableCelsius + 3;
            if (isOfSimmer && !IsWithoutHeat(entry) && !(kelvins < -BackKelvins && IsOnItsWayBack(entry, set)))
            {
                yield return (at, kelvins);
            }
        }
    }

    private bool IsWithoutHeat(LogEntry entry) => absences.Any(absence => absence.From <= entry.HappenedAt && entry.HappenedAt < absence.Until);

    /// <summary>True for a reading after the heat came back, before the pot was seen to simmer again.</summary>
    private bool IsOnItsWayBack(LogEntry reading, double set)
    {
        HeatAbsence? last = absences.LastOrDefault(absence => absence.Until <= reading.HappenedAt);
        return last is not null && reading.HappenedAt - last.Until < TimeSpan.FromHours(3) && !view.Entries.Any(entry =>
            entry.HappenedAt >= last.Until && entry.HappenedAt < reading.HappenedAt
            && (entry.Fact is LogFact.Simmers || (entry.Fact is LogFact.TemperatureRead { Place: ReadingPlace.Pot } read && read.Temperature.DegreesCelsius > set - BackKelvins)));
    }

    private static string KitchenFormat(Volume volume) => Measures.KitchenFormat.Both(volume);
}
