using System.ComponentModel;
using System.Text.Json.Serialization;
using Microsoft.AspNetCore.OpenApi;
using Microsoft.OpenApi;
using Stockwright.Logbook;
using Stockwright.Web.Features.Cooking.Log;
using Stockwright.Web.Fields;

namespace Stockwright.Web.Features.Cooking;

/// <summary>
/// Fields of an entry, for the OpenAPI document: those of the forms on the batch's page. The request itself is read leniently by
/// <see cref="JsonForm"/> and strictly by the same reader as the page's forms.
/// </summary>
public sealed record EntryInput
{
    /// <summary>RFC 8259, section 6, as the framework writes it for numbers that may be text.</summary>
    private const string Number = @"^-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?$";

    [Description("Key of the entry, a GUID made by the sender. Sent again with the same key it is the same entry, and is answered as the first time.")]
    public required Guid Entry { get; init; }

    [Description("Kind of entry.")]
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

    /// <summary>Describes the kinds, and the fields of each, by their rows.</summary>
    internal static Task Describe(OpenApiSchema schema, OpenApiSchemaTransformerContext context, CancellationToken cancellationToken)
    {
        if (context.JsonTypeInfo.Type != typeof(EntryInput) || context.JsonPropertyInfo is not null)
        {
            return Task.CompletedTask;
        }

        IDictionary<string, IOpenApiSchema> properties = schema.Properties!;
        string[] words = [.. FactDocument.Words.Where(word => !EntryKinds.Find(word)!.HasPicture)];
        properties["kind"].Description = $"{string.Join(", ", words[..^1])} or {words[^1]}.";
        foreach (IGrouping<string, (EntryKind Kind, EntryField Field)> like in EntryRows.All
            .SelectMany(kind => kind.Fields.Where(field => field.Description is not null).Select(field => (kind, field))).GroupBy(row => row.field.Name, StringComparer.Ordinal))
        {
            bool isNumber = like.First().Field.Shape == EntryFieldShape.Number;
            properties[like.Key] = new OpenApiSchema
            {
                Description = string.Join("; ", like.GroupBy(row => row.Field.Description + UnitsOf(row.Field.Measure), StringComparer.Ordinal)
                    .Select(same => $"{string.Join(", ", same.Select(row => row.Kind.Word))}: {same.Key}")) + ".",

                // Numbers may also be text as a cook writes it.
                Type = isNumber ? JsonSchemaType.Null | JsonSchemaType.String | JsonSchemaType.Number : JsonSchemaType.Null | JsonSchemaType.String,
                Format = isNumber ? "double" : null,
                Pattern = isNumber ? Number : null,
            };
        }

        return Task.CompletedTask;
    }

    private static string UnitsOf(Measure? measure) => measure is null || measure.Metric.Label.Length == 0 ? ""
        : measure == Measure.Temperature ? "; degrees Celsius or Fahrenheit"
        : measure == Measure.Percent ? ", in per cent"
        : measure.Metric == measure.Us ? $", in {measure.Metric.Label}"
        : $"; {measure.Metric.Label} or {measure.Us.Label}";
}
