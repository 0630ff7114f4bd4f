using Stockwright.Simmering;

namespace Stockwright.Planning;

/// <summary>A timeline with the nights its pot is put away in.</summary>
internal sealed record LaidTimeline(DateTimeOffset HeatOn, Timeline Timeline, IReadOnlyList<NightWindow> Nights)
{
    /// <summary>How it keeps to the moments asked for.</summary>
    public Punctuality Punctuality { get; init; }
}

/// <summary>How a timeline keeps to the moments asked for.</summary>
internal enum Punctuality
{
    /// <summary>As asked.</summary>
    AsAsked,

    /// <summary>In time only with work in the night, which the cook has not asked for.</summary>
    OnlyByNight,

    /// <summary>The start asked for has passed: it starts now.</summary>
    StartHasPassed,

    /// <summary>It cannot be ready in time: it starts now and is ready as early as it can be.</summary>
    TooLate,
}

/// <summary>Lays the timeline of a fitted batch: forwards from a start, or so that it is ready in time.</summary>
internal sealed class BatchScheduler(PlanRequest request, ScriptWriter writer, SimmerForecaster forecaster, PotFitter fitter, TimeSpan simmer)
{
    private const int MostTries = 24;
    private const int MostEarlier = 72;
    private const int MostLater = 48;

    /// <summary>Close enough to the moment the cook wants it.</summary>
    private static readonly TimeSpan Close = TimeSpan.FromMinutes(1);

    /// <summary>Starting this much later would be too late: near enough to the latest start.</summary>
    private static readonly TimeSpan NearTooLate = TimeSpan.FromMinutes(5);

    private static readonly TimeSpan BackStep = TimeSpan.FromMinutes(30);

    /// <summary>Lays the timeline the request asks for; never before the present.</summary>
    public LaidTimeline Schedule(FittedWish wish, BlanchPlan? blanch)
    {
        LaidTimeline Laid(DateTimeOffset heatOn) => Lay(wish, blanch, heatOn);
        LaidTimeline From(DateTimeOffset start) => Laid(start + Lines(wish, blanch, wish.Fitted.Outcome, isPutAway: false).BeforeHeat);
        DateTimeOffset? now = request.Schedule.Now;
        if (request.Schedule.StartAt is { } start)
        {
            return start < now ? From(now.Value) with { Punctuality = Punctuality.StartHasPassed } : From(start);
        }

        DateTimeOffset by = request.Schedule.ReadyBy!.Value;
        LaidTimeline latest = LatestInTime(Laid, by, request.Schedule.Night == NightPlan.KeepFree);
        if (latest.Timeline.Start >= now || now is null)
        {
            return WithNight(latest);
        }

        // Started now it may still be in time, for what waits for the morning does not wait longer.
        LaidTimeline soonest = From(now.Value);
        return soonest.Timeline.Ready <= by ? WithNight(soonest) : soonest with { Punctuality = Punctuality.TooLate };
    }

    private LaidTimeline WithNight(LaidTimeline laid) =>
        request.Schedule.Night == NightPlan.KeepFree && NightSettler.HasWork(request.Schedule, laid.Timeline) ? laid with { Punctuality = Punctuality.OnlyByNight } : laid;

    /// <summary>Lays the timeline from the moment the heat goes on.</summary>
    public LaidTimeline Lay(FittedWish wish, BlanchPlan? blanch, DateTimeOffset heatOn)
    {
        SimmerOutcome outcome = wish.Fitted.Outcome;
        DateTimeOffset simmering = heatOn + TimeSpan.FromSeconds(outcome.StageStarts[request.Recipe.MainStage]);
        IReadOnlyList<NightWindow> nights = request.IsNeverPutAway || request.Recipe.IsAttended
            ? [] // Neither put away nor opened for the night; a hard boil is watched to the end.
            : NightWindows.Find(request.Schedule, simmering, simmer, TimeSpan.FromSeconds(outcome.HeatUpSeconds));
        if (!nights.SequenceEqual(fitter.Nights))
        {
            outcome = forecaster.RunCentral(writer.Write(wish.Fitted.Load, wish.Fitted.WaterKilograms, wish.Fitted.HeldMetres, nights));
        }

        return new LaidTimeline(heatOn, Lines(wish, blanch, outcome, nights.Count > 0).Write(heatOn), nights);
    }

