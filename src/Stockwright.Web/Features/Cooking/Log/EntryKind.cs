using Stockwright.Cooking;
using Stockwright.Logbook;
using Stockwright.Web.Fields;
using Stockwright.Web.Wording;

namespace Stockwright.Web.Features.Cooking.Log;

/// <summary>A kind of entry, told once: its button, its form, how it is read, written to be corrected, told and exported.</summary>
/// <param name="Word">Stable word, of <see cref="FactDocument"/>.</param>
/// <param name="Title">On the button.</param>
/// <param name="Said">What an entry of it says, while it waits to be delivered.</param>
public abstract record EntryKind(string Word, string Title, string Said)
{
    /// <summary>True when the tap alone makes the entry.</summary>
    public bool IsOneTap { get; init; }

    /// <summary>False for what is taken back and entered anew, and for what has a place of its own on the page.</summary>
    public bool IsCorrectable { get; init; } = true;

    /// <summary>False for what has a place of its own on the page, or is asked in one phase only.</summary>
    public bool IsOffered { get; init; } = true;

    /// <summary>On the button that sends its form; null for the usual word.</summary>
    public string? Submit { get; init; }

    /// <summary>Read before it is entered; null where no hand and no eater is at risk.</summary>
    public string? Caution { get; init; }

    /// <summary>What its moment is called, and a moment like it, where the moment stands first in the form; null where it is folded away.</summary>
    public (string Label, string Example)? Moment { get; init; }

    /// <summary>The title where the recipe has a word of its own; null for <see cref="Title"/>.</summary>
    public Func<BatchCourse, string>? TitleIn { get; init; }

    internal abstract IReadOnlyList<EntryField> Fields { get; }

    /// <summary>True when its form carries a picture.</summary>
    internal bool HasPicture => Fields.Any(one => one.Shape == EntryFieldShape.Picture);

    /// <summary>Reads the fact off a form; null when something has to be put right, which then stands in the reader.</summary>
    internal abstract LogFact? Read(EntryReader entry);

    /// <summary>Writes the fact as it would be typed.</summary>
    internal abstract void Put(FormWriter form, LogFact fact, KitchenClock clock);

    /// <summary>The fact in one line.</summary>
    internal abstract string Tell(LogFact fact, FactText words);

    /// <summary>The figure of the fact, with its unit as it is exported; null when it has none.</summary>
    internal abstract (double Value, string Unit)? FigureOf(LogFact fact);

    /// <summary>The measures a fact was read in, where they are kept; null where they are the reader's.</summary>
    internal abstract UnitSystem? UnitsOf(LogFact fact);

    /// <summary>A kind without fields.</summary>
    internal static EntryKind<TFact> Bare<TFact>(string title, string said, string told)
        where TFact : LogFact, new() => new(title, said, [], _ => new TFact(), (_, _) => told);

    /// <summary>A kind that is one number.</summary>
    internal static EntryKind<TFact> Measured<TFact, T>(
        string title, string said, EntryField<TFact, T?> field, Func<T, TFact> make, Func<TFact, FactText, string> tell, Func<TFact, (double Value, string Unit)?> figure)
        where TFact : LogFact
        where T : struct => Of(title, said, field, value => make(value!.Value), tell) with { Figure = figure };

    /// <summary>A kind of one field.</summary>
    internal static EntryKind<TFact> Of<TFact, T>(string title, string said, EntryField<TFact, T> one, Func<T, TFact> make, Func<TFact, FactText, string> tell)
        where TFact : LogFact =>
        new(title, said, [one], entry => one.Read(entry) is var first && entry.IsGood ? make(first) : null, tell);

    /// <summary>A kind of two fields.</summary>
    internal static EntryKind<TFact> Of<TFact, T1, T2>(
        string title, string said, EntryField<TFact, T1> one, EntryField<TFact, T2> two, Func<T1, T2, TFact> make, Func<TFact, FactText, string> tell)
        where TFact : LogFact =>
        new(title, said, [one, two], entry => (one.Read(entry), two.Read(entry)) is var (first, second) && entry.IsGood ? make(first, second) : null, tell);

    /// <summary>A kind of three fields.</summary>
    internal static EntryKind<TFact> Of<TFact, T1, T2, T3>(
        string title, string said, EntryField<TFact, T1> one, EntryField<TFact, T2> two, EntryField<TFact, T3> three, Func<T1, T2, T3, TFact> make, Func<TFact, FactText, string> tell)
        where TFact : LogFact =>
        new(title, said, [one, two, three], entry => (one.Read(entry), two.Read(entry), three.Read(entry)) is var (first, second, third) && entry.IsGood ? make(first, second, third) : null, tell);
}

/// <summary>A kind of entry of one record.</summary>
internal sealed record EntryKind<TFact>(string Title, string Said, IReadOnlyList<EntryField<TFact>> Parts, Func<EntryReader, TFact?> Make, Func<TFact, FactText, string> Text)
    : EntryKind(FactDocument.Word(typeof(TFact)), Title, Said)
    where TFact : LogFact
{
    public Func<TFact, (double Value, string Unit)?>? Figure { get; init; }

    public Func<TFact, UnitSystem>? Units { get; init; }

    internal override IReadOnlyList<EntryField> Fields => Parts;

    internal override LogFact? Read(EntryReader entry) => Make(entry);

    internal override void Put(FormWriter form, LogFact fact, KitchenClock clock)
    {
        foreach (EntryField<TFact> part in Parts)
        {
            part.Put(form, (TFact)fact, clock);
        }
    }

    internal override string Tell(LogFact fact, FactText words) => Text((TFact)fact, words);

    internal override (double Value, string Unit)? FigureOf(LogFact fact) => Figure?.Invoke((TFact)fact);

    internal override UnitSystem? UnitsOf(LogFact fact) => Units?.Invoke((TFact)fact);
}
