namespace Stockwright.Web.Features.Cooking.Log;

/// <summary>Names of the fields of an entry, in forms, in the outbox and in the HTTP interface.</summary>
internal static class EntryFields
{
    /// <summary>Key made by the device (a GUID); a repeat with the same key is the same entry.</summary>
    public const string Entry = "entry";

    /// <summary>Kind, a word of <see cref="Logbook.FactDocument"/>.</summary>
    public const string Kind = "kind";

    /// <summary>When it happened, by the kitchen's clock: blank for now, <c>14:20</c>, or <c>2026-12-31 14:20</c>.</summary>
    public const string At = "at";

    /// <summary>Day of a time typed without a date: <c>today</c>, as when left out, or <c>yesterday</c>.</summary>
    public const string AtDay = "at-day";

    public const string Who = "who";

    /// <summary>Entry this one corrects or withdraws.</summary>
    public const string Corrects = "corrects";

    /// <summary>Device's clock when the entry was made, ISO 8601 with offset; set by script.</summary>
    public const string DeviceTime = "device-time";

    /// <summary>Device's clock when the entry was sent, ISO 8601 with offset; set by script.</summary>
    public const string Sent = "sent";

    /// <summary>IANA zone of the device; set by script.</summary>
    public const string DeviceZone = "device-zone";

    public const string Step = "step";
    public const string Below = "below";
    public const string Water = "water";
    public const string Degrees = "degrees";
    public const string Place = "place";
    public const string Probe = "probe";
    public const string Hob = "hob";
    public const string Lid = "lid";
    public const string LidOpen = "lid-open";
    public const string Until = "until";
    public const string Why = "why";
    public const string Lost = "lost";
    public const string Strained = "strained";
    public const string Spent = "spent";
    public const string Method = "method";
    public const string Action = "action";
    public const string Fat = "fat";
    public const string Brix = "brix";
    public const string Body = "body";
    public const string Portioned = "portioned";
    public const string Text = "text";
    public const string Photo = "photo";
    public const string NextTime = "next-time";
    public const string Attended = "attended";
    public const string Metered = "metered";
}
