using System.Net;
using System.Net.Http.Json;
using System.Text.Json;
using Microsoft.Extensions.DependencyInjection;
using Stockwright.Web.Features.Cooking;
using Xunit;
using static Stockwright.Web.Tests.Features.Cooking.BatchApp;
using static Stockwright.Web.Tests.KeepingApp;
using UnitSystem = Stockwright.Measures.UnitSystem;

namespace Stockwright.Web.Tests.Features.Cooking;

public sealed class StartPageTests : IDisposable
{
    private readonly BatchApp app = new();

    public void Dispose() => app.Dispose();

    [Fact]
    public async Task A_plan_offers_to_be_started_and_the_form_sent_twice_starts_one_batch()
    {
        using HttpClient browser = app.Browser();
        Assert.Contains("/batches/start?", (await GetAsync(browser, $"/plan?{Query}")).Html, StringComparison.Ordinal);
        Page form = await GetAsync(browser, $"/batches/start?{Query}");
        Assert.Equal("us-food-code", form.Form("start")["limit"]);
        Page first = await SendAsync(browser, $"/batches/start?{Query}", form, "start", ("name", "Twice"));
        Page second = await SendAsync(browser, $"/batches/start?{Query}", form, "start", ("name", "Twice"));
        Assert.Equal(HttpStatusCode.SeeOther, second.Status);
        Assert.Equal(first.Location, second.Location);
        Assert.Single((await GetAsync(browser, "/batches")).Html.Split("<b>Twice</b>").Skip(1));
    }

