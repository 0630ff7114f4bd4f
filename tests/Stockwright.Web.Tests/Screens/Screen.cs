using Stockwright.Web.Fields;
using Xunit;

namespace Stockwright.Web.Tests.Screens;

/// <summary>A page that is asked: what it says now, what it warns of, what is wrong with a field. How it is marked up stands here only.</summary>
public sealed class Screen
{
    private readonly ScreenPart page;

    private Screen(ScreenPart page) => this.page = page;

    /// <summary>What a reader sees of the whole page.</summary>
    public string Text => page.Text;

    /// <summary>The address of every link, in the order of the page.</summary>
    public IReadOnlyList<string> Links => LinksIn(page);

    /// <summary>What stands out as a warning, in the order of the page.</summary>
    public IReadOnlyList<string> Warnings => [.. Of("notice warning").Select(part => part.Text)];

    /// <summary>What there is to put right, as the summary on top lists it; empty without one.</summary>
    public string PutRight => Of("problems").SingleOrDefault()?.Text ?? "";

    /// <summary>Every message beside a field.</summary>
    public IReadOnlyList<string> Problems => [.. Of("problem").Select(part => part.Text)];

    /// <summary>What to do now at the stove.</summary>
    public string Now => The("now-what").Text;

    public static Screen Of(string html, bool isWhole = true)
    {
        ScreenPart read = ScreenPart.Read(html);
        Assert.True(!isWhole || read.Within.Any(part => part.Name is "main"), "This is no whole page.");
        return new Screen(read);
    }

    /// <summary>What is wrong with a field of a form that is named alone on its page; null when nothing is.</summary>
    public string? ProblemOf(string field) => ById(FormState.IdOf(field) + "-problem")?.Text;

    /// <summary>True when the summary on top leads to the field.</summary>
    public bool LeadsTo(string field) =>
        Of("problems").SelectMany(LinksIn).Any(link => link.EndsWith("#" + FormState.IdOf(field), StringComparison.Ordinal));

    /// <summary>What a field holds: text, the chosen option, or the value of the hidden fields; empty when nothing is chosen.</summary>
    public string ValueOf(string field)
    {
        ScreenPart[] named = [.. page.Within.Where(part => part.Name is "input" or "select" or "textarea" && string.Equals(part["name"], field, StringComparison.Ordinal))];
        Assert.True(named.Length > 0, $"There is no field {field}.");
        ScreenPart[] counted = [.. named.Where(part => part["type"] is not ("radio" or "checkbox") || part["checked"] is not null)];
        return counted.Length == 0 ? "" : counted[0] switch
        {
            { Name: "select" } select => select.Within.FirstOrDefault(option => option["selected"] is not null)?["value"] ?? "",
            { Name: "textarea" } area => area.Text,
            { } input => input["value"] ?? "",
        };
    }

    /// <summary>True when something of this class or these classes is on the page.</summary>
    public bool Has(string classes) => Of(classes).Any();

    /// <summary>The only part of this class.</summary>
    public ScreenPart The(string classes) => Assert.Single(Of(classes));

    /// <summary>All parts of this class, in order.</summary>
    public IEnumerable<ScreenPart> Of(string classes) => page.Within.Where(part => part.IsOf(classes));

    /// <summary>The part with this id; null where there is none.</summary>
    public ScreenPart? ById(string id) => page.Within.SingleOrDefault(part => string.Equals(part["id"], id, StringComparison.Ordinal));

    /// <summary>All elements of this name, in order.</summary>
    public IEnumerable<ScreenPart> Named(string element) => page.Within.Where(part => string.Equals(part.Name, element, StringComparison.Ordinal));

    /// <summary>The address of the link that says this.</summary>
    public string LinkSaying(string words) => Assert.Single(page.Within, part => part.Name is "a" && part.Text.Contains(words, StringComparison.Ordinal))["href"]!;

    /// <summary>True when the first comes before the second on the page.</summary>
    public bool IsBefore(ScreenPart first, ScreenPart second)
    {
        List<ScreenPart> order = [.. page.Within];
        return order.IndexOf(first) < order.IndexOf(second) && order.Contains(first);
    }

    /// <summary>The address of every link in a part.</summary>
    public static IReadOnlyList<string> LinksIn(ScreenPart part) => [.. part.Within.Where(one => one.Name is "a" && one["href"] is not null).Select(one => one["href"]!)];
}
