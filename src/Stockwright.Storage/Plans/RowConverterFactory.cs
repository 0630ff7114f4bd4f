using System.Reflection;
using System.Text.Json;
using System.Text.Json.Serialization;

namespace Stockwright.Storage.Plans;

/// <summary>Small records that come by the hundred, as lists of their values in the order of their constructor: <c>[low, central, high]</c>.</summary>
/// <param name="kinds">The records; open generic ones stand for all of theirs.</param>
internal sealed class RowConverterFactory(IReadOnlyCollection<Type> kinds) : JsonConverterFactory
{
    public override bool CanConvert(Type typeToConvert) => kinds.Contains(typeToConvert.IsGenericType ? typeToConvert.GetGenericTypeDefinition() : typeToConvert);

    public override JsonConverter CreateConverter(Type typeToConvert, JsonSerializerOptions options) =>
        (JsonConverter)Activator.CreateInstance(typeof(Converter<>).MakeGenericType(typeToConvert))!;

    private sealed class Converter<T> : JsonConverter<T>
    {
        private static readonly ConstructorInfo Maker = typeof(T).GetConstructors().MaxBy(one => one.GetParameters().Length)!;
        private static readonly Type[] Types = [.. Maker.GetParameters().Select(parameter => parameter.ParameterType)];
        private static readonly Func<object, object?>[] Parts = [.. Maker.GetParameters().Select(Part)];

        public override T Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
        {
            object?[] values = new object?[Types.Length];
            Expect(reader, JsonTokenType.StartArray);
            for (int i = 0; i < values.Length; i++)
            {
                reader.Read();
                values[i] = JsonSerializer.Deserialize(ref reader, Types[i], options) ?? throw new JsonException($"A value of {typeof(T).Name} is missing.");
            }

            reader.Read();
            Expect(reader, JsonTokenType.EndArray);
            return (T)Maker.Invoke(values);
        }

        public override void Write(Utf8JsonWriter writer, T value, JsonSerializerOptions options)
        {
            writer.WriteStartArray();
            for (int i = 0; i < Types.Length; i++)
            {
                JsonSerializer.Serialize(writer, Parts[i](value!), Types[i], options);
            }

            writer.WriteEndArray();
        }

        private static Func<object, object?> Part(ParameterInfo parameter) =>
            typeof(T).GetProperty(parameter.Name!) is { } property ? property.GetValue : typeof(T).GetField($"Item{parameter.Position + 1}")!.GetValue;

        private static void Expect(Utf8JsonReader reader, JsonTokenType token)
        {
            if (reader.TokenType != token)
            {
                throw new JsonException($"{typeof(T).Name} is a list of {Types.Length} values.");
            }
        }
    }
}
