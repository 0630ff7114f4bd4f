using System.Globalization;

namespace Stockwright.Planning;

/// <summary>Lays steps one after another from a moment.</summary>
internal sealed class StepBuilder(PlanSchedule schedule)
{
    private readonly List<PlanStep> steps = [];
    private readonly Dictionary<StepKind, int> counts = [];

    public IReadOnlyList<PlanStep> Steps => steps;

    /// <summary>Adds a step at a moment.</summary>
    public void At(DateTimeOffset at, StepKind kind, string title, string detail, TimeSpan duration, TimeSpan handsOn, int? checkIndex = null, params Caution[] cautions) =>
        steps.Add(new PlanStep
        {
            Key = KeyOf(kind),
            Kind = kind,
            Title = title,
            Detail = detail,
            At = at,
            Duration = duration,
            HandsOn = handsOn,
            InNight = handsOn > TimeSpan.Zero && !schedule.IsAwake(at),
            CheckIndex = checkIndex,
            Cautions = cautions,
        });

    /// <summary>Adds a step and returns the moment it ends.</summary>
    public DateTimeOffset Then(DateTimeOffset at, StepKind kind, string title, string detail, TimeSpan duration, TimeSpan handsOn, params Caution[] cautions)
    {
        At(at, kind, title, detail, duration, handsOn, null, cautions);
        return at + duration;
    }

    private string KeyOf(StepKind kind)
    {
        counts[kind] = counts.GetValueOrDefault(kind) + 1;
        return string.Create(CultureInfo.InvariantCulture, $"{kind.ToString().ToLowerInvariant()}-{counts[kind]}");
    }
}
