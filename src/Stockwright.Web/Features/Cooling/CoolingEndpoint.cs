using Microsoft.AspNetCore.Http.HttpResults;
using Microsoft.AspNetCore.Mvc;
using Stockwright.Cooling.Limits;
using Stockwright.Web.Features.Kitchen;
using Stockwright.Web.Fields;
using Stockwright.Web.Shell;

namespace Stockwright.Web.Features.Cooling;

/// <summary><c>POST /api/cooling</c>: a case and its readings in, verdicts, curve and ranked ways in SI units out.</summary>
internal static class CoolingEndpoint
{
    /// <summary>Room for a million characters of readings, escaped.</summary>
    private const int MostBytes = 2 * 1024 * 1024;

    private static readonly JsonRows[] Rows =
    [
        new("steps", (row, part) => StepFields.NameOf(row + 1, part), StepFields.Most, $"Steps are objects with place and the rest, {StepFields.Most} at most."),
    ];

    public static void MapCoolingApi(this IEndpointRouteBuilder app) =>
        app.MapPost("/api/cooling", CoolAsync)
            .WithName("CoolStock")
            .WithTags("Cooling")
            .WithSummary("Cool stock and hold it against a limit")
            .WithDescription("Takes the same fields as the cooling page; steps may also be a list of objects. Numbers may be JSON numbers or text as a cook writes it. "
                + "Answers with the verdict, the curve with its band, every way that was tried and what the readings say; every quantity is in SI units, named by its unit. "
                + "What cannot be worked out comes back as a problem document with the fields at fault.")
            .Accepts<CoolingInput>("application/json")
            .Produces<CoolingDocument>()
            .Produces<HttpValidationProblemDetails>(StatusCodes.Status400BadRequest, "application/problem+json")
            .ProducesProblem(StatusCodes.Status413PayloadTooLarge)
            .ProducesProblem(StatusCodes.Status415UnsupportedMediaType)
            .WithWorkLimits()
            .DisableAntiforgery();

    private static async Task<Results<Ok<CoolingDocument>, ValidationProblem, ProblemHttpResult>> CoolAsync(HttpContext context, [FromServices] IKitchenSource kitchens)
    {
        (TypedForm? form, IReadOnlyList<InputProblem> problems, ProblemHttpResult? refused) = await JsonBody.ReadAsync(context, MostBytes, "A cooling case takes at most 2 MB.", Rows);
        if (refused is not null)
        {
            return refused;
        }

        if (form is null)
        {
            return Invalid(problems);
        }

        PlanningInputs book = await kitchens.LoadAsync(context.RequestAborted);
        CoolingView view = CoolingService.Answer(form, UnitSystem.Metric, book.Kitchen, StandardLimits.Default, context.RequestAborted);
        return view.Answer is { } answer ? TypedResults.Ok(CoolingDocumentMapping.Make(view, answer)) : Invalid(view.Problems);
    }

    private static ValidationProblem Invalid(IReadOnlyList<InputProblem> problems) => JsonBody.Invalid(problems, "There is something to put right before this can be worked out.");
}
