namespace Stockwright.Web.Fields;

/// <summary>Turns the numbers of a form into the other measures.</summary>
internal static class FormUnits
{
    /// <summary>Tolerance of numbers turned from one system to the other: fine enough that the plan stays the same, coarse enough to read.</summary>
    private const double NeatTolerance = 1e-4;

    /// <summary>The same form in other measures; what cannot be read stays as typed.</summary>
    /// <param name="form">As typed.</param>
    /// <param name="measureOf">What a field is typed in; null for fields that are the same in both.</param>
    /// <param name="standing">Measures where the form does not say.</param>
    /// <param name="to">Measures wanted.</param>
    public static TypedForm Turn(TypedForm form, Func<string, Measure?> measureOf, UnitSystem standing, UnitSystem to)
    {
        UnitSystem from = ReaderUnits.Read(form[ReaderUnits.QueryKey].Trim()) ?? standing;
        return new TypedForm(
        [
            KeyValuePair.Create(ReaderUnits.QueryKey, ReaderUnits.Word(to)),
            .. form.Entries
                .Where(entry => !string.Equals(entry.Key, ReaderUnits.QueryKey, StringComparison.Ordinal))
                .Select(entry => measureOf(entry.Key) is { } measure ? KeyValuePair.Create(entry.Key, TurnNumber(entry.Value, measure, from, to)) : entry),
        ]);
    }

    /// <summary>A typed number in the other measures; what cannot be read stays as typed.</summary>
    public static string TurnNumber(string value, Measure measure, UnitSystem from, UnitSystem to) =>
        from != to && KitchenNumber.TryParse(value, out double typed, out _)
            ? KitchenNumber.Write(measure.In(to).FromSi(measure.In(from).ToSi(typed)), NeatTolerance)
            : value;
}
