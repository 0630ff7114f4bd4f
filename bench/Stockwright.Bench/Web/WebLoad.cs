using System.Diagnostics;
using System.Globalization;
using Stockwright.Journeys.Running;

namespace Stockwright.Bench.Web;

/// <summary>
/// Starts the app on loopback and asks it for a bounded number of plans, one after the other:
/// how long until the first page, how long each page takes warm, and how much memory it then holds.
/// </summary>
internal static class WebLoad
{
    private const int WarmUpPlans = 200;
    private const int TimedPlans = 800;

    // The page says this only when it shows a plan; a fast page with a problem on it must not count.
    private const string MarkOfAPlan = "The plan in short";

    public static async Task<int> RunAsync(TextWriter output)
    {
        try
        {
            return await MeasureAsync(output);
        }
        catch (InvalidOperationException problem)
        {
            await output.WriteLineAsync(problem.Message);
            return 1;
        }
    }

    private static async Task<int> MeasureAsync(TextWriter output)
    {
        long started = Stopwatch.GetTimestamp();
        await using WebProcess app = await WebProcess.StartAsync();
        using HttpClient client = new() { Timeout = TimeSpan.FromSeconds(30) };
        await AskAsync(client, PlanLinks.Link(app.Address, 0));
        TimeSpan cold = Stopwatch.GetElapsedTime(started);
        TimeSpan coldWork = app.ProcessorTime;

        for (int i = 1; i < WarmUpPlans; i++)
        {
            await AskAsync(client, PlanLinks.Link(app.Address, i));
        }

        double[] milliseconds = new double[TimedPlans];
        for (int i = 0; i < TimedPlans; i++)
        {
            long asked = Stopwatch.GetTimestamp();
            await AskAsync(client, PlanLinks.Link(app.Address, WarmUpPlans + i));
            milliseconds[i] = Stopwatch.GetElapsedTime(asked).TotalMilliseconds;
        }

        double megabytes = app.WorkingSetBytes / 1e6;
        Array.Sort(milliseconds);
        Line[] lines =
        [
            new("cold start to the first plan", cold.TotalSeconds, 3, "s"),
            new("processor time of that", coldWork.TotalSeconds, null, "s"),
            new("a plan, warm, median", At(milliseconds, 0.5), null, "ms"),
            new("a plan, warm, 95th percentile", At(milliseconds, 0.95), 60, "ms"),
            new("a plan, warm, slowest", milliseconds[^1], null, "ms"),
            new($"memory after {WarmUpPlans + TimedPlans} plans", megabytes, 200, "MB"),
        ];

        await output.WriteLineAsync("| measured | value | limit | |\n| --- | ---: | ---: | --- |");
        foreach (Line line in lines)
        {
            await output.WriteLineAsync(line.ToString());
        }

        return lines.All(line => line.Holds) ? 0 : 1;
    }

    private static async Task AskAsync(HttpClient client, Uri link)
    {
        using HttpResponseMessage answer = await client.GetAsync(link);
        string page = await answer.Content.ReadAsStringAsync();
        if (!answer.IsSuccessStatusCode || !page.Contains(MarkOfAPlan, StringComparison.Ordinal))
        {
            throw new InvalidOperationException($"{link.PathAndQuery} answered {(int)answer.StatusCode} without a plan, so there is nothing to time.");
        }
    }

    /// <summary>The nearest-rank percentile.</summary>
    private static double At(double[] sorted, double share) => sorted[(int)Math.Ceiling(share * sorted.Length) - 1];

    private sealed record Line(string What, double Value, double? Limit, string Unit)
    {
        public bool Holds => Limit is not { } limit || Value < limit;

        public override string ToString() => string.Create(
            CultureInfo.InvariantCulture,
            $"| {What} | {Value:0.0} {Unit} | {(Limit is { } limit ? string.Create(CultureInfo.InvariantCulture, $"{limit:0} {Unit}") : "")} | {(Limit is null ? "" : Holds ? "holds" : "MISSED")} |");
    }
}
