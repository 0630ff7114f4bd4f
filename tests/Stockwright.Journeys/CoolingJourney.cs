using System.Text.RegularExpressions;
using Microsoft.Playwright;
using Stockwright.Journeys.Running;
using static Microsoft.Playwright.Assertions;

namespace Stockwright.Journeys;

/// <summary>Issue 4, done when: 10 L at 95 °C and a domestic fridge.</summary>
public sealed partial class CoolingJourney(AppFixture app, ChromiumFixture chromium)
{
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public async Task The_pot_in_the_fridge_fails_the_ways_that_pass_are_seen_and_the_curve_prints(bool scripts)
    {
        await using Visit visit = await chromium.VisitAsync(app, scripts: scripts);
        IPage page = visit.Page;
        await page.GotoAsync("/cooling");
        await page.GetByLabel("Stock", new() { Exact = true }).FillAsync("10");
        await page.GetByLabel("It starts at").FillAsync("95");
        await page.GetByRole(AriaRole.Button, new() { Name = "Work it out" }).ClickAsync();
        await Expect(page).ToHaveURLAsync(LitresTen());
        await Expect(page.Locator(".reply-head").First).ToContainTextAsync("Fails the limit at stage 1");
        ILocator ways = page.Locator("ol.ways > li");
        Assert.True(await ways.CountAsync() > 0, "No way passes.");
        await Expect(page.GetByRole(AriaRole.Img, new() { NameRegex = HouseholdFridge() }).First).ToBeVisibleAsync();
        await visit.AssertFitsWidthAsync();

        // Print media leaves the form out and the curve in.
        await page.EmulateMediaAsync(new() { Media = Media.Print });
        await Expect(page.Locator("svg.drawing-cooling").First).ToBeVisibleAsync();
        await Expect(page.Locator("form.planner")).ToBeHiddenAsync();
        await page.EmulateMediaAsync(new() { Media = Media.Screen });

        await ways.First.GetByRole(AriaRole.Link).ClickAsync();
        await Expect(page.Locator(".reply-head").First).ToContainTextAsync("Meets the limit");
        visit.AssertQuiet();
    }

    [GeneratedRegex("litres=10", RegexOptions.None, 1000)]
    private static partial Regex LitresTen();

    [GeneratedRegex("household fridge", RegexOptions.None, 1000)]
    private static partial Regex HouseholdFridge();
}
