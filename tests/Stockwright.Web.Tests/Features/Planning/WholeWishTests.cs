using System.Globalization;
using System.Net;
using System.Net.Http.Json;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using Microsoft.AspNetCore.WebUtilities;
using Xunit;

namespace Stockwright.Web.Tests.Features.Planning;

/// <summary>A wish of several potfuls says the same on the page, on the sheet and in the interface: the total is that of all of them, and each link to another way keeps its promise.</summary>
public sealed partial class WholeWishTests(StockwrightFactory factory)
{
    private const string Pot = "&units=metric&pot=own&pot-diameter=28&pot-height=32.5&hob=own&hob-kind=induction&hob-power=3.5";

    private readonly HttpClient client = factory.Reader();

    // 25 L from a pot that makes nine at once: three potfuls of 8.33 L.
    [Theory]
    [InlineData("recipe=brown-beef&goal=litres&litres=25", 3)]
    [InlineData("recipe=brown-beef&goal=litres&litres=25&pots=2&hobs=2", 3)]
    [InlineData("recipe=brown-beef&goal=portions&portion-count=100&portion-size=250&way=rounds", 3)]
    [InlineData("recipe=brown-beef&goal=litres&litres=5", 1)]
    public async Task The_total_is_all_potfuls_on_page_sheet_and_interface(string wish, int potfuls)
    {
        JsonNode plan = await PlanAsync(wish + Pot);
        Assert.Equal(potfuls, (int)plan["fit"]!["potfuls"]!);
        foreach (string end in new[] { "low", "central", "high" })
        {
            Assert.Equal(potfuls * (double)plan["yieldCubicMetres"]![end]!, (double)plan["totalCubicMetres"]![end]!, 1e-12);
        }

        string litres = potfuls == 1 ? "5 L" : "25 L";
        Assert.Contains($"<span class=\"fact-value\">{litres}</span>", await PageAsync("/plan?" + wish + Pot), StringComparison.Ordinal);
        string sheet = await PageAsync("/plan/print?" + wish + Pot);
        Assert.Contains($"<b>{litres}</b> (", sheet, StringComparison.Ordinal);
        Assert.Equal(potfuls > 1, sheet.Contains($"Weigh, for each of {potfuls} potfuls", StringComparison.Ordinal));
    }

    // As bought, peel and all, times the potfuls; water to the line and to top up as well.
    [Fact]
    public async Task For_all_is_as_bought_times_the_potfuls()
    {
        const string Wish = "recipe=brown-beef&goal=litres&litres=25&lid=off" + Pot;
        JsonNode plan = await PlanAsync(Wish);
        string page = await PageAsync("/plan?" + Wish);
        Assert.Contains(">For all 3</th>", page, StringComparison.Ordinal);
        int weighed = 0;
        int peeled = 0;
        foreach (JsonNode? amount in plan["amounts"]!.AsArray())
        {
            double bought = (double)amount!["asBoughtMassKilograms"]!;
            string[] cells = Cells(page, (string)amount["name"]!);
            Assert.Equal(3, cells.Length);
            if (Measured(cells[2]) is { } all)
            {
                Assert.Equal(1, all / (3 * bought), 0.03);
                weighed++;
                peeled += bought > 1.05 * (double)amount["massKilograms"]! ? 1 : 0;
            }
        }

        Assert.True(weighed >= 5 && peeled >= 2, $"{weighed} weighed, {peeled} peeled");
        Assert.Equal(1, Measured(Cells(page, "Cold water, to the line")[2])!.Value / (3000 * (double)plan["fit"]!["waterToLineCubicMetres"]!), 0.02);
        string[] topUp = Cells(page, "Water, to top up");
        Assert.Equal(1, Measured(topUp[2])!.Value / (3 * Measured(topUp[0])!.Value), 0.05);
    }

