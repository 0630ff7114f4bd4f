namespace Stockwright.Web.Batches;

/// <summary>Who is at the stove: kept on the device, so that it is typed once.</summary>
internal static class CookName
{
    public const string CookieName = "cook";

    public const int Longest = 40;

    /// <summary>The name kept; empty when there is none.</summary>
    public static string Of(HttpRequest? request) =>
        request?.Cookies[CookieName] is { Length: > 0 and <= Longest } kept && !kept.Any(char.IsControl) ? kept : "";

    /// <summary>Keeps the name an entry was signed with; a blank one changes nothing.</summary>
    public static void Keep(HttpContext context, string typed)
    {
        string name = typed.Trim();
        if (name.Length is 0 or > Longest || name.Any(char.IsControl) || string.Equals(name, Of(context.Request), StringComparison.Ordinal))
        {
            return;
        }

        context.Response.Cookies.Append(CookieName, name, new CookieOptions
        {
            HttpOnly = true,
            IsEssential = true,
            SameSite = SameSiteMode.Lax,
            Secure = context.Request.IsHttps,
            MaxAge = TimeSpan.FromDays(400),
            Path = "/",
        });
    }
}
