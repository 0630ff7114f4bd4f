using System.Collections.Concurrent;
using System.Diagnostics;
using System.Net;
using System.Text.Json.Nodes;
using Microsoft.Data.Sqlite;
using Stockwright.Journeys.Running;
using Stockwright.Storage.Sqlite;

namespace Stockwright.Journeys;

/// <summary>What was answered as stored is there, whatever happens to the program or the disk. The app is a process of its own; no browser.</summary>
public sealed class ReliabilityTests
{
    private const int InFlight = 6;

    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Killed_in_the_middle_of_a_thousand_entries_it_keeps_every_one_it_acknowledged_once_and_whole()
    {
        const int Count = 1000;
        const int Kills = 3;
        DirectoryInfo data = Directory.CreateTempSubdirectory("stockwright-crash-");
        try
        {
            Guid batch = (await StartedBatches.MakeAsync(data, 1, Stop))[0];
            SentEntry[] entries = [.. Enumerable.Range(1, Count).Select(number => SentEntry.New(batch, number))];
            ConcurrentDictionary<Guid, Acknowledgement> acknowledged = [];
            int lost = 0;
            for (int life = 0; life <= Kills; life++)
            {
                await using WebProcess app = await WebProcess.StartAsync(data, Stop);
                using SocketsHttpHandler phones = Phones.NewHandler();
                using HttpClient client = new(phones) { BaseAddress = app.Address };

                // Dies at a random moment of its share of the stream; the last life finishes it.
                int dieAt = life == Kills ? int.MaxValue : acknowledged.Count + Random.Shared.Next(60, Count / (Kills + 1));
                using CancellationTokenSource dead = new();

                // Everything not acknowledged, and some that was: a phone that missed the answer sends it again.
                SentEntry[] toSend = [.. entries.Where(entry => !acknowledged.ContainsKey(entry.Key) || entry.Number % 10 == 0)];
                Task death = Task.CompletedTask;
                int dying = 0;
                await Parallel.ForEachAsync(toSend, new ParallelOptions { MaxDegreeOfParallelism = InFlight, CancellationToken = Stop }, async (entry, cancellationToken) =>
                {
                    if (dead.IsCancellationRequested)
                    {
                        return;
                    }

                    Acknowledgement answer = await entry.PostAsync(client, cancellationToken);
                    if (answer.IsStored)
                    {
                        Acknowledgement first = acknowledged.GetOrAdd(entry.Key, answer);
                        Assert.Equal((first.Number, first.ReceivedAt), (answer.Number, answer.ReceivedAt));
                        if (acknowledged.Count >= dieAt && Interlocked.Exchange(ref dying, 1) == 0)
                        {
                            death = app.KillAsync();
                            await dead.CancelAsync();
                        }
                    }
                    else
                    {
                        // Only death leaves an entry without an answer.
                        Assert.Equal(default, answer.Status);
                        Interlocked.Increment(ref lost);
                    }
                });
                await death;
            }

            Assert.Equal(Count, acknowledged.Count);
            TestContext.Current.TestOutputHelper?.WriteLine($"{lost} entries were cut off in flight by {Kills} kills.");
            Assert.Equal("ok", await OneAsync(data, "PRAGMA integrity_check"));
            await using WebProcess last = await WebProcess.StartAsync(data, Stop);
            using HttpClient reader = new() { BaseAddress = last.Address };
            JsonArray log = JsonNode.Parse(await reader.GetStringAsync(new Uri($"/batches/{batch}/log.json", UriKind.Relative), Stop))!["entries"]!.AsArray();
            Dictionary<Guid, SentEntry> sent = entries.ToDictionary(entry => entry.Key);
            Assert.Equal(Count, log.Count);
            Assert.Equal(Enumerable.Range(1, Count), log.Select(entry => (int)entry!["number"]!));
            foreach (JsonNode? entry in log)
            {
                Guid key = (Guid)entry!["entry"]!;
                Assert.Equal((acknowledged[key].Number, acknowledged[key].ReceivedAt), ((int)entry["number"]!, (string)entry["receivedAt"]!));
                Assert.Equal(sent[key].Text, (string?)entry["fact"]!["text"]);
            }
        }
        finally
        {
            SqliteConnection.ClearAllPools();
            data.Delete(recursive: true);
        }
    }

