using System.Net;
using System.Net.Http.Json;
using System.Text.Json;
using Microsoft.AspNetCore.WebUtilities;
using Stockwright.Journeys.Running;
using static Microsoft.Playwright.Assertions;

namespace Stockwright.Journeys;

/// <summary>Issue 2, "Done when": a newcomer plans a brown chicken stock for a pot of ten litres, on a phone and over HTTP.</summary>
public sealed class NewcomerJourney(AppFixture app, ChromiumFixture chromium)
{
    [Fact]
    public async Task A_newcomer_plans_brown_chicken_stock_on_a_phone_and_gets_the_same_numbers_over_http()
    {
        await using Visit visit = await chromium.VisitAsync(app);
        PlannerPage planner = new(visit.Page);
        await visit.Page.GotoAsync("/");
        await visit.Page.GetByRole(Microsoft.Playwright.AriaRole.Link, new() { Name = "Plan a batch" }).ClickAsync();
        await visit.ExpectInAddressAsync("/plan");
        await planner.UnfoldAsync("What");
        await planner.Recipe.SelectOptionAsync("Brown chicken stock");
        await planner.UnfoldAsync("Pot and heat");
        string tenLitres = await planner.Pot.Locator("option").Filter(new() { HasText = "10 L pot" }).First.GetAttributeAsync("value") ?? "";
        await planner.Pot.SelectOptionAsync(tenLitres);
        await planner.WorkItOut.ClickAsync();
        await visit.ExpectInAddressAsync("recipe=brown-chicken");
        await Expect(planner.Heading).ToHaveTextAsync("Brown chicken stock");
        await visit.AssertFitsWidthAsync();

        JsonElement plan = await PostAsync(new Uri(visit.Page.Url).Query);

        double litres = 1000 * plan.GetProperty("yieldCubicMetres").GetProperty("central").GetDouble();
        Assert.InRange(PlannerPage.Number(await planner.FactAsync("You get")), 0.98 * litres, 1.02 * litres);
        JsonElement fit = plan.GetProperty("fit");
        double millimetres = 1000 * fit.GetProperty("fillLineFromRimMetres").GetDouble();
        Assert.InRange(PlannerPage.Number(await planner.FactAsync("Fill to")), millimetres - 0.51, millimetres + 0.51);

        await planner.UnfoldAsync("Where the water goes");

        // The ledger is written to the hundredth of a litre.
        double total = 1000 * plan.GetProperty("ledger").GetProperty("totalInCubicMetres").GetDouble();
        Assert.InRange(await planner.LedgerTotalLitresAsync(), total - 0.0051, total + 0.0051);

        // Kitchen rounding changes no amount by more than 2 % (issue 2, "What it computes", 1).
        Dictionary<string, string> shown = (await planner.AmountsAsync()).ToDictionary(row => row.Name, row => row.Weight, StringComparer.Ordinal);
        JsonElement amounts = plan.GetProperty("amounts");
        Assert.True(shown.Values.Count(weight => weight.EndsWith('g')) >= 4, "A brown chicken stock has bones and three vegetables by weight.");
        foreach (JsonElement amount in amounts.EnumerateArray())
        {
            string weight = shown[amount.GetProperty("name").GetString()!];
            if (weight.EndsWith('g'))
            {
                double kilograms = amount.GetProperty("massKilograms").GetDouble();
                Assert.InRange(PlannerPage.Kilograms(weight), 0.98 * kilograms, 1.02 * kilograms);
            }
            else
            {
                // A pinch is not weighed: spoons and leaves come first.
                Assert.Equal(amount.GetProperty("pieces").GetString(), weight);
            }
        }

        visit.AssertQuiet();
    }

    [Fact]
    public async Task The_front_page_leads_to_the_planner()
    {
        using HttpResponseMessage answer = await app.Client.GetAsync(new Uri("/", UriKind.Relative), TestContext.Current.CancellationToken);
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        Assert.Contains("href=\"/plan\">Plan a batch</a>", await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken), StringComparison.Ordinal);
    }

    private async Task<JsonElement> PostAsync(string query)
    {
        Dictionary<string, string> fields = QueryHelpers.ParseQuery(query).ToDictionary(pair => pair.Key, pair => pair.Value.ToString(), StringComparer.Ordinal);
        using HttpResponseMessage answer = await app.Client.PostAsJsonAsync(
            new Uri("/api/plans", UriKind.Relative), fields, TestContext.Current.CancellationToken);
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        return await answer.Content.ReadFromJsonAsync<JsonElement>(TestContext.Current.CancellationToken);
    }
}
