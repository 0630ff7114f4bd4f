using System.Net;
using CsCheck;
using Stockwright.Web.Features.Strength;
using Stockwright.Web.Fields;
using Stockwright.Web.Tests.Screens;
using Xunit;

namespace Stockwright.Web.Tests.Features.Strength;

/// <summary>The strength page: each sum is a link, what is wrong stands beside its field, and nothing fails the server.</summary>
public sealed class StrengthPageTests(StockwrightFactory factory)
{
    private static readonly string[] Fields =
    [
        "do", "units", "future", .. typeof(StrengthFields).GetFields().Where(field => field.IsLiteral).Select(field => (string)field.GetRawConstantValue()!).Where(name => name.Contains('-', StringComparison.Ordinal)),
    ];

    private static readonly string[] Values =
    [
        "", " ", "0", "-1", "1", "2,5", "2.5", "1,000", "25", "60", "61", "1e308", "NaN", "½", "1/0", "999999999", "-0", "٣", "abc", "soft-jelly", "glace", "watery", "poultry", "gelatin",
        "pot-10", "ring-large", "100", "5", "93", "200", "us", "metric", "<script>alert(1)</script>", "\0", "\ud800", "😀", "\r\nSet-Cookie: a=b", "0.0000001", "1000",
    ];

    private static readonly string[] Ways = ["reduce", "dilute", "glace", "blend", "powder", "reading", "", "elsewhere"];

    private readonly HttpClient client = factory.Reader();

    [Theory]
    // Half the volume gone: twice the gelatin and salt, less the hundredth by which the rest is denser (conservation of mass).
    [InlineData("do=reduce&reduce-volume=4&reduce-to=2&reduce-gelatin=2&reduce-salt=0.5", "Boil off 2\u00A0L", "4\u00A0%", "0.99\u00A0%")]
    // Three parts of water to one at a quarter of the strength, by weight.
    [InlineData("do=dilute&dilute-volume=1&dilute-gelatin=8&dilute-target=2", "of hot water", "3.0 parts of water to one")]
    [InlineData("do=glace&glace-volume=100", "of hot water", "11.5 parts of water to one")]
    // Pearson's square: 25 and 1 to 5 is 4 parts to 20.
    [InlineData("do=blend&blend-one=25&blend-other=1&blend-target=5&blend-total=2", "of the stronger", "4 to 20")]
    [InlineData("do=powder&powder-volume=2&powder-now=1&powder-target=firm-jelly&powder-bloom=200", "of powder gelatin", "Firm jelly")]
    [InlineData("do=reading&reading-brix=5&reading-kind=meat", "About 2.5\u00A0% gelatin", "our estimate")]
    public async Task Each_sum_is_a_link(string query, params string[] texts)
    {
        Screen page = await ScreenAsync("/strength?" + query);
        ScreenPart answer = Assert.Single(page.Named("section"), part => part["aria-label"] is "The answer");
        Assert.All(texts, text => Assert.Contains(text.Replace('\u00A0', ' '), answer.Text, StringComparison.Ordinal));
        Assert.Empty(page.Problems);
        Assert.True(page.IsBefore(answer, page.Named("form").First()));
    }

