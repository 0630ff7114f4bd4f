using Stockwright.Evidence;
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
            notices.Add(new(NoticeLevel.Warning, NoticeCode.StartPassed, PlanPart.Now, Begins(NoticePhrase.At), Clock(laid.Timeline.Ready, zone)));
        }

        if (laid.Punctuality == Punctuality.TooLate && asked.Schedule.ReadyBy is { } by)
        {
            notices.Add(new(
                NoticeLevel.Warning,
                NoticeCode.TooLate,
                PlanPart.ReadyBy,
                Clock(by, zone),
                asked.Schedule.Night == NightPlan.KeepFree ? Figure.Phrase(NoticePhrase.NoNightWork) : Figure.Nothing,
                Begins(NoticePhrase.StartKeepsNight),
                Clock(laid.Timeline.Ready, zone),
                Sooner(asked, laid.Timeline.Ready, ready)));
        }

        AddNight(asked, night, laid.Timeline, notices);
        double heatUp = outcome.HeatUpSeconds;
        if (outcome.IsReached && heatUp > LongHeatUp.TotalSeconds && !asked.Pot.HasOwnHeater)
        {
            notices.Add(new(NoticeLevel.Warning, NoticeCode.SlowHeatUp, PlanPart.Hob, Figure.Of(TimeSpan.FromSeconds(heatUp)), Figure.Of(HeatText.Of(asked.Recipe).Reach)));
        }

        AddHours(asked, notices);
        return notices;

        Figure Begins(string later) => laid.Timeline.Start > asked.Schedule.Now ? Figure.Phrase(later, Clock(laid.Timeline.Start, zone)) : Figure.Phrase(NoticePhrase.Now);
    }

    /// <summary>A time of the cook's own outside the recipe's range.</summary>
    private static void AddHours(PlanRequest asked, List<PlanNotice> notices)
    {
        SimmerStage stage = asked.Recipe.Stages[asked.Recipe.MainStage];
        if (asked.SimmerTime is not { } time || asked.IsUnderPressure || stage.ReducesTo is not null || (time >= stage.ShortestTime && time <= stage.LongestTime))
        {
            return;
        }

        Figure what = Figure.Phrase(time < stage.ShortestTime ? NoticePhrase.ShorterGivesLess : NoticePhrase.LongerDulls);
        notices.Add(new(
            NoticeLevel.Hint, NoticeCode.HoursOutsideRecipe, PlanPart.SimmerTime, Figure.Of(HeatText.Of(asked.Recipe).Does), Figure.Of(stage.ShortestTime), Figure.Of(stage.LongestTime), what));
    }

    private static void AddNight(PlanRequest asked, NightPlan night, Timeline timeline, List<PlanNotice> notices)
    {
        if (asked.Schedule.Night != NightPlan.KeepFree)
        {
            return;
        }

        int steps = timeline.Steps.Count(step => step.InNight);
        Figure? how = night switch
        {
            NightPlan.OvenHold => Figure.Phrase(NoticePhrase.OvernightInOven),
            NightPlan.StopAndCool => Figure.Phrase(NoticePhrase.OvernightCold),
            _ when steps == 1 => Figure.Phrase(NoticePhrase.OneNightStep),
            _ when steps > 1 => Figure.Phrase(NoticePhrase.NightSteps, Figure.Of(steps)),
            _ => null,
        };
        if (how is not null)
        {
            notices.Add(new(steps > 0 ? NoticeLevel.Warning : NoticeLevel.Hint, steps > 0 ? NoticeCode.NightWork : NoticeCode.NightKept, PlanPart.Night, how));
        }
    }

    /// <summary>What would make it sooner, and by when.</summary>
    private static Figure Sooner(PlanRequest asked, DateTimeOffset soonest, Func<PlanRequest, DateTimeOffset?> ready)
    {
        List<(string Phrase, PlanRequest Other)> others =
        [
            (NoticePhrase.SoonerTogether, asked with { PotCount = FillChecks.MostAtOnce, HobCount = FillChecks.MostAtOnce, Way = null }),
            (NoticePhrase.SoonerGettingUp, asked with { Schedule = asked.Schedule with { Night = NightPlan.GetUp } }),
            (NoticePhrase.SoonerCovered, asked with { HeatsUpCovered = true }),
        ];
        Figure[] sooner = [.. others
            .Select(one => (one.Phrase, Ready: ready(one.Other)))
            .Where(one => one.Ready < soonest - TimeSpan.FromMinutes(10))
            .OrderBy(one => one.Ready)
            .Select(one => Figure.Phrase(one.Phrase, Clock(one.Ready!.Value, asked.Schedule.Zone)))];
        return sooner.Length > 0 ? Figure.Phrase(NoticePhrase.Sooner, Figure.List(sooner)) : Figure.Phrase(NoticePhrase.AskForLess);
    }

    private static Figure Clock(DateTimeOffset moment, TimeZoneInfo zone) => Figure.Of(TimeZoneInfo.ConvertTime(moment, zone));
}
