using System.Data.Common;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Mvc.Testing;
using Microsoft.AspNetCore.TestHost;
using Microsoft.EntityFrameworkCore.Diagnostics;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Logging;
using Stockwright.Storage;
using Stockwright.Web.Tests.Shell;
using Xunit;
using static Stockwright.Web.Tests.Features.Cooking.BatchApp;

namespace Stockwright.Web.Tests.Features.Cooking.Stove;

/// <summary>A reader who leaves Today while its batches are read, at each of the reads in turn: nothing for the log.</summary>
public sealed class TodayHungUpTests : IAsyncDisposable
{
    private readonly BatchApp inner = new();
    private readonly RememberingLog log = new();
    private readonly HangUpAt hangUp = new();
    private readonly WebApplicationFactory<Program> app;

    public TodayHungUpTests() => app = inner.WithWebHostBuilder(builder => builder.ConfigureTestServices(services =>
    {
        services.AddSingleton<ILoggerProvider>(log);
        services.ConfigureDbContext<StockwrightContext>(options => options.AddInterceptors(hangUp));
    }));

    [Fact]
    public async Task A_visit_broken_off_at_any_read_of_the_database_logs_nothing()
    {
        using HttpClient browser = app.CreateClient(new WebApplicationFactoryClientOptions { AllowAutoRedirect = false, HandleCookies = true });
        await StartAsync(browser, "First");
        await StartAsync(browser, "Second");
        int reads = 0;
        while (await IsBrokenOffAsync(reads + 1))
        {
            reads++;
        }

        // The kitchen, the list of batches, each batch and its log, the saved plans.
        Assert.InRange(reads, 8, 100);
        Assert.Empty(log.Lines);
    }

    private async Task<bool> IsBrokenOffAsync(int read)
    {
        using CancellationTokenSource gone = new();
        hangUp.Begin(read, gone);
        HttpContext answer = await app.Server.SendAsync(
            context =>
            {
                context.Request.Method = "GET";
                context.Request.Host = new HostString("localhost");
                context.Request.Path = "/";
                context.RequestAborted = gone.Token;
            },
            TestContext.Current.CancellationToken);
        using StreamReader reader = new(answer.Response.Body);
        string html = await reader.ReadToEndAsync(TestContext.Current.CancellationToken);
        Assert.Equal(!gone.IsCancellationRequested, html.Contains("id=\"today\"", StringComparison.Ordinal));
        return gone.IsCancellationRequested;
    }

    public async ValueTask DisposeAsync()
    {
        await app.DisposeAsync();
        await inner.DisposeAsync();
    }

    /// <summary>Breaks the request off before one of its reads, after the thread was given back, as a slow disk would.</summary>
    private sealed class HangUpAt : DbCommandInterceptor
    {
        private int left;
        private CancellationTokenSource? reader;

        public void Begin(int read, CancellationTokenSource gone) => (left, reader) = (read, gone);

        public override async ValueTask<InterceptionResult<DbDataReader>> ReaderExecutingAsync(
            DbCommand command, CommandEventData eventData, InterceptionResult<DbDataReader> result, CancellationToken cancellationToken = default)
        {
            await Task.Yield();
            if (--left == 0 && reader is not null)
            {
                await reader.CancelAsync();
            }

            return result;
        }
    }
}
