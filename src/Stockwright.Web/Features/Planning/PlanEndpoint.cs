using Microsoft.AspNetCore.Http.HttpResults;
using Microsoft.AspNetCore.Mvc;
using Stockwright.Web.Fields;
using Stockwright.Web.Shell;

namespace Stockwright.Web.Features.Planning;

/// <summary><c>POST /api/plans</c>: the planner's fields as JSON in, the whole plan in SI units out.</summary>
internal static class PlanEndpoint
{
    /// <summary>Far more than any plan takes.</summary>
    private const int MostBytes = 64 * 1024;

    private static readonly JsonRows[] Rows = [.. new[] { RowFields.Bones, RowFields.More, RowFields.Set }
        .Select(family => new JsonRows(family, (row, part) => RowFields.Name(family, row, part), int.MaxValue, "Each row is an object with cut and kg (or lb)."))];

    public static void MapPlansApi(this IEndpointRouteBuilder app) =>
        app.MapPost("/api/plans", PlanAsync)
            .WithName("PlanBatch")
            .WithTags("Plans")
            .WithSummary("Plan a batch of stock")
            .WithDescription("Takes the same fields as the planner's page. Numbers may be JSON numbers or text as a cook writes it (\"2,5\", \"1 1/2\"). "
                + "Answers with the whole plan; every quantity is in SI units, named by its unit. What cannot be planned comes back as a problem document with the fields at fault.")
            .Accepts<PlanInput>("application/json")
            .Produces<PlanDocument>()
            .Produces<HttpValidationProblemDetails>(StatusCodes.Status400BadRequest, "application/problem+json")
            .ProducesProblem(StatusCodes.Status413PayloadTooLarge)
            .ProducesProblem(StatusCodes.Status415UnsupportedMediaType)
            .WithWorkLimits()
            .DisableAntiforgery();

    private static async Task<Results<Ok<PlanDocument>, ValidationProblem, ProblemHttpResult>> PlanAsync(HttpContext context, [FromServices] PlanService desk)
    {
        (TypedForm? form, IReadOnlyList<InputProblem> problems, ProblemHttpResult? refused) = await JsonBody.ReadAsync(context, MostBytes, "A plan takes at most 64 kB.", Rows);
        if (refused is not null)
        {
            return refused;
        }

        if (form is null)
        {
            return Invalid(problems);
        }

        PlanView view = await desk.PlanAsync(form, UnitSystem.Metric, context.RequestAborted);
        return view.Plan is { } plan ? TypedResults.Ok(PlanDocumentMapping.Make(plan, view)) : Invalid(view.Problems);
    }

    private static ValidationProblem Invalid(IReadOnlyList<InputProblem> problems) => JsonBody.Invalid(problems, "There is something to put right before this can be planned.");
}
