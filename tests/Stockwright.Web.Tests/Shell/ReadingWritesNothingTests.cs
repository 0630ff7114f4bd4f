using System.Collections.Concurrent;
using System.Data.Common;
using System.Net;
using System.Text.RegularExpressions;
using Microsoft.AspNetCore.Mvc.Testing;
using Microsoft.AspNetCore.Routing;
using Microsoft.AspNetCore.StaticAssets;
using Microsoft.AspNetCore.TestHost;
using Microsoft.EntityFrameworkCore.Diagnostics;
using Microsoft.Extensions.DependencyInjection;
using Stockwright.Logbook;
using Stockwright.Storage;
using Stockwright.Web.Tests.Features.Cooking;
using Xunit;

namespace Stockwright.Web.Tests.Shell;

/// <summary>
/// Reading a page writes nothing (RFC 9110, 9.2.1: GET is safe), so that a disk gone read-only still shows what is on. Every address of
/// the program is asked for: a new one must be given an example here.
/// </summary>
public sealed partial class ReadingWritesNothingTests
{
    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    [Fact]
    public async Task No_address_that_is_read_writes_in_the_database()
    {
        await using NewsApp app = new();
        Guid batch = await app.StartBatchAsync("Read");
        await app.EnterAsync(batch, new LogFact.CoolingBegan());
        Guid photo = Guid.CreateVersion7();
        await app.Services.GetRequiredService<LogStore>().AppendAsync(
            new NewEntry { Id = photo, BatchId = batch, HappenedAt = app.Now, Who = "AB", Fact = new LogFact.PhotoTaken(), Photo = new StoredPhoto([0xFF, 0xD8], 1, 1) }, Stop);
        string plan = (await app.Services.GetRequiredService<PlanStore>().PageAsync(1, 1, Stop)).Rows[0].Id.ToString();
        string token = await app.Services.GetRequiredService<BatchStore>().CalendarTokenAsync(Stop);
        Dictionary<string, string> examples = new(StringComparer.OrdinalIgnoreCase)
        {
            ["/batches/{id}"] = $"/batches/{batch}",
            ["/batches/{id}/record"] = $"/batches/{batch}/record",
            ["/batches/{id:guid}/log.csv"] = $"/batches/{batch}/log.csv",
            ["/batches/{id:guid}/log.json"] = $"/batches/{batch}/log.json",
            ["/batches/{id:guid}/photos/{entryId:guid}"] = $"/batches/{batch}/photos/{photo}",
            ["/batches/{id:guid}/calendar.ics"] = $"/batches/{batch}/calendar.ics",
            ["/batches/{id:guid}/events"] = $"/batches/{batch}/events",
            ["/api/batches/{id:guid}"] = $"/api/batches/{batch}",
            ["/calendar/{token}.ics"] = $"/calendar/{token}.ics",
            ["/plans/{id}"] = $"/plans/{plan}",
            ["/plans/{id}/print"] = $"/plans/{plan}/print",
            ["/recipes/{id}"] = "/recipes/lamb",
            ["/larder/{id}"] = "/larder/onion",
            ["/larder/{id}/edit"] = "/larder/onion/edit",
            ["/larder/{id}/copy"] = "/larder/onion/copy",
            ["/kitchen/pots/{id}"] = "/kitchen/pots/pot-10",
            ["/kitchen/hobs/{id}"] = "/kitchen/hobs/new",
            ["/kitchen/ovens/{id}"] = "/kitchen/ovens/new",
            ["/kitchen/trays/{id}"] = "/kitchen/trays/new",
            ["/units/{system}"] = "/units/us",
            ["/cooling/home/{id}"] = "/cooling/home/uk-cook-chill",
            ["/openapi/{documentName}.json"] = "/openapi/v1.json",
        };
        Stockwright.Recipes.StockRecipe standing = Stockwright.Recipes.StandardRecipes.Book.Recipes[0];
        string own = await app.Services.GetRequiredService<RecipeStore>().AddAsync(standing, Stockwright.Recipes.StandardRecipes.Book, cancellationToken: Stop);
        examples["/recipes/{id}/edit"] = $"/recipes/{own}/edit";

        CommandSpy spy = new();
        await using WebApplicationFactory<Program> watched = app.WithWebHostBuilder(builder => builder.ConfigureTestServices(services =>
            services.ConfigureDbContext<StockwrightContext>(options => options.AddInterceptors(spy))));
        using HttpClient browser = watched.CreateClient(new WebApplicationFactoryClientOptions { AllowAutoRedirect = false });
        string[] patterns = [.. watched.Services.GetRequiredService<EndpointDataSource>().Endpoints.OfType<RouteEndpoint>()
            .Where(endpoint => endpoint.Metadata.GetMetadata<StaticAssetDescriptor>() is null)
            .Where(endpoint => endpoint.Metadata.GetMetadata<HttpMethodMetadata>()?.HttpMethods.Contains("GET", StringComparer.Ordinal) ?? true)
            .Select(endpoint => "/" + endpoint.RoutePattern.RawText!.TrimStart('/'))
            .Distinct(StringComparer.OrdinalIgnoreCase)];
        Assert.True(patterns.Length > 30, string.Join(' ', patterns));
        List<string> trouble = [];
        foreach (string pattern in patterns)
        {
            string? address = examples.GetValueOrDefault(pattern) ?? (pattern.Contains('{', StringComparison.Ordinal) ? null : pattern);
            if (address is null)
            {
                if (!Skipped.Contains(pattern, StringComparer.OrdinalIgnoreCase))
                {
                    trouble.Add($"{pattern} has no example here");
                }

                continue;
            }

            spy.Said.Clear();
            using HttpRequestMessage request = new(HttpMethod.Get, address);
            using HttpResponseMessage answer = await browser.SendAsync(request, HttpCompletionOption.ResponseHeadersRead, Stop);
            if (answer.Content.Headers.ContentType?.MediaType is not "text/event-stream")
            {
                await answer.Content.ReadAsStringAsync(Stop);
            }

            if (answer.StatusCode >= HttpStatusCode.BadRequest && !Refusing.Contains(pattern, StringComparer.OrdinalIgnoreCase))
            {
                trouble.Add($"{address} answered {(int)answer.StatusCode}");
            }

            trouble.AddRange(spy.Said.Where(text => Writing().IsMatch(text)).Select(text => $"{address} ran {text}"));
        }

        Assert.Equal([], trouble, StringComparer.Ordinal);
        Assert.True(spy.Total > patterns.Length, "The spy heard nothing.");
    }

    /// <summary>Patterns that are no pages: what the framework serves itself.</summary>
    private static readonly string[] Skipped = ["/{**path:file}"];

    /// <summary>Addresses that need more than this to answer with a page.</summary>
    private static readonly string[] Refusing = ["/_framework/opaque-redirect", "/error", "/refused"];

    [GeneratedRegex(@"\b(INSERT|UPDATE|DELETE|CREATE|DROP|ALTER|REPLACE|VACUUM)\b", RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Writing();

    private sealed class CommandSpy : DbCommandInterceptor
    {
        private int total;

        public ConcurrentQueue<string> Said { get; } = [];

        public int Total => total;

        public override DbCommand CommandInitialized(CommandEndEventData eventData, DbCommand result)
        {
            Interlocked.Increment(ref total);
            Said.Enqueue(result.CommandText);
            return result;
        }
    }
}
