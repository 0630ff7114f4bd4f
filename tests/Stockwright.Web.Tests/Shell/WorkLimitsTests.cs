using System.Net;
using System.Text.Json;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Http.Timeouts;
using Microsoft.AspNetCore.Mvc.Testing;
using Microsoft.AspNetCore.RateLimiting;
using Microsoft.AspNetCore.Routing;
using Microsoft.AspNetCore.TestHost;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Options;
using Stockwright.Web.Features.Planning;
using Stockwright.Web.Shell;
using Stockwright.Web.Tests.Features.Cooking;
using Xunit;

namespace Stockwright.Web.Tests.Shell;

/// <summary>Few plans at a time and ten seconds at most, so many writes from one address: who is under the limits, and what is answered when they are reached.</summary>
public sealed class WorkLimitsTests : IAsyncLifetime
{
    private const string FromAddress = "test-from";

    private readonly BatchApp app = new();
    private readonly TaskCompletionSource finish = new(TaskCreationOptions.RunContinuationsAsynchronously);
    private readonly WebApplicationFactory<Program> busy;
    private readonly HttpClient client;
    private int working;
    private volatile bool isBusy;

    public WorkLimitsTests()
    {
        busy = app.WithWebHostBuilder(builder => builder.ConfigureTestServices(services =>
        {
            services.AddSingleton<IStartupFilter>(new SenderFilter());

            // However slow the machine that runs the tests: nothing is stopped unless a test asks for it.
            services.PostConfigure<RequestTimeoutOptions>(timeouts => timeouts.AddPolicy(WorkLimits.Dear, TimeSpan.FromMinutes(10)));

            // Works until it may finish, or until nobody waits for it any more.
            services.AddSingleton<JudgeStock>((_, _, _, cancellationToken) =>
            {
                if (isBusy)
                {
                    Interlocked.Increment(ref working);
                    finish.Task.Wait(cancellationToken);
                }

                return null;
            });
        }));
        client = busy.CreateClient(new WebApplicationFactoryClientOptions { AllowAutoRedirect = false });
        client.Timeout = Timeout.InfiniteTimeSpan;
    }

    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    public ValueTask InitializeAsync() => ValueTask.CompletedTask;

    public async ValueTask DisposeAsync()
    {
        finish.TrySetResult();
        client.Dispose();
        await busy.DisposeAsync();
        await app.DisposeAsync();
    }

    [Theory]
    [InlineData("/plan", true)]
    [InlineData("/plan/print", true)]
    [InlineData("/plans/{Id}", true)]
    [InlineData("/cooling", true)]
    [InlineData("/api/plans", true)]
    [InlineData("/api/cooling", true)]
    [InlineData("/", false)]
    [InlineData("/batches/{Id}", false)]
    [InlineData("/batches/{id:guid}/log", false)]
    [InlineData("/batches/{id:guid}/events", false)]
    [InlineData("/events", false)]
    [InlineData("/api/batches/{id:guid}/entries", false)]
    public void Plans_and_cooling_stand_under_the_limits_and_the_stove_does_not(string pattern, bool isLimited)
    {
        Endpoint endpoint = Assert.Single(
            busy.Services.GetRequiredService<EndpointDataSource>().Endpoints.OfType<RouteEndpoint>(),
            one => string.Equals('/' + one.RoutePattern.RawText!.TrimStart('/'), pattern, StringComparison.Ordinal));

        Assert.Equal(isLimited ? WorkLimits.Dear : null, endpoint.Metadata.GetMetadata<EnableRateLimitingAttribute>()?.PolicyName);
        Assert.Equal(isLimited ? WorkLimits.Dear : null, endpoint.Metadata.GetMetadata<RequestTimeoutAttribute>()?.PolicyName);
    }

    [Fact]
    public async Task When_too_many_plans_wait_the_next_is_asked_to_come_back_and_an_entry_is_taken()
    {
        string batch = await StartedAsync();
        isBusy = true;
        const int TooMany = 5;
        List<Task<HttpResponseMessage>> plans = [.. Enumerable.Range(0, WorkLimits.AtOnce + WorkLimits.Waiting + TooMany).Select(_ => AskAsync("/plan"))];

        // Whichever come last are refused at once; the others work or wait.
        await UntilAsync(() => plans.Count(plan => plan.IsCompleted) == TooMany && working == WorkLimits.AtOnce);
        HttpResponseMessage page = await plans.First(plan => plan.IsCompleted);
        using StringContent body = new("{}", System.Text.Encoding.UTF8, "application/json");
        using HttpResponseMessage document = await client.PostAsync(new Uri("/api/cooling", UriKind.Relative), body, Stop);
        using HttpResponseMessage entry = await client.PostAsync(new Uri($"{batch}/log", UriKind.Relative), Entry(), Stop);

        Assert.Equal(HttpStatusCode.ServiceUnavailable, page.StatusCode);
        Assert.Equal("2", Assert.Single(page.Headers.GetValues("Retry-After")));
        Assert.Equal("text/html", page.Content.Headers.ContentType!.MediaType);
        string html = await page.Content.ReadAsStringAsync(Stop);
        Assert.Contains("<h1>Busy just now</h1>", html, StringComparison.Ordinal);
        Assert.Contains("href=\"/plan", html, StringComparison.Ordinal);
        Assert.Equal((HttpStatusCode.ServiceUnavailable, "application/problem+json"), (document.StatusCode, document.Content.Headers.ContentType!.MediaType));
        Assert.Equal("2", Assert.Single(document.Headers.GetValues("Retry-After")));
        Assert.Equal(HttpStatusCode.Created, entry.StatusCode);
        Assert.Equal(WorkLimits.AtOnce, working);

        finish.SetResult();
        HttpStatusCode[] answers = [.. (await Task.WhenAll(plans)).Select(answer => answer.StatusCode).Order()];
        Assert.Equal([.. Enumerable.Repeat(HttpStatusCode.OK, plans.Count - TooMany), .. Enumerable.Repeat(HttpStatusCode.ServiceUnavailable, TooMany)], answers);
    }

