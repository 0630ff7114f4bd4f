using System.Net;
using System.Net.Http.Headers;
using System.Text.Json;
using Xunit;
using static Stockwright.Web.Tests.KeepingApp;

namespace Stockwright.Web.Tests.Shell;

/// <summary>A form that cannot be taken comes back filled in as it was sent, with a sentence and a fresh token; nothing is written.</summary>
public sealed class RefusedPostTests(KeepingApp app) : IClassFixture<KeepingApp>
{
    private const string Token = "__RequestVerificationToken";
    private const string Handler = "_handler";
    private const string TooOld = "This form was opened a long while ago, or in another kitchen";
    private const string Plan = "recipe=brown-chicken&pot=pot-10&goal=litres&litres=3.5&date=2026-12-05&time=08:00";

    [Theory]
    [InlineData("/kitchen/pots/new", "save", "name", "The tall one")]
    [InlineData("/kitchen/pots/pot-10", "save", "name", "Dented pot")]
    [InlineData("/kitchen/hobs/new", "save", "name", "Back left")]
    [InlineData("/kitchen/ovens/new", "save", "name", "Bread oven")]
    [InlineData("/kitchen/trays/new", "save", "length", "41.5")]
    [InlineData("/kitchen/site", "save", "name", "Night kitchen")]
    [InlineData("/kitchen/weigh", "save", "lost", "1.25")]
    [InlineData("/kitchen/weigh", "colander", "came-off", "140")]
    [InlineData("/larder/onion/edit", "save", "refuse", "12")]
    [InlineData("/larder/carrot/copy", "save", "name", "Purple carrot")]
    [InlineData($"/plans/new?{Plan}", "save-plan", "note", "Two rounds & a half")]
    [InlineData($"/batches/start?{Plan}", "start", "name", "Friday's pot")]
    public async Task A_lost_token_gives_the_form_back_as_it_was_typed(string address, string form, string field, string typed)
    {
        using HttpClient browser = app.Browser();
        string post = form is "save-plan" ? "/plans" : address;
        Page opened = await GetAsync(browser, address);
        Assert.True(opened.Form(form).ContainsKey(field), string.Join(' ', opened.Form(form).Keys));
        foreach (string? token in (string?[])[null, "nonsense"])
        {
            Page refused = await SendAsync(browser, post, opened, form, (field, typed), (Token, token));
            Assert.Equal(HttpStatusCode.BadRequest, refused.Status);
            Assert.Contains(TooOld, refused.Text, StringComparison.Ordinal);
            Assert.Equal(typed, refused.Form(form)[field]);
            Assert.NotEmpty(refused.Form(form)[Token]);
        }
    }

