using System.Globalization;
using System.Net;
using System.Text;
using System.Text.RegularExpressions;
using Xunit;
using static Stockwright.Web.Tests.KeepingApp;

namespace Stockwright.Web.Tests.Features.Cooking.Log;

/// <summary>A probe's log on the stove page: by pages of fifty, the latest first; the record sheet and the exports have it all.</summary>
public sealed class LongLogTests : IAsyncLifetime
{
    private const int Readings = 120;

    private readonly BatchApp app = new();
    private readonly HttpClient browser;
    private string address = "";

    public LongLogTests() => browser = app.Browser();

    public async ValueTask InitializeAsync()
    {
        address = await BatchApp.StartAsync(browser);
        for (int i = 0; i < Readings; i += 60)
        {
            app.Clock.Now += TimeSpan.FromMinutes(1);
            string list = $"[{string.Join(',', Enumerable.Range(i, 60).Select(number => $$"""{"entry":"{{Guid.CreateVersion7()}}","kind":"note","text":"remark {{number}} of the probe","who":"P1"}"""))}]";
            using StringContent body = new(list, Encoding.UTF8, "application/json");
            using HttpResponseMessage answer = await browser.PostAsync(new Uri($"/api{address}/entries", UriKind.Relative), body, TestContext.Current.CancellationToken);
            Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        }
    }

    public async ValueTask DisposeAsync()
    {
        browser.Dispose();
        await app.DisposeAsync();
    }

    [Fact]
    public async Task Every_entry_stands_on_one_page_of_fifty_and_the_links_lead_through_them()
    {
        List<int> seen = [];
        string? next = address;
        List<int> sizes = [];
        while (next is not null)
        {
            string html = (await GetAsync(browser, next)).Html;
            int[] numbers = [.. Regex.Matches(html, "<li id=\"entry-(?<number>\\d+)\"", RegexOptions.None, TimeSpan.FromSeconds(1)).Select(match => int.Parse(match.Groups["number"].Value, CultureInfo.InvariantCulture))];
            sizes.Add(numbers.Length);
            seen.AddRange(numbers);
            Match older = Regex.Match(html, "href=\"(?<link>[^\"#]+)#log-title\" rel=\"next\"", RegexOptions.None, TimeSpan.FromSeconds(1));
            next = older.Success ? WebUtility.HtmlDecode(older.Groups["link"].Value) : null;
        }

        Assert.Equal([50, 50, 20], sizes);
        Assert.Equal(Enumerable.Range(1, Readings).Reverse(), seen);
    }

    [Theory]
    [InlineData("?log=99", 20)]
    [InlineData("?log=0", 50)]
    [InlineData("?log=-3", 50)]
    [InlineData("?log=soup", 50)]
    [InlineData("?log=99999999999", 50)]
    public async Task A_page_that_is_not_there_is_the_nearest(string query, int entries)
    {
        string html = (await GetAsync(browser, address + query)).Html;

        Assert.Equal(entries, Regex.Count(html, "<li id=\"entry-\\d+\"", RegexOptions.None, TimeSpan.FromSeconds(1)));
    }

    [Fact]
    public async Task The_record_sheet_and_the_exports_have_all_of_it()
    {
        string record = (await GetAsync(browser, $"{address}/record")).Html;
        string csv = (await GetAsync(browser, $"{address}/log.csv")).Html;

        Assert.Equal(Readings, Regex.Count(record, "remark \\d+ of the probe", RegexOptions.None, TimeSpan.FromSeconds(1)));
        Assert.Equal(Readings, Regex.Count(csv, "remark \\d+ of the probe", RegexOptions.None, TimeSpan.FromSeconds(1)));
        Assert.Equal(Readings, (await BatchApp.LogAsync(browser, address)).GetProperty("entries").GetArrayLength());
    }
}
