using System.Net;
using System.Text.RegularExpressions;
using Xunit;

namespace Stockwright.Web.Tests.Features.Planning.Answer;

/// <summary>What the plan page says of body, fat, cuts, nutrition and allergens.</summary>
public sealed partial class BodyOnThePlanTests(StockwrightFactory factory)
{
    private readonly HttpClient client = factory.Reader();

    [Fact]
    public async Task Bones_show_their_body_with_its_chance_beside_the_yield()
    {
        string page = await PageAsync("/plan?recipe=white-veal");
        string answer = page[page.IndexOf("class=\"answer\"", StringComparison.Ordinal)..page.IndexOf("<form", StringComparison.Ordinal)];
        Assert.Matches(@"Body</span>\s*<span class=""fact-value"">(Soft|Firm) jelly <span class=""chance"">[4-9] in 10", answer);
        Assert.Contains("class=\"drawing drawing-bodies\"", page, StringComparison.Ordinal);
        Assert.Contains("Body against time", page, StringComparison.Ordinal);
        Assert.Contains("little more from here", page, StringComparison.Ordinal);
        Assert.Contains("Fat to keep", page, StringComparison.Ordinal);
        Assert.DoesNotContain("Not yet predicted", page, StringComparison.OrdinalIgnoreCase);
    }

    [Fact]
    public async Task Chances_of_the_eight_words_add_up()
    {
        string page = await PageAsync("/plan?recipe=brown-veal");
        string table = page[page.IndexOf("id=\"fold-chances\"", StringComparison.Ordinal)..page.IndexOf("id=\"fold-body-numbers\"", StringComparison.Ordinal)];
        int[] chances = [.. Chances().Matches(table).Select(match => int.Parse(match.Groups["chance"].ValueSpan, System.Globalization.CultureInfo.InvariantCulture))];
        Assert.Equal(8, chances.Length);
        Assert.InRange(chances.Sum(), 97, 103);
    }

    [Fact]
    public async Task Vegetables_are_watery_and_the_page_says_so_plainly()
    {
        string page = await PageAsync("/plan?recipe=vegetable");
        Assert.Matches(@"Body</span>\s*<span class=""fact-value"">Watery", page);
        Assert.Contains("nothing here gives gelatin: it stays liquid in the fridge, as it should", page, StringComparison.Ordinal);
        Assert.DoesNotContain("drawing-bodies", page, StringComparison.Ordinal);
    }

    [Fact]
    public async Task All_four_places_are_shown_and_nothing_is_called_free_of_anything()
    {
        string page = await PageAsync("/plan?recipe=shellfish");
        Assert.All(["EU and UK", "United States", "Canada", "Australia and New Zealand", "Annex II, point 2", "crustacean shellfish"], text => Assert.Contains(text, page, StringComparison.Ordinal));
        Assert.DoesNotMatch("(?i)free (from|of) (?!the|charge)|-free", page);
    }

    /// <summary>Schweiz Med Wochenschr 1985;115:258: carrot and parsley are relatives of celery; whole prawns hold sulphite (Food Addit Contam B 2014).</summary>
    [Theory]
    [InlineData("vegetable", "Of celery’s family beside it: carrots and parsley stems.")]
    [InlineData("shellfish", "Ask for untreated prawns; shells and heads hold the most.")]
    [InlineData("fish-fumet", "Egg or milk may be left in white wine")]
    public async Task What_an_eater_with_an_allergy_must_know_stands_with_the_lists(string recipe, string words) =>
        Assert.Contains(words, await PageAsync($"/plan?recipe={recipe}"), StringComparison.Ordinal);

    /// <summary>Powder gelatin is on the list of cuts: chosen there it is the powder, at the usual 225 g Bloom, and its price is that row's.</summary>
    [Fact]
    public async Task Powder_gelatin_chosen_as_a_cut_is_the_powder()
    {
        string page = await PageAsync("/plan?set-target=firm-jelly&set-0-cut=gelatin-powder&set-0-price=20");
        Assert.Contains("Powder gelatin, 225 Bloom", page, StringComparison.Ordinal);
        Assert.Contains("soaked, melted in at the end", page, StringComparison.Ordinal);
        string beside = await PageAsync("/plan?set-target=firm-jelly&powder-price=20");
        Assert.Equal(Answer(beside), Answer(page));

        static string Answer(string of) => of[of.IndexOf("For a firm jelly add:", StringComparison.Ordinal)..of.IndexOf("Strength then", StringComparison.Ordinal)];
    }

