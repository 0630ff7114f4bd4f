using System.Globalization;
using System.Net;
using System.Text.RegularExpressions;

namespace Stockwright.Web.Tests.Fuzz.Shared;

internal enum FieldKind
{
    /// <summary>Typed; a number if the page says so when it gets none.</summary>
    Text,
    Date,
    Time,

    /// <summary>One of the options: a list, radios, a tick (sent or not), or buttons with a value.</summary>
    Choice,
    Hidden,
    File,
}

/// <summary>A field of a form as the page has it.</summary>
internal sealed record FuzzField(string Name, FieldKind Kind, string Value, IReadOnlyList<string> Options, string ElementId, int? MaxLength)
{
    /// <summary>True for what the page or the OpenAPI document calls a number.</summary>
    public bool IsNumber { get; init; }
}

/// <summary>A form as the page has it, fields that stand outside it included.</summary>
internal sealed partial record PageForm(string Page, string Action, bool IsPost, bool IsMultipart, IReadOnlyList<FuzzField> Fields)
{
    public IEnumerable<FuzzField> Open => Fields.Where(input => input.Kind != FieldKind.Hidden);

    /// <summary>What tells it from other forms: address without ids, words in hidden fields, names of the open fields.</summary>
    public string Key => string.Join(
        ' ',
        [
            IsPost ? "POST" : "GET",
            FuzzSite.Shape(Action),
            .. Fields.Where(input => input.Kind == FieldKind.Hidden && Word().IsMatch(input.Value)).Select(input => $"{input.Name}={input.Value}"),
            .. Open.Select(input => input.Name).Distinct(StringComparer.Ordinal),
        ]);

    /// <summary>The forms of a page.</summary>
    public static IReadOnlyList<PageForm> Read(string page, string html)
    {
        List<Draft> forms = [];
        Draft? inside = null;
        string? select = null;
        Dictionary<string, List<FuzzField>> elsewhere = new(StringComparer.Ordinal);
        List<FuzzField> options = [];
        foreach (Match tag in Tags().Matches(html))
        {
            string text = tag.Value;
            switch (tag.Groups["name"].Value)
            {
                case "form":
                    inside = new Draft(Attribute(text, "id"), Attribute(text, "action"), Attribute(text, "method"), Attribute(text, "enctype"), []);
                    forms.Add(inside);
                    break;
                case "/form":
                    inside = null;
                    break;
                case "input" or "textarea" or "button":
                    Add(text, Typed(tag, html));
                    break;
                case "select":
                    select = text;
                    options = [];
                    break;
                case "option" when select is not null:
                    options.Add(new FuzzField("", FieldKind.Choice, Has(text, "selected") ? "1" : "", [Attribute(text, "value")], "", null));
                    break;
                case "/select" when select is not null:
                    string chosen = (options.Find(option => option.Value.Length > 0) ?? options.FirstOrDefault())?.Options[0] ?? "";
                    Add(select, new FuzzField(Attribute(select, "name"), FieldKind.Choice, chosen, [.. options.Select(option => option.Options[0])], Attribute(select, "id"), null));
                    select = null;
                    break;
            }
        }

        return [.. forms.Select(form => new PageForm(
            page,
            form.Action.Length > 0 ? form.Action : page,
            form.Method.Equals("post", StringComparison.OrdinalIgnoreCase),
            form.Enctype.StartsWith("multipart", StringComparison.OrdinalIgnoreCase),
            Merge([.. form.Fields, .. form.Id.Length > 0 && elsewhere.TryGetValue(form.Id, out List<FuzzField>? more) ? more : []])))];

        void Add(string text, FuzzField? field)
        {
            if (field is null || field.Name.Length == 0)
            {
                return;
            }

            if (Attribute(text, "form") is { Length: > 0 } owner && !string.Equals(owner, inside?.Id, StringComparison.Ordinal))
            {
                (elsewhere.TryGetValue(owner, out List<FuzzField>? list) ? list : elsewhere[owner] = []).Add(field);
            }
            else
            {
                inside?.Fields.Add(field);
            }
        }
    }

