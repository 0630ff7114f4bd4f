using System.Net;
using System.Net.Http.Json;
using System.Text;
using System.Text.Json;
using Stockwright.Journeys.Running;

namespace Stockwright.Journeys;

/// <summary>A program plans a batch; needs no browser.</summary>
public sealed class ApiJourney(AppFixture app)
{
    private static readonly Uri Plans = new("/api/plans", UriKind.Relative);

    [Fact]
    public async Task A_plan_comes_back_whole_and_its_water_adds_up()
    {
        using HttpResponseMessage answer = await app.Client.PostAsJsonAsync(Plans, new { recipe = "brown-chicken", goal = "litres", litres = "2,5" }, TestContext.Current.CancellationToken);
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        JsonElement plan = await answer.Content.ReadFromJsonAsync<JsonElement>(TestContext.Current.CancellationToken);

        // Asked for 2.5 L, so 2.5 L it is; the goal is met to the planner's 2 %.
        Assert.InRange(plan.GetProperty("yieldCubicMetres").GetProperty("central").GetDouble(), 0.98 * 0.0025, 1.02 * 0.0025);
        JsonElement ledger = plan.GetProperty("ledger");
        double put = ledger.GetProperty("in").EnumerateArray().Sum(row => row.GetProperty("volumeCubicMetres").GetProperty("central").GetDouble());
        double got = ledger.GetProperty("out").EnumerateArray().Sum(row => row.GetProperty("volumeCubicMetres").GetProperty("central").GetDouble());
        Assert.Equal(put, got, 1e-9 * put);
    }

    // RFC 9457: problem details for HTTP APIs.
    [Theory]
    [InlineData("""{"goal":"litres","litres":"plenty"}""", "litres")]
    [InlineData("""{"goal":"litres","litres":-2}""", "litres")]
    [InlineData("""{"recipe":"moon-rock"}""", "recipe")]
    [InlineData("""{"pot":"own","pot-diameter":24,"pot-height":900}""", "pot-height")]
    public async Task What_cannot_be_planned_comes_back_as_a_problem_document_naming_the_field(string body, string field)
    {
        using StringContent content = new(body, Encoding.UTF8, "application/json");
        using HttpResponseMessage answer = await app.Client.PostAsync(Plans, content, TestContext.Current.CancellationToken);
        Assert.Equal(HttpStatusCode.BadRequest, answer.StatusCode);
        Assert.Equal("application/problem+json", answer.Content.Headers.ContentType?.MediaType);
        JsonElement problem = await answer.Content.ReadFromJsonAsync<JsonElement>(TestContext.Current.CancellationToken);
        Assert.True(problem.GetProperty("errors").TryGetProperty(field, out JsonElement messages) && messages.GetArrayLength() > 0, problem.ToString());
    }

    [Fact]
    public async Task The_openapi_document_describes_planning()
    {
        JsonElement document = await app.Client.GetFromJsonAsync<JsonElement>(new Uri("/openapi/v1.json", UriKind.Relative), TestContext.Current.CancellationToken);
        Assert.True(document.GetProperty("paths").GetProperty("/api/plans").TryGetProperty("post", out _));
    }
}
