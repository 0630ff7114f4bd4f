using System.Text;
using System.Text.Json;
using Stockwright.Logbook;
using Stockwright.Web.Features.Cooking.Log;
using Stockwright.Web.Features.Cooking.Stove;
using Stockwright.Web.Fields;

namespace Stockwright.Web.Features.Cooking.Record;

/// <summary>A batch with its plan and its whole log, to be taken away.</summary>
/// <param name="Batch">Its id.</param>
/// <param name="Name">What the cook calls it.</param>
/// <param name="Recipe">Recipe.</param>
/// <param name="Pot">Pot.</param>
/// <param name="BeginsAt">When the cook begins by the plan, UTC.</param>
/// <param name="StartedAt">When it was stored, UTC.</param>
/// <param name="IsClosed">True when its record is closed.</param>
/// <param name="IsNeverCooked">True when it was put aside as never cooked, which closes the record too.</param>
/// <param name="TimeZone">IANA name of the kitchen's time zone.</param>
/// <param name="CoolingLimit">Id of the cooling limit chosen.</param>
/// <param name="PlanQuery">The plan as a query of the planner.</param>
/// <param name="Plan">The plan as it was given when the batch was started.</param>
/// <param name="Entries">Every entry in order of receipt, corrected and withdrawn ones included.</param>
internal sealed record BatchExport(
    Guid Batch,
    string Name,
    string Recipe,
    string Pot,
    DateTimeOffset BeginsAt,
    DateTimeOffset StartedAt,
    bool IsClosed,
    bool IsNeverCooked,
    string TimeZone,
    string CoolingLimit,
    string PlanQuery,
    JsonElement? Plan,
    IReadOnlyList<EntryDocument> Entries);

/// <summary>The log as files, and the pictures in it.</summary>
internal static class LogExport
{
    public static void MapLogExport(this IEndpointRouteBuilder app)
    {
        app.MapGet("/batches/{id:guid}/log.csv", async (Guid id, HttpContext context, BatchService desk, StoveService stoves) =>
        {
            UnitSystem units = ReaderUnits.Of(context);
            return await desk.OpenAsync(id, units, context.RequestAborted) is { } view
                ? Results.File(Encoding.UTF8.GetBytes(LogCsv.Write(view, new FactText(view, units, await stoves.HobsAsync(view, context.RequestAborted)))), "text/csv; charset=utf-8; header=present", FileName(view, "csv"))
                : Results.NotFound();
        }).ExcludeFromDescription();

        app.MapGet("/batches/{id:guid}/log.json", async (Guid id, HttpContext context, BatchService desk) =>
        {
            if (await desk.OpenAsync(id, ReaderUnits.Of(context), context.RequestAborted) is not { } view)
            {
                return Results.NotFound();
            }

            context.Response.Headers.ContentDisposition = $"attachment; filename=\"{FileName(view, "json")}\"";
            return Results.Json(Export(view));
        }).ExcludeFromDescription();

        app.MapGet("/batches/{id:guid}/photos/{entryId:guid}", async (Guid id, Guid entryId, HttpContext context, LogStore logs) =>
        {
            BatchLog log = await logs.ReadAsync(id, context.RequestAborted);
            if (log.Find(entryId) is null || await logs.PhotoAsync(entryId, context.RequestAborted) is not { } photo)
            {
                return Results.NotFound();
            }

            // A picture never changes: the entry it belongs to cannot.
            context.Response.Headers.CacheControl = "private, max-age=31536000, immutable";
            return Results.File(photo.Jpeg, "image/jpeg");
        }).ExcludeFromDescription();
    }

    private static BatchExport Export(BatchView view) => new(
        view.Id,
        view.Name,
        view.Stored.Summary.RecipeName,
        view.Stored.Summary.PotName,
        view.Stored.Summary.Begins.ToUniversalTime(),
        view.Stored.Summary.Started.ToUniversalTime(),
        view.Stored.Summary.IsClosed,
        view.Stored.Summary.IsNeverCooked,
        view.Zone.Id,
        view.Stored.LimitId,
        view.Plan?.Query ?? view.Kept.OldQuery ?? "",
        Parsed(view.Stored.PlanText),
        [.. view.Log.All.Select(EntryDocument.Of)]);

    /// <summary>The stored text as JSON; null when it is damaged, for the log must still come out.</summary>
    private static JsonElement? Parsed(string text)
    {
        try
        {
            return JsonElement.Parse(text);
        }
        catch (JsonException)
        {
            return null;
        }
    }

    private static string FileName(BatchView view, string kind) => $"batch-{view.Id:N}.{kind}";
}
