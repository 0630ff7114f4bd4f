using System.Net;
using System.Text.Json;
using CsCheck;
using Stockwright.Web.Tests.Screens;
using Xunit;
using static Stockwright.Web.Tests.Features.Cooking.BatchApp;
using static Stockwright.Web.Tests.KeepingApp;

namespace Stockwright.Web.Tests.Features.Cooking.Stove;

public sealed class StovePageTests : IDisposable
{
    private readonly BatchApp app = new();

    public void Dispose() => app.Dispose();

    [Fact]
    public async Task What_to_do_now_stands_first_with_its_time_and_one_tap_enters_it()
    {
        using HttpClient browser = app.Browser();
        string address = await StartAsync(browser);
        Screen stove = Screen.Of((await GetAsync(browser, address)).Html);
        Assert.Equal("Weigh everything out", stove.Now);
        Assert.Contains(stove.The("now").Within, part => part["data-countdown"] is not null && part["datetime"] is "2026-11-25T08:00:00Z" && part.Text is "now");
        app.Clock.Advance(TimeSpan.FromMinutes(14));
        await TakenAsync(browser, address, "now-gather-1-");
        JsonElement entry = Assert.Single((await LogAsync(browser, address)).GetProperty("entries").EnumerateArray());
        Assert.Equal("step-done", entry.GetProperty("kind").GetString());
        Assert.Equal("AB", entry.GetProperty("who").GetString());
        Assert.Equal(app.Clock.Now, entry.GetProperty("happenedAt").GetDateTimeOffset());
        Screen after = Screen.Of((await GetAsync(browser, address)).Html);
        Assert.NotEqual("Weigh everything out", after.Now, StringComparer.Ordinal);
        Assert.Contains(after.Named("section"), part => part["data-count"] is "1");
    }

    [Fact]
    public async Task The_page_keeps_what_scripts_rely_on()
    {
        using HttpClient browser = app.Browser();
        string address = await StartAsync(browser, "Mind the <b>");
        string html = (await GetAsync(browser, address)).Html;
        string id = address.Split('/')[^1];
        Assert.Contains($"data-batch=\"{id}\"", html, StringComparison.Ordinal);
        Assert.Contains("data-name=\"Mind the &lt;b&gt;\"", html, StringComparison.Ordinal);
        Assert.Contains($"data-log=\"/batches/{id}/log\"", html, StringComparison.Ordinal);
        Assert.Contains("data-now=\"2026-11-25T08:00:00Z\"", html, StringComparison.Ordinal);
        Assert.Contains("data-alarm=\"fill-1\"", html, StringComparison.Ordinal);
        Assert.Contains("<div id=\"outbox\"></div>", html, StringComparison.Ordinal);
        Assert.Contains("<div id=\"reminders\"></div>", html, StringComparison.Ordinal);
        Assert.DoesNotContain("data-enhance", html[html.IndexOf("id=\"stove\"", StringComparison.Ordinal)..], StringComparison.Ordinal);
        Assert.DoesNotContain(" style=", html, StringComparison.Ordinal);
        string[] ids = All(html, " id=\"");
        Assert.Equal(ids.Length, ids.Distinct(StringComparer.Ordinal).Count());
        string[] keys = All(html, "name=\"entry\" value=\"");
        Assert.True(keys.Length > 20);
        Assert.Equal(keys.Length, keys.Distinct(StringComparer.Ordinal).Count());
    }

