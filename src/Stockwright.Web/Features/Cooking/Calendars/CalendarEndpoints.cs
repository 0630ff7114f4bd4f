using System.Security.Cryptography;
using System.Text;
using Stockwright.Web.Fields;
using Stockwright.Web.Shell;

namespace Stockwright.Web.Features.Cooking.Calendars;

/// <summary>Calendar of one batch to read in, and of all open batches to subscribe to under a secret address.</summary>
internal static class CalendarEndpoints
{
    private const string MediaType = "text/calendar; charset=utf-8";

    public static void MapCalendars(this IEndpointRouteBuilder app)
    {
        app.MapGet("/batches/{id:guid}/calendar.ics", async (Guid id, HttpContext context, BatchService desk) =>
        {
            UnitSystem units = ReaderUnits.Of(context);
            if (await desk.OpenAsync(id, units, context.RequestAborted) is not { } view)
            {
                return Results.NotFound();
            }

            context.Response.Headers.ContentDisposition = "attachment; filename=\"batch.ics\"";
            return Answer(context, StepCalendar.Write(view.Name, [view], withDone: true, units, Home(context.Request), view.Now));
        }).ExcludeFromDescription();

        app.MapGet("/calendar/{token}.ics", async (string token, HttpContext context, BatchStore batches, BatchService desk, TimeProvider clock) =>
        {
            string secret = await batches.CalendarTokenAsync(cancellationToken: context.RequestAborted);
            if (!CryptographicOperations.FixedTimeEquals(Encoding.UTF8.GetBytes(token), Encoding.UTF8.GetBytes(secret)))
            {
                return Results.NotFound();
            }

            UnitSystem units = ReaderUnits.Of(context);
            List<BatchView> views = [];
            foreach (BatchSummary batch in await batches.OpenAsync(context.RequestAborted))
            {
                if (await desk.OpenAsync(batch.Id, units, context.RequestAborted) is { } view)
                {
                    views.Add(view);
                }
            }

            return Answer(context, StepCalendar.Write("Stock on the stove", views, withDone: false, units, Home(context.Request), clock.GetUtcNow()));
        }).ExcludeFromDescription();

        app.MapPost("/calendar/renew", async (HttpContext context, BatchStore batches) =>
        {
            await batches.RenewCalendarTokenAsync(context.RequestAborted);
            string? back = context.Request.Query["back"];
            context.Go(UnitsSwitch.IsLocal(back) ? back! : "/");
            return Results.Empty;
        }).RequireSameOrigin("The address is renewed from our own pages only.").DisableAntiforgery().ExcludeFromDescription();
    }

    /// <summary>Address of the feed, whole, for a calendar program.</summary>
    public static string FeedAddress(HttpRequest request, string token) => new Uri(Home(request), $"calendar/{token}.ics").AbsoluteUri;

    private static IResult Answer(HttpContext context, string calendar)
    {
        context.Response.Headers.CacheControl = "private, no-cache";
        return Results.Text(calendar, MediaType, Encoding.UTF8);
    }

    private static Uri Home(HttpRequest request) => new($"{request.Scheme}://{request.Host}{request.PathBase}/");
}
