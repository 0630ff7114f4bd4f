using System.Net;
using CsCheck;
using Stockwright.Web.Fields;
using Stockwright.Web.Tests.Fields;
using Stockwright.Web.Tests.Screens;
using Xunit;

namespace Stockwright.Web.Tests.Features.Planning;

public sealed class PlanPageTests(StockwrightFactory factory)
{
    private readonly HttpClient client = factory.Reader();

    [Fact]
    public async Task The_front_door_leads_to_a_plan_that_is_already_an_answer()
    {
        Assert.Equal("/plan", (await ScreenAsync("/")).LinkSaying("Plan a batch"));
        Screen page = await ScreenAsync("/plan");
        Assert.Equal("Brown chicken stock", Assert.Single(page.Named("h1")).Text);
        string answer = page.The("answer").Text;
        Assert.Contains("You get", answer, StringComparison.Ordinal);
        Assert.Contains("below the rim", answer, StringComparison.Ordinal);
        Assert.Contains("Thu 26 Nov, 08:00", answer, StringComparison.Ordinal);
        Assert.True(page.Has("drawing-pot"));
        Assert.Contains(page.Named("button"), button => button.Text is "Work it out");
        Assert.Empty(page.Problems);
    }

    [Fact]
    public async Task The_answer_stands_before_the_form()
    {
        Screen page = await ScreenAsync("/plan");
        ScreenPart form = page.Named("form").First();
        Assert.True(page.IsBefore(page.The("answer"), form));
        Assert.True(page.IsBefore(form, page.Named("h2").First(part => part.Text.Contains("What goes in", StringComparison.Ordinal))));
    }

