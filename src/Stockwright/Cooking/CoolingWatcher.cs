using System.Globalization;
using Stockwright.Cooling;
using Stockwright.Cooling.Limits;
using Stockwright.Cooling.Readings;
using Stockwright.Logbook;
using Stockwright.Measures;
using Stockwright.Planning;
using UnitsNet;

namespace Stockwright.Cooking;

/// <summary>Holds the readings of the cooling against the batch's limit as they come in (R.13). The curve's zero is the start of cooling.</summary>
internal static class CoolingWatcher
{
    /// <summary>Longest between readings before it is said: while the stock is warm, and below the first stage.</summary>
    private static readonly TimeSpan WarmWait = TimeSpan.FromHours(1);
    private static readonly TimeSpan ColdWait = TimeSpan.FromHours(2);
    private static readonly Temperature Fridge = Temperature.FromDegreesCelsius(4);
    private static readonly Temperature IceWater = Temperature.FromDegreesCelsius(1);

    public static CoolingWatch? Of(LogView view, HeatTimes times)
    {
        if (Milestones.Finished(view, StepKind.Strain) is not { } strained)
        {
            return null;
        }

        List<(DateTimeOffset At, Temperature Temperature)> readings = Readings(view, times.HeatOff ?? strained.HappenedAt);
        DateTimeOffset began = view.First<LogFact.CoolingBegan>()?.HappenedAt ?? strained.HappenedAt;
        if (readings.Count > 0 && readings[0].At < began)
        {
            began = readings[0].At;
        }

        CoolingLimit limit = view.Batch.Limit;
        LogEntry? cold = ColdEvidence.Of(view, times);
        if (readings.Count == 0)
        {
            return new CoolingWatch(began, null, null, null, null, null, null, Stood(view, null, began, null, cold)) { Cold = cold };
        }

        CoolingCurve measured = new(readings.Select(reading => new CoolingPoint(reading.At - began, reading.Temperature)));
        TimeSpan? chilling = limit.ClockStart == ClockStart.ChillingStart ? TimeSpan.Zero : null;
        CoolingVerdict verdict = Late(CoolingJudge.Judge(measured, limit, chilling), limit, times, began);
        bool isWarmAgain = cold is null && verdict.Outcome == CoolingOutcome.Meets;
        CorrectiveAction action = CorrectiveAction.For(verdict, view.Now - began, WasReheated(view, limit, readings));
        (CoolingCurve Fast, CoolingCurve Central, CoolingCurve Slow, BandVerdict Verdict)? trend = Trend(view, measured, limit, chilling);
        return new CoolingWatch(
            began,
            measured,
            verdict,
            isWarmAgain ? null : action,
            trend?.Central,
            trend?.Verdict,
            isWarmAgain ? WarmAgain(view, readings[^1]) : Warning(view, verdict, trend?.Verdict, began),
            Stood(view, verdict, readings[^1].At, readings[^1].Temperature, cold))
        {
            Cold = cold,
        };
    }

    /// <summary>Readings in order of time, the last of those at one moment, none that is beyond belief.</summary>
    private static List<(DateTimeOffset At, Temperature Temperature)> Readings(LogView view, DateTimeOffset from)
    {
        List<(DateTimeOffset At, Temperature Temperature)> readings = [];
        foreach ((LogEntry entry, LogFact.TemperatureRead read) in view.Of<LogFact.TemperatureRead>())
        {
            if (!ColdEvidence.IsOfTheCooling(entry, read, from))
            {
                continue;
            }

            if (readings.Count > 0 && readings[^1].At == entry.HappenedAt)
            {
                readings.RemoveAt(readings.Count - 1);
            }

            readings.Add((entry.HappenedAt, read.Temperature));
        }

        return readings;
    }

    private static CoolingVerdict Late(CoolingVerdict verdict, CoolingLimit limit, HeatTimes times, DateTimeOffset began) =>
        limit.ChillingStartsWithin is { } most && times.HeatOff is { } off && began - off > most
            ? verdict with { StartsTooLate = true, Outcome = CoolingOutcome.Fails }
            : verdict;

    /// <summary>True when a reheat was entered and the stock was read hot after it: then the clock is a new one, and the only new one it gets.</summary>
    private static bool WasReheated(LogView view, CoolingLimit limit, List<(DateTimeOffset At, Temperature Temperature)> readings) =>
        limit.Correction.ReheatTo is { } to
        && view.Of<LogFact.CorrectionMade>().Any(one => one.Fact.Step == CorrectiveStep.ReheatAndCoolAgain
            && readings.Exists(reading => reading.At >= one.Entry.HappenedAt && reading.Temperature.DegreesCelsius >= to.Value.DegreesCelsius - 0.1));

