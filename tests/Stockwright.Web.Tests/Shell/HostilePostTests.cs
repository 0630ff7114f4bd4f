using System.Net;
using CsCheck;
using Xunit;
using static Stockwright.Web.Tests.KeepingApp;

namespace Stockwright.Web.Tests.Shell;

/// <summary>Whatever is posted, the answer is a page, a redirect or a plain refusal: never a failure of ours.</summary>
public sealed class HostilePostTests(KeepingApp app) : IClassFixture<KeepingApp>
{
    private static readonly Gen<string> Value = Gen.OneOf(
        Gen.OneOfConst(
            "", " ", "0", "-1", "1e999", "NaN", "Infinity", "∞", "2,5", "1,500", "٣", "１２", "½", "1/0", "999999999999999999999999", "\0", "\u202e", "\ud800", "<script>alert(1)</script>",
            "'; DROP TABLE Pots; --", "../../etc/passwd", "%00", "{{7*7}}", "own", "new", "drop-0", "drop--1", "drop-99999999999", "add", "true", "🍲"),
        Gen.String[Gen.Char, 0, 60],
        Gen.Double.Select(number => number.ToString("R", System.Globalization.CultureInfo.InvariantCulture)),
        Gen.Int[0, 12].Select(length => new string('9', 1 << length)));

    [Theory]
    [InlineData("/kitchen/pots/new", "save")]
    [InlineData("/kitchen/pots/pot-10", "save")]
    [InlineData("/kitchen/hobs/large-ring", "save")]
    [InlineData("/kitchen/ovens/new", "save")]
    [InlineData("/kitchen/trays/new", "save")]
    [InlineData("/kitchen/site", "save")]
    [InlineData("/larder/onion/edit", "save")]
    [InlineData("/larder/carrot/copy", "save")]
    [InlineData("/recipes/own/edit", "save")]
    [InlineData("/plans", "save-plan")]
    public async Task Hostile_fields_never_break_a_page(string address, string form)
    {
        using HttpClient browser = app.Browser();
        string post = address;
        if (address.StartsWith("/recipes", StringComparison.Ordinal))
        {
            post = (await SendAsync(browser, "/recipes/lamb", "copy")).Location!;
        }

        Page page = await GetAsync(browser, string.Equals(form, "save-plan", StringComparison.Ordinal) ? "/plans/new?recipe=lamb" : post);
        Dictionary<string, string> fields = page.Form(form);
        string[] names = [.. fields.Keys.Where(name => name is not ("__RequestVerificationToken" or "_handler"))];
        await Gen.Select(Gen.OneOfConst(names), Value).List[1, 5].SampleAsync(
            async changes =>
            {
                Page answer = await SendAsync(browser, post, page, form, [.. changes.Select(change => (change.Item1, (string?)change.Item2))]);
                Assert.True((int)answer.Status < 500, $"{answer.Status} for {string.Join("; ", changes)}");
                Assert.DoesNotContain("<script>alert", answer.Html, StringComparison.Ordinal);
            },
            iter: 40,
            threads: 1);
    }

    [Theory]
    [InlineData("/kitchen/pots/..%2f..%2fsite")]
    [InlineData("/kitchen/pots/nothing")]
    [InlineData("/larder/nothing")]
    [InlineData("/larder/nothing/edit")]
    [InlineData("/recipes/nothing")]
    [InlineData("/plans/not-a-guid")]
    [InlineData("/plans/00000000-0000-0000-0000-000000000000")]
    public async Task What_is_not_there_answers_404(string address)
    {
        using HttpClient browser = app.Browser();
        Page page = await GetAsync(browser, address);
        Assert.True(page.Status is HttpStatusCode.NotFound or HttpStatusCode.BadRequest, page.Status.ToString());
    }

    [Fact]
    public async Task Posts_without_token_handler_form_or_within_reason_are_refused_not_broken()
    {
        using HttpClient browser = app.Browser();
        Dictionary<string, string> fields = (await GetAsync(browser, "/kitchen/pots/pot-10")).Form("save");
        foreach (string missing in (string[])["__RequestVerificationToken", "_handler"])
        {
            using FormUrlEncodedContent content = new(fields.Where(field => !string.Equals(field.Key, missing, StringComparison.Ordinal)));
            await RefusedAsync(browser, "/kitchen/pots/pot-10", content);
        }

        using StringContent json = new("{}", System.Text.Encoding.UTF8, "application/json");
        await RefusedAsync(browser, "/kitchen/pots/pot-10", json);
        using FormUrlEncodedContent wrongForm = new(fields.Select(field => string.Equals(field.Key, "_handler", StringComparison.Ordinal) ? KeyValuePair.Create("_handler", "nonsense") : field));
        await RefusedAsync(browser, "/kitchen/pots/pot-10", wrongForm);
        using FormUrlEncodedContent many = new([.. fields, .. Enumerable.Range(0, 3000).Select(number => KeyValuePair.Create($"x{number}", "1"))]);
        await RefusedAsync(browser, "/kitchen/pots/pot-10", many);
        using FormUrlEncodedContent lost = new(fields);
        await RefusedAsync(browser, "/larder", lost);
    }

    private static async Task RefusedAsync(HttpClient browser, string address, HttpContent content)
    {
        Page answer = await Page.ReadAsync(await browser.PostAsync(new Uri(address, UriKind.Relative), content, TestContext.Current.CancellationToken));
        Assert.InRange((int)answer.Status, 400, 499);
    }
}
