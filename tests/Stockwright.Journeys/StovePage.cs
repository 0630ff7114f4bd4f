using System.Text.Json;
using Microsoft.Playwright;
using Stockwright.Journeys.Running;
using static Microsoft.Playwright.Assertions;

namespace Stockwright.Journeys;

/// <summary>The page of a batch, as a cook at the stove uses it.</summary>
internal sealed class StovePage(IPage page)
{
    private const string Start = "/batches/start?recipe=white-chicken";

    public IPage Page => page;

    public ILocator Waiting => page.Locator("#outbox li[data-waiting]");

    public ILocator Refused => page.Locator("#outbox form.refused");

    public ILocator Log => page.Locator("#live-log");

    /// <summary>Starts a batch that begins now, and stands at its stove page.</summary>
    public static async Task<StovePage> StartAsync(Visit visit, Uri? home = null)
    {
        await visit.Page.GotoAsync(home is null ? Start : new Uri(home, Start).AbsoluteUri);
        await visit.Page.GetByRole(AriaRole.Button, new() { Name = "Start the batch" }).ClickAsync();
        await Expect(visit.Page.Locator("#stove")).ToBeVisibleAsync();
        return new StovePage(visit.Page);
    }

    /// <summary>Waits until the page can be opened again without a network.</summary>
    public async Task ReadyForOfflineAsync() =>
        await page.WaitForFunctionAsync("async () => { await navigator.serviceWorker.ready; return navigator.serviceWorker.controller !== null; }");

    public async Task EnterAsync(string kind, string field, string value)
    {
        ILocator form = await UnfoldAsync(kind);
        await form.Locator($"[name={field}]").FillAsync(value);
        await form.GetByRole(AriaRole.Button).ClickAsync();
    }

    /// <summary>Something one tap enters.</summary>
    public async Task TapAsync(string kind, int times = 1)
    {
        ILocator form = await UnfoldAsync(kind);
        await form.GetByRole(AriaRole.Button).ClickAsync(new LocatorClickOptions { ClickCount = times });
    }

    /// <summary>The form of a kind of entry, unfolded.</summary>
    public async Task<ILocator> UnfoldAsync(string kind)
    {
        ILocator form = page.Locator($"form[data-entry]:has(> input[name=kind][value={kind}])").Last;
        foreach (string fold in (string[])["#fold-else", "#fold-close", $"#tile-{kind}"])
        {
            ILocator details = page.Locator($"{fold}:not([open]):has(input[name=kind][value={kind}])");
            if (await details.CountAsync() > 0)
            {
                await details.Locator("> summary").ClickAsync();
            }
        }

        return form;
    }

    /// <summary>What the server has: kind, key and the rest of each entry, in order of receipt.</summary>
    public static async Task<List<JsonElement>> StoredAsync(AppFixture app, Uri stove)
    {
        string text = await app.Client.GetStringAsync(new Uri($"{stove.AbsolutePath}/log.json", UriKind.Relative), TestContext.Current.CancellationToken);
        using JsonDocument document = JsonDocument.Parse(text);
        return [.. document.RootElement.GetProperty("entries").EnumerateArray().Select(entry => entry.Clone())];
    }
}
