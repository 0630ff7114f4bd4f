using System.Text.Json;
using Microsoft.AspNetCore.Http.HttpResults;

namespace Stockwright.Web.Fields;

/// <summary>Reads the body of a question asked of the interface, and says what is wrong with it as a problem document.</summary>
internal static class JsonBody
{
    /// <summary>The form in the body; or what is wrong in it; or why it is refused altogether.</summary>
    public static async Task<(TypedForm? Form, IReadOnlyList<InputProblem> Problems, ProblemHttpResult? Refused)> ReadAsync(
        HttpContext context, int mostBytes, string tooLarge, IReadOnlyList<JsonRows> rows)
    {
        List<InputProblem> problems = [];
        (TypedForm? form, ProblemHttpResult? refused) = await ReadAsync(context, mostBytes, tooLarge, root => JsonForm.Read(root, problems, rows));
        return problems.Count > 0 ? (null, problems, refused) : (form, [], refused);
    }

    /// <summary>What a reader makes of the body; or why it is refused altogether.</summary>
    /// <param name="context">The question.</param>
    /// <param name="mostBytes">Largest body.</param>
    /// <param name="tooLarge">What to say of a larger one.</param>
    /// <param name="read">Reads the body; a <see cref="JsonException"/> refuses it.</param>
    public static async Task<(T? Read, ProblemHttpResult? Refused)> ReadAsync<T>(HttpContext context, int mostBytes, string tooLarge, Func<JsonElement, T> read)
        where T : class
    {
        HttpRequest request = context.Request;
        if (!request.HasJsonContentType())
        {
            return (null, TypedResults.Problem("Send it as application/json.", statusCode: StatusCodes.Status415UnsupportedMediaType));
        }

        ProblemHttpResult large = TypedResults.Problem(tooLarge, statusCode: StatusCodes.Status413PayloadTooLarge);
        if (request.ContentLength > mostBytes)
        {
            return (null, large);
        }

        try
        {
            using MemoryStream body = new();
            if (!await CopyAsync(request.Body, body, mostBytes, context.RequestAborted))
            {
                return (null, large);
            }

            using JsonDocument document = JsonDocument.Parse(body.GetBuffer().AsMemory(0, (int)body.Length), new JsonDocumentOptions { MaxDepth = 8 });
            return (read(document.RootElement), null);
        }
        catch (BadHttpRequestException broken)
        {
            // Cut short or framed wrongly on its way: the sender's line, not our failure.
            return (null, TypedResults.Problem("The body was cut short or damaged on its way. Send it again.", statusCode: broken.StatusCode));
        }
        catch (JsonException exception)
        {
            return (null, TypedResults.Problem($"The body is not JSON that can be read: {exception.Message}", statusCode: StatusCodes.Status400BadRequest));
        }
    }

    /// <summary>Problems by field, as RFC 9457 has them.</summary>
    public static ValidationProblem Invalid(IReadOnlyList<InputProblem> problems, string title) => TypedResults.ValidationProblem(ByField(problems), title: title);

    public static Dictionary<string, string[]> ByField(IReadOnlyList<InputProblem> problems) => problems.GroupBy(problem => problem.Field, StringComparer.Ordinal)
        .ToDictionary(group => group.Key, group => group.Select(problem => problem.Message).ToArray(), StringComparer.Ordinal);

    private static async Task<bool> CopyAsync(Stream from, MemoryStream to, int mostBytes, CancellationToken cancellationToken)
    {
        byte[] buffer = new byte[8192];
        int read;
        while ((read = await from.ReadAsync(buffer, cancellationToken)) > 0)
        {
            if (to.Length + read > mostBytes)
            {
                return false;
            }

            to.Write(buffer, 0, read);
        }

        return true;
    }
}
