using Stockwright.Planning;

namespace Stockwright.Web.Planner;

/// <summary>Makes a plan; <see cref="BatchPlanner.Plan"/> in the running program.</summary>
/// <param name="request">What is asked.</param>
public delegate PlanResult PlanBatch(PlanRequest request);
