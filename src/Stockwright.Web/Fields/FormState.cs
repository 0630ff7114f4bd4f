namespace Stockwright.Web.Fields;

/// <summary>A form on its way back to the cook: what was typed, and what is wrong with it. Cascaded to the field components.</summary>
/// <param name="Typed">Raw strings as typed.</param>
/// <param name="Problems">What is wrong, by field.</param>
/// <param name="Remarks">What is worth knowing beside a field though nothing is wrong with it; may be null.</param>
public sealed record FormState(TypedForm Typed, IReadOnlyList<InputProblem> Problems, IReadOnlyList<InputProblem>? Remarks = null)
{
    private const string UsualPrefix = "f-";

    /// <summary>Id of the form element when the fields stand outside it; null when they stand inside.</summary>
    public string? FormId { get; init; }

    /// <summary>Start of the element ids; its own for each form of a page where several have fields of one name.</summary>
    public string IdPrefix { get; init; } = UsualPrefix;

    /// <summary>A form nobody has filled in.</summary>
    public static FormState Empty { get; } = new(TypedForm.Empty, []);

    /// <summary>Problems of one field.</summary>
    public IEnumerable<InputProblem> At(string field) =>
        Problems.Where(problem => string.Equals(problem.Field, field, StringComparison.Ordinal));

    /// <summary>Remarks of one field.</summary>
    public IEnumerable<InputProblem> RemarksAt(string field) =>
        (Remarks ?? []).Where(remark => string.Equals(remark.Field, field, StringComparison.Ordinal));

    /// <summary>True when any of the fields has a problem; a name ending in <c>*</c> stands for all that begin so.</summary>
    public bool AnyAt(params ReadOnlySpan<string> fields)
    {
        foreach (string field in fields)
        {
            foreach (InputProblem problem in Problems)
            {
                if (field.EndsWith('*')
                    ? problem.Field.StartsWith(field[..^1], StringComparison.Ordinal)
                    : string.Equals(problem.Field, field, StringComparison.Ordinal))
                {
                    return true;
                }
            }
        }

        return false;
    }

    /// <summary>Element id of a field of this form.</summary>
    public string Id(string field) => IdPrefix + Plain(field);

    /// <summary>Element id of a field, for labels and for the links of the summary, where the page has one form.</summary>
    public static string IdOf(string field) => UsualPrefix + Plain(field);

    private static string Plain(string field) => string.Concat(field.Select(letter => char.IsAsciiLetterOrDigit(letter) ? letter : '-'));
}
