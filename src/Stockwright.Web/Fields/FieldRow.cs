using Stockwright.Evidence;

namespace Stockwright.Web.Fields;

/// <summary>What a field shows itself as.</summary>
public enum FieldKind
{
    /// <summary>Named by hand: a recipe, a pot, a row of cuts.</summary>
    Name,

    /// <summary>A line of text.</summary>
    Text,

    /// <summary>A number, with or without a unit.</summary>
    Number,

    /// <summary>A whole number.</summary>
    Whole,

    /// <summary>One of a few words, side by side.</summary>
    Words,

    /// <summary>One of a few words, in a list.</summary>
    List,

    /// <summary>Yes or no.</summary>
    Tick,

    /// <summary>A day.</summary>
    Date,

    /// <summary>A time of day.</summary>
    Time,
}

/// <summary>
/// A field, told once: reading, writing, the switch of measures, the interface's description and the page all go by this row.
/// What it holds is in <see cref="FieldRow{T}"/>, where it is kept in <see cref="FieldBinding{TRecord}"/>.
/// </summary>
/// <param name="Name">As in links, forms and the interface.</param>
/// <param name="Label">As on the page.</param>
public record FieldRow(string Name, string Label)
{
    public virtual FieldKind Kind => FieldKind.Name;

    /// <summary>What it is called in messages, where the label needs its surroundings to be understood.</summary>
    public string? Told { get; init; }

    public string? Hint { get; init; }

    /// <summary>What is said of a blank; null where it may be.</summary>
    public string? Missing { get; init; }

    /// <summary>Said in the field while it is blank; where there is none, the value that then counts.</summary>
    public string? Placeholder { get; init; }

    /// <summary>For the interface, where the label, the words and the unit do not say enough.</summary>
    public string? Description { get; init; }

    /// <summary>Class of the element round it, by which it is wide or shown only with a choice.</summary>
    public string? Class { get; init; }

    /// <summary>Unit beside the field, where it is not that of the measure.</summary>
    public string? Unit { get; init; }

    public string InputMode { get; init; } = "decimal";

    /// <summary>How it is measured; null for what is no number.</summary>
    public virtual Measure? Measured => null;

    /// <summary>How it is measured where that differs between the systems; else null.</summary>
    public Measure? Turned => Measured is { } measure && measure.Metric != measure.Us ? measure : null;

    /// <summary>What there is to choose from.</summary>
    public virtual IReadOnlyList<ChoiceOption> Options => [];

    /// <summary>Name in messages.</summary>
    public string What => Told ?? Label;

    public string? UnitIn(UnitSystem units) => Unit ?? (Measured?.In(units).Label is { Length: > 0 } label ? label : null);

    /// <summary>What counts when it is left blank, as it would be typed; null when nothing does.</summary>
    public virtual string? BlankIn(UnitSystem units) => null;

    /// <summary>The sentence of the interface's description.</summary>
    public virtual string Describe() => Description ?? $"{What}{Units()}.";

    /// <summary>Both units for the interface: <c>; cm or in</c>.</summary>
    protected string Units() => Measured is not { } measure || measure.Metric.Label.Length == 0 ? ""
        : measure.Metric == measure.Us ? $", in {(measure == Measure.Percent ? "per cent" : measure.Metric.Label)}"
        : measure == Measure.Temperature ? "; degrees Celsius or Fahrenheit"
        : $"; {measure.Metric.Label} or {measure.Us.Label}";
}

/// <summary>One of the things of a kitchen, in a list the page fills; read by hand.</summary>
/// <param name="Name">As in links, forms and the interface.</param>
/// <param name="Label">As on the page.</param>
public sealed record ChosenRow(string Name, string Label) : FieldRow(Name, Label)
{
    public override FieldKind Kind => FieldKind.List;
}

/// <summary>A field that holds a value of one type.</summary>
/// <typeparam name="T">A quantity, a number, a word's value, a day.</typeparam>
/// <param name="Name">As in links, forms and the interface.</param>
/// <param name="Label">As on the page.</param>
public abstract record FieldRow<T>(string Name, string Label) : FieldRow(Name, Label)
    where T : struct
{
    /// <summary>What counts when it is left blank, where no record says so.</summary>
    public T? Blank { get; init; }

    /// <summary>Relative tolerance of the blank's value as it is shown.</summary>
    public double BlankTolerance { get; init; } = NumberRow.Short;

    public override string? BlankIn(UnitSystem units) => Blank is { } value ? Text(value, units, BlankTolerance) : null;

    /// <summary>The value typed, or what counts for a blank; also when it is wrong and reported.</summary>
    internal T ReadOrBlank(FieldReader reader) => Read(reader) ?? Blank.GetValueOrDefault();

    /// <summary>The value typed; null when it is blank, or wrong and reported.</summary>
    /// <param name="reader">The form.</param>
    /// <param name="missing">What to say of a blank; null where it may be.</param>
    internal abstract T? Read(FieldReader reader, string? missing = null);

    /// <summary>The value as it would be typed.</summary>
    /// <param name="value">Value.</param>
    /// <param name="units">Measures.</param>
    /// <param name="tolerance">Relative tolerance of a number, for fewer digits.</param>
    public abstract string Text(T value, UnitSystem units, double tolerance = NumberRow.Exact);

    /// <summary>True when two values are told the same.</summary>
    public virtual bool IsSame(T one, T other) => EqualityComparer<T>.Default.Equals(one, other);

    /// <summary>The field with its place in a record.</summary>
    public FieldBinding<TRecord> Of<TRecord>(Func<TRecord, T?> get, Func<TRecord, T, TRecord> with) => new FieldBinding<TRecord, T>(this, get, with);

    /// <summary>The field with its place in a record that keeps range and source with the value: left as shown it keeps them, changed it becomes the cook's own.</summary>
    /// <param name="get">The record's value.</param>
    /// <param name="with">The record with another.</param>
    /// <param name="source">Source of the cook's own.</param>
    public FieldBinding<TRecord> OfStated<TRecord>(Func<TRecord, Stated<T>?> get, Func<TRecord, Stated<T>?, TRecord> with, string source) =>
        new StatedBinding<TRecord, T>(this, get, with, source);

    /// <summary>Adds the value to a form; nothing where there is none.</summary>
    internal void Put(List<KeyValuePair<string, string>> entries, T? value, UnitSystem units)
    {
        if (value is { } typed)
        {
            entries.Add(KeyValuePair.Create(Name, Text(typed, units)));
        }
    }
}
