using Stockwright.Web.Fields;

namespace Stockwright.Web.Features.Cooking;

/// <summary>Who is at the stove: kept on the device, so that it is typed once.</summary>
internal static class CookName
{
    public const int Longest = 40;

    /// <summary>The name kept; empty when there is none.</summary>
    public static string Of(HttpRequest? request) =>
        PlainText.OneLine(KitchenCookies.Read(request, KitchenCookies.Cook) ?? "") is { Length: <= Longest } kept ? kept : "";

    /// <summary>Keeps the name an entry was signed with; a blank one changes nothing.</summary>
    public static void Keep(HttpContext context, string typed)
    {
        string name = PlainText.OneLine(typed);
        if (name.Length is 0 or > Longest || string.Equals(name, Of(context.Request), StringComparison.Ordinal))
        {
            return;
        }

        KitchenCookies.Keep(context, KitchenCookies.Cook, name);
    }
}
