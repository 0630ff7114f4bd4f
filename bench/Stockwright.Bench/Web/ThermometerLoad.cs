using System.Diagnostics;
using System.Globalization;
using Microsoft.Data.Sqlite;
using Stockwright.Journeys.Running;
using Stockwright.Logbook;
using UnitsNet;

namespace Stockwright.Bench.Web;

/// <summary>
/// A thermometer that writes into the log every minute: what the batch's page and the page of today cost, as its log grows. Each size
/// is a data folder of its own with one batch, and a process of its own.
/// </summary>
internal static class ThermometerLoad
{
    private const int Looks = 7;
    private const double LimitMilliseconds = 100;

    /// <summary>The runtime compiles a method well after its thirtieth call.</summary>
    private const int WarmUpLooks = 40;

    private static readonly int[] Sizes = [100, 1_400, 10_000];

    public static async Task<int> RunAsync(TextWriter output)
    {
        await output.WriteLineAsync("| readings | of the | page | measured | median | processor time, median | limit |\n| ---: | --- | --- | --- | ---: | ---: | ---: |");
        bool holds = true;
        foreach (int readings in Sizes)
        {
            foreach (bool cools in (bool[])[false, true])
            {
                holds &= await MeasureAsync(output, readings, cools);
            }
        }

        return holds ? 0 : 1;
    }

    private static async Task<bool> MeasureAsync(TextWriter output, int readings, bool cools)
    {
        DirectoryInfo data = Directory.CreateTempSubdirectory("stockwright-thermometer-");
        try
        {
            TimeSpan span = TimeSpan.FromMinutes(Math.Min(readings, 1_400));
            DateTimeOffset began = TimeProvider.System.GetUtcNow() - span - TimeSpan.FromHours(cools ? 9 : 1);
            Guid batch = (await StartedBatches.MakeAsync(data, 1, began, CancellationToken.None))[0];
            Fill(data, batch, began, [.. cools ? Cooling(began, readings, span) : Simmering(began, readings, span)]);
            await using WebProcess app = await WebProcess.StartAsync(data, CancellationToken.None);
            using HttpClient client = new() { BaseAddress = app.Address, Timeout = TimeSpan.FromMinutes(5) };

            bool holds = true;
            foreach (string page in (string[])[$"/batches/{batch}", "/"])
            {
                for (int look = 0; look < WarmUpLooks; look++)
                {
                    await LookAsync(client, page);
                }

                holds &= await TimedAsync(output, app, client, batch, page, readings, cools, enters: false);
                holds &= await TimedAsync(output, app, client, batch, page, readings, cools, enters: true);
            }

            return holds;
        }
        finally
        {
            SqliteConnection.ClearAllPools();
            data.Delete(recursive: true);
        }
    }

    private static async Task<bool> TimedAsync(TextWriter output, WebProcess app, HttpClient client, Guid batch, string page, int readings, bool cools, bool enters)
    {
        List<double> took = [];
        List<double> work = [];
        for (int look = 0; look < Looks && (look < 2 || took.Sum() < 30_000); look++)
        {
            if (enters)
            {
                await ReadAsync(client, batch, cools);
            }

            TimeSpan before = app.ProcessorTime;
            long asked = Stopwatch.GetTimestamp();
            await LookAsync(client, page);
            took.Add(Stopwatch.GetElapsedTime(asked).TotalMilliseconds);
            work.Add((app.ProcessorTime - before).TotalMilliseconds);
        }

        // The processor time does not depend on what else the machine does.
        double median = took.Order().ElementAt(took.Count / 2);
        double spent = work.Order().ElementAt(work.Count / 2);
        await output.WriteLineAsync(string.Create(
            CultureInfo.InvariantCulture,
            $"| {readings:#,0} | {(cools ? "cooling" : "simmer")} | {(page.Length > 1 ? "batch" : "today")} | {(enters ? "after a new reading" : "looked at again")} | {median:0} ms | {spent:0} ms | {(spent < LimitMilliseconds ? "holds" : "MISSED")} |"));
        return spent < LimitMilliseconds;
    }

    private static async Task LookAsync(HttpClient client, string page)
    {
        using HttpResponseMessage answer = await client.GetAsync(new Uri(page, UriKind.Relative));
        await answer.Content.ReadAsStringAsync();
        answer.EnsureSuccessStatusCode();
    }

