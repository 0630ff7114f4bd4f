using System.Net;
using Xunit;
using static Stockwright.Web.Tests.KeepingApp;

namespace Stockwright.Web.Tests.Features.Larder;

/// <summary>No change here is ever saved, so one program serves all cases.</summary>
public sealed class LarderPagesRefusalTests(KeepingApp app) : IClassFixture<KeepingApp>
{
    [Theory]
    [InlineData("density", "", "True density")]
    [InlineData("density", "1,050", "could mean")]
    [InlineData("refuse", "101", "too large")]
    [InlineData("packed", "2.9", "cannot weigh more")]
    [InlineData("piece-0-mass", "heavy", "is not a number")]
    [InlineData("piece-0-name", "", "what one of them is called")]
    [InlineData("shelf", "attic", "is not one of")]
    public async Task A_wrong_value_is_named_and_kept(string field, string value, string message)
    {
        using HttpClient browser = app.Browser();
        Page answer = await SendAsync(browser, "/larder/onion/edit", "save", ("name", "My onion"), (field, value));
        Assert.Equal(HttpStatusCode.OK, answer.Status);
        Assert.Contains(message, answer.Text, StringComparison.Ordinal);
        Assert.Equal(value, answer.Form("save")[field]);
        Assert.Equal("My onion", answer.Form("save")["name"]);
    }
}
