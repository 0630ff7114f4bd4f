using System.Collections.Concurrent;
using System.Diagnostics;
using System.Globalization;
using System.Text;
using Stockwright.Journeys.Running;
using Stockwright.Web.Tests.Fuzz.Shared;

namespace Stockwright.Bench.Web;

/// <summary>
/// Hostile requests and requests within the stated ranges, over loopback, at the app as a process of its own on a fresh data folder.
/// Bounded in count and time. Fails when anything was our fault: a 5xx other than a turning away with Retry-After, an answer over two
/// seconds, an unhandled exception in the app's log.
/// </summary>
internal sealed class Attack
{
    private const int AtOnce = 4;
    private const int HostileEach = 2_500;
    private const int InRangeEach = 1_250;

    private static readonly TimeSpan SlowAnswer = TimeSpan.FromSeconds(2);
    private static readonly TimeSpan MostTime = TimeSpan.FromMinutes(14);

    private readonly ConcurrentDictionary<int, int> statuses = [];
    private readonly ConcurrentBag<(TimeSpan Took, string Request)> slowest = [];
    private readonly ConcurrentQueue<string> faults = [];
    private readonly TextWriter output;
    private readonly int seed;
    private int turnedAway;

    private Attack(TextWriter output, int seed)
    {
        this.output = output;
        this.seed = seed;
    }

    /// <summary>Runs with counts and seed as given after <c>attack</c>; 20,000 hostile and 10,000 in range when left out.</summary>
    public static async Task<int> RunAsync(TextWriter output, IReadOnlyList<string> numbers)
    {
        int Number(int place, int usual) => numbers.Count > place && int.TryParse(numbers[place], NumberStyles.None, CultureInfo.InvariantCulture, out int given) ? given : usual;
        Attack attack = new(output, Number(2, 1));
        return await attack.RunAsync(Math.Min(Number(0, 20_000), 100_000), Math.Min(Number(1, 10_000), 100_000));
    }

    private async Task<int> RunAsync(int hostile, int inRange)
    {
        using CancellationTokenSource end = new(MostTime);
        long started = Stopwatch.GetTimestamp();
        int hostileSent = 0;
        int inRangeSent = 0;
        int round = 0;
        int fields = 0;
        int ranges = 0;
        try
        {
            // Rounds on fresh data folders: thousands of pots and entries would be a kitchen nobody has.
            while (hostileSent < hostile || inRangeSent < inRange)
            {
                string units = round % 2 == 0 ? "metric" : "us";
                await using WebProcess app = await WebProcess.StartAsync(end.Token);
                // As from many phones: from one address most of what is posted would be turned away by the limit on writes.
                using SocketsHttpHandler handler = Phones.NewHandler();
                handler.AllowAutoRedirect = false;
                handler.UseCookies = false;
                handler.MaxConnectionsPerServer = 2 * AtOnce;
                using HttpClient http = new(handler) { BaseAddress = app.Address, Timeout = TimeSpan.FromSeconds(30) };
                FuzzSite site = await FuzzSite.ExploreAsync(http, units, end.Token);
                List<FuzzAnswer> failures = site.Failures;
                foreach (FuzzTarget target in site.Targets)
                {
                    await RangeFinder.FindAsync(target, failures, end.Token);
                }

                foreach (FuzzAnswer failure in failures)
                {
                    Count((int)failure.Status, failure.Took, failure.Request, failure.IsTurnedAway, timed: false);
                }

                fields = Math.Max(fields, site.Targets.Sum(target => target.Fields.Count(field => field.Kind != FieldKind.Hidden)));
                ranges = Math.Max(ranges, site.Targets.Sum(target => target.Ranges.Count));
                await output.WriteLineAsync(string.Create(CultureInfo.InvariantCulture, $"round {round + 1} ({units}): {site.Pages.Count} pages, {site.Targets.Count} forms and operations, {site.Targets.Sum(target => target.Ranges.Count)} ranges; {Stopwatch.GetElapsedTime(started).TotalSeconds:0} s"));

                int withinNow = Math.Min(InRangeEach, inRange - inRangeSent);
                await InRangeAsync(site, round, withinNow, end.Token);
                inRangeSent += withinNow;
                int hostileNow = Math.Min(HostileEach, hostile - hostileSent);
                await HostileAsync(app, http, site, hostileSent, hostileNow, end.Token);
                hostileSent += hostileNow;
                turnedAway += site.Client.TurnedAway;
                Read(app.Output);
                round++;
            }
        }
        catch (OperationCanceledException) when (end.IsCancellationRequested)
        {
            faults.Enqueue($"Not done after {MostTime.TotalMinutes.ToString("0", CultureInfo.InvariantCulture)} minutes.");
        }

        await ReportAsync(hostileSent, inRangeSent, fields, ranges, Stopwatch.GetElapsedTime(started));
        return faults.IsEmpty ? 0 : 1;
    }

