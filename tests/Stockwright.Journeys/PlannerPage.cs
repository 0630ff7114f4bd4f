using System.Globalization;
using System.Text.RegularExpressions;
using Microsoft.Playwright;

namespace Stockwright.Journeys;

/// <summary>The planner as its reader meets it: by headings, labels and roles.</summary>
internal sealed partial class PlannerPage(IPage page)
{
    public ILocator Heading => page.GetByRole(AriaRole.Heading, new() { Level = 1 });

    public ILocator Answer => page.GetByRole(AriaRole.Region, new() { Name = "The plan in short" });

    public ILocator WorkItOut => page.GetByRole(AriaRole.Button, new() { Name = "Work it out" });

    public ILocator Problems => page.GetByRole(AriaRole.Alert);

    public ILocator Recipe => page.GetByLabel("Recipe", new() { Exact = true });

    public ILocator Pot => page.GetByLabel("Pot", new() { Exact = true });

    public ILocator Hours => page.GetByLabel("for", new() { Exact = true });

    public ILocator StockStrained => page.GetByLabel("Stock, strained");

    public ILocator SoMany(string measure) => page.GetByRole(AriaRole.Radio, new() { Name = "so many " + measure });

    public async Task OpenAsync(string query = "")
    {
        IResponse? response = await page.GotoAsync("/plan" + query);
        Assert.Equal(200, response?.Status);
    }

    /// <summary>Unfolds a part of the form; one that is open stays so.</summary>
    public async Task UnfoldAsync(string title)
    {
        ILocator fold = page.Locator("details.fold").Filter(new() { Has = page.Locator("summary b").GetByText(title, new() { Exact = true }) });
        if (await fold.GetAttributeAsync("open") is null)
        {
            await fold.Locator("summary").ClickAsync();
        }
    }

    /// <summary>Value of one of the facts of the first screenful.</summary>
    public async Task<string> FactAsync(string name) =>
        (await Answer.Locator(".fact").Filter(new() { HasText = name }).Locator(".fact-value").InnerTextAsync()).Trim();

    /// <summary>Name, weight shown first and the whole row, for every row of the amounts.</summary>
    public async Task<IReadOnlyList<(string Name, string Weight)>> AmountsAsync()
    {
        ILocator rows = page.GetByRole(AriaRole.Region, new() { Name = "What goes in" }).Locator("tbody tr");
        List<(string, string)> amounts = [];
        foreach (ILocator row in await rows.AllAsync())
        {
            string name = (await row.Locator("th").InnerTextAsync()).Split('\n')[0].Trim();
            amounts.Add((name, await row.Locator("td b").First.InnerTextAsync()));
        }

        return amounts;
    }

    /// <summary>Total of the water that goes in, litres.</summary>
    public async Task<double> LedgerTotalLitresAsync() => Number(
        await page.GetByRole(AriaRole.Row).Filter(new() { HasText = "In, all told" }).Locator("td").First.InnerTextAsync());

    /// <summary>The first number of a text.</summary>
    public static double Number(string text)
    {
        Match match = Digits().Match(text);
        Assert.True(match.Success, $"There is no number in '{text}'.");
        return double.Parse(match.Value, CultureInfo.InvariantCulture);
    }

    /// <summary>A weight as the page writes it, in kilograms.</summary>
    public static double Kilograms(string text) => text.TrimEnd().EndsWith("kg", StringComparison.Ordinal) ? Number(text) : Number(text) / 1000;

    [GeneratedRegex(@"-?[0-9]+(\.[0-9]+)?", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Digits();
}
