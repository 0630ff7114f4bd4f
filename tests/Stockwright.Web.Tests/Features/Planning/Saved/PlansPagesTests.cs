using System.Net;
using Xunit;
using static Stockwright.Web.Tests.KeepingApp;

namespace Stockwright.Web.Tests.Features.Planning.Saved;

public sealed class PlansPagesTests : IDisposable
{
    private const string Query = "recipe=brown-chicken&pot=pot-10&goal=litres&litres=3.5&date=2026-12-05&time=08:00";

    private readonly KeepingApp app = new();

    [Fact]
    public async Task A_plan_is_saved_named_listed_copied_renamed_and_deleted()
    {
        using HttpClient browser = app.Browser();
        Assert.Contains("/plans/new?", (await GetAsync(browser, $"/plan?{Query}")).Html, StringComparison.Ordinal);
        string address = await SaveAsync(browser, "St Nicholas lunch");
        Page plan = await GetAsync(browser, address);
        Assert.Equal(HttpStatusCode.OK, plan.Status);
        Assert.Contains("St Nicholas lunch", plan.Text, StringComparison.Ordinal);
        Assert.Contains("Chicken carcass", plan.Text, StringComparison.OrdinalIgnoreCase);
        Page list = await GetAsync(browser, "/plans");
        Assert.Contains("Brown chicken stock in the 10 L pot", list.Text, StringComparison.Ordinal);

        Page copied = await SendAsync(browser, address, "copy");
        Assert.Contains("St Nicholas lunch (copy)", (await GetAsync(browser, copied.Location!)).Text, StringComparison.Ordinal);
        Assert.Equal(address, (await SendAsync(browser, address, "rename", ("name", "Advent"), ("note", "Two rounds\nlast year"))).Location);
        Assert.Contains("last year", (await GetAsync(browser, address)).Text, StringComparison.Ordinal);
        Assert.Equal("/plans", (await SendAsync(browser, address, "delete")).Location);
        Assert.Equal(HttpStatusCode.NotFound, (await GetAsync(browser, address)).Status);
        Assert.Equal(HttpStatusCode.OK, (await GetAsync(browser, copied.Location!)).Status);
    }

    [Fact]
    public async Task A_saved_plan_reads_the_same_after_the_pot_is_gone_and_the_kitchen_has_moved()
    {
        using HttpClient browser = app.Browser();
        string address = await SaveAsync(browser, "Kept");
        string before = Answer(await GetAsync(browser, address));
        Assert.Equal(HttpStatusCode.SeeOther, (await SendAsync(browser, "/kitchen/pots/pot-10", "delete")).Status);
        Assert.Equal(HttpStatusCode.SeeOther, (await SendAsync(browser, "/kitchen/site", "save", ("altitude", "3000"), ("zone", "Asia/Tokyo"))).Status);
        Assert.Equal(HttpStatusCode.SeeOther, (await SendAsync(browser, "/larder/onion/edit", "save", ("refuse", "50"))).Status);
        Page after = await GetAsync(browser, address);
        Assert.Equal(before, Answer(after));

        // Planned again in the kitchen of today, the pot that is gone is spelled out.
        Assert.Contains("pot=own", WebUtility.HtmlDecode(after.Html), StringComparison.Ordinal);

        static string Answer(Page page)
        {
            int start = page.Html.IndexOf("<section class=\"answer\"", StringComparison.Ordinal);
            int end = page.Html.IndexOf("<form class=\"actions\"", StringComparison.Ordinal);
            Assert.True(start > 0 && end > start);
            return page.Html[start..end];
        }
    }

    [Fact]
    public async Task A_plan_without_a_name_or_with_something_to_put_right_is_not_saved_and_keeps_what_was_typed()
    {
        using HttpClient browser = app.Browser();
        Page form = await GetAsync(browser, $"/plans/new?{Query}");
        Page nameless = await SendAsync(browser, "/plans", form, "save-plan", ("name", ""), ("note", "keep me"));
        Assert.Equal(HttpStatusCode.OK, nameless.Status);
        Assert.Contains("Give the plan a name", nameless.Text, StringComparison.Ordinal);
        Assert.Equal("keep me", nameless.Form("save-plan")["note"]);
        Page broken = await SendAsync(browser, "/plans", form, "save-plan", ("query", "recipe=none&litres=abc"));
        Assert.Contains("This is no plan yet", broken.Text, StringComparison.Ordinal);
        Assert.DoesNotContain("keep me", (await GetAsync(browser, "/plans")).Text, StringComparison.Ordinal);
        Assert.Contains("There is no plan to save", (await GetAsync(browser, "/plans/new?litres=abc&goal=litres")).Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Two_windows_renaming_one_plan_do_not_overwrite_each_other()
    {
        using HttpClient browser = app.Browser();
        string address = await SaveAsync(browser, "Plan");
        Page first = await GetAsync(browser, address);
        Page second = await GetAsync(browser, address);
        Assert.Equal(HttpStatusCode.SeeOther, (await SendAsync(browser, address, first, "rename", ("name", "First"))).Status);
        Page conflict = await SendAsync(browser, address, second, "rename", ("name", "Second"));
        Assert.Contains("was changed, in another window", conflict.Text, StringComparison.Ordinal);
        Assert.Equal("Second", conflict.Form("rename")["name"]);
        Assert.Equal(address, (await SendAsync(browser, address, conflict, "rename")).Location);
    }

    [Fact]
    public async Task The_plans_of_the_demonstration_open_and_an_empty_kitchen_has_none()
    {
        using HttpClient browser = app.Browser();
        Page list = await GetAsync(browser, "/plans");
        string[] links = [.. list.Html.Split("href=\"/plans/").Skip(1).Select(part => part[..part.IndexOf('"', StringComparison.Ordinal)])];
        Assert.Equal(2, links.Length);
        foreach (string link in links)
        {
            Page plan = await GetAsync(browser, $"/plans/{link}");
            Assert.Contains("You get", plan.Text, StringComparison.Ordinal);
            Assert.DoesNotContain("left aside", plan.Text, StringComparison.Ordinal);
            Assert.DoesNotContain("cannot be worked out", plan.Text, StringComparison.Ordinal);
        }

        using KeepingApp empty = new() { Demo = false };
        using HttpClient other = empty.Browser();
        Assert.Contains("None yet", (await GetAsync(other, "/plans")).Text, StringComparison.Ordinal);
    }

    private static async Task<string> SaveAsync(HttpClient browser, string name)
    {
        Page form = await GetAsync(browser, $"/plans/new?{Query}");
        Page saved = await SendAsync(browser, "/plans", form, "save-plan", ("name", name));
        Assert.Equal(HttpStatusCode.SeeOther, saved.Status);
        return saved.Location!;
    }

    public void Dispose() => app.Dispose();
}