    private static async Task ReadAsync(HttpClient client, Guid batch, bool cools)
    {
        using FormUrlEncodedContent form = new(new Dictionary<string, string>(StringComparer.Ordinal)
        {
            ["entry"] = Guid.CreateVersion7().ToString(),
            ["kind"] = "temperature",
            ["place"] = cools ? "cooling" : "pot",
            ["degrees"] = cools ? "3.9" : "95.1",
            ["who"] = "probe",
        });
        using HttpResponseMessage answer = await client.PostAsync(new Uri($"/batches/{batch}/log", UriKind.Relative), form);
        if (!answer.IsSuccessStatusCode)
        {
            throw new InvalidOperationException($"A reading was answered {(int)answer.StatusCode}: {await answer.Content.ReadAsStringAsync()}");
        }
    }

    /// <summary>Up to the simmer in an hour, then about 95 degrees with the noise of a probe.</summary>
    private static IEnumerable<(DateTimeOffset, LogFact)> Simmering(DateTimeOffset began, int readings, TimeSpan span)
    {
        Random random = new(1);
        yield return (began, new LogFact.StepDone("heatup-1"));
        for (int i = 0; i < readings; i++)
        {
            TimeSpan at = span * i / readings;
            double celsius = Math.Min(95, 18 + (77 * at.TotalHours)) + (random.NextDouble() * 1.4) - 0.7;
            yield return (began + TimeSpan.FromMinutes(1) + at, Reading(celsius, ReadingPlace.Pot));
        }
    }

    /// <summary>Strained after eight hours, then down towards four degrees.</summary>
    private static IEnumerable<(DateTimeOffset, LogFact)> Cooling(DateTimeOffset began, int readings, TimeSpan span)
    {
        Random random = new(1);
        DateTimeOffset strained = began + TimeSpan.FromHours(8);
        yield return (began, new LogFact.StepDone("heatup-1"));
        yield return (strained, new LogFact.Strained(Volume.FromLiters(3.4)));
        yield return (strained, new LogFact.CoolingBegan("ice bath"));
        for (int i = 0; i < readings; i++)
        {
            TimeSpan at = span * i / readings;
            double celsius = 3 + (85 * Math.Exp(-1.2 * at.TotalHours)) + (random.NextDouble() * 1.4) - 0.7;
            yield return (strained + TimeSpan.FromMinutes(1) + at, Reading(celsius, ReadingPlace.Cooling));
        }
    }

    private static LogFact.TemperatureRead Reading(double celsius, ReadingPlace place) => new(Temperature.FromDegreesCelsius(Math.Round(celsius, 1)), place, "probe");

    /// <summary>Straight into the database in one transaction: each by itself would be flushed to the disk by itself.</summary>
    private static void Fill(DirectoryInfo data, Guid batch, DateTimeOffset began, IReadOnlyList<(DateTimeOffset At, LogFact Fact)> entries)
    {
        using SqliteConnection connection = new($"Data Source={data.GetFiles("*.db").Single().FullName}");
        connection.Open();
        using SqliteTransaction transaction = connection.BeginTransaction();
        using SqliteCommand insert = connection.CreateCommand();
        insert.CommandText = """
            INSERT INTO LogEntries (Id, BatchId, HappenedUtc, ReceivedUtc, Who, DeviceZone, Kind, Body)
            VALUES ($id, $batch, $at, $at, 'probe', '', $kind, $body)
            """;
        insert.Parameters.AddWithValue("$batch", batch.ToString().ToUpperInvariant());
        SqliteParameter id = insert.Parameters.Add("$id", SqliteType.Text);
        SqliteParameter at = insert.Parameters.Add("$at", SqliteType.Text);
        SqliteParameter kind = insert.Parameters.Add("$kind", SqliteType.Text);
        SqliteParameter body = insert.Parameters.Add("$body", SqliteType.Text);
        foreach ((DateTimeOffset moment, LogFact fact) in entries)
        {
            id.Value = Guid.CreateVersion7(began).ToString().ToUpperInvariant();
            at.Value = moment.UtcDateTime.ToString("yyyy-MM-dd HH:mm:ss.FFFFFFF", CultureInfo.InvariantCulture);
            kind.Value = FactDocument.Word(fact);
            body.Value = FactDocument.Write(fact);
            insert.ExecuteNonQuery();
        }

        transaction.Commit();
    }
}
