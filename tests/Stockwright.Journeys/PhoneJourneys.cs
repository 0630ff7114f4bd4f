using System.Globalization;
using System.Text.Json;
using System.Text.RegularExpressions;
using Microsoft.Playwright;
using Stockwright.Journeys.Running;
using static Microsoft.Playwright.Assertions;

namespace Stockwright.Journeys;

/// <summary>What a phone at the stove must survive: no network, lost answers, wet fingers, a clock that is wrong.</summary>
public sealed partial class PhoneJourneys(AppFixture app, ChromiumFixture chromium)
{
    [Fact]
    public async Task Five_entries_without_a_network_survive_closing_the_page_and_arrive_once_in_order()
    {
        await using Visit visit = await chromium.VisitAsync(app);
        StovePage stove = await StovePage.StartAsync(visit);
        await stove.ReadyForOfflineAsync();
        Uri address = new(visit.Page.Url);
        await visit.Context.SetOfflineAsync(true);

        await stove.EnterAsync("temperature", "degrees", "92");
        await Expect(stove.Waiting).ToHaveCountAsync(1);
        await stove.EnterAsync("level", "below", "6");
        await stove.EnterAsync("water", "water", "0,5");
        await stove.TapAsync("skimmed");
        await stove.EnterAsync("note", "text", "smells right");
        await Expect(stove.Waiting).ToHaveCountAsync(5);
        await Expect(stove.Waiting.Nth(1)).ToContainTextAsync("Waiting to be sent: Level read 6 cm, ");
        await visit.KeepPictureAsync("phone-waiting");
        await visit.Page.CloseAsync();

        // Opened again, still without a network: another page, the same entries, and one more.
        IPage again = await visit.Context.NewPageAsync();
        await again.GotoAsync(address.AbsoluteUri);
        await Expect(again.GetByRole(AriaRole.Heading, new() { Name = "No connection" })).ToBeVisibleAsync();
        StovePage offline = new(again);
        await Expect(offline.Waiting).ToHaveCountAsync(5);
        await Expect(again.Locator(".offline-batch time[data-countdown]").First).ToHaveTextAsync(CountsDown());
        await again.Locator("#offline-level").FillAsync("7");
        await again.GetByRole(AriaRole.Button, new() { Name = "Enter level" }).ClickAsync();
        await Expect(offline.Waiting).ToHaveCountAsync(6);
        await new Visit(visit.Context, again).KeepPictureAsync("phone-offline");
        Assert.Empty(await StovePage.StoredAsync(app, address));

        await visit.Context.SetOfflineAsync(false);
        await Expect(offline.Waiting).ToHaveCountAsync(0, new() { Timeout = 30_000 });
        List<JsonElement> stored = await StovePage.StoredAsync(app, address);
        Assert.Equal("temperature level water skimmed note level", string.Join(' ', stored.Select(Kind)));
        Assert.Equal(6, stored.Select(entry => entry.GetProperty("entry").GetGuid()).Distinct().Count());
        Assert.True(stored.Zip(stored.Skip(1)).All(pair => Happened(pair.First) <= Happened(pair.Second)));

        // The way back is offered.
        await again.GetByRole(AriaRole.Link, new() { NameRegex = WayBack() }).ClickAsync();
        await Expect(again.Locator("#live-log")).ToContainTextAsync("smells right");
    }

    [Fact]
    public async Task An_entry_on_one_device_is_seen_on_another_and_disturbs_nobody()
    {
        await using Visit one = await chromium.VisitAsync(app);
        await using Visit other = await chromium.VisitAsync(app);
        StovePage here = await StovePage.StartAsync(one);
        await other.Page.GotoAsync(one.Page.Url);
        StovePage there = new(other.Page);
        ILocator typing = (await there.UnfoldAsync("note")).Locator("[name=text]");
        await typing.FillAsync("half a sen");
        await other.Page.WaitForTimeoutAsync(1000);

        await here.EnterAsync("level", "below", "6,3");
        await Expect(there.Log).ToContainTextAsync("6.3");
        await Expect(typing).ToHaveValueAsync("half a sen");
        await Expect(typing).ToBeFocusedAsync();
        one.AssertQuiet();
        other.AssertQuiet();
    }

