using Stockwright.Cooking;
using Stockwright.Logbook;
using Stockwright.Web.Fields;
using Stockwright.Web.Wording;

namespace Stockwright.Web.Features.Cooking.Log;

/// <summary>Finds the row of a kind of entry.</summary>
internal static class EntryKinds
{
    private static readonly Dictionary<string, EntryKind> ByWord = EntryRows.All.ToDictionary(row => row.Word, StringComparer.Ordinal);

    /// <summary>A kind by its word; null for one this version does not know.</summary>
    public static EntryKind? Find(string word) => ByWord.GetValueOrDefault(word.Trim());

    /// <summary>The kind of a fact.</summary>
    public static EntryKind Of(LogFact fact) => ByWord[FactDocument.Word(fact)];

    /// <summary>Those that fit how far the batch has come, the likeliest first.</summary>
    public static IReadOnlyList<EntryKind> For(BatchCourse course) => [.. EntryRows.Likely(course.Phase).Select(word => Titled(ByWord[word], course))];

    /// <summary>The others.</summary>
    public static IReadOnlyList<EntryKind> Beside(BatchCourse course) =>
        [.. EntryRows.All.Where(row => row.IsOffered && !EntryRows.Likely(course.Phase).Contains(row.Word, StringComparer.Ordinal)).Select(row => Titled(row, course))];

    /// <summary>A stored entry back in its form, to be corrected.</summary>
    public static TypedForm Typed(LogEntry entry, KitchenClock clock)
    {
        // A reading in °F stays one: it was judged in °F.
        EntryKind kind = Of(entry.Fact);
        UnitSystem units = kind.UnitsOf(entry.Fact) ?? clock.Units;
        FormWriter typing = new(units);
        typing.Put(ReaderUnits.QueryKey, ReaderUnits.Word(units)).Put(EntryFields.Kind, kind.Word).Put(EntryFields.At, clock.Typed(entry.HappenedAt)).Put(EntryFields.Who, entry.Who);
        kind.Put(typing, entry.Fact, clock);
        return typing.Form;
    }

    private static EntryKind Titled(EntryKind kind, BatchCourse course) => kind.TitleIn is { } title ? kind with { Title = title(course) } : kind;
}
