using System.Net;
using System.Text.RegularExpressions;

namespace Stockwright.Web.Tests.Screens;

/// <summary>A part of a page: an element with what stands in it.</summary>
public sealed partial class ScreenPart
{
    private static readonly string[] s_void = ["area", "base", "br", "col", "embed", "hr", "img", "input", "link", "meta", "source", "track", "wbr"];

    private static readonly string[] s_inline = ["a", "abbr", "b", "code", "em", "i", "s", "small", "span", "strong", "sub", "sup", "time"];

    private readonly Dictionary<string, string> attributes = new(StringComparer.Ordinal);
    private readonly List<ScreenPart> parts = [];
    private string words = "";

    private ScreenPart(string name) => Name = name;

    /// <summary>Name of the element; empty for a run of text.</summary>
    public string Name { get; }

    /// <summary>All parts within, at any depth, in the order of the page.</summary>
    public IEnumerable<ScreenPart> Within => parts.Where(part => part.Name.Length > 0).SelectMany(part => part.Within.Prepend(part));

    /// <summary>What a reader sees, blanks run together; hard spaces count as blanks.</summary>
    public string Text => Blanks().Replace(Letters(), " ").Trim();

    /// <summary>Value of an attribute; null where there is none.</summary>
    public string? this[string attribute] => attributes.GetValueOrDefault(attribute);

    /// <summary>Reads a whole page. An element left open ends with the one around it.</summary>
    public static ScreenPart Read(string html)
    {
        ScreenPart page = new("page");
        Stack<ScreenPart> open = new([page]);
        int read = 0;
        foreach (Match tag in Tags().Matches(html))
        {
            open.Peek().Add(html[read..tag.Index]);
            read = tag.Index + tag.Length;
            string name = tag.Groups["name"].Value;
            if (name.Length == 0)
            {
                continue;
            }

            if (tag.Groups["end"].Length > 0)
            {
                if (open.Any(part => string.Equals(part.Name, name, StringComparison.Ordinal)))
                {
                    while (!string.Equals(open.Pop().Name, name, StringComparison.Ordinal))
                    {
                    }
                }

                continue;
            }

            ScreenPart made = new(name);
            foreach (Match attribute in Attributes().Matches(tag.Groups["attributes"].Value))
            {
                made.attributes[attribute.Groups["name"].Value] = WebUtility.HtmlDecode(attribute.Groups["value"].Value);
            }

            open.Peek().parts.Add(made);
            if (!s_void.Contains(name, StringComparer.Ordinal) && tag.Groups["closed"].Length == 0)
            {
                open.Push(made);
            }
        }

        open.Peek().Add(html[read..]);
        return page;
    }

    /// <summary>True for an element of all these classes, blanks between.</summary>
    public bool IsOf(string classes) =>
        classes.Split(' ').All(one => (this["class"] ?? "").Split(' ').Contains(one, StringComparer.Ordinal));

    private void Add(string text)
    {
        if (text.Length > 0)
        {
            parts.Add(new ScreenPart("") { words = WebUtility.HtmlDecode(text) });
        }
    }

    // A line, a cell or a field stands apart from the next; words that are only set off do not.
    private string Letters()
    {
        if (Name.Length == 0)
        {
            return words;
        }

        string within = Name is "script" or "style" ? "" : string.Concat(parts.Select(part => part.Letters()));
        return s_inline.Contains(Name, StringComparer.Ordinal) ? within : $" {within} ";
    }

    // Comments and the doctype have no name. Razor writes quotes around every value and no ">" in one.
    [GeneratedRegex("<!--.*?-->|<![^>]*>|<(?<end>/?)(?<name>[A-Za-z][A-Za-z0-9-]*)(?<attributes>(\\s+[^\\s=>/]+(=\"[^\"]*\")?)*)\\s*(?<closed>/?)>", RegexOptions.Singleline | RegexOptions.ExplicitCapture, 2000)]
    private static partial Regex Tags();

    [GeneratedRegex("\\s(?<name>[^\\s=>/]+)(=\"(?<value>[^\"]*)\")?", RegexOptions.Singleline | RegexOptions.ExplicitCapture, 2000)]
    private static partial Regex Attributes();

    [GeneratedRegex("\\s+", RegexOptions.None, 2000)]
    private static partial Regex Blanks();
}
