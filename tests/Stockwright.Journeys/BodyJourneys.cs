using Microsoft.Playwright;
using Stockwright.Journeys.Running;
using static Microsoft.Playwright.Assertions;

namespace Stockwright.Journeys;

/// <summary>Will it set, how sure is that, and what would make it firmer.</summary>
public sealed class BodyJourneys(AppFixture app, ChromiumFixture chromium)
{
    [Fact]
    public async Task With_scripts_off_a_cook_sees_the_chances_asks_for_a_firmer_jelly_and_reduces_the_stock()
    {
        await using Visit visit = await chromium.VisitAsync(app, scripts: false);
        IPage page = visit.Page;
        PlannerPage planner = new(page);
        await planner.OpenAsync("?recipe=brown-chicken");
        Assert.Matches("jelly.*in 10", await planner.FactAsync("Body"));
        await Expect(page.GetByRole(AriaRole.Img, new() { Name = "How it may set" })).ToBeVisibleAsync();

        // A longer simmer is one link of the table, and the plan follows.
        await planner.UnfoldAsync("Longer or shorter");
        await page.GetByRole(AriaRole.Link, new() { Name = "8 h", Exact = true }).ClickAsync();
        await visit.ExpectInAddressAsync("hours=8");

        // The rows stand outside the form element and are sent with it all the same.
        await planner.UnfoldAsync("Make it set");
        await page.GetByLabel("It should be").SelectOptionAsync("very-firm");
        await page.GetByLabel("Cut at hand 1").SelectOptionAsync("chicken-feet");
        await page.GetByLabel("Price", new() { Exact = true }).First.FillAsync("4,50");
        await page.GetByRole(AriaRole.Button, new() { Name = "Find the cheapest" }).ClickAsync();
        await visit.ExpectInAddressAsync("hours=8");
        await Expect(page.GetByText("For a very firm jelly add:")).ToBeVisibleAsync();
        await Expect(page.GetByLabel("Price", new() { Exact = true }).First).ToHaveValueAsync("4,50");

        await planner.UnfoldAsync("Body in numbers");
        await page.GetByRole(AriaRole.Link, new() { Name = "strength arithmetic with this stock" }).ClickAsync();
        await Expect(planner.Heading).ToHaveTextAsync("Strength");
        ILocator answer = page.GetByRole(AriaRole.Region, new() { Name = "The answer" });
        await Expect(answer).ToContainTextAsync("Boil off");
        await page.GetByLabel("Boil down to").FillAsync("more");
        await page.GetByRole(AriaRole.Button, new() { Name = "Work it out" }).First.ClickAsync();
        await Expect(page.GetByLabel("Boil down to")).ToHaveValueAsync("more");
        await Expect(page.GetByRole(AriaRole.Alert)).ToContainTextAsync("'more' is not a number");
        visit.AssertQuiet();
    }

    [Theory]
    [InlineData(Visit.PhoneWidth, false)]
    [InlineData(Visit.PhoneWidth, true)]
    [InlineData(Visit.DeskWidth, false)]
    public async Task Body_what_if_and_strength_fit_the_width(int width, bool dark)
    {
        await using Visit visit = await chromium.VisitAsync(app, width, dark);
        PlannerPage planner = new(visit.Page);
        await planner.OpenAsync("?recipe=white-veal&set-target=glace&set-0-cut=chicken-feet&set-0-price=4&more-0-cut=pork-skin&more-0-kg=0.5");
        foreach (string part in (string[])["The words for body", "Body in numbers", "Fat", "Fridge, container, portions", "Longer or shorter", "Hotter or cooler", "Nutrition", "Allergens"])
        {
            await planner.UnfoldAsync(part);
        }

        await visit.AssertFitsWidthAsync();
        await visit.KeepPictureAsync($"body-{width}-{(dark ? "dark" : "light")}");

        await visit.Page.GotoAsync("/strength?do=reduce&reduce-volume=4&reduce-to=1&reduce-gelatin=2.2&reduce-salt=0.2");
        await visit.AssertFitsWidthAsync();

        // Eight names in two rows at most, also on a phone.
        LocatorBoundingBoxResult? first = await visit.Page.GetByRole(AriaRole.Link, new() { Name = "Plan", Exact = true }).BoundingBoxAsync();
        LocatorBoundingBoxResult? last = await visit.Page.GetByRole(AriaRole.Link, new() { Name = "Kitchen", Exact = true }).BoundingBoxAsync();
        Assert.InRange(last!.Y - first!.Y, -1, first.Height + 1);
        await visit.KeepPictureAsync($"strength-{width}-{(dark ? "dark" : "light")}");
        visit.AssertQuiet();
    }
}
