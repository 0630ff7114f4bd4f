using System.Collections;
using System.Reflection;
using UnitsNet;
using Xunit;

namespace Stockwright.Storage.Tests.Contract;

/// <summary>
/// Compares records part by part. Quantities are compared in their base unit to 1e-12 of their size, some ten thousand
/// roundings of a double: going from degrees or millimetres to SI and back may cost the last bits and no more.
/// </summary>
internal static class Same
{
    public static void As(object? expected, object? actual, string path = "")
    {
        if (expected is null || actual is null)
        {
            Assert.True(expected is null && actual is null, $"{path}: {expected ?? "nothing"} became {actual ?? "nothing"}");
            return;
        }

        Assert.True(expected is IEnumerable || expected.GetType() == actual.GetType(), $"{path}: {expected.GetType()} became {actual.GetType()}");
        switch (expected)
        {
            case IQuantity quantity:
                double before = InBase(quantity);
                double after = InBase((IQuantity)actual);
                Assert.True(
                    Math.Abs(before - after) <= 1e-12 * Math.Max(Math.Abs(before), 1e-3), $"{path}: {before:R} became {after:R}");
                break;
            case string or ValueType when string.Equals(expected.GetType().Namespace, "System", StringComparison.Ordinal):
            case Enum:
                Assert.True(expected.Equals(actual), $"{path}: {expected} became {actual}");
                break;
            case IEnumerable list:
                object?[] wanted = [.. list.Cast<object?>()];
                object?[] got = [.. ((IEnumerable)actual).Cast<object?>()];
                Assert.True(wanted.Length == got.Length, $"{path}: {wanted.Length} parts became {got.Length}");
                for (int index = 0; index < wanted.Length; index++)
                {
                    As(wanted[index], got[index], $"{path}[{index}]");
                }

                break;
            default:
                foreach (PropertyInfo property in expected.GetType().GetProperties(BindingFlags.Public | BindingFlags.Instance))
                {
                    As(property.GetValue(expected), property.GetValue(actual), $"{path}.{property.Name}");
                }

                break;
        }
    }

    private static double InBase(IQuantity quantity) => (double)quantity.ToUnit(quantity.QuantityInfo.BaseUnitInfo.Value).Value;
}
