using Microsoft.Playwright;

namespace Stockwright.Journeys.Running;

/// <summary>
/// The Chromium of the machine, started once for all journeys. It is never downloaded: where there is none, journeys skip
/// and say why. A Chromium that is named but is not there, or that does not start, fails them.
/// </summary>
public sealed class ChromiumFixture : IAsyncLifetime
{
    /// <summary>Names the program, where it lies elsewhere; <c>none</c> skips the browser journeys.</summary>
    public const string Variable = "STOCKWRIGHT_CHROMIUM";

    private const string Missing =
        $"No Chromium to browse with. Install the package chromium, or name the program in {Variable}, to run the browser journeys.";

    private static readonly string[] Usual = ["/usr/bin/chromium", "/usr/bin/chromium-browser"];

    /// <summary>A name that leads to this machine but, unlike an address of it, does not count as it: plain HTTP to it is insecure.</summary>
    public const string InsecureHost = WebProcess.InsecureHost;

    // Root needs --no-sandbox; the rest keeps the browser from calling out on its own.
    private static readonly string[] Flags =
    [
        "--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking", "--disable-component-update", "--disable-sync",
        $"--host-resolver-rules=MAP {InsecureHost} 127.0.0.1",
    ];

    private IPlaywright? playwright;
    private IBrowser? browser;

    public async ValueTask InitializeAsync()
    {
        if (Find() is not { } program)
        {
            return;
        }

        Assertions.SetDefaultExpectTimeout(20_000);
        playwright = await Playwright.CreateAsync();
        browser = await playwright.Chromium.LaunchAsync(new BrowserTypeLaunchOptions { ExecutablePath = program, Headless = true, Args = Flags });
    }

    public async ValueTask DisposeAsync()
    {
        if (browser is not null)
        {
            await browser.DisposeAsync();
        }

        playwright?.Dispose();
    }

    /// <summary>A visitor with a browser profile of their own; skips the test where there is no Chromium.</summary>
    /// <param name="app">The app to visit.</param>
    /// <param name="width">Width of the page, CSS pixels.</param>
    /// <param name="dark">True for a visitor who prefers dark pages.</param>
    /// <param name="scripts">False for a visitor without scripts.</param>
    internal Task<Visit> VisitAsync(AppFixture app, int width = Visit.PhoneWidth, bool dark = false, bool scripts = true) =>
        VisitAsync(app.Address, width, dark, scripts);

    /// <summary>The same for an app at an address.</summary>
    internal async Task<Visit> VisitAsync(Uri address, int width = Visit.PhoneWidth, bool dark = false, bool scripts = true)
    {
        if (browser is null)
        {
            Assert.Skip(Missing);
        }

        IBrowserContext context = await browser.NewContextAsync(new BrowserNewContextOptions
        {
            BaseURL = address.ToString(),
            ViewportSize = new ViewportSize { Width = width, Height = width == Visit.PhoneWidth ? 844 : 900 },
            ColorScheme = dark ? ColorScheme.Dark : ColorScheme.Light,
            JavaScriptEnabled = scripts,
            Locale = "en-GB",
        });
        // Whole seconds are lost on two busy cores: what is timed on purpose has a clock of its own.
        context.SetDefaultTimeout(60_000);
        return new Visit(context, await context.NewPageAsync());
    }

    private static string? Find()
    {
        string? named = Environment.GetEnvironmentVariable(Variable);
        return string.Equals(named, "none", StringComparison.Ordinal) ? null
            : string.IsNullOrWhiteSpace(named) ? Usual.FirstOrDefault(File.Exists)
            : File.Exists(named) ? named
            : throw new InvalidOperationException($"{Variable} names {named}, which is not there.");
    }
}