    private static (CoolingCurve Fast, CoolingCurve Central, CoolingCurve Slow, BandVerdict Verdict)? Trend(LogView view, CoolingCurve measured, CoolingLimit limit, TimeSpan? chilling)
    {
        CoolingPoint[] falling = Falling(measured);
        Temperature room = view.Plan.Request.Site.Room;
        (Temperature likely, Temperature careful) = Surroundings(view, falling, room);
        if (CoolingRate.Fit(falling, likely) is not { } rate)
        {
            return null;
        }

        (CoolingCurve fast, CoolingCurve central, CoolingCurve slow, BandVerdict verdict) = rate.CarryOn(measured, limit, chilling);
        if (careful > likely && CoolingRate.Fit(falling, careful) is { } slower)
        {
            slow = slower.CarryOn(measured, limit, chilling).Slow;
            verdict = CoolingJudge.JudgeBand(fast, central, slow, limit, chilling);
        }

        return (fast, central, slow, verdict);
    }

    /// <summary>The readings since it last got warmer: it was reheated, or moved.</summary>
    private static CoolingPoint[] Falling(CoolingCurve measured)
    {
        int from = 0;
        for (int i = 1; i < measured.Points.Count; i++)
        {
            if (measured.Points[i].Temperature.DegreesCelsius > measured.Points[i - 1].Temperature.DegreesCelsius + 3)
            {
                from = i;
            }
        }

        return [.. measured.Points.Skip(from)];
    }

    /// <summary>
    /// What it cools towards, likely and careful. By the cook's words for the method; else the colder of fridge and room that fits three readings or more
    /// better, and with fewer readings the fridge, the room at the careful edge.
    /// </summary>
    private static (Temperature Likely, Temperature Careful) Surroundings(LogView view, CoolingPoint[] falling, Temperature room)
    {
        string method = (view.Last<LogFact.CoolingBegan>()?.Fact as LogFact.CoolingBegan)?.Method ?? "";
        bool Says(string word) => method.Contains(word, StringComparison.OrdinalIgnoreCase);
        if (Says("ice"))
        {
            return (IceWater, Fridge);
        }

        if (Says("fridge") || Says("refriger") || Says("chill") || Says("blast") || Says("cold"))
        {
            return (Fridge, Fridge);
        }

        bool belowRoom = falling.Any(point => point.Temperature.DegreesCelsius < room.DegreesCelsius - 0.5);
        if (belowRoom || room <= Fridge)
        {
            return (Fridge, Fridge);
        }

        if (Says("room") || Says("bench") || Says("counter") || Says("table"))
        {
            return (room, room);
        }

        if (falling.Length < 3 || CoolingRate.Fit(falling, Fridge) is not { } cold || CoolingRate.Fit(falling, room) is not { } warm)
        {
            return (Fridge, room);
        }

        return cold.StandardErrorPerHour / cold.PerHour <= warm.StandardErrorPerHour / warm.PerHour ? (Fridge, Fridge) : (room, room);
    }

    private static string? Warning(LogView view, CoolingVerdict verdict, BandVerdict? trend, DateTimeOffset began)
    {
        if (trend is null || verdict.Outcome != CoolingOutcome.Unfinished || trend.Outcome is CoolingOutcome.Meets or CoolingOutcome.Unfinished)
        {
            return null;
        }

        StageVerdict? stage = trend.Central.FailedStage ?? trend.Slow.FailedStage;
        string does = trend.Outcome == CoolingOutcome.Fails ? "misses" : "may miss";
        string by = stage?.DueAt is { } due ? " by " + Clock(view, began + due) : "";
        string to = stage is null ? "the limit" : KitchenFormat.Both(stage.Stage.To.Value);
        return $"At this pace it {does} {to}{by}. Cool it faster now: split it into shallow pans, or stand it in ice water and stir.";
    }

    private static string WarmAgain(LogView view, (DateTimeOffset At, Temperature Temperature) last) =>
        $"The last reading, {KitchenFormat.Both(last.Temperature)} at {Clock(view, last.At)}, is not cold any more. Cool it again at once, and ask your local authority about stock that has warmed.";

    private static string? Stood(LogView view, CoolingVerdict? verdict, DateTimeOffset last, Temperature? lastRead, LogEntry? cold)
    {
        if (cold is not null || verdict?.Outcome == CoolingOutcome.Fails || view.Closing is not null)
        {
            return null;
        }

        bool isLow = lastRead is { } temperature && temperature.DegreesCelsius < view.Batch.Limit.Stages[0].To.Value.DegreesCelsius;
        TimeSpan waited = view.Now - last;
        if (waited <= (isLow ? ColdWait : WarmWait))
        {
            return null;
        }

        string since = lastRead is null ? "since cooling began" : "since " + Clock(view, last);
        return string.Create(CultureInfo.InvariantCulture, $"No reading {since}, {KitchenFormat.Text(waited)} ago. Measure it now, where it cools slowest.");
    }

    private static string Clock(LogView view, DateTimeOffset moment) => TimeZoneInfo.ConvertTime(moment, view.Batch.Zone).ToString("HH:mm", CultureInfo.InvariantCulture);
}