    [Fact]
    public async Task Nothing_is_saved_until_the_form_that_came_back_is_sent_again()
    {
        using HttpClient browser = app.Browser();
        const string Address = "/kitchen/ovens/new";
        Page opened = await GetAsync(browser, Address);
        Page refused = await SendAsync(browser, Address, opened, "save", ("name", "Deck oven"), ("levels", "2"), ("length", "53"), ("width", "32.5"), (Token, null));
        Assert.Equal(HttpStatusCode.BadRequest, refused.Status);
        Assert.DoesNotContain("Deck oven", (await GetAsync(browser, "/kitchen")).Text, StringComparison.Ordinal);
        Page sent = await SendAsync(browser, Address, refused, "save");
        Assert.True(sent.Status == HttpStatusCode.SeeOther, sent.Text);
        Assert.Contains("Deck oven", (await GetAsync(browser, "/kitchen")).Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_form_of_another_kitchen_on_the_same_host_comes_back_too()
    {
        using KeepingApp other = new();
        using HttpClient there = other.Browser();
        using HttpClient here = app.Browser();
        const string Address = "/kitchen/hobs/new";
        Page foreign = await GetAsync(there, Address);
        Page refused = await SendAsync(here, Address, foreign, "save", ("name", "Wok ring"));
        Assert.Equal(HttpStatusCode.BadRequest, refused.Status);
        Assert.Contains(TooOld, refused.Text, StringComparison.Ordinal);
        Assert.Equal("Wok ring", refused.Form("save")["name"]);
    }

    [Theory]
    [InlineData("Sec-Fetch-Site", "cross-site")]
    [InlineData("Origin", "https://elsewhere.example")]
    public async Task What_a_page_elsewhere_sends_is_not_shown_here_ready_to_be_saved(string header, string value)
    {
        using HttpClient browser = app.Browser();
        using HttpRequestMessage message = new(HttpMethod.Post, "/kitchen/pots/new") { Content = new FormUrlEncodedContent([KeyValuePair.Create("name", "Planted"), KeyValuePair.Create(Handler, "save")]) };
        message.Headers.Add(header, value);
        Page answer = await Page.ReadAsync(await browser.SendAsync(message, TestContext.Current.CancellationToken));
        Assert.Equal(HttpStatusCode.Forbidden, answer.Status);
        Assert.Contains("another site", answer.Text, StringComparison.Ordinal);
        Assert.DoesNotContain("Planted", answer.Html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_recipe_comes_back_with_its_rows()
    {
        using HttpClient browser = app.Browser();
        string edit = (await SendAsync(browser, "/recipes/lamb", "copy")).Location!;
        Page opened = await GetAsync(browser, edit);
        Page refused = await SendAsync(browser, edit, opened, "save", ("line-0-amount", "777"), ("summary", "For Sunday"), (Token, null));
        Assert.Equal(HttpStatusCode.BadRequest, refused.Status);
        Assert.Equal("777", refused.Form("save")["line-0-amount"]);
        Assert.Equal("For Sunday", refused.Form("save")["summary"]);
    }

    [Fact]
    public async Task Deleting_and_copying_with_a_lost_token_do_nothing_and_keep_the_page_as_stored()
    {
        using HttpClient browser = app.Browser();
        Page pot = await GetAsync(browser, "/kitchen/pots/pot-10");
        Page refused = await SendAsync(browser, "/kitchen/pots/pot-10", pot, "delete", (Token, null));
        Assert.Equal(HttpStatusCode.BadRequest, refused.Status);
        Assert.Contains(TooOld, refused.Text, StringComparison.Ordinal);
        Assert.Equal(pot.Form("save")["name"], refused.Form("save")["name"]);
        Assert.Equal(HttpStatusCode.OK, (await GetAsync(browser, "/kitchen/pots/pot-10")).Status);

        Page recipe = await GetAsync(browser, "/recipes/lamb");
        Page copied = await SendAsync(browser, "/recipes/lamb", recipe, "copy", (Token, null));
        Assert.Equal(HttpStatusCode.BadRequest, copied.Status);
        Assert.Contains("press the button again", copied.Text, StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.SeeOther, (await SendAsync(browser, "/recipes/lamb", copied, "copy")).Status);
    }

    [Fact]
    public async Task A_new_name_for_a_plan_comes_back_unfolded()
    {
        using HttpClient browser = app.Browser();
        Page form = await GetAsync(browser, $"/plans/new?{Plan}");
        string address = (await SendAsync(browser, "/plans", form, "save-plan", ("name", "Feast"))).Location!;
        Page refused = await SendAsync(browser, address, await GetAsync(browser, address), "rename", ("note", "Bring 2 sieves"), (Token, null));
        Assert.Equal(HttpStatusCode.BadRequest, refused.Status);
        Assert.Equal("Bring 2 sieves", refused.Form("rename")["note"]);
        Assert.Matches("<details class=\"fold noprint\" open[^>]*>\\s*<summary><b>Rename", refused.Html);
        Assert.DoesNotContain("2 sieves", (await GetAsync(browser, address)).Text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(null)]
    [InlineData("nonsense")]
    public async Task An_unknown_handler_gives_the_form_back_as_it_was_typed(string? handler)
    {
        using HttpClient browser = app.Browser();
        const string Address = "/kitchen/pots/new";
        Page refused = await SendAsync(browser, Address, await GetAsync(browser, Address), "save", ("name", "Nameless"), (Handler, handler));
        Assert.Equal(HttpStatusCode.BadRequest, refused.Status);
        Assert.Equal("Nameless", refused.Form("save")["name"]);
        Assert.Contains("cannot be told which form", refused.Text, StringComparison.Ordinal);
        Assert.DoesNotContain("Nameless", (await GetAsync(browser, "/kitchen")).Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Too_many_fields_are_answered_by_a_page_with_the_limit_and_a_way_back()
    {
        using HttpClient browser = app.Browser();
        Dictionary<string, string> fields = (await GetAsync(browser, "/kitchen/pots/pot-10")).Form("save");
        using FormUrlEncodedContent many = new([.. fields, .. Enumerable.Range(0, 3000).Select(number => KeyValuePair.Create($"x{number}", "1"))]);
        Page answer = await Page.ReadAsync(await browser.PostAsync(new Uri("/kitchen/pots/pot-10", UriKind.Relative), many, TestContext.Current.CancellationToken));
        Assert.Equal(HttpStatusCode.BadRequest, answer.Status);

        // Microsoft.AspNetCore.Http.Features.FormOptions.DefaultValueCountLimit, as documented.
        Assert.Contains("1,024 fields", answer.Text, StringComparison.Ordinal);
        Assert.Contains("href=\"/kitchen/pots/pot-10\"", answer.Html, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("/nowhere", HttpStatusCode.NotFound)]
    [InlineData("/kitchen/pots", HttpStatusCode.NotFound)]
    [InlineData("/units/us", HttpStatusCode.MethodNotAllowed)]
    public async Task A_form_sent_to_no_page_is_answered_by_a_page(string address, HttpStatusCode status)
    {
        using HttpClient browser = app.Browser();
        foreach (HttpMethod method in (HttpMethod[])[HttpMethod.Post, HttpMethod.Put, HttpMethod.Delete])
        {
            using HttpRequestMessage message = new(method, address) { Content = new FormUrlEncodedContent([KeyValuePair.Create("name", "x")]) };
            Page answer = await Page.ReadAsync(await browser.SendAsync(message, TestContext.Current.CancellationToken));
            Assert.True(answer.Status == status, $"{method} {answer.Status}");
            Assert.Contains("<h1>", answer.Html, StringComparison.Ordinal);
        }
    }

    [Fact]
    public async Task A_program_gets_a_problem_document()
    {
        using HttpClient browser = app.Browser();
        using HttpRequestMessage message = new(HttpMethod.Post, "/kitchen/pots/new") { Content = new StringContent("{}", new MediaTypeHeaderValue("application/json")) };
        using HttpResponseMessage answer = await browser.SendAsync(message, TestContext.Current.CancellationToken);
        Assert.Equal(HttpStatusCode.UnsupportedMediaType, answer.StatusCode);
        Assert.Equal("application/problem+json", answer.Content.Headers.ContentType?.MediaType);
        JsonElement problem = JsonElement.Parse(await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken));
        Assert.Contains("form", problem.GetProperty("detail").GetString(), StringComparison.Ordinal);

        using HttpRequestMessage asked = new(HttpMethod.Post, "/kitchen/pots/new") { Content = new FormUrlEncodedContent([KeyValuePair.Create("name", "x")]) };
        asked.Headers.Accept.ParseAdd("application/json");
        using HttpResponseMessage told = await browser.SendAsync(asked, TestContext.Current.CancellationToken);
        Assert.Equal(HttpStatusCode.BadRequest, told.StatusCode);
        Assert.Equal("application/problem+json", told.Content.Headers.ContentType?.MediaType);
    }
}