    [Theory]
    [InlineData("goal=litres&litres=abc", "litres", "abc")]
    [InlineData("goal=litres&litres=-2,5", "litres", "-2,5")]
    [InlineData("pot=own&pot-diameter=24&pot-height=900", "pot-height", "900")]
    [InlineData("simmer=%3Cscript%3Ealert(1)%3C/script%3E", "simmer", "<script>alert(1)</script>")]
    [InlineData("date=31.12.2026", "date", "31.12.2026")]
    [InlineData("goal=bones&bones-5-cut=unicorn&bones-5-kg=2", "bones-0-cut", "unicorn")]
    [InlineData("recipe=primordial", "recipe", "primordial")]
    [InlineData("pot=cauldron", "pot", "cauldron")]
    [InlineData("hob=own&hob-power=lots", "hob-power", "lots")]
    [InlineData("ph=14", "ph", "14")]
    [InlineData("pot=own&pot-diameter=26&pot-height=20&pot-kind=pressure&pot-gauge=2.5", "pot-gauge", "2.5")]
    [InlineData("pot=own&pot-diameter=60&pot-height=40&pot-kind=kettle&pot-power=12000&pot-gauge=0.5", "pot-gauge", "0.5")]
    [InlineData("pot=own&pot-diameter=26&pot-height=14&pot-kind=slow&pot-power=lots", "pot-power", "lots")]
    [InlineData("pot=own&pot-diameter=26&pot-height=14&pot-kind=slow&pot-power=900", "pot-power", "900")]
    [InlineData("pot=own&pot-diameter=26&pot-height=140&pot-kind=slow&pot-power=250", "pot-height", "140")]
    [InlineData("kitchen-factor=5", "kitchen-factor", "5")]
    [InlineData("set-target=concrete", "set-target", "concrete")]
    [InlineData("set-target=firm-jelly&set-3-cut=chicken-feet&set-3-price=cheap", "set-0-price", "cheap")]
    [InlineData("more-0-cut=unicorn&more-0-kg=1", "more-0-cut", "unicorn")]
    public async Task A_mistake_is_named_beside_its_field_and_what_was_typed_is_kept(string query, string field, string typed)
    {
        string html = await PageAsync($"/plan?{query}&room=23.5&future=1");
        Screen page = Screen.Of(html);
        Assert.NotEmpty(page.ProblemOf(field) ?? "");
        Assert.True(page.LeadsTo(field));
        Assert.Equal((typed, "23.5", "1"), (page.ValueOf(field), page.ValueOf("room"), page.ValueOf("future")));
        Assert.DoesNotContain("<script>alert", html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_the_planner_refuses_shows_beside_its_field_in_either_system()
    {
        const string Pot = "goal=bones&pot=own&pot-shape=volume&bones-0-cut=chicken-back";
        Assert.NotNull((await ScreenAsync($"/plan?{Pot}&pot-volume=5&pot-diameter=20&bones-0-kg=400")).ProblemOf("bones-0-kg"));
        Assert.NotNull((await ScreenAsync($"/plan?units=us&{Pot}&pot-volume=5&pot-diameter=8&bones-0-lb=880")).ProblemOf("bones-0-lb"));
    }

    [Fact]
    public async Task A_simmer_that_cannot_be_reached_still_gives_a_plan_and_a_warning()
    {
        Screen page = await ScreenAsync("/plan?simmer=110");
        Assert.True(page.Has("answer"));
        Assert.Contains(page.Warnings, warning => warning.Contains("reach", StringComparison.Ordinal));
    }

    [Fact]
    public async Task Every_link_of_the_page_to_another_plan_leads_to_a_plan()
    {
        Screen page = await ScreenAsync("/plan?recipe=white-beef&date=2026-11-26&time=15:00");
        string[] links = [.. page.Links.Where(link => link.StartsWith("/plan?", StringComparison.Ordinal) && !link.Contains('#', StringComparison.Ordinal)).Distinct(StringComparer.Ordinal)];
        Assert.NotEmpty(links);
        foreach (string link in links)
        {
            Assert.True((await ScreenAsync(link)).Has("answer"), link);
        }
    }

    [Fact]
    public async Task The_units_switch_keeps_the_plan_and_sets_the_cookie()
    {
        using HttpResponseMessage response = await client.GetAsync(
            "/units/us?back=" + Uri.EscapeDataString("/plan?goal=litres&litres=3&room=x"), TestContext.Current.CancellationToken);
        Assert.Equal(HttpStatusCode.Redirect, response.StatusCode);
        Assert.Equal("/plan?units=us&goal=litres&litres=3.17&room=x", response.Headers.Location?.ToString());
        Assert.Contains(response.Headers.GetValues("Set-Cookie"), cookie => cookie.StartsWith("units-", StringComparison.Ordinal) && cookie.Contains("=us;", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("https://elsewhere.example/")]
    [InlineData("//elsewhere.example")]
    [InlineData("/\\elsewhere.example")]
    [InlineData("/plan\r\nSet-Cookie: a=b")]
    [InlineData("")]
    public async Task The_units_switch_leads_nowhere_else(string back)
    {
        using HttpResponseMessage response = await client.GetAsync("/units/metric?back=" + Uri.EscapeDataString(back), TestContext.Current.CancellationToken);
        Assert.Equal("/", response.Headers.Location?.ToString());
    }

    [Fact]
    public async Task US_readers_get_quarts_and_twelve_hour_clocks()
    {
        string page = await PageAsync("/plan?units=us");
        Assert.Contains("qt", page, StringComparison.Ordinal);
        Assert.Contains("8:00 am", page, StringComparison.Ordinal);
        Assert.Contains("°F", page, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_sheet_holds_what_hangs_on_the_wall()
    {
        ScreenPart sheet = Screen.Of(await PageAsync("/plan/print?recipe=white-veal"), isWhole: false).Of("sheet").First();
        Assert.Contains("below the rim", sheet.Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Hostile_links_never_fail_the_server() => await HostileForms.Forms.SampleAsync(
        async entries =>
        {
            string query = new TypedForm(entries.Select(entry => KeyValuePair.Create(Short(entry.Key), Short(entry.Value)))).ToQuery();
            foreach (string path in new[] { "/plan", "/plan/print" })
            {
                using HttpResponseMessage response = await client.GetAsync($"{path}?{query}", TestContext.Current.CancellationToken);
                Assert.True(response.StatusCode == HttpStatusCode.OK, $"{response.StatusCode} {path}?{query}");
            }
        },
        iter: 200);

    [Theory]
    [InlineData("?")]
    [InlineData("?&&&==&")]
    [InlineData("?%")]
    [InlineData("?%ff%fe=%c3%28")]
    [InlineData("?recipe=%00&pot=%ED%A0%80")]
    [InlineData("?litres=1&litres=2&litres=3")]
    public async Task Crooked_links_still_open(string query)
    {
        using HttpResponseMessage response = await client.GetAsync("/plan" + query, TestContext.Current.CancellationToken);
        Assert.Equal(HttpStatusCode.OK, response.StatusCode);
    }

    private static string Short(string text) => text.Length > 300 ? text[..300] : text;

    /// <summary>The kind chosen and nothing else touched: a plan, and beside lid, heat and time what the kind settles.</summary>
    [Theory]
    [InlineData("", "120 °C")]
    [InlineData("&simmer=121", "120 °C")]
    [InlineData("&altitude=1800", "117 °C")]
    [InlineData("&lid=&gap=10&simmer=&hours=&check=", "120 °C")]
    public async Task A_pressure_cooker_is_planned_as_one(string others, string celsius)
    {
        string query = $"units=metric&recipe=white-chicken&pot=own&pot-diameter=26&pot-height=20&pot-kind=pressure&goal=litres&litres=3{others}";
        string page = await PageAsync("/plan?" + query);
        Assert.DoesNotContain("to put right", page, StringComparison.Ordinal);
        Assert.DoesNotContain("cannot be reached", page, StringComparison.Ordinal);
        Assert.Contains("The lid is on, and locked while it is at pressure", page, StringComparison.Ordinal);
        Assert.Contains(celsius, WebUtility.HtmlDecode(page).Replace('\u00A0', ' '), StringComparison.Ordinal);
        Between(page);
        Between(await PageAsync("/plan/print?" + query));

        static void Between(string html)
        {
            int locked = html.IndexOf("<b>Lock the lid</b>", StringComparison.Ordinal);
            int open = html.IndexOf("<b>Open</b>", locked, StringComparison.Ordinal);
            Assert.InRange(locked, 0, open);
            string behind = html[locked..open];
            Assert.DoesNotContain("<b>Skim", behind, StringComparison.Ordinal);
            Assert.DoesNotContain("<b>Add", behind, StringComparison.Ordinal);
            Assert.DoesNotContain("read the level", behind, StringComparison.Ordinal);
            Assert.Contains("<b>Skim", html[..locked], StringComparison.Ordinal);
            Assert.Contains("<b>Add", html[open..], StringComparison.Ordinal);
        }
    }

    [Fact]
    public async Task A_heat_no_locked_lid_holds_is_refused_beside_its_field_with_the_range()
    {
        Screen page = await ScreenAsync("/plan?units=metric&recipe=white-chicken&pot=own&pot-diameter=26&pot-height=20&pot-kind=pressure&simmer=95");
        Assert.Contains("Behind a locked lid this cooker holds between", page.ProblemOf("simmer"), StringComparison.Ordinal);
        Assert.Contains("Heat on", await PageAsync("/plan?units=metric&recipe=white-chicken&pot=own&pot-diameter=26&pot-height=20&pot-kind=pressure&simmer=95&lid=ajar"), StringComparison.Ordinal);
    }

    private async Task<Screen> ScreenAsync(string address) => Screen.Of(await PageAsync(address));

    private async Task<string> PageAsync(string address)
    {
        using HttpResponseMessage response = await client.GetAsync(address, TestContext.Current.CancellationToken);
        Assert.Equal(HttpStatusCode.OK, response.StatusCode);
        return await response.Content.ReadAsStringAsync(TestContext.Current.CancellationToken);
    }
}