    [Fact]
    public async Task Twenty_posts_of_one_entry_at_once_are_stored_once_and_all_answers_agree_and_no_picture_loads_no_imaging()
    {
        DirectoryInfo data = Directory.CreateTempSubdirectory("stockwright-twenty-");
        try
        {
            Guid batch = (await StartedBatches.MakeAsync(data, 1, Stop))[0];
            await using WebProcess app = await WebProcess.StartAsync(data, Stop);
            using SocketsHttpHandler phones = Phones.NewHandler();
            using HttpClient client = new(phones) { BaseAddress = app.Address };
            for (int number = 1; number <= 5; number++)
            {
                SentEntry entry = SentEntry.New(batch, number);
                Acknowledgement[] answers = await Task.WhenAll(Enumerable.Range(0, 20).Select(_ => entry.PostAsync(client, Stop)));
                Assert.Equal(1, answers.Count(answer => answer.Status == HttpStatusCode.Created));
                Assert.All(answers, answer => Assert.Equal((true, number, answers[0].ReceivedAt), (answer.IsStored, answer.Number, answer.ReceivedAt)));
            }

            Assert.Equal("5", await OneAsync(data, "SELECT count(*) FROM LogEntries"));

            // The program is tight in memory; the imaging library comes with the first picture.
            if (OperatingSystem.IsLinux())
            {
                Assert.DoesNotContain("Skia", await File.ReadAllTextAsync($"/proc/{app.ProcessId}/maps", Stop), StringComparison.OrdinalIgnoreCase);
            }

            Assert.DoesNotContain("fail:", app.Output, StringComparison.Ordinal);
        }
        finally
        {
            SqliteConnection.ClearAllPools();
            data.Delete(recursive: true);
        }
    }

    [Fact]
    public async Task On_a_full_disk_it_says_so_and_acknowledges_nothing_it_did_not_store()
    {
        Assert.SkipUnless(OperatingSystem.IsLinux() && Environment.IsPrivilegedProcess, "Mounting a small disk needs Linux and root.");
        DirectoryInfo disk = Directory.CreateTempSubdirectory("stockwright-full-");
        if (Run("mount", "-t", "tmpfs", "-o", "size=3m", "stockwright-test", disk.FullName) != 0)
        {
            disk.Delete();
            Assert.Skip("This machine does not let us mount a small disk.");
        }

        try
        {
            DirectoryInfo data = disk.CreateSubdirectory("data");
            Guid batch = (await StartedBatches.MakeAsync(data, 1, Stop))[0];
            SqliteConnection.ClearAllPools();
            await using (WebProcess app = await WebProcess.StartAsync(data, Stop))
            {
                using SocketsHttpHandler phones = Phones.NewHandler();
                using HttpClient client = new(phones) { BaseAddress = app.Address };
                string filler = Path.Combine(disk.FullName, "filler");
                Fill(filler);
                List<SentEntry> stored = [];
                SentEntry? refused = null;
                for (int number = 1; number <= 3000 && refused is null; number++)
                {
                    SentEntry entry = SentEntry.New(batch, number);
                    Acknowledgement answer = await entry.PostAsync(client, Stop);
                    if (answer.IsStored)
                    {
                        stored.Add(entry);
                    }
                    else
                    {
                        Assert.Equal(HttpStatusCode.ServiceUnavailable, answer.Status);
                        refused = entry;
                    }
                }

                Assert.NotNull(refused);
                using FormUrlEncodedContent form = new([KeyValuePair.Create("entry", refused.Key.ToString()), KeyValuePair.Create("kind", "note"), KeyValuePair.Create("text", refused.Text)]);
                using HttpResponseMessage again = await client.PostAsync(new Uri($"/batches/{batch}/log", UriKind.Relative), form, Stop);
                JsonNode problem = JsonNode.Parse(await again.Content.ReadAsStringAsync(Stop))!;
                Assert.Equal("application/problem+json", again.Content.Headers.ContentType?.MediaType);
                Assert.Contains("full", (string)problem["detail"]!, StringComparison.Ordinal);
                Assert.Equal(stored.Count.ToString(System.Globalization.CultureInfo.InvariantCulture), await OneAsync(data, "SELECT count(*) FROM LogEntries"));

                File.Delete(filler);
                Assert.Equal(HttpStatusCode.Created, (await refused.PostAsync(client, Stop)).Status);
            }

            Assert.Equal("ok", await OneAsync(data, "PRAGMA integrity_check"));
        }
        finally
        {
            SqliteConnection.ClearAllPools();
            Assert.Equal(0, Run("umount", disk.FullName));
            disk.Delete();
        }
    }

