using System.ComponentModel;
using System.Text.Json.Serialization;
using Stockwright.Web.Fields;

namespace Stockwright.Web.Features.Cooking;

/// <summary>
/// Fields of an entry, for the OpenAPI document: those of the forms on the batch's page. The request itself is read leniently by
/// <see cref="JsonForm"/> and strictly by the same reader as the page's forms.
/// </summary>
public sealed record EntryInput
{
    [Description("Key of the entry, a GUID made by the sender. Sent again with the same key it is the same entry, and is answered as the first time.")]
    public required Guid Entry { get; init; }

    [Description("step-done, level, water, temperature, skimmed, heat-moved, lid, heat-lost, off-the-boil, simmers, boiled-over, ran-low, paused, resumed, strained, spent, "
        + "cooling-began, no-thermometer, correction-made, fat, refractometer, set-felt, portioned, note, closed, never-cooked or withdrawn.")]
    public required string Kind { get; init; }

    [Description("Measures of the numbers: metric (default) or us.")]
    public string? Units { get; init; }

    [Description("When it happened, by the kitchen's clock: left out for now, 14:20 for today, or 2026-12-31 14:20; with an offset, 2026-12-31 14:20+01:00, by that. A time that is still ahead today is refused.")]
    public string? At { get; init; }

    [Description("Day of a time without a date: today (default) or yesterday.")]
    [JsonPropertyName("at-day")]
    public string? AtDay { get; init; }

    [Description("Who says so: name or initials.")]
    public string? Who { get; init; }

    [Description("Key of the entry this one replaces or takes back.")]
    public Guid? Corrects { get; init; }

    [Description("Sender's clock when the entry was made, ISO 8601.")]
    [JsonPropertyName("device-time")]
    public DateTimeOffset? DeviceTime { get; init; }

    [Description("Sender's clock now, ISO 8601: how far it is off is taken from the time of the entry.")]
    public DateTimeOffset? Sent { get; init; }

    [Description("IANA time zone of the sender.")]
    [JsonPropertyName("device-zone")]
    public string? DeviceZone { get; init; }

    [Description("step-done: key of the step.")]
    public string? Step { get; init; }

    [Description("level: distance from the rim down; cm or in.")]
    public double? Below { get; init; }

    [Description("water: added; L or qt.")]
    public double? Water { get; init; }

    [Description("temperature: as read; degrees Celsius or Fahrenheit.")]
    public double? Degrees { get; init; }

    [Description("temperature: pot (default) or cooling.")]
    public string? Place { get; init; }

    [Description("temperature: which thermometer.")]
    public string? Probe { get; init; }

    [Description("heat-moved: stable name of the hob, or oven, or none.")]
    public string? Hob { get; init; }

    [Description("lid: off, ajar or on.")]
    public string? Lid { get; init; }

    [Description("lid ajar: open part of the mouth, in per cent.")]
    [JsonPropertyName("lid-open")]
    public double? LidOpen { get; init; }

    [Description("heat-lost: when it came back; left out while it is away.")]
    public string? Until { get; init; }

    [Description("heat-lost, paused, never-cooked, withdrawn: why.")]
    public string? Why { get; init; }

    [Description("boiled-over: lost over the rim; L or qt.")]
    public double? Lost { get; init; }

    [Description("strained: stock; L or qt.")]
    public double? Strained { get; init; }

    [Description("cooling-began: how.")]
    public string? Method { get; init; }

    [Description("correction-made: keep-cooling, reheat, discard or put-away.")]
    public string? Action { get; init; }

    [Description("spent: weight of the drained solids; kg or lb.")]
    public double? Spent { get; init; }

    [Description("fat: weight; g or oz.")]
    public double? Fat { get; init; }

    [Description("refractometer: degrees Brix.")]
    public double? Brix { get; init; }

    [Description("set-felt: watery, syrupy, trembling, soft-jelly, firm-jelly, very-firm, demi-glace or glace.")]
    public string? Body { get; init; }

    [Description("portioned: stock; L or qt.")]
    public double? Portioned { get; init; }

    [Description("note, correction-made: in the cook's words; no-thermometer: how the cook can tell that it is cold.")]
    public string? Text { get; init; }

    [Description("closed: what to change next time.")]
    [JsonPropertyName("next-time")]
    public string? NextTime { get; init; }

    [Description("closed: own time spent, in hours.")]
    public double? Attended { get; init; }

    [Description("closed: energy off the meter, in kWh.")]
    public double? Metered { get; init; }
}
