using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.Json.Serialization;
using System.Text.Json.Serialization.Metadata;
using Stockwright.Evidence;
using Stockwright.Larder;
using Stockwright.Planning;
using Stockwright.Simmering;

namespace Stockwright.Storage.Plans;

/// <summary>
/// How plans are written to be kept: the core's own records, every quantity as a number in SI, every choice as a word, what is computed left out.
/// </summary>
public static class PlanJson
{
    private static readonly Type[] Unions = [typeof(PlanGoal), typeof(FillMark)];
    private static readonly Type[] Rows = [typeof(Band<>), typeof(Stated<>), typeof(ValueTuple<,>), typeof(SimmerSample)];

    private static readonly JsonSerializerOptions Options = new(JsonSerializerDefaults.Web)
    {
        Converters =
        {
            new JsonStringEnumConverter(JsonNamingPolicy.CamelCase, allowIntegerValues: false),
            new QuantityConverterFactory(),
            new RowConverterFactory(Rows),
            new TimeSpanConverter(),
            new TimeZoneConverter(),
            new NameSetConverter(),
            new LarderConverter(),
        },
        TypeInfoResolver = new DefaultJsonTypeInfoResolver { Modifiers = { LeaveOutComputed, NameUnions } },
        NumberHandling = JsonNumberHandling.AllowNamedFloatingPointLiterals,
        DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull,
        RespectNullableAnnotations = true,
        UnmappedMemberHandling = JsonUnmappedMemberHandling.Disallow,

        // The text goes into a database column, never into a page; letters stay readable there.
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    /// <summary>Writes a part of a plan.</summary>
    public static JsonNode Write<T>(T part)
        where T : notnull => JsonSerializer.SerializeToNode(part, Options)!;

    /// <summary>Reads a part of a plan.</summary>
    /// <exception cref="StoredDocumentException">It is not what it should be.</exception>
    public static T Read<T>(JsonNode? part)
        where T : notnull
    {
        try
        {
            return part is null ? throw new StoredDocumentException("A part of the stored plan is missing.") : part.Deserialize<T>(Options)!;
        }
        catch (Exception trouble) when (trouble is JsonException or ArgumentException or KeyNotFoundException or InvalidOperationException or FormatException)
        {
            throw new StoredDocumentException($"The stored plan cannot be read: {trouble.Message}", trouble);
        }
    }

    internal static string Text(JsonNode node) => node.ToJsonString(Options);

    private static void LeaveOutComputed(JsonTypeInfo type)
    {
        if (type.Kind != JsonTypeInfoKind.Object)
        {
            return;
        }

        for (int i = type.Properties.Count - 1; i >= 0; i--)
        {
            if (type.Properties[i] is { Set: null, AssociatedParameter: null })
            {
                type.Properties.RemoveAt(i);
            }
        }
    }

    /// <summary>One of several records nested in one is known by a word: <c>fillPot</c>, <c>makeVolume</c>.</summary>
    private static void NameUnions(JsonTypeInfo type)
    {
        if (Array.IndexOf(Unions, type.Type) < 0)
        {
            return;
        }

        type.PolymorphismOptions = new JsonPolymorphismOptions { TypeDiscriminatorPropertyName = "type", UnknownDerivedTypeHandling = JsonUnknownDerivedTypeHandling.FailSerialization };
        foreach (Type one in type.Type.GetNestedTypes())
        {
            type.PolymorphismOptions.DerivedTypes.Add(new JsonDerivedType(one, JsonNamingPolicy.CamelCase.ConvertName(one.Name)));
        }
    }

    /// <summary>Seconds.</summary>
    private sealed class TimeSpanConverter : JsonConverter<TimeSpan>
    {
        public override TimeSpan Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
            new((long)Math.Round(reader.GetDouble() * TimeSpan.TicksPerSecond));

        public override void Write(Utf8JsonWriter writer, TimeSpan value, JsonSerializerOptions options) => writer.WriteNumberValue(value.TotalSeconds);
    }

    /// <summary>IANA name; UTC where this machine does not know it.</summary>
    private sealed class TimeZoneConverter : JsonConverter<TimeZoneInfo>
    {
        public override TimeZoneInfo Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
            TimeZoneInfo.TryFindSystemTimeZoneById(reader.GetString()!, out TimeZoneInfo? zone) ? zone : TimeZoneInfo.Utc;

        public override void Write(Utf8JsonWriter writer, TimeZoneInfo value, JsonSerializerOptions options) => writer.WriteStringValue(value.Id);
    }

    /// <summary>Names in order.</summary>
    private sealed class NameSetConverter : JsonConverter<IReadOnlySet<string>>
    {
        public override IReadOnlySet<string> Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
            JsonSerializer.Deserialize<string[]>(ref reader, options)!.ToHashSet(StringComparer.Ordinal);

        public override void Write(Utf8JsonWriter writer, IReadOnlySet<string> value, JsonSerializerOptions options) =>
            JsonSerializer.Serialize(writer, value.Order(StringComparer.Ordinal).ToArray(), options);
    }

    /// <summary>Its rows.</summary>
    private sealed class LarderConverter : JsonConverter<LarderTable>
    {
        public override LarderTable Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
            new(JsonSerializer.Deserialize<Ingredient[]>(ref reader, options)!);

        public override void Write(Utf8JsonWriter writer, LarderTable value, JsonSerializerOptions options) =>
            JsonSerializer.Serialize(writer, value.Ingredients, options);
    }
}
