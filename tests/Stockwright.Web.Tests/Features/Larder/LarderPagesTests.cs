using System.Net;
using Stockwright.Larder;
using Xunit;
using static Stockwright.Web.Tests.KeepingApp;

namespace Stockwright.Web.Tests.Features.Larder;

public sealed class LarderPagesTests : IDisposable
{
    private readonly KeepingApp app = new();

    [Fact]
    public async Task Every_ingredient_has_a_page_with_its_numbers_and_sources()
    {
        using HttpClient browser = app.Browser();
        string list = (await GetAsync(browser, "/larder")).Html;
        foreach (Ingredient row in StandardLarder.Table.Ingredients)
        {
            Assert.Contains($"href=\"/larder/{row.Id}\"", list, StringComparison.Ordinal);
            Page page = await GetAsync(browser, $"/larder/{row.Id}");
            Assert.Equal(HttpStatusCode.OK, page.Status);
            Assert.Contains(row.Name, page.Text, StringComparison.Ordinal);
            Assert.Contains(row.TrueDensity.Source, page.Text, StringComparison.Ordinal);
        }
    }

    [Theory]
    [InlineData("onion", "Onion", true)]
    [InlineData("BAY leaf", "Bay leaves", true)]
    [InlineData("crustacean", "Lobster shell", true)]
    [InlineData("%_'", "Nothing here is called that", true)]
    [InlineData("onion", "Lobster shell", false)]
    public async Task The_search_finds_by_name_shelf_and_allergen(string query, string text, bool found)
    {
        using HttpClient browser = app.Browser();
        Page page = await GetAsync(browser, $"/larder?q={Uri.EscapeDataString(query)}");
        Assert.Equal(found, page.Text.Contains(text, StringComparison.OrdinalIgnoreCase));
    }

    [Fact]
    public async Task A_changed_number_is_the_cooks_and_the_others_keep_their_source_until_reset()
    {
        using HttpClient browser = app.Browser();
        Page saved = await SendAsync(browser, "/larder/onion/edit", "save", ("roast-loss", "33,5"));
        Assert.Equal("/larder/onion", saved.Location);
        Page page = await GetAsync(browser, "/larder/onion");
        Assert.Contains("changed by you", page.Text, StringComparison.Ordinal);
        Assert.Contains("yours stated in this kitchen", page.Text, StringComparison.Ordinal);
        Assert.Contains(StandardLarder.Table.Get("onion").TrueDensity.Source, page.Text, StringComparison.Ordinal);
        Assert.Equal("33.5", (await GetAsync(browser, "/larder/onion/edit")).Form("save")["roast-loss"]);

        Assert.Equal(HttpStatusCode.SeeOther, (await SendAsync(browser, "/larder/onion", "delete")).Status);
        Assert.DoesNotContain("changed by you", (await GetAsync(browser, "/larder/onion")).Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_copy_becomes_an_ingredient_of_its_own_with_its_pieces()
    {
        using HttpClient browser = app.Browser();
        Page saved = await SendAsync(
            browser, "/larder/onion/copy", "save", ("name", "Market onion"), ("piece-0-name", "string"), ("piece-0-mass", "900"), ("piece-1-name", ""), ("piece-1-mass", ""));
        Assert.Equal("/larder/market-onion", saved.Location);
        string text = (await GetAsync(browser, "/larder/market-onion")).Text;
        Assert.Contains("One string", text, StringComparison.Ordinal);
        Assert.Contains("900 g", text, StringComparison.Ordinal);
        Assert.Contains("Market onion", (await GetAsync(browser, "/larder?q=market")).Text, StringComparison.Ordinal);
        Assert.Contains("market-onion", (await GetAsync(browser, "/plan?goal=bones")).Html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Two_windows_on_one_ingredient_do_not_overwrite_each_other()
    {
        using HttpClient browser = app.Browser();
        Page first = await GetAsync(browser, "/larder/carrot/edit");
        Page second = await GetAsync(browser, "/larder/carrot/edit");
        Assert.Equal(HttpStatusCode.SeeOther, (await SendAsync(browser, "/larder/carrot/edit", first, "save", ("refuse", "15"))).Status);
        Page conflict = await SendAsync(browser, "/larder/carrot/edit", second, "save", ("refuse", "20"));
        Assert.Contains("was changed, in another window", conflict.Text, StringComparison.Ordinal);
        Assert.Equal("20", conflict.Form("save")["refuse"]);
        Assert.Equal("15", (await GetAsync(browser, "/larder/carrot/edit")).Form("save")["refuse"]);
    }

    public void Dispose() => app.Dispose();
}
