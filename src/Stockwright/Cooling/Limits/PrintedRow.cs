using Stockwright.Files;

namespace Stockwright.Cooling.Limits;

/// <summary>Reads figures that rules print in °C, °F or both.</summary>
internal static class PrintedRow
{
    internal static PrintedTemperature Printed(this JsonRow row, string field) => row.OptionalPrinted(field) ?? throw row.Missing(field + "C");

    internal static PrintedTemperature? OptionalPrinted(this JsonRow row, string field)
    {
        PrintedTemperature printed = new(row.OptionalNumber(field + "C"), row.OptionalNumber(field + "F"));
        return printed is { Celsius: null, Fahrenheit: null } ? null : printed;
    }

    /// <summary>Reads <c>[least, most]</c> in whole numbers above zero.</summary>
    internal static (int Least, int Most) WholeRange(this JsonRow row, string field)
    {
        double[] pair = [.. row.Numbers(field)];
        return pair.Length == 2 && pair[0] >= 1 && pair[1] >= pair[0] && pair.All(value => value == Math.Floor(value) && value <= 1000)
            ? ((int)pair[0], (int)pair[1])
            : throw row.Fail($"'{field}' must be two whole numbers [least, most]");
    }
}
