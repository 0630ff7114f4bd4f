using System.Security.Cryptography;

namespace Stockwright.Web.Fields;

/// <summary>
/// Names, reads and keeps cookies. Browsers keep cookies by host and not by port (RFC 6265, section 8.5), so each name ends in a mark
/// of this kitchen's data folder: two kitchens on one host do not overwrite each other's.
/// </summary>
internal sealed class KitchenCookies
{
    public const string Units = "units";
    public const string Cook = "cook";
    public const string CoolingLimit = "cooling-limit";
    public const string Antiforgery = "form";

    private const string MarkFile = "cookie-mark";
    private const int MarkLength = 8;

    private readonly string mark;

    /// <summary>Reads the mark of a data folder, and makes it when there is none.</summary>
    /// <param name="keys">Folder of the keys, where the mark lies as well: tokens and cookies come and go together.</param>
    public KitchenCookies(DirectoryInfo keys) => mark = Read(keys);

    /// <summary>Whole name of a cookie of this kitchen.</summary>
    public string NameOf(string name) => $"{name}-{mark}";

    /// <summary>What a cookie holds, also one kept under its bare name by an earlier version; null when there is none.</summary>
    public static string? Read(HttpRequest? request, string name) => request is null
        ? null
        : request.Cookies[Of(request.HttpContext).NameOf(name)] ?? request.Cookies[name];

    /// <summary>Keeps a choice on the device.</summary>
    public static void Keep(HttpContext context, string name, string value) => context.Response.Cookies.Append(Of(context).NameOf(name), value, new CookieOptions
    {
        HttpOnly = true,
        IsEssential = true,
        SameSite = SameSiteMode.Lax,
        Secure = context.Request.IsHttps,
        MaxAge = TimeSpan.FromDays(400),
        Path = "/",
    });

    private static KitchenCookies Of(HttpContext context) => context.RequestServices.GetRequiredService<KitchenCookies>();

    private static string Read(DirectoryInfo keys)
    {
        string made = RandomNumberGenerator.GetHexString(MarkLength, lowercase: true);
        string path = Path.Combine(keys.FullName, MarkFile);
        try
        {
            if (Kept(path) is { } kept)
            {
                return kept;
            }

            // Two starts at once: whoever moves its file there first has made the mark.
            keys.Create();
            string draft = $"{path}.{made}";
            File.WriteAllText(draft, made);
            try
            {
                File.Move(draft, path);
            }
            catch (IOException) when (File.Exists(path))
            {
                File.Delete(draft);
            }

            return Kept(path) ?? made;
        }
        catch (Exception trouble) when (trouble is IOException or UnauthorizedAccessException)
        {
            // The database, which is opened next in the same folder, says what is wrong with it.
            return made;
        }
    }

    private static string? Kept(string path) =>
        File.Exists(path) && File.ReadAllText(path).Trim() is { Length: MarkLength } kept && kept.All(char.IsAsciiHexDigitLower) ? kept : null;
}

/// <summary>Registers the cookies.</summary>
internal static class KitchenCookiesStart
{
    public static void AddKitchenCookies(this IServiceCollection services, DirectoryInfo keys)
    {
        KitchenCookies cookies = new(keys);
        services.AddSingleton(cookies);
        services.AddAntiforgery(antiforgery => antiforgery.Cookie.Name = cookies.NameOf(KitchenCookies.Antiforgery));
    }
}
