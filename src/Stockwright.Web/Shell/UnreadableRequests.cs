using Microsoft.Net.Http.Headers;

namespace Stockwright.Web.Shell;

/// <summary>
/// Refuses requests whose own headers the framework would trip over later, in the error page too: a <c>Host</c> that is no address
/// (every page makes its address from it) and a form in UTF-7, which the runtime no longer reads (SYSLIB0001).
/// </summary>
internal static class UnreadableRequests
{
    public static IApplicationBuilder UseReadableRequests(this IApplicationBuilder app) => app.Use((context, next) =>
        !IsAddress(context.Request.Host)
            ? RefuseAsync(context, StatusCodes.Status400BadRequest, "The Host header of this request names no address. Send the address this app is reached at, like localhost:5140.")
            : IsUtf7(context.Request)
                ? RefuseAsync(context, StatusCodes.Status415UnsupportedMediaType, "Forms in UTF-7 are not read here. Send it in UTF-8.")
                : next(context));

    // Kestrel lets an empty name and any number of digits for the port through.
    private static bool IsAddress(HostString host) =>
        host.HasValue && Uri.TryCreate($"http://{host.ToUriComponent()}/", UriKind.Absolute, out _);

    private static bool IsUtf7(HttpRequest request) =>
        MediaTypeHeaderValue.TryParse(request.ContentType, out MediaTypeHeaderValue? type)
        && HeaderUtilities.RemoveQuotes(type.Charset).Equals("utf-7", StringComparison.OrdinalIgnoreCase);

    private static Task RefuseAsync(HttpContext context, int status, string detail) =>
        TypedResults.Problem(detail, statusCode: status).ExecuteAsync(context);
}
