using Microsoft.Extensions.Primitives;

namespace Stockwright.Web.Fields;

/// <summary>
/// Everything a cook typed, as raw strings under their field names, in the order it came. Nothing is dropped,
/// unknown names included, so that a page with a mistake can be shown again as it was sent.
/// </summary>
public sealed class TypedForm
{
    private readonly List<KeyValuePair<string, string>> entries;
    private readonly Dictionary<string, string> first;

    /// <summary>Takes entries in order; of a name given twice the first value counts.</summary>
    public TypedForm(IEnumerable<KeyValuePair<string, string>> entries)
    {
        this.entries = [.. entries];
        first = new Dictionary<string, string>(this.entries.Count, StringComparer.Ordinal);
        foreach ((string name, string value) in this.entries)
        {
            first.TryAdd(name, value);
        }
    }

    /// <summary>A form nobody has filled in.</summary>
    public static TypedForm Empty { get; } = new([]);

    /// <summary>Takes a query string or a posted form.</summary>
    public static TypedForm From(IEnumerable<KeyValuePair<string, StringValues>> fields) =>
        new(fields.SelectMany(field => field.Value.Select(value => KeyValuePair.Create(field.Key, value ?? ""))));

    /// <summary>All entries in order, repeated names included.</summary>
    public IReadOnlyList<KeyValuePair<string, string>> Entries => entries;

    /// <summary>Names in use, each once, in order.</summary>
    public IEnumerable<string> Names => entries.Select(entry => entry.Key).Distinct(StringComparer.Ordinal);

    /// <summary>The value under a name exactly as typed, or the empty string.</summary>
    public string this[string name] => first.GetValueOrDefault(name, "");

    /// <summary>True when something other than blanks stands under a name.</summary>
    public bool Has(string name) => !string.IsNullOrWhiteSpace(this[name]);

    /// <summary>This form with one field set, in its place if it was there; null takes the field out.</summary>
    public TypedForm With(string name, string? value)
    {
        List<KeyValuePair<string, string>> changed = new(entries.Count + 1);
        bool placed = value is null;
        foreach (KeyValuePair<string, string> entry in entries)
        {
            if (!string.Equals(entry.Key, name, StringComparison.Ordinal))
            {
                changed.Add(entry);
            }
            else if (!placed)
            {
                changed.Add(KeyValuePair.Create(name, value!));
                placed = true;
            }
        }

        if (!placed)
        {
            changed.Add(KeyValuePair.Create(name, value!));
        }

        return new TypedForm(changed);
    }

    /// <summary>As a query string without the question mark; blank fields are left out.</summary>
    public string ToQuery() => string.Join('&', entries
        .Where(entry => entry.Value.Length > 0)
        .Select(entry => $"{Uri.EscapeDataString(entry.Key)}={Uri.EscapeDataString(entry.Value)}"));
}
