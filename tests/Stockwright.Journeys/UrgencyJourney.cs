using Microsoft.Playwright;
using Stockwright.Journeys.Running;
using static Microsoft.Playwright.Assertions;

namespace Stockwright.Journeys;

/// <summary>What a cook who looks at the phone too late, or taps too soon, is told: the danger first, in the largest letters, by day and by night.</summary>
public sealed class UrgencyJourney(ChromiumFixture chromium)
{
    private static readonly DateTimeOffset Noon = new(2026, 11, 25, 12, 0, 0, TimeSpan.Zero);

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public async Task Heat_off_missed_with_an_addition_forgotten_is_a_pot_to_look_at(bool dark)
    {
        await using ClockedApp app = new(Noon);
        await using Visit visit = await chromium.VisitAsync(app.Address, dark: dark);
        await visit.Page.Clock.InstallAsync(new ClockInstallOptions { TimeDate = Noon.UtcDateTime });
        StovePage stove = await StovePage.StartAsync(visit, app.Address);
        string address = visit.Page.Url;
        await StepAsync(stove, "heatup-1");
        await MoveAsync(app, visit, TimeSpan.FromHours(60));
        await visit.Page.GotoAsync(address);

        ILocator card = visit.Page.Locator("#live-now");
        await Expect(card.Locator(".now-what").First).ToContainTextAsync("boiled dry");
        await Expect(card).ToContainTextAsync("Turn the heat off now, and look");
        await Expect(card.Locator(".then-what")).ToHaveTextAsync("Heat off, let it stand");
        await Expect(card).Not.ToContainTextAsync("Lower it in");
        Assert.True(await IsLargestAsync(visit, "#live-now .now-what"), "Something is written larger than what is urgent.");
        await visit.AssertFitsWidthAsync();
        await visit.KeepPictureAsync($"urgent-uncovered-{(dark ? "dark" : "light")}");

        await visit.Page.GotoAsync(new Uri(app.Address, "/").AbsoluteUri);
        await Expect(visit.Page.Locator("#today-urgent li").First).ToContainTextAsync("boiled dry");
        await visit.AssertFitsWidthAsync();
        await visit.KeepPictureAsync($"urgent-today-{(dark ? "dark" : "light")}");
        visit.AssertQuiet();
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public async Task Cooling_tapped_done_while_hot_cools_on_until_a_reading_says_cold(bool dark)
    {
        await using ClockedApp app = new(Noon);
        await using Visit visit = await chromium.VisitAsync(app.Address, dark: dark);
        await visit.Page.Clock.InstallAsync(new ClockInstallOptions { TimeDate = Noon.UtcDateTime });
        StovePage stove = await StovePage.StartAsync(visit, app.Address);
        string address = visit.Page.Url;
        await MoveAsync(app, visit, TimeSpan.FromHours(6));
        await visit.Page.GotoAsync(address);
        await stove.EnterAsync("strained", "strained", "3,5");
        await Expect(stove.Log).ToContainTextAsync("strained");
        await visit.Page.GotoAsync(address);
        await ReadAsync(stove, "78");
        ILocator card = visit.Page.Locator("#live-now");
        await Expect(card.Locator(".now-what").First).ToHaveTextAsync("Cool it fast");
        await card.GetByRole(AriaRole.Button, new() { Name = "It is set to cool" }).ClickAsync();

        await Expect(card.Locator(".now-what").First).ToHaveTextAsync("It is cooling: keep measuring");
        await Expect(visit.Page.Locator("#live-state")).ToContainTextAsync("Cooling");
        await Expect(visit.Page.Locator("#stove")).Not.ToContainTextAsync("bottom of the fridge");
        await visit.AssertFitsWidthAsync();
        await visit.KeepPictureAsync($"urgent-cooling-hot-{(dark ? "dark" : "light")}");

        await MoveAsync(app, visit, TimeSpan.FromMinutes(30));
        await visit.Page.GotoAsync(address);
        await ReadAsync(stove, "55");
        await Expect(card.Locator(".now-deadline")).ToContainTextAsync("21 °C");
        await MoveAsync(app, visit, TimeSpan.FromMinutes(90));
        await visit.Page.GotoAsync(address);
        await Expect(card.Locator(".now-what").First).ToHaveTextAsync("Cool it faster now");
        await Expect(card).ToContainTextAsync("Measure it now");
        Assert.True(await IsLargestAsync(visit, "#live-now .now-what"), "Something is written larger than the cooling.");
        await visit.KeepPictureAsync($"urgent-cooling-alarm-{(dark ? "dark" : "light")}");

        // A time still ahead is asked about; one tap says that it was yesterday, another is to discard it.
        ILocator note = await stove.UnfoldAsync("note");
        await note.Locator("[name=text]").FillAsync("Ice is low");
        await note.Locator("details.when > summary").ClickAsync();
        await note.Locator("[name=at]").FillAsync("23:40");
        await note.GetByRole(AriaRole.Button).ClickAsync();
        await Expect(stove.Refused).ToContainTextAsync("23:40 is still ahead");
        await visit.KeepPictureAsync($"urgent-yesterday-{(dark ? "dark" : "light")}");
        await stove.Refused.GetByRole(AriaRole.Button, new() { Name = "Yes, yesterday 23:40" }).ClickAsync();
        await Expect(stove.Log).ToContainTextAsync("Ice is low");

        await ReadAsync(stove, "4");
        await Expect(visit.Page.Locator("#live-state")).ToContainTextAsync("Cold");
    }

    private static async Task ReadAsync(StovePage stove, string degrees)
    {
        ILocator form = await stove.UnfoldAsync("temperature");
        await form.Locator("[name=degrees]").FillAsync(degrees);
        await form.Locator("[name=place][value=cooling]").CheckAsync();
        await form.GetByRole(AriaRole.Button).ClickAsync();
        await Expect(stove.Log).ToContainTextAsync($"{degrees} °C");
    }

    private static async Task StepAsync(StovePage stove, string key)
    {
        ILocator form = stove.Page.Locator("#step-done-");
        await stove.UnfoldAsync("step-done");
        await form.Locator("[name=step]").SelectOptionAsync(key);
        await form.GetByRole(AriaRole.Button).ClickAsync();
        await Expect(stove.Log).ToContainTextAsync("Done:");
    }

    private static async Task MoveAsync(ClockedApp app, Visit visit, TimeSpan by)
    {
        TimeSpan ahead = app.Clock.MoveTo(app.Clock.GetUtcNow() + by);
        await visit.Page.Clock.FastForwardAsync((long)ahead.TotalMilliseconds);
    }

    private static Task<bool> IsLargestAsync(Visit visit, string selector) => visit.Page.EvaluateAsync<bool>(
        """
        selector => {
          const size = element => parseFloat(getComputedStyle(element).fontSize);
          const own = size(document.querySelector(selector));
          return [...document.querySelectorAll("#stove *")].every(element => element.closest("svg") || size(element) <= own);
        }
        """,
        selector);
}