    [Fact]
    public async Task A_refused_entry_stays_with_its_reason_until_it_is_put_right_and_blocks_nothing()
    {
        await using Visit visit = await chromium.VisitAsync(app);
        StovePage stove = await StovePage.StartAsync(visit);
        Uri address = new(visit.Page.Url);
        await stove.EnterAsync("level", "below", "a hand");
        await Expect(stove.Refused).ToContainTextAsync("'a hand' is not a number");
        await stove.EnterAsync("note", "text", "after it");
        await Expect(stove.Log).ToContainTextAsync("after it");

        // Still there after the page was closed.
        await visit.Page.ReloadAsync();
        ILocator field = stove.Refused.Locator("[name=below]");
        await Expect(field).ToHaveValueAsync("a hand");
        await Expect(field).ToHaveAttributeAsync("aria-invalid", "true");
        await visit.KeepPictureAsync("phone-refused");
        await field.FillAsync("9");
        await stove.Refused.GetByRole(AriaRole.Button, new() { Name = "Send again" }).ClickAsync();
        await Expect(stove.Refused).ToHaveCountAsync(0);
        await Expect(stove.Log).ToContainTextAsync("9.0");
        Assert.Equal("note level", string.Join(' ', (await StovePage.StoredAsync(app, address)).Select(Kind)));
    }

    [Fact]
    public async Task An_answer_lost_on_the_way_and_a_finger_that_taps_twice_make_one_entry()
    {
        await using Visit visit = await chromium.VisitAsync(app);
        StovePage stove = await StovePage.StartAsync(visit);
        Uri address = new(visit.Page.Url);
        int sent = 0;
        await visit.Page.RouteAsync("**/log", async route =>
        {
            // The server has it; the phone never hears so.
            await route.FetchAsync();
            if (++sent == 1)
            {
                await route.AbortAsync();
            }
            else
            {
                await route.ContinueAsync();
            }
        });
        await stove.TapAsync("skimmed", times: 2);
        await Expect(stove.Log).ToContainTextAsync("kimmed");
        await Expect(stove.Waiting).ToHaveCountAsync(0);
        Assert.True(sent > 1, "The lost answer did not lead to a second sending.");
        Assert.Single(await StovePage.StoredAsync(app, address));
    }

    /// <summary>Many kitchens reach their server so: browsers keep back workers, locks, random keys, notifications.</summary>
    [Fact]
    public async Task Over_plain_http_entries_still_wait_and_arrive_and_the_page_says_what_is_off()
    {
        await using Visit visit = await chromium.VisitAsync(app);
        Uri plain = new UriBuilder(app.Address) { Host = ChromiumFixture.InsecureHost }.Uri;
        StovePage stove = await StovePage.StartAsync(visit, plain);
        Uri address = new(visit.Page.Url);
        Assert.Equal(ChromiumFixture.InsecureHost, address.Host);
        Assert.False(await visit.Page.EvaluateAsync<bool>("isSecureContext"));
        await Expect(visit.Page.Locator("#reminder-notice")).ToContainTextAsync("Off here. This page came over plain HTTP");
        await Expect(visit.Page.Locator("#reminder-screen")).ToContainTextAsync("Off here. This page came over plain HTTP");
        await visit.Context.SetOfflineAsync(true);
        await stove.EnterAsync("temperature", "degrees", "92");
        await stove.EnterAsync("note", "text", "no network");
        await Expect(stove.Waiting).ToHaveCountAsync(2);
        await visit.Context.SetOfflineAsync(false);
        await Expect(stove.Waiting).ToHaveCountAsync(0, new() { Timeout = 30_000 });
        Assert.Equal("temperature note", string.Join(' ', (await StovePage.StoredAsync(app, address)).Select(Kind)));
    }

