using System.Diagnostics;
using System.Net;
using System.Net.ServerSentEvents;
using System.Text.Json;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Hosting;
using Stockwright.Logbook;
using Xunit;

namespace Stockwright.Web.Tests.Features.Cooking;

/// <summary>Events sent to pages. The three seconds are the project's own promise for a second device.</summary>
public sealed class NewsTests
{
    private static readonly TimeSpan Promised = TimeSpan.FromSeconds(3);

    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    [Fact]
    public async Task The_first_message_says_how_far_the_log_has_come_and_each_entry_is_told_within_three_seconds()
    {
        await using NewsApp app = new();
        Guid batch = await app.StartBatchAsync("Sunday");
        await app.EnterAsync(batch, new LogFact.Skimmed());
        await using Line line = await Line.OpenAsync(app, $"/batches/{batch}/events");
        Assert.Equal(1, await line.CountAsync());

        Stopwatch watch = Stopwatch.StartNew();
        await app.EnterAsync(batch, new LogFact.Noted("smells right"));
        Assert.Equal(2, await line.CountAsync());
        Assert.InRange(watch.Elapsed, TimeSpan.Zero, Promised);
    }

    [Fact]
    public async Task Whoever_was_away_learns_at_once_what_was_missed()
    {
        await using NewsApp app = new();
        Guid batch = await app.StartBatchAsync("Sunday");
        await using (Line line = await Line.OpenAsync(app, $"/batches/{batch}/events"))
        {
            Assert.Equal(0, await line.CountAsync());
        }

        for (int i = 0; i < 3; i++)
        {
            await app.EnterAsync(batch, new LogFact.Skimmed());
        }

        await using Line again = await Line.OpenAsync(app, $"/batches/{batch}/events");
        Assert.Equal(3, await again.CountAsync());
    }

    [Fact]
    public async Task Another_batch_is_not_news_but_the_today_page_hears_of_all()
    {
        await using NewsApp app = new();
        Guid mine = await app.StartBatchAsync("Mine");
        await using Line all = await Line.OpenAsync(app, "/events");
        await using Line line = await Line.OpenAsync(app, $"/batches/{mine}/events");
        Assert.Equal(1, await all.CountAsync());
        Assert.Equal(0, await line.CountAsync());

        Guid other = await app.StartBatchAsync("Other");
        Assert.Equal(2, await all.CountAsync());
        await app.EnterAsync(other, new LogFact.Skimmed());
        Assert.Equal(3, await all.CountAsync());
        await app.EnterAsync(mine, new LogFact.Skimmed());
        Assert.Equal(1, await line.CountAsync());
    }

    [Fact]
    public async Task The_line_is_kept_open_by_a_beat_that_scripts_hear()
    {
        await using NewsApp app = new();
        Guid batch = await app.StartBatchAsync("Sunday");
        await using Line line = await Line.OpenAsync(app, $"/batches/{batch}/events");
        Assert.Equal("message", (await line.NextAsync()).EventType);

        // Every 20 s by the app's timers, which run faster here.
        Stopwatch watch = Stopwatch.StartNew();
        Assert.Equal("beat", (await line.NextAsync()).EventType);
        Assert.InRange(watch.Elapsed, TimeSpan.FromSeconds(15.0 / NewsApp.TimersFasterBy), TimeSpan.FromSeconds(5));
    }

    /// <summary>Names of the headers: RFC 9111, 5.2.2.5 for no-store; the media type: WHATWG HTML, 9.2.5.</summary>
    [Fact]
    public async Task Nothing_between_may_keep_or_hold_back_events()
    {
        await using NewsApp app = new();
        Guid batch = await app.StartBatchAsync("Sunday");
        await using Line line = await Line.OpenAsync(app, $"/batches/{batch}/events");
        Assert.Equal("text/event-stream", line.Answer.Content.Headers.ContentType?.MediaType);
        Assert.True(line.Answer.Headers.CacheControl?.NoStore);
        Assert.Equal("no", Assert.Single(line.Answer.Headers.GetValues("X-Accel-Buffering")));

        using HttpResponseMessage missing = await app.Browser().GetAsync(new Uri($"/batches/{Guid.CreateVersion7()}/events", UriKind.Relative), Stop);
        Assert.Equal(HttpStatusCode.NotFound, missing.StatusCode);
    }

    [Fact]
    public async Task An_open_line_ends_when_the_server_stops()
    {
        await using NewsApp app = new();
        Guid batch = await app.StartBatchAsync("Sunday");
        await using Line line = await Line.OpenAsync(app, $"/batches/{batch}/events");
        Assert.Equal(0, await line.CountAsync());
        app.Services.GetRequiredService<IHostApplicationLifetime>().StopApplication();
        await line.EndAsync().WaitAsync(Promised, Stop);
    }

    /// <summary>An open line of events, as a browser has it.</summary>
    private sealed class Line : IAsyncDisposable
    {
        private readonly IAsyncEnumerator<SseItem<string>> items;

        private Line(HttpResponseMessage answer, Stream stream)
        {
            Answer = answer;
            items = SseParser.Create(stream).EnumerateAsync(Stop).GetAsyncEnumerator(Stop);
        }

        public HttpResponseMessage Answer { get; }

        public static async Task<Line> OpenAsync(NewsApp app, string address)
        {
            HttpResponseMessage answer = await app.Browser().GetAsync(new Uri(address, UriKind.Relative), HttpCompletionOption.ResponseHeadersRead, Stop);
            Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
            return new Line(answer, await answer.Content.ReadAsStreamAsync(Stop));
        }

        public async Task<SseItem<string>> NextAsync()
        {
            Assert.True(await items.MoveNextAsync().AsTask().WaitAsync(TimeSpan.FromSeconds(10), Stop), "The line ended.");
            return items.Current;
        }

        /// <summary>The count of the next message; beats are passed over.</summary>
        public async Task<int> CountAsync()
        {
            SseItem<string> item = await NextAsync();
            while (!string.Equals(item.EventType, "message", StringComparison.Ordinal))
            {
                item = await NextAsync();
            }

            using JsonDocument said = JsonDocument.Parse(item.Data);
            return said.RootElement.GetProperty("count").GetInt32();
        }

        public async Task EndAsync()
        {
            while (await items.MoveNextAsync())
            {
            }
        }

        public async ValueTask DisposeAsync()
        {
            Answer.Dispose();
            await items.DisposeAsync();
        }
    }
}
