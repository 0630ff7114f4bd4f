using System.Globalization;

namespace Stockwright.Web.Fields;

/// <summary>Writes stored values as a cook would type them.</summary>
internal sealed class FormWriter(UnitSystem units)
{
    /// <summary>Finer than any kitchen measure, coarse enough to read.</summary>
    private const double Tolerance = 1e-4;

    private readonly List<KeyValuePair<string, string>> entries = [];

    public TypedForm Form => new(entries);

    public FormWriter Put(string field, string? text)
    {
        if (!string.IsNullOrEmpty(text))
        {
            entries.Add(KeyValuePair.Create(field, text));
        }

        return this;
    }

    public FormWriter Put(string field, Measure measure, double? si) => Put(field, si is { } value ? Text(measure, value, units) : null);

    public FormWriter Put<T>(FieldRow<T> row, T? value)
        where T : struct => Put(row.Name, value is { } typed ? row.Text(typed, units, Tolerance) : null);

    /// <summary>Every value of a record, the usual ones too.</summary>
    public FormWriter Put<TRecord>(IEnumerable<FieldBinding<TRecord>> fields, TRecord record)
    {
        foreach (FieldBinding<TRecord> field in fields)
        {
            Put(field.Row.Name, field.Text(record, units, Tolerance));
        }

        return this;
    }

    public FormWriter Put(string field, int whole) => Put(field, whole.ToString(CultureInfo.InvariantCulture));

    public FormWriter Tick(string field, bool ticked) => Put(field, ticked ? "1" : null);

    public static string Text(Measure measure, double si, UnitSystem units) => KitchenNumber.Write(measure.In(units).FromSi(si), Tolerance);

    /// <summary>
    /// True when fields still read as the stored value was shown, so that the stored value itself is kept: 240 mm shown
    /// as 9.4488 in must not drift by being saved.
    /// </summary>
    public static bool Unchanged(TypedForm typed, TypedForm shown, params ReadOnlySpan<string> fields)
    {
        foreach (string field in fields)
        {
            if (!string.Equals(typed[field].Trim(), shown[field], StringComparison.Ordinal))
            {
                return false;
            }
        }

        return true;
    }
}
