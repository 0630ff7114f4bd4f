using Stockwright.Logbook;
using Stockwright.Web.Features.Cooking.Stove;
using Stockwright.Web.Fields;
using Stockwright.Web.Wording;
using UnitsNet;
using UnitsNet.Units;

namespace Stockwright.Web.Features.Cooking.Log;

/// <summary>What a field of an entry shows itself as.</summary>
internal enum EntryFieldShape
{
    Number,
    Line,
    Note,
    List,
    Radios,
    Picture,
}

/// <summary>A field of one kind of entry, told once: the form, the reader, what is typed to be corrected and the interface's description go by it.</summary>
/// <param name="name">As in forms, in the outbox and in the HTTP interface.</param>
/// <param name="label">As on the page.</param>
internal class EntryField(string name, string label)
{
    public string Name => name;

    public string Label => label;

    public EntryFieldShape Shape { get; init; } = EntryFieldShape.Line;

    /// <summary>What it is, for the interface; null for what programs cannot send.</summary>
    public string? Description { get; init; }

    public string? Hint { get; init; }

    public Func<StoveView, UnitSystem, string>? HintIn { get; init; }

    public string? Placeholder { get; init; }

    /// <summary>Letters at most; null where it is no text.</summary>
    public int? Longest { get; init; }

    /// <summary>Unit beside the field, where it is not that of the measure.</summary>
    public string? Unit { get; init; }

    /// <summary>What there is to choose from; by the batch, and by what was typed.</summary>
    public Func<StoveView, string, IReadOnlyList<ChoiceOption>> Options { get; init; } = (_, _) => [];

    /// <summary>Chosen when nothing was typed.</summary>
    public Func<StoveView, string> Default { get; init; } = _ => "";

    /// <summary>What the cook should find now.</summary>
    public Func<StoveView, string>? Expected { get; init; }

    public virtual Measure? Measure => null;
}

/// <summary>A field and the part of a fact it holds.</summary>
internal abstract class EntryField<TFact, T>(string name, string label) : EntryField(name, label)
{
    /// <summary>The value typed; what is wrong with it stands in the reader, and the value then means nothing.</summary>
    public abstract T Read(EntryReader entry);

    /// <summary>The value of a fact as it would be typed; nothing where there is none.</summary>
    public abstract void Put(Typing form, TFact fact, KitchenClock clock);
}

/// <summary>How a quantity is typed, and how it stands to SI.</summary>
internal sealed record EntryQuantity<T>(Measure Measure, Func<double, T> FromSi, Func<T, double> ToSi);

/// <summary>A number within the range its record states.</summary>
internal sealed class NumberField<TFact, T> : EntryField<TFact, T?>
    where T : struct
{
    private readonly EntryQuantity<T> quantity;
    private readonly (T Least, T Most) range;
    private readonly Func<TFact, T?> get;

    public NumberField(string name, string label, EntryQuantity<T> quantity, (T Least, T Most) range, Func<TFact, T?> get)
        : base(name, label)
    {
        (this.quantity, this.range, this.get) = (quantity, range, get);
        Shape = EntryFieldShape.Number;
    }

    /// <summary>What it is called in messages.</summary>
    public string Told { get; init; } = "";

    /// <summary>What to say of a blank; null where it may be.</summary>
    public string? Missing { get; init; }

    /// <summary>What a blank means.</summary>
    public T? Blank { get; init; }

    /// <summary>When it is read; null for always.</summary>
    public Func<TypedForm, bool>? Asked { get; init; }

    public override Measure? Measure => quantity.Measure;

    public override T? Read(EntryReader entry)
    {
        if (Asked?.Invoke(entry.Fields.Form) == false)
        {
            return null;
        }

        double? si = entry.Fields.Number(Name, Told, quantity.Measure, quantity.ToSi(range.Least), quantity.ToSi(range.Most), Missing);
        return si is { } value ? quantity.FromSi(value) : Blank;
    }

    public override void Put(Typing form, TFact fact, KitchenClock clock) => form.Put(Name, quantity.Measure, get(fact) is { } value ? quantity.ToSi(value) : null);
}

/// <summary>A line of text, typed or chosen from a list.</summary>
internal sealed class LineField<TFact> : EntryField<TFact, string>
{
    private const int LongestLine = 200;

    private readonly Func<TFact, string> get;

    public LineField(string name, string label, Func<TFact, string> get)
        : base(name, label)
    {
        this.get = get;
        Longest = LongestLine;
    }

    /// <summary>What to say of a blank; null where it may be.</summary>
    public string? Missing { get; init; }

    public override string Read(EntryReader entry)
    {
        string text = entry.Fields.Text(Name, Longest ?? LongestLine);
        if (Missing is not null && entry.Fields.IsBlank(Name))
        {
            entry.Fields.Report(Name, Missing);
        }

        return text;
    }

    public override void Put(Typing form, TFact fact, KitchenClock clock) => form.Put(Name, get(fact));
}

