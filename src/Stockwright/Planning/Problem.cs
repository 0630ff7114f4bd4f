using Stockwright.Evidence;

namespace Stockwright.Planning;

/// <summary>Something in the request that cannot be planned: what is wrong, and where. The page puts it into words.</summary>
/// <param name="Part">Part of the request it belongs to: one of <see cref="PlanPart"/>.</param>
/// <param name="Code">What is wrong.</param>
/// <param name="Figures">What its sentence needs, as <see cref="ProblemCode"/> says.</param>
public sealed record Problem(string Part, ProblemCode Code, params IReadOnlyList<Figure> Figures)
{
    /// <summary>Row of a list it belongs to, from zero; null where there are no rows.</summary>
    public int? Row { get; init; }
}

/// <summary>Either a plan or the reasons there is none.</summary>
/// <param name="Plan">The plan, or null.</param>
/// <param name="Problems">Empty when there is a plan.</param>
public sealed record PlanResult(BatchPlan? Plan, IReadOnlyList<Problem> Problems);
