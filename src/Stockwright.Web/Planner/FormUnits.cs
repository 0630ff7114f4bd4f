using Stockwright.Web.Forms;
using Stockwright.Web.Shell;

namespace Stockwright.Web.Planner;

/// <summary>Turns the numbers of a form into the other measures.</summary>
internal static class FormUnits
{
    /// <summary>The same form in other measures; what cannot be read stays as typed.</summary>
    /// <param name="form">As typed.</param>
    /// <param name="measureOf">What a field is typed in; null for fields that are the same in both.</param>
    /// <param name="standing">Measures where the form does not say.</param>
    /// <param name="to">Measures wanted.</param>
    public static TypedForm Turn(TypedForm form, Func<string, Measure?> measureOf, UnitSystem standing, UnitSystem to)
    {
        UnitSystem from = ReaderUnits.Read(form[PlanFields.Units].Trim()) ?? standing;
        return new TypedForm(
        [
            KeyValuePair.Create(PlanFields.Units, ReaderUnits.Word(to)),
            .. form.Entries
                .Where(entry => !string.Equals(entry.Key, PlanFields.Units, StringComparison.Ordinal))
                .Select(entry => measureOf(entry.Key) is { } measure ? KeyValuePair.Create(entry.Key, PlanUnits.Turn(entry.Value, measure, from, to)) : entry),
        ]);
    }
}
