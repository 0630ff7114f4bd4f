namespace Stockwright.Web.Shell;

/// <summary>Failures: a problem document under <c>/api</c>, a plain page everywhere else.</summary>
internal static class FriendlyErrors
{
    public static void UseFriendlyErrors(this WebApplication app)
    {
        // The inner pair answers first for the interface; what it wrote is left alone by the outer pair.
        app.UseExceptionHandler("/error", createScopeForErrors: true);
        app.UseStatusCodePagesWithReExecute("/not-found", createScopeForStatusCodePages: true);
        app.UseWhen(IsApi, api =>
        {
            api.UseExceptionHandler();
            api.UseStatusCodePages();
        });
    }

    private static bool IsApi(HttpContext context) => context.Request.Path.StartsWithSegments("/api", StringComparison.OrdinalIgnoreCase);
}
