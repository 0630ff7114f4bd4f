using System.Net;
using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using Stockwright.Web.Features.Planning;
using Stockwright.Web.Tests.Fields;
using Xunit;

namespace Stockwright.Web.Tests.Features.Planning;

/// <summary>The HTTP interface: whole plans for good input, problem documents (RFC 9457) for everything else.</summary>
public sealed class PlanEndpointTests(StockwrightFactory factory)
{
    private readonly HttpClient client = factory.Reader();

    [Fact]
    public async Task A_plan_comes_back_whole_and_in_SI_units()
    {
        JsonNode plan = await PlanAsync("""{"recipe":"brown-chicken","goal":"litres","litres":"2,5"}""");
        Assert.Equal(0.0025, (double)plan["yieldCubicMetres"]!["central"]!, 0.00005);
        Assert.InRange((double)plan["boiling"]!["boilingPointKelvins"]!, 372, 373.2);
        Assert.Equal("2026-11-26T08:00:00+00:00", (string?)plan["timeline"]!["start"]);
        Assert.Equal((double)plan["ledger"]!["totalInCubicMetres"]!, (double)plan["ledger"]!["totalOutCubicMetres"]!, 1e-11);
        Assert.All(plan["simmer"]!["samples"]!.AsArray(), sample => Assert.InRange((double)sample!["temperatureKelvins"]!, 273, 380));
        Assert.NotNull(plan["prediction"]);
        AssertNamesCarryUnits(plan);
    }

    [Fact]
    public async Task The_prediction_comes_with_chances_bands_fat_nutrition_and_allergens()
    {
        JsonNode prediction = (await PlanAsync("""{"recipe":"white-veal","portion":200,"set-target":"glace","set":[{"cut":"chicken-feet","price":4,"kg":1}],"more":[{"cut":"chicken-feet","kg":0.5}]}"""))["prediction"]!;
        Assert.Equal(1, prediction["chances"]!.AsArray().Sum(row => (double)row!["chanceFraction"]!), 1e-9);
        Assert.Equal(8, prediction["chances"]!.AsArray().Count);
        Assert.Equal(512, (int)prediction["draws"]!);
        Assert.True((double)prediction["gelatinFraction"]!["low"]! < (double)prediction["gelatinFraction"]!["high"]!);
        Assert.Equal("chill", (string?)prediction["fat"]!["method"]);
        Assert.Equal(2e-4, (double)prediction["nutrition"]!["portionCubicMetres"]!, 1e-12);
        Assert.Equal(4, prediction["allergens"]!.AsArray().Count);
        Assert.False((bool)prediction["set"]!["isReached"]!);
        Assert.True((double)prediction["withMore"]!["effectiveFraction"]! > (double)prediction["body"]!["effectiveFraction"]!);
        Assert.NotEmpty(prediction["assumptions"]!.AsArray());
    }

    [Fact]
    public async Task The_page_behind_the_link_asks_for_the_same_plan()
    {
        JsonNode plan = await PlanAsync("""{"goal":"bones","bones":[{"cut":"chicken-back","kg":1.2},{"cut":"chicken-wing","lb":"1 1/2"}],"leave":["carrot"],"with":["chicken-feet"]}""");
        string link = (string)plan["link"]!;
        Assert.Contains("bones-1-kg=0.6803", link, StringComparison.Ordinal);
        Assert.Contains("leave-carrot=1", link, StringComparison.Ordinal);
        Assert.Contains("with-chicken-feet=1", link, StringComparison.Ordinal);
        Dictionary<string, string?> fields = Microsoft.AspNetCore.WebUtilities.QueryHelpers.ParseQuery(link[link.IndexOf('?', StringComparison.Ordinal)..])
            .ToDictionary(pair => pair.Key, pair => (string?)pair.Value, StringComparer.Ordinal);
        JsonNode again = await PlanAsync(JsonSerializer.Serialize(fields));
        Assert.Equal((double)plan["yieldCubicMetres"]!["central"]!, (double)again["yieldCubicMetres"]!["central"]!, 1e-9);
    }

    [Fact]
    public async Task Measures_default_to_metric_whatever_the_readers_cookie_says()
    {
        using HttpRequestMessage message = new(HttpMethod.Post, "/api/plans") { Content = Json("""{"goal":"litres","litres":2}""") };
        message.Headers.Add("Cookie", "units=us");
        using HttpResponseMessage response = await client.SendAsync(message, TestContext.Current.CancellationToken);
        JsonNode plan = JsonNode.Parse(await response.Content.ReadAsStringAsync(TestContext.Current.CancellationToken))!;
        Assert.Equal(0.002, (double)plan["yieldCubicMetres"]!["central"]!, 0.00005);
    }

