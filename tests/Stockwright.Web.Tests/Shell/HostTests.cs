using System.Net;
using System.Net.NetworkInformation;
using Microsoft.AspNetCore.Mvc.Testing;
using Xunit;

namespace Stockwright.Web.Tests.Shell;

/// <summary>A page elsewhere can point its own name at this machine (DNS rebinding); the Host header then says that name.</summary>
public sealed class HostTests(KeepingApp app) : IClassFixture<KeepingApp>
{
    [Theory]
    [InlineData("localhost")]
    [InlineData("LOCALHOST:5140")]
    [InlineData("localhost.")]
    [InlineData("kitchen.localhost")]
    [InlineData("127.0.0.1:8080")]
    [InlineData("127.3.2.1")]
    [InlineData("[::1]:8080")]
    public async Task Names_of_this_machine_are_answered(string host) => Assert.Equal(HttpStatusCode.OK, (await AskAsync(app, host)).Status);

    [Fact]
    public async Task The_machines_own_name_and_addresses_are_answered()
    {
        string name = Dns.GetHostName();
        string[] addresses = [.. NetworkInterface.GetAllNetworkInterfaces().SelectMany(card => card.GetIPProperties().UnicastAddresses)
            .Select(own => own.Address).Where(own => own.ScopeIdOrZero() == 0).Select(own => own.AddressFamily is System.Net.Sockets.AddressFamily.InterNetworkV6 ? $"[{own}]" : own.ToString())];
        Assert.NotEmpty(addresses);
        foreach (string host in (string[])[name, $"{name.Split('.')[0]}.local", .. addresses])
        {
            Assert.True((await AskAsync(app, $"{host}:8080")).Status == HttpStatusCode.OK, host);
        }
    }

    [Theory]
    [InlineData("evil.example")]
    [InlineData("evil.example:5140")]
    [InlineData("localhost.evil.example")]
    [InlineData("127.0.0.1.evil.example")]
    [InlineData("203.0.113.7")]
    [InlineData("[2001:db8::7]")]
    public async Task Other_names_are_refused_with_a_sentence_that_names_the_setting(string host)
    {
        (HttpStatusCode status, string? type, string said) = await AskAsync(app, host);
        Assert.Equal(HttpStatusCode.BadRequest, status);
        Assert.Equal("text/plain", type);
        Assert.Contains("STOCKWRIGHT_HOSTS", said, StringComparison.Ordinal);
        Assert.DoesNotContain('<', said);
    }

    [Fact]
    public async Task Programs_are_refused_with_a_problem_document_and_nothing_is_read()
    {
        (HttpStatusCode status, string? type, string said) = await AskAsync(app, "evil.example", "/api/batches");
        Assert.Equal(HttpStatusCode.BadRequest, status);
        Assert.Equal("application/problem+json", type);
        Assert.Contains("STOCKWRIGHT_HOSTS", said, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Names_in_the_setting_and_in_the_addresses_are_answered()
    {
        using KeepingApp own = new();
        using WebApplicationFactory<Program> named = own.WithWebHostBuilder(host => host
            .UseSetting("STOCKWRIGHT_HOSTS", "stock.example.org, *.kitchen.example")
            .UseSetting("urls", "http://pantry.example.net:8080;http://*:8081"));
        foreach (string host in (string[])["stock.example.org", "a.kitchen.example:8080", "pantry.example.net:8080", "localhost"])
        {
            Assert.True((await AskAsync(named, host)).Status == HttpStatusCode.OK, host);
        }

        Assert.Equal(HttpStatusCode.BadRequest, (await AskAsync(named, "evil.example")).Status);
        using WebApplicationFactory<Program> any = own.WithWebHostBuilder(host => host.UseSetting("STOCKWRIGHT_HOSTS", "*"));
        Assert.Equal(HttpStatusCode.OK, (await AskAsync(any, "evil.example")).Status);
    }

    private static async Task<(HttpStatusCode Status, string? Type, string Said)> AskAsync(WebApplicationFactory<Program> app, string host, string address = "/larder")
    {
        using HttpClient client = app.Server.CreateClient();
        using HttpRequestMessage message = new(HttpMethod.Get, address);
        message.Headers.Host = host;
        using HttpResponseMessage answer = await client.SendAsync(message, TestContext.Current.CancellationToken);
        return (answer.StatusCode, answer.Content.Headers.ContentType?.MediaType, await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken));
    }
}

file static class Addresses
{
    /// <summary>Addresses that name an interface of this machine do not stand in links.</summary>
    public static long ScopeIdOrZero(this IPAddress address) => address.AddressFamily is System.Net.Sockets.AddressFamily.InterNetworkV6 ? address.ScopeId : 0;
}
