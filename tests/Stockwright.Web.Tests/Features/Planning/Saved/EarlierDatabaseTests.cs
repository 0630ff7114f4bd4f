using System.Globalization;
using System.IO.Compression;
using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Http.Json;
using Microsoft.AspNetCore.Mvc.Testing;
using Microsoft.AspNetCore.TestHost;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Options;
using Stockwright.Web.Features.Cooking;
using Stockwright.Web.Features.Planning;
using Xunit;

namespace Stockwright.Web.Tests.Features.Planning.Saved;

/// <summary>
/// Databases that earlier versions made, as they ran: a demo kitchen, two plans saved, three batches started and written in. Made on 2026-11-25
/// (commit d73bca8, the first schema with batches) and on 2026-11-30 (commit ad2cd69, the last that kept the planner's address).
/// </summary>
public sealed class EarlierDatabaseTests
{
    /// <summary>Parts of the text that are answered anew, that name an address, or that were of a whole wish: a batch is one potful now.</summary>
    private static readonly string[] NotThePlan = ["link", "ignored", "ways", "prediction", "nightChoices", "roast", "pieces", "lidKind", "lidOpenFraction", "isOutOfReach",
        "verdict", "rounds", "potsThatFit"];

    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    [Theory]
    [InlineData("2026-11-25")]
    [InlineData("2026-11-30")]
    public async Task Every_batch_opens_with_the_plan_it_was_started_with(string made)
    {
        await using EarlierApp app = new(made);
        IReadOnlyList<BatchSummary> batches = (await app.Services.GetRequiredService<BatchStore>().AfterAsync(null, 10, Stop))!;
        Assert.Equal(["Beef overnight", "Chicken for Thursday", "Two potfuls"], batches.Select(batch => batch.Name).Order(StringComparer.Ordinal), StringComparer.Ordinal);
        int entries = 0;
        foreach (BatchSummary summary in batches)
        {
            BatchView view = await app.OpenAsync(summary.Id);
            JsonObject given = JsonNode.Parse(view.Stored.PlanText)!.AsObject();
            JsonNode shown = JsonSerializer.SerializeToNode(
                PlanDocumentMapping.Make(view.Course!.Batch.Planned, view.Plan!), app.Services.GetRequiredService<IOptions<JsonOptions>>().Value.SerializerOptions)!;
            int compared = SameNumbers(given, shown, summary.Name);
            Assert.InRange(compared, 1000, 10_000);

            // And the course runs on from it. The laws of the first version were others, so it is nearer than that only by chance.
            Assert.InRange(view.Course.Expected.Yield.Central / view.Course.Batch.Planned.Yield.Central, 0.75, 1.3);
            entries += view.Log.All.Count;
            using HttpResponseMessage page = await app.Reader().GetAsync($"/batches/{summary.Id}", Stop);
            Assert.True(page.IsSuccessStatusCode);
        }

        Assert.Equal(6, entries);
    }

