using Stockwright.Cooling.Limits;
using Stockwright.Web.Fields;
using Stockwright.Web.Shell;

namespace Stockwright.Web.Features.Cooling;

/// <summary>
/// The limit the cook lives under: the link's when it names one, otherwise the one kept in a cookie, otherwise the default.
/// Kept when asked to, never by opening somebody's link.
/// </summary>
internal static class HomeLimit
{
    public static void MapHomeLimit(this IEndpointRouteBuilder app) =>
        app.MapGet("/cooling/home/{id}", (string id, string? back, HttpContext context) =>
        {
            if (StandardLimits.Find(id) is not { } limit)
            {
                return Results.NotFound();
            }

            KitchenCookies.Keep(context, KitchenCookies.CoolingLimit, limit.Id);
            context.Response.Headers.CacheControl = "no-store";
            return Results.LocalRedirect(UnitsSwitch.IsLocal(back) ? back! : CoolingWriter.Page);
        }).ExcludeFromDescription();

    /// <summary>The standing choice, whatever the link says.</summary>
    public static CoolingLimit Preferred(HttpRequest? request) =>
        KitchenCookies.Read(request, KitchenCookies.CoolingLimit) is { Length: < 40 } kept && StandardLimits.Find(kept) is { } limit ? limit : StandardLimits.Default;

    /// <summary>Address that keeps a limit and comes back.</summary>
    public static string Link(CoolingLimit limit, HttpRequest? request)
    {
        string here = request is null ? CoolingWriter.Page : request.PathBase + request.Path + request.QueryString;
        return $"/cooling/home/{limit.Id}?back={Uri.EscapeDataString(here)}";
    }
}
