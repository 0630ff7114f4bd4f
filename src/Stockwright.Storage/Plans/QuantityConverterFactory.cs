using System.Text.Json;
using System.Text.Json.Serialization;
using UnitsNet;

namespace Stockwright.Storage.Plans;

/// <summary>Quantities as numbers in SI; where any kind of quantity may stand, beside the name of its kind: <c>{ "Length": 0.2 }</c>.</summary>
internal sealed class QuantityConverterFactory : JsonConverterFactory
{
    /// <summary>Kinds that may stand among the assumptions of a plan. A table of all kinds there are would hold megabytes.</summary>
    private static readonly QuantityInfo[] Kinds =
    [
        AreaDensity.Info, Density.Info, Energy.Info, Frequency.Info, Length.Info, Mass.Info, MolarEnergy.Info, Power.Info, Pressure.Info, Ratio.Info,
        Temperature.Info, TemperatureDelta.Info, Volume.Info, VolumeFlow.Info,
    ];

    public override bool CanConvert(Type typeToConvert) => typeof(IQuantity).IsAssignableFrom(typeToConvert);

    public override JsonConverter CreateConverter(Type typeToConvert, JsonSerializerOptions options) => typeToConvert == typeof(IQuantity)
        ? new AnyConverter()
        : (JsonConverter)Activator.CreateInstance(typeof(Converter<>).MakeGenericType(typeToConvert))!;

    private static double Si(IQuantity quantity) => (double)quantity.As(quantity.QuantityInfo.BaseUnitInfo.Value);

    private static double Number(ref Utf8JsonReader reader) => reader.TokenType == JsonTokenType.String
        ? double.Parse(reader.GetString()!, System.Globalization.CultureInfo.InvariantCulture)
        : reader.GetDouble();

    private static void Put(Utf8JsonWriter writer, double number)
    {
        if (double.IsFinite(number))
        {
            writer.WriteNumberValue(number);
        }
        else
        {
            writer.WriteStringValue(number.ToString(System.Globalization.CultureInfo.InvariantCulture));
        }
    }

    private sealed class Converter<T> : JsonConverter<T>
        where T : struct, IQuantity
    {
        private static readonly Enum Unit = default(T).QuantityInfo.BaseUnitInfo.Value;

        public override T Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) => (T)Quantity.From(Number(ref reader), Unit);

        public override void Write(Utf8JsonWriter writer, T value, JsonSerializerOptions options) => Put(writer, Si(value));
    }

    private sealed class AnyConverter : JsonConverter<IQuantity>
    {
        public override IQuantity Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
        {
            reader.Read();
            string name = reader.GetString()!;
            QuantityInfo kind = Array.Find(Kinds, one => string.Equals(one.Name, name, StringComparison.Ordinal)) ?? throw new JsonException($"No quantity is called '{name}'.");
            reader.Read();
            IQuantity quantity = Quantity.From(Number(ref reader), kind.BaseUnitInfo.Value);
            reader.Read();
            return quantity;
        }

        public override void Write(Utf8JsonWriter writer, IQuantity value, JsonSerializerOptions options)
        {
            writer.WriteStartObject();
            writer.WritePropertyName(value.QuantityInfo.Name);
            Put(writer, Si(value));
            writer.WriteEndObject();
        }
    }
}
