using Stockwright.Web.Fields;

namespace Stockwright.Web.Shell;

/// <summary>Remembers the measures in a cookie and goes back to where the reader was.</summary>
internal static class UnitsSwitch
{
    public static void MapUnitsSwitch(this IEndpointRouteBuilder app) =>
        app.MapGet("/units/{system}", (string system, string? back, HttpContext context, IEnumerable<PageUnits> pages) =>
        {
            if (ReaderUnits.Read(system) is not { } units)
            {
                return Results.NotFound();
            }

            UnitSystem standing = ReaderUnits.Preferred(context.Request);
            KitchenCookies.Keep(context, KitchenCookies.Units, system);
            context.Response.Headers.CacheControl = "no-store";
            return Results.LocalRedirect(IsLocal(back) ? PageUnits.Turn(pages, back!, standing, units) : "/");
        }).ExcludeFromDescription();

    /// <summary>Address of the switch as a link.</summary>
    public static string Link(UnitSystem to, HttpRequest? request)
    {
        string here = request is null ? "/" : request.PathBase + request.Path + request.QueryString;
        return $"/units/{ReaderUnits.Word(to)}?back={Uri.EscapeDataString(here)}";
    }

    /// <summary>True for an address within this app that is safe to be sent back to.</summary>
    internal static bool IsLocal(string? back) =>
        back is ['/', ..] && !back.StartsWith("//", StringComparison.Ordinal) && !back.Contains('\\', StringComparison.Ordinal) && !back.Any(char.IsControl);
}
