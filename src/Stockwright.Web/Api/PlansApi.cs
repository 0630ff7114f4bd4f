using System.Text.Json;
using Microsoft.AspNetCore.Http.HttpResults;
using Microsoft.AspNetCore.Mvc;
using Stockwright.Planning;
using Stockwright.Web.Forms;
using Stockwright.Web.Planner;

namespace Stockwright.Web.Api;

/// <summary><c>POST /api/plans</c>: the planner's fields as JSON in, the whole plan in SI units out.</summary>
internal static class PlansApi
{
    /// <summary>Far more than any plan takes.</summary>
    private const int MostBytes = 64 * 1024;

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
            .DisableAntiforgery();

    private static async Task<Results<Ok<PlanDocument>, ValidationProblem, ProblemHttpResult>> PlanAsync(HttpContext context, [FromServices] PlanDesk desk)
    {
        HttpRequest request = context.Request;
        if (!request.HasJsonContentType())
        {
            return TypedResults.Problem("Send the plan as application/json.", statusCode: StatusCodes.Status415UnsupportedMediaType);
        }

        if (request.ContentLength > MostBytes)
        {
            return TooLarge();
        }

        TypedForm form;
        try
        {
            using MemoryStream body = new();
            if (!await CopyAsync(request.Body, body, context.RequestAborted))
            {
                return TooLarge();
            }

            using JsonDocument document = JsonDocument.Parse(body.GetBuffer().AsMemory(0, (int)body.Length), new JsonDocumentOptions { MaxDepth = 8 });
            List<InputProblem> problems = [];
            form = JsonForm.Read(document.RootElement, problems);
            if (problems.Count > 0)
            {
                return Invalid(problems);
            }
        }
        catch (JsonException exception)
        {
            return TypedResults.Problem($"The body is not JSON that can be read: {exception.Message}", statusCode: StatusCodes.Status400BadRequest);
        }

        PlanView view = await desk.PlanAsync(form, UnitSystem.Metric, context.RequestAborted);
        return view.Plan is { } plan ? TypedResults.Ok(PlanDocumentMaker.Make(plan, view)) : Invalid(view.Problems);
    }

    private static ValidationProblem Invalid(IReadOnlyList<InputProblem> problems) => TypedResults.ValidationProblem(
        problems.GroupBy(problem => problem.Field, StringComparer.Ordinal)
            .ToDictionary(group => group.Key, group => group.Select(problem => problem.Message).ToArray(), StringComparer.Ordinal),
        title: "There is something to put right before this can be planned.");

    private static ProblemHttpResult TooLarge() =>
        TypedResults.Problem("A plan takes at most 64 kB.", statusCode: StatusCodes.Status413PayloadTooLarge);

    private static async Task<bool> CopyAsync(Stream from, MemoryStream to, CancellationToken cancellationToken)
    {
        byte[] buffer = new byte[8192];
        int read;
        while ((read = await from.ReadAsync(buffer, cancellationToken)) > 0)
        {
            if (to.Length + read > MostBytes)
            {
                return false;
            }

            to.Write(buffer, 0, read);
        }

        return true;
    }
}
