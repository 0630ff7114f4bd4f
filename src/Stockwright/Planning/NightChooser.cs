using System.Globalization;
using Stockwright.Kitchen;

namespace Stockwright.Planning;

/// <summary>Works out what each way of freeing the night would mean.</summary>
internal static class NightChooser
{
    private const int MostSteps = 48;
    private const int MostLaid = 6;
    private static readonly TimeSpan Step = TimeSpan.FromMinutes(30);

    /// <summary>Lists the ways.</summary>
    /// <param name="request">What is asked.</param>
    /// <param name="settled">What is done about the night, where the planner chose it.</param>
    /// <param name="timeline">The plan as asked.</param>
    /// <param name="boiling">The time it simmers.</param>
    /// <param name="moved">Lays the plan with the heat on so much later.</param>
    /// <param name="laid">Lays the same batch for a request that spends the night another way; the plan made from it may differ by minutes, as its water does by spoonfuls.</param>
    public static IReadOnlyList<NightChoice> Choices(
        PlanRequest request, NightPlan settled, Timeline timeline, BoilingReport boiling, Func<TimeSpan, Timeline> moved, Func<PlanRequest, Timeline> laid)
    {
        if (request.Schedule.Night == NightPlan.KeepFree && settled != NightPlan.KeepFree)
        {
            return Others(request, settled, laid);
        }

        int now = NightSteps(timeline);
        if (now == 0 || (request.Schedule.Night is NightPlan.OvenHold or NightPlan.StopAndCool && !request.IsNeverPutAway))
        {
            return [];
        }

        List<NightChoice> choices = [];
        if (MoveStart(request, timeline, now, moved) is { } choice)
        {
            choices.Add(choice);
        }

        bool long_ = boiling.PlannedTime >= TimeSpan.FromHours(3) && !request.IsNeverPutAway;
        if (long_ && request.Pot.Kind == PotKind.Open)
        {
            AddChoice(choices, request, laid, NightPlan.OvenHold, "oven-hold", "Lid on, in a low oven or slow appliance overnight", "Hardly any water lost, and no checks until morning; the appliance must hold its heat by itself.");
        }

        if (long_)
        {
            AddStop(choices, request, laid);
        }

        return choices;
    }

    /// <summary>What else could be done about a night the planner has settled.</summary>
    private static List<NightChoice> Others(PlanRequest request, NightPlan settled, Func<PlanRequest, Timeline> laid)
    {
        List<NightChoice> choices = [];
        AddChoice(choices, request, laid, NightPlan.GetUp, "get-up", "Get up for it", "Nothing waits; the checks of the night are yours.");
        if (settled == NightPlan.OvenHold)
        {
            AddStop(choices, request, laid);
        }

        return choices;
    }

    private static void AddStop(List<NightChoice> choices, PlanRequest request, Func<PlanRequest, Timeline> laid) =>
        AddChoice(choices, request, laid, NightPlan.StopAndCool, "stop-and-cool", "Stop and cool at bedtime, go on in the morning", "Twice the cooling and heating, and a day longer; nothing on the heat while you sleep.");

    private static int NightSteps(Timeline timeline) => timeline.Steps.Count(step => step.InNight);

    private static void AddChoice(List<NightChoice> choices, PlanRequest request, Func<PlanRequest, Timeline> laid, NightPlan night, string code, string title, string consequence)
    {
        PlanRequest other = request with { Schedule = request.Schedule with { Night = night } };
        Timeline timeline = laid(other);
        choices.Add(new NightChoice(code, title, consequence, other, NightSteps(timeline), timeline.Start, timeline.Ready));
    }

    /// <summary>The smallest move, up to a day either way, that leaves the fewest steps in the night; never into the past.</summary>
    private static NightChoice? MoveStart(PlanRequest request, Timeline timeline, int now, Func<TimeSpan, Timeline> moved)
    {
        // Up to the chilling every step moves with the start. What follows waits for the morning, so a promising move is laid out in full.
        DateTimeOffset chill = timeline.Steps.FirstOrDefault(step => step.Kind == StepKind.Chill)?.At ?? timeline.Ready;
        IReadOnlyList<DateTimeOffset> visits = [.. timeline.Steps.Where(step => step.HandsOn > TimeSpan.Zero && step.At <= chill).Select(step => step.At)];
        IEnumerable<TimeSpan> promising = Shifts(request)
            .Select(shift => (Shift: shift, Left: visits.Count(at => !request.Schedule.IsAwake(at + shift))))
            .Where(one => one.Left < now && !(timeline.Start + one.Shift < request.Schedule.Now))
            .OrderBy(one => one.Left)
            .ThenBy(one => one.Shift.Duration())
            .Select(one => one.Shift)
            .Take(MostLaid);
        (TimeSpan Shift, Timeline Timeline)? best = null;
        int fewest = now;
        foreach (TimeSpan shift in promising)
        {
            Timeline laid = moved(shift);
            if (NightSteps(laid) < fewest && !(laid.Ready > request.Schedule.ReadyBy))
            {
                best = (shift, laid);
                fewest = NightSteps(laid);
            }

            if (fewest == 0)
            {
                break;
            }
        }

        return best is { } found ? Choice(request, found.Shift, found.Timeline, fewest) : null;
    }

    /// <summary>Later and earlier by half hours; only earlier when the stock is waited for.</summary>
    private static IEnumerable<TimeSpan> Shifts(PlanRequest request)
    {
        IEnumerable<TimeSpan> hours = Enumerable.Range(1, MostSteps).Select(i => Step * i);
        return hours.SelectMany<TimeSpan, TimeSpan>(shift => request.Schedule.ReadyBy is null ? [shift, -shift] : [-shift]);
    }

    private static NightChoice Choice(PlanRequest request, TimeSpan shift, Timeline laid, int left)
    {
        PlanRequest other = request with { Schedule = request.Schedule with { StartAt = laid.Start, ReadyBy = null } };
        string hours = Math.Abs(shift.TotalHours).ToString("0.#", CultureInfo.InvariantCulture);
        string direction = shift > TimeSpan.Zero ? "later" : "earlier";
        string consequence = left switch
        {
            0 => "nothing falls in the night",
            1 => "1 step still falls in the night",
            _ => string.Create(CultureInfo.InvariantCulture, $"{left} steps still fall in the night"),
        };
        return new NightChoice("move-start", $"Start {hours} h {direction}", $"The same batch; {consequence}.", other, left, laid.Start, laid.Ready);
    }
}