/// <summary>Some lines of text.</summary>
internal sealed class NoteField<TFact> : EntryField<TFact, string>
{
    private readonly Func<TFact, string> get;

    public NoteField(string name, string label, Func<TFact, string> get)
        : base(name, label)
    {
        this.get = get;
        Shape = EntryFieldShape.Note;
        Longest = FieldText.LongestNote;
    }

    /// <summary>What to say of a blank; null where it may be.</summary>
    public string? Missing { get; init; }

    public override string Read(EntryReader entry)
    {
        string text = entry.Fields.Note(Name);
        if (Missing is not null && entry.Fields.IsBlank(Name))
        {
            entry.Fields.Report(Name, Missing);
        }

        return text;
    }

    public override void Put(Typing form, TFact fact, KitchenClock clock) => form.Put(Name, get(fact));
}

/// <summary>One of a few words.</summary>
internal sealed class WordField<TFact, T> : EntryField<TFact, T>
    where T : struct, Enum
{
    private readonly string told;
    private readonly (string Word, T Value)[] words;
    private readonly Func<TFact, T> get;

    /// <param name="name">As in forms.</param>
    /// <param name="label">As on the page.</param>
    /// <param name="told">What it is called in messages.</param>
    /// <param name="words">The words; the first is meant by a blank.</param>
    /// <param name="text">Each as read.</param>
    /// <param name="get">The value of a fact.</param>
    public WordField(string name, string label, string told, (string Word, T Value)[] words, Func<T, string> text, Func<TFact, T> get)
        : base(name, label)
    {
        (this.told, this.words, this.get) = (told, words, get);
        ChoiceOption[] options = [.. words.Select(word => new ChoiceOption(word.Word, text(word.Value)))];
        Shape = EntryFieldShape.List;
        Options = (_, _) => options;
    }

    // What is not one of the words is reported.
    public override T Read(EntryReader entry) => entry.Fields.Word(Name, told, words) ?? default;

    public override void Put(Typing form, TFact fact, KitchenClock clock) => form.Put(Name, WordTable.Of(words, get(fact)));
}

/// <summary>A thermometer's reading, kept in the degrees it was read in.</summary>
internal sealed class DegreesField : EntryField<LogFact.TemperatureRead, Temperature>
{
    public DegreesField(string name, string label)
        : base(name, label) => Shape = EntryFieldShape.Number;

    public override Measure? Measure => Measure.Temperature;

    public override Temperature Read(EntryReader entry)
    {
        (Temperature least, Temperature most) = LogFact.TemperatureRead.Range;
        entry.Fields.Number(Name, "Temperature", Measure.Temperature, least.Kelvins, most.Kelvins, "What does the thermometer read?");

        // As read, not through kelvins: 70 °F must stay 70 °F.
        KitchenNumber.TryParse(entry.Fields.Form[Name], out double typed, out _);
        return Temperature.From(typed, entry.Fields.Units == UnitSystem.UsCustomary ? TemperatureUnit.DegreeFahrenheit : TemperatureUnit.DegreeCelsius);
    }

    public override void Put(Typing form, LogFact.TemperatureRead fact, KitchenClock clock) => form.Put(Name, KitchenNumber.Write((double)fact.Temperature.Value));
}

/// <summary>A picture. It is sent beside the fields and read by itself.</summary>
internal sealed class PictureField<TFact> : EntryField<TFact, object?>
{
    public PictureField(string name, string label)
        : base(name, label) => Shape = EntryFieldShape.Picture;

    public override object? Read(EntryReader entry) => null;

    public override void Put(Typing form, TFact fact, KitchenClock clock)
    {
    }
}

/// <summary>A moment after that of the entry: 04:40 after 02:10 is the next such time, also past midnight.</summary>
internal sealed class UntilField<TFact>(string name, string label, Func<TFact, DateTimeOffset?> get) : EntryField<TFact, DateTimeOffset?>(name, label)
{
    /// <summary>What to say of one that is not after it.</summary>
    public string TooEarly { get; init; } = "";

    /// <summary>What to say of one that is still to come.</summary>
    public string TooLate { get; init; } = "";

    public override DateTimeOffset? Read(EntryReader entry)
    {
        // From when is asked first; what comes after it cannot be said yet.
        if (entry.Fields.MomentFrom(Name, entry.Batch.Zone, entry.HappenedAt) is not { } until
            || entry.Fields.Problems.Any(problem => problem.Field is EntryFields.At or EntryFields.AtDay))
        {
            return null;
        }

        if (until <= entry.HappenedAt)
        {
            entry.Fields.Report(Name, TooEarly);
        }
        else if (until > entry.Now + LogEntry.ClockSlack)
        {
            entry.Fields.Report(Name, TooLate);
        }

        return until;
    }

    public override void Put(Typing form, TFact fact, KitchenClock clock) => form.Put(Name, get(fact) is { } until ? clock.Typed(until) : null);
}