    [Theory]
    [InlineData("""{"litres":"abc","goal":"litres"}""", "litres")]
    [InlineData("""{"litres":-1,"goal":"litres"}""", "litres")]
    [InlineData("""{"litres":1e300,"goal":"litres"}""", "litres")]
    [InlineData("""{"litres":[1],"goal":"litres"}""", "litres")]
    [InlineData("""{"litres":{"value":1}}""", "litres")]
    [InlineData("""{"recipe":17}""", "recipe")]
    [InlineData("""{"goal":"bones","bones":[1]}""", "bones")]
    [InlineData("""{"goal":"bones","bones":[{"cut":"unicorn","kg":1}]}""", "bones-0-cut")]
    [InlineData("""{"goal":"bones","bones":[{"cut":"chicken-back","kg":[2]}]}""", "bones-0-kg")]
    [InlineData("""{"leave":["unicorn"]}""", "leave-unicorn")]
    [InlineData("""{"pot":"own","pot-diameter":24,"pot-height":300}""", "pot-height")]
    [InlineData("""{"simmer":400}""", "simmer")]
    public async Task What_is_wrong_comes_back_by_field(string body, string field)
    {
        using HttpResponseMessage response = await PostAsync(body);
        JsonNode problem = await ProblemAsync(response, HttpStatusCode.BadRequest);
        Assert.True(problem["errors"]!.AsObject().ContainsKey(field), problem.ToJsonString());
    }

