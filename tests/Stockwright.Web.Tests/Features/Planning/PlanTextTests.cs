using System.Net;
using System.Text.RegularExpressions;
using Stockwright.Recipes;
using Xunit;

namespace Stockwright.Web.Tests.Features.Planning;

/// <summary>What the plan says of the pot is true of what is in it, and every amount can be measured.</summary>
public sealed partial class PlanTextTests(StockwrightFactory factory)
{
    private readonly HttpClient client = factory.Reader();

    public static TheoryData<string> Recipes => [.. StandardRecipes.Book.Recipes.Select(recipe => recipe.Id)];

    [Theory]
    [InlineData("vegetable", "the vegetables")]
    [InlineData("mushroom", "the mushrooms")]
    [InlineData("kelp", "the kelp")]
    [InlineData("white-veal", "the bones")]
    public async Task Covered_is_what_is_there(string recipe, string solids)
    {
        string page = await WordsAsync($"/plan?recipe={recipe}&goal=litres&litres=2");
        Assert.Contains($"over {solids}.", page, StringComparison.Ordinal);
        Assert.Contains($"only to keep {solids} covered", page, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("kelp", "Warm slowly to", "over 1 h", "warming slowly from the start")]
    [InlineData("kelp-and-dried-fish", "Steep at", "for 3 min", "steeping from the start")]
    public async Task Kelp_is_steeped(string recipe, string at, string time, string heat)
    {
        string plan = await WordsAsync($"/plan?recipe={recipe}&goal=litres&litres=2");
        Assert.Contains(at, plan, StringComparison.Ordinal);
        Assert.Contains(heat, plan, StringComparison.Ordinal);
        Assert.DoesNotContain("simmering", plan, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("the simmer", plan, StringComparison.OrdinalIgnoreCase);
        string sheet = await WordsAsync($"/plan/print?recipe={recipe}&goal=litres&litres=2");
        Assert.Matches($"{at} [0-9]+ °C {time}", sheet);
        Assert.DoesNotContain("simmer", sheet, StringComparison.OrdinalIgnoreCase);
    }

    [Fact]
    public async Task It_is_told_what_a_line_is_counted_from()
    {
        string page = await WordsAsync("/plan?recipe=brown-chicken&hours=4");
        Assert.Contains("in 1 h after it simmers", page, StringComparison.Ordinal);
        Assert.Contains("in 1 h before the end", page, StringComparison.Ordinal);
        Assert.DoesNotContain("in after 1 h", page, StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Recipes))]
    public async Task No_amount_is_too_small_for_a_kitchen_scale(string recipe)
    {
        Assert.DoesNotMatch(OuncesUnseen(), Amounts(await PageAsync($"/plan?recipe={recipe}&goal=litres&litres=2&units=us")));
        Assert.DoesNotMatch(GramsUnseen(), Amounts(await PageAsync($"/plan?recipe={recipe}&goal=litres&litres=2&units=metric")));
        Assert.DoesNotMatch(OuncesUnseen(), Amounts(await PageAsync($"/plan/print?recipe={recipe}&goal=litres&litres=2&units=us")));
        Assert.DoesNotMatch(OuncesUnseen(), await WordsAsync($"/recipes/{recipe}"));
    }

    // Half full it stands over 10 cm below the rim, where a single length is read in centimetres.
    [Theory]
    [InlineData("metric", @"[0-9]+ to [0-9]+ mm|[0-9]+ mm", @"^[0-9]+ mm(, add .*)?$")]
    [InlineData("us", @"[0-9½¼¾⅛⅜⅝⅞]+ to [0-9½¼¾⅛⅜⅝⅞]+ in|[0-9½¼¾⅛⅜⅝⅞]+ in", @"^[0-9½¼¾⅛⅜⅝⅞]+ in(, add .*)?$")]
    public async Task Levels_keep_one_unit(string units, string level, string check)
    {
        const string Query = "recipe=white-beef&lid=off&topup=none&hours=9&goal=fill&fill=half";
        string[] told = [.. Told().Matches(await WordsAsync($"/plan?{Query}&units={units}")).Select(match => match.Groups["level"].Value)];
        Assert.True(told.Length > 4, $"{told.Length} levels");
        Assert.All(told, words => Assert.Matches($"^({level})$", words));
        string sheet = await PageAsync($"/plan/print?{Query}&units={units}");
        string[] listed = [.. Listed().Matches(sheet).Select(match => Plain(match.Groups["check"].Value).Trim())];
        Assert.True(listed.Length > 4, $"{listed.Length} checks");
        Assert.All(listed, words => Assert.Matches(check, words));
    }

    private async Task<string> PageAsync(string address) => await client.GetStringAsync(address, TestContext.Current.CancellationToken);

    private async Task<string> WordsAsync(string address) => Plain(Tags().Replace(await PageAsync(address), " "));

    private static string Amounts(string page)
    {
        Match table = Table().Match(page);
        Assert.True(table.Success || page.Contains("Nothing but the stock goes in", StringComparison.Ordinal) || page.Contains("class=\"sheet\"", StringComparison.Ordinal));
        return Plain(Tags().Replace(table.Value, " "));
    }

    private static string Plain(string html) => Blanks().Replace(WebUtility.HtmlDecode(html).Replace('\u00A0', ' '), " ");

    [GeneratedRegex(@"(?<![0-9.])0\.0[0-9]* oz", RegexOptions.None, 1000)]
    private static partial Regex OuncesUnseen();

    [GeneratedRegex(@"(?<![0-9.])0\.[0-9]+ g(?![a-z])", RegexOptions.None, 1000)]
    private static partial Regex GramsUnseen();

    [GeneratedRegex("<[^>]*>", RegexOptions.None, 1000)]
    private static partial Regex Tags();

    [GeneratedRegex(@"\s+", RegexOptions.None, 1000)]
    private static partial Regex Blanks();

    [GeneratedRegex("<table class=\"amounts\">.*?</table>", RegexOptions.Singleline, 1000)]
    private static partial Regex Table();

    [GeneratedRegex("The level should stand (?<level>.*?) below the rim", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Told();

    [GeneratedRegex("<li><span class=\"tickbox\"></span> <b>[^<]*</b>(?<check>[^<]*)</li>", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Listed();
}
