using System.Net.ServerSentEvents;
using System.Runtime.CompilerServices;
using Stockwright.Web.Shell;

namespace Stockwright.Web.Features.Cooking;

/// <summary>How far a log has come.</summary>
/// <param name="Count">Entries in the log of the batch; batches and entries together where all are listened to. Never falls.</param>
internal sealed record NewsDocument(int Count);

/// <summary>
/// <c>/batches/{id}/events</c> and <c>/events</c>: server-sent events (WHATWG HTML, section 9.2). The first message says at once how far
/// the log has come, so that whoever was away learns that something was missed; then one for each time it grew.
/// </summary>
internal static class NewsEndpoint
{
    /// <summary>Type of the events that only say that the line is open. A comment would do for the line, but scripts are not told of comments.</summary>
    public const string Beat = "beat";

    /// <summary>Shorter than what proxies and phones take for silence.</summary>
    private static readonly TimeSpan BeatEvery = TimeSpan.FromSeconds(20);

    private static readonly TimeSpan TryAgainAfter = TimeSpan.FromSeconds(2);

    public static void MapNews(this IEndpointRouteBuilder app)
    {
        app.MapGet("/batches/{id:guid}/events", async (Guid id, HttpContext context, BatchStore batches, LogStore logs, BatchChanges news, TimeProvider clock, IHostApplicationLifetime lifetime) =>
            await batches.FindAsync(id, context.RequestAborted) is null
                ? Results.NotFound()
                : Answer(context, news, id, cancel => logs.CountAsync(id, cancel), clock, lifetime)).ExcludeFromDescription();

        app.MapGet("/events", (HttpContext context, LogStore logs, BatchChanges news, TimeProvider clock, IHostApplicationLifetime lifetime) =>
            Answer(context, news, null, logs.CountAllAsync, clock, lifetime)).ExcludeFromDescription();
    }

    private static IResult Answer(HttpContext context, BatchChanges news, Guid? batch, Func<CancellationToken, Task<int>> count, TimeProvider clock, IHostApplicationLifetime lifetime)
    {
        context.Response.Headers["X-Accel-Buffering"] = "no";
        if (HeadAsGet.Holds(context))
        {
            // The body, which is left out, would have no end.
            context.Response.ContentType = "text/event-stream";
            return Results.Empty;
        }

        return TypedResults.ServerSentEvents(TellAsync(news, batch, count, clock, context.RequestAborted, lifetime.ApplicationStopping));
    }

    private static async IAsyncEnumerable<SseItem<NewsDocument>> TellAsync(
        BatchChanges news,
        Guid? batch,
        Func<CancellationToken, Task<int>> count,
        TimeProvider clock,
        CancellationToken gone,
        [EnumeratorCancellation] CancellationToken stopping)
    {
        using CancellationTokenSource end = CancellationTokenSource.CreateLinkedTokenSource(gone, stopping);
        await using IAsyncEnumerator<Guid> listener = news.ListenAsync(batch, end.Token).GetAsyncEnumerator(end.Token);

        // Listening begins before counting: what comes between is told twice rather than not at all.
        Task<bool> next = listener.MoveNextAsync().AsTask();
        int last = -1;
        while (!end.IsCancellationRequested)
        {
            int now = await EndingAsync(count(end.Token), -1);
            if (now < 0)
            {
                break;
            }

            yield return now != last
                ? new SseItem<NewsDocument>(new NewsDocument(now)) { ReconnectionInterval = last < 0 ? TryAgainAfter : null }
                : new SseItem<NewsDocument>(new NewsDocument(now), Beat);
            last = now;
            await Task.WhenAny(next, Task.Delay(BeatEvery, clock, end.Token));
            if (next.IsCompleted)
            {
                if (!await EndingAsync(next, false))
                {
                    break;
                }

                next = listener.MoveNextAsync().AsTask();
            }
        }

        // The listener may only be let go when it is not in the middle of a step.
        await end.CancelAsync();
        await EndingAsync(next, false);
    }

    private static async Task<T> EndingAsync<T>(Task<T> task, T ended)
    {
        try
        {
            return await task;
        }
        catch (OperationCanceledException)
        {
            return ended;
        }
    }
}
