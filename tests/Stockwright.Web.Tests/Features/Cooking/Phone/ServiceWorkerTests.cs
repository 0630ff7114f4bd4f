using System.Net;
using System.Text.RegularExpressions;
using Xunit;

namespace Stockwright.Web.Tests.Features.Cooking.Phone;

/// <summary>The service worker and the one page it keeps.</summary>
public sealed class ServiceWorkerTests(StockwrightFactory app)
{
    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    [Fact]
    public async Task The_worker_is_a_script_of_the_whole_site_that_is_asked_for_anew_each_time()
    {
        using HttpResponseMessage answer = await app.Reader().GetAsync(new Uri("/sw.js", UriKind.Relative), Stop);
        Assert.Equal("text/javascript", answer.Content.Headers.ContentType?.MediaType);
        Assert.True(answer.Headers.CacheControl?.NoCache);
        string script = await answer.Content.ReadAsStringAsync(Stop);
        Assert.Matches("^const version = \"[0-9a-f]{16}\";\n", script);
        Assert.Contains("addEventListener(\"fetch\"", script, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_offline_page_names_everything_its_scripts_bring_in()
    {
        string page = await TextAsync("/offline");
        Assert.Contains("<noscript>", page, StringComparison.Ordinal);
        HashSet<string> named = [.. Regex.Matches(page, "(href|src)=\"(?<file>[^\"]+\\.(js|css|svg))\"", RegexOptions.ExplicitCapture, TimeSpan.FromSeconds(1)).Select(match => "/" + match.Groups["file"].Value.TrimStart('/'))];
        Assert.NotEmpty(named);
        string stove = Assert.Single(named, name => Regex.IsMatch(name, @"^/js/stove(\.[^/]*)?\.js$", RegexOptions.ExplicitCapture, TimeSpan.FromSeconds(1)));

        // Whatever a script of the page imports must be kept too, or the page stays dead without a network.
        Queue<string> scripts = new([stove]);
        HashSet<string> seen = [];
        while (scripts.TryDequeue(out string? script))
        {
            string text = await TextAsync(script);
            foreach (Match import in Regex.Matches(text, "(from |import\\(|import )\"\\./(?<file>[^\"]+)\"", RegexOptions.ExplicitCapture, TimeSpan.FromSeconds(1)))
            {
                string needed = $"/js/{import.Groups["file"].Value}";
                Assert.Contains(needed, named);
                if (seen.Add(needed))
                {
                    scripts.Enqueue(needed);
                }
            }
        }

        Assert.Contains("/js/outbox.js", seen);
        foreach (string name in named)
        {
            using HttpResponseMessage answer = await app.Reader().GetAsync(new Uri(name, UriKind.Relative), Stop);
            Assert.Equal((name, HttpStatusCode.OK), (name, answer.StatusCode));
        }
    }

    private async Task<string> TextAsync(string address)
    {
        using HttpResponseMessage answer = await app.Reader().GetAsync(new Uri(address, UriKind.Relative), Stop);
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        return await answer.Content.ReadAsStringAsync(Stop);
    }
}
