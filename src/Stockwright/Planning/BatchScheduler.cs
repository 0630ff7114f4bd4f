using Stockwright.Simmering;

namespace Stockwright.Planning;

/// <summary>A timeline with the nights that were reckoned with.</summary>
internal sealed record LaidTimeline(DateTimeOffset HeatOn, Timeline Timeline, IReadOnlyList<NightWindow> Nights);

/// <summary>Lays the timeline of a fitted batch: forwards from a start, or so that it is ready in time.</summary>
internal sealed class BatchScheduler(PlanRequest request, ScriptWriter writer, SimmerForecaster forecaster, PotFitter fitter, TimeSpan simmer)
{
    private const int MostTries = 24;

    /// <summary>Close enough to the moment the cook wants it.</summary>
    private static readonly TimeSpan Close = TimeSpan.FromMinutes(1);

    /// <summary>Starting this much later would be too late: near enough to the latest start.</summary>
    private static readonly TimeSpan NearTooLate = TimeSpan.FromMinutes(5);

    private static readonly TimeSpan BackStep = TimeSpan.FromMinutes(30);

    /// <summary>Lays the timeline the request asks for.</summary>
    public LaidTimeline Schedule(FittedLoad fitted, RoastPlan? roast, BlanchPlan? blanch)
    {
        LaidTimeline Laid(DateTimeOffset heatOn) => Lay(fitted, roast, blanch, heatOn);
        if (request.Schedule.StartAt is { } start)
        {
            return Laid(start + Lines(fitted, roast, blanch, fitted.Outcome).BeforeHeat);
        }

        return LatestInTime(Laid, request.Schedule.ReadyBy!.Value);
    }

    /// <summary>Lays the timeline from the moment the heat goes on.</summary>
    public LaidTimeline Lay(FittedLoad fitted, RoastPlan? roast, BlanchPlan? blanch, DateTimeOffset heatOn)
    {
        SimmerOutcome outcome = fitted.Outcome;
        DateTimeOffset simmering = heatOn + TimeSpan.FromSeconds(outcome.StageStarts[request.Recipe.MainStage]);
        IReadOnlyList<NightWindow> nights = request.IsUnderPressure || request.Recipe.IsAttended
            ? [] // A locked pot is neither put in an oven nor opened for the night; a hard boil is watched to the end.
            : NightWindows.Find(request.Schedule, simmering, simmer, TimeSpan.FromSeconds(outcome.HeatUpSeconds));
        if (!nights.SequenceEqual(fitter.Nights))
        {
            outcome = forecaster.RunCentral(writer.Write(fitted.Load, fitted.WaterKilograms, fitted.HeldMetres, nights));
        }

        return new LaidTimeline(heatOn, Lines(fitted, roast, blanch, outcome).Write(heatOn), nights);
    }

    /// <summary>
    /// The latest start that is ready in time. Waiting for the morning makes the moment it is ready jump as the start moves,
    /// so a start that is too late is moved back by what it lacks, and between one in time and one too late the gap is halved.
    /// </summary>
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

    private TimelineWriter Lines(FittedLoad fitted, RoastPlan? roast, BlanchPlan? blanch, SimmerOutcome outcome) =>
        new(new TimelineParts(
            request,
            fitted.Load,
            roast,
            blanch,
            outcome,
            fitted.WaterKilograms,
            (fitter.YieldKilograms(outcome) + fitted.LetDownKilograms) / SimmerForecaster.ColdDensity * 1000));
}
