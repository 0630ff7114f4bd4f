using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Mvc.Testing;
using Microsoft.AspNetCore.TestHost;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Logging;
using Stockwright.Web.Features.Kitchen;
using Xunit;

namespace Stockwright.Web.Tests.Shell;

/// <summary>A reader who goes away while the page is being made: nobody's fault, and nothing for the log.</summary>
public sealed class HungUpTests : IAsyncDisposable
{
    private readonly StockwrightFactory inner = new();
    private readonly RememberingLog log = new();
    private readonly WebApplicationFactory<Program> app;

    public HungUpTests() => app = inner.WithWebHostBuilder(builder => builder.ConfigureTestServices(services =>
    {
        services.AddSingleton<ILoggerProvider>(log);
        services.AddSingleton<IKitchenSource, SlowKitchen>();
    }));

    public static TheoryData<string> Pages => new(
        "/", "/plan?recipe=lamb", "/plan/print?recipe=lamb", "/plans", "/plans/new?recipe=lamb", "/recipes", "/recipes/lamb", "/larder", "/larder/onion", "/larder/onion/edit", "/strength",
        "/cooling", "/keeping", "/kitchen", "/kitchen/pots/pot-10", "/kitchen/hobs/new", "/kitchen/ovens/new", "/kitchen/trays/new", "/kitchen/site", "/kitchen/weigh", "/batches", "/batches/start?recipe=lamb");

    [Theory]
    [MemberData(nameof(Pages))]
    public async Task A_visit_broken_off_at_the_first_look_or_halfway_logs_nothing(string page)
    {
        foreach (bool halfway in (bool[])[false, true])
        {
            using CancellationTokenSource gone = new();
            if (!halfway)
            {
                await gone.CancelAsync();
            }

            string[] parts = page.Split('?');
            HttpContext answer = await app.Server.SendAsync(
                context =>
                {
                    context.Request.Method = "GET";
                    context.Request.Host = new HostString("localhost");
                    context.Request.Path = parts[0];
                    context.Request.QueryString = new QueryString(parts.Length > 1 ? "?" + parts[1] : "");
                    context.RequestAborted = gone.Token;
                    context.Items[SlowKitchen.HangUp] = halfway ? gone : null;
                },
                TestContext.Current.CancellationToken);
            using StreamReader reader = new(answer.Response.Body);
            await reader.ReadToEndAsync(TestContext.Current.CancellationToken);
        }

        Assert.Empty(log.Lines);
    }

    [Theory]
    [MemberData(nameof(Pages))]
    public async Task What_a_page_loads_may_take_its_time(string page)
    {
        using HttpClient reader = app.CreateClient();
        using HttpResponseMessage answer = await reader.GetAsync(new Uri(page, UriKind.Relative), TestContext.Current.CancellationToken);
        string html = await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken);
        Assert.Equal(StatusCodes.Status200OK, (int)answer.StatusCode);
        Assert.Contains("<h1", html, StringComparison.Ordinal);
        Assert.DoesNotContain("There is nothing at this address", html, StringComparison.Ordinal);
        Assert.Empty(log.Lines);
    }

    public async ValueTask DisposeAsync()
    {
        await app.DisposeAsync();
        await inner.DisposeAsync();
    }

    /// <summary>Comes back later, as a source over a network would; the reader may be gone by then.</summary>
    private sealed class SlowKitchen(IServiceProvider services, IHttpContextAccessor contexts) : IKitchenSource
    {
        public const string HangUp = "hang-up";

        private readonly Stockwright.Web.Features.Kitchen.StoredKitchenSource stored = ActivatorUtilities.CreateInstance<Stockwright.Web.Features.Kitchen.StoredKitchenSource>(services);

        public async ValueTask<PlanningInputs> LoadAsync(CancellationToken cancellationToken)
        {
            await Task.Yield();
            if (contexts.HttpContext?.Items[HangUp] is CancellationTokenSource gone)
            {
                await gone.CancelAsync();
            }

            cancellationToken.ThrowIfCancellationRequested();
            return await stored.LoadAsync(cancellationToken);
        }
    }
}
