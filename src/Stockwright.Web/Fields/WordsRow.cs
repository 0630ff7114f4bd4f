using System.Globalization;

namespace Stockwright.Web.Fields;

/// <summary>One of the words a field can hold.</summary>
/// <param name="Word">As in links, forms and the interface.</param>
/// <param name="Value">What it stands for.</param>
/// <param name="Label">As on the page.</param>
public sealed record FieldWord<T>(string Word, T Value, string Label);

/// <summary>One of a few words.</summary>
/// <param name="Name">As in links, forms and the interface.</param>
/// <param name="Label">As on the page.</param>
/// <param name="Words">All of them, in the order of the page.</param>
public sealed record WordsRow<T>(string Name, string Label, IReadOnlyList<FieldWord<T>> Words) : FieldRow<T>(Name, Label)
    where T : struct
{
    /// <summary>Label of choosing none; null where one of the words always counts.</summary>
    public string? None { get; init; }

    /// <summary>True for a list to open, false for all words side by side.</summary>
    public bool IsList { get; init; }

    public override FieldKind Kind => IsList ? FieldKind.List : FieldKind.Words;

    public override IReadOnlyList<ChoiceOption> Options =>
    [
        .. None is null ? Array.Empty<ChoiceOption>() : [new ChoiceOption("", None)],
        .. Words.Select(word => new ChoiceOption(word.Word, word.Label)),
    ];

    /// <summary>The value when nothing is typed: the one said to count, else the first.</summary>
    public T Usual => Blank ?? Words[0].Value;

    public override string? BlankIn(UnitSystem units) => None is null ? Text(Usual, units) : "";

    public override string Text(T value, UnitSystem units, double tolerance = NumberRow.Exact) => WordOf(value);

    /// <summary>The word that stands for a value.</summary>
    public string WordOf(T value) => Words.First(word => EqualityComparer<T>.Default.Equals(word.Value, value)).Word;

    /// <summary>What the page says for a value.</summary>
    public string LabelOf(T value) => Words.First(word => EqualityComparer<T>.Default.Equals(word.Value, value)).Label;

    public override string Describe() => Description ?? $"{What}: {string.Join(", ", Words.SkipLast(1).Select(word => word.Word))} or {Words[^1].Word}.";

    internal override T? Read(FieldReader reader, string? missing = null)
    {
        string typed = reader.Form[Name].Trim();
        if (typed.Length == 0)
        {
            if ((missing ?? Missing) is { } sentence)
            {
                reader.Report(Name, sentence);
            }

            return null;
        }

        if (Words.FirstOrDefault(word => string.Equals(word.Word, typed, StringComparison.OrdinalIgnoreCase)) is { } found)
        {
            return found.Value;
        }

        reader.Report(Name, $"{What}: {KitchenNumber.Quote(typed)} is not one of {string.Join(", ", Words.Select(word => word.Word))}.");
        return null;
    }

    /// <summary>The value typed, the usual one when nothing is; null when it is wrong and reported.</summary>
    internal T? ReadOrUsual(FieldReader reader) => reader.Form.Has(Name) ? Read(reader) : Usual;
}

/// <summary>Yes or no.</summary>
public sealed record TickRow(string Name, string Label) : FieldRow<bool>(Name, Label)
{
    public override FieldKind Kind => FieldKind.Tick;

    public override string Text(bool value, UnitSystem units, double tolerance = NumberRow.Exact) => value ? "1" : "";

    public override string Describe() => Description ?? $"1 for: {What}.";

    internal static bool IsTicked(string typed) => typed.Trim() is "1" or "true" or "on";

    internal override bool? Read(FieldReader reader, string? missing = null) => reader.Form.Has(Name) ? IsTicked(reader.Form[Name]) : null;
}

/// <summary>A time of day.</summary>
public sealed record TimeRow(string Name, string Label) : FieldRow<TimeOnly>(Name, Label)
{
    public override FieldKind Kind => FieldKind.Time;

    public override string Text(TimeOnly value, UnitSystem units, double tolerance = NumberRow.Exact) =>
        value.ToString(value.Second == 0 ? "HH:mm" : "HH:mm:ss", CultureInfo.InvariantCulture);

    internal override TimeOnly? Read(FieldReader reader, string? missing = null) => reader.Time(Name);
}

/// <summary>A day.</summary>
public sealed record DateRow(string Name, string Label) : FieldRow<DateOnly>(Name, Label)
{
    public override FieldKind Kind => FieldKind.Date;

    public override string Text(DateOnly value, UnitSystem units, double tolerance = NumberRow.Exact) => value.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    internal override DateOnly? Read(FieldReader reader, string? missing = null) => reader.Date(Name);
}
