using Stockwright.Recipes;

namespace Stockwright.Planning;

/// <summary>
/// Lays every step of the whole wish: round after round, and the finishing of what has gathered (equation F.9 in docs/equations.md). A round begins when
/// the hands are free of the one before, and not so late that work would fall in the night.
/// </summary>
internal sealed class TimelineWriter(TimelineParts parts)
{
    private readonly PlanSchedule schedule = parts.Request.Schedule;

    /// <summary>Time from the cook's start to the first heat on.</summary>
    public TimeSpan BeforeHeat => new RoundWriter(parts, parts.Rounds[0]).BeforeHeat;

    /// <summary>Lays the steps.</summary>
    /// <param name="heatOn">When the heat goes on under the first pots.</param>
    public Timeline Write(DateTimeOffset heatOn)
    {
        StepBuilder builder = new(schedule);
        FinishWriter finish = new(parts);
        List<RoundTimes> rounds = [];
        DateTimeOffset handsFree = DateTimeOffset.MinValue;
        DateTimeOffset ready = DateTimeOffset.MinValue;
        int gathered = 0;
        for (int i = 0; i < parts.Rounds.Count; i++)
        {
            RoundWriter round = new(parts, parts.Rounds[i]);
            DateTimeOffset on = heatOn;
            if (i > 0)
            {
                DateTimeOffset start = NextStart(round, handsFree, rounds[0].Start);
                if (gathered > 0 && LocalDay(start) != LocalDay(handsFree))
                {
                    // What has waited overnight is finished before the next pots are filled.
                    ready = finish.Portion(builder, rounds[^1].Cold, gathered * parts.YieldLitres);
                    gathered = 0;
                    start = NextStart(round, Later(handsFree, ready), rounds[0].Start);
                }

                on = start + round.BeforeHeat;
            }

            builder.Round = Name(i);
            builder.KeyPrefix = i > 0 ? string.Create(System.Globalization.CultureInfo.InvariantCulture, $"round-{i + 1}-") : "";
            RoundTimes times = round.Write(builder, on);
            rounds.Add(times);
            gathered += parts.Rounds[i].Pots;
            handsFree = times.Strained + (StepTimes.CoolHands * parts.Rounds[i].Pots);
            builder.Round = "";
            if (!parts.Request.Recipe.ChillsAndDefats)
            {
                builder.Round = Name(i);
                ready = finish.Portion(builder, times.Cold, gathered * parts.YieldLitres);
                handsFree = Later(handsFree, ready);
                gathered = 0;
                builder.Round = "";
            }
        }

        if (gathered > 0)
        {
            finish.Portion(builder, rounds[^1].Cold, gathered * parts.YieldLitres);
        }

        IReadOnlyList<PlanStep> steps = builder.InOrder();
        RoundTimes first = rounds[0];
        return new Timeline(
            steps,
            first.Start,
            first.HeatOn,
            first.HeatOff,
            first.Strained,
            steps.Max(step => step.End),
            TimeSpan.FromTicks(steps.Sum(step => step.HandsOn.Ticks)),
            [])
        {
            Rounds = rounds,
            OnHeat = HeatText.Of(parts.Request.Recipe).Doing,
        };
    }

    private static DateTimeOffset Later(DateTimeOffset one, DateTimeOffset other) => one > other ? one : other;

    private DateOnly LocalDay(DateTimeOffset moment) => DateOnly.FromDateTime(TimeZoneInfo.ConvertTime(moment, schedule.Zone).DateTime);

    /// <summary>What sets a round's steps apart from those of the others.</summary>
    private string Name(int round)
    {
        int pots = parts.Rounds[round].Pots;
        string which = parts.Rounds.Count > 1 ? string.Create(System.Globalization.CultureInfo.InvariantCulture, $"round {round + 1} of {parts.Rounds.Count}") : "";
        string several = pots switch
        {
            1 => "",
            2 => "both pots",
            _ => string.Create(System.Globalization.CultureInfo.InvariantCulture, $"all {pots} pots"),
        };
        return which.Length > 0 && several.Length > 0 ? $"{which}, {several}" : which + several;
    }

    /// <summary>When a later round begins: at once where it ends before bed or the cook gets up for it, else in the morning, or at the hour of the first.</summary>
    private DateTimeOffset NextStart(RoundWriter round, DateTimeOffset free, DateTimeOffset first)
    {
        if (parts.IsPutAway)
        {
            return AtTheHourOf(first, free);
        }

        if (schedule.Night == NightPlan.GetUp || EndsByBed(round, free))
        {
            return free;
        }

        DateTimeOffset morning = NightWindows.Next(schedule, free, schedule.WakesAt);
        return EndsByBed(round, morning) ? morning : AtTheHourOf(first, free);
    }

    private bool EndsByBed(RoundWriter round, DateTimeOffset start) =>
        schedule.IsAwake(start) && NightWindows.Next(schedule, start, schedule.SleepsAt) >= start + round.UntilHandsFree;

    private DateTimeOffset AtTheHourOf(DateTimeOffset first, DateTimeOffset free) =>
        NightWindows.Next(schedule, free - TimeSpan.FromMinutes(1), TimeOnly.FromDateTime(TimeZoneInfo.ConvertTime(first, schedule.Zone).DateTime));
}
