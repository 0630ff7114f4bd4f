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

/// <summary>How a quantity is typed, and how it stands to SI.</summary>
internal sealed record EntryQuantity<T>(Measure Measure, Func<double, T> FromSi, Func<T, double> ToSi);

/// <summary>A field of one kind of entry, told once: the form, the reader, what is typed to be corrected and the interface's description go by it.</summary>
/// <param name="Name">As in forms, in the outbox and in the HTTP interface.</param>
/// <param name="Label">As on the page.</param>
/// <param name="Shape">As what it is shown.</param>
internal abstract record EntryField(string Name, string Label, EntryFieldShape Shape)
{
    private const int LongestLine = 200;

    /// <summary>What it is, for the interface; null for what programs cannot send.</summary>
    public string? Description { get; init; }

    public string? Hint { get; init; }

    public Func<StoveView, UnitSystem, string>? HintIn { get; init; }

    public string? Placeholder { get; init; }

    /// <summary>Letters at most; null where it is no text.</summary>
    public int? Longest { get; init; }

    public Measure? Measure { get; init; }

    /// <summary>Unit beside the field, where it is not that of the measure.</summary>
    public string? Unit { get; init; }

    /// <summary>What there is to choose from; by the batch, and by what was typed.</summary>
    public Func<StoveView, string, IReadOnlyList<ChoiceOption>> Options { get; init; } = (_, _) => [];

    /// <summary>Chosen when nothing was typed.</summary>
    public Func<StoveView, string> Default { get; init; } = _ => "";

    /// <summary>What the cook should find now.</summary>
    public Func<StoveView, string>? Expected { get; init; }

    /// <summary>A number within the range its record states.</summary>
    /// <param name="name">As in forms.</param>
    /// <param name="label">As on the page.</param>
    /// <param name="quantity">What is measured.</param>
    /// <param name="range">Least and most.</param>
    /// <param name="get">The value of a fact.</param>
    /// <param name="told">What it is called in messages.</param>
    /// <param name="missing">What to say of a blank; null where it may be.</param>
    public static EntryField<TFact, T?> Number<TFact, T>(
        string name, string label, EntryQuantity<T> quantity, (T Least, T Most) range, Func<TFact, T?> get, string told, string? missing = null)
        where T : struct => new(
            name,
            label,
            EntryFieldShape.Number,
            entry => entry.Fields.Number(name, told, quantity.Measure, quantity.ToSi(range.Least), quantity.ToSi(range.Most), missing) is { } si ? quantity.FromSi(si) : null,
            (form, fact, _) => form.Put(name, quantity.Measure, get(fact) is { } value ? quantity.ToSi(value) : null))
        {
            Measure = quantity.Measure,
        };

    /// <summary>A line of text, typed or chosen from a list, or some lines.</summary>
    public static EntryField<TFact, string> Line<TFact>(
        string name, string label, Func<TFact, string> get, string? missing = null, EntryFieldShape shape = EntryFieldShape.Line, int longest = LongestLine) => new(
            name,
            label,
            shape,
            entry =>
            {
                string text = shape == EntryFieldShape.Note ? entry.Fields.Note(name) : entry.Fields.Text(name, longest);
                if (missing is not null && entry.Fields.IsBlank(name))
                {
                    entry.Fields.Report(name, missing);
                }

                return text;
            },
            (form, fact, _) => form.Put(name, get(fact)))
        {
            Longest = longest,
        };

    /// <summary>One of a few words; the first is meant by a blank.</summary>
    public static EntryField<TFact, T> Words<TFact, T>(
        string name, string label, string told, (string Word, T Value)[] words, Func<T, string> text, Func<TFact, T> get, EntryFieldShape shape = EntryFieldShape.List)
        where T : struct, Enum
    {
        ChoiceOption[] options = [.. words.Select(word => new ChoiceOption(word.Word, text(word.Value)))];

        // What is not one of the words is reported, and no value is made of it.
        return new(name, label, shape, entry => entry.Fields.Word(name, told, words) ?? default, (form, fact, _) => form.Put(name, WordTable.Of(words, get(fact))))
        {
            Options = (_, _) => options,
        };
    }

    /// <summary>A thermometer's reading, kept in the degrees it was read in, not through kelvins: 70 °F must stay 70 °F.</summary>
    public static EntryField<LogFact.TemperatureRead, Temperature> Degrees(string name, string label) => new(
        name,
        label,
        EntryFieldShape.Number,
        entry =>
        {
            (Temperature least, Temperature most) = LogFact.TemperatureRead.Range;
            entry.Fields.Number(name, "Temperature", Measure.Temperature, least.Kelvins, most.Kelvins, "What does the thermometer read?");
            _ = KitchenNumber.TryParse(entry.Fields.Form[name], out double typed, out _);
            return Temperature.From(typed, entry.Fields.Units == UnitSystem.UsCustomary ? TemperatureUnit.DegreeFahrenheit : TemperatureUnit.DegreeCelsius);
        },
        (form, fact, _) => form.Put(name, KitchenNumber.Write((double)fact.Temperature.Value)))
    {
        Measure = Measure.Temperature,
    };

    /// <summary>A moment after that of the entry: 04:40 after 02:10 is the next such time, also past midnight.</summary>
    public static EntryField<TFact, DateTimeOffset?> Until<TFact>(string name, string label, Func<TFact, DateTimeOffset?> get, string early, string late) => new(
        name,
        label,
        EntryFieldShape.Line,
        entry =>
        {
            DateTimeOffset? until = entry.Fields.MomentFrom(name, entry.Batch.Zone, entry.HappenedAt);

            // From when is asked first; what comes after it cannot be said yet.
            bool isKnown = until is not null && !entry.Fields.Problems.Any(problem => problem.Field is EntryFields.At or EntryFields.AtDay);
            if (isKnown && (until <= entry.HappenedAt || until > entry.Now + LogEntry.ClockSlack))
            {
                entry.Fields.Report(name, until <= entry.HappenedAt ? early : late);
            }

            return until;
        },
        (form, fact, clock) => form.Put(name, get(fact) is { } until ? clock.Typed(until) : null));

    /// <summary>A picture. It is sent beside the fields and read by itself.</summary>
    public static EntryField<TFact, bool> Picture<TFact>(string name, string label) => new(name, label, EntryFieldShape.Picture, _ => true, (_, _, _) => { });
}

/// <summary>A field of the form of one record; <see cref="Put"/> writes what a fact holds as it would be typed.</summary>
internal record EntryField<TFact>(string Name, string Label, EntryFieldShape Shape, Action<FormWriter, TFact, KitchenClock> Put) : EntryField(Name, Label, Shape);

/// <summary>A field and its value. What is wrong with what was typed stands in the reader, and the value then means nothing.</summary>
internal sealed record EntryField<TFact, T>(string Name, string Label, EntryFieldShape Shape, Func<EntryReader, T> Read, Action<FormWriter, TFact, KitchenClock> Put)
    : EntryField<TFact>(Name, Label, Shape, Put);