    [Fact]
    public async Task What_comes_due_is_notified_once_on_this_device()
    {
        await using Visit visit = await chromium.VisitAsync(app);
        await visit.Context.GrantPermissionsAsync(["notifications"]);
        await visit.Context.AddInitScriptAsync("""
            ServiceWorkerRegistration.prototype.showNotification = async (title, { body }) =>
              localStorage.setItem("told", (localStorage.getItem("told") ?? "") + `[${title}: ${body}]`);
            """);
        StovePage stove = await StovePage.StartAsync(visit);
        await stove.ReadyForOfflineAsync();
        await visit.Page.GetByLabel("Notification when something is due").CheckAsync();

        // A batch that begins now has its first step due at once.
        const string told = "() => localStorage.getItem('told') ?? ''";
        await visit.Page.WaitForFunctionAsync("() => localStorage.getItem('told')");
        string once = await visit.Page.EvaluateAsync<string>(told);
        Assert.Matches("^\\[Weigh[^\\]]*\\]$", once);
        await visit.Page.ReloadAsync();
        await visit.Page.WaitForTimeoutAsync(3500);
        Assert.Equal(once, await visit.Page.EvaluateAsync<string>(told));
        visit.AssertQuiet();
    }

    [Theory]
    [InlineData(7)]
    [InlineData(-7)]
    public async Task A_phone_whose_clock_is_wrong_counts_down_right_and_tells_the_right_time(int minutes)
    {
        await using Visit visit = await chromium.VisitAsync(app);
        await visit.Context.AddInitScriptAsync($$"""
            const right = Date;
            globalThis.Date = class extends right {
              constructor(...given) { if (given.length === 0) super(right.now() + {{minutes * 60_000}}); else super(...given); }
              static now() { return right.now() + {{minutes * 60_000}}; }
            };
            """);
        StovePage stove = await StovePage.StartAsync(visit);
        Uri address = new(visit.Page.Url);

        // The server writes a hard space between number and unit, the script a plain one: by that its own count is known.
        ILocator count = visit.Page.Locator("time[data-countdown]").Last;
        await visit.Page.WaitForFunctionAsync("() => ![...document.querySelectorAll('time[data-countdown]')].at(-1).textContent.includes('\u00A0')");
        DateTimeOffset at = DateTimeOffset.Parse((await count.GetAttributeAsync("datetime"))!, CultureInfo.InvariantCulture);
        int left = (int)Math.Ceiling((at - TimeProvider.System.GetUtcNow()).TotalMinutes);
        Assert.Contains(await count.InnerTextAsync(), Enumerable.Range(left - 1, 3).Select(Words), StringComparer.Ordinal);

        DateTimeOffset before = TimeProvider.System.GetUtcNow();
        await stove.EnterAsync("note", "text", "by this clock");
        await Expect(stove.Log).ToContainTextAsync("by this clock");
        JsonElement entry = Assert.Single(await StovePage.StoredAsync(app, address));
        Assert.InRange(Happened(entry), before.AddSeconds(-4), TimeProvider.System.GetUtcNow().AddSeconds(1));
        Assert.Equal(minutes * 60, entry.GetProperty("deviceOffsetSeconds").GetDouble(), 4.0);
    }

    private static string Words(int minutes) => minutes switch
    {
        <= 0 => "now",
        < 60 => $"in {minutes} min",
        _ when minutes % 60 == 0 => $"in {minutes / 60} h",
        _ => $"in {minutes / 60} h {minutes % 60} min",
    };

    [GeneratedRegex("^in |^now$|late$", RegexOptions.None, 1000)]
    private static partial Regex CountsDown();

    [GeneratedRegex("^Back to", RegexOptions.None, 1000)]
    private static partial Regex WayBack();

    private static string Kind(JsonElement entry) => entry.GetProperty("kind").GetString() ?? "";

    private static DateTimeOffset Happened(JsonElement entry) => entry.GetProperty("happenedAt").GetDateTimeOffset();
}
