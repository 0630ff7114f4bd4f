using System.Net;
using Microsoft.Extensions.DependencyInjection;
using Xunit;
using static Stockwright.Web.Tests.KeepingApp;

namespace Stockwright.Web.Tests.Features.Kitchen;

/// <summary>Weighing the colander: the figure it gives, what is refused, and how it is taken back.</summary>
public sealed class WeighedColanderTests : IDisposable
{
    private const string Address = "/kitchen/weigh";

    private readonly KeepingApp app = new();

    public void Dispose() => app.Dispose();

    /// <summary>2.16 kg drained, 140 g came off: 1.01 x 2.16/2.02 - 1 = 0.08. The same in pounds and ounces: 4.762 lb, 4.9383 oz. Fish frames hold 2.5 times what bones do.</summary>
    [Theory]
    [InlineData("metric", "2.16", "140", "bones", 0.08)]
    [InlineData("metric", "2,16", "140", "", 0.08)]
    [InlineData("us", "4.762", "4.9383", "bones", 0.08)]
    [InlineData("metric", "2.4", "420", "fish", 0.0897)]
    public async Task It_becomes_the_kitchens_own_figure(string units, string drained, string cameOff, string solids, double clings)
    {
        using HttpClient browser = app.Browser();
        Page saved = await SendAsync(browser, $"{Address}?units={units}", "colander", ("drained", drained), ("came-off", cameOff), ("solids", solids));
        Assert.Equal(HttpStatusCode.SeeOther, saved.Status);
        Assert.Equal("/kitchen", saved.Location);
        Assert.Equal(clings, (await StoredAsync())!.Value, 0.0005);
        Assert.Null((await KitchenAsync()).OwnFilmFactor);
        Assert.Contains("Weighed colander: ", (await GetAsync(browser, "/kitchen")).Text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("metric", "2", "1000", "bones", "came-off", "so much cannot have clung")]
    [InlineData("metric", "2", "2160", "bones", "came-off", "so much cannot have clung")]
    [InlineData("us", "4.4", "36", "bones", "came-off", "so much cannot have clung")]
    [InlineData("metric", "2", "800", "bones", "came-off", "more than clings to anything drained")]
    [InlineData("metric", "10", "1", "fish", "came-off", "almost nothing for wet pieces")]
    [InlineData("metric", "0.1", "10", "bones", "drained", "It can be 0.2 to 100 kg")]
    [InlineData("us", "0.1", "10", "bones", "drained", "too small. It can be 0.44")]
    [InlineData("metric", "2", "0", "bones", "came-off", "It can be 1 to 50000 g")]
    [InlineData("metric", "two", "140", "bones", "drained", "not a number")]
    [InlineData("metric", "", "140", "bones", "drained", "What did the drained solids weigh")]
    [InlineData("metric", "2.16", "", "bones", "came-off", "How much heavier were bowl and cloth")]
    [InlineData("metric", "2.16", "140", "rocks", "solids", "is not one of bones, fish")]
    public async Task What_cannot_be_is_said_beside_its_field_and_kept_as_typed(string units, string drained, string cameOff, string solids, string field, string words)
    {
        using HttpClient browser = app.Browser();
        Page refused = await SendAsync(browser, $"{Address}?units={units}", "colander", ("drained", drained), ("came-off", cameOff), ("solids", solids));
        Assert.Equal(HttpStatusCode.OK, refused.Status);
        Assert.Contains(words, refused.Text.Replace('\u00A0', ' '), StringComparison.Ordinal);
        Assert.Contains($"id=\"colander-{field}-problem\"", refused.Html, StringComparison.Ordinal);
        Assert.Equal((drained, cameOff), (refused.Form("colander")["drained"], refused.Form("colander")["came-off"]));
        Assert.Null(await StoredAsync());

        // The other form of the page is as if just opened: with a key of its own.
        Assert.NotEqual(refused.Form("colander")["form-key"], refused.Form("save")["form-key"], StringComparer.Ordinal);
    }

    [Fact]
    public async Task The_pot_is_weighed_on_the_same_page_as_before()
    {
        using HttpClient browser = app.Browser();
        Page refused = await SendAsync(browser, Address, "save", ("lost", "40"), ("pot-diameter", "28"), ("hours", "6"), ("simmer", "93"));
        Assert.Contains("more than clean water loses", refused.Text, StringComparison.Ordinal);
        Assert.DoesNotContain("colander-came-off-problem", refused.Html, StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.SeeOther, (await SendAsync(browser, Address, refused, "save", ("lost", "1.8"))).Status);
        Assert.Equal(HttpStatusCode.SeeOther, (await SendAsync(browser, Address, "colander", ("drained", "2.16"), ("came-off", "140"))).Status);
        Assert.Equal(0.08, (await StoredAsync())!.Value, 1e-9);
        Assert.InRange((await KitchenAsync()).OwnFilmFactor!.Value, 0.2, 0.4);
        string[] ids = [.. (await GetAsync(browser, Address)).Html.Split(" id=\"").Skip(1).Select(rest => rest.Split('"')[0])];
        Assert.Equal(ids.Length, ids.Distinct(StringComparer.Ordinal).Count());
    }

    [Fact]
    public async Task It_is_changed_and_taken_back_with_place_and_air()
    {
        using HttpClient browser = app.Browser();
        Assert.Equal(HttpStatusCode.SeeOther, (await SendAsync(browser, Address, "colander", ("drained", "2.16"), ("came-off", "140"))).Status);
        Page site = await GetAsync(browser, "/kitchen/site");
        Assert.Equal("8", site.Form("save")["clings"]);
        Assert.Equal(HttpStatusCode.SeeOther, (await SendAsync(browser, "/kitchen/site", "save", ("clings", "12,5"))).Status);
        Assert.Equal(0.125, (await StoredAsync())!.Value, 1e-9);
        Page refused = await SendAsync(browser, "/kitchen/site", "save", ("clings", "60"));
        Assert.Contains("It can be 1 to 50 %", refused.Text.Replace('\u00A0', ' '), StringComparison.Ordinal);
        Assert.Equal(0.125, (await StoredAsync())!.Value, 1e-9);
        Assert.Equal(HttpStatusCode.SeeOther, (await SendAsync(browser, "/kitchen/site", "save", ("clings", ""))).Status);
        Assert.Null(await StoredAsync());
        Assert.DoesNotContain("Weighed colander", (await GetAsync(browser, "/kitchen")).Text, StringComparison.Ordinal);
    }

    private async Task<Stockwright.Kitchen.KitchenSite> KitchenAsync() =>
        (await app.Services.GetRequiredService<KitchenStore>().ReadAsync(TestContext.Current.CancellationToken)).Details.Value.Site;

    private async Task<double?> StoredAsync() => (await KitchenAsync()).OwnClinging?.DecimalFractions;
}
