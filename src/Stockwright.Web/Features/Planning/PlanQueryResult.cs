using Stockwright.Planning;
using Stockwright.Web.Fields;

namespace Stockwright.Web.Features.Planning;

/// <summary>What the codec made of a link, a form or a request to the HTTP interface.</summary>
/// <param name="Request">The request, or null when something has to be put right first.</param>
/// <param name="Questions">What is asked of the stock beside the plan; the parts of it that could be read.</param>
/// <param name="Problems">What has to be put right, by field.</param>
/// <param name="Ignored">Sentences on what was left aside: unknown fields, fields given twice, a newer version.</param>
/// <param name="Form">Everything typed, rows of cuts numbered afresh from zero.</param>
/// <param name="Units">Measures the numbers were read in.</param>
public sealed record PlanQueryResult(
    PlanRequest? Request,
    PlanQuestions Questions,
    IReadOnlyList<InputProblem> Problems,
    IReadOnlyList<string> Ignored,
    TypedForm Form,
    UnitSystem Units);
