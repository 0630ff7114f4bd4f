using System.Net;
using Stockwright.Web.Tests.Features.Cooking;
using Xunit;

namespace Stockwright.Web.Tests.Shell;

/// <summary>RFC 9110: section 9.3.2 for HEAD; RFC 9111, section 5.2.2, for the directives of Cache-Control.</summary>
public sealed class HeadAndCachingTests : IAsyncLifetime
{
    private readonly BatchApp app = new();
    private readonly HttpClient client;
    private string batch = "";

    public HeadAndCachingTests() => client = app.Browser();

    public async ValueTask InitializeAsync() => batch = await BatchApp.StartAsync(client);

    public async ValueTask DisposeAsync()
    {
        client.Dispose();
        await app.DisposeAsync();
    }

    [Theory]
    [InlineData("/")]
    [InlineData("/plan")]
    [InlineData("/larder")]
    [InlineData("/recipes/lamb")]
    [InlineData("/kitchen/pots/pot-10")]
    [InlineData("/nowhere")]
    [InlineData("/units/us")]
    [InlineData("/css/app.css")]
    [InlineData("/sw.js")]
    [InlineData("/openapi/v1.json")]
    [InlineData("/api/batches")]
    [InlineData("/api/nowhere")]
    [InlineData("{batch}")]
    [InlineData("{batch}/record")]
    [InlineData("{batch}/log.json")]
    [InlineData("{batch}/log.csv")]
    [InlineData("{batch}/calendar.ics")]
    public async Task Head_answers_as_get_does_without_the_body(string path)
    {
        string address = path.Replace("{batch}", batch, StringComparison.Ordinal);
        using HttpResponseMessage get = await SendAsync(HttpMethod.Get, address);
        using HttpResponseMessage head = await SendAsync(HttpMethod.Head, address);
        Assert.Equal(get.StatusCode, head.StatusCode);
        Assert.Equal(get.Content.Headers.ContentType?.ToString(), head.Content.Headers.ContentType?.ToString());
        Assert.Equal(get.Headers.CacheControl?.ToString(), head.Headers.CacheControl?.ToString());
        Assert.Equal(get.Headers.Location, head.Headers.Location);
        Assert.Empty(await head.Content.ReadAsByteArrayAsync(TestContext.Current.CancellationToken));
        long length = (await get.Content.ReadAsByteArrayAsync(TestContext.Current.CancellationToken)).Length;

        // Pages carry a fresh token and fresh keys, all of one length.
        Assert.Equal(length, head.Content.Headers.ContentLength ?? 0);
    }

    [Theory]
    [InlineData("/events")]
    [InlineData("{batch}/events")]
    public async Task Head_of_news_that_never_end_ends(string path)
    {
        using HttpResponseMessage head = await SendAsync(HttpMethod.Head, path.Replace("{batch}", batch, StringComparison.Ordinal));
        Assert.Equal(HttpStatusCode.OK, head.StatusCode);
        Assert.Equal("text/event-stream", head.Content.Headers.ContentType?.MediaType);
        Assert.Null(head.Content.Headers.ContentLength);
    }

    [Theory]
    [InlineData("/larder", false)]
    [InlineData("/plan", false)]
    [InlineData("/nowhere", false)]
    [InlineData("{batch}/record", false)]
    [InlineData("/kitchen/pots/pot-10", true)]
    [InlineData("{batch}", true)]
    public async Task Pages_are_kept_by_nobody_else_and_never_without_asking(string path, bool hasForm)
    {
        using HttpResponseMessage page = await SendAsync(HttpMethod.Get, path.Replace("{batch}", batch, StringComparison.Ordinal));
        Assert.Equal(hasForm, page.Headers.CacheControl!.NoStore);
        Assert.True(page.Headers.CacheControl.NoCache);
        Assert.Equal(!hasForm, page.Headers.CacheControl.Private);
        Assert.Contains("Cookie", page.Headers.Vary, StringComparer.OrdinalIgnoreCase);
    }

    [Fact]
    public async Task Files_keep_their_own_rules()
    {
        using HttpResponseMessage style = await SendAsync(HttpMethod.Get, "/css/app.css");
        Assert.DoesNotContain("Cookie", style.Headers.Vary, StringComparer.OrdinalIgnoreCase);
        Assert.False(style.Headers.CacheControl!.Private);
    }

    private async Task<HttpResponseMessage> SendAsync(HttpMethod method, string address)
    {
        using HttpRequestMessage message = new(method, address);
        return await client.SendAsync(message, TestContext.Current.CancellationToken).WaitAsync(TimeSpan.FromSeconds(60), TestContext.Current.CancellationToken);
    }
}
