using Stockwright.Journeys.Running;
using static Microsoft.Playwright.Assertions;

namespace Stockwright.Journeys;

/// <summary>What can be measured of the looks; the pictures are kept to be looked at.</summary>
public sealed class LooksJourney(AppFixture app, ChromiumFixture chromium)
{
    private const string Query = "?recipe=brown-chicken&when=start&time=15:00";

    /// <summary>
    /// Text whose contrast with what lies behind it is below WCAG 2.2, success criterion 1.4.3: 4.5, or 3 for text of at least
    /// 24 px, or bold of at least 18.66 px. Drawings are left out: their words lie over shapes.
    /// </summary>
    private const string TooFaint = """
        () => {
          const channels = colour => colour.match(/[\d.]+/g).map(Number);
          const luminance = ([r, g, b]) => {
            const [x, y, z] = [r, g, b].map(v => v / 255).map(v => v <= 0.04045 ? v / 12.92 : ((v + 0.055) / 1.055) ** 2.4);
            return 0.2126 * x + 0.7152 * y + 0.0722 * z;
          };
          const behind = element => {
            for (let e = element; e; e = e.parentElement) {
              const c = channels(getComputedStyle(e).backgroundColor);
              if (c.length < 4 || c[3] === 1) return c;
            }
            return [255, 255, 255];
          };
          const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
          const faint = new Set();
          let seen = 0;
          while (walker.nextNode()) {
            const element = walker.currentNode.parentElement;
            if (!walker.currentNode.data.trim() || !element.checkVisibility() || element.closest('svg, option, script, .visually-hidden, .skip')) continue;
            seen++;
            const style = getComputedStyle(element);
            const size = parseFloat(style.fontSize);
            const isLarge = size >= 24 || (size >= 18.66 && Number(style.fontWeight) >= 700);
            const [a, b] = [luminance(channels(style.color)), luminance(behind(element))].sort((x, y) => y - x);
            const contrast = (a + 0.05) / (b + 0.05);
            if (contrast < (isLarge ? 3 : 4.5)) faint.add(`${contrast.toFixed(2)}: ${walker.currentNode.data.trim().slice(0, 40)}`);
          }
          return seen < 40 ? [`only ${seen} texts were looked at`] : [...faint];
        }
        """;

    [Theory]
    [InlineData(Visit.PhoneWidth, false)]
    [InlineData(Visit.PhoneWidth, true)]
    [InlineData(Visit.DeskWidth, false)]
    [InlineData(Visit.DeskWidth, true)]
    public async Task The_planner_is_legible_and_fits(int width, bool dark)
    {
        await using Visit visit = await chromium.VisitAsync(app, width, dark);
        PlannerPage planner = new(visit.Page);
        await planner.OpenAsync(Query);
        await Expect(planner.Answer).ToBeInViewportAsync();
        foreach (string part in (string[])["What", "Pot and heat", "How much", "When", "Fine points"])
        {
            await planner.UnfoldAsync(part);
        }

        await visit.AssertFitsWidthAsync();
        Assert.Empty(await visit.Page.EvaluateAsync<string[]>(TooFaint));

        // Again as the reader first meets it: folds shut, at the top.
        await planner.OpenAsync(Query);
        FileInfo picture = await visit.KeepPictureAsync($"plan-{width}-{(dark ? "dark" : "light")}");
        Assert.True(picture.Length > 20_000, "The picture is all but empty.");
        visit.AssertQuiet();
    }

    [Fact]
    public async Task A_page_with_problems_is_legible_too()
    {
        await using Visit visit = await chromium.VisitAsync(app, dark: true);
        PlannerPage planner = new(visit.Page);
        await planner.OpenAsync("?goal=litres&litres=plenty&simmer=190");
        await visit.AssertFitsWidthAsync();
        Assert.Empty(await visit.Page.EvaluateAsync<string[]>(TooFaint));
        await visit.KeepPictureAsync("plan-problems-390-dark");
        visit.AssertQuiet();
    }
}
