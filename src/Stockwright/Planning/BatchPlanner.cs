namespace Stockwright.Planning;

/// <summary>Recipe, kitchen and goal in; plan out. Pure: the same request always gives the same plan.</summary>
public static class BatchPlanner
{
    /// <summary>Plans a batch.</summary>
    /// <param name="request">What is asked.</param>
    /// <returns>The plan, or the problems with the field each belongs to; never both.</returns>
    public static PlanResult Plan(PlanRequest request) => throw new NotSupportedException("Being written.");
}
