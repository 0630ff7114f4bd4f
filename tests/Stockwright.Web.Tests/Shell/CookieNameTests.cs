using Xunit;

namespace Stockwright.Web.Tests.Shell;

/// <summary>Browsers keep cookies by host, not by port (RFC 6265, section 8.5), so two kitchens on one host need names of their own.</summary>
public sealed class CookieNameTests : IDisposable
{
    private readonly KeepingApp one = new();
    private readonly KeepingApp other = new();

    public void Dispose()
    {
        one.Dispose();
        other.Dispose();
    }

    [Theory]
    [InlineData("/kitchen/pots/new")]
    [InlineData("/units/us")]
    [InlineData("/cooling/home/us-food-code")]
    public async Task Two_kitchens_share_no_cookie_name(string address)
    {
        string first = await NameAsync(one, address);
        Assert.Equal(first, await NameAsync(one, address), StringComparer.Ordinal);
        Assert.NotEqual(first, await NameAsync(other, address), StringComparer.Ordinal);
    }

    [Theory]
    [InlineData("units=us", "<b>US measures</b>")]
    [InlineData("units=metric", "<b>Metric</b>")]
    public async Task A_choice_kept_under_the_old_name_still_counts(string cookie, string shown)
    {
        Assert.Contains(shown, await PageAsync(one, cookie), StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_kitchens_own_choice_counts_over_the_old_one()
    {
        string own = await NameAsync(one, "/units/us");
        Assert.Contains("<b>Metric</b>", await PageAsync(one, $"units=us; {own}=metric"), StringComparison.Ordinal);
        Assert.Contains("<b>US measures</b>", await PageAsync(one, $"units=metric; {own}=us"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_cook_and_the_home_limit_under_their_old_names_still_count()
    {
        const string Start = "/batches/start?recipe=brown-chicken&pot=pot-10&goal=litres&litres=3.5";
        Assert.Matches("<option value=\"au-3-2-2\" selected", await PageAsync(one, "cooling-limit=au-3-2-2", Start));
        Assert.DoesNotMatch("<option value=\"au-3-2-2\" selected", await PageAsync(one, "none=1", Start));
        Assert.Contains("value=\"Old hand\"", await PageAsync(one, "cook=Old%20hand", Start), StringComparison.Ordinal);
    }

    private static async Task<string> NameAsync(KeepingApp app, string address)
    {
        using HttpClient browser = app.Browser();
        using HttpResponseMessage answer = await browser.GetAsync(new Uri(address, UriKind.Relative), TestContext.Current.CancellationToken);
        return Assert.Single(answer.Headers.GetValues("Set-Cookie")).Split('=')[0];
    }

    private static async Task<string> PageAsync(KeepingApp app, string cookie, string address = "/larder")
    {
        using HttpClient client = app.Server.CreateClient();
        using HttpRequestMessage message = new(HttpMethod.Get, address);
        message.Headers.Add("Cookie", cookie);
        using HttpResponseMessage answer = await client.SendAsync(message, TestContext.Current.CancellationToken);
        return await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken);
    }
}
