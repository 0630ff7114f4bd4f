using Microsoft.AspNetCore.Http;
using Xunit;

namespace Stockwright.Web.Tests.Shell;

/// <summary>Requests whose own headers cannot be read are refused in words before anything trips over them.</summary>
public sealed class UnreadableRequestTests(StockwrightFactory app)
{
    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    [Theory]
    [InlineData("localhost:99999", "/")]
    [InlineData("localhost:99999", "/api/batches")]
    [InlineData("localhost:65536", "/kitchen")]
    [InlineData("localhost:abc", "/plan")]
    [InlineData("", "/")]
    [InlineData("", "/openapi/v1.json")]
    [InlineData("[::1", "/")]
    [InlineData("a b", "/no-such-page")]
    public async Task A_host_that_is_no_address_answers_400(string host, string path)
    {
        (int status, string text) = await AskAsync(context =>
        {
            context.Request.Method = "GET";
            context.Request.Path = path;
            context.Request.Host = new HostString(host);
        });
        Assert.Equal(StatusCodes.Status400BadRequest, status);
        Assert.Contains("Host", text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("localhost")]
    [InlineData("localhost:65535")]
    [InlineData("127.0.0.1:5140")]
    [InlineData("[::1]:8080")]
    public async Task A_host_that_is_an_address_is_served(string host)
    {
        (int status, _) = await AskAsync(context =>
        {
            context.Request.Method = "GET";
            context.Request.Path = "/";
            context.Request.Host = new HostString(host);
        });
        Assert.Equal(StatusCodes.Status200OK, status);
    }

    // Names that can be read, but are not this machine's: HostTests holds what is allowed.
    [Theory]
    [InlineData("kitchen_pc.local")]
    [InlineData("küche.example")]
    public async Task A_host_that_can_be_read_is_refused_by_its_name_alone(string host)
    {
        (int status, string text) = await AskAsync(context =>
        {
            context.Request.Method = "GET";
            context.Request.Path = "/";
            context.Request.Host = new HostString(host);
        });
        Assert.Equal(StatusCodes.Status400BadRequest, status);
        Assert.Contains("does not answer to the name " + host, text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("/kitchen/pots/new", "application/x-www-form-urlencoded; charset=utf-7")]
    [InlineData("/kitchen/pots/new", "multipart/form-data; boundary=x; charset=UTF-7")]
    [InlineData("/plans/new", "application/x-www-form-urlencoded; charset=\"utf-7\"")]
    [InlineData("/calendar/renew", "application/x-www-form-urlencoded; charset=utf-7")]
    [InlineData("/batches/00000000-0000-0000-0000-000000000001/log", "application/x-www-form-urlencoded; charset=utf-7")]
    public async Task A_form_in_utf_7_is_refused_and_told_what_to_send(string path, string contentType)
    {
        (int status, string text) = await AskAsync(context =>
        {
            context.Request.Method = "POST";
            context.Request.Path = path;
            context.Request.Host = new HostString("localhost");
            context.Request.ContentType = contentType;
            context.Request.Body = new MemoryStream("name=x"u8.ToArray());
        });
        Assert.Equal(StatusCodes.Status415UnsupportedMediaType, status);
        Assert.Contains("UTF-8", text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("/api/plans")]
    [InlineData("/api/cooling")]
    public async Task A_body_cut_short_on_its_way_is_told_so_and_no_failure(string path)
    {
        (int status, string text) = await AskAsync(context =>
        {
            context.Request.Method = "POST";
            context.Request.Path = path;
            context.Request.Host = new HostString("localhost");
            context.Request.ContentType = "application/json";
            context.Request.Body = new CutShort();
        });
        Assert.Equal(StatusCodes.Status400BadRequest, status);
        Assert.Contains("Send it again", text, StringComparison.Ordinal);
    }

    private async Task<(int Status, string Text)> AskAsync(Action<HttpContext> ask)
    {
        HttpContext answer = await app.Server.SendAsync(ask, Stop);
        using StreamReader reader = new(answer.Response.Body);
        return (answer.Response.StatusCode, await reader.ReadToEndAsync(Stop));
    }

    /// <summary>Ends as the server's own body does when the line breaks.</summary>
    private sealed class CutShort : MemoryStream
    {
        public override ValueTask<int> ReadAsync(Memory<byte> buffer, CancellationToken cancellationToken = default) =>
            throw new BadHttpRequestException("Unexpected end of request content.");
    }
}