    /// <summary>A small load, for correctness alone; the timed one is <c>bench -- cooks</c>, see docs/speed.md.</summary>
    [Fact]
    public async Task Forty_cooks_at_eight_pots_lose_nothing()
    {
        DirectoryInfo data = Directory.CreateTempSubdirectory("stockwright-cooks-");
        try
        {
            IReadOnlyList<Guid> batches = await StartedBatches.MakeAsync(data, 8, Stop);
            await using WebProcess app = await WebProcess.StartAsync(data, Stop);
            using SocketsHttpHandler phones = Phones.NewHandler();
            using HttpClient client = new(phones) { BaseAddress = app.Address };
            Acknowledgement[][] answers = await Task.WhenAll(Enumerable.Range(0, 40).Select(async cook =>
            {
                List<Acknowledgement> own = [];
                for (int index = 0; index < 5; index++)
                {
                    own.Add(await SentEntry.New(batches[cook % batches.Count], (cook * 5) + index).PostAsync(client, Stop));
                }

                return own.ToArray();
            }));
            Assert.All(answers.SelectMany(own => own), answer => Assert.Equal(HttpStatusCode.Created, answer.Status));
            foreach (Guid batch in batches)
            {
                JsonArray log = JsonNode.Parse(await client.GetStringAsync(new Uri($"/api/batches/{batch}", UriKind.Relative), Stop))!["entries"]!.AsArray();
                Assert.Equal(25, log.Count);
                Assert.Equal(25, log.Select(entry => (string?)entry!["fact"]!["text"]).Distinct(StringComparer.Ordinal).Count());
            }
        }
        finally
        {
            SqliteConnection.ClearAllPools();
            data.Delete(recursive: true);
        }
    }

    private static void Fill(string file)
    {
        using FileStream filler = new(file, FileMode.Create, FileAccess.Write, FileShare.None, bufferSize: 0);
        byte[] block = new byte[1024];
        try
        {
            while (true)
            {
                filler.Write(block);
            }
        }
        catch (IOException)
        {
        }
    }

    private static async Task<string> OneAsync(DirectoryInfo data, string sql)
    {
        await using SqliteConnection connection = new($"Data Source={Path.Combine(data.FullName, SqliteStorage.FileName)};Pooling=False");
        await connection.OpenAsync(Stop);
        await using SqliteCommand command = connection.CreateCommand();
        command.CommandText = sql;
        return Convert.ToString(await command.ExecuteScalarAsync(Stop), System.Globalization.CultureInfo.InvariantCulture)!;
    }

    private static int Run(string program, params string[] arguments)
    {
        using Process process = Process.Start(new ProcessStartInfo(program, arguments) { RedirectStandardError = true, UseShellExecute = false })!;
        process.WaitForExit();
        return process.ExitCode;
    }
}
