using Stockwright.Evidence;
using Stockwright.Logbook;
using Stockwright.Planning;
using UnitsNet;

namespace Stockwright.Cooking;

/// <summary>What the cook should know of the calculation.</summary>
internal static class CourseNotices
{
    private const double Notable = 0.15;

    private const int MostNamed = 3;

    /// <summary>What entries leave open, and what of them is not followed; nothing before the heat is on.</summary>
    public static IEnumerable<PlanNotice> OfEntries(LogView view, HeatTimes times, PotReadings readings) =>
        times.IsOn ? [.. view.Entries.Select(entry => OfEntry(view, times, entry)).OfType<PlanNotice>(), .. OfReadings(readings)] : [];

    public static IEnumerable<PlanNotice> Of(LogView view, HeatTimes times, ExpectedPlan expected)
    {
        if (times.IsInferred)
        {
            yield return new PlanNotice(NoticeLevel.Hint, NoticeCode.HeatOnInferred, null);
        }

        foreach (PotObservation odd in expected.Posterior.Odd)
        {
            yield return new PlanNotice(NoticeLevel.Warning, NoticeCode.OddReading, null, Odd(view, odd));
        }

        double loss = expected.LossOverPlan.Central;
        if (expected.Posterior.KnowsLoss && Math.Abs(Math.Log(loss)) > Notable)
        {
            yield return new PlanNotice(NoticeLevel.Hint, NoticeCode.LosesOtherwise, null, Figure.Of(loss));
        }

        if (expected.Runs.Central.RanDry || expected.Runs.Central.LiquidLeftKilograms < 0.01)
        {
            yield return new PlanNotice(NoticeLevel.Warning, NoticeCode.RanDry, null);
        }
    }

    private static PlanNotice? OfEntry(LogView view, HeatTimes times, LogEntry entry)
    {
        double at = times.Seconds(entry.HappenedAt);
        bool isDuring = at >= 0 && at < times.LimitSeconds;
        return entry.Fact switch
        {
            LogFact.WaterAdded water when at < 0 => new(NoticeLevel.Hint, NoticeCode.WaterBeforeHeat, null, Figure.Of(water.Volume)),
            LogFact.BoiledOver { Lost: null } when isDuring => new(NoticeLevel.Hint, NoticeCode.BoiledOverUnknown, null),
            LogFact.HeatMoved { HobId: not (LogFact.HeatMoved.Oven or LogFact.HeatMoved.NoHeat) } moved when isDuring && view.Hob(moved.HobId) is null =>
                new(NoticeLevel.Hint, NoticeCode.UnknownHob, null, Figure.Of(moved.HobId)),
            _ => null,
        };
    }

    /// <summary>What to say of readings nobody can follow.</summary>
    private static IEnumerable<PlanNotice> OfReadings(PotReadings readings)
    {
        foreach (LogEntry entry in readings.Odd.Take(MostNamed))
        {
            yield return new PlanNotice(NoticeLevel.Warning, NoticeCode.OddTemperature, null, Figure.Of(((LogFact.TemperatureRead)entry.Fact).Temperature));
        }

        if (readings.Odd.Count > MostNamed)
        {
            yield return new PlanNotice(NoticeLevel.Warning, NoticeCode.OddTemperatures, null, Figure.Of(readings.Odd.Count));
        }

        double deviation = Math.Max(readings.HeatUpDeviation, readings.SimmerDeviation);
        if (deviation > PotReadings.ThermometerKelvins)
        {
            yield return new PlanNotice(NoticeLevel.Warning, NoticeCode.ReadingsJump, null, Figure.Of(TemperatureDelta.FromKelvins(deviation)));
        }
    }

    private static Figure Odd(LogView view, PotObservation odd)
    {
        Figure at = Figure.Of(TimeZoneInfo.ConvertTime(odd.Entry.HappenedAt, view.Batch.Zone));
        return odd.Kind switch
        {
            ObservationKind.Level => Figure.Phrase(NoticePhrase.OddLevel, at, Figure.Of(view.Plan.Request.Pot.InnerHeight - Length.FromMeters(odd.Value))),
            ObservationKind.Cover => Figure.Phrase(NoticePhrase.OddCover, at),
            ObservationKind.Simmer => Figure.Phrase(NoticePhrase.OddSimmer, at),
            ObservationKind.Temperature => Figure.Phrase(NoticePhrase.OddTemperature, at),
            _ => Figure.Phrase(NoticePhrase.OddStrained),
        };
    }
}
