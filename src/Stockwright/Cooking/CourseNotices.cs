using System.Globalization;
using Stockwright.Logbook;
using Stockwright.Measures;
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
            yield return new PlanNotice(NoticeLevel.Hint, "heat-on-inferred", "Nobody entered when the heat went on: it is worked out from what was entered later. Enter the step to put it right.");
        }

        foreach (PotObservation odd in expected.Posterior.Odd)
        {
            yield return new PlanNotice(NoticeLevel.Warning, "odd-reading", Odd(view, odd));
        }

        double loss = expected.LossOverPlan.Central;
        if (expected.Posterior.KnowsLoss && Math.Abs(Math.Log(loss)) > Notable)
        {
            yield return new PlanNotice(NoticeLevel.Hint, "loses-otherwise", string.Create(CultureInfo.InvariantCulture, $"By your readings it loses {loss:0.0#} times what was planned."));
        }

        if (expected.Runs.Central.RanDry || expected.Runs.Central.LiquidLeftKilograms < 0.01)
        {
            yield return new PlanNotice(NoticeLevel.Warning, "ran-dry", "Going by the clock and the readings, this pot boils dry. Look at it now.");
        }
    }

    private static PlanNotice? OfEntry(LogView view, HeatTimes times, LogEntry entry)
    {
        double at = times.Seconds(entry.HappenedAt);
        bool isDuring = at >= 0 && at < times.LimitSeconds;
        return entry.Fact switch
        {
            LogFact.WaterAdded water when at < 0 => new(NoticeLevel.Hint, "water-before-heat", $"{KitchenFormat.Both(water.Volume)} entered before the heat went on is taken as part of the water to the line."),
            LogFact.BoiledOver { Lost: null } when isDuring => new(NoticeLevel.Hint, "boiled-over-unknown", "It boiled over and nobody could say how much was lost: taken as 2 % of the liquid. Read the level once more, and the calculation follows it."),
            LogFact.HeatMoved { HobId: not (LogFact.HeatMoved.Oven or LogFact.HeatMoved.NoHeat) } moved when isDuring && view.Hob(moved.HobId) is null =>
                new(NoticeLevel.Hint, "unknown-hob", $"Nothing is known of the hob '{moved.HobId}': it is taken to heat like the planned one."),
            _ => null,
        };
    }

    /// <summary>What to say of readings nobody can follow.</summary>
    private static IEnumerable<PlanNotice> OfReadings(PotReadings readings)
    {
        foreach (LogEntry entry in readings.Odd.Take(MostNamed))
        {
            double celsius = ((LogFact.TemperatureRead)entry.Fact).Temperature.DegreesCelsius;
            yield return new PlanNotice(NoticeLevel.Warning, "odd-temperature", FormattableString.Invariant(
                $"{celsius:0.#} °C ({(celsius * 1.8) + 32:0.#} °F) cannot be the temperature of this pot: it is kept in the log and not used."));
        }

        if (readings.Odd.Count > MostNamed)
        {
            yield return new PlanNotice(NoticeLevel.Warning, "odd-temperature", FormattableString.Invariant(
                $"{readings.Odd.Count} readings in all cannot be the temperature of this pot. Is the probe in the pot, and whole?"));
        }

        double deviation = Math.Max(readings.HeatUpDeviation, readings.SimmerDeviation);
        if (deviation > PotReadings.ThermometerKelvins)
        {
            yield return new PlanNotice(NoticeLevel.Warning, "readings-jump", FormattableString.Invariant(
                $"The readings of the pot jump: they are followed only to within {deviation:0.0} °C ({deviation * 1.8:0.0} °F). Check where the probe sits. All of them are in the log."));
        }
    }

    private static string Odd(LogView view, PotObservation odd)
    {
        string at = TimeZoneInfo.ConvertTime(odd.Entry.HappenedAt, view.Batch.Zone).ToString("HH:mm", CultureInfo.InvariantCulture);
        return odd.Kind switch
        {
            ObservationKind.Level => $"The level read at {at}, {KitchenFormat.Both(view.Plan.Request.Pot.InnerHeight - Length.FromMeters(odd.Value))} below the rim, fits no believable loss, so it is not followed. Read it again; if water went in or boiled over, enter that.",
            ObservationKind.Cover => $"That it ran low at {at} fits neither the readings nor the plan, so it is not followed. Read the level.",
            ObservationKind.Simmer => $"A first simmer at {at} fits neither this hob nor when the heat went on: check both times.",
            ObservationKind.Temperature => $"The temperature read at {at} does not fit this heat-up, so it is not followed. Check the probe.",
            _ => "The strained stock is not what the readings left in the pot: check its volume, and whether water was added or spilt without an entry.",
        };
    }
}
