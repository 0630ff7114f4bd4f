using System.Globalization;
using System.Text;
using System.Text.Json;
using System.Text.RegularExpressions;
using Microsoft.Playwright;
using Stockwright.Journeys.Running;
using static Microsoft.Playwright.Assertions;

namespace Stockwright.Journeys;

/// <summary>
/// One batch of the demo kitchen from plan to closed record on a phone, its clock and the app's moved on together: a night, a
/// missed check, a power cut, a spell without a network, a restart of the server, and a cooling stage that nearly misses.
/// </summary>
public sealed partial class CookingJourney(ChromiumFixture chromium)
{
    /// <summary>A Wednesday noon in winter, when the demo kitchen's clock shows UTC.</summary>
    private static readonly DateTimeOffset Noon = new(2026, 11, 25, 12, 0, 0, TimeSpan.Zero);

    [Fact]
    public async Task A_batch_is_cooked_from_plan_to_closed_record_over_a_night_of_troubles()
    {
        await using ClockedApp app = new(Noon);
        await using Visit visit = await chromium.VisitAsync(app.Address);
        await visit.Page.Clock.InstallAsync(new ClockInstallOptions { TimeDate = Noon.UtcDateTime });
        Cook cook = new(app, visit);

        await cook.StartAsync("/plan?recipe=brown-veal&pot=pot-24&hob=large-ring&hours=14&check=120&night=getup", "Veal for Thursday", "AB");
        await visit.KeepPictureAsync("cooking-1-started");

        // Afternoon and evening: every step as it comes; the pot loses a little more than planned at each check.
        DateTimeOffset bedtime = new(2026, 11, 26, 0, 30, 0, TimeSpan.Zero);
        await cook.FollowAsync(step => step.At > bedtime);
        await visit.KeepPictureAsync("cooking-2-evening");
        await Expect(visit.Page.Locator("#live-state")).ToContainTextAsync("Simmering");
        await Expect(visit.Page.Locator("#live-outlook")).ToContainTextAsync("Steam");

        // A sleeping phone shows the right time on waking, before it has asked anybody.
        Cook.Step missed = await cook.NextAsync();
        Assert.StartsWith("check", missed.Key, StringComparison.Ordinal);
        await cook.MoveToAsync(missed.At - TimeSpan.FromMinutes(10));
        await Expect(visit.Page.Locator("#live-now time[data-countdown]").First).ToHaveTextAsync(InTenMinutes());

        // Morning: the check was slept through, and the power was off.
        await cook.MoveToAsync(new DateTimeOffset(2026, 11, 26, 6, 30, 0, TimeSpan.Zero));
        await cook.OpenAsync();
        await Expect(visit.Page.Locator("#live-behind")).ToContainTextAsync("not entered");
        await Expect(visit.Page.Locator("#live-behind")).ToContainTextAsync("The pot now: about");
        await visit.KeepPictureAsync("cooking-3-missed-check");
        await cook.EnterAsync("heat-lost", ("at", "02:10"), ("until", "04:40"), ("why", "power cut"));
        await Expect(visit.Page.Locator("#live-behind")).ToContainTextAsync("Without heat");
        await Expect(visit.Page.Locator("#live-behind")).ToContainTextAsync("The rest moves by");
        await Expect(visit.Page.Locator("#live-outlook")).ToContainTextAsync("later than planned");
        await visit.KeepPictureAsync("cooking-4-power-cut");

        await OfflineSpellAsync(cook, visit);
        await RestartAsync(app, cook, visit);

        // On to the straining.
        await cook.FollowAsync(step => step.Key.StartsWith("cool", StringComparison.Ordinal));
        await cook.EnterAsync("strained", ("strained", "9,5"));
        await CoolAsync(app, cook, visit);

        // Cold: the fat, the set, the portions, the record.
        await cook.FollowAsync(_ => false);
        await cook.EnterAsync("fat", ("fat", "410"));
        await cook.EnterAsync("refractometer", ("brix", "4,1"));
        await cook.EnterAsync("set-felt", ("body", "firm-jelly"));
        await cook.EnterAsync("portioned", ("portioned", "9,1"));
        await visit.KeepPictureAsync("cooking-8-finished");
        await cook.EnterAsync("closed", ("next-time", "Start an hour earlier; lid a little more shut."), ("attended", "3,5"));
        await cook.OpenAsync();
        await Expect(visit.Page.Locator("#live-closed")).ToContainTextAsync("Start an hour earlier");
        await Expect(visit.Page.Locator("#live-closed table")).ToContainTextAsync("9.1");
        await visit.AssertFitsWidthAsync();
        await visit.KeepPictureAsync("cooking-9-closed");
        await RecordAsync(cook, visit);

        // Every entry once, numbered without a gap.
        int[] numbers = [.. (await cook.LogAsync()).Select(entry => entry.GetProperty("number").GetInt32())];
        Assert.Equal(Enumerable.Range(1, cook.Entered), numbers);
    }

