using System.Net;
using System.Text.Json;
using Stockwright.Web.Tests.Features.Cooking;
using Xunit;
using static Stockwright.Web.Tests.KeepingApp;

namespace Stockwright.Web.Tests.Fields;

/// <summary>
/// Letters that show nothing are not stored: two pots must not look alike, and a name must not turn the line round. Code points from
/// the Unicode standard, sections 23.2 and 23.3.
/// </summary>
public sealed class UnseenLettersTests
{
    [Theory]
    [InlineData("/kitchen/pots/new", "pot-diameter=24;pot-height=25")]
    [InlineData("/kitchen/ovens/new", "levels=2;length=53;width=32.5")]
    [InlineData("/larder/carrot/copy", "")]
    public async Task Names_are_kept_without_them_and_a_name_of_nothing_else_is_a_problem(string address, string others)
    {
        await using KeepingApp app = new();
        using HttpClient browser = app.Browser();
        (string, string?)[] fields = [.. others.Split(';', StringSplitOptions.RemoveEmptyEntries).Select(pair => (pair.Split('=')[0], (string?)pair.Split('=')[1]))];
        Page refused = await SendAsync(browser, address, "save", [.. fields, ("name", "\u202e\u200b\ufeff\u2060\u200d")]);
        Assert.Equal(HttpStatusCode.OK, refused.Status);
        Assert.Matches("id=\"f-name-problem\"|aria-invalid=\"true\"", refused.Html);
        Assert.Contains("a name", refused.Text, StringComparison.Ordinal);
        Page sent = await SendAsync(browser, address, "save", [.. fields, ("name", "\u202eBig\u200b \u2066one\u2069\ufeff")]);
        Assert.True(sent.Status == HttpStatusCode.SeeOther, sent.Text);
        string list = (await GetAsync(browser, address.StartsWith("/larder", StringComparison.Ordinal) ? "/larder" : "/kitchen")).Text;
        Assert.Contains("Big one", list, StringComparison.Ordinal);
        Assert.DoesNotContain('\u202e', list);
        Assert.DoesNotContain('\u200b', list);
    }

    [Fact]
    public async Task Batches_notes_and_cooks_are_kept_without_them_whoever_sends_them()
    {
        await using BatchApp app = new();
        using HttpClient browser = app.Browser();
        string address = await BatchApp.StartAsync(browser, "Fri\u200bday \u202estock");
        Assert.Contains("<h1>Friday stock</h1>", (await GetAsync(browser, address)).Html, StringComparison.Ordinal);
        await BatchApp.TakenAsync(browser, address, "note-", ("text", "Smells\u2067 good\u2069\r\n\ufeffsecond line"), ("who", "C\u200eD"));
        using StringContent json = new($$"""{"entry":"{{Guid.CreateVersion7()}}","kind":"note","text":"by\u202a program","who":"pro\u2060be"}""", new System.Net.Http.Headers.MediaTypeHeaderValue("application/json"));
        using HttpResponseMessage sent = await browser.PostAsync(new Uri($"/api{address}/entries", UriKind.Relative), json, TestContext.Current.CancellationToken);
        Assert.Equal(HttpStatusCode.Created, sent.StatusCode);
        JsonElement[] entries = [.. (await BatchApp.LogAsync(browser, address)).GetProperty("entries").EnumerateArray()];
        Assert.Equal(2, entries.Length);
        Assert.Equal("CD", entries[0].GetProperty("who").GetString());
        Assert.Equal("probe", entries[1].GetProperty("who").GetString());
        string log = string.Join('\n', entries.Select(entry => entry.GetRawText()));
        Assert.Contains("Smells good\\nsecond line", log, StringComparison.Ordinal);
        Assert.Contains("by program", log, StringComparison.Ordinal);
        Page page = await GetAsync(browser, address);
        Assert.Equal("CD", page.FormById("note-")!["who"]);
    }
}