    /// <summary>What the page says is wrong with an element; empty when nothing.</summary>
    public static string ProblemAt(string html, string elementId)
    {
        int start = html.IndexOf($"id=\"{elementId}-problem\"", StringComparison.Ordinal);
        if (start < 0)
        {
            return "";
        }

        int open = html.IndexOf('>', start);
        Match end = ProblemEnd().Match(html, open);
        return WebUtility.HtmlDecode(AnyTag().Replace(html[(open + 1)..(end.Success ? end.Index : html.Length)], " ")).Trim();
    }

    public static string Attribute(string tag, string name)
    {
        int start = tag.IndexOf($" {name}=\"", StringComparison.Ordinal);
        if (start < 0)
        {
            return "";
        }

        start += name.Length + 3;
        int end = tag.IndexOf('"', start);
        return WebUtility.HtmlDecode(tag[start..end]);
    }

    private static FuzzField? Typed(Match tag, string html)
    {
        string text = tag.Value;
        string name = Attribute(text, "name");
        string value = Attribute(text, "value");
        string id = Attribute(text, "id");
        int? longest = int.TryParse(Attribute(text, "maxlength"), NumberStyles.None, CultureInfo.InvariantCulture, out int most) ? most : null;
        if (text.StartsWith("<textarea", StringComparison.Ordinal))
        {
            int end = html.IndexOf("</textarea", tag.Index, StringComparison.Ordinal);
            return new FuzzField(name, FieldKind.Text, WebUtility.HtmlDecode(html[(tag.Index + tag.Length)..end]).TrimStart('\n'), [], id, longest);
        }

        if (text.StartsWith("<button", StringComparison.Ordinal))
        {
            return new FuzzField(name, FieldKind.Choice, "", [value], id, null);
        }

        return Attribute(text, "type") switch
        {
            "hidden" => new FuzzField(name, FieldKind.Hidden, value, [], id, null),
            "checkbox" => new FuzzField(name, FieldKind.Choice, Has(text, "checked") ? value : "", ["", value], id, null),
            "radio" => new FuzzField(name, FieldKind.Choice, Has(text, "checked") ? value : "", [value], id, null),
            "file" => new FuzzField(name, FieldKind.File, "", [], id, null),
            "date" => new FuzzField(name, FieldKind.Date, value, [], id, null),
            "time" => new FuzzField(name, FieldKind.Time, value, [], id, null),
            "submit" or "button" => null,
            _ => new FuzzField(name, FieldKind.Text, value, [], id, longest) { IsNumber = Attribute(text, "inputmode") is "decimal" or "numeric" },
        };
    }

    /// <summary>Radios and buttons of one name are one choice; a browser sends the first button when Enter is pressed.</summary>
    private static List<FuzzField> Merge(List<FuzzField> fields) =>
    [
        .. fields.GroupBy(field => field.Name, StringComparer.Ordinal).Select(group =>
        {
            FuzzField first = group.First();
            return first.Kind != FieldKind.Choice || group.Count() == 1
                ? first.Kind == FieldKind.Choice && first.Value.Length == 0 && first.Options.Count == 1 ? first with { Value = first.Options[0] } : first
                : first with
                {
                    Value = group.FirstOrDefault(field => field.Value.Length > 0)?.Value ?? first.Options[0],
                    Options = [.. group.SelectMany(field => field.Options).Distinct(StringComparer.Ordinal)],
                };
        }),
    ];

    private static bool Has(string tag, string attribute) =>
        tag.Contains($" {attribute} ", StringComparison.Ordinal) || tag.Contains($" {attribute}>", StringComparison.Ordinal)
        || tag.Contains($" {attribute}/", StringComparison.Ordinal) || tag.Contains($" {attribute}=", StringComparison.Ordinal);

    [GeneratedRegex("<(?<name>/?(form|input|textarea|button|select|option))(\\s(\"[^\"]*\"|[^>\"])*)?>", RegexOptions.ExplicitCapture, 2000)]
    private static partial Regex Tags();

    [GeneratedRegex("</span>\\s*</span>", RegexOptions.None, 2000)]
    private static partial Regex ProblemEnd();

    [GeneratedRegex("<[^>]*>", RegexOptions.None, 2000)]
    private static partial Regex AnyTag();

    [GeneratedRegex("^[a-z]+(-[a-z]+)*$", RegexOptions.ExplicitCapture, 2000)]
    private static partial Regex Word();

    private sealed record Draft(string Id, string Action, string Method, string Enctype, List<FuzzField> Fields);
}
