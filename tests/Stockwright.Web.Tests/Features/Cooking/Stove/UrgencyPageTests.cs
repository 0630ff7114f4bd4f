using System.Net;
using Xunit;
using static Stockwright.Web.Tests.Features.Cooking.BatchApp;
using static Stockwright.Web.Tests.KeepingApp;

namespace Stockwright.Web.Tests.Features.Cooking.Stove;

/// <summary>What the card of the stove page says first when something is wrong.</summary>
public sealed class UrgencyPageTests : IDisposable
{
    private readonly BatchApp app = new();

    public void Dispose() => app.Dispose();

    [Fact]
    public async Task Cooling_tapped_done_while_hot_goes_on_cooling_and_nothing_is_said_of_the_fridge()
    {
        using HttpClient browser = app.Browser();
        string address = await StartAsync(browser);
        app.Clock.Advance(TimeSpan.FromHours(8));
        await TakenAsync(browser, address, "strained-", ("strained", "3.6"), ("at", "15:50"));
        await TakenAsync(browser, address, "temperature-", ("degrees", "78"), ("place", "cooling"));
        Page before = await GetAsync(browser, address);
        Assert.Contains("This ends the work of your hands", Card(before), StringComparison.Ordinal);
        await TakenAsync(browser, address, "now-cool-1-");

        Page after = await GetAsync(browser, address);
        Assert.Contains("<b>Cooling</b>", Part(after.Html, "live-state"), StringComparison.Ordinal);
        Assert.Contains("It is cooling: keep measuring", Card(after), StringComparison.Ordinal);
        Assert.Contains("once a reading of 5 °C", Card(after).Replace('\u00A0', ' '), StringComparison.Ordinal);
        Assert.DoesNotContain("fridge", Card(after), StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("bottom of the fridge", after.Text, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("data-alarm=\"chill-1\"", after.Html, StringComparison.Ordinal);

        // A reading that says so makes it cold; then the fridge is spoken of.
        app.Clock.Advance(TimeSpan.FromHours(5));
        await TakenAsync(browser, address, "temperature-", ("degrees", "20"), ("place", "cooling"), ("at", "17:30"));
        await TakenAsync(browser, address, "temperature-", ("degrees", "4.5"), ("place", "cooling"));
        Page cold = await GetAsync(browser, address);
        Assert.Contains("Chill until the fat is firm", Card(cold), StringComparison.Ordinal);
        Assert.Contains("Covered, at the bottom of the fridge.", Card(cold), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Without_a_thermometer_it_is_said_with_a_caution_and_can_be_corrected()
    {
        using HttpClient browser = app.Browser();
        string address = await StartAsync(browser);
        Assert.Null((await GetAsync(browser, address)).FormById("no-thermometer-"));
        app.Clock.Advance(TimeSpan.FromHours(20));
        await TakenAsync(browser, address, "strained-", ("strained", "3.6"), ("at", "2026-11-25 15:50"));
        Page page = await GetAsync(browser, address);
        Assert.Contains("A hand cannot tell 5 °C from 15 °C", page.Text, StringComparison.Ordinal);
        await TakenAsync(browser, address, "no-thermometer-", ("text", "set like jelly"));

        Page said = await GetAsync(browser, address);
        Assert.Contains("Said to be cold, no thermometer: set like jelly", said.Text, StringComparison.Ordinal);
        Assert.Contains("Whether the limit was met, nobody can say", said.Text, StringComparison.Ordinal);
        Assert.Contains("Chill until the fat is firm", Card(said), StringComparison.Ordinal);
        Assert.Contains("said to be cold without a thermometer", (await GetAsync(browser, $"{address}/record")).Text, StringComparison.Ordinal);
        string entry = (await LogAsync(browser, address)).GetProperty("entries")[1].GetProperty("entry").GetString()!;
        Assert.Equal("set like jelly", (await GetAsync(browser, $"{address}?correct={entry}")).FormById("change-")!["text"]);
    }

    [Fact]
    public async Task Heat_off_missed_by_a_day_is_a_dry_pot_and_no_parsley()
    {
        using HttpClient browser = app.Browser();
        string address = await StartAsync(browser);
        await TakenAsync(browser, address, "step-done-", ("step", "heatup-1"));
        app.Clock.Advance(TimeSpan.FromHours(72));
        Page stove = await GetAsync(browser, address);
        string card = Card(stove);
        Assert.Contains("The pot has probably boiled dry", card, StringComparison.Ordinal);
        Assert.Contains("Turn the heat off now", card, StringComparison.Ordinal);
        Assert.Contains("Never pour cold water into a dry, overheated pot", card, StringComparison.Ordinal);
        Assert.Contains("Heat off, let it stand", card, StringComparison.Ordinal);
        Assert.DoesNotContain("Lower it in", card, StringComparison.Ordinal);
        Assert.DoesNotContain("Nothing to add", stove.Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Heat_away_for_three_hours_stands_first()
    {
        using HttpClient browser = app.Browser();
        string address = await StartAsync(browser);
        await TakenAsync(browser, address, "step-done-", ("step", "heatup-1"));
        app.Clock.Advance(TimeSpan.FromHours(1));
        await TakenAsync(browser, address, "heat-lost-", ("why", "power cut"));
        app.Clock.Advance(TimeSpan.FromHours(3));
        string card = Card(await GetAsync(browser, address));
        Assert.Matches("^.{0,20}Look now since about 09:00 3 h ago The heat is away", card.Replace('\u00A0', ' '));
        Assert.Contains("Food Code", (await GetAsync(browser, address)).Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_reading_that_cannot_be_is_told()
    {
        using HttpClient browser = app.Browser();
        string address = await StartAsync(browser);
        await TakenAsync(browser, address, "step-done-", ("step", "heatup-1"));
        app.Clock.Advance(TimeSpan.FromHours(2));
        await TakenAsync(browser, address, "temperature-", ("degrees", "125"), ("place", "pot"));
        Assert.Contains("cannot be the temperature of this pot", (await GetAsync(browser, address)).Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_time_still_ahead_comes_back_as_a_question_and_one_tap_says_yesterday()
    {
        using HttpClient browser = app.Browser();
        string address = await StartAsync(browser);
        app.Clock.Advance(TimeSpan.FromHours(4) + TimeSpan.FromMinutes(5));
        Page asked = await EnterAsync(browser, address, "note-", ("text", "Lid was on"), ("at", "15:40"));
        Assert.Equal(HttpStatusCode.OK, asked.Status);
        Assert.Contains("15:40 is still ahead: it is 12:05. Did you mean yesterday 15:40, or another time?", asked.Text, StringComparison.Ordinal);
        Assert.Contains("id=\"note-at-problem\"", asked.Html, StringComparison.Ordinal);
        Assert.Empty((await LogAsync(browser, address)).GetProperty("entries").EnumerateArray());

        // The button carries the day itself, and stands after the one the Enter key presses.
        string form = asked.Html[asked.Html.IndexOf("id=\"note-\"", StringComparison.Ordinal)..];
        form = form[..form.IndexOf("</form>", StringComparison.Ordinal)];
        Assert.Matches("<button type=\"submit\"[^>]*>Enter</button>\\s*<button type=\"submit\" class=\"quiet\" name=\"at-day\" value=\"yesterday\">Yes, yesterday 15:40</button>", form);
        Dictionary<string, string> typed = asked.FormById("note-")!;
        Assert.False(typed.ContainsKey("at-day"));
        Assert.Equal(HttpStatusCode.SeeOther, (await PostAsync(browser, address, typed, ("at-day", "yesterday"))).Status);
        Assert.Equal(new DateTimeOffset(2026, 11, 24, 15, 40, 0, TimeSpan.Zero), Assert.Single((await LogAsync(browser, address)).GetProperty("entries").EnumerateArray()).GetProperty("happenedAt").GetDateTimeOffset());
    }

    private static string Card(Page page) => new Page(page.Status, page.Location, Part(page.Html, "live-now")).Text;

    /// <summary>One section of a page.</summary>
    private static string Part(string html, string id)
    {
        int from = html.IndexOf($"id=\"{id}\"", StringComparison.Ordinal);
        Assert.True(from > 0, id);
        from = html.IndexOf('>', from) + 1;
        int end = html.IndexOf(id is "live-state" ? "</p>" : "</section>", from, StringComparison.Ordinal);
        return html[from..end];
    }
}
