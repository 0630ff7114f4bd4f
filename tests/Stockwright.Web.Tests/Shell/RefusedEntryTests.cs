using System.Net;
using Stockwright.Web.Tests.Features.Cooking;
using Xunit;
using static Stockwright.Web.Tests.Features.Cooking.BatchApp;
using static Stockwright.Web.Tests.KeepingApp;

namespace Stockwright.Web.Tests.Shell;

public sealed class RefusedEntryTests : IDisposable
{
    private const string Token = "__RequestVerificationToken";

    private readonly BatchApp app = new();

    public void Dispose() => app.Dispose();

    [Fact]
    public async Task An_entry_with_a_lost_token_comes_back_filled_in_is_not_stored_and_can_be_sent_again()
    {
        using HttpClient browser = app.Browser();
        string address = await StartAsync(browser);
        Page refused = await EnterAsync(browser, address, "water-", ("water", "1.5"), ("who", "CD"), (Token, "nonsense"));
        Assert.Equal(HttpStatusCode.BadRequest, refused.Status);
        Assert.Equal("1.5", refused.FormById("water-")!["water"]);
        Assert.Equal("CD", refused.FormById("water-")!["who"]);
        Assert.Contains("Not stored", refused.Text, StringComparison.Ordinal);
        Assert.Equal(0, (await LogAsync(browser, address)).GetProperty("entries").GetArrayLength());

        Dictionary<string, string> again = refused.FormById("again")!;
        Assert.Equal("1.5", again["water"]);
        Assert.Equal(HttpStatusCode.SeeOther, (await PostAsync(browser, address, again)).Status);
        Assert.Equal(1, (await LogAsync(browser, address)).GetProperty("entries").GetArrayLength());
    }

    [Fact]
    public async Task A_form_too_large_is_answered_by_a_page_with_the_limit_and_a_way_back()
    {
        app.UseKestrel(0);
        app.StartServer();
        using HttpClient known = app.CreateClient();

        // However busy the machine, the body waits for the answer to its head: sent all the same, it would meet a closed connection.
        using SocketsHttpHandler patient = new() { Expect100ContinueTimeout = TimeSpan.FromMinutes(5) };
        using HttpClient browser = new(patient) { BaseAddress = known.BaseAddress };
        using HttpRequestMessage message = new(HttpMethod.Post, "/kitchen/pots/new")
        {
            Content = new MultipartFormDataContent { { new ByteArrayContent(new byte[31_000_000]), "photo", "pot.jpg" } },
        };

        message.Headers.ExpectContinue = true;
        Page answer = await Page.ReadAsync(await browser.SendAsync(message, TestContext.Current.CancellationToken));
        Assert.Equal(HttpStatusCode.RequestEntityTooLarge, answer.Status);

        // Microsoft.AspNetCore.Server.Kestrel: KestrelServerLimits.MaxRequestBodySize is 30,000,000 bytes unless set.
        Assert.Contains("30 MB", answer.Text, StringComparison.Ordinal);
        Assert.Contains("href=\"/kitchen/pots/new\"", answer.Html, StringComparison.Ordinal);
    }
}
