using Stockwright.Kitchen;
using Stockwright.Logbook;
using Stockwright.Physics;
using Stockwright.Simmering;

namespace Stockwright.Cooking;

/// <summary>Turns entries into what happened to the pot (R.2 to R.4).</summary>
internal sealed class CourseEvents(LogView view, HeatTimes times, IReadOnlyList<HeatAbsence> absences)
{
    /// <summary>Liquid lost in boiling over when nobody can say, share of it (estimate).</summary>
    private const double BoiledOverShare = 0.02;

    /// <summary>How much cooler a pot is that went off the simmer (estimate), and how long it takes to be noticed, s.</summary>
    private const double OffTheBoilKelvins = 5;
    private const double OffTheBoilSeconds = 30 * 60;

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
        return Sorted(events.Where(one => one.AtSeconds < times.LimitSeconds));
    }

    /// <summary>Everything that happened to it, and the looks at what was observed.</summary>
    public IReadOnlyList<PotEvent> All(PotReadings readings, IReadOnlyList<PotObservation> observations) => !times.IsOn
        ? []
        :
        [
            .. OfHeat(),
            new PotEvent(Math.Clamp(times.Seconds(view.Now), 0, CourseScript.Horizon.TotalSeconds), PotEventKind.Look, CourseScript.LookNow),
            .. observations.Where(seen => seen.AtSeconds is not null).Select(seen => new PotEvent(Math.Max(0, seen.AtSeconds!.Value), PotEventKind.Look, seen.Look)),
            .. view.Entries.Select(entry => Of(entry, times.Seconds(entry.HappenedAt))).OfType<PotEvent>(),
            .. readings.Overrides(),
            .. Shifts(readings),
        ];

    private PotEvent? Of(LogEntry entry, double at)
    {
        bool isDuring = at >= 0 && at < times.LimitSeconds;
        return entry.Fact switch
        {
            LogFact.WaterAdded water when isDuring => new(at, PotEventKind.Pour, water.Volume.CubicMeters * SimmerForecaster.ColdDensity),
            LogFact.BoiledOver { Lost: { } lost } when isDuring => new(at, PotEventKind.Lose, lost.CubicMeters * SimmerForecaster.ColdDensity),
            LogFact.BoiledOver when isDuring => new(at, PotEventKind.LoseShare, BoiledOverShare),
            LogFact.LidChanged lid when at < times.LimitSeconds => new(Math.Max(0, at), PotEventKind.Lid, LidEscape.CentralFraction(lid.Lid)),
            LogFact.HeatMoved { HobId: LogFact.HeatMoved.Oven } when isDuring => new(at, PotEventKind.Oven),
            LogFact.HeatMoved { HobId: not LogFact.HeatMoved.NoHeat } moved when isDuring => new(at, PotEventKind.Hob, Watts(moved.HobId)),
            _ => null,
        };
    }

    /// <summary>What the hob gives, as power of the planned one; one that nobody knows is taken to heat like that.</summary>
    private double Watts(string hobId)
    {
        Hob planned = view.Plan.Request.Heat;
        Hob used = view.Hob(hobId) ?? planned;
        return (double)used.RatedPower.Watts * (used.Efficiency.Value / planned.Efficiency.Value);
    }

    /// <summary>How far off its set temperature the simmer was kept (R.4). Only for recipes of one stage; from now on the simmer is as planned.</summary>
    private List<PotEvent> Shifts(PotReadings readings)
    {
        if (readings.SimmerStartSeconds is not { } start)
        {
            return [];
        }

        double now = Math.Min(times.Seconds(view.Now), times.LimitSeconds);
        List<PotEvent> shifts = [.. readings.Shifts];
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
}