    private static async Task OfflineSpellAsync(Cook cook, Visit visit)
    {
        await visit.Context.SetOfflineAsync(true);
        await cook.SendAsync("level", ("below", "14"));
        await cook.SendAsync("water", ("water", "1,5"));
        await cook.SendAsync("note", ("text", "All the lights are back."));
        await Expect(cook.Waiting).ToHaveCountAsync(3);
        await visit.KeepPictureAsync("cooking-5-offline");
        await visit.Context.SetOfflineAsync(false);
        await cook.ArrivedAsync(3);
        Assert.Equal("level water note", string.Join(' ', (await cook.LogAsync()).TakeLast(3).Select(entry => entry.GetProperty("kind").GetString())));
    }

    private static async Task RestartAsync(ClockedApp app, Cook cook, Visit visit)
    {
        await app.StopAsync();
        await cook.SendAsync("skimmed");
        await Expect(cook.Waiting).ToHaveCountAsync(1);
        app.Start();
        await visit.Page.Clock.FastForwardAsync(30_000);
        await cook.ArrivedAsync(1);
        await Expect(cook.Waiting).ToHaveCountAsync(0);
    }

    private static async Task CoolAsync(ClockedApp app, Cook cook, Visit visit)
    {
        await cook.EnterAsync("cooling-began", ("method", "Pot in the sink"));
        DateTimeOffset began = app.Clock.GetUtcNow();
        ILocator watch = visit.Page.Locator("#live-cooling");
        async Task ReadAsync(int minutes, string degrees)
        {
            await cook.MoveToAsync(began + TimeSpan.FromMinutes(minutes));
            await cook.OpenAsync();
            await cook.EnterAsync("temperature", ("degrees", degrees), ("place", "cooling"), ("probe", "P1"));
        }

        await ReadAsync(2, "78");
        await ReadAsync(25, "66");
        await ReadAsync(50, "57");
        await ReadAsync(90, "46");
        await ReadAsync(120, "38");

        // 57 °C at 50 minutes: 21 °C is due at 170, and at this pace it will not be there.
        await Expect(watch.Locator(".cooling-alarm")).ToBeVisibleAsync();
        await visit.KeepPictureAsync("cooking-6-cooling-warning");
        await cook.EnterAsync("correction-made", ("action", "keep-cooling"), ("text", "Ice bath, stirred"));
        await ReadAsync(145, "27");
        await ReadAsync(166, "20,5");
        await Expect(watch.Locator("table.stages")).ToContainTextAsync("to spare");
        await ReadAsync(240, "11");
        await ReadAsync(400, "4,8");
        await Expect(watch).ToContainTextAsync("Meets", new LocatorAssertionsToContainTextOptions { IgnoreCase = true });
        await visit.KeepPictureAsync("cooking-7-cold");
    }

    private static async Task RecordAsync(Cook cook, Visit visit)
    {
        await visit.Page.GotoAsync($"{cook.Address}/record");
        await Expect(visit.Page.GetByRole(AriaRole.Article)).ToContainTextAsync("Europe/London");
        foreach (string paper in (string[])["A4", "Letter"])
        {
            byte[] sheet = await visit.Page.PdfAsync(new PagePdfOptions { Format = paper, PreferCSSPageSize = false });
            int pages = PageObject().Count(Encoding.Latin1.GetString(sheet));
            Assert.True(pages is 1 or 2, $"The record takes {pages} {paper} pages.");
        }

        await visit.KeepPictureAsync("cooking-10-record");
    }

    [GeneratedRegex("^in (?:9|10).min", RegexOptions.None, 1000)]
    private static partial Regex InTenMinutes();

    [GeneratedRegex(@"/Type\s*/Page\b(?!s)", RegexOptions.None, 1000)]
    private static partial Regex PageObject();

    /// <summary>The cook with the phone: enters things, waits until they are in, moves on in time.</summary>
    private sealed partial class Cook(ClockedApp app, Visit visit)
    {
        private readonly StovePage stove = new(visit.Page);

        /// <summary>Entries made so far.</summary>
        public int Entered { get; private set; }

        /// <summary>Address of the batch.</summary>
        public string Address { get; private set; } = "";

        public ILocator Waiting => stove.Waiting;

        public async Task StartAsync(string plan, string name, string who)
        {
            await visit.Page.GotoAsync(plan);
            await visit.Page.GetByRole(AriaRole.Link, new() { Name = "Start this batch" }).First.ClickAsync();
            await visit.Page.Locator("[name=name]").FillAsync(name);
            await visit.Page.Locator("[name=who]").FillAsync(who);
            await visit.Page.GetByLabel("Now", new PageGetByLabelOptions { Exact = true }).CheckAsync();
            ILocator rule = visit.Page.GetByLabel("Cooling limit");
            await rule.SelectOptionAsync(new SelectOptionValue { Label = await rule.Locator("option", new() { HasTextString = "Food Code" }).First.InnerTextAsync() });
            await visit.Page.GetByRole(AriaRole.Button, new() { Name = "Start the batch" }).ClickAsync();
            await Expect(visit.Page.Locator("#stove")).ToBeVisibleAsync();
            Address = new Uri(visit.Page.Url).AbsolutePath;
            await stove.ReadyForOfflineAsync();
        }

