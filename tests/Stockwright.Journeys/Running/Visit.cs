using System.Collections.Concurrent;
using System.Text.RegularExpressions;
using Microsoft.Playwright;

namespace Stockwright.Journeys.Running;

/// <summary>One visitor's page, and what their browser complained of.</summary>
internal sealed class Visit : IAsyncDisposable
{
    public const int PhoneWidth = 390;
    public const int DeskWidth = 1280;

    private readonly ConcurrentQueue<string> complaints = new();

    public Visit(IBrowserContext context, IPage page)
    {
        Context = context;
        Page = page;
        page.PageError += (_, error) => complaints.Enqueue(error);
        page.Console += (_, message) =>
        {
            if (string.Equals(message.Type, "error", StringComparison.Ordinal))
            {
                complaints.Enqueue($"{message.Text} ({message.Location})");
            }
        };
        page.Response += (_, response) =>
        {
            if (response.Status >= 500)
            {
                complaints.Enqueue($"{response.Status} from {response.Url}");
            }
        };
    }

    public IPage Page { get; }

    /// <summary>Their browser: further pages, and whether it has a network.</summary>
    public IBrowserContext Context { get; }

    public ValueTask DisposeAsync() => Context.DisposeAsync();

    /// <summary>No script failed, no policy was broken, nothing was missing.</summary>
    public void AssertQuiet() => Assert.Empty(complaints);

    /// <summary>Nothing to be pushed sideways to be read.</summary>
    public async Task AssertFitsWidthAsync()
    {
        int[] widths = await Page.EvaluateAsync<int[]>("() => [document.documentElement.scrollWidth, document.documentElement.clientWidth]");
        Assert.True(widths[0] <= widths[1], $"The page is {widths[0]} px wide in a window of {widths[1]} px.");
    }

    /// <summary>Waits until the address holds a text.</summary>
    public Task ExpectInAddressAsync(string text) =>
        Assertions.Expect(Page).ToHaveURLAsync(new Regex(Regex.Escape(text), RegexOptions.None, TimeSpan.FromSeconds(1)));

    /// <summary>Keeps pictures of the first screenful and of the whole page, to be looked at.</summary>
    public async Task<FileInfo> KeepPictureAsync(string name)
    {
        string folder = Environment.GetEnvironmentVariable("STOCKWRIGHT_SCREENSHOTS") is { Length: > 0 } named
            ? named
            : Path.Combine(Path.GetTempPath(), "stockwright-screens");
        string first = Path.Combine(folder, name + ".png");
        await Page.ScreenshotAsync(new PageScreenshotOptions { Path = first });
        await Page.ScreenshotAsync(new PageScreenshotOptions { Path = Path.Combine(folder, name + "-whole.png"), FullPage = true });
        TestContext.Current.TestOutputHelper?.WriteLine(first);
        return new FileInfo(first);
    }
}
