using Stockwright.Web.Fields;
using Stockwright.Web.Shell;

namespace Stockwright.Web.Features.Cooking.Log;

/// <summary>
/// <c>POST /batches/{id}/log</c>: the same form as on the page, sent by its script or later by the outbox; answers in JSON.
/// Without scripts the page itself takes the form.
/// </summary>
internal static class LogEndpoint
{
    public static void MapBatchLog(this IEndpointRouteBuilder app) =>
        app.MapPost("/batches/{id:guid}/log", async (Guid id, HttpContext context, BatchService desk, LogService logs) =>
        {
            if (!context.Request.HasFormContentType)
            {
                return Results.Problem("Send the entry as a form.", statusCode: StatusCodes.Status415UnsupportedMediaType);
            }

            if (await desk.OpenBookAsync(id, context.RequestAborted) is not { } book)
            {
                return Results.Problem("There is no such batch.", statusCode: StatusCodes.Status404NotFound);
            }

            (IFormCollection? form, FormTrouble? trouble) = await SentForm.ReadAsync(context);
            if (form is null)
            {
                return trouble!.Result();
            }

            TypedForm typed = TypedForm.From(form);
            LogAnswer answer = await logs.TakeAsync(book, typed, form.Files.GetFile(EntryFields.Photo), ReaderUnits.Of(context), context.RequestAborted);
            if (answer.Entry is not null)
            {
                CookName.Keep(context, typed[EntryFields.Who]);
            }

            if (answer.IsTrouble)
            {
                context.Response.Headers.RetryAfter = "5";
            }

            return Answer(answer);
        })
        // The form may have waited for hours, past the life of any token; what protects it is that it comes from our own pages.
        .RequireSameOrigin("Entries are taken from our own pages only.").DisableAntiforgery().ExcludeFromDescription();

    internal static IResult Answer(LogAnswer answer)
    {
        if (answer.Entry is { } entry)
        {
            return Results.Json(EntryDocument.Of(entry), statusCode: answer.IsRepeat ? StatusCodes.Status200OK : StatusCodes.Status201Created);
        }

        return answer.IsTrouble
            ? Results.Problem(answer.Problems[0].Message, statusCode: StatusCodes.Status503ServiceUnavailable, title: "Not stored.")
            : JsonBody.Invalid(answer.Problems, "This entry was not taken.");
    }
}
