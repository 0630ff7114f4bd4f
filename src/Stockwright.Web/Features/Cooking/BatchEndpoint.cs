using System.ComponentModel;
using System.Globalization;
using System.Text.Json;
using Microsoft.AspNetCore.Http.HttpResults;
using Microsoft.AspNetCore.Mvc;
using Stockwright.Cooking;
using Stockwright.Logbook;
using Stockwright.Web.Features.Cooking.Log;
using Stockwright.Web.Fields;
using Stockwright.Web.Shell;

namespace Stockwright.Web.Features.Cooking;

/// <summary><c>/api/batches</c>: batches and their logs for programs, say a thermometer that writes down what it reads.</summary>
internal static class BatchEndpoint
{
    private const int MostEntries = 100;
    private const int MostListed = 200;
    private const int MostBytes = 512 * 1024;

    private static readonly Dictionary<string, string[]> Nothing = [];

    public static void MapBatchesApi(this IEndpointRouteBuilder app)
    {
        RouteGroupBuilder batches = app.MapGroup("/api/batches").WithTags("Batches");
        batches.MapGet("", ListAsync)
            .WithName("ListBatches")
            .WithSummary("List batches")
            .WithDescription("Those begun last first. When there are more, the answer has a Link header with the address of the next page (rel=\"next\", RFC 8288); "
                + "follow it until there is none.")
            .ProducesProblem(StatusCodes.Status400BadRequest);
        batches.MapGet("/{id:guid}", ReadAsync)
            .WithName("ReadBatch")
            .WithSummary("Read a batch")
            .WithDescription("How it stands by its log, the step to do next, and every entry. Quantities are in SI units, named by their unit.")
            .ProducesProblem(StatusCodes.Status404NotFound);
        batches.MapPost("/{id:guid}/entries", EnterAsync)
            .WithName("EnterInBatch")
            .WithSummary("Write in the log of a batch")
            .WithDescription("Takes the fields of the forms on the batch's page as one JSON object, or a list of up to 100. An entry sent again with the same key is stored once. "
                + "One object is answered by its entry (201 when stored, 200 when it was stored before) or a problem document; a list is answered by a list of results in the same order.")
            .Accepts<EntryInput>("application/json")
            .Produces<EntryDocument>(StatusCodes.Status201Created)
            .Produces<EntryDocument>()
            .Produces<HttpValidationProblemDetails>(StatusCodes.Status400BadRequest, "application/problem+json")
            // JSON cannot be sent by a foreign page without asking first, and we do not answer that question; this refuses it once more.
            .RequireSameOrigin("Entries are taken from programs and from our own pages only.")
            .ProducesProblem(StatusCodes.Status404NotFound)
            .ProducesProblem(StatusCodes.Status413PayloadTooLarge)
            .ProducesProblem(StatusCodes.Status415UnsupportedMediaType)
            .ProducesProblem(StatusCodes.Status429TooManyRequests)
            .ProducesProblem(StatusCodes.Status503ServiceUnavailable)
            .DisableAntiforgery();
    }

    private static async Task<Results<Ok<BatchLineDocument[]>, ProblemHttpResult>> ListAsync(
        HttpContext context,
        [FromServices] BatchStore store,
        [FromQuery, Description("The last batch of the page before; left out for the first page.")] string? after,
        [FromQuery, Description("Batches on a page, 1 to 200; 200 when left out.")] string? limit)
    {
        int most = MostListed;
        Guid last = Guid.Empty;
        if ((limit is not null && (!int.TryParse(limit, NumberStyles.None, CultureInfo.InvariantCulture, out most) || most is < 1 or > MostListed))
            || (after is not null && !Guid.TryParse(after, out last)))
        {
            return TypedResults.Problem($"'limit' is a number from 1 to {MostListed}, 'after' the id of a batch.", statusCode: StatusCodes.Status400BadRequest);
        }

        // One more than asked for tells whether there are any more.
        IReadOnlyList<BatchSummary>? rows = await store.AfterAsync(after is null ? null : last, most + 1, context.RequestAborted);
        if (rows is null)
        {
            return TypedResults.Problem("There is no batch with the id given as 'after'.", statusCode: StatusCodes.Status400BadRequest);
        }

        if (rows.Count > most)
        {
            string next = string.Create(CultureInfo.InvariantCulture, $"/api/batches?after={rows[most - 1].Id}&limit={most}");
            context.Response.Headers.Link = $"<{next}>; rel=\"next\"";
        }

        return TypedResults.Ok(rows.Take(most).Select(Line).ToArray());
    }