    [Fact]
    public async Task The_cheapest_way_to_a_class_is_found_and_its_price_told()
    {
        string page = await PageAsync("/plan?set-target=firm-jelly&set-0-cut=chicken-feet&set-0-price=4&set-1-cut=pork-skin&set-1-price=3&powder-price=30");
        Assert.Contains("For a firm jelly add:", page, StringComparison.Ordinal);
        Assert.Contains("Try these cuts", page, StringComparison.Ordinal);
        Assert.Contains("aim one word firmer", page, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_class_out_of_reach_says_by_how_much_and_a_missing_price_stands_beside_its_field()
    {
        string page = await PageAsync("/plan?set-target=glace&set-0-cut=chicken-feet&set-0-price=4&set-0-kg=0.2&set-1-cut=pork-skin");
        Assert.Matches("Out of reach with what is at hand: all of it gives [0-9.]+ % where glace needs 18.0 %, short by [0-9.]+ %", page);
        Assert.Matches("id=\"f-set-1-price\"(?s:.{0,400})<span class=\"remark\">No price for pork skin: it is left out.", page);
    }

    [Fact]
    public async Task Taking_out_more_than_is_in_is_told_beside_the_weight_and_the_plan_stands()
    {
        string page = await PageAsync("/plan?more-0-cut=chicken-feet&more-0-kg=-3");
        Assert.Contains("class=\"answer\"", page, StringComparison.Ordinal);
        Assert.Contains("There is none of it in the pot to take out.", page, StringComparison.Ordinal);
    }

    [Fact]
    public async Task More_feet_make_it_firmer()
    {
        string page = await PageAsync("/plan?more-0-cut=chicken-feet&more-0-kg=1.5");
        Match then = Regex.Match(page, @"strength (?<then>[0-9.]+)\u00A0%, now (?<now>[0-9.]+)\u00A0%", RegexOptions.ExplicitCapture, TimeSpan.FromSeconds(1));
        Assert.True(then.Success);
        Assert.True(Number(then.Groups["then"]) > Number(then.Groups["now"]) * 1.2);
    }

    [Fact]
    public async Task Fields_below_the_answer_belong_to_the_planners_form_and_are_kept_without_a_plan()
    {
        Assert.Matches("name=\"fridge-hours\"[^>]*form=\"planner\"", await PageAsync("/plan"));
        string broken = await PageAsync("/plan?goal=litres&litres=abc&fridge-hours=3&more-4-cut=pork-skin&more-4-kg=-0,25&set-target=glace&portion=333");
        Assert.All(["value=\"3\"", "value=\"-0,25\"", "value=\"333\"", "<option value=\"glace\" selected"], text => Assert.Contains(text, broken, StringComparison.Ordinal));
    }

    [Fact]
    public async Task A_pot_that_boils_dry_gives_no_stock_to_judge_and_no_failure()
    {
        using HttpResponseMessage response = await client.GetAsync(
            "/plan?topup=none&hours=72&lid=off&film=1.4&pot=own&pot-diameter=60&pot-height=10&goal=fill&set-target=glace", TestContext.Current.CancellationToken);
        Assert.Equal(HttpStatusCode.OK, response.StatusCode);
    }

    private static double Number(Group group) => double.Parse(group.ValueSpan, System.Globalization.CultureInfo.InvariantCulture);

    private async Task<string> PageAsync(string address)
    {
        using HttpResponseMessage response = await client.GetAsync(address, TestContext.Current.CancellationToken);
        Assert.Equal(HttpStatusCode.OK, response.StatusCode);
        return WebUtility.HtmlDecode(await response.Content.ReadAsStringAsync(TestContext.Current.CancellationToken));
    }

    [GeneratedRegex("<td class=\"number\">(?<chance>[0-9]+) %</td>\\s*</tr>", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Chances();
}