    // Each way once; its link opened gives what was promised of it: volume, potfuls, moment and handwork.
    [Theory]
    [InlineData("recipe=brown-beef&goal=litres&litres=10", 3)]
    [InlineData("recipe=brown-beef&goal=litres&litres=13&pots=2&hobs=2", 3)]
    [InlineData("recipe=brown-chicken&goal=litres&litres=25&pots=2&hobs=2&when=ready&date=2026-11-29&time=18:00", 2)]
    [InlineData("recipe=brown-beef&goal=bones&bones-0-cut=beef-knuckle&bones-0-kg=9", 3)]
    [InlineData("recipe=white-veal&goal=portions&portion-count=44&portion-size=250&night=oven&date=2026-11-27&time=15:00", 1)]
    [InlineData("recipe=brown-beef&goal=litres&litres=5", 0)]
    public async Task Each_way_is_listed_once_and_its_link_keeps_its_promise(string wish, int least)
    {
        JsonNode plan = await PlanAsync(wish + Pot);
        JsonArray ways = plan["ways"]!.AsArray();
        Assert.True(ways.Count >= least && ways.Count <= 3, $"{ways.Count} ways");
        Assert.Equal(ways.Count, ways.Select(way => (string?)way!["way"]).Distinct(StringComparer.Ordinal).Count());
        Assert.Equal(ways.Count, ways.Select(way => (string?)way!["link"]).Distinct(StringComparer.Ordinal).Count());
        string page = ways.Count > 1 ? await PageAsync("/plan?" + wish + Pot) : "";
        foreach (JsonNode? way in ways)
        {
            string link = (string)way!["link"]!;
            JsonNode opened = await PlanAsync(link[(link.IndexOf('?', StringComparison.Ordinal) + 1)..]);
            Assert.Equal((double)way["totalCubicMetres"]!, (double)opened["totalCubicMetres"]!["central"]!, 1e-9);
            Assert.Equal((int)way["potfuls"]!, (int)opened["fit"]!["potfuls"]!);
            Assert.Equal((double)way["letDownCubicMetres"]!, (double)opened["fit"]!["letDownCubicMetres"]!, 1e-9);
            Assert.Equal((DateTimeOffset)way["start"]!, (DateTimeOffset)opened["timeline"]!["start"]!);
            Assert.Equal((DateTimeOffset)way["ready"]!, (DateTimeOffset)opened["timeline"]!["ready"]!);
            Assert.Equal((double)way["handsOnSeconds"]!, (double)opened["timeline"]!["handsOnSeconds"]!, 1e-6);
            Assert.True(ReferenceEquals(way, ways[0]) || page.Contains($"href=\"{WebUtility.HtmlEncode(link)}\"", StringComparison.Ordinal), link);
        }
    }

    /// <summary>Cells of the row of the amounts whose header begins with a name.</summary>
    private static string[] Cells(string page, string name)
    {
        string row = RowPattern().Matches(page).Select(match => match.Value).First(row => Bare(row[row.IndexOf("<th", StringComparison.Ordinal)..row.IndexOf("</th>", StringComparison.Ordinal)]).Trim().StartsWith(name, StringComparison.Ordinal));
        return [.. CellPattern().Matches(row).Select(match => Bare(match.Value).Trim())];
    }

    private static string Bare(string html) => WebUtility.HtmlDecode(TagPattern().Replace(html, " "));

    /// <summary>Kilograms or litres a text begins with; null when it begins with pieces.</summary>
    private static double? Measured(string text)
    {
        Match match = MeasurePattern().Match(text);
        return match.Success ? double.Parse(match.Groups["number"].Value, CultureInfo.InvariantCulture) * (match.Groups["unit"].Value is "g" or "mL" ? 1e-3 : 1) : null;
    }

    [GeneratedRegex("<tr.*?</tr>", RegexOptions.Singleline, 1000)]
    private static partial Regex RowPattern();

    [GeneratedRegex("<td.*?</td>", RegexOptions.Singleline, 1000)]
    private static partial Regex CellPattern();

    [GeneratedRegex("<[^>]*>", RegexOptions.None, 1000)]
    private static partial Regex TagPattern();

    [GeneratedRegex(@"^(?<number>[0-9.]+)\s(?<unit>kg|g|mL|L)\b", RegexOptions.None, 1000)]
    private static partial Regex MeasurePattern();

    private async Task<JsonNode> PlanAsync(string query)
    {
        Dictionary<string, string> fields = QueryHelpers.ParseQuery(query).ToDictionary(pair => pair.Key, pair => pair.Value.ToString(), StringComparer.Ordinal);
        using HttpResponseMessage response = await client.PostAsJsonAsync("/api/plans", fields, TestContext.Current.CancellationToken);
        string text = await response.Content.ReadAsStringAsync(TestContext.Current.CancellationToken);
        Assert.True(response.StatusCode == HttpStatusCode.OK, text);
        return JsonNode.Parse(text)!;
    }

    private async Task<string> PageAsync(string address)
    {
        using HttpResponseMessage response = await client.GetAsync(address, TestContext.Current.CancellationToken);
        Assert.Equal(HttpStatusCode.OK, response.StatusCode);
        return (await response.Content.ReadAsStringAsync(TestContext.Current.CancellationToken)).Replace("&#xA0;", " ", StringComparison.Ordinal).Replace('\u00A0', ' ');
    }
}
