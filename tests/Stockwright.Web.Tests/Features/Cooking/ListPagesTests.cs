using System.Net;
using System.Text.Json;
using System.Text.RegularExpressions;
using Stockwright.Logbook;
using Xunit;
using static Stockwright.Web.Tests.KeepingApp;

namespace Stockwright.Web.Tests.Features.Cooking;

/// <summary>Long lists, page by page; and no cooling batch out of sight, however many others are on.</summary>
public sealed class ListPagesTests
{
    private const int Many = 52;

    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Every_batch_can_be_reached_and_one_that_cools_is_on_the_first_page_of_today()
    {
        await using NewsApp app = new();
        Guid cooling = await app.StartBatchAsync("Cooling one");
        app.Now += TimeSpan.FromHours(9);
        await app.EnterAsync(cooling, new LogFact.Simmers());
        await app.EnterAsync(cooling, new LogFact.Strained(UnitsNet.Volume.FromLiters(3)));
        await app.EnterAsync(cooling, new LogFact.CoolingBegan());
        for (int number = 1; number < Many; number++)
        {
            await app.StartBatchAsync($"Batch {number}");
        }

        using HttpClient browser = app.Browser();
        Page today = await GetAsync(browser, "/");
        Assert.Contains(">Cooling<", today.Html, StringComparison.Ordinal);
        Assert.Matches($">On</h2>\\s*<ul class=\"things\"><li><a href=\"/batches/{cooling}\">", today.Html);
        Assert.Contains("Page 1 of 3, 52 in all", today.Text, StringComparison.Ordinal);
        Assert.Equal(Many, await DistinctAsync(browser, "/"));
        Assert.Equal(Many, await DistinctAsync(browser, "/batches"));
        Assert.Contains("There is no page “99”", (await GetAsync(browser, "/batches?on=99")).Text, StringComparison.Ordinal);

        HashSet<string> read = [];
        int answers = 0;
        for (string? next = "/api/batches?limit=25"; next is not null; answers++)
        {
            using HttpResponseMessage answer = await browser.GetAsync(new Uri(next, UriKind.Relative), Stop);
            read.UnionWith(JsonElement.Parse(await answer.Content.ReadAsStringAsync(Stop)).EnumerateArray().Select(row => row.GetProperty("batch").GetString()!));
            next = answer.Headers.TryGetValues("Link", out IEnumerable<string>? links)
                ? Regex.Match(links.Single(), "^<(?<next>[^>]+)>; rel=\"next\"$", RegexOptions.ExplicitCapture, TimeSpan.FromSeconds(1)).Groups["next"].Value
                : null;
        }

        Assert.Equal((3, Many), (answers, read.Count));
        using HttpResponseMessage bad = await browser.GetAsync(new Uri("/api/batches?limit=0", UriKind.Relative), Stop);
        Assert.Equal((HttpStatusCode.BadRequest, "application/problem+json"), (bad.StatusCode, bad.Content.Headers.ContentType?.MediaType));
    }

    [Fact]
    public async Task A_batch_nobody_touches_for_a_week_stands_last_and_does_not_press()
    {
        await using NewsApp app = new();
        await app.StartBatchAsync("Forgotten one");
        app.Now += TimeSpan.FromDays(8);
        await app.StartBatchAsync("Fresh one");
        app.Now += TimeSpan.FromHours(1.5);
        using HttpClient browser = app.Browser();
        string today = (await GetAsync(browser, "/")).Text;
        string due = today[today.IndexOf("Do now", StringComparison.Ordinal)..today.IndexOf(" On ", StringComparison.Ordinal)];
        Assert.Contains("Fresh one", due, StringComparison.Ordinal);
        Assert.DoesNotContain("Forgotten one", due, StringComparison.Ordinal);
        Assert.Matches("On Fresh one .*Forgotten one .*One of these has had no entry for a week", today);
    }

    private static async Task<int> DistinctAsync(HttpClient browser, string address)
    {
        HashSet<string> seen = [];
        for (int page = 1; page <= 3; page++)
        {
            string html = (await GetAsync(browser, $"{address}?on={page}")).Html;
            seen.UnionWith(Regex.Matches(html, "<li><a href=\"/batches/(?<id>[0-9a-f-]{36})\"><b>", RegexOptions.ExplicitCapture, TimeSpan.FromSeconds(1)).Select(match => match.Groups["id"].Value));
        }

        return seen.Count;
    }
}
