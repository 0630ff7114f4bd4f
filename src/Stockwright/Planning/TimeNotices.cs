using System.Globalization;
using Stockwright.Measures;
using Stockwright.Recipes;
using Stockwright.Simmering;

namespace Stockwright.Planning;

/// <summary>What the cook should know first about when things happen.</summary>
internal static class TimeNotices
{
    /// <summary>A pot longer on its way up than this is told (practice).</summary>
    private static readonly TimeSpan LongHeatUp = TimeSpan.FromHours(2);

    /// <summary>Lists them.</summary>
    /// <param name="asked">What the cook asked.</param>
    /// <param name="night">What is done about the night.</param>
    /// <param name="laid">The timetable.</param>
    /// <param name="outcome">The course of one pot.</param>
    /// <param name="ready">When another request would be ready.</param>
    public static IReadOnlyList<PlanNotice> List(PlanRequest asked, NightPlan night, LaidTimeline laid, SimmerOutcome outcome, Func<PlanRequest, DateTimeOffset?> ready)
    {
        List<PlanNotice> notices = [];
        TimeZoneInfo zone = asked.Schedule.Zone;
        if (laid.Punctuality == Punctuality.StartHasPassed)
        {
            notices.Add(new(NoticeLevel.Warning, "start-passed", $"That start has passed. The plan starts {(laid.Timeline.Start > asked.Schedule.Now ? Clock(laid.Timeline.Start, zone) : "now")} and is ready {Clock(laid.Timeline.Ready, zone)}.", "time"));
        }

        if (laid.Punctuality == Punctuality.TooLate && asked.Schedule.ReadyBy is { } by)
        {
            notices.Add(new(NoticeLevel.Warning, "too-late", $"{Clock(by, zone)} cannot be met{(asked.Schedule.Night == NightPlan.KeepFree ? " without work in the night" : "")}. Started {(laid.Timeline.Start > asked.Schedule.Now ? Clock(laid.Timeline.Start, zone) + ", to keep your night free," : "now")} it is ready {Clock(laid.Timeline.Ready, zone)}, the earliest there is.{Sooner(asked, laid.Timeline.Ready, ready)}", "date"));
        }

        AddNight(asked, night, laid.Timeline, notices);
        double heatUp = outcome.HeatUpSeconds;
        if (outcome.IsReached && heatUp > LongHeatUp.TotalSeconds && !asked.Pot.HasOwnHeater)
        {
            notices.Add(new(NoticeLevel.Warning, "slow-heat-up", $"It takes {KitchenFormat.Text(TimeSpan.FromSeconds(heatUp))} to come to {HeatWords.Of(asked.Recipe).Reach} on this heat. A lid, hot water or a stronger ring makes it sooner.", "hob"));
        }

        AddHours(asked, notices);
        return notices;
    }

    /// <summary>A time of the cook's own outside the recipe's range.</summary>
    private static void AddHours(PlanRequest asked, List<PlanNotice> notices)
    {
        SimmerStage stage = asked.Recipe.Stages[asked.Recipe.MainStage];
        if (asked.SimmerTime is not { } time || asked.IsUnderPressure || stage.ReducesTo is not null || (time >= stage.ShortestTime && time <= stage.LongestTime))
        {
            return;
        }

        string what = time < stage.ShortestTime ? "Shorter gives less of what the recipe is made for." : "Longer dulls the taste and gives little more.";
        notices.Add(new(NoticeLevel.Hint, "hours-outside-recipe", $"The recipe {HeatWords.Of(asked.Recipe).Does} {KitchenFormat.Text(stage.ShortestTime)} to {KitchenFormat.Text(stage.LongestTime)}. {what}", "hours"));
    }

    private static void AddNight(PlanRequest asked, NightPlan night, Timeline timeline, List<PlanNotice> notices)
    {
        if (asked.Schedule.Night != NightPlan.KeepFree)
        {
            return;
        }

        int steps = timeline.Steps.Count(step => step.InNight);
        string? how = night switch
        {
            NightPlan.OvenHold => "Overnight it goes into the low oven with its lid on, so that your night is free.",
            NightPlan.StopAndCool => "At bedtime it is strained and cooled, and goes on in the morning, so that your night is free.",
            _ when steps == 1 => "One step falls in the night.",
            _ when steps > 1 => string.Create(CultureInfo.InvariantCulture, $"{steps} steps fall in the night."),
            _ => null,
        };
        if (how is not null)
        {
            notices.Add(new(steps > 0 ? NoticeLevel.Warning : NoticeLevel.Hint, steps > 0 ? "night-work" : "night-kept", how + " What else can be done is under When.", "night"));
        }
    }

    /// <summary>What would make it sooner, and by when.</summary>
    private static string Sooner(PlanRequest asked, DateTimeOffset soonest, Func<PlanRequest, DateTimeOffset?> ready)
    {
        List<(string What, PlanRequest Other)> others =
        [
            ("with more pots and hobs at once", asked with { PotCount = FillChecks.MostAtOnce, HobCount = FillChecks.MostAtOnce, Way = null }),
            ("getting up in the night", asked with { Schedule = asked.Schedule with { Night = NightPlan.GetUp } }),
            ("heating up with the lid on", asked with { HeatsUpCovered = true }),
        ];
        string[] sooner = [.. others
            .Select(one => (one.What, Ready: ready(one.Other)))
            .Where(one => one.Ready < soonest - TimeSpan.FromMinutes(10))
            .OrderBy(one => one.Ready)
            .Select(one => $"{one.What} {Clock(one.Ready!.Value, asked.Schedule.Zone)}")];
        return sooner.Length > 0 ? $" Sooner: {string.Join("; ", sooner)}." : " Ask for less, or simmer for less, to have it sooner.";
    }

    private static string Clock(DateTimeOffset moment, TimeZoneInfo zone) => TimeZoneInfo.ConvertTime(moment, zone).ToString("dddd d MMMM 'at' HH:mm", CultureInfo.InvariantCulture);
}
