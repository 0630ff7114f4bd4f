using System.Diagnostics;
using System.Globalization;
using System.Net.Http.Headers;
using Stockwright.Journeys.Running;
using Stockwright.Web.Tests.Features.Cooking.Photos;

namespace Stockwright.Bench.Web;

/// <summary>What pictures made to be dear cost: each sent to an app of its own, with the processor time until it is answered and the most memory the app then held.</summary>
internal static class PhotoLoad
{
    private const double LimitSeconds = 2;
    private const double LimitMegabytes = 350;

    public static async Task<int> RunAsync(TextWriter output)
    {
        (string What, byte[] File)[] pictures =
        [
            ("none", []),
            ("49 million pixels, one scan", HandmadeJpeg.Baseline(8000, 6200)),
            ("20 million pixels, 32 scans", HandmadeJpeg.Progressive(5400, 3700, 32)),
            ("12 million pixels, 5,000 scans", HandmadeJpeg.Progressive(4000, 3000, 5000)),
            ("49 million pixels, 10 scans", HandmadeJpeg.Progressive(8000, 6200, 10)),
        ];
        await output.WriteLineAsync("| picture | file | answer | processor time | most memory | limit |\n| --- | ---: | ---: | ---: | ---: | --- |");
        bool holds = true;
        foreach ((string what, byte[] file) in pictures)
        {
            holds &= await MeasureAsync(output, what, file);
        }

        return holds ? 0 : 1;
    }

    private static async Task<bool> MeasureAsync(TextWriter output, string what, byte[] file)
    {
        DirectoryInfo data = Directory.CreateTempSubdirectory("stockwright-photos-");
        try
        {
            Guid batch = (await StartedBatches.MakeAsync(data, 1, CancellationToken.None))[0];
            await using WebProcess app = await WebProcess.StartAsync(data, CancellationToken.None);
            using HttpClient client = new() { BaseAddress = app.Address, Timeout = TimeSpan.FromMinutes(2) };
            await SendAsync(client, batch, HandmadeJpeg.Baseline(64, 48));
            TimeSpan before = app.ProcessorTime;
            int status = file.Length > 0 ? await SendAsync(client, batch, file) : 0;
            double seconds = (app.ProcessorTime - before).TotalSeconds;
            double megabytes = MostMemory(app.ProcessId);
            bool holds = seconds < LimitSeconds && megabytes < LimitMegabytes;
            await output.WriteLineAsync(string.Create(CultureInfo.InvariantCulture, $"| {what} | {file.Length / 1e6:0.0} MB | {status} | {seconds:0.00} s | {megabytes:0} MB | {(holds ? "holds" : "MISSED")} |"));
            return holds;
        }
        finally
        {
            Microsoft.Data.Sqlite.SqliteConnection.ClearAllPools();
            data.Delete(recursive: true);
        }
    }

    private static async Task<int> SendAsync(HttpClient client, Guid batch, byte[] file)
    {
        using MultipartFormDataContent form = new()
        {
            { new StringContent(Guid.CreateVersion7().ToString()), "entry" },
            { new StringContent("photo"), "kind" },
        };
        ByteArrayContent picture = new(file);
        picture.Headers.ContentType = new MediaTypeHeaderValue("image/jpeg");
        form.Add(picture, "photo", "a.jpg");
        using HttpResponseMessage answer = await client.PostAsync(new Uri($"/batches/{batch}/log", UriKind.Relative), form);
        return (int)answer.StatusCode;
    }

    /// <summary>The kernel's high-water mark where there is one; what is held now elsewhere.</summary>
    private static double MostMemory(int process)
    {
        string status = $"/proc/{process}/status";
        if (!File.Exists(status))
        {
            using Process other = Process.GetProcessById(process);
            return other.WorkingSet64 / 1e6;
        }

        string line = File.ReadLines(status).First(each => each.StartsWith("VmHWM:", StringComparison.Ordinal));
        return double.Parse(line.Split(' ', StringSplitOptions.RemoveEmptyEntries)[1], CultureInfo.InvariantCulture) * 1024 / 1e6;
    }
}
