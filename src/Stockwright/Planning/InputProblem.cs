namespace Stockwright.Planning;

/// <summary>Something in the request that cannot be planned, named by the field it belongs to.</summary>
/// <param name="Field">Field name as in the planner's codec, for instance <c>litres</c>.</param>
/// <param name="Message">Plain sentence in the cook's words.</param>
public sealed record InputProblem(string Field, string Message);

/// <summary>Either a plan or the reasons there is none.</summary>
/// <param name="Plan">The plan, or null.</param>
/// <param name="Problems">Empty when there is a plan.</param>
public sealed record PlanResult(BatchPlan? Plan, IReadOnlyList<InputProblem> Problems);
