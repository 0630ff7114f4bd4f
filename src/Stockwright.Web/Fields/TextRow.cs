namespace Stockwright.Web.Fields;

/// <summary>A line of text: a name, a cut.</summary>
/// <param name="Name">As in links, forms and the interface.</param>
/// <param name="Label">As on the page.</param>
/// <param name="Longest">Most letters.</param>
public sealed record TextRow(string Name, string Label, int Longest = FieldText.LongestName) : FieldRow(Name, Label)
{
    public override FieldKind Kind => FieldKind.Text;

    /// <summary>Id of the list of suggestions; null for none.</summary>
    public string? List { get; init; }

    /// <summary>The field with its place in a record.</summary>
    public FieldBinding<TRecord> Of<TRecord>(Func<TRecord, string?> get, Func<TRecord, string, TRecord> with) => new TextBinding<TRecord>(this, get, with);

    internal string Read(FieldReader reader) => Missing is null ? reader.Text(Name, Longest) : reader.Name(Name, Missing, Longest);
}
