using System.Globalization;
using Stockwright.Measures;
using Stockwright.Planning;
using UnitsNet;

namespace Stockwright.Cooking;

/// <summary>What the cook should know of the calculation.</summary>
internal static class CourseNotices
{
    private const double Notable = 0.15;

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
