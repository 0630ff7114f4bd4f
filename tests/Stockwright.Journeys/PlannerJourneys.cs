using Microsoft.Playwright;
using Stockwright.Journeys.Running;
using static Microsoft.Playwright.Assertions;

namespace Stockwright.Journeys;

/// <summary>Ways through the planner that must hold for every reader.</summary>
public sealed class PlannerJourneys(AppFixture app, ChromiumFixture chromium)
{
    [Fact]
    public async Task With_scripts_off_the_form_does_its_whole_job()
    {
        await using Visit visit = await chromium.VisitAsync(app, scripts: false);
        PlannerPage planner = new(visit.Page);
        await planner.OpenAsync();
        await planner.UnfoldAsync("What");
        await planner.Recipe.SelectOptionAsync("Vegetable stock");
        await planner.UnfoldAsync("How much");
        await planner.SoMany("litres").CheckAsync();
        await planner.StockStrained.FillAsync("2,5");
        await planner.WorkItOut.ClickAsync();

        await Expect(planner.Heading).ToHaveTextAsync("Vegetable stock");
        Assert.Equal(2.5, PlannerPage.Number(await planner.FactAsync("You get")), 0.051);

        // A comma stays a comma: what was typed is shown again as it was typed.
        await planner.UnfoldAsync("How much");
        await Expect(planner.StockStrained).ToHaveValueAsync("2,5");
    }

    [Fact]
    public async Task Answers_follow_the_inputs_without_a_press_and_the_address_says_the_plan()
    {
        await using Visit visit = await chromium.VisitAsync(app);
        PlannerPage planner = new(visit.Page);
        await planner.OpenAsync();
        await planner.UnfoldAsync("What");
        await planner.Recipe.SelectOptionAsync("Vegetable stock");

        await Expect(planner.Heading).ToHaveTextAsync("Vegetable stock");
        await visit.ExpectInAddressAsync("recipe=vegetable");
        string yield = await planner.FactAsync("You get");

        await visit.Page.ReloadAsync();
        Assert.Equal(yield, await planner.FactAsync("You get"));
        visit.AssertQuiet();
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public async Task A_bad_number_is_explained_beside_its_field_and_the_rest_is_kept(bool scripts)
    {
        await using Visit visit = await chromium.VisitAsync(app, scripts: scripts);
        PlannerPage planner = new(visit.Page);
        await planner.OpenAsync("?recipe=white-beef&hours=5,5&goal=litres&litres=3");
        await planner.UnfoldAsync("How much");
        await planner.StockStrained.FillAsync("a bucket");
        await planner.WorkItOut.ClickAsync();

        await Expect(planner.Problems).ToContainTextAsync("One thing to put right");
        await Expect(planner.StockStrained).ToBeVisibleAsync();
        await Expect(planner.StockStrained).ToHaveAttributeAsync("aria-invalid", "true");
        await Expect(planner.StockStrained).ToHaveAccessibleDescriptionAsync("'a bucket' is not a number. Write it like 2.5 or 2,5.");
        await Expect(planner.StockStrained).ToHaveValueAsync("a bucket");
        await Expect(planner.Hours).ToHaveValueAsync("5,5");
        await Expect(planner.Recipe).ToHaveValueAsync("white-beef");

        // Put right, it plans.
        await planner.StockStrained.FillAsync("3,5");
        await planner.WorkItOut.ClickAsync();
        await Expect(planner.Answer).ToBeVisibleAsync();
        await Expect(planner.Problems).ToHaveCountAsync(0);
        visit.AssertQuiet();
    }

    [Theory]
    [InlineData("?goal=litres&litres=-1", "litres")]
    [InlineData("?goal=litres&litres=0", "litres")]
    [InlineData("?goal=litres", "litres")]
    [InlineData("?pot=own&pot-diameter=24&pot-height=900", "pot-height")]
    [InlineData("?simmer=190", "simmer")]
    [InlineData("?recipe=moon-rock", "recipe")]
    [InlineData("?goal=bones&bones-0-cut=chicken-carcass&bones-0-kg=1,234", "bones-0-kg")]
    public async Task A_link_that_cannot_be_planned_says_so_at_its_field(string query, string field)
    {
        await using Visit visit = await chromium.VisitAsync(app, scripts: false);
        PlannerPage planner = new(visit.Page);
        await planner.OpenAsync(query);
        await Expect(planner.Problems).ToBeVisibleAsync();
        await Expect(visit.Page.Locator($"[name='{field}']")).ToBeVisibleAsync();
        await Expect(visit.Page.Locator($"[name='{field}']")).ToHaveAttributeAsync("aria-invalid", "true");
        visit.AssertQuiet();
    }

    [Fact]
    public async Task A_link_from_a_later_version_is_planned_as_far_as_it_is_understood()
    {
        await using Visit visit = await chromium.VisitAsync(app);
        PlannerPage planner = new(visit.Page);
        await planner.OpenAsync("?v=99&recipe=turkey&moonphase=full");
        await Expect(planner.Heading).ToHaveTextAsync("Turkey stock");
        await Expect(visit.Page.GetByRole(AriaRole.Status).First).ToContainTextAsync("newer version");
        await Expect(visit.Page.GetByText("moonphase")).ToBeVisibleAsync();
    }

    [Fact]
    public async Task Changing_the_measures_keeps_the_plan_there_and_back()
    {
        await using Visit visit = await chromium.VisitAsync(app);
        PlannerPage planner = new(visit.Page);
        await planner.OpenAsync("?recipe=lamb&goal=litres&litres=3,2&hours=5");
        string yield = await planner.FactAsync("You get");
        string fill = await planner.FactAsync("Fill to");

        await visit.Page.GetByRole(AriaRole.Link, new() { Name = "US measures" }).ClickAsync();
        await Expect(planner.Heading).ToHaveTextAsync("Lamb stock");

        // 3.2 L are 3.381 US quarts (NIST SP 811: one US quart is 0.946 352 946 L).
        await planner.UnfoldAsync("How much");
        Assert.Equal(3.2 / 0.946352946, PlannerPage.Number(await planner.StockStrained.InputValueAsync()), 0.005);
        Assert.EndsWith("in", await planner.FactAsync("Fill to"), StringComparison.Ordinal);

        await visit.Page.GetByRole(AriaRole.Link, new() { Name = "Metric" }).ClickAsync();
        await Expect(planner.Heading).ToHaveTextAsync("Lamb stock");
        Assert.Equal(yield, await planner.FactAsync("You get"));
        Assert.Equal(fill, await planner.FactAsync("Fill to"));
        await planner.UnfoldAsync("Fine points");
        await Expect(planner.Hours).ToHaveValueAsync("5");
        visit.AssertQuiet();
    }
}
