using Stockwright.Storage;

namespace Stockwright.Web.Shell;

/// <summary>Failures: a problem document for programs and scripts, a plain page for everybody else.</summary>
internal static class FriendlyErrors
{
    public static void AddFriendlyErrors(this IServiceCollection services) => services.AddProblemDetails(options => options.CustomizeProblemDetails = problem =>
    {
        if (problem.Exception is StorageTroubleException trouble)
        {
            problem.ProblemDetails.Detail = trouble.Message;
        }
    });

    public static void UseFriendlyErrors(this WebApplication app)
    {
        // The inner pair answers first for the interface; what it wrote is left alone by the outer pair.
        app.UseExceptionHandler(new ExceptionHandlerOptions { ExceptionHandlingPath = "/error", CreateScopeForErrors = true, StatusCodeSelector = StatusOf });
        app.UseStatusCodePagesWithReExecute("/refused", createScopeForStatusCodePages: true);
        app.Use(async (context, next) =>
        {
            await next(context);
            if (context.Response is { StatusCode: >= StatusCodes.Status400BadRequest, HasStarted: false })
            {
                // A page says what went wrong, and pages are opened, whatever was sent.
                context.Request.Method = HttpMethods.Get;
            }
        });
        app.UseWhen(IsApi, api =>
        {
            api.UseExceptionHandler(new ExceptionHandlerOptions { StatusCodeSelector = StatusOf });
            api.UseStatusCodePages();
        });
    }

    private static int StatusOf(Exception failure) => failure switch
    {
        StorageTroubleException => StatusCodes.Status503ServiceUnavailable,
        BadHttpRequestException bad => bad.StatusCode,
        _ => StatusCodes.Status500InternalServerError,
    };

    /// <summary>True when a program or a script asks, which reads no pages.</summary>
    public static bool IsProgram(HttpContext context) => IsApi(context) || context.Request.HasJsonContentType()
        || (context.Request.Headers.Accept.ToString() is { Length: > 0 } accept
            && accept.Contains("json", StringComparison.OrdinalIgnoreCase) && !accept.Contains("text/html", StringComparison.OrdinalIgnoreCase));

    /// <summary>True for what programs and scripts ask.</summary>
    internal static bool IsApi(HttpContext context) => context.Request.Path.StartsWithSegments("/api", StringComparison.OrdinalIgnoreCase)
        || (context.Request.Path.StartsWithSegments("/batches", StringComparison.OrdinalIgnoreCase) && context.Request.Path.Value!.EndsWith("/log", StringComparison.OrdinalIgnoreCase));
}