        /// <summary>App and phone alike; the page sleeps meanwhile and wakes now.</summary>
        public async Task MoveToAsync(DateTimeOffset moment)
        {
            TimeSpan ahead = app.Clock.MoveTo(moment);
            await visit.Page.Clock.FastForwardAsync((long)ahead.TotalMilliseconds);
        }

        public async Task OpenAsync()
        {
            try
            {
                await visit.Page.GotoAsync(Address);
            }
            catch (PlaywrightException aborted) when (aborted.Message.Contains("ERR_ABORTED", StringComparison.Ordinal) || aborted.Message.Contains("interrupted by another navigation", StringComparison.Ordinal))
            {
                // The page woke and was fetching itself anew at that moment.
                await visit.Page.GotoAsync(Address);
            }

            await Expect(visit.Page.Locator("#stove")).ToBeVisibleAsync();
        }

        /// <summary>The step to do now or next.</summary>
        public async Task<Step> NextAsync()
        {
            ILocator now = visit.Page.Locator("#live-now");
            string at = (await now.Locator("time[data-countdown]").First.GetAttributeAsync("datetime"))!;
            return new Step(
                (await now.Locator("form input[name=step]").First.GetAttributeAsync("value"))!,
                DateTimeOffset.Parse(at, CultureInfo.InvariantCulture, DateTimeStyles.AssumeUniversal),
                await now.InnerTextAsync());
        }

        /// <summary>Does every step at its hour until one the cook stops at; at a check reads the level and adds what is asked.</summary>
        public async Task FollowAsync(Func<Step, bool> stops)
        {
            for (int i = 0; i < 80; i++)
            {
                await OpenAsync();
                if (await visit.Page.Locator("#live-now form").CountAsync() == 0)
                {
                    return;
                }

                Step step = await NextAsync();
                if (stops(step))
                {
                    return;
                }

                if (step.At > app.Clock.GetUtcNow())
                {
                    await MoveToAsync(step.At);
                    await OpenAsync();
                    step = await NextAsync();
                }

                if (step.Key.StartsWith("check", StringComparison.Ordinal))
                {
                    // The level read is the visit: the step is done with it.
                    await CheckAsync(step);
                    continue;
                }

                await visit.Page.Locator("#live-now form button").ClickAsync();
                await ArrivedAsync(1);
            }

            Assert.Fail("The steps do not come to an end.");
        }

        /// <summary>Makes an entry and waits until the server has it.</summary>
        public async Task EnterAsync(string kind, params (string Field, string Value)[] fields)
        {
            await SendAsync(kind, fields);
            await ArrivedAsync(1);
        }

        /// <summary>Makes an entry.</summary>
        public async Task SendAsync(string kind, params (string Field, string Value)[] fields)
        {
            ILocator form = await stove.UnfoldAsync(kind);
            foreach ((string field, string value) in fields)
            {
                ILocator input = form.Locator($"[name={field}]");
                if (string.Equals(await input.First.GetAttributeAsync("type"), "radio", StringComparison.Ordinal))
                {
                    await form.Locator($"[name={field}][value={value}]").CheckAsync();
                }
                else if (await input.First.EvaluateAsync<bool>("element => element.tagName === 'SELECT'"))
                {
                    await input.SelectOptionAsync(value);
                }
                else
                {
                    if (!await input.IsVisibleAsync())
                    {
                        await form.Locator("details.when > summary").ClickAsync();
                    }

                    await input.FillAsync(value);
                }
            }

            await form.GetByRole(AriaRole.Button).ClickAsync();
        }

        /// <summary>Waits until so many more entries are in the log and on the page.</summary>
        public async Task ArrivedAsync(int more)
        {
            Entered += more;
            await Expect(visit.Page.Locator("#stove")).ToHaveAttributeAsync("data-count", Entered.ToString(CultureInfo.InvariantCulture), new() { Timeout = 30_000 });
        }

        public async Task<List<JsonElement>> LogAsync()
        {
            IAPIResponse answer = await visit.Context.APIRequest.GetAsync($"{Address}/log.json");
            using JsonDocument document = JsonDocument.Parse(await answer.TextAsync());
            return [.. document.RootElement.GetProperty("entries").EnumerateArray().Select(entry => entry.Clone())];
        }

        private async Task CheckAsync(Step step)
        {
            Match level = LevelAsked().Match(step.Text);
            Assert.True(level.Success, step.Text);
            double found = double.Parse(level.Groups["cm"].Value, CultureInfo.InvariantCulture) + 0.3;
            await EnterAsync("level", ("below", found.ToString("0.0", CultureInfo.InvariantCulture)));
            if (WaterAsked().IsMatch(step.Text))
            {
                await EnterAsync("water", ("water", "1"));
            }
        }

        [GeneratedRegex("should stand (?<cm>[0-9.]+).cm below", RegexOptions.ExplicitCapture, 1000)]
        private static partial Regex LevelAsked();

        [GeneratedRegex("Add about", RegexOptions.None, 1000)]
        private static partial Regex WaterAsked();

        internal sealed record Step(string Key, DateTimeOffset At, string Text);
    }
}