    [Theory]
    [InlineData("2026-11-25", "Bones from the freezer", "You get 2.35 L")]
    [InlineData("2026-11-30", "Veal for the week", "You get 11 L likely 9.7 to 12.2 L Body Firm jelly 6 in 10 cold: turns out, can be sliced; or very firm 3 in 10 Ready 08:08 Fri 11 Dec; 2 h 25 min hands-on Fill to 54 mm below the rim: 11.4 L of water over everything else")]
    [InlineData("2026-11-30", "Bones from the freezer", "You get 2.35 L likely 2 to 2.6 L Body Soft jelly 6 in 10 cold: spoonable, holds the mark of the spoon; or trembling 2 in 10, firm jelly 2 in 10 Ready 12:30 Fri 11 Dec; 2 h 17 min hands-on Fill to 12.1 cm below the rim: 3.1 L of water over everything else")]
    public async Task A_saved_plan_reads_as_it_read_then(string made, string name, string then)
    {
        await using EarlierApp app = new(made);
        IReadOnlyList<PlanSummary> plans = (await app.Services.GetRequiredService<PlanStore>().PageAsync(1, 10, Stop)).Rows;
        Assert.Equal(4, plans.Count);
        PlanSummary plan = plans.Single(one => string.Equals(one.Name, name, StringComparison.Ordinal));
        string page = await app.Reader().GetStringAsync($"/plans/{plan.Id}", Stop);
        string text = Regex.Replace(System.Net.WebUtility.HtmlDecode(Regex.Replace(page, "<[^>]+>", " ", RegexOptions.None, TimeSpan.FromSeconds(5))), @"\s+", " ", RegexOptions.None, TimeSpan.FromSeconds(5));
        Assert.Contains(then, text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Old_plans_are_turned_once_and_what_was_kept_before_stays()
    {
        await using EarlierApp app = new("2026-11-30");
        PlanStore plans = app.Services.GetRequiredService<PlanStore>();
        BatchStore batches = app.Services.GetRequiredService<BatchStore>();
        Assert.Empty(await plans.OldAsync(Stop));
        Assert.Empty(await batches.OldAsync(Stop));
        foreach (BatchSummary batch in (await batches.AfterAsync(null, 10, Stop))!)
        {
            Assert.NotNull((await batches.PlanAsync(batch.Id, Stop)).Document?.Plan);
        }
    }

    /// <summary>Every number, moment and sentence of the text stands in what is shown; how many there were.</summary>
    private static int SameNumbers(JsonNode? given, JsonNode? shown, string path)
    {
        switch (given)
        {
            case JsonObject row:
                return row.Where(part => !NotThePlan.Contains(part.Key, StringComparer.Ordinal)).Sum(part => SameNumbers(part.Value, shown?[part.Key], $"{path}.{part.Key}"));
            case JsonArray list:
                Assert.True(shown is JsonArray other && other.Count == list.Count, $"{path}: {list.Count} rows became {(shown as JsonArray)?.Count}");
                return list.Select((part, i) => SameNumbers(part, shown![i], $"{path}[{i}]")).Sum();
            case null:
                Assert.True(shown is null, $"{path}: nothing became {shown}");
                return 0;
            default:
                if (given.GetValueKind() == JsonValueKind.Number)
                {
                    double before = given.GetValue<double>();
                    double after = shown?.GetValue<double>() ?? double.NaN;

                    // Times are kept to 100 ns, and SI has cost the last bits of degrees.
                    Assert.True(Math.Abs(before - after) <= Math.Max(2e-7, 1e-9 * Math.Abs(before)), $"{path}: {before:R} became {after:R}");
                }
                else if (given.GetValueKind() == JsonValueKind.String && DateTimeOffset.TryParse(given.GetValue<string>(), CultureInfo.InvariantCulture, out DateTimeOffset moment))
                {
                    Assert.True((moment - DateTimeOffset.Parse(shown!.GetValue<string>(), CultureInfo.InvariantCulture)).Duration() < TimeSpan.FromMilliseconds(1), $"{path}: {given} became {shown}");
                }
                else
                {
                    Assert.True(JsonNode.DeepEquals(given, shown), $"{path}: {given} became {shown}");
                }

                return 1;
        }
    }

    private sealed class EarlierApp : WebApplicationFactory<Program>
    {
        private readonly DirectoryInfo data = Directory.CreateTempSubdirectory("stockwright-earlier-");

        public EarlierApp(string made)
        {
            using Stream packed = typeof(EarlierApp).Assembly.GetManifestResourceStream($"stockwright-{made}.db.gz")!;
            using GZipStream plain = new(packed, CompressionMode.Decompress);
            using FileStream file = File.Create(Path.Combine(data.FullName, "stockwright.db"));
            plain.CopyTo(file);
        }

        public HttpClient Reader() => CreateClient(new WebApplicationFactoryClientOptions { AllowAutoRedirect = false });

        public async Task<BatchView> OpenAsync(Guid id)
        {
            await using AsyncServiceScope scope = Services.CreateAsyncScope();
            return (await scope.ServiceProvider.GetRequiredService<BatchService>().OpenAsync(id, Measures.UnitSystem.Metric, Stop))!;
        }

        protected override void ConfigureWebHost(IWebHostBuilder builder)
        {
            builder.UseEnvironment("Production");
            builder.UseSetting("STOCKWRIGHT_DATA", data.FullName);
            builder.ConfigureTestServices(services => services.AddSingleton<TimeProvider>(new Noon()));
        }

        protected override void Dispose(bool disposing)
        {
            base.Dispose(disposing);
            if (disposing && data.Exists)
            {
                data.Delete(recursive: true);
            }
        }

        private sealed class Noon : TimeProvider
        {
            public override DateTimeOffset GetUtcNow() => new(2026, 11, 30, 12, 0, 0, TimeSpan.Zero);
        }
    }
}
