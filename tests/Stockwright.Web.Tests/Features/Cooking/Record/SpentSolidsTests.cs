using System.Net;
using System.Text.Json;
using System.Text.Json.Nodes;
using Stockwright.Measures;
using Xunit;
using static Stockwright.Web.Tests.Features.Cooking.BatchApp;
using static Stockwright.Web.Tests.KeepingApp;
using Mass = UnitsNet.Mass;

namespace Stockwright.Web.Tests.Features.Cooking.Record;

/// <summary>The weight of the drained solids: entered by form and by program, refused with a reason, told everywhere as one figure.</summary>
public sealed class SpentSolidsTests : IDisposable
{
    private const double Pound = 0.45359237;

    private readonly BatchApp app = new();

    public void Dispose() => app.Dispose();

    [Fact]
    public async Task It_is_entered_by_form_in_either_measure_and_exported_in_kilograms()
    {
        using HttpClient browser = app.Browser();
        string address = await StartAsync(browser);
        app.Clock.Advance(TimeSpan.FromHours(8));
        await TakenAsync(browser, address, "spent-", ("spent", "1,9"), ("who", "Ida"));
        await TakenAsync(browser, $"{address}?units=us", "spent-", ("spent", "4 1/4"));

        JsonElement[] entries = [.. (await LogAsync(browser, address)).GetProperty("entries").EnumerateArray()];
        Assert.Equal(["spent", "spent"], entries.Select(entry => entry.GetProperty("kind").GetString()), StringComparer.Ordinal);
        Assert.Equal(1.9, entries[0].GetProperty("fact").GetProperty("kilograms").GetDouble(), 1e-12);
        Assert.Equal(4.25 * Pound, entries[1].GetProperty("fact").GetProperty("kilograms").GetDouble(), 1e-9);

        string[] rows = (await GetAsync(browser, $"{address}/log.csv?units=metric")).Html.Split("\r\n", StringSplitOptions.RemoveEmptyEntries);
        Assert.Contains(",Ida,spent,\"1.9\u00A0kg of spent solids, drained\",1.9,kg,", rows[1], StringComparison.Ordinal);
        Assert.Contains($",{Math.Round(4.25 * Pound, 6).ToString(System.Globalization.CultureInfo.InvariantCulture)},kg,", rows[2], StringComparison.Ordinal);
        string record = (await GetAsync(browser, $"{address}/record?units=us")).Text.Replace('\u00A0', ' ');
        Assert.StartsWith("Quantity 4 lb 4 oz of spent solids", record[record.IndexOf("Quantity", StringComparison.Ordinal)..], StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_correction_opens_with_what_was_typed()
    {
        using HttpClient browser = app.Browser();
        string address = await StartAsync(browser);
        app.Clock.Advance(TimeSpan.FromHours(8));
        await TakenAsync(browser, address, "spent-", ("spent", "1.9"));
        string id = (await LogAsync(browser, address)).GetProperty("entries")[0].GetProperty("entry").GetString()!;
        Assert.Equal("1.9", (await GetAsync(browser, $"{address}?correct={id}")).FormById("change-")!["spent"]);
        await TakenAsync(browser, $"{address}?correct={id}", "change-", ("spent", "1.7"));
        Assert.Equal(1.7, (await LogAsync(browser, address)).GetProperty("entries")[1].GetProperty("fact").GetProperty("kilograms").GetDouble(), 1e-12);
    }

    // 2.8 kg of bones and vegetables go in for 3.5 L: 40 kg is a slipped point, nothing is nothing, and a word is no weight.
    [Theory]
    [InlineData("metric", "40", "no more than all that went in with what soaks in and clings")]
    [InlineData("us", "40", "no more than all that went in with what soaks in and clings")]
    [InlineData("metric", "0", "is too small")]
    [InlineData("us", "900", "too large. It can be")]
    [InlineData("metric", "some", "not a number")]
    [InlineData("metric", "", "How much do the drained solids weigh?")]
    public async Task An_odd_weight_is_asked_about_beside_its_field_and_kept_as_typed(string units, string typed, string words)
    {
        using HttpClient browser = app.Browser();
        string address = await StartAsync(browser);
        app.Clock.Advance(TimeSpan.FromHours(8));
        Page refused = await EnterAsync(browser, $"{address}?units={units}", "spent-", ("spent", typed), ("who", "Zoë"));
        Assert.Equal(HttpStatusCode.OK, refused.Status);
        Assert.Contains("id=\"spent-spent-problem\"", refused.Html, StringComparison.Ordinal);
        Assert.Contains(words, refused.Text.Replace('\u00A0', ' '), StringComparison.Ordinal);
        Dictionary<string, string> form = refused.FormById("spent-")!;
        Assert.Equal((typed, "Zoë"), (form["spent"], form["who"]));
        Assert.Equal(0, (await LogAsync(browser, address)).GetProperty("entries").GetArrayLength());
    }

    [Fact]
    public async Task A_script_and_a_program_enter_it_too()
    {
        using HttpClient browser = app.Browser();
        string address = await StartAsync(browser);
        app.Clock.Advance(TimeSpan.FromHours(8));
        using FormUrlEncodedContent form = new([new("entry", Guid.CreateVersion7().ToString()), new("kind", "spent"), new("spent", "1.8"), new("units", "metric")]);
        using HttpResponseMessage stored = await browser.PostAsync(new Uri($"{address}/log", UriKind.Relative), form, TestContext.Current.CancellationToken);
        Assert.Equal(HttpStatusCode.Created, stored.StatusCode);

        string entries = $"/api{address}/entries";
        Assert.Equal((HttpStatusCode.Created, 4 * Pound), await SendAsync("""{"kind":"spent","spent":4,"units":"us","entry":"018f0000-0000-7000-8000-000000000001"}"""));
        Assert.Equal((HttpStatusCode.BadRequest, double.NaN), await SendAsync("""{"kind":"spent","spent":40,"entry":"018f0000-0000-7000-8000-000000000002"}"""));

        async Task<(HttpStatusCode Status, double Kilograms)> SendAsync(string body)
        {
            using StringContent json = new(body, System.Text.Encoding.UTF8, "application/json");
            using HttpResponseMessage answer = await browser.PostAsync(new Uri(entries, UriKind.Relative), json, TestContext.Current.CancellationToken);
            JsonNode said = JsonNode.Parse(await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken))!;
            Assert.True(answer.IsSuccessStatusCode || said["errors"]!.AsObject().ContainsKey("spent"), said.ToJsonString());
            return (answer.StatusCode, answer.IsSuccessStatusCode ? Math.Round((double)said["fact"]!["kilograms"]!, 12) : double.NaN);
        }
    }

    [Theory]
    [InlineData("metric")]
    [InlineData("us")]
    public async Task Plan_page_interface_tile_and_comparison_give_one_figure(string measures)
    {
        using HttpClient browser = app.Browser();
        string address = await StartAsync(browser);
        UnitSystem units = measures is "us" ? UnitSystem.UsCustomary : UnitSystem.Metric;
        using StringContent asked = new("""{"recipe":"brown-chicken","pot":"pot-10","goal":"litres","litres":3.5}""", System.Text.Encoding.UTF8, "application/json");
        using HttpResponseMessage answer = await browser.PostAsync(new Uri("/api/plans", UriKind.Relative), asked, TestContext.Current.CancellationToken);
        JsonNode spent = JsonNode.Parse(await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken))!["ledger"]!["spentSolidsKilograms"]!;
        Mass Kilograms(string which) => Mass.FromKilograms((double)spent[which]!);
        string central = KitchenFormat.Text(Kilograms("central"), units).Replace('\u00A0', ' ');
        string band = KitchenFormat.Band(new Evidence.Band<Mass>(Kilograms("low"), Kilograms("central"), Kilograms("high")), units).Replace('\u00A0', ' ');

        string litres = units is UnitSystem.Metric ? "3.5" : "3.69840";
        string plan = Plain(await GetAsync(browser, $"/plan?{Query.Replace("3.5", litres, StringComparison.Ordinal)}&units={measures}"));
        const string Line = "Spent solids, drained what to expect on the scale, with the liquor that clings to them ";
        int at = plan.IndexOf(Line, StringComparison.Ordinal) + Line.Length;
        Assert.StartsWith($"about {central} {band} ", plan[at..(at + 60)], StringComparison.Ordinal);

        app.Clock.Advance(TimeSpan.FromHours(9));
        Assert.Contains("All of them, without bowl or colander. Likely ", Plain(await GetAsync(browser, $"{address}?units={measures}")), StringComparison.Ordinal);
        await TakenAsync(browser, $"{address}?units=metric", "strained-", ("strained", "3.4"));
        await TakenAsync(browser, $"{address}?units=metric", "spent-", ("spent", "2"));
        await TakenAsync(browser, $"{address}?units=metric", "fat-", ("fat", "150"));
        await TakenAsync(browser, $"{address}?units=metric", "closed-", ("next-time", "less thyme"));
        string closed = Plain(await GetAsync(browser, $"{address}?units={measures}"));
        string[] measured = units is UnitSystem.Metric ? ["3.4 L", "2 kg", "150 g"] : ["3.59 qt", "4 lb 7 oz", "5¼ oz"];
        Assert.Matches($"Strained, with its fat .{{5,120}} {measured[0]} ", closed);
        Assert.Matches($"Spent solids, drained {central} {band} .{{5,80}} {measured[1]} ", closed);
        Assert.Matches($"Fat taken off .{{5,120}} {measured[2]} ", closed);

        string record = Plain(await GetAsync(browser, $"{address}/record?units={measures}"));
        Assert.Contains(
            units is UnitSystem.Metric ? "Quantity 3.4 L strained, 2 kg of spent solids, 150 g of fat" : "Quantity 3.59 qt strained, 4 lb 7 oz of spent solids, 5.29 oz of fat",
            record,
            StringComparison.Ordinal);

        static string Plain(Page page) => page.Text.Replace('\u00A0', ' ');
    }
}
