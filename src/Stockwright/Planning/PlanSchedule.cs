namespace Stockwright.Planning;

/// <summary>When the batch starts or must be ready, and when the cook is awake.</summary>
public sealed record PlanSchedule
{
    /// <summary>Moment the cook begins; exactly one of this and <see cref="ReadyBy"/> is set.</summary>
    public DateTimeOffset? StartAt { get; init; }

    /// <summary>Moment the stock must stand portioned.</summary>
    public DateTimeOffset? ReadyBy { get; init; }

    /// <summary>Time zone of the kitchen, for telling day from night.</summary>
    public TimeZoneInfo Zone { get; init; } = TimeZoneInfo.Utc;

    /// <summary>Hour of waking, local time.</summary>
    public TimeOnly WakesAt { get; init; } = new(6, 30);

    /// <summary>Hour of going to bed, local time; may lie past midnight.</summary>
    public TimeOnly SleepsAt { get; init; } = new(22, 30);

    /// <summary>The present; nothing is planned before it. Null when the plan is of another time, as that of a batch under way.</summary>
    public DateTimeOffset? Now { get; init; }

    /// <summary>What to do about work in the night.</summary>
    public NightPlan Night { get; init; } = NightPlan.KeepFree;

    /// <summary>True when the cook is awake at a moment.</summary>
    public bool IsAwake(DateTimeOffset moment)
    {
        TimeOnly local = TimeOnly.FromTimeSpan(TimeZoneInfo.ConvertTime(moment, Zone).TimeOfDay);
        return WakesAt <= SleepsAt
            ? local >= WakesAt && local < SleepsAt
            : local >= WakesAt || local < SleepsAt;
    }
}
