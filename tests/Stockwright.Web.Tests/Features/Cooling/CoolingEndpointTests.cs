using System.Net;
using System.Text;
using System.Text.Json.Nodes;
using Xunit;

namespace Stockwright.Web.Tests.Features.Cooling;

/// <summary>Cooling over HTTP: documents in SI for good input, problem documents (RFC 9457) for everything else.</summary>
public sealed class CoolingEndpointTests(StockwrightFactory factory)
{
    private readonly HttpClient client = factory.Reader();

    /// <summary>FDA Food Code 3-501.14(A): 57 to 21 °C within 2 h, 5 °C within 6 h in all.</summary>
    [Fact]
    public async Task A_case_comes_back_whole_and_in_SI_units()
    {
        (HttpStatusCode status, JsonNode answer) = await PostAsync("""{"litres":10,"start":95,"steps":[{"place":"fridge","lid":"on"}],"readings":"0 90\n60 50\nxx 3"}""");
        Assert.Equal(HttpStatusCode.OK, status);
        Assert.Equal("fails", (string?)answer["asked"]!["outcome"]);
        Assert.Equal(1, (int)answer["asked"]!["stageAtRisk"]!);
        JsonNode stage = answer["limit"]!["stages"]![0]!;
        Assert.Equal((330.15, 294.15, 7200.0), ((double)stage["fromKelvins"]!, (double)stage["toKelvins"]!, (double)stage["withinSeconds"]!));
        Assert.Contains(answer["ways"]!.AsArray(), way => string.Equals((string?)way!["outcome"], "meets", StringComparison.Ordinal));
        Assert.InRange(answer["curve"]!.AsArray().Count, 20, 300);
        Assert.All(answer["curve"]!.AsArray(), point => Assert.InRange((double)point!["centralKelvins"]!, (double)point["fastKelvins"]! - 1, (double)point["slowKelvins"]! + 1));
        Assert.Equal(2, (int)answer["measured"]!["kept"]!);
        Assert.Equal(3, (int)answer["measured"]!["rejected"]![0]!["line"]!);
    }

    /// <summary>4 L into jars of half a litre, 76 mm wide, with 1/2 in free (NCHFP): 442 mL each, ten of them; soda-lime glass stands about 40 K (from memory).</summary>
    [Fact]
    public async Task Jars_and_freezing_come_back_in_the_document()
    {
        (HttpStatusCode status, JsonNode answer) = await PostAsync("""{"litres":4,"start":90,"jar":"500ml","steps":[{"place":"blast","into":"jars"}]}""");
        Assert.Equal(HttpStatusCode.OK, status);
        Assert.StartsWith("10 glass jars", (string?)answer["asked"]!["name"], StringComparison.Ordinal);
        Assert.Equal(3, answer["asked"]!["cautions"]!.AsArray().Count);
        Assert.InRange((double)answer["asked"]!["firstIceSeconds"]!, 1800, 86400);
        Assert.True((bool)answer["asked"]!["freezes"]!);
        Assert.InRange((double)answer["asked"]!["topOverBottomKelvins"]!, 0.1, 20);
    }

    [Theory]
    [InlineData("""{"place":"ice","stir":"all","stir-bath":"few"}""", "the stock stirred all the time, the bath every few minutes", "s1-stir=all&s1-stir-bath=few")]
    [InlineData("""{"place":"ice","stir":true}""", "stock and bath stirred every few minutes", "s1-stir=1")]
    [InlineData("""{"place":"ice","stir":false}""", "not stirred", "s1-place=ice")]
    public async Task Stock_and_bath_are_stirred_apart(string step, string words, string link)
    {
        (HttpStatusCode status, JsonNode answer) = await PostAsync($$"""{"litres":10,"steps":[{{step}}]}""");
        Assert.Equal(HttpStatusCode.OK, status);
        Assert.Contains(words, (string?)answer["asked"]!["name"], StringComparison.Ordinal);
        Assert.Contains(link, (string?)answer["link"], StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("""{"jar":"bucket"}""", "jar")]
    [InlineData("""{"steps":[{"place":"ice","stir-bath":"often"}]}""", "s1-stir-bath")]
    [InlineData("""{"litres":"abc"}""", "litres")]
    [InlineData("""{"steps":[{"place":"ice","ice":-2}]}""", "s1-ice")]
    [InlineData("""{"steps":[{"place":"ice","ice":{}}]}""", "s1-ice")]
    [InlineData("""{"steps":[1]}""", "steps")]
    [InlineData("""{"start":10,"fridge-air":12}""", "fridge-air")]
    [InlineData("""{"limit":"atlantis"}""", "limit")]
    public async Task What_is_wrong_comes_back_at_its_field(string body, string field)
    {
        (HttpStatusCode status, JsonNode answer) = await PostAsync(body);
        Assert.Equal(HttpStatusCode.BadRequest, status);
        Assert.True(answer["errors"]!.AsObject().ContainsKey(field), answer.ToJsonString());
    }

    [Fact]
    public async Task The_openapi_document_describes_it()
    {
        JsonNode document = JsonNode.Parse(await client.GetStringAsync("/openapi/v1.json", TestContext.Current.CancellationToken))!;
        Assert.NotNull(document["paths"]!["/api/cooling"]!["post"]);
        Assert.NotNull(document["components"]!["schemas"]!["CoolingInput"]);
        JsonNode step = document["components"]!["schemas"]!["CoolingStepInput"]!["properties"]!;
        Assert.Contains("few (every few minutes)", (string?)step["stir"]!["description"], StringComparison.Ordinal);
        Assert.NotNull(step["stir-bath"]);
    }

    private async Task<(HttpStatusCode Status, JsonNode Answer)> PostAsync(string body)
    {
        using StringContent content = new(body, Encoding.UTF8, "application/json");
        using HttpResponseMessage response = await client.PostAsync("/api/cooling", content, TestContext.Current.CancellationToken);
        return (response.StatusCode, JsonNode.Parse(await response.Content.ReadAsStringAsync(TestContext.Current.CancellationToken))!);
    }
}
