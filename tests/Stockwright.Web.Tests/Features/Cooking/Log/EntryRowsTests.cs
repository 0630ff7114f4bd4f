using Stockwright.Cooking;
using Stockwright.Logbook;
using Stockwright.Web.Features.Cooking.Log;
using Xunit;

namespace Stockwright.Web.Tests.Features.Cooking.Log;

/// <summary>Every kind of entry has its row, and the rows say of each other nothing that is not so.</summary>
public class EntryRowsTests
{
    [Fact]
    public void Every_kind_of_fact_has_one_row() =>
        Assert.Equal(FactDocument.Words.Order(StringComparer.Ordinal), EntryRows.All.Select(row => row.Word).Order(StringComparer.Ordinal), StringComparer.Ordinal);

    [Fact]
    public void What_fits_a_phase_is_a_kind_and_stands_there_once()
    {
        foreach (BatchPhase phase in Enum.GetValues<BatchPhase>())
        {
            string[] words = EntryRows.Likely(phase);
            Assert.Equal(words.Distinct(StringComparer.Ordinal), words, StringComparer.Ordinal);
            Assert.All(words, word => Assert.NotNull(EntryKinds.Find(word)));
        }
    }

    /// <summary>A button without a place would never be seen: each kind is offered among all, fits a phase, or is one of the three with a place of their own.</summary>
    [Fact]
    public void Every_kind_can_be_entered()
    {
        string[] likely = [.. Enum.GetValues<BatchPhase>().SelectMany(EntryRows.Likely)];
        string[] hidden = [.. EntryRows.All.Where(row => !row.IsOffered && !likely.Contains(row.Word, StringComparer.Ordinal)).Select(row => row.Word)];
        Assert.Equal(["closed", "never-cooked", "withdrawn"], hidden, StringComparer.Ordinal);
    }

    [Fact]
    public void Fields_of_a_form_have_different_names_and_none_of_those_that_every_entry_has()
    {
        string[] common = [EntryFields.Entry, EntryFields.Kind, EntryFields.At, EntryFields.AtDay, EntryFields.Who, EntryFields.Corrects, EntryFields.DeviceTime, EntryFields.Sent, EntryFields.DeviceZone];
        foreach (EntryKind row in EntryRows.All)
        {
            string[] names = [.. row.Fields.Select(field => field.Name)];
            Assert.Equal(names.Distinct(StringComparer.Ordinal), names, StringComparer.Ordinal);
            Assert.Empty(names.Intersect(common, StringComparer.Ordinal));
        }
    }
}
