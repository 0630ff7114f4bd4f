using Stockwright.Evidence;

namespace Stockwright.Web.Fields;

/// <summary>A field and where its value is kept.</summary>
/// <param name="Row">The field.</param>
public abstract record FieldBinding(FieldRow Row);

/// <summary>A field and its place in a record.</summary>
/// <typeparam name="TRecord">Record that keeps the value.</typeparam>
/// <param name="Row">The field.</param>
public abstract record FieldBinding<TRecord>(FieldRow Row) : FieldBinding(Row)
{
    /// <summary>
    /// True when a record's value has to be written though it may be the usual one, or false when it need not be; null to write
    /// whatever differs from the usual record.
    /// </summary>
    public Func<TRecord, TRecord, bool>? Said { get; init; }

    /// <summary>Reads the field as a change to a record; null when it is blank, or wrong and reported.</summary>
    internal abstract Func<TRecord, TRecord>? Read(FieldReader reader);

    /// <summary>The record's value as typed; null when it has none.</summary>
    internal abstract string? Text(TRecord record, UnitSystem units, double tolerance = NumberRow.Exact);

    internal abstract bool IsSame(TRecord one, TRecord other);

    /// <summary>The other record with this one's value.</summary>
    internal abstract TRecord Copy(TRecord from, TRecord to);

    /// <summary>Writes the record's value; nothing where it is the usual record's.</summary>
    internal void Write(List<KeyValuePair<string, string>> entries, TRecord record, TRecord usual, UnitSystem units)
    {
        if ((Said is null ? !IsSame(record, usual) : Said(record, usual)) && Text(record, units) is { } text)
        {
            entries.Add(KeyValuePair.Create(Row.Name, text));
        }
    }

    /// <summary>The same field of a record that is part of another.</summary>
    public FieldBinding<TOuter> In<TOuter>(Func<TOuter, TRecord> get, Func<TOuter, TRecord, TOuter> with) =>
        new InnerBinding<TOuter, TRecord>(this, get, with) { Said = Said is null ? null : (one, usual) => Said(get(one), get(usual)) };
}

internal sealed record FieldBinding<TRecord, T>(FieldRow<T> Typed, Func<TRecord, T?> Get, Func<TRecord, T, TRecord> With) : FieldBinding<TRecord>(Typed)
    where T : struct
{
    internal override Func<TRecord, TRecord>? Read(FieldReader reader) => Typed.Read(reader) is { } value ? record => With(record, value) : null;

    internal override string? Text(TRecord record, UnitSystem units, double tolerance = NumberRow.Exact) => Get(record) is { } value ? Typed.Text(value, units, tolerance) : null;

    internal override bool IsSame(TRecord one, TRecord other) => (Get(one), Get(other)) switch
    {
        (null, null) => true,
        ({ } left, { } right) => Typed.IsSame(left, right),
        _ => false,
    };

    internal override TRecord Copy(TRecord from, TRecord to) => Get(from) is { } value ? With(to, value) : to;
}

internal sealed record TextBinding<TRecord>(TextRow Typed, Func<TRecord, string?> Get, Func<TRecord, string, TRecord> With) : FieldBinding<TRecord>(Typed)
{
    internal override Func<TRecord, TRecord>? Read(FieldReader reader)
    {
        string text = Typed.Read(reader);
        return record => With(record, text);
    }

    internal override string? Text(TRecord record, UnitSystem units, double tolerance = NumberRow.Exact) => Get(record) is { Length: > 0 } text ? text : null;

    internal override bool IsSame(TRecord one, TRecord other) => string.Equals(Get(one) ?? "", Get(other) ?? "", StringComparison.Ordinal);

    internal override TRecord Copy(TRecord from, TRecord to) => With(to, Get(from) ?? "");
}

internal sealed record StatedBinding<TRecord, T>(FieldRow<T> Typed, Func<TRecord, Stated<T>?> Get, Func<TRecord, Stated<T>?, TRecord> With, string Source) : FieldBinding<TRecord>(Typed)
    where T : struct
{
    internal override Func<TRecord, TRecord>? Read(FieldReader reader) =>
        Typed.Read(reader) is { } value ? record => With(record, new Stated<T>(value, value, value, Provenance.CookStated, Source)) : null;

    internal override string? Text(TRecord record, UnitSystem units, double tolerance = NumberRow.Exact) => Get(record) is { } stated ? Typed.Text(stated.Value, units, tolerance) : null;

    internal override bool IsSame(TRecord one, TRecord other) => Equals(Get(one), Get(other));

    internal override TRecord Copy(TRecord from, TRecord to) => With(to, Get(from));
}

internal sealed record InnerBinding<TOuter, TRecord>(FieldBinding<TRecord> Inner, Func<TOuter, TRecord> Get, Func<TOuter, TRecord, TOuter> With) : FieldBinding<TOuter>(Inner.Row)
{
    internal override Func<TOuter, TOuter>? Read(FieldReader reader) => Inner.Read(reader) is { } change ? outer => With(outer, change(Get(outer))) : null;

    internal override string? Text(TOuter record, UnitSystem units, double tolerance = NumberRow.Exact) => Inner.Text(Get(record), units, tolerance);

    internal override bool IsSame(TOuter one, TOuter other) => Inner.IsSame(Get(one), Get(other));

    internal override TOuter Copy(TOuter from, TOuter to) => With(to, Inner.Copy(Get(from), Get(to)));
}

/// <summary>Reads and writes a record by its fields.</summary>
internal static class FieldBindings
{
    /// <summary>Everything typed, as one change to the record; problems stand in the reader.</summary>
    public static Func<TRecord, TRecord> Read<TRecord>(this IEnumerable<FieldBinding<TRecord>> fields, FieldReader reader)
    {
        List<Func<TRecord, TRecord>> changes = [.. fields.Select(field => field.Read(reader)).OfType<Func<TRecord, TRecord>>()];
        return record => changes.Aggregate(record, (changed, change) => change(changed));
    }

    /// <summary>
    /// Everything typed, as one change to the record, where a field that still reads as the stored value was shown keeps that value:
    /// 240 mm shown as 9.4488 in must not drift by being saved.
    /// </summary>
    public static Func<TRecord, TRecord> ReadKept<TRecord>(this IEnumerable<FieldBinding<TRecord>> fields, FieldReader reader, TRecord stored, TypedForm shown)
    {
        List<Func<TRecord, TRecord>> changes = [];
        foreach (FieldBinding<TRecord> field in fields)
        {
            Func<TRecord, TRecord>? change = field.Read(reader);
            if (FormWriter.Unchanged(reader.Form, shown, field.Row.Name))
            {
                changes.Add(record => field.Copy(stored, record));
            }
            else if (change is not null)
            {
                changes.Add(change);
            }
        }

        return record => changes.Aggregate(record, (changed, change) => change(changed));
    }

    /// <summary>What differs from a usual record, as it would be typed.</summary>
    public static List<KeyValuePair<string, string>> Write<TRecord>(this IEnumerable<FieldBinding<TRecord>> fields, TRecord record, TRecord usual, UnitSystem units)
    {
        List<KeyValuePair<string, string>> entries = [];
        foreach (FieldBinding<TRecord> field in fields)
        {
            field.Write(entries, record, usual, units);
        }

        return entries;
    }
}
