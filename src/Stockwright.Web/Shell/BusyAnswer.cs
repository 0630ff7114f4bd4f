using System.Globalization;
using System.Net;
using System.Text;

namespace Stockwright.Web.Shell;

/// <summary>What is answered instead of working: a problem document for programs and scripts, a page without any work in it for everybody else.</summary>
internal static class BusyAnswer
{
    /// <summary>Writes it.</summary>
    /// <param name="context">The request.</param>
    /// <param name="status">429 or 503.</param>
    /// <param name="after">When to try again; rounded up to whole seconds.</param>
    /// <param name="title">Heading.</param>
    /// <param name="text">One or two sentences.</param>
    /// <param name="cancellationToken">Ends the writing.</param>
    public static Task WriteAsync(HttpContext context, int status, TimeSpan after, string title, string text, CancellationToken cancellationToken)
    {
        int seconds = Math.Max(1, (int)Math.Ceiling(after.TotalSeconds));
        context.Response.StatusCode = status;
        context.Response.Headers.RetryAfter = seconds.ToString(CultureInfo.InvariantCulture);
        context.Response.Headers.CacheControl = "no-store";
        if (WantsDocument(context.Request))
        {
            return Results.Problem(text, statusCode: status, title: title).ExecuteAsync(context);
        }

        // Only what was looked at can be looked at again by a link; what was sent is in the form the reader comes from.
        string again = HttpMethods.IsGet(context.Request.Method)
            ? $"""<p><a class="action" href="{WebUtility.HtmlEncode(context.Request.PathBase + context.Request.Path + context.Request.QueryString)}">Try again</a></p>"""
            : "";
        context.Response.ContentType = "text/html; charset=utf-8";
        return context.Response.WriteAsync(
            $"""
            <!DOCTYPE html>
            <html lang="en">
            <head>
                <meta charset="utf-8" />
                <meta name="viewport" content="width=device-width, initial-scale=1" />
                <meta name="color-scheme" content="light dark" />
                <title>{title} – Stockwright</title>
                <link rel="stylesheet" href="/css/app.css" />
            </head>
            <body>
                <main id="content">
                    <h1>{title}</h1>
                    <p>{text} It should work again in {seconds} s.</p>
                    {again}
                </main>
            </body>
            </html>
            """,
            Encoding.UTF8,
            cancellationToken);
    }

    private static bool WantsDocument(HttpRequest request) => FriendlyErrors.IsApi(request.HttpContext)
        || request.GetTypedHeaders().Accept is { Count: > 0 } accepts && accepts.All(kind => kind.SubTypeWithoutSuffix.Equals("json", StringComparison.OrdinalIgnoreCase) || kind.Suffix.Equals("json", StringComparison.OrdinalIgnoreCase));
}
