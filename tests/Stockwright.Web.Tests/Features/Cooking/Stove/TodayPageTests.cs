using Xunit;
using static Stockwright.Web.Tests.Features.Cooking.BatchApp;
using static Stockwright.Web.Tests.KeepingApp;

namespace Stockwright.Web.Tests.Features.Cooking.Stove;

public sealed class TodayPageTests : IDisposable
{
    private readonly BatchApp app = new();

    public void Dispose() => app.Dispose();

    [Fact]
    public async Task With_nothing_on_it_is_calm_and_offers_a_start()
    {
        using HttpClient browser = app.Browser();
        Page today = await GetAsync(browser, "/");
        Assert.Contains("Nothing is on", today.Text, StringComparison.Ordinal);
        Assert.DoesNotContain("Do now", today.Text, StringComparison.Ordinal);
        Assert.Contains("href=\"/plan\"", today.Html, StringComparison.Ordinal);
        Assert.Contains("/batches/start?plan=", today.Html, StringComparison.Ordinal);
        Assert.DoesNotContain(" style=", today.Html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_is_overdue_comes_first_whatever_batch_it_is_of()
    {
        using HttpClient browser = app.Browser();
        await StartAsync(browser, "Later", ("when", "at"), ("date", "2026-11-25"), ("time", "13:00"));
        await StartAsync(browser, "Second", ("when", "at"), ("date", "2026-11-25"), ("time", "08:25"));
        await StartAsync(browser, "First");
        app.Clock.Advance(TimeSpan.FromMinutes(27));
        Page today = await GetAsync(browser, "/");
        string now = today.Html[today.Html.IndexOf(">Do now<", StringComparison.Ordinal)..today.Html.IndexOf(">Next<", StringComparison.Ordinal)];
        int first = now.IndexOf("<span>First</span>", StringComparison.Ordinal);
        int second = now.IndexOf("<span>Second</span>", StringComparison.Ordinal);
        Assert.True(first > 0 && second > first, now);
        Assert.Contains("class=\"overdue\"", now[..first], StringComparison.Ordinal);
        Assert.DoesNotContain("Later", now, StringComparison.Ordinal);
        string on = today.Html[today.Html.IndexOf(">On<", StringComparison.Ordinal)..];
        Assert.Contains("<b>Later</b>", on, StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_is_cooling_shows_the_time_left()
    {
        using HttpClient browser = app.Browser();
        string address = await StartAsync(browser);
        app.Clock.Advance(TimeSpan.FromHours(8));
        await TakenAsync(browser, address, "strained-", ("strained", "3.6"), ("at", "14:00"));
        await TakenAsync(browser, address, "cooling-began-", ("at", "14:10"), ("method", "ice bath"));
        await TakenAsync(browser, address, "temperature-", ("degrees", "57"), ("place", "cooling"), ("at", "14:30"));
        await TakenAsync(browser, address, "temperature-", ("degrees", "40"), ("place", "cooling"), ("at", "15:15"));

        // FDA Food Code 3-501.14(A): from 57 °C to 21 °C within 2 hours, so by 16:30; it is 16:00.
        string today = (await GetAsync(browser, "/")).Text.Replace('\u00A0', ' ');
        Assert.Matches("First .{0,80}Friday stock .{0,40}21 °C .{0,20}by 16:30 in 30 min", today);
        string stove = (await GetAsync(browser, address)).Text.Replace('\u00A0', ' ');
        Assert.Contains("16:30 30 min left", stove, StringComparison.Ordinal);
        Assert.Contains("20:30 4 h 30 min left", stove, StringComparison.Ordinal);
        Assert.Contains("3-501.14(A)", stove, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Cooling_and_a_pot_run_dry_stand_above_what_is_overdue_in_other_batches()
    {
        using HttpClient browser = app.Browser();
        string cooling = await StartAsync(browser, "Cooling one");
        string dry = await StartAsync(browser, "Dry one");
        await TakenAsync(browser, dry, "step-done-", ("step", "heatup-1"));
        app.Clock.Advance(TimeSpan.FromHours(60));
        await TakenAsync(browser, cooling, "strained-", ("strained", "3.6"), ("at", "19:00"));
        await TakenAsync(browser, cooling, "temperature-", ("degrees", "78"), ("place", "cooling"), ("at", "19:40"));
        await StartAsync(browser, "Late one");
        app.Clock.Advance(TimeSpan.FromMinutes(40));
        string today = (await GetAsync(browser, "/")).Text.Replace('\u00A0', ' ');
        Assert.Matches("First .{0,10}The pot has probably boiled dry Dry one .{0,400}Cooling one .{0,900}Do now .{0,300}Weigh everything out Late one", today);
        Assert.DoesNotMatch("First .*Weigh everything out Late one.*Do now", today);
    }
}
