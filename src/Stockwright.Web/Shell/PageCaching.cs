using Microsoft.Net.Http.Headers;

namespace Stockwright.Web.Shell;

/// <summary>
/// Pages show one cook's measures and name, and the kitchen as it is now: nobody in between keeps them, and a browser asks before it
/// shows one again (RFC 9111, section 5.2.2). A page with a form that posts says <c>no-store</c> by itself, which stands.
/// </summary>
internal static class PageCaching
{
    public static IApplicationBuilder UsePageCaching(this IApplicationBuilder app) => app.Use((context, next) =>
    {
        context.Response.OnStarting(() =>
        {
            HttpResponse response = context.Response;
            if (response.ContentType?.StartsWith("text/html", StringComparison.OrdinalIgnoreCase) == true)
            {
                if (response.Headers.CacheControl.Count == 0)
                {
                    response.Headers.CacheControl = "private, no-cache";
                }

                response.Headers.Append(HeaderNames.Vary, HeaderNames.Cookie);
            }

            return Task.CompletedTask;
        });
        return next(context);
    });
}