    // 25 L from a pot of 20 are three potfuls of 8.3: the batch is one of them, with its own timetable, and the page says so.
    [Fact]
    public async Task A_batch_of_a_large_wish_is_one_potful()
    {
        const string Large = "units=metric&recipe=brown-beef&pot=own&pot-shape=volume&pot-volume=20&pot-diameter=28&goal=litres&litres=25";
        using HttpClient browser = app.Browser();
        Page form = await GetAsync(browser, $"/batches/start?{Large}");
        Assert.Contains("The plan takes 3 potfuls", form.Html, StringComparison.Ordinal);
        Assert.DoesNotContain("potfuls", (await GetAsync(browser, $"/batches/start?{Query}")).Html, StringComparison.Ordinal);
        Page started = await SendAsync(browser, $"/batches/start?{Large}", form, "start", ("name", "First pot"));
        JsonElement plan = (await LogAsync(browser, started.Location!)).GetProperty("plan");
        Assert.Equal(1, plan.GetProperty("fit").GetProperty("potfuls").GetInt32());
        Assert.Equal(0.0083, plan.GetProperty("totalCubicMetres").GetProperty("central").GetDouble(), 0.0002);
        Assert.DoesNotContain(plan.GetProperty("timeline").GetProperty("steps").EnumerateArray(), step => step.GetProperty("title").GetString()!.Contains("round", StringComparison.Ordinal));
        Assert.DoesNotContain("round 1 of", (await GetAsync(browser, started.Location!)).Html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_batch_keeps_the_plan_as_the_interface_would_have_given_it()
    {
        using HttpClient browser = app.Browser();
        string address = await StartAsync(browser, "Kept", ("when", "at"), ("date", "2026-11-27"), ("time", "09:15"));
        JsonElement export = await LogAsync(browser, address);
        Assert.Equal(new DateTimeOffset(2026, 11, 27, 9, 15, 0, TimeSpan.Zero), export.GetProperty("beginsAt").GetDateTimeOffset());
        Dictionary<string, string> fields = Microsoft.AspNetCore.WebUtilities.QueryHelpers.ParseQuery(export.GetProperty("planQuery").GetString())
            .ToDictionary(pair => pair.Key, pair => pair.Value.ToString(), StringComparer.Ordinal);
        Assert.Equal("2026-11-27", fields["date"]);
        using HttpResponseMessage answer = await browser.PostAsJsonAsync("/api/plans", fields, TestContext.Current.CancellationToken);
        JsonElement given = await answer.Content.ReadFromJsonAsync<JsonElement>(TestContext.Current.CancellationToken);
        Assert.Equal(given.GetRawText(), export.GetProperty("plan").GetRawText());
    }

    [Fact]
    public async Task A_batch_of_a_saved_plan_is_of_the_kitchen_as_it_was_saved()
    {
        using HttpClient browser = app.Browser();
        string saved = (await SendAsync(browser, "/plans", await GetAsync(browser, $"/plans/new?{Query}"), "save-plan", ("name", "Saved"))).Location!;
        string link = $"/batches/start?plan={saved.Split('/')[^1]}";
        Assert.Contains(link, (await GetAsync(browser, saved)).Html, StringComparison.Ordinal);
        Assert.Contains(link, (await GetAsync(browser, "/")).Html, StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.SeeOther, (await SendAsync(browser, "/kitchen/pots/pot-10", "delete")).Status);
        Assert.Equal(HttpStatusCode.SeeOther, (await SendAsync(browser, "/kitchen/site", "save", ("altitude", "3000"))).Status);
        Page started = await SendAsync(browser, link, "start");
        JsonElement plan = (await LogAsync(browser, started.Location!)).GetProperty("plan");
        Assert.Equal("pot-10", plan.GetProperty("pot").GetProperty("id").GetString());

        // At 3000 m water boils near 90 °C; the kitchen the plan was saved in lies low (standard atmosphere, ISO 2533).
        Assert.InRange(plan.GetProperty("boiling").GetProperty("boilingPointKelvins").GetDouble() - 273.15, 99, 100.1);
        Assert.Equal(HttpStatusCode.OK, (await GetAsync(browser, started.Location!)).Status);
    }

    // IANA time zone database: the United Kingdom put its clocks back on 25 October 2026 at 01:00 UTC, so that 01:30 came twice.
    [Fact]
    public async Task A_batch_begun_in_the_hour_that_comes_twice_begins_in_the_right_one()
    {
        app.Clock.Now = new DateTimeOffset(2026, 10, 25, 1, 30, 0, TimeSpan.Zero);
        using HttpClient browser = app.Browser();
        string address = await StartAsync(browser);
        Assert.Equal(app.Clock.Now, (await LogAsync(browser, address)).GetProperty("beginsAt").GetDateTimeOffset());
        using IServiceScope scope = app.Services.CreateScope();
        BatchView? view = await scope.ServiceProvider.GetRequiredService<BatchService>().OpenAsync(Guid.Parse(address.Split('/')[^1]), UnitSystem.Metric, TestContext.Current.CancellationToken);
        Assert.Equal(app.Clock.Now, view!.Course!.Batch.Planned.Timeline.Start);
    }

    [Fact]
    public async Task What_cannot_be_started_says_why_and_keeps_what_was_typed()
    {
        using HttpClient browser = app.Browser();
        Page wrong = await SendAsync(
            browser, $"/batches/start?{Query}", "start", ("name", ""), ("who", "Ada"), ("when", "at"), ("date", "2026-13-01"), ("time", "9 o'clock"), ("limit", "none"));
        Assert.Equal(HttpStatusCode.OK, wrong.Status);
        Assert.Contains("Give the batch a name", wrong.Text, StringComparison.Ordinal);
        Assert.Contains("is not a time", wrong.Text, StringComparison.Ordinal);
        Assert.Contains("Choose the limit", wrong.Text, StringComparison.Ordinal);
        Dictionary<string, string> typed = wrong.Form("start");
        Assert.Equal("Ada", typed["who"]);
        Assert.Equal("9 o'clock", typed["time"]);
        Assert.Contains("no plan to cook from", (await GetAsync(browser, "/batches/start?litres=abc&goal=litres")).Text, StringComparison.Ordinal);
        Assert.Contains("None yet", (await GetAsync(browser, "/batches")).Text, StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.NotFound, (await GetAsync(browser, "/batches/start?plan=nonsense")).Status);
        Assert.Equal(HttpStatusCode.NotFound, (await GetAsync(browser, $"/batches/start?plan={Guid.NewGuid()}")).Status);
    }

    [Fact]
    public async Task The_name_of_the_cook_is_kept_on_the_device()
    {
        using HttpClient browser = app.Browser();
        await StartAsync(browser, "Named", ("who", "Åsa ❤; \"x\""));
        Assert.Equal("Åsa ❤; \"x\"", (await GetAsync(browser, $"/batches/start?{Query}")).Form("start")["who"]);
    }
}