    private async Task InRangeAsync(FuzzSite site, int round, int count, CancellationToken cancellationToken)
    {
        Random random = new(unchecked((seed * 1_000_003) - round));
        List<InRangeCase> cases = [.. site.Targets.SelectMany(InRangeCases.Alone)];
        random.Shuffle(System.Runtime.InteropServices.CollectionsMarshal.AsSpan(cases));
        cases = [.. cases.Take(count * 2 / 3)];
        while (cases.Count < count)
        {
            cases.Add(InRangeCases.Any(site.Targets, random));
        }

        // A form is used by one worker at a time, for it changes between opening and sending.
        ConcurrentDictionary<FuzzTarget, SemaphoreSlim> free = [];
        await Parallel.ForEachAsync(cases, new ParallelOptions { MaxDegreeOfParallelism = AtOnce, CancellationToken = cancellationToken }, async (one, stop) =>
        {
            SemaphoreSlim turn = free.GetOrAdd(one.Target, _ => new SemaphoreSlim(1, 1));
            await turn.WaitAsync(stop);
            try
            {
                FuzzAnswer answer = await one.Target.SendAsync(one.Changes, stop);
                Count((int)answer.Status, answer.Took, answer.Request, answer.IsTurnedAway, timed: true);
            }
            catch (HttpRequestException broken)
            {
                faults.Enqueue($"no answer ({broken.Message}): {one}");
            }
            finally
            {
                turn.Release();
            }
        });
    }

