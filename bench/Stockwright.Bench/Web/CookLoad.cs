using System.Collections.Concurrent;
using System.Diagnostics;
using System.Globalization;
using System.Text.Json.Nodes;
using Stockwright.Journeys.Running;

namespace Stockwright.Bench.Web;

/// <summary>
/// Two hundred cooks at forty pots for half an hour, told in a minute: each makes an entry every two to five minutes and looks at
/// the batch now and then. Our own bounded client over loopback; the app is a process of its own.
/// </summary>
internal static class CookLoad
{
    private const int Cooks = 200;
    private const int Batches = 40;
    private const double Faster = 30;
    private const double LimitMilliseconds = 100;

    private static readonly TimeSpan Told = TimeSpan.FromMinutes(30);

    public static async Task<int> RunAsync(TextWriter output)
    {
        DirectoryInfo data = Directory.CreateTempSubdirectory("stockwright-cooks-");
        try
        {
            IReadOnlyList<Guid> batches = await StartedBatches.MakeAsync(data, Batches, CancellationToken.None);
            await using WebProcess app = await WebProcess.StartAsync(data, CancellationToken.None);
            using SocketsHttpHandler handler = Phones.NewHandler();
            using HttpClient client = new(handler) { BaseAddress = app.Address, Timeout = TimeSpan.FromSeconds(60) };
            await WarmUpAsync(client, batches);
            return await MeasureAsync(output, app, client, batches);
        }
        catch (InvalidOperationException problem)
        {
            await output.WriteLineAsync(problem.Message);
            return 1;
        }
        finally
        {
            Microsoft.Data.Sqlite.SqliteConnection.ClearAllPools();
            data.Delete(recursive: true);
        }
    }

    private static async Task WarmUpAsync(HttpClient client, IReadOnlyList<Guid> batches)
    {
        foreach (Guid batch in batches)
        {
            await SentEntry.New(batch, 0).PostAsync(client, CancellationToken.None);
            await LookAsync(client, batch);
        }
    }

    private static async Task<int> MeasureAsync(TextWriter output, WebProcess app, HttpClient client, IReadOnlyList<Guid> batches)
    {
        ConcurrentBag<double> posts = [];
        ConcurrentBag<double> looks = [];
        ConcurrentDictionary<Guid, SentEntry> stored = [];
        int refused = 0;
        TimeSpan before = app.ProcessorTime;
        long started = Stopwatch.GetTimestamp();
        await Task.WhenAll(Enumerable.Range(0, Cooks).Select(async cook =>
        {
            // The same cooks on every run.
            Random random = new(cook);
            TimeSpan told = TimeSpan.FromSeconds(random.NextDouble() * 300);
            for (int number = 1; told < Told; number++)
            {
                TimeSpan wait = (told / Faster) - Stopwatch.GetElapsedTime(started);
                if (wait > TimeSpan.Zero)
                {
                    await Task.Delay(wait);
                }

                SentEntry entry = SentEntry.New(batches[cook % batches.Count], (cook * 1000) + number);
                long asked = Stopwatch.GetTimestamp();
                Acknowledgement answer = await entry.PostAsync(client, CancellationToken.None);
                posts.Add(Stopwatch.GetElapsedTime(asked).TotalMilliseconds);
                if (answer.IsStored)
                {
                    stored[entry.Key] = entry;
                }
                else
                {
                    Interlocked.Increment(ref refused);
                }

                if (random.Next(3) == 0)
                {
                    asked = Stopwatch.GetTimestamp();
                    await LookAsync(client, entry.Batch);
                    looks.Add(Stopwatch.GetElapsedTime(asked).TotalMilliseconds);
                }

                told += TimeSpan.FromSeconds(120 + (random.NextDouble() * 180));
            }
        }));
        double seconds = Stopwatch.GetElapsedTime(started).TotalSeconds;
        double work = (app.ProcessorTime - before).TotalSeconds;
        int lost = stored.Count - await FoundAsync(client, batches, stored);
        double[] sorted = [.. posts.Order()];
        double[] looked = [.. looks.Order()];
        bool holds = lost == 0 && refused == 0 && At(sorted, 0.95) < LimitMilliseconds;
        await output.WriteLineAsync(string.Create(CultureInfo.InvariantCulture, $"""
            | {Cooks} cooks, {Batches} batches, {Told.TotalMinutes:0} minutes told in {seconds:0} s | value | limit |
            | --- | ---: | ---: |
            | entries posted | {posts.Count} | |
            | acknowledged and not found | {lost} | 0 |
            | refused | {refused} | 0 |
            | a post, median | {At(sorted, 0.5):0.0} ms | |
            | a post, 95th percentile | {At(sorted, 0.95):0.0} ms | {LimitMilliseconds:0} ms |
            | a post, slowest | {sorted[^1]:0.0} ms | |
            | the batch looked at ({looked.Length} times), median | {At(looked, 0.5):0.0} ms | |
            | the batch looked at, 95th percentile | {At(looked, 0.95):0.0} ms | |
            | processor time of the app | {work:0.0} s | |
            | memory at the end | {app.WorkingSetBytes / 1e6:0} MB | |

            {(holds ? "holds" : "MISSED")}
            """));
        return holds ? 0 : 1;
    }

    private static async Task<int> FoundAsync(HttpClient client, IReadOnlyList<Guid> batches, ConcurrentDictionary<Guid, SentEntry> stored)
    {
        int found = 0;
        foreach (Guid batch in batches)
        {
            JsonNode answer = JsonNode.Parse(await client.GetStringAsync(new Uri($"/api/batches/{batch}", UriKind.Relative)))!;
            found += answer["entries"]!.AsArray().Count(entry =>
                stored.TryGetValue((Guid)entry!["entry"]!, out SentEntry? sent) && string.Equals(sent.Text, (string?)entry["fact"]!["text"], StringComparison.Ordinal));
        }

        return found;
    }

    private static async Task LookAsync(HttpClient client, Guid batch)
    {
        using HttpResponseMessage answer = await client.GetAsync(new Uri($"/batches/{batch}", UriKind.Relative));
        string page = await answer.Content.ReadAsStringAsync();
        if (!answer.IsSuccessStatusCode || !page.Contains("id=\"stove\"", StringComparison.Ordinal))
        {
            throw new InvalidOperationException($"The page of a batch answered {(int)answer.StatusCode}, so there is nothing to time.");
        }
    }

    /// <summary>The nearest-rank percentile.</summary>
    private static double At(double[] sorted, double share) => sorted.Length == 0 ? 0 : sorted[(int)Math.Ceiling(share * sorted.Length) - 1];
}
