using System.Net;
using System.Text.Json;
using Xunit;
using static Stockwright.Web.Tests.Features.Cooking.BatchApp;
using static Stockwright.Web.Tests.KeepingApp;

namespace Stockwright.Web.Tests.Features.Cooking;

/// <summary>A batch started by mistake, without scripts.</summary>
public sealed class PutAsideTests : IDisposable
{
    private readonly BatchApp app = new();

    public void Dispose() => app.Dispose();

    [Fact]
    public async Task It_leaves_what_is_on_says_so_and_can_be_taken_back()
    {
        using HttpClient browser = app.Browser();
        string address = await StartAsync(browser, "Slip of the thumb");
        Page stove = await GetAsync(browser, address);
        Assert.Contains($"{address}?put-aside=yes#change", stove.Html, StringComparison.Ordinal);
        Assert.DoesNotContain("value=\"never-cooked\"", stove.Html, StringComparison.Ordinal);
        await TakenAsync(browser, $"{address}?put-aside=yes", "change-", ("why", "wrong pot"));

        Assert.DoesNotContain("Slip of the thumb", (await GetAsync(browser, "/")).Text, StringComparison.Ordinal);
        Assert.Matches("Closed Slip of the thumb .{0,80}never cooked; planned for", (await GetAsync(browser, "/batches")).Text);
        stove = await GetAsync(browser, address);
        Assert.Matches("Never cooked .*Put aside: never cooked: wrong pot", stove.Text);
        Assert.DoesNotContain("What happened?", stove.Text, StringComparison.Ordinal);
        Assert.Contains("put aside: never cooked", (await GetAsync(browser, $"{address}/record")).Text, StringComparison.Ordinal);
        JsonElement log = await LogAsync(browser, address);
        Assert.True(log.GetProperty("isNeverCooked").GetBoolean());
        Assert.Equal("never-cooked", log.GetProperty("entries")[0].GetProperty("kind").GetString());
        Assert.Equal("wrong pot", log.GetProperty("entries")[0].GetProperty("fact").GetProperty("why").GetString());
        Assert.Contains("never-cooked", (await GetAsync(browser, $"{address}/log.csv")).Html, StringComparison.Ordinal);

        string entry = log.GetProperty("entries")[0].GetProperty("entry").GetString()!;
        Assert.Contains("Open the record again", stove.Text, StringComparison.Ordinal);
        await TakenAsync(browser, $"{address}?take-back={entry}", "change-");
        Assert.Contains("Slip of the thumb", (await GetAsync(browser, "/")).Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_cools_cannot_be_put_aside()
    {
        using HttpClient browser = app.Browser();
        string address = await StartAsync(browser);
        Dictionary<string, string> open = (await GetAsync(browser, $"{address}?put-aside=yes")).FormById("change-")!;
        app.Clock.Advance(TimeSpan.FromHours(8));
        await TakenAsync(browser, address, "cooling-began-", ("at", "15:10"), ("method", "ice bath"));
        Assert.DoesNotContain("put-aside", (await GetAsync(browser, address)).Html, StringComparison.Ordinal);

        // A page that was open before the other cook began to cool it.
        Page refused = await PostAsync(browser, address, open, ("why", "forgot it"));
        Assert.Equal(HttpStatusCode.OK, refused.Status);
        Assert.Contains("Entry 1 says that this was cooked", refused.Text, StringComparison.Ordinal);
        Assert.Contains("value=\"forgot it\"", refused.Html, StringComparison.Ordinal);
        Assert.Contains("Friday stock", (await GetAsync(browser, "/")).Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_second_closing_is_told_that_the_record_is_closed()
    {
        using HttpClient browser = app.Browser();
        string address = await StartAsync(browser);
        Dictionary<string, string>[] forms = [.. await Task.WhenAll(Enumerable.Range(0, 6).Select(async _ => (await GetAsync(browser, address)).FormById("closed-")!))];
        Page[] answers = await Task.WhenAll(forms.Select((form, number) => PostAsync(browser, address, form, ("next-time", $"no. {number}"))));
        Assert.Single(answers, answer => answer.Status == HttpStatusCode.SeeOther);
        Assert.Equal(5, answers.Count(answer => answer.Status == HttpStatusCode.OK && answer.Text.Contains("closed", StringComparison.Ordinal)));
        Assert.Equal(1, (await LogAsync(browser, address)).GetProperty("entries").GetArrayLength());
    }
}
