using System.Net;
using Xunit;
using static Stockwright.Web.Tests.KeepingApp;

namespace Stockwright.Web.Tests.Features.Kitchen;

/// <summary>No change here is ever saved, so one program serves all cases.</summary>
public sealed class KitchenPagesRefusalTests(KeepingApp app) : IClassFixture<KeepingApp>
{
    [Theory]
    [InlineData("pot-diameter", "wide", "is not a number")]
    [InlineData("pot-diameter", "1,500", "could mean")]
    [InlineData("pot-diameter", "-24", "too small")]
    [InlineData("pot-height", "900", "too large")]
    [InlineData("pot-height", "", "measure from the base to the rim")]
    [InlineData("pot-material", "gold", "is not one of")]
    [InlineData("name", "", "Give the pot a name")]
    public async Task A_wrong_value_is_named_and_everything_typed_is_kept(string field, string value, string message)
    {
        using HttpClient browser = app.Browser();
        Page answer = await SendAsync(browser, "/kitchen/pots/pot-10", "save", ("pot-mass", "1.7"), (field, value));
        Assert.Equal(HttpStatusCode.OK, answer.Status);
        Assert.Contains(message, answer.Text, StringComparison.Ordinal);
        Dictionary<string, string> form = answer.Form("save");
        Assert.Equal(value, form[field]);
        Assert.Equal("1.7", form["pot-mass"]);
        Assert.Contains($"href=\"/kitchen/pots/pot-10#f-{field}\"", answer.Html, StringComparison.Ordinal);
        Assert.Equal("24", (await GetAsync(browser, "/kitchen/pots/pot-10")).Form("save")["pot-diameter"]);
    }
}
