using System.Globalization;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization;
using System.Text.Json.Serialization.Metadata;
using Stockwright.Files;

namespace Stockwright.Logbook;

/// <summary>
/// Facts as JSON objects in SI units, the unit in the name of the field: for storage, exports and the HTTP interface. The word of the kind stands
/// beside the object, not in it. Temperatures are in °C or °F as they were read. Unknown fields, and fields given twice, are errors.
/// </summary>
public static class FactDocument
{
    private static readonly JsonSerializerOptions Options = new()
    {
        TypeInfoResolver = FactJson.Default.WithAddedModifier(LeaveOutWhatIsUsual),
        PropertyNamingPolicy = JsonNamingPolicy.CamelCase,
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
        Converters = { new EnumNames(), new FiniteNumber(), new UtcMoment() },
        UnmappedMemberHandling = JsonUnmappedMemberHandling.Disallow,
        RespectNullableAnnotations = true,
        AllowDuplicateProperties = false,
        AllowTrailingCommas = true,
        ReadCommentHandling = JsonCommentHandling.Skip,
    };

    private static readonly (string Word, Type Type)[] Rows =
        [.. Options.GetTypeInfo(typeof(LogFact)).PolymorphismOptions!.DerivedTypes.Select(kind => ((string)kind.TypeDiscriminator!, kind.DerivedType))];

    private static readonly Dictionary<string, Type> TypeOf = Rows.ToDictionary(row => row.Word, row => row.Type, StringComparer.Ordinal);

    private static readonly Dictionary<Type, string> WordOf = Rows.ToDictionary(row => row.Type, row => row.Word);

    /// <summary>The stable word of every kind of fact, in storage, exports and forms; in order.</summary>
    public static IReadOnlyList<string> Words { get; } = [.. Rows.Select(row => row.Word)];

    /// <summary>The word of a fact.</summary>
    public static string Word(LogFact fact)
    {
        ArgumentNullException.ThrowIfNull(fact);
        return Word(fact.GetType());
    }

    /// <summary>The word of a kind of fact.</summary>
    /// <param name="kind">Its record.</param>
    public static string Word(Type kind) => WordOf[kind];

    /// <summary>Writes a fact without its word.</summary>
    public static string Write(LogFact fact)
    {
        ArgumentNullException.ThrowIfNull(fact);
        return JsonSerializer.Serialize(fact, Options.GetTypeInfo(fact.GetType()));
    }

    /// <summary>Reads a fact.</summary>
    /// <param name="word">Its word, one of <see cref="Words"/>.</param>
    /// <param name="json">As written by <see cref="Write"/>.</param>
    /// <exception cref="FactFormatException">The word or a field is unknown, or a value is missing or of the wrong kind.</exception>
    public static LogFact Read(string word, string json)
    {
        ArgumentNullException.ThrowIfNull(word);
        ArgumentNullException.ThrowIfNull(json);
        if (!TypeOf.TryGetValue(word, out Type? kind))
        {
            throw new FactFormatException($"entry '{word}': there is no kind of entry called '{word}'");
        }

        try
        {
            return (LogFact?)JsonSerializer.Deserialize(json, Options.GetTypeInfo(kind)) ?? throw new FormatException("expected fields between braces, found nothing");
        }
        catch (Exception broken) when (broken is JsonException or FormatException or ArgumentException or InvalidOperationException)
        {
            // The last two: half a character, which is not even text; and what the quantities themselves refuse.
            throw new FactFormatException($"entry '{word}': {broken.Message}", broken);
        }
    }

    /// <summary>What may be left out is left out where it says nothing, and all else must be there. What is not stored is no field.</summary>
    private static void LeaveOutWhatIsUsual(JsonTypeInfo type)
    {
        foreach (JsonPropertyInfo property in type.Properties.ToArray())
        {
            if (property.AssociatedParameter is not { } parameter)
            {
                type.Properties.Remove(property);
                continue;
            }

            property.IsRequired = !(parameter.HasDefaultValue || parameter.IsNullable);
            if (property.IsRequired)
            {
                continue;
            }

            object? usual = parameter.HasDefaultValue ? parameter.DefaultValue : null;
            property.ShouldSerialize = (_, value) => !Equals(value, usual);
            if (property.PropertyType == typeof(string))
            {
                property.CustomConverter = new OptionalText();
            }
        }
    }

    /// <summary>A text that may be null, which says nothing.</summary>
    private sealed class OptionalText : JsonConverter<string>
    {
        public override bool HandleNull => true;

        public override string Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) => reader.GetString() ?? "";

        public override void Write(Utf8JsonWriter writer, string value, JsonSerializerOptions options) => writer.WriteStringValue(value);
    }

    private sealed class EnumNames : JsonConverterFactory
    {
        public override bool CanConvert(Type typeToConvert) => typeToConvert.IsEnum;

        public override JsonConverter CreateConverter(Type typeToConvert, JsonSerializerOptions options) =>
            (JsonConverter)Activator.CreateInstance(typeof(EnumName<>).MakeGenericType(typeToConvert))!;
    }

    private sealed class EnumName<TEnum> : JsonConverter<TEnum>
        where TEnum : struct, Enum
    {
        public override TEnum Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
            JsonRow.TryName(reader.GetString(), out TEnum value) ? value : throw new JsonException();

        public override void Write(Utf8JsonWriter writer, TEnum value, JsonSerializerOptions options) => writer.WriteStringValue(value.ToString());
    }

    private sealed class FiniteNumber : JsonConverter<double>
    {
        public override double Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
            reader.GetDouble() is var number && double.IsFinite(number) ? number : throw new JsonException();

        public override void Write(Utf8JsonWriter writer, double value, JsonSerializerOptions options) => writer.WriteNumberValue(value);
    }

    /// <summary>Written by UTC, to the last tick; read to the second as well.</summary>
    private sealed class UtcMoment : JsonConverter<DateTimeOffset>
    {
        public override DateTimeOffset Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
            reader.GetString() is var text
            && (DateTimeOffset.TryParseExact(text, "O", CultureInfo.InvariantCulture, DateTimeStyles.None, out DateTimeOffset moment)
                || DateTimeOffset.TryParseExact(text, "yyyy-MM-dd'T'HH:mm:ssK", CultureInfo.InvariantCulture, DateTimeStyles.AssumeUniversal, out moment))
            ? moment
            : throw new JsonException("a moment is written like 2026-12-31T23:59:00Z");

        public override void Write(Utf8JsonWriter writer, DateTimeOffset value, JsonSerializerOptions options) =>
            writer.WriteStringValue(value.ToUniversalTime().ToString("O", CultureInfo.InvariantCulture));
    }
}

/// <summary>How each kind of fact is built and taken apart, written by the compiler from its record.</summary>
[JsonSourceGenerationOptions(GenerationMode = JsonSourceGenerationMode.Metadata)]
[JsonSerializable(typeof(LogFact))]
internal sealed partial class FactJson : JsonSerializerContext;
