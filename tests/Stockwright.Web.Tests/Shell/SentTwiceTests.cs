using System.Net;
using System.Text.RegularExpressions;
using Xunit;
using static Stockwright.Web.Tests.KeepingApp;

namespace Stockwright.Web.Tests.Shell;

/// <summary>A form that adds something, sent twice by a second tap or a reload, adds it once.</summary>
public sealed class SentTwiceTests(KeepingApp app) : IClassFixture<KeepingApp>
{
    [Theory]
    [InlineData("/kitchen/pots/new", "save", "/kitchen", "Twice pot", "name=Twice pot&pot-diameter=30&pot-height=30")]
    [InlineData("/kitchen/hobs/new", "save", "/kitchen", "Twice ring", "name=Twice ring&power=3")]
    [InlineData("/kitchen/ovens/new", "save", "/kitchen", "Twice oven", "name=Twice oven&levels=2&length=60&width=40")]
    [InlineData("/kitchen/trays/new", "save", "/kitchen", "Twice tray", "name=Twice tray&size=half-sheet&count=4")]
    [InlineData("/larder/carrot/copy", "save", "/larder", "Twice carrot", "name=Twice carrot")]
    [InlineData("/recipes/lamb", "copy", "/recipes", null, "")]
    [InlineData("/plans/new?recipe=lamb", "save-plan", "/plans", "Twice plan", "name=Twice plan")]
    public async Task It_is_added_once_and_both_lead_to_it(string address, string form, string list, string? name, string typed)
    {
        using HttpClient browser = app.Browser();
        Page page = await GetAsync(browser, address);
        Dictionary<string, string> fields = page.Form(form);
        (string, string?)[] changes = [.. typed.Split('&', StringSplitOptions.RemoveEmptyEntries).Select(pair => pair.Split('=')).Select(pair => (Field(fields, pair[0]), (string?)pair[1]))];
        string post = address.StartsWith("/plans", StringComparison.Ordinal) ? "/plans" : address;
        Page[] answers = [await SendAsync(browser, post, page, form, changes), await SendAsync(browser, post, page, form, changes)];
        Assert.Equal([HttpStatusCode.SeeOther, HttpStatusCode.SeeOther], answers.Select(answer => answer.Status));
        Assert.Equal(answers[0].Location, answers[1].Location);
        string shown = (await GetAsync(browser, list)).Html;
        Assert.Equal(1, Regex.Count(shown, Regex.Escape(name ?? "href=\"/recipes/lamb-"), RegexOptions.None, TimeSpan.FromSeconds(1)));

        // Who goes back and types another name means another one.
        if (name is not null)
        {
            Page other = await SendAsync(browser, post, page, form, [.. changes.Select(change => string.Equals(change.Item2, name, StringComparison.Ordinal) ? (change.Item1, name + " again") : change)]);
            Assert.Equal(HttpStatusCode.SeeOther, other.Status);
            Assert.Contains(name + " again", (await GetAsync(browser, list)).Html, StringComparison.Ordinal);
        }
    }

    private static string Field(Dictionary<string, string> fields, string name) => fields.Keys.Single(field => string.Equals(field, name, StringComparison.Ordinal));
}