    [Fact]
    public async Task A_plan_that_takes_too_long_is_stopped_and_the_next_gets_its_turn()
    {
        RequestTimeoutPolicy real = app.Services.GetRequiredService<IOptions<RequestTimeoutOptions>>().Value.Policies[WorkLimits.Dear];
        Assert.Equal(TimeSpan.FromSeconds(10), real.Timeout);
        using HttpClient hurried = busy.WithWebHostBuilder(builder => builder.ConfigureTestServices(services => services.PostConfigure<RequestTimeoutOptions>(timeouts => timeouts.AddPolicy(
            WorkLimits.Dear,
            new RequestTimeoutPolicy { Timeout = TimeSpan.FromSeconds(2), TimeoutStatusCode = real.TimeoutStatusCode, WriteTimeoutResponse = real.WriteTimeoutResponse })))).CreateClient();

        // The first time the page is compiled.
        using (await hurried.GetAsync(new Uri("/plan", UriKind.Relative), Stop))
        {
            isBusy = true;
        }

        for (int i = 0; i < 2 * WorkLimits.AtOnce; i++)
        {
            using HttpResponseMessage page = await hurried.GetAsync(new Uri("/plan", UriKind.Relative), Stop);

            Assert.Equal(HttpStatusCode.ServiceUnavailable, page.StatusCode);
            Assert.Contains("<h1>That took too long</h1>", await page.Content.ReadAsStringAsync(Stop), StringComparison.Ordinal);
            Assert.Single(page.Headers.GetValues("Retry-After"));
        }

        Assert.Equal(2 * WorkLimits.AtOnce, working);
    }

    [Fact]
    public async Task An_outbox_after_an_evening_without_a_network_passes_and_a_flood_does_not()
    {
        Uri nowhere = new($"/batches/{Guid.CreateVersion7()}/log", UriKind.Relative);
        int passed = 0;
        HttpResponseMessage answer;
        while ((answer = await FromAsync("192.0.2.7", nowhere)).StatusCode == HttpStatusCode.NotFound && passed < 10_000)
        {
            passed++;
        }

        Assert.InRange(passed, WorkLimits.WritesAtOnce, 9_999);
        Assert.Equal((HttpStatusCode.TooManyRequests, "application/problem+json"), (answer.StatusCode, answer.Content.Headers.ContentType!.MediaType));
        Assert.InRange(int.Parse(Assert.Single(answer.Headers.GetValues("Retry-After")), System.Globalization.CultureInfo.InvariantCulture), 1, 60);
        using JsonDocument said = JsonDocument.Parse(await answer.Content.ReadAsStringAsync(Stop));
        Assert.Contains("sent from this address", said.RootElement.GetProperty("detail").GetString(), StringComparison.Ordinal);

        // Another address is not held to it, nor is reading.
        Assert.Equal(HttpStatusCode.NotFound, (await FromAsync("192.0.2.8", nowhere)).StatusCode);
        using HttpRequestMessage reads = new(HttpMethod.Get, "/kitchen") { Headers = { { FromAddress, "192.0.2.7" } } };
        Assert.Equal(HttpStatusCode.OK, (await client.SendAsync(reads, Stop)).StatusCode);
    }

    [Theory]
    [InlineData("192.0.2.7", "192.0.2.7")]
    [InlineData("::ffff:192.0.2.7", "192.0.2.7")]
    [InlineData("127.0.0.1", "127.0.0.1")]
    [InlineData("::1", "::1")]
    [InlineData("2001:db8:1:2:aaaa::1", "20010DB800010002")]
    [InlineData("2001:db8:1:2:bbbb::2", "20010DB800010002")]
    [InlineData("2001:db8:1:3:bbbb::2", "20010DB800010003")]
    public void A_sender_is_an_address_or_a_network_of_64_bits(string address, string sender) => Assert.Equal(sender, WorkLimits.Sender(IPAddress.Parse(address)));

    private static FormUrlEncodedContent Entry() => new(new Dictionary<string, string>(StringComparer.Ordinal)
    {
        ["entry"] = Guid.CreateVersion7().ToString(),
        ["kind"] = "note",
        ["text"] = "It smells right.",
    });

    private static async Task UntilAsync(Func<bool> holds)
    {
        while (!holds())
        {
            await Task.Delay(10, Stop);
        }
    }

    private async Task<string> StartedAsync()
    {
        using HttpClient browser = busy.CreateClient(new WebApplicationFactoryClientOptions { AllowAutoRedirect = false, HandleCookies = true });
        return await BatchApp.StartAsync(browser);
    }

    private async Task<HttpResponseMessage> AskAsync(string link) => await client.GetAsync(new Uri(link, UriKind.Relative), Stop);

    private async Task<HttpResponseMessage> FromAsync(string address, Uri link)
    {
        using HttpRequestMessage request = new(HttpMethod.Post, link) { Content = Entry(), Headers = { { FromAddress, address } } };
        return await client.SendAsync(request, Stop);
    }

    /// <summary>In memory there is no address; the tests say which.</summary>
    private sealed class SenderFilter : IStartupFilter
    {
        public Action<IApplicationBuilder> Configure(Action<IApplicationBuilder> next) => app =>
        {
            app.Use((context, rest) =>
            {
                if (IPAddress.TryParse(context.Request.Headers[FromAddress], out IPAddress? address))
                {
                    context.Connection.RemoteIpAddress = address;
                }

                return rest(context);
            });
            next(app);
        };
    }
}
