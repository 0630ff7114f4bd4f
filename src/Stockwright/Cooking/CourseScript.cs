using Stockwright.Planning;
using Stockwright.Simmering;

namespace Stockwright.Cooking;

/// <summary>The plan's script with what really happened in it, and what was observed on the way.</summary>
internal sealed record CourseScript
{
    /// <summary>Number of the look at the present.</summary>
    public const int LookNow = 0;

    /// <summary>Entries later than this after heat on are left out: no pot is on the heat for so long.</summary>
    public static readonly TimeSpan Horizon = TimeSpan.FromDays(10);

    /// <summary>A pot whose heat was never entered as off is taken as off after this time over its plan.</summary>
    private static readonly TimeSpan ForgottenAfter = TimeSpan.FromHours(24);

    /// <summary>The script.</summary>
    public required SimmerScript Script { get; init; }

    /// <summary>Observations, in order of time.</summary>
    public required IReadOnlyList<PotObservation> Observations { get; init; }

    /// <summary>Planned actions that were done.</summary>
    public required IReadOnlyDictionary<string, PotVisit> Visits { get; init; }

    /// <summary>Things to say about entries.</summary>
    public required IReadOnlyList<PlanNotice> Notices { get; init; }

    /// <summary>Stretches without heat.</summary>
    public required IReadOnlyList<HeatAbsence> Absences { get; init; }

    /// <summary>Writes it (R.1 to R.5).</summary>
    public static CourseScript Of(LogView view, HeatTimes times)
    {
        PlanWorkings workings = view.Plan.Workings;
        SimmerScript basic = Quiet(workings.Script) with { SimmersAtSeconds = Simmers(times) };
        IReadOnlyList<(PotAction Action, DateTimeOffset At)> planned = Dues(view, times, basic).Actions;
        IReadOnlyList<HeatAbsence> absences = HeatAbsences.Of(view, times, [.. planned.Where(one => one.Action.Kind == PotActionKind.Pause)]);
        CourseEvents events = new(view, times, absences);
        (List<(PotAction Action, DateTimeOffset At)> due, DateTimeOffset end) = Dues(view, times, WithoutStops(basic, absences, planned) with { Events = events.OfHeat() });
        IReadOnlyDictionary<string, PotVisit> visits = CourseVisits.Of(view, times, due);
        PotReadings readings = new(view, times, absences);
        IReadOnlyList<PotObservation> observations = PotObservations.Of(view, times, readings);
        return new CourseScript
        {
            Script = Write(view, times, due, end, visits, absences, planned) with
            {
                Events = CourseEvents.Sorted([.. events.All(readings, observations), .. Acts(view, times, workings.Script, visits)]),
                SimmersAtSeconds = Simmers(times),
                EndsAtSeconds = End(view, times) ?? double.PositiveInfinity,
                EndsNotBeforeSeconds = times.IsOn ? Math.Max(0, times.Seconds(view.Now)) : 0,
            },
            Observations = observations,
            Visits = visits,
            Notices = [.. CourseNotices.OfEntries(view, times, readings)],
            Absences = absences,
        };
    }

    /// <summary>When the heat went off, or is taken to have: s after it went on.</summary>
    private static double? End(LogView view, HeatTimes times)
    {
        if (times.HeatOff is { } off)
        {
            return times.Seconds(off);
        }

        TimeSpan forgotten = view.Plan.Simmer.Length + ForgottenAfter;
        return times.IsOn && view.Now - times.HeatOn > forgotten && view.Now - times.HeatOn > Horizon ? Horizon.TotalSeconds : null;
    }

    private static double? Simmers(HeatTimes times) => times.Simmers is { } simmers ? times.Seconds(simmers) : null;

    /// <summary>The script with checks that add nothing: for working out when things are due.</summary>
    private static SimmerScript Quiet(SimmerScript script) => Changed(script, action => action with { AddsNothing = true });

    private static SimmerScript Changed(SimmerScript script, Func<PotAction, PotAction> change) => script with
    {
        Stages = [.. script.Stages.Select(stage => stage with { Actions = [.. stage.Actions.Select(change)] })],
    };