    private static async Task<Results<Ok<BatchDocument>, ProblemHttpResult>> ReadAsync(Guid id, [FromServices] BatchService desk, CancellationToken cancellationToken) =>
        await desk.OpenAsync(id, UnitSystem.Metric, cancellationToken) is { } view
            ? TypedResults.Ok(Document(view))
            : TypedResults.Problem("There is no such batch.", statusCode: StatusCodes.Status404NotFound);

    private static async Task<IResult> EnterAsync(Guid id, HttpContext context, [FromServices] BatchService desk, [FromServices] LogService logs)
    {
        (SentEntries? sent, ProblemHttpResult? refused) = await JsonBody.ReadAsync(context, MostBytes, "Entries take at most 512 kB.", Read);
        if (sent is null)
        {
            return refused!;
        }

        if (await desk.OpenBookAsync(id, context.RequestAborted) is not { } book)
        {
            return Results.Problem("There is no such batch.", statusCode: StatusCodes.Status404NotFound);
        }

        List<LogAnswer> answers = [];
        foreach ((TypedForm form, IReadOnlyList<InputProblem> problems) in sent.Rows)
        {
            // After one that could not be stored the rest would come out of order.
            LogAnswer answer = problems.Count > 0 ? new LogAnswer(null, problems)
                : answers.Find(earlier => earlier.IsTrouble) is { } trouble ? trouble
                : await logs.TakeAsync(book, form, null, UnitSystem.Metric, context.RequestAborted);
            answers.Add(answer);
            if (answer.Entry is { } entry && book.Log.Find(entry.Id) is null)
            {
                // What follows in the list may correct this one.
                book = book with { Log = new BatchLog([.. book.Log.All, entry]) };
            }
        }

        return sent.IsList ? Results.Json(answers.Select(Result).ToArray()) : LogEndpoint.Answer(answers[0]);
    }

    private static SentEntries Read(JsonElement root)
    {
        if (root.ValueKind != JsonValueKind.Array)
        {
            return new SentEntries([Row(root)], IsList: false);
        }

        return root.GetArrayLength() is > 0 and <= MostEntries
            ? new SentEntries([.. root.EnumerateArray().Select(Row)], IsList: true)
            : throw new JsonException($"A list holds 1 to {MostEntries} entries.");
    }

    private static (TypedForm Form, IReadOnlyList<InputProblem> Problems) Row(JsonElement element)
    {
        List<InputProblem> problems = [];
        return (JsonForm.Read(element, problems, []), problems);
    }

    private static EntryResult Result(LogAnswer answer) => answer switch
    {
        { Entry: { } entry } => new EntryResult(answer.IsRepeat ? StatusCodes.Status200OK : StatusCodes.Status201Created, EntryDocument.Of(entry), Nothing),
        { IsTrouble: true } => new EntryResult(StatusCodes.Status503ServiceUnavailable, null, JsonBody.ByField(answer.Problems)),
        _ => new EntryResult(StatusCodes.Status400BadRequest, null, JsonBody.ByField(answer.Problems)),
    };

    private static BatchLineDocument Line(BatchSummary batch) =>
        new(batch.Id, batch.Name, batch.RecipeName, batch.PotName, batch.Begins.ToUniversalTime(), batch.Started.ToUniversalTime(), batch.IsClosed, batch.IsNeverCooked);

    private static BatchDocument Document(BatchView view) => new(
        Line(view.Stored.Summary), view.Now.ToUniversalTime(), view.Zone.Id, view.Course is { } course ? Document(course) : null, [.. view.Log.All.Select(EntryDocument.Of)]);

    private static CourseDocument Document(BatchCourse course) => new(
        course.Phase,
        BandDocument.Of(course.Expected.Yield, volume => volume.CubicMeters),
        course.Expected.Timeline.Ready.ToUniversalTime(),
        course.Next is { } next ? new CourseStepDocument(next.Key, next.Step.Title, next.Step.At.ToUniversalTime(), next.Standing) : null);

    private sealed record SentEntries(IReadOnlyList<(TypedForm Form, IReadOnlyList<InputProblem> Problems)> Rows, bool IsList);
}
