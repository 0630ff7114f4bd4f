using Microsoft.Playwright;
using Stockwright.Journeys.Running;
using static Microsoft.Playwright.Assertions;

namespace Stockwright.Journeys;

/// <summary>WCAG 2.2, success criteria 2.1.1 (keyboard), 2.4.1 (bypass blocks) and 2.4.7 (focus visible).</summary>
public sealed class KeyboardJourney(AppFixture app, ChromiumFixture chromium)
{
    private const int MostTabs = 60;

    [Fact]
    public async Task A_plan_is_made_with_the_keyboard_alone()
    {
        await using Visit visit = await chromium.VisitAsync(app, Visit.DeskWidth);
        IPage page = visit.Page;
        PlannerPage planner = new(page);
        await planner.OpenAsync();

        await page.Keyboard.PressAsync("Tab");
        await Expect(page.GetByRole(AriaRole.Link, new() { Name = "Skip to the content" })).ToBeFocusedAsync();
        await page.Keyboard.PressAsync("Enter");

        // From the content on, no link of the frame comes in between.
        await TabToAsync(page, page.Locator("#fold-what > summary"));
        await page.Keyboard.PressAsync("Enter");
        await TabToAsync(page, planner.Recipe);
        await page.Keyboard.TypeAsync("White ch");
        await Expect(planner.Heading).ToHaveTextAsync("White chicken stock");

        await TabToAsync(page, planner.WorkItOut);
        await page.Keyboard.PressAsync("Enter");
        await Expect(planner.Answer).ToBeVisibleAsync();
        visit.AssertQuiet();
    }

    private static async Task TabToAsync(IPage page, ILocator target)
    {
        for (int i = 0; i < MostTabs; i++)
        {
            await page.Keyboard.PressAsync("Tab");
            bool isMarked = await page.EvaluateAsync<bool>("() => { const s = getComputedStyle(document.activeElement); return s.outlineStyle !== 'none' && parseFloat(s.outlineWidth) >= 2; }");
            Assert.True(isMarked, "What has the focus does not show it.");
            if (await target.EvaluateAsync<bool>("element => element === document.activeElement"))
            {
                return;
            }
        }

        Assert.Fail($"Not reached with {MostTabs} presses of Tab.");
    }
}