    [Fact]
    public async Task The_time_of_a_reduction_is_told_for_a_pan_of_the_kitchen()
    {
        Screen bare = await ScreenAsync("/strength");
        Assert.Equal("", bare.ValueOf("reduce-pan"));
        string id = Assert.Single(bare.Named("select"), part => part["name"] is "reduce-pan").Within.Select(option => option["value"]!).First(value => value.Length > 0);
        string page = (await ScreenAsync($"/strength?do=reduce&reduce-volume=3&reduce-to=1&reduce-pan={id}")).Text;
        Assert.Contains("Takes", page, StringComparison.Ordinal);
        Assert.Contains("at the boil", page, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("do=reduce&reduce-volume=4&reduce-to=5", "reduce-to", "5")]
    [InlineData("do=reduce&reduce-volume=plenty&reduce-to=1", "reduce-volume", "plenty")]
    [InlineData("do=reduce&reduce-volume=4&reduce-to=1&reduce-target=9", "reduce-to", "1")]
    [InlineData("do=reduce&reduce-volume=4", "reduce-to", "")]
    [InlineData("do=reduce&reduce-volume=4&reduce-target=9", "reduce-gelatin", "")]
    [InlineData("do=reduce&reduce-volume=4&reduce-to=2&reduce-pan=cauldron", "reduce-pan", "cauldron")]
    [InlineData("do=dilute&dilute-volume=1&dilute-gelatin=2&dilute-target=8", "dilute-target", "8")]
    [InlineData("do=blend&blend-one=2&blend-other=4&blend-target=9&blend-total=2", "blend-target", "9")]
    [InlineData("do=blend&blend-one=3&blend-other=3&blend-target=3&blend-total=2", "blend-target", "3")]
    [InlineData("do=powder&powder-volume=2&powder-now=9&powder-target=soft-jelly", "powder-target", "soft-jelly")]
    [InlineData("do=reading&reading-brix=40", "reading-brix", "40")]
    [InlineData("do=reading&reading-brix=1&reading-salt=3", "reading-salt", "3")]
    [InlineData("do=reading&reading-brix=4&reading-kind=soup", "reading-kind", "soup")]
    public async Task A_mistake_is_named_beside_its_field_and_what_was_typed_is_kept(string query, string field, string typed)
    {
        Screen page = await ScreenAsync("/strength?" + query);
        Assert.NotEmpty(page.ProblemOf(field) ?? "");
        Assert.True(page.LeadsTo(field));
        Assert.Equal(typed, page.ValueOf(field));
        Assert.DoesNotContain(page.Named("section"), part => part["aria-label"] is "The answer");
        Assert.NotNull(page.ById("fold-" + query.Split('&')[0][3..])?["open"]);
    }

    [Fact]
    public async Task The_units_switch_keeps_the_sum()
    {
        using HttpResponseMessage response = await client.GetAsync(
            "/units/us?back=" + Uri.EscapeDataString("/strength?do=reduce&reduce-volume=2&reduce-simmer=100&reduce-gelatin=3&reduce-to=x"), TestContext.Current.CancellationToken);

        // One US quart is 0.946 352 946 L (NIST SP 811, appendix B).
        Assert.Equal("/strength?units=us&do=reduce&reduce-volume=2.1134&reduce-simmer=212&reduce-gelatin=3&reduce-to=x", response.Headers.Location?.ToString());
    }

    [Fact]
    public async Task Hostile_links_never_fail_the_server_and_what_was_typed_is_kept() => await Gen.Select(Gen.OneOfConst(Ways), Gen.Select(Gen.OneOfConst(Fields), Gen.OneOfConst(Values)).Array[0, 10]).SampleAsync(
        async (way, entries) =>
        {
            string query = new TypedForm([KeyValuePair.Create("do", way), .. entries.Select(entry => KeyValuePair.Create(entry.Item1, entry.Item2))]).ToQuery();
            using HttpResponseMessage response = await client.GetAsync("/strength?" + query, TestContext.Current.CancellationToken);
            Assert.True(response.StatusCode == HttpStatusCode.OK, $"{response.StatusCode} /strength?{query}");
            string page = WebUtility.HtmlDecode(await response.Content.ReadAsStringAsync(TestContext.Current.CancellationToken));
            foreach ((string name, string value) in entries.DistinctBy(entry => entry.Item1, StringComparer.Ordinal).Where(entry => entry.Item1.Contains('-', StringComparison.Ordinal) && entry.Item2.All(char.IsAsciiLetterOrDigit) && entry.Item2.Length > 0))
            {
                Assert.Contains($"value=\"{value}\"", page, StringComparison.Ordinal);
            }
        },
        iter: 250);

    private async Task<Screen> ScreenAsync(string address)
    {
        using HttpResponseMessage response = await client.GetAsync(address, TestContext.Current.CancellationToken);
        Assert.Equal(HttpStatusCode.OK, response.StatusCode);
        return Screen.Of(await response.Content.ReadAsStringAsync(TestContext.Current.CancellationToken));
    }
}
