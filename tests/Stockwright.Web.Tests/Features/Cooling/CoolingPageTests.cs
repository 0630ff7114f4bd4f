using System.Net;
using CsCheck;
using Stockwright.Cooling.Limits;
using Stockwright.Web.Fields;
using Stockwright.Web.Tests.Screens;
using Xunit;

namespace Stockwright.Web.Tests.Features.Cooling;

/// <summary>The cooling page: verdict first, everything typed kept, never a failure.</summary>
public sealed class CoolingPageTests(StockwrightFactory factory)
{
    private const string TenLitres = "litres=10&start=95&s1-place=fridge&s1-lid=on";

    private readonly HttpClient client = factory.Reader();

    /// <summary>Issue 4, done when: 10 L at 95 °C and a domestic fridge. FDA Food Code 3-501.14(A): 57 to 21 °C within 2 h.</summary>
    [Fact]
    public async Task A_deep_pot_in_a_fridge_fails_and_ways_that_pass_are_ranked_before_the_form()
    {
        Screen page = await ScreenAsync("/cooling?" + TenLitres);
        Assert.Contains("Fails the limit at stage 1, by", page.The("verdict").Text, StringComparison.Ordinal);
        Assert.Contains("3-501.14(A)", page.Text, StringComparison.Ordinal);
        Assert.Contains("everything else in it warms too", page.Text, StringComparison.Ordinal);
        ScreenPart ways = page.Of("ways").First();
        Assert.True(page.IsBefore(page.The("verdict"), ways) && page.IsBefore(ways, page.Named("form").First()));
        Assert.Contains("of ice", ways.Text, StringComparison.Ordinal);
        Assert.True(page.Has("drawing-cooling"));
        Assert.Contains("Indicator only", page.Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Every_way_that_is_said_to_pass_passes_when_its_link_is_followed()
    {
        IReadOnlyList<string> links = Screen.LinksIn((await ScreenAsync("/cooling?" + TenLitres)).Of("ways").First());
        Assert.NotEmpty(links);
        foreach (string link in links)
        {
            Assert.Contains("Meets the limit", (await ScreenAsync(link)).The("verdict").Text, StringComparison.Ordinal);
        }
    }

    /// <summary>The ends of the form's own ranges.</summary>
    [Theory]
    [InlineData("litres=500&vessel=own&start=105&pot-diameter=120&pot-height=120&s1-place=fridge")]
    [InlineData("litres=500&vessel=own&start=105&pot-diameter=120&pot-height=120&pans=200")]
    [InlineData("litres=0.1&vessel=own&pot-diameter=8&pot-height=4&kit-wands=10")]
    [InlineData("litres=4.28&start=93&vessel=pot-10&s1-place=fridge&s1-minutes=0")]
    [InlineData("s1-place=running&s1-into=jars&s1-deep=0.5&s1-wands=7")]
    public async Task What_the_form_allows_is_answered(string query) =>
        Assert.Contains("It takes", await PageAsync($"/cooling?{query}"), StringComparison.Ordinal);

    [Theory]
    [InlineData("s1-place=ice&s1-ice=-3", "s1-ice", "-3")]
    [InlineData("start=10&s1-place=fridge&fridge-air=12", "fridge-air", "12")]
    [InlineData("litres=plenty", "litres", "plenty")]
    [InlineData("litres=40&vessel=pot-10", "vessel", "pot-10")]
    [InlineData("vessel=cauldron", "vessel", "cauldron")]
    [InlineData("limit=atlantis", "limit", "atlantis")]
    [InlineData("s1-place=bench&s2-place=fridge", "s1-minutes", "")]
    [InlineData("s2-ice=4", "s2-place", "")]
    [InlineData("s1-place=fridge&s1-into=tubs&s1-count=2", "s1-count", "2")]
    [InlineData("s1-place=fridge&s1-add-ice=400", "s1-add-ice", "400")]
    [InlineData("s1-place=fridge&s1-into=jars&s1-count=3", "s1-count", "3")]
    [InlineData("jar=bucket", "jar", "bucket")]
    [InlineData("s1-place=ice&s1-stir=often", "s1-stir", "often")]
    [InlineData("s1-place=ice&s1-stir-bath=often", "s1-stir-bath", "often")]
    [InlineData("jars=-2", "jars", "-2")]
    [InlineData("sets=own", "setting", "")]
    [InlineData("readings=nothing+here", "readings", "nothing here")]
    [InlineData("scale=kelvin", "scale", "kelvin")]
    public async Task A_mistake_is_named_beside_its_field_and_what_was_typed_is_kept(string query, string field, string typed)
    {
        string html = await PageAsync($"/cooling?{query}&room=23.5&future=1");
        Screen page = Screen.Of(html);
        // A message about the whole setting stands where a link can lead, for no one field is wrong.
        Assert.True(page.ProblemOf(field) is { Length: > 0 } || page.ById(FormState.IdOf(field))?["tabindex"] is "-1");
        Assert.True(page.LeadsTo(field));
        Assert.Equal(("23.5", "1"), (page.ValueOf("room"), page.ValueOf("future")));
        Assert.True(typed.Length == 0 || html.Contains(typed, StringComparison.Ordinal));
    }

    /// <summary>Soda-lime glass stands a jump of about 40 K (from memory); headspace of NCHFP, So Easy to Preserve, 2006, row Juices: wide pint 1/2 in, wide quart 1 in, narrow 1 1/2 in.</summary>
    [Fact]
    public async Task Jars_come_with_the_cautions_of_glass()
    {
        string hot = WebUtility.HtmlDecode(await PageAsync("/cooling?litres=4&start=95&jar=500ml&s1-place=ice&s1-ice=6&s1-until=20&s1-into=jars&s2-place=blast"));
        Assert.Contains("10 glass jars of 500 mL", hot, StringComparison.Ordinal);
        Assert.Contains("cracks a jar", hot, StringComparison.Ordinal);
        Assert.Contains("Never stand glass at", hot, StringComparison.Ordinal);
        Assert.Contains("leave 13 mm free in a wide-mouthed jar of a pint (500 mL) or less, 25 mm in a wide quart or litre, and 38 mm in any jar that narrows", hot.Replace('\u00A0', ' '), StringComparison.Ordinal);
        Assert.Contains("is not canning", hot, StringComparison.Ordinal);
        Assert.Contains("until it is frozen", hot, StringComparison.Ordinal);
        string cool = await PageAsync("/cooling?litres=4&start=55&s1-place=fridge&s1-into=jars");
        Assert.Contains("is not canning", cool, StringComparison.Ordinal);
        Assert.DoesNotContain("cracks a jar", cool, StringComparison.Ordinal);
        Assert.DoesNotContain("is not canning", await PageAsync("/cooling?" + TenLitres), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Jars_at_hand_are_tried_and_their_links_work()
    {
        Screen page = await ScreenAsync($"/cooling?{TenLitres}&jars=30&jar=1l");
        ScreenPart way = page.Named("tr").First(part => part.Text.Contains("13 glass jars of 1 L", StringComparison.Ordinal));
        Screen there = await ScreenAsync(Assert.Single(Screen.LinksIn(way)));
        Assert.Contains("13 glass jars of 1 L", there.The("verdict").Text, StringComparison.Ordinal);
        Assert.DoesNotContain("cracks a jar", there.Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_blast_chiller_says_when_the_first_ice_forms()
    {
        string page = WebUtility.HtmlDecode(await PageAsync("/cooling?litres=10&s1-place=blast"));
        Assert.Contains("the first ice forms at the wall after about", page, StringComparison.Ordinal);
        Assert.DoesNotContain("leaves freezing out", page, StringComparison.Ordinal);
        Assert.DoesNotContain("first ice", await PageAsync("/cooling?litres=10&s1-place=walk-in"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_still_pot_says_where_to_hold_the_probe_and_a_stirred_one_does_not()
    {
        Assert.Contains("warmer than the bottom", await PageAsync("/cooling?litres=10&s1-place=ice"), StringComparison.Ordinal);
        Assert.DoesNotContain("warmer than the bottom", await PageAsync("/cooling?litres=10&s1-place=ice&s1-stir=1&s1-until=5"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_one_tick_of_an_older_link_is_both_every_few_minutes()
    {
        Screen old = await ScreenAsync("/cooling?litres=10&s1-place=ice&s1-stir=1&s1-until=5");
        Screen now = await ScreenAsync("/cooling?litres=10&s1-place=ice&s1-stir=few&s1-stir-bath=few&s1-until=5");
        Assert.Contains("stock and bath stirred every few minutes", old.The("verdict").Text, StringComparison.Ordinal);
        Assert.Equal(Times(now), Times(old));
        Assert.Contains("both are read as every few minutes", old.Text, StringComparison.Ordinal);
        Assert.DoesNotContain("both are read as every few minutes", now.Text, StringComparison.Ordinal);
        Assert.Equal(("few", "few"), (old.ValueOf("s1-stir"), old.ValueOf("s1-stir-bath")));

        static string Times(Screen page) => page.The("verdict").Within.First(part => part.Name is "tbody").Text;
    }

    [Theory]
    [InlineData("s1-place=ice", "not stirred")]
    [InlineData("s1-place=ice&s1-stir=all&s1-stir-bath=few", "the stock stirred all the time, the bath every few minutes")]
    [InlineData("s1-place=ice&s1-stir=few", "the stock stirred every few minutes, the bath not")]
    [InlineData("s1-place=sink&s1-stir-bath=all", "the bath stirred all the time, the stock not")]
    [InlineData("s1-place=running&s1-stir=few&s1-stir-bath=all", "in running tap water, stirred every few minutes")]
    [InlineData("s1-place=fridge&s1-lid=on&s1-stir=few", "lid on, stirred every few minutes")]
    public async Task What_is_stirred_is_said_with_the_way(string query, string words) =>
        Assert.Contains(words, (await ScreenAsync($"/cooling?litres=10&{query}")).The("verdict").Text, StringComparison.Ordinal);

    [Fact]
    public async Task Every_way_offered_says_what_stirring_it_counts_on_and_its_link_asks_for_it()
    {
        ScreenPart ways = (await ScreenAsync("/cooling?" + TenLitres)).Of("ways").First();
        ScreenPart[] baths = [.. ways.Within.Where(way => way.Name is "li" && way.Text.Contains("ice bath", StringComparison.Ordinal))];
        Assert.NotEmpty(baths);
        foreach (ScreenPart way in baths)
        {
            string link = string.Join(' ', Screen.LinksIn(way));
            Assert.Matches("not stirred|stirred every few minutes|stirred all the time", way.Text);
            Assert.Equal(way.Text.Contains("all the time", StringComparison.Ordinal), link.Contains("stir-bath=all", StringComparison.Ordinal));
            Assert.Equal(way.Text.Contains("every few minutes", StringComparison.Ordinal), link.Contains("stir=few", StringComparison.Ordinal));
        }
    }

    [Fact]
    public async Task Hot_stock_comes_with_the_caution_of_lifting_it()
    {
        string bath = (await ScreenAsync("/cooling?litres=10&start=95&s1-place=ice")).The("verdict").Text;
        Assert.Contains("Hot stock scalds", bath, StringComparison.Ordinal);
        Assert.Contains("below the rim", bath, StringComparison.Ordinal);
        Assert.DoesNotContain("below the rim", (await ScreenAsync("/cooling?litres=10&start=95&s1-place=fridge")).The("verdict").Text, StringComparison.Ordinal);
        Assert.DoesNotContain("Hot stock scalds", (await ScreenAsync("/cooling?litres=10&start=40&s1-place=ice")).The("verdict").Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_time_no_course_reaches_is_said_once()
    {
        string verdict = (await ScreenAsync("/cooling?litres=80&vessel=own&pot-diameter=50&pot-height=60&s1-place=bench")).The("verdict").Text;
        Assert.Contains("over two days", verdict, StringComparison.Ordinal);
        Assert.DoesNotContain("over two days to over two days", verdict, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Stirred_now_and_then_it_says_to_stir_before_reading()
    {
        Assert.Contains("stir before you read", await PageAsync("/cooling?litres=10&s1-place=ice&s1-stir=few&s1-until=5"), StringComparison.Ordinal);
        Assert.DoesNotContain("stir before you read", await PageAsync("/cooling?litres=10&s1-place=ice&s1-stir=all&s1-until=5"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Starting_below_the_clock_is_said()
    {
        Assert.Contains("This starts below the 57", await PageAsync("/cooling?litres=2&start=50"), StringComparison.Ordinal);
        Assert.DoesNotContain("This starts below", await PageAsync("/cooling?litres=2&start=90"), StringComparison.Ordinal);
    }

    /// <summary>Readings with a byte order mark, semicolons and decimal commas, as spreadsheets of half of Europe write them.</summary>
    [Fact]
    public async Task Readings_are_drawn_and_judged_and_rejected_rows_are_shown_with_the_reason()
    {
        string readings = Uri.EscapeDataString("\uFEFFTime;°C\r\n0;90,5\r\n60;57,2\r\n120;40\r\nlater;30\r\n90;44\r\n200;38,5\r\n");
        string page = await PageAsync($"/cooling?{TenLitres}&readings={readings}");
        Assert.Contains("As measured it missed stage 1", page, StringComparison.Ordinal);
        Assert.Contains("165", page, StringComparison.Ordinal);
        Assert.Contains("rows put aside", page, StringComparison.Ordinal);
        Assert.Contains("is not a time.", WebUtility.HtmlDecode(page), StringComparison.Ordinal);
        Assert.Contains("Out of order", page, StringComparison.Ordinal);
        Assert.Contains("drawing-reading", page, StringComparison.Ordinal);
        Assert.Contains("later;30", page[page.IndexOf("<textarea", StringComparison.Ordinal)..], StringComparison.Ordinal);
    }

    [Fact]
    public async Task Readings_in_the_wrong_scale_are_offered_to_be_converted()
    {
        string link = (await ScreenAsync($"/cooling?{TenLitres}&readings={Uri.EscapeDataString("0 140\n60 110\n120 95\n180 85")}")).LinkSaying("Read them as");
        Assert.Contains("scale=f", link, StringComparison.Ordinal);
        Assert.DoesNotContain("Read them as", (await ScreenAsync(link)).Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Gaps_and_stuck_probes_are_said()
    {
        string stuck = string.Join('\n', Enumerable.Range(0, 12).Select(i => $"{i * 10} 63.0"));
        Assert.Contains("is the probe stuck", await PageAsync($"/cooling?{TenLitres}&readings={Uri.EscapeDataString(stuck)}"), StringComparison.Ordinal);
        Assert.Contains("No reading for 290 minutes", await PageAsync($"/cooling?{TenLitres}&readings={Uri.EscapeDataString("0 90\n10 85\n20 80\n30 76\n320 20")}"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Every_limit_is_shown_with_its_clause_and_what_was_not_read_says_to_ask()
    {
        foreach (CoolingLimit limit in StandardLimits.All)
        {
            Screen page = await ScreenAsync($"/cooling?litres=3&limit={limit.Id}");
            Assert.Contains(limit.Clause, page.Text, StringComparison.Ordinal);
            Assert.True(!limit.NeedsChecking || page.The("verdict").Text.Contains("check with your local authority", StringComparison.Ordinal), limit.Id);
        }
    }

    [Fact]
    public async Task The_home_limit_is_chosen_once_and_plans_are_held_against_it()
    {
        using HttpResponseMessage kept = await client.GetAsync("/cooling/home/au-3-2-2?back=%2Fcooling%3Flitres%3D5", TestContext.Current.CancellationToken);
        Assert.Equal("/cooling?litres=5", kept.Headers.Location?.ToString());
        string cookie = kept.Headers.GetValues("Set-Cookie").Single().Split(';')[0];
        using HttpRequestMessage plan = new(HttpMethod.Get, "/plan");
        plan.Headers.Add("Cookie", cookie);
        using HttpResponseMessage answer = await client.SendAsync(plan, TestContext.Current.CancellationToken);
        string page = await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken);
        Assert.Contains("Standard 3.2.2, clause 7(3)", page, StringComparison.Ordinal);
        using HttpResponseMessage abroad = await client.GetAsync("/cooling/home/au-3-2-2?back=%2F%2Felsewhere.example", TestContext.Current.CancellationToken);
        Assert.Equal("/cooling", abroad.Headers.Location?.ToString());
        using HttpResponseMessage none = await client.GetAsync("/cooling/home/nowhere", TestContext.Current.CancellationToken);
        Assert.Equal(HttpStatusCode.NotFound, none.StatusCode);
    }

    [Fact]
    public async Task Every_plan_says_how_its_stock_gets_cold_and_links_to_the_curve()
    {
        string page = WebUtility.HtmlDecode(await PageAsync("/plan?recipe=white-chicken"));
        string section = page[page.IndexOf("id=\"cooling\"", StringComparison.Ordinal)..];
        Assert.Contains("Meets the limit", section, StringComparison.Ordinal);
        Assert.Contains("local rule", section, StringComparison.Ordinal);
        string folded = section[..section.IndexOf("See the curve and every way", StringComparison.Ordinal)];
        Assert.Contains("drawing-cooling", folded, StringComparison.Ordinal);
        Assert.Contains("drawing-vessel", folded, StringComparison.Ordinal);
        Assert.Contains("In the fridge", folded, StringComparison.Ordinal);
        int link = section.IndexOf("/cooling?", StringComparison.Ordinal);
        Assert.Equal("", (await ScreenAsync(section[link..section.IndexOf('"', link)])).PutRight);
    }

    /// <summary>212 °F is 100 °C (ITS-90 aside, by definition of the scale); readings keep the scale they were read in.</summary>
    [Fact]
    public async Task Changing_measures_turns_the_numbers_and_leaves_the_readings_alone()
    {
        using HttpResponseMessage moved = await client.GetAsync("/units/us?back=" + Uri.EscapeDataString("/cooling?units=metric&start=100&s1-place=ice&s1-until=5&readings=0+90"), TestContext.Current.CancellationToken);
        string link = moved.Headers.Location!.ToString();
        Assert.Contains("start=212", link, StringComparison.Ordinal);
        Assert.Contains("s1-until=41", link, StringComparison.Ordinal);
        Assert.Contains("scale=c", link, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Two_hours_of_readings_every_ten_seconds_fit_into_a_link()
    {
        string log = string.Join('\n', Enumerable.Range(0, 720).Select(i => $"{i / 6}; {(60 - (i / 20.0)).ToString("0.0", System.Globalization.CultureInfo.InvariantCulture)}"));
        Assert.Contains("As measured", await PageAsync($"/cooling?{TenLitres}&readings={Uri.EscapeDataString(log)}"), StringComparison.Ordinal);
    }

    [Fact]
    public void Hostile_links_never_fail()
    {
        string[] fields = [.. new[] { Web.Features.Cooling.CoolingFields.All, Web.Features.Keeping.KeepingFields.All }.SelectMany(rows => rows).Select(row => row.Name), .. Enumerable.Range(1, Web.Features.Cooling.StepFields.Most).SelectMany(Web.Features.Cooling.StepFields.NamesAt)];
        string[] values = ["0", "-1", "1", "2,5", "95", "1e308", "NaN", "½", "999999999", "own", "none", "fridge", "ice", "bench", "running", "sink", "walk-in", "blast", "pans", "tubs", "jars", "250ml", "quart", "on", "us", "uk-cook-chill", "c", "f", "few", "all", "no", "\0", "\ud800", "<script>alert(1)</script>", "0 90\n10 80\n20 70", "10:30;57,2", "thin", "2026-12-31", "bag"];
        Gen<KeyValuePair<string, string>[]> forms = Gen.Select(Gen.OneOfConst(fields), Gen.OneOfConst(values), (name, value) => KeyValuePair.Create(name, value)).Array[0, 10];
        forms.Sample(
            form =>
            {
                string query = string.Join('&', form.Select(entry => $"{entry.Key}={Escape(entry.Value)}"));
                foreach (string path in new[] { "/cooling?", "/keeping?" })
                {
                    using HttpResponseMessage answer = client.GetAsync(path + query, TestContext.Current.CancellationToken).GetAwaiter().GetResult();
                    if (answer.StatusCode != HttpStatusCode.OK)
                    {
                        throw new InvalidOperationException($"{path}{query} answered {answer.StatusCode}.");
                    }
                }
            },
            iter: 60,
            threads: 1);

        static string Escape(string value) => value is "\ud800" ? "%ED%A0%80" : Uri.EscapeDataString(value);
    }

    private async Task<Screen> ScreenAsync(string address) => Screen.Of(await PageAsync(address));

    private async Task<string> PageAsync(string address)
    {
        using HttpResponseMessage answer = await client.GetAsync(address, TestContext.Current.CancellationToken);
        string page = await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken);
        Assert.True(answer.StatusCode == HttpStatusCode.OK, $"{address}: {answer.StatusCode}");
        return page;
    }
}
