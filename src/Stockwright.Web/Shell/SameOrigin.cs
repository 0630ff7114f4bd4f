namespace Stockwright.Web.Shell;

/// <summary>
/// Tells a request of our own pages, or of a program, from one that a foreign page made the browser send: browsers say where a
/// request comes from (Fetch Metadata, W3C; Origin, RFC 6454), and pages cannot change what they say.
/// </summary>
internal static class SameOrigin
{
    /// <summary>Refuses what a foreign page made the browser send, with the words given.</summary>
    public static RouteHandlerBuilder RequireSameOrigin(this RouteHandlerBuilder endpoint, string refusal) => endpoint
        .AddEndpointFilter((call, next) => Holds(call.HttpContext.Request)
            ? next(call)
            : ValueTask.FromResult<object?>(TypedResults.Problem(refusal, statusCode: StatusCodes.Status403Forbidden)))
        .ProducesProblem(StatusCodes.Status403Forbidden);

    public static bool Holds(HttpRequest request)
    {
        string? site = request.Headers["Sec-Fetch-Site"].FirstOrDefault();
        if (site is not null)
        {
            return site is "same-origin" or "none";
        }

        string? origin = request.Headers.Origin.FirstOrDefault();
        return origin is null || (Uri.TryCreate(origin, UriKind.Absolute, out Uri? from)
            && string.Equals(from.Authority, request.Host.Value, StringComparison.OrdinalIgnoreCase));
    }
}
