using Stockwright.Planning;

namespace Stockwright.Web.Features.Planning;

/// <summary>Makes a plan; <see cref="BatchPlanner.Plan"/> in the running program.</summary>
/// <param name="request">What is asked.</param>
public delegate PlanResult PlanBatch(PlanRequest request);

/// <summary>Says what the stock of a plan will be like; <see cref="StockOutlook.Of"/> in the running program.</summary>
/// <param name="plan">The plan.</param>
/// <param name="questions">What is asked beside it.</param>
/// <param name="units">Measures of the reader.</param>
/// <param name="cancellationToken">Ends it between two draws.</param>
public delegate StockOutlook? JudgeStock(BatchPlan plan, PlanQuestions questions, UnitSystem units, CancellationToken cancellationToken);