    private async Task HostileAsync(WebProcess app, HttpClient http, FuzzSite site, int first, int count, CancellationToken cancellationToken)
    {
        HostileRequests hostile = new(site);
        string[] pages = [.. site.Pages];
        await Parallel.ForEachAsync(Enumerable.Range(first, count), new ParallelOptions { MaxDegreeOfParallelism = AtOnce, CancellationToken = cancellationToken }, async (number, stop) =>
        {
            long asked = Stopwatch.GetTimestamp();
            if (number % 10 == 0)
            {
                (string raw, int said) = await RawRequests.SendAsync(app.Address, pages, seed, number, stop);
                Count(said, Stopwatch.GetElapsedTime(asked), raw, isTurnedAway: false, timed: true);
                return;
            }

            (HttpRequestMessage request, string text) = hostile.Make(seed, number);
            using (request)
            {
                request.RequestUri = new Uri($"{app.Address.GetLeftPart(UriPartial.Authority)}{request.RequestUri!.OriginalString["http://localhost".Length..]}", new UriCreationOptions { DangerousDisablePathAndQueryCanonicalization = true });
                try
                {
                    using HttpResponseMessage answer = await http.SendAsync(request, HttpCompletionOption.ResponseHeadersRead, stop);
                    if (answer.Content.Headers.ContentType?.MediaType is not "text/event-stream")
                    {
                        await answer.Content.ReadAsByteArrayAsync(stop);
                    }

                    bool away = answer.Headers.RetryAfter is not null && (int)answer.StatusCode is 429 or 503;
                    if (away)
                    {
                        Interlocked.Increment(ref turnedAway);
                    }

                    Count((int)answer.StatusCode, Stopwatch.GetElapsedTime(asked), text, away, timed: true);
                }
                catch (HttpRequestException)
                {
                    // The client itself refuses some of these, or the server closes without a word.
                    Count(0, Stopwatch.GetElapsedTime(asked), text, isTurnedAway: false, timed: true);
                }
            }
        });
    }

    private void Count(int status, TimeSpan took, string request, bool isTurnedAway, bool timed)
    {
        statuses.AddOrUpdate(status, 1, (_, count) => count + 1);
        if (status >= 500 && !isTurnedAway)
        {
            faults.Enqueue($"{status.ToString(CultureInfo.InvariantCulture)}: {request}");
        }

        if (timed)
        {
            slowest.Add((took, request));
            if (took > SlowAnswer)
            {
                faults.Enqueue(string.Create(CultureInfo.InvariantCulture, $"{took.TotalSeconds:0.0} s: {request}"));
            }
        }
    }

    private void Read(string log)
    {
        string[] lines = log.ReplaceLineEndings("\n").Split('\n');
        for (int index = 0; index < lines.Length; index++)
        {
            if (lines[index].StartsWith("fail:", StringComparison.Ordinal) || lines[index].StartsWith("crit:", StringComparison.Ordinal) || lines[index].Contains("nhandled exception", StringComparison.Ordinal))
            {
                faults.Enqueue("log: " + string.Join(" | ", lines.Skip(index).Take(6).Select(line => line.Trim())));
                index += 5;
            }
        }
    }

    private async Task ReportAsync(int hostile, int inRange, int fields, int ranges, TimeSpan took)
    {
        double[] sorted = [.. slowest.Select(one => one.Took.TotalMilliseconds).Order()];
        double At(double share) => sorted.Length == 0 ? 0 : sorted[(int)Math.Ceiling(share * sorted.Length) - 1];
        StringBuilder said = new();
        said.AppendLine(CultureInfo.InvariantCulture, $"\n| {hostile} hostile and {inRange} in-range requests, seed {seed}, {AtOnce} at once, in {took.TotalSeconds:0} s | value |\n| --- | ---: |");
        said.AppendLine(CultureInfo.InvariantCulture, $"| fields found | {fields} |\n| of them with a stated range | {ranges} |");
        foreach ((int status, int count) in statuses.OrderBy(pair => pair.Key))
        {
            said.AppendLine(CultureInfo.InvariantCulture, $"| {(status == 0 ? "closed without an answer, or by the client" : status)} | {count} |");
        }

        said.AppendLine(CultureInfo.InvariantCulture, $"| turned away with Retry-After | {turnedAway} |");
        said.AppendLine(CultureInfo.InvariantCulture, $"| an answer, median | {At(0.5):0} ms |\n| an answer, 95th percentile | {At(0.95):0} ms |\n| an answer, slowest | {At(1):0} ms |");
        said.AppendLine("\nSlowest:");
        foreach ((TimeSpan time, string request) in slowest.OrderByDescending(one => one.Took).Take(5))
        {
            said.AppendLine(CultureInfo.InvariantCulture, $"  {time.TotalMilliseconds:0} ms  {Short(request)}");
        }

        foreach (IGrouping<string, string> fault in faults.GroupBy(fault => fault, StringComparer.Ordinal).Take(100))
        {
            said.AppendLine("FAULT " + Short(fault.Key));
        }

        said.AppendLine(faults.IsEmpty ? "holds" : string.Create(CultureInfo.InvariantCulture, $"MISSED: {faults.Count} faults"));
        await output.WriteLineAsync(said.ToString());
    }

    private static string Short(string text) => text.Length > 1500 ? text[..1500] + "…" : text;
}
