using System.Net;
using Xunit;
using static Stockwright.Web.Tests.KeepingApp;

namespace Stockwright.Web.Tests.Features.Recipes;

/// <summary>No change here is ever saved, so one program serves all cases.</summary>
public sealed class RecipePagesRefusalTests(KeepingApp app) : IClassFixture<KeepingApp>
{
    [Theory]
    [InlineData("line-0-amount", "0", "too small")]
    [InlineData("line-0-amount", "", "how much for a litre")]
    [InlineData("line-0-ingredient", "unicorn", "There is no 'unicorn'")]
    [InlineData("line-0-ingredient", "", "Choose the ingredient")]
    [InlineData("line-8-before", "", "say how long before the end")]
    [InlineData("stage-0-temperature", "200", "too large")]
    [InlineData("stage-0-hours", "soon", "is not a number")]
    [InlineData("roast-minutes", "", "both the oven's heat and the time")]
    [InlineData("name", " ", "Give the recipe a name")]
    public async Task A_wrong_value_is_named_beside_its_field_and_kept(string field, string value, string message)
    {
        using HttpClient browser = app.Browser();
        Page copied = await SendAsync(browser, "/recipes/brown-chicken", "copy");
        Page answer = await SendAsync(browser, copied.Location!, "save", ("line-1-amount", "123,4"), (field, value), ("do", "save"));
        Assert.Equal(HttpStatusCode.OK, answer.Status);
        Assert.Contains(message, answer.Text, StringComparison.Ordinal);
        Assert.Equal(value, answer.Form("save")[field]);
        Assert.Equal("123,4", answer.Form("save")["line-1-amount"]);
        Assert.Contains($"id=\"f-{field}-problem\"", answer.Html, StringComparison.Ordinal);
    }
}
