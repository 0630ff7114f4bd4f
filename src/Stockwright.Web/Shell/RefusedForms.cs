using Microsoft.AspNetCore.Antiforgery;
using Microsoft.AspNetCore.Components.Endpoints;
using Stockwright.Web.Fields;

namespace Stockwright.Web.Shell;

/// <summary>
/// Forms that pages cannot take. The framework answers them with 400 and nothing else, and what was typed is gone; here the page
/// comes back filled in (<see cref="FormShownAgain"/>), or says why the form cannot be read. Nothing is ever written.
/// </summary>
internal static class RefusedForms
{
    /// <summary>Stands behind the check of the tokens and before the pages.</summary>
    public static void UseRefusedForms(this IApplicationBuilder app) => app.Use(AnswerAsync);

    private static async Task AnswerAsync(HttpContext context, RequestDelegate next)
    {
        if (!HttpMethods.IsPost(context.Request.Method) || context.GetEndpoint()?.Metadata.GetMetadata<ComponentTypeMetadata>() is null)
        {
            await next(context);
            return;
        }

        if (context.Features.Get<IAntiforgeryValidationFeature>() is not { IsValid: false })
        {
            await next(context);

            // The page has no form of that name, and has written nothing.
            if (context.Response is { StatusCode: StatusCodes.Status400BadRequest, HasStarted: false })
            {
                await RefuseAsync(context, next, FormRefusal.Handler);
            }

            return;
        }

        // As long as it stands, the framework keeps the form from everybody.
        context.Features.Set<IAntiforgeryValidationFeature>(null);
        await RefuseAsync(context, next, FormRefusal.Token);
    }

    private static async Task RefuseAsync(HttpContext context, RequestDelegate next, FormRefusal why)
    {
        // A page elsewhere must not have its words shown here, ready to be sent with a fresh token.
        if (!SameOrigin.Holds(context.Request))
        {
            await SayAsync(context, StatusCodes.Status403Forbidden, "This form was sent by a page of another site.");
            return;
        }

        if (!context.Request.HasFormContentType)
        {
            await SayAsync(context, StatusCodes.Status415UnsupportedMediaType, "This address takes the form of its page, and nothing else.");
            return;
        }

        (IFormCollection? form, FormTrouble? trouble) = await SentForm.ReadAsync(context);
        if (form is null)
        {
            await SayAsync(context, trouble!.Status, trouble.Message);
        }
        else if (FriendlyErrors.IsProgram(context))
        {
            await SayAsync(context, StatusCodes.Status400BadRequest, why == FormRefusal.Token
                ? "The form carries no token of this kitchen that still holds. Programs write by /api."
                : "The form does not say which form of the page it is. Programs write by /api.");
        }
        else
        {
            await ShowAgainAsync(context, next, new FormShownAgain(why, form));
        }
    }

    /// <summary>Renders the page as if it were only opened: a form is dispatched to its handler for POST alone.</summary>
    private static async Task ShowAgainAsync(HttpContext context, RequestDelegate next, FormShownAgain again)
    {
        context.Features.Set(again);
        context.Request.Method = HttpMethods.Get;
        context.Response.Clear();
        context.Response.StatusCode = StatusCodes.Status400BadRequest;

        // The page may have been rendered in this scope already, and its renderer works once.
        IServiceProvider first = context.RequestServices;
        await using AsyncServiceScope scope = first.CreateAsyncScope();
        context.RequestServices = scope.ServiceProvider;
        try
        {
            await next(context);
        }
        finally
        {
            context.RequestServices = first;
        }
    }

    private static Task SayAsync(HttpContext context, int status, string message)
    {
        context.Response.Clear();
        if (FriendlyErrors.IsProgram(context))
        {
            return Results.Problem(message, statusCode: status).ExecuteAsync(context);
        }

        // Left empty, it is answered by the page for refusals.
        context.Response.StatusCode = status;
        context.Features.Set(new UnreadableForm(message, context.Request.PathBase + context.Request.Path + context.Request.QueryString));
        return Task.CompletedTask;
    }
}
