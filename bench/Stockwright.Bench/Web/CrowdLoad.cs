using System.Collections.Concurrent;
using System.Diagnostics;
using System.Globalization;
using System.Net;
using Stockwright.Journeys.Running;

namespace Stockwright.Bench.Web;

/// <summary>Twenty readers ask for dear plans over and over while a cook makes entries and looks at the stove: how long those wait.</summary>
internal static class CrowdLoad
{
    private const int Readers = 20;
    private const int Entries = 60;
    private const double LimitMilliseconds = 200;

    // Every question that is asked beside a plan: cuts to try, and what to add to make it set.
    private const string Dear = "/plan?recipe=brown-chicken&goal=litres&litres=3.5&more-0-cut=chicken-feet&more-0-kg=0.3&set=firm&set-0-cut=chicken-feet&set-0-price=4&set-1-cut=chicken-wings&set-1-price=6&set-2-cut=pig-trotters&set-2-price=5&hours=";

    public static async Task<int> RunAsync(TextWriter output)
    {
        DirectoryInfo data = Directory.CreateTempSubdirectory("stockwright-crowd-");
        try
        {
            Guid batch = (await StartedBatches.MakeAsync(data, 1, CancellationToken.None))[0];
            await using WebProcess app = await WebProcess.StartAsync(data, CancellationToken.None);
            using SocketsHttpHandler handler = new() { MaxConnectionsPerServer = 2 * Readers };
            using HttpClient client = new(handler) { BaseAddress = app.Address, Timeout = TimeSpan.FromSeconds(60) };
            for (int i = 0; i < 5; i++)
            {
                await client.GetStringAsync(new Uri(Dear + "5", UriKind.Relative));
                await SentEntry.New(batch, i).PostAsync(client, CancellationToken.None);
                await client.GetStringAsync(new Uri($"/batches/{batch}", UriKind.Relative));
            }

            return await MeasureAsync(output, client, batch);
        }
        finally
        {
            Microsoft.Data.Sqlite.SqliteConnection.ClearAllPools();
            data.Delete(recursive: true);
        }
    }

    private static async Task<int> MeasureAsync(TextWriter output, HttpClient client, Guid batch)
    {
        ConcurrentDictionary<HttpStatusCode, int> answers = [];
        ConcurrentBag<double> plans = [];
        using CancellationTokenSource end = new();
        Task[] readers = [.. Enumerable.Range(0, Readers).Select(reader => ReadOnAsync(client, reader, answers, plans, end.Token))];
        List<double> posts = [];
        List<double> looks = [];
        int stored = 0;
        await Task.Delay(500, CancellationToken.None);
        for (int i = 0; i < Entries; i++)
        {
            long asked = Stopwatch.GetTimestamp();
            stored += (await SentEntry.New(batch, 100 + i).PostAsync(client, CancellationToken.None)).IsStored ? 1 : 0;
            posts.Add(Stopwatch.GetElapsedTime(asked).TotalMilliseconds);
            if (i % 5 == 0)
            {
                asked = Stopwatch.GetTimestamp();
                await client.GetStringAsync(new Uri($"/batches/{batch}", UriKind.Relative));
                looks.Add(Stopwatch.GetElapsedTime(asked).TotalMilliseconds);
            }

            await Task.Delay(100, CancellationToken.None);
        }

        await end.CancelAsync();
        await Task.WhenAll(readers);
        bool holds = stored == Entries && posts.Max() < LimitMilliseconds;
        await output.WriteLineAsync(string.Create(CultureInfo.InvariantCulture, $"""
            | {Readers} readers of dear plans at once | value | limit |
            | --- | ---: | ---: |
            | entries stored | {stored} of {Entries} | all |
            | an entry, median | {posts.Order().ElementAt(posts.Count / 2):0} ms | |
            | an entry, slowest | {posts.Max():0} ms | {LimitMilliseconds:0} ms |
            | the batch looked at, median | {looks.Order().ElementAt(looks.Count / 2):0} ms | |
            | the batch looked at, slowest | {looks.Max():0} ms | |
            | plans answered | {answers.GetValueOrDefault(HttpStatusCode.OK)} | |
            | a plan answered, median | {plans.Order().ElementAtOrDefault(plans.Count / 2):0} ms | |
            | a plan answered, slowest | {plans.DefaultIfEmpty().Max():0} ms | |
            | asked to come back (503) | {answers.GetValueOrDefault(HttpStatusCode.ServiceUnavailable)} | |
            | other answers | {answers.Where(answer => answer.Key is not (HttpStatusCode.OK or HttpStatusCode.ServiceUnavailable)).Sum(answer => answer.Value)} | 0 |

            {(holds ? "holds" : "MISSED")}
            """));
        return holds ? 0 : 1;
    }

    private static async Task ReadOnAsync(HttpClient client, int reader, ConcurrentDictionary<HttpStatusCode, int> answers, ConcurrentBag<double> plans, CancellationToken end)
    {
        for (int number = 0; !end.IsCancellationRequested; number++)
        {
            // No two alike, as if somebody tried to keep the kitchen busy.
            string hours = (4 + (0.01 * ((reader * 37) + number))).ToString("0.00", CultureInfo.InvariantCulture);
            long asked = Stopwatch.GetTimestamp();
            using HttpResponseMessage answer = await client.GetAsync(new Uri(Dear + hours, UriKind.Relative), CancellationToken.None);
            await answer.Content.ReadAsStringAsync(CancellationToken.None);
            answers.AddOrUpdate(answer.StatusCode, 1, (_, count) => count + 1);
            if (answer.IsSuccessStatusCode)
            {
                plans.Add(Stopwatch.GetElapsedTime(asked).TotalMilliseconds);
            }
            else
            {
                await Task.Delay(250, CancellationToken.None);
            }
        }
    }
}
