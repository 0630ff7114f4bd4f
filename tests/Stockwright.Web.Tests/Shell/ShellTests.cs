using System.Net;
using Xunit;

namespace Stockwright.Web.Tests.Shell;

public sealed class ShellTests(StockwrightFactory factory)
{
    private readonly HttpClient client = factory.Reader();

    [Theory]
    [InlineData("/plan")]
    [InlineData("/nowhere")]
    [InlineData("/api/nowhere")]
    [InlineData("/css/app.css")]
    public async Task Every_answer_allows_own_scripts_and_styles_only(string address)
    {
        using HttpResponseMessage response = await client.GetAsync(address, TestContext.Current.CancellationToken);
        string policy = Assert.Single(response.Headers.GetValues("Content-Security-Policy"));
        Assert.Contains("script-src 'self';", policy, StringComparison.Ordinal);
        Assert.Contains("frame-ancestors 'none'", policy, StringComparison.Ordinal);
        Assert.DoesNotContain("unsafe", policy, StringComparison.Ordinal);
        Assert.Equal("nosniff", Assert.Single(response.Headers.GetValues("X-Content-Type-Options")));
    }

    // The policy would block them; a page that carries any is broken.
    [Fact]
    public async Task Pages_carry_no_inline_styles_or_scripts()
    {
        string page = await client.GetStringAsync("/plan", TestContext.Current.CancellationToken);
        Assert.DoesNotContain(" style=", page, StringComparison.Ordinal);
        Assert.DoesNotContain("<style", page, StringComparison.Ordinal);
        Assert.DoesNotContain(" onclick=", page, StringComparison.Ordinal);
        Assert.Equal(page.Split("<script").Length, page.Split("<script src=").Length + page.Split("<script type=\"module\" src=").Length - 1);
    }

    [Fact]
    public async Task An_unknown_page_says_so_plainly()
    {
        using HttpResponseMessage response = await client.GetAsync("/nowhere", TestContext.Current.CancellationToken);
        Assert.Equal(HttpStatusCode.NotFound, response.StatusCode);
        Assert.Contains("nothing at this address", await response.Content.ReadAsStringAsync(TestContext.Current.CancellationToken), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Own_files_are_served_wherever_the_program_is_started()
    {
        string page = await client.GetStringAsync("/plan", TestContext.Current.CancellationToken);
        List<string> files = [.. page.Split('"').Where(part => part.EndsWith(".css", StringComparison.Ordinal) || part.EndsWith(".js", StringComparison.Ordinal))];
        Assert.True(files.Count >= 4, string.Join(' ', files));
        foreach (string file in files)
        {
            using HttpResponseMessage response = await client.GetAsync("/" + file, TestContext.Current.CancellationToken);
            Assert.True(response.IsSuccessStatusCode, file);
        }
    }
}
