using System.Globalization;
using Stockwright.Kitchen;

namespace Stockwright.Planning;

/// <summary>Works out what each way of freeing the night would mean.</summary>
internal static class NightChooser
{
    private static readonly TimeSpan Step = TimeSpan.FromMinutes(30);

    public static IReadOnlyList<NightChoice> Choices(PlanRequest request, Timeline timeline, BoilingReport boiling)
    {
        int now = NightSteps(timeline);
        if (now == 0 || request.Schedule.Night != NightPlan.GetUp)
        {
            return [];
        }

        List<NightChoice> choices = [];
        if (MoveStart(request, timeline, now) is { } moved)
        {
            choices.Add(moved);
        }

        bool long_ = boiling.PlannedTime >= TimeSpan.FromHours(3);
        if (long_ && request.Pot.Kind == PotKind.Open)
        {
            AddChoice(choices, request, NightPlan.OvenHold, "oven-hold", "Lid on, in a low oven or slow appliance overnight", "Hardly any water lost, and no checks until morning; the appliance must hold its heat by itself.");
        }

        if (long_)
        {
            AddChoice(choices, request, NightPlan.StopAndCool, "stop-and-cool", "Stop and cool at bedtime, go on in the morning", "Twice the cooling and heating, and a day longer; the safest night.");
        }

        return choices;
    }

    private static int NightSteps(Timeline timeline) => timeline.Steps.Count(step => step.InNight);

    private static void AddChoice(List<NightChoice> choices, PlanRequest request, NightPlan night, string code, string title, string consequence)
    {
        PlanRequest other = request with { Schedule = request.Schedule with { Night = night } };
        if (BatchPlanner.TimelineOf(other) is { } timeline)
        {
            choices.Add(new NightChoice(code, title, consequence, other, NightSteps(timeline), timeline.Start, timeline.Ready));
        }
    }

    /// <summary>The smallest move, up to a day either way, that leaves the fewest steps in the night.</summary>
    private static NightChoice? MoveStart(PlanRequest request, Timeline timeline, int now)
    {
        TimeSpan best = TimeSpan.Zero;
        int fewest = now;
        for (int i = 1; i <= 48; i++)
        {
            foreach (TimeSpan shift in new[] { Step * i, Step * -i })
            {
                if (request.Schedule.ReadyBy is not null && shift > TimeSpan.Zero)
                {
                    continue;
                }

                int left = timeline.Steps.Count(step => step.HandsOn > TimeSpan.Zero && !request.Schedule.IsAwake(step.At + shift));
                if (left < fewest)
                {
                    fewest = left;
                    best = shift;
                }
            }
        }

        if (best == TimeSpan.Zero)
        {
            return null;
        }

        DateTimeOffset start = timeline.Start + best;
        PlanRequest moved = request with { Schedule = request.Schedule with { StartAt = start, ReadyBy = null } };
        string hours = Math.Abs(best.TotalHours).ToString("0.#", CultureInfo.InvariantCulture);
        string direction = best > TimeSpan.Zero ? "later" : "earlier";
        string left2 = fewest == 0 ? "nothing falls in the night" : string.Create(CultureInfo.InvariantCulture, $"{fewest} steps still fall in the night");
        return new NightChoice("move-start", $"Start {hours} h {direction}", $"The same batch; {left2}.", moved, fewest, start, timeline.Ready + best);
    }
}
