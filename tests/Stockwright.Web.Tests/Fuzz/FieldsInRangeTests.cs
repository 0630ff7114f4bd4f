using Microsoft.AspNetCore.Mvc.Testing;
using Microsoft.AspNetCore.TestHost;
using Microsoft.Extensions.DependencyInjection;
using Stockwright.Web.Features.Planning;
using Stockwright.Web.Tests.Fuzz.Shared;
using Xunit;

namespace Stockwright.Web.Tests.Fuzz;

/// <summary>
/// Whatever is typed or sent inside the ranges the app itself states is answered, and never by a failure. The fields are read off
/// the pages and the OpenAPI document, the ranges off what the app says to absurd numbers.
/// </summary>
public sealed class FieldsInRangeTests(ITestOutputHelper output)
{
    private const int Seed = 20261125;
    private const int Mixes = 40;
    private const int OptionsByTurns = 1;

    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    [Theory]
    [InlineData("metric")]
    [InlineData("us")]
    public async Task Every_field_of_every_page_and_interface_is_answered_at_both_ends_of_its_range_and_inside(string units)
    {
        using StockwrightFactory real = new();
        // What the stock will be like costs most. It is calculated while pages are looked over, for some links hang on it, left out
        // while ranges are asked for, and then calculated once for each end of a field that several pages and interfaces have.
        bool isJudged = true;
        HashSet<string> judged = new(StringComparer.Ordinal);
        using WebApplicationFactory<Program> app = real.WithWebHostBuilder(builder => builder.ConfigureTestServices(services => services.AddSingleton<JudgeStock>(
            (plan, questions, system, cancellationToken) => isJudged ? StockOutlook.Of(plan, questions, system, cancellationToken) : null)));
        using HttpClient http = app.CreateClient(new WebApplicationFactoryClientOptions { AllowAutoRedirect = false, HandleCookies = false });
        FuzzSite site = await FuzzSite.ExploreAsync(http, units, Stop);
        List<FuzzAnswer> failures = site.Failures;
        isJudged = false;
        foreach (FuzzTarget target in site.Targets)
        {
            await RangeFinder.FindAsync(target, failures, Stop);
        }

        int ranges = site.Targets.Sum(target => target.Ranges.Count);
        List<InRangeCase> cases = [.. site.Targets.SelectMany(target => InRangeCases.Sample(target, string.Equals(units, "us", StringComparison.Ordinal), OptionsByTurns))];
        Random random = new(Seed);
        cases.AddRange(Enumerable.Range(0, Mixes).Select(_ => InRangeCases.Any(site.Targets, random)));
        List<string> refused = [];
        foreach (InRangeCase one in cases)
        {
            isJudged = one.Alone is null || judged.Add($"{one.Alone}={one.Changes[one.Alone]}");
            FuzzAnswer answer = await one.Target.SendAsync(one.Changes, Stop);
            if (answer.IsOurFault || (answer.Body.Length == 0 && answer.Location is null))
            {
                failures.Add(answer);
            }

            foreach (FuzzField field in one.Target.Fields.Where(field => one.Changes.ContainsKey(field.Name) && one.Target.Ranges.ContainsKey(field.Name)))
            {
                if (StatedRange.Read(one.Target.ProblemAt(answer, field)) is { } told && told == one.Target.Ranges[field.Name].Range)
                {
                    refused.Add($"{field.Name}={one.Changes[field.Name]}, {told.LowText} to {told.HighText}: {answer.Request}");
                }
            }
        }

        output.WriteLine($"{units}, seed {Seed}: {site.Pages.Count} pages, {site.Targets.Count} forms and operations, {ranges} ranges, {cases.Count} cases, {site.Client.Sent} requests");
        // The pages are many and their fields more: a site that was not seen must not pass.
        Assert.True(site.Targets.Count > 40 && ranges > 200, $"{site.Targets.Count} forms and operations with {ranges} ranges were found");
        Assert.True(failures.Count == 0, $"Seed {Seed}:\n" + string.Join('\n', failures.Select(failure => $"{(int)failure.Status} {failure.Request}").Distinct(StringComparer.Ordinal)));
        Assert.True(refused.Count == 0, $"Refused at the end of the range it states, seed {Seed}:\n" + string.Join('\n', refused));
    }
}
