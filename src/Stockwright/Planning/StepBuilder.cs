using System.Globalization;
using Stockwright.Simmering;

namespace Stockwright.Planning;

/// <summary>Lays steps one after another from a moment.</summary>
internal sealed class StepBuilder(PlanSchedule schedule)
{
    private readonly List<PlanStep> steps = [];
    private readonly Dictionary<StepKind, int> counts = [];

    /// <summary>Round the steps belong to, told in their titles; empty when there is but one pot and one round.</summary>
    public string Round { get; set; } = "";

    /// <summary>Sets the keys of a later round's steps apart; empty for the first.</summary>
    public string KeyPrefix { get; set; } = "";

    /// <summary>Every step in order of time. A hand does one thing at a time: what falls in the time of another step waits for it.</summary>
    public IReadOnlyList<PlanStep> InOrder()
    {
        List<PlanStep> ordered = [.. steps.OrderBy(step => step.At)];
        DateTimeOffset free = DateTimeOffset.MinValue;
        for (int i = 0; i < ordered.Count; i++)
        {
            PlanStep step = ordered[i];
            if (step.HandsOn <= TimeSpan.Zero)
            {
                continue;
            }

            if (step.At < free)
            {
                ordered[i] = step with { At = free, InNight = !schedule.IsAwake(free) };
            }

            free = ordered[i].At + step.HandsOn;
        }

        return [.. ordered.OrderBy(step => step.At)];
    }

    /// <summary>The step an action at the pot becomes.</summary>
    public static StepKind KindOf(PotActionKind kind) => kind switch
    {
        PotActionKind.Skim => StepKind.Skim,
        PotActionKind.Check => StepKind.Check,
        PotActionKind.Add => StepKind.Add,
        _ => StepKind.NightHold,
    };

    /// <summary>The next key of a kind: kind and count.</summary>
    public static string NextKey(Dictionary<StepKind, int> counts, StepKind kind)
    {
        counts[kind] = counts.GetValueOrDefault(kind) + 1;
        return string.Create(CultureInfo.InvariantCulture, $"{kind.ToString().ToLowerInvariant()}-{counts[kind]}");
    }

    /// <summary>Adds a step that has its key already.</summary>
    public void At(string key, DateTimeOffset at, StepKind kind, string title, string detail, TimeSpan duration, TimeSpan handsOn, int? checkIndex = null, params Caution[] cautions) =>
        steps.Add(new PlanStep
        {
            Key = key.Length > 0 ? KeyPrefix + key : NextKey(counts, kind),
            Kind = kind,
            Title = Titled(title),
            Detail = detail,
            At = at,
            Duration = duration,
            HandsOn = handsOn,
            InNight = handsOn > TimeSpan.Zero && !schedule.IsAwake(at),
            CheckIndex = checkIndex,
            Cautions = cautions,
        });

    /// <summary>The title with its round, in one pair of brackets.</summary>
    private string Titled(string title) => (Round.Length > 0, title.EndsWith(')')) switch
    {
        (false, _) => title,
        (true, true) => $"{title[..^1]}; {Round})",
        _ => $"{title} ({Round})",
    };

    /// <summary>Adds a step at a moment.</summary>
    public void At(DateTimeOffset at, StepKind kind, string title, string detail, TimeSpan duration, TimeSpan handsOn, int? checkIndex = null, params Caution[] cautions) =>
        At("", at, kind, title, detail, duration, handsOn, checkIndex, cautions);

    /// <summary>Adds a step and returns the moment it ends.</summary>
    public DateTimeOffset Then(DateTimeOffset at, StepKind kind, string title, string detail, TimeSpan duration, TimeSpan handsOn, params Caution[] cautions)
    {
        At(at, kind, title, detail, duration, handsOn, null, cautions);
        return at + duration;
    }
}
