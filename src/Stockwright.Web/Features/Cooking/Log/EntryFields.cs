namespace Stockwright.Web.Features.Cooking.Log;

/// <summary>Names of the fields every entry may have, and of those named on other pages; the rest stand in <see cref="EntryRows"/>.</summary>
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

    /// <summary>Step of the plan that was done.</summary>
    public const string Step = "step";

    /// <summary>The picture, sent as a file.</summary>
    public const string Photo = "photo";
}