    /// <summary>The soonest start after a timetable's own, within a day, that leaves no work in the night; null when there is none.</summary>
    public LaidTimeline? FreeLater(FittedWish wish, BlanchPlan? blanch, LaidTimeline laid)
    {
        for (int i = 1; i <= MostLater; i++)
        {
            LaidTimeline later = Lay(wish, blanch, laid.HeatOn + (BackStep * i));
            if (!later.Timeline.Steps.Any(step => step.InNight))
            {
                bool inTime = later.Timeline.Ready <= request.Schedule.ReadyBy;
                return later with { Punctuality = inTime ? Punctuality.AsAsked : laid.Punctuality == Punctuality.OnlyByNight ? Punctuality.TooLate : laid.Punctuality };
            }
        }

        return null;
    }

    /// <summary>Lays one potful of a wish, begun when the whole is.</summary>
    public Timeline LayOnePot(FittedWish wish, BlanchPlan? blanch, LaidTimeline whole)
    {
        FittedWish one = wish with { Potfuls = 1, AtOnce = 1 };
        SimmerOutcome outcome = forecaster.RunCentral(writer.Write(wish.Fitted.Load, wish.Fitted.WaterKilograms, wish.Fitted.HeldMetres, whole.Nights));
        TimelineWriter lines = Lines(one, blanch, outcome, whole.Nights.Count > 0);
        return lines.Write(whole.Timeline.Start + lines.BeforeHeat);
    }

    /// <summary>
    /// The latest start that is ready in time. Waiting for the morning makes the moment it is ready jump as the start moves,
    /// so a start that is too late is moved back by what it lacks, and between one in time and one too late the gap is halved.
    /// </summary>
    private static LaidTimeline LatestInTime(Func<DateTimeOffset, LaidTimeline> lay, DateTimeOffset by, bool keepsNightsFree)
    {
        LaidTimeline latest = LatestInTime(lay, by);
        if (!keepsNightsFree || !latest.Timeline.Steps.Any(step => step.InNight))
        {
            return latest;
        }

        // The latest start without work in the night, up to a day and a half before.
        for (int i = 1; i <= MostEarlier; i++)
        {
            LaidTimeline earlier = lay(latest.HeatOn - (BackStep * i));
            if (earlier.Timeline.Ready <= by && !earlier.Timeline.Steps.Any(step => step.InNight))
            {
                return earlier;
            }
        }

        return latest;
    }

    private static LaidTimeline LatestInTime(Func<DateTimeOffset, LaidTimeline> lay, DateTimeOffset by)
    {
        LaidTimeline laid = lay(by - TimeSpan.FromHours(24));
        LaidTimeline? best = null;
        DateTimeOffset? tooLate = null;
        for (int i = 0; i < MostTries; i++)
        {
            TimeSpan slack = by - laid.Timeline.Ready;
            DateTimeOffset next = laid.HeatOn + slack;
            if (slack >= TimeSpan.Zero)
            {
                best = laid;
                if (slack < Close || tooLate - laid.HeatOn < NearTooLate)
                {
                    break;
                }
            }
            else
            {
                tooLate = laid.HeatOn;
            }

            if (best is null && slack < TimeSpan.Zero && i > 0)
            {
                // Still waiting for the same morning: step back further each time until the day before is reached.
                next -= BackStep * i;
            }

            bool outside = (best is not null && next <= best.HeatOn) || next >= tooLate;
            if (best is not null && tooLate is { } late && outside)
            {
                next = best.HeatOn + ((late - best.HeatOn) / 2);
            }

            laid = lay(next);
        }

        return best ?? laid;
    }

    private TimelineWriter Lines(FittedWish wish, BlanchPlan? blanch, SimmerOutcome outcome, bool isPutAway) =>
        new(new TimelineParts(
            request,
            wish.Fitted.Load,
            [.. Enumerable.Range(0, wish.Rounds).Select(round => new RoundLoad(wish.PotsInRound(round), RoastPlanner.Plan(request, wish.Fitted.Load.Scaled(wish.PotsInRound(round)))))],
            blanch,
            outcome,
            wish.Fitted.WaterKilograms,
            (fitter.YieldKilograms(outcome) + wish.Fitted.LetDownKilograms) / SimmerForecaster.ColdDensity * 1000)
        {
            LetDownKilograms = wish.Fitted.LetDownKilograms,
            IsPutAway = isPutAway,
        });
}