    [Fact]
    public async Task A_refused_entry_comes_back_with_messages_beside_its_fields_and_everything_typed()
    {
        using HttpClient browser = app.Browser();
        string address = await StartAsync(browser);
        Page refused = await EnterAsync(browser, address, "temperature-", ("degrees", "hot"), ("place", "cooling"), ("probe", "P <2>"), ("at", "26:10"), ("who", "Zoë"));
        Assert.Equal(HttpStatusCode.OK, refused.Status);
        Screen seen = Screen.Of(refused.Html);
        Assert.Contains("2 things to put right", seen.PutRight, StringComparison.Ordinal);
        Assert.NotNull(seen.ById("temperature-degrees-problem"));
        Assert.NotNull(seen.ById("temperature-at-problem"));
        Assert.Contains($"{address}#temperature-degrees", seen.Links, StringComparer.Ordinal);
        Dictionary<string, string> typed = refused.FormById("temperature-")!;
        Assert.Equal(("hot", "cooling", "P <2>", "26:10", "Zoë"), (typed["degrees"], typed["place"], typed["probe"], typed["at"], typed["who"]));
        // Beside these two and nowhere else.
        Assert.Equal(2, seen.Problems.Count);
        Page sent = await PostAsync(browser, address, typed, ("degrees", "62,5"), ("at", ""));
        Assert.Equal(HttpStatusCode.SeeOther, sent.Status);
        Assert.Contains("62.5 °C in the stock, cooling, thermometer P <2>", (await GetAsync(browser, address)).Text.Replace('\u00A0', ' '), StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_same_form_sent_twice_is_one_entry_and_one_whose_step_is_gone_is_taken_too()
    {
        using HttpClient browser = app.Browser();
        string address = await StartAsync(browser);
        Dictionary<string, string> fields = (await GetAsync(browser, address)).FormById("now-gather-1-")!;
        for (int i = 0; i < 2; i++)
        {
            Assert.Equal(HttpStatusCode.SeeOther, (await PostAsync(browser, address, fields)).Status);
        }

        Assert.Single((await LogAsync(browser, address)).GetProperty("entries").EnumerateArray());
    }

    [Fact]
    public async Task What_could_not_be_stored_says_so_and_is_sent_again_as_it_was()
    {
        using HttpClient browser = app.Browser();
        string address = await StartAsync(browser);
        Dictionary<string, string> fields = (await GetAsync(browser, address)).FormById("note-")!;
        Page failed;
        using (app.LockTheBook())
        {
            failed = await PostAsync(browser, address, fields, ("text", "Do not\nlose me"));
        }

        Assert.Equal(HttpStatusCode.ServiceUnavailable, failed.Status);
        Assert.Contains("Not stored: Note", failed.Text, StringComparison.Ordinal);
        Assert.Contains("keeps the database in", failed.Text, StringComparison.Ordinal);
        Assert.Empty((await LogAsync(browser, address)).GetProperty("entries").EnumerateArray());
        Dictionary<string, string> kept = failed.FormById("again")!;
        Assert.Equal((fields["entry"], "Do not\nlose me"), (kept["entry"], kept["text"]));
        Assert.Equal(HttpStatusCode.SeeOther, (await PostAsync(browser, address, kept)).Status);
        Assert.Equal(HttpStatusCode.SeeOther, (await PostAsync(browser, address, kept)).Status);
        Assert.Single((await LogAsync(browser, address)).GetProperty("entries").EnumerateArray());
    }

    [Fact]
    public async Task A_correction_stands_beside_what_it_corrects_and_starts_from_it()
    {
        using HttpClient browser = app.Browser();
        string address = await StartAsync(browser);
        app.Clock.Advance(TimeSpan.FromHours(3));
        await TakenAsync(browser, $"{address}?units=us", "temperature-", ("degrees", "160"), ("place", "pot"), ("at", "09:30"));
        JsonElement first = Assert.Single((await LogAsync(browser, address)).GetProperty("entries").EnumerateArray());

        // Read in °F and corrected by a reader of metric measures: it stays in °F.
        Dictionary<string, string> form = (await GetAsync(browser, $"{address}?correct={first.GetProperty("entry").GetString()}")).FormById("change-")!;
        Assert.Equal(("160", "us", "2026-11-25 09:30", "AB", "pot"), (form["degrees"], form["units"], form["at"], form["who"], form["place"]));
        Page again = await PostAsync(browser, address, form, ("degrees", "warm"));
        Assert.Equal("warm", again.FormById("change-")!["degrees"]);
        Assert.Equal(HttpStatusCode.SeeOther, (await PostAsync(browser, address, again.FormById("change-")!, ("degrees", "170"))).Status);
        JsonElement[] entries = [.. (await LogAsync(browser, address)).GetProperty("entries").EnumerateArray()];
        Assert.Equal(2, entries.Length);
        Assert.Equal(first.GetProperty("entry").GetString(), entries[1].GetProperty("corrects").GetString());
        Assert.Equal(170, entries[1].GetProperty("fact").GetProperty("degreesFahrenheit").GetDouble());
        Screen page = Screen.Of((await GetAsync(browser, address)).Html);
        Assert.Equal("160 °F in the pot", Assert.Single(page.Named("s")).Text);
        Assert.Contains("Corrected by no. 2", page.Text, StringComparison.Ordinal);
        Assert.DoesNotContain(page.Links, link => link.Contains($"correct={entries[0].GetProperty("entry").GetString()}", StringComparison.Ordinal));
        Assert.Contains(page.Links, link => link.Contains($"correct={entries[1].GetProperty("entry").GetString()}", StringComparison.Ordinal));
    }

    [Fact]
    public async Task An_entry_taken_back_stays_struck_through()
    {
        using HttpClient browser = app.Browser();
        string address = await StartAsync(browser);
        await TakenAsync(browser, address, "note-", ("text", "wrong batch"));
        string id = (await LogAsync(browser, address)).GetProperty("entries")[0].GetProperty("entry").GetString()!;
        await TakenAsync(browser, $"{address}?take-back={id}", "change-", ("why", "typed into the wrong one"));
        Page page = await GetAsync(browser, address);
        Assert.Equal("wrong batch", Assert.Single(Screen.Of(page.Html).Named("s")).Text);
        Assert.Contains("Taken back: typed into the wrong one", page.Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_batch_is_closed_compared_with_its_plan_and_opened_again()
    {
        using HttpClient browser = app.Browser();
        string address = await StartAsync(browser);
        app.Clock.Advance(TimeSpan.FromHours(24));
        await TakenAsync(browser, address, "strained-", ("strained", "3.7"), ("at", "14:00"), ("at-day", "yesterday"));
        await TakenAsync(browser, address, "portioned-", ("portioned", "3.4"));
        await TakenAsync(browser, address, "closed-", ("next-time", "Half an hour less"), ("attended", "1.5"), ("metered", "2.9"));
        Page closed = await GetAsync(browser, address);
        string text = closed.Text.Replace('\u00A0', ' ');
        Assert.Contains("Next time: Half an hour less", text, StringComparison.Ordinal);
        Assert.Matches("Stock kept 3.5 L .{0,60}3.4 L −3 %", text);
        Assert.Matches("Your own time .{0,40}1 h 30 min", text);
        Assert.Matches("Energy .{0,60}2.9 kWh", text);
        Assert.Null(closed.FormById("level-"));
        Screen list = Screen.Of((await GetAsync(browser, "/batches")).Html);
        Assert.Equal("Closed", list.ById("closed")?.Text);
        Assert.Null(list.ById("on"));
        Assert.Contains("Nothing is on", (await GetAsync(browser, "/")).Text, StringComparison.Ordinal);

        string closing = (await LogAsync(browser, address)).GetProperty("entries").EnumerateArray().Last().GetProperty("entry").GetString()!;
        Assert.Contains(Screen.Of(closed.Html).Links, link => link.Contains($"take-back={closing}", StringComparison.Ordinal));
        await TakenAsync(browser, $"{address}?take-back={closing}", "change-");
        Assert.NotNull((await GetAsync(browser, address)).FormById("level-"));
        Assert.Equal("On", Screen.Of((await GetAsync(browser, "/batches")).Html).ById("on")?.Text);
    }

    [Fact]
    public async Task A_record_closed_with_nothing_in_it_still_opens()
    {
        using HttpClient browser = app.Browser();
        string address = await StartAsync(browser);
        await TakenAsync(browser, address, "closed-");
        Page closed = await GetAsync(browser, address);
        Assert.Contains("Plan and reality", closed.Text, StringComparison.Ordinal);
        Assert.Contains("not measured", closed.Text, StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.OK, (await GetAsync(browser, $"{address}/record")).Status);
    }

    [Theory]
    [InlineData("/batches/nothing")]
    [InlineData("/batches/nothing/record")]
    [InlineData("/batches/nothing/log.csv")]
    [InlineData("/batches/00000000-0000-0000-0000-000000000000")]
    [InlineData("/batches/11111111-1111-4111-8111-111111111111/record")]
    [InlineData("/batches/11111111-1111-4111-8111-111111111111/log.csv")]
    [InlineData("/batches/11111111-1111-4111-8111-111111111111/log.json")]
    [InlineData("/batches/11111111-1111-4111-8111-111111111111/photos/11111111-1111-4111-8111-111111111111")]
    [InlineData("/batches/..%2f..%2fetc/record")]
    public async Task What_is_not_there_answers_404(string address)
    {
        using HttpClient browser = app.Browser();
        Page page = await GetAsync(browser, address);
        Assert.True(page.Status is HttpStatusCode.NotFound or HttpStatusCode.BadRequest, page.Status.ToString());
    }

    [Fact]
    public async Task Hostile_entries_and_links_never_break_the_page()
    {
        using HttpClient browser = app.Browser();
        string address = await StartAsync(browser);
        foreach (string query in (string[])["?correct=x", "?correct=", "?take-back=00000000-0000-0000-0000-000000000000", "?units=%00&correct[]=1", "?correct=a&correct=b"])
        {
            Assert.Equal(HttpStatusCode.OK, (await GetAsync(browser, address + query)).Status);
        }

        Dictionary<string, string> fields = (await GetAsync(browser, address)).FormById("level-")!;
        Gen<string> value = Gen.OneOf(
            Gen.OneOfConst("", " ", "-1", "1e999", "NaN", "2,5", "1,500", "\0", "\u202e", "\ud800", "<script>alert(1)</script>", "9999-99-99 99:99", "2026-03-29 01:30", "level", "withdrawn", "closed", "temperature", "photo", "lid", "heat-lost", "none"),
            Gen.String[Gen.Char, 0, 50]);
        string[] names = ["entry", "kind", "units", "below", "at", "who", "corrects", "degrees", "place", "lid", "lid-open", "until", "hob", "step", "text", "device-time", "sent", "device-zone"];
        await Gen.Select(Gen.OneOfConst(names), value).List[1, 6].SampleAsync(
            async changes =>
            {
                Page answer = await PostAsync(browser, address, new Dictionary<string, string>(fields, StringComparer.Ordinal), [.. changes.Select(change => (change.Item1, (string?)change.Item2))]);
                Assert.True((int)answer.Status < 500, $"{answer.Status} for {string.Join("; ", changes)}");
                Assert.DoesNotContain("<script>alert", answer.Html, StringComparison.Ordinal);
            },
            iter: 30,
            threads: 1);
        Assert.Equal(HttpStatusCode.OK, (await GetAsync(browser, address)).Status);
    }

    /// <summary>Everything that stands after a mark, up to the next quote.</summary>
    private static string[] All(string html, string mark) => [.. html.Split(mark).Skip(1).Select(part => part[..part.IndexOf('"', StringComparison.Ordinal)])];
}
