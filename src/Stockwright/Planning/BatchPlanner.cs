namespace Stockwright.Planning;

/// <summary>Recipe, kitchen and goal in; plan out. Pure: the same request always gives the same plan.</summary>
public static class BatchPlanner
{
    /// <summary>More rounds than this are a sign of a typing error.</summary>
    public const int MostRounds = 12;

    /// <summary>Plans a batch.</summary>
    /// <param name="request">What is asked.</param>
    /// <returns>The plan, or the problems with the field each belongs to; never both.</returns>
    public static PlanResult Plan(PlanRequest request)
    {
        ArgumentNullException.ThrowIfNull(request);
        IReadOnlyList<Problem> problems = RequestChecks.Check(request);
        return problems.Count > 0 ? new PlanResult(null, problems) : new PlanAssembly(request).Make();
    }
}
