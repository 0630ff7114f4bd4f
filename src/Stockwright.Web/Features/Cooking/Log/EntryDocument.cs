using Stockwright.Logbook;

namespace Stockwright.Web.Features.Cooking.Log;

/// <summary>An entry of a log, in SI units.</summary>
/// <param name="Entry">Its key.</param>
/// <param name="Number">Place in the log, from one.</param>
/// <param name="HappenedAt">When it happened, UTC.</param>
/// <param name="ReceivedAt">When it was stored, UTC.</param>
/// <param name="Who">Who says so.</param>
/// <param name="DeviceOffsetSeconds">How far the device's clock was ahead; null when it did not say.</param>
/// <param name="DeviceZone">The device's time zone; empty when it did not say.</param>
/// <param name="Kind">Kind of entry.</param>
/// <param name="Fact">What happened, units in the names.</param>
/// <param name="Corrects">Entry it replaces or takes back, or null.</param>
public sealed record EntryDocument(
    Guid Entry,
    int Number,
    DateTimeOffset HappenedAt,
    DateTimeOffset ReceivedAt,
    string Who,
    double? DeviceOffsetSeconds,
    string DeviceZone,
    string Kind,
    System.Text.Json.JsonElement Fact,
    Guid? Corrects)
{
    internal static EntryDocument Of(LogEntry entry) => new(
        entry.Id,
        entry.Number,
        entry.HappenedAt.ToUniversalTime(),
        entry.ReceivedAt.ToUniversalTime(),
        entry.Who,
        entry.DeviceOffset?.TotalSeconds,
        entry.DeviceZone,
        FactDocument.Word(entry.Fact),
        System.Text.Json.JsonDocument.Parse(FactDocument.Write(entry.Fact)).RootElement.Clone(),
        entry.Corrects);
}