    private static SimmerScript WithoutStops(SimmerScript script, IReadOnlyList<HeatAbsence> absences, IReadOnlyList<(PotAction Action, DateTimeOffset At)> planned)
    {
        (PotAction Action, DateTimeOffset At)[] stops = [.. planned.Where(one => one.Action.Kind == PotActionKind.Pause)];
        HashSet<string> met = [.. absences.Where(absence => absence.IsNightStop).Select(absence => HeatAbsences.StopAt(absence.Entry, stops)?.Key ?? "")];
        return Changed(script, action => met.Contains(action.Key) ? action with { PauseSeconds = 0 } : action);
    }

    /// <summary>When each action is due, and the end of the last stage.</summary>
    private static (List<(PotAction Action, DateTimeOffset At)> Actions, DateTimeOffset End) Dues(LogView view, HeatTimes times, SimmerScript script)
    {
        PlanWorkings workings = view.Plan.Workings;
        SimmerForecaster forecaster = new(workings.Environment, view.Plan.Request.Heat, view.Plan.Request.Lid, view.Plan.Request.Site);
        SimmerOutcome outcome = forecaster.RunCentral(script);
        return ([.. outcome.Actions.Select(one => (one.Action, times.HeatOn + TimeSpan.FromSeconds(one.AtSeconds)))], times.HeatOn + TimeSpan.FromSeconds(outcome.StagesEndSeconds));
    }

    private static IEnumerable<PotEvent> Acts(LogView view, HeatTimes times, SimmerScript script, IReadOnlyDictionary<string, PotVisit> visits)
    {
        foreach (PotAction action in script.Stages.SelectMany(stage => stage.Actions))
        {
            if (visits.TryGetValue(action.Key, out PotVisit visit))
            {
                double at = Math.Clamp(times.Seconds(visit.At), 0, End(view, times) ?? double.PositiveInfinity);
                yield return new PotEvent(at, PotEventKind.Act, 0, action with { AddsNothing = true, PauseSeconds = 0 });
            }
        }
    }

    /// <summary>The stages without what was done; a check that is overdue is counted for now, one that was missed adds nothing.</summary>
    private static SimmerScript Write(
        LogView view,
        HeatTimes times,
        IReadOnlyList<(PotAction Action, DateTimeOffset At)> due,
        DateTimeOffset end,
        IReadOnlyDictionary<string, PotVisit> visits,
        IReadOnlyList<HeatAbsence> absences,
        IReadOnlyList<(PotAction Action, DateTimeOffset At)> planned)
    {
        Dictionary<string, DateTimeOffset> dues = due.GroupBy(one => one.Action.Key, StringComparer.Ordinal).ToDictionary(group => group.Key, group => group.First().At, StringComparer.Ordinal);
        DateTimeOffset lastVisit = visits.Where(visit => visit.Key.StartsWith("check-", StringComparison.Ordinal)).Select(visit => visit.Value.At).DefaultIfEmpty(DateTimeOffset.MinValue).Max();
        string? open = due.LastOrDefault(one => one.Action.Kind == PotActionKind.Check && one.At <= view.Now).Action?.Key;
        SimmerScript script = WithoutStops(view.Plan.Workings.Script, absences, planned);
        double now = times.IsOn ? Math.Max(0, times.Seconds(view.Now)) : 0;
        PotAction Changed(PotAction action)
        {
            bool isPast = times.IsOn && dues.TryGetValue(action.Key, out DateTimeOffset at) && at <= view.Now;
            if (action.Kind != PotActionKind.Check || !isPast)
            {
                return action;
            }

            bool isOpen = string.Equals(action.Key, open, StringComparison.Ordinal) && lastVisit < dues[action.Key] && view.Now < end;
            return isOpen ? action with { NotBeforeSeconds = now } : action with { AddsNothing = true };
        }

        return script with
        {
            Stages = [.. script.Stages.Select(stage => stage with
            {
                Actions = NightClock.Keep(view, dues, stage, [.. stage.Actions.Where(action => !visits.ContainsKey(action.Key)).Select(Changed)]),
            })],
        };
    }
}
