using Stockwright.Planning;

namespace Stockwright.Web.Features.Planning;

/// <summary>The same thing done several times in a row, read once.</summary>
/// <param name="First">The first time.</param>
/// <param name="Again">The times after it.</param>
internal sealed record StepGroup(PlanStep First, IReadOnlyList<PlanStep> Again)
{
    /// <summary>Puts neighbouring steps together that say the same; checks stay apart, for each has its own level.</summary>
    public static IEnumerable<StepGroup> Of(IEnumerable<PlanStep> steps)
    {
        PlanStep? first = null;
        List<PlanStep> again = [];
        foreach (PlanStep step in steps)
        {
            if (first is not null && SaysTheSame(first, step))
            {
                again.Add(step);
                continue;
            }

            if (first is not null)
            {
                yield return new StepGroup(first, again);
            }

            first = step;
            again = [];
        }

        if (first is not null)
        {
            yield return new StepGroup(first, again);
        }
    }

    private static bool SaysTheSame(PlanStep one, PlanStep other) =>
        one.CheckIndex is null && other.CheckIndex is null
        && one.Kind == other.Kind && one.InNight == other.InNight
        && string.Equals(one.Title, other.Title, StringComparison.Ordinal)
        && string.Equals(one.Detail, other.Detail, StringComparison.Ordinal)
        && one.Cautions.SequenceEqual(other.Cautions);
}