    [Fact]
    public async Task Four_hundred_kilograms_in_a_five_litre_pot_are_refused_beside_the_bones()
    {
        using HttpResponseMessage response = await PostAsync(
            """{"goal":"bones","bones":[{"cut":"chicken-back","kg":400}],"pot":"own","pot-shape":"volume","pot-volume":5,"pot-diameter":20}""");
        JsonNode problem = await ProblemAsync(response, HttpStatusCode.BadRequest);
        Assert.StartsWith("bones", Assert.Single(problem["errors"]!.AsObject()).Key, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("")]
    [InlineData("{")]
    [InlineData("[]")]
    [InlineData("null")]
    [InlineData("\"plan\"")]
    [InlineData("{\"recipe\":\"\\ud800\"}")]
    [InlineData("{\"\\udfff\":1}")]
    [InlineData("{\"a\":{\"a\":{\"a\":{\"a\":{\"a\":{\"a\":{\"a\":{\"a\":{\"a\":1}}}}}}}}}")]
    public async Task A_body_that_is_no_plan_is_a_problem_document(string body)
    {
        using HttpResponseMessage response = await PostAsync(body);
        await ProblemAsync(response, HttpStatusCode.BadRequest);
    }

    [Fact]
    public async Task Bytes_that_are_no_text_are_a_problem_document()
    {
        using ByteArrayContent content = new([0x7b, 0x22, 0xff, 0xfe, 0x22, 0x3a, 0x31, 0x7d]);
        content.Headers.ContentType = new("application/json");
        using HttpResponseMessage response = await client.PostAsync("/api/plans", content, TestContext.Current.CancellationToken);
        Assert.NotEqual(HttpStatusCode.InternalServerError, response.StatusCode);
    }

    [Fact]
    public async Task A_body_too_large_is_refused_with_and_without_a_stated_length()
    {
        string body = "{" + new string(' ', 70_000) + "}";
        using HttpResponseMessage stated = await PostAsync(body);
        await ProblemAsync(stated, HttpStatusCode.RequestEntityTooLarge);
        using StreamContent streamed = new(new MemoryStream(Encoding.UTF8.GetBytes(body)));
        streamed.Headers.ContentType = new("application/json");
        using HttpRequestMessage message = new(HttpMethod.Post, "/api/plans") { Content = streamed };
        message.Headers.TransferEncodingChunked = true;
        using HttpResponseMessage unstated = await client.SendAsync(message, TestContext.Current.CancellationToken);
        await ProblemAsync(unstated, HttpStatusCode.RequestEntityTooLarge);
    }

    [Fact]
    public async Task Another_kind_of_content_is_refused()
    {
        using StringContent content = new("recipe=brown-chicken", Encoding.UTF8, "application/x-www-form-urlencoded");
        using HttpResponseMessage response = await client.PostAsync("/api/plans", content, TestContext.Current.CancellationToken);
        await ProblemAsync(response, HttpStatusCode.UnsupportedMediaType);
    }

    [Fact]
    public async Task An_unknown_address_is_a_problem_document_too()
    {
        using HttpResponseMessage response = await client.GetAsync("/api/nothing", TestContext.Current.CancellationToken);
        await ProblemAsync(response, HttpStatusCode.NotFound);
    }

    [Fact]
    public async Task Hostile_fields_never_fail_the_server() => await HostileForms.Forms.SampleAsync(
        async entries =>
        {
            Dictionary<string, string> fields = [];
            foreach ((string name, string value) in entries)
            {
                fields[name] = value;
            }

            // The writer puts a replacement for half characters; the lone ones are sent by the tests above.
            using HttpResponseMessage response = await PostAsync(JsonSerializer.Serialize(fields));
            Assert.True(response.StatusCode is HttpStatusCode.OK or HttpStatusCode.BadRequest or HttpStatusCode.RequestEntityTooLarge, response.StatusCode.ToString());
        },
        iter: 300);

    [Fact]
    public async Task The_interface_is_described()
    {
        JsonNode document = JsonNode.Parse(await client.GetStringAsync("/openapi/v1.json", TestContext.Current.CancellationToken))!;
        JsonNode post = document["paths"]!["/api/plans"]!["post"]!;
        Assert.NotNull(post["requestBody"]!["content"]!["application/json"]!["schema"]);
        Assert.NotNull(post["responses"]!["200"]!["content"]!["application/json"]!["schema"]);
        foreach (JsonNode? operation in new[] { post, document["paths"]!["/api/cooling"]!["post"], document["paths"]!["/api/batches/{id}/entries"]!["post"] })
        {
            Assert.All(["400", "413", "415", "429", "503"], status => Assert.NotNull(operation!["responses"]![status]?["content"]?["application/problem+json"]));
        }

        JsonObject described = document["components"]!["schemas"]!["PlanInput"]!["properties"]!.AsObject();
        Assert.All(PlanFields.All, field => Assert.Equal(field.Describe(), described[field.Name]!["description"]!.GetValue<string>()));
    }

    private static void AssertNamesCarryUnits(JsonNode node)
    {
        string[] endings =
        [
            "Metres", "SquareMetres", "CubicMetres", "Kilograms", "Kelvins", "Seconds", "Joules", "Watts", "Pascals", "Fraction", "PerSecond",
            "low", "central", "high", "rounds", "Rounds", "fahrenheitName", "traysToFill", "traysAtOnce", "checkIndex", "nightSteps",
            "draws", "cost", "Degrees", "otfuls", "potsAtOnce", "PerCubicMetre",
        ];
        switch (node)
        {
            case JsonObject value:
                foreach ((string name, JsonNode? child) in value)
                {
                    if (child is JsonValue number && number.GetValueKind() == JsonValueKind.Number)
                    {
                        Assert.Contains(endings, ending => name.EndsWith(ending, StringComparison.Ordinal));
                    }
                    else if (child is not null)
                    {
                        AssertNamesCarryUnits(child);
                    }
                }

                break;
            case JsonArray rows:
                Assert.All(rows.OfType<JsonNode>(), AssertNamesCarryUnits);
                break;
        }
    }

    private static StringContent Json(string body) => new(body, Encoding.UTF8, "application/json");

    private async Task<HttpResponseMessage> PostAsync(string body)
    {
        using StringContent content = Json(body);
        return await client.PostAsync("/api/plans", content, TestContext.Current.CancellationToken);
    }

    private async Task<JsonNode> PlanAsync(string body)
    {
        using HttpResponseMessage response = await PostAsync(body);
        string text = await response.Content.ReadAsStringAsync(TestContext.Current.CancellationToken);
        Assert.True(response.StatusCode == HttpStatusCode.OK, text);
        return JsonNode.Parse(text)!;
    }

    private static async Task<JsonNode> ProblemAsync(HttpResponseMessage response, HttpStatusCode status)
    {
        string text = await response.Content.ReadAsStringAsync(TestContext.Current.CancellationToken);
        Assert.True(response.StatusCode == status, $"{response.StatusCode}: {text}");
        Assert.Equal("application/problem+json", response.Content.Headers.ContentType?.MediaType);
        JsonNode problem = JsonNode.Parse(text)!;
        Assert.Equal((int)status, (int)problem["status"]!);
        Assert.NotEmpty((string)problem["title"]!);
        return problem;
    }
}
