using System.Net;
using Stockwright.Recipes;
using Xunit;
using static Stockwright.Web.Tests.KeepingApp;

namespace Stockwright.Web.Tests.Features.Recipes;

public sealed class RecipePagesTests : IDisposable
{
    private const string Own = "/recipes/brown-chicken-stock-own";

    private readonly KeepingApp app = new();

    [Fact]
    public async Task Every_standing_recipe_has_a_page_with_amounts_in_both_measures()
    {
        using HttpClient browser = app.Browser();
        foreach (StockRecipe recipe in StandardRecipes.Book.Recipes)
        {
            Page page = await GetAsync(browser, $"/recipes/{recipe.Id}");
            Assert.Equal(HttpStatusCode.OK, page.Status);
            Assert.Contains(recipe.Name, page.Text, StringComparison.Ordinal);
            Assert.All(recipe.Sources, source => Assert.Contains(source, page.Text, StringComparison.Ordinal));
            Assert.DoesNotContain("not in the larder", page.Text, StringComparison.Ordinal);
        }

        // 600 g is 21.16 oz, written to the quarter ounce: 1 lb 5 1/4 oz (NIST SP 811, B.8: 28.349523125 g to the ounce).
        string text = (await GetAsync(browser, "/recipes/brown-chicken")).Text;
        Assert.Contains("600 g", text, StringComparison.Ordinal);
        Assert.Contains("1 lb 5", text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_recipe_is_copied_changed_and_saved_and_the_standing_one_stays()
    {
        using HttpClient browser = app.Browser();
        Page copied = await SendAsync(browser, "/recipes/brown-chicken", "copy");
        Assert.Equal($"{Own}/edit", copied.Location);
        Page saved = await SendAsync(
            browser, $"{Own}/edit", "save", ("name", "Friday stock"), ("line-0-amount", "750"), ("line-1-ingredient", "chicken-drumstick"), ("line-1-cut", "whole"), ("stage-0-hours", "5 1/2"), ("do", "save"));
        Assert.Equal(Own, saved.Location);
        Page page = await GetAsync(browser, Own);
        Assert.Contains("Friday stock", page.Text, StringComparison.Ordinal);
        Assert.Contains("750 g", page.Text, StringComparison.Ordinal);
        Assert.Contains("Chicken drumstick", page.Text, StringComparison.OrdinalIgnoreCase);
        Assert.Contains("5 h 30 min", page.Text, StringComparison.Ordinal);
        Assert.Contains("Copied from: Brown chicken stock", page.Text, StringComparison.Ordinal);
        Assert.Contains("yours", page.Text, StringComparison.Ordinal);
        Assert.Contains("600 g", (await GetAsync(browser, "/recipes/brown-chicken")).Text, StringComparison.Ordinal);
        Assert.Contains("Friday stock", (await GetAsync(browser, "/recipes")).Text, StringComparison.Ordinal);
        Assert.Contains("Friday stock", (await GetAsync(browser, "/plan")).Html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Saving_without_a_change_keeps_every_number_its_range_and_its_source()
    {
        using HttpClient browser = app.Browser();
        await SendAsync(browser, "/recipes/brown-chicken", "copy");
        string before = Table(await GetAsync(browser, Own));
        Assert.Equal(HttpStatusCode.SeeOther, (await SendAsync(browser, $"{Own}/edit?units=us", "save", ("do", "save"))).Status);
        Assert.Equal(before, Table(await GetAsync(browser, Own)));

        static string Table(Page page) => page.Html[page.Html.IndexOf("<table", StringComparison.Ordinal)..page.Html.IndexOf("</table>", StringComparison.Ordinal)];
    }

    [Fact]
    public async Task Lines_are_added_and_taken_out_without_scripts_and_without_losing_what_was_typed()
    {
        using HttpClient browser = app.Browser();
        await SendAsync(browser, "/recipes/brown-chicken", "copy");
        Page open = await GetAsync(browser, $"{Own}/edit");
        int lines = Lines(open);
        Page more = await SendAsync(browser, $"{Own}/edit", open, "save", ("name", "Typed"), ("line-0-amount", "7,5x"), ("do", "add"));
        Assert.Equal(lines + 1, Lines(more));
        Assert.Equal("Typed", more.Form("save")["name"]);
        Assert.Equal("7,5x", more.Form("save")["line-0-amount"]);

        string second = more.Form("save")["line-1-ingredient"];
        Page fewer = await SendAsync(browser, $"{Own}/edit", more, "save", ("do", "drop-0"));
        Assert.Equal(lines, Lines(fewer));
        Assert.Equal(second, fewer.Form("save")["line-0-ingredient"]);

        string last = $"line-{lines - 1}";
        Page saved = await SendAsync(
            browser, $"{Own}/edit", fewer, "save", ($"{last}-ingredient", "leek"), ($"{last}-role", "mirepoix"), ($"{last}-amount", "25"), ("do", "save"));
        Assert.Equal(HttpStatusCode.SeeOther, saved.Status);
        string text = (await GetAsync(browser, Own)).Text;
        Assert.Contains("Leek", text, StringComparison.Ordinal);
        Assert.DoesNotContain("600 g", text, StringComparison.Ordinal);

        static int Lines(Page page) => page.Form("save").Keys.Count(name => name.EndsWith("-ingredient", StringComparison.Ordinal));
    }

    [Fact]
    public async Task Roasted_lines_without_an_oven_setting_are_refused_at_each_line()
    {
        using HttpClient browser = app.Browser();
        await SendAsync(browser, "/recipes/brown-chicken", "copy");
        Page answer = await SendAsync(browser, $"{Own}/edit", "save", ("roast-temperature", ""), ("roast-minutes", ""), ("do", "save"));
        Assert.Contains("is to be roasted, but the recipe has no oven setting", answer.Text, StringComparison.Ordinal);
        Assert.Contains("id=\"f-line-0-preparation-problem\"", answer.Html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Two_windows_on_one_recipe_do_not_overwrite_each_other_and_a_deleted_one_can_be_added_anew()
    {
        using HttpClient browser = app.Browser();
        await SendAsync(browser, "/recipes/brown-chicken", "copy");
        Page first = await GetAsync(browser, $"{Own}/edit");
        Page second = await GetAsync(browser, $"{Own}/edit");
        Page third = await GetAsync(browser, $"{Own}/edit");
        Assert.Equal(HttpStatusCode.SeeOther, (await SendAsync(browser, $"{Own}/edit", first, "save", ("name", "First"), ("do", "save"))).Status);
        Page conflict = await SendAsync(browser, $"{Own}/edit", second, "save", ("name", "Second"), ("do", "save"));
        Assert.Contains("was changed, in another window", conflict.Text, StringComparison.Ordinal);
        Assert.Equal("Second", conflict.Form("save")["name"]);

        Assert.Equal(HttpStatusCode.SeeOther, (await SendAsync(browser, Own, "delete")).Status);
        Page gone = await SendAsync(browser, $"{Own}/edit", third, "save", ("name", "Third"), ("line-0-amount", "640"), ("do", "save"));
        Assert.Contains("was deleted", gone.Text, StringComparison.Ordinal);
        Page anew = await SendAsync(browser, $"{Own}/edit", gone, "save", ("do", "save"));
        Assert.Equal("/recipes/third", anew.Location);
        Assert.Contains("640 g", (await GetAsync(browser, "/recipes/third")).Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_standing_recipe_cannot_be_changed_or_deleted_in_place()
    {
        using HttpClient browser = app.Browser();
        Assert.Equal(HttpStatusCode.NotFound, (await GetAsync(browser, "/recipes/brown-chicken/edit")).Status);
        Assert.DoesNotContain("Delete this recipe", (await GetAsync(browser, "/recipes/brown-chicken")).Text, StringComparison.Ordinal);
    }

    public void Dispose() => app.Dispose();
}
