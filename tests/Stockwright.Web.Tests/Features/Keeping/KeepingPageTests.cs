using System.Net;
using Xunit;

namespace Stockwright.Web.Tests.Features.Keeping;

/// <summary>How long it keeps; the page's clock stands at 25 November 2026.</summary>
public sealed class KeepingPageTests(StockwrightFactory factory)
{
    private readonly HttpClient client = factory.Reader();

    /// <summary>USDA cold storage chart: meat broth 1 to 2 days, the day of making being the first; Food Code 3-501.17: seven days.</summary>
    [Fact]
    public async Task The_shortest_chart_comes_first_and_each_is_shown()
    {
        string page = await PageAsync("/keeping");
        Assert.Contains("Use it by Thu 26 Nov", page, StringComparison.Ordinal);
        Assert.Contains("Tue 1 Dec", page, StringComparison.Ordinal);
        Assert.Contains("common practice", page, StringComparison.Ordinal);
        Assert.Contains("check with your local authority", page, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_clock_stands_still_in_the_freezer()
    {
        Assert.Contains("No date: the clock stands still", await PageAsync("/keeping?made=2026-11-20&frozen=2026-11-21"), StringComparison.Ordinal);
        Assert.Contains("time was up before it was frozen", await PageAsync("/keeping?made=2026-11-01&frozen=2026-11-21"), StringComparison.Ordinal);
    }

    /// <summary>USDA Complete Guide to Home Canning, guide 5: pints 20 min, quarts 25; 11 psi dial to 2000 ft, 12 above; weighted 10, above 1000 ft 15.</summary>
    [Fact]
    public async Task Canning_follows_the_altitude_and_fish_has_no_entry()
    {
        string low = await PageAsync("/keeping?altitude=0");
        Assert.Contains("20 min", low, StringComparison.Ordinal);
        Assert.Contains("11 psi", low, StringComparison.Ordinal);
        Assert.Contains("10 psi", low, StringComparison.Ordinal);
        Assert.Contains("Never a boiling-water canner", low, StringComparison.Ordinal);
        Assert.Contains("no entry for fish", low, StringComparison.Ordinal);
        string high = await PageAsync("/keeping?altitude=1000");
        Assert.Contains("12 psi", high, StringComparison.Ordinal);
        Assert.Contains("15 psi", high, StringComparison.Ordinal);
        Assert.Contains("table ends at 8000 ft", await PageAsync("/keeping?altitude=3000"), StringComparison.Ordinal);
    }

    /// <summary>NCHFP, row Juices: 1/2 in and 1 1/2 in for a pint, 1 in and 1 1/2 in for a quart; USDA guide 1: the canner cools by itself.</summary>
    [Fact]
    public async Task Half_pints_pints_and_quarts_have_their_room_and_their_minutes()
    {
        string page = await PageAsync("/keeping?altitude=0");
        Assert.Matches("US half-pint \\(237 mL\\)</th><td>13 mm</td><td>38 mm</td>", page);
        Assert.Matches("US pint \\(473 mL\\)</th><td>13 mm</td><td>38 mm</td>", page);
        Assert.Matches("US quart \\(946 mL\\)</th><td>25 mm</td><td>38 mm</td>", page);
        Assert.Matches("US half-pint \\(237 mL\\)</th>\\s*<td><b>20 min", page);
        Assert.Contains("let the canner lose its pressure by itself", page, StringComparison.Ordinal);
    }

    /// <summary>FSA and NHS: two days; FSAI: two to three, no figure for the freezer; the Food Code is a model; SSI 2006/3: 82 °C.</summary>
    [Fact]
    public async Task Charts_of_the_islands_stand_beside_the_others_and_each_rule_says_what_it_is()
    {
        string page = await PageAsync("/keeping");
        Assert.Contains("cooled within 90 minutes", page, StringComparison.Ordinal);
        Assert.Contains("Food Safety Authority of Ireland", page, StringComparison.Ordinal);
        Assert.Contains("<td>no figure</td>", page, StringComparison.Ordinal);
        Assert.Contains("3-501.17, 3-501.18; model code; law where adopted", page, StringComparison.Ordinal);
        Assert.Contains("schedule 4; law; published", page, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("freezer=-61")]
    [InlineData("units=us&from=212")]
    [InlineData("freezer=-80&units=metric")]
    [InlineData("freezer=-112&units=us")]
    public async Task Every_freezer_the_field_takes_is_answered(string query) =>
        Assert.Contains("Thawed in the fridge", await PageAsync($"/keeping?{query}"), StringComparison.Ordinal);

    [Fact]
    public async Task A_thaw_nobody_waits_for_is_told_as_such_and_the_rest_is_answered()
    {
        string page = await PageAsync("/keeping?container=bag&thick=24&fridge=0.5");
        Assert.Contains("More than 60 days", page, StringComparison.Ordinal);
        Assert.Contains("Thawed in cold tap water", page, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("made=soon", "f-made")]
    [InlineData("made=2026-11-20&frozen=2026-11-19", "f-frozen")]
    [InlineData("made=2026-11-20&frozen=2026-11-21&thawed=2026-11-20", "f-thawed")]
    [InlineData("portion=-4", "f-portion")]
    [InlineData("freezer=3", "f-freezer")]
    [InlineData("portion=5000&across=3", "f-across")]
    public async Task A_mistake_is_named_beside_its_field(string query, string id)
    {
        string page = await PageAsync($"/keeping?{query}");
        Assert.Contains($"id=\"{id}-problem\"", page, StringComparison.Ordinal);
        Assert.Contains("Everything you typed is kept", page, StringComparison.Ordinal);
    }

    private async Task<string> PageAsync(string address)
    {
        using HttpResponseMessage answer = await client.GetAsync(address, TestContext.Current.CancellationToken);
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        return WebUtility.HtmlDecode(await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken)).Replace('\u00A0', ' ');
    }
}
