using System.Net;
using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using Xunit;

namespace Stockwright.Web.Tests.Features.Kitchen;

/// <summary>The plan of every kind of vessel, as a page, as a sheet to print and as a document.</summary>
public sealed class VesselPagesTests(StockwrightFactory factory)
{
    private const string Chicken = "units=metric&recipe=white-chicken&goal=litres&";
    private const string Slow = Chicken + "litres=2&hours=8&pot=own&pot-diameter=26&pot-height=14&pot-material=stoneware&pot-kind=slow&pot-power=250";
    private const string Kettle = Chicken + "litres=30&pot=own&pot-diameter=60&pot-height=40&pot-kind=kettle&pot-power=12000";
    private const string Oven = Chicken + "litres=3&in-oven=1&pot=own&pot-diameter=28&pot-height=24";

    private readonly HttpClient client = factory.Reader();

    [Theory]
    [InlineData(Slow, "Lid on, switch on: high", "three quarters, for a slow cooker", "A slow cooker heats itself: the hob does not count here.")]
    [InlineData(Slow + "&slow-setting=low", "Lid on, switch on: low", "its own heater, on low", "The lid stays on: nobody skims")]
    [InlineData(Kettle, "Drain and strain", "10 cm of room, for a kettle", "A kettle heats itself: the hob does not count here.")]
    [InlineData(Kettle + "&hob=own", "Drain and strain", "electricity or steam", "A kettle stays where it is: strain into shallow pans")]
    [InlineData(Oven, "Lid on, into the oven", "Out of the oven", "then the oven")]
    [InlineData(Chicken + "litres=2&pot=own&pot-diameter=26&pot-height=20&pot-kind=pressure&pot-gauge=0.5", "111 °C", "0.5 bar (7.3 psi)", "two thirds, for a pressure cooker")]
    public async Task Each_vessel_has_its_own_plan(string query, string one, string two, string three)
    {
        string page = await TextAsync("/plan?" + query);
        Assert.DoesNotContain("to put right", page, StringComparison.Ordinal);
        Assert.Contains("You get", page, StringComparison.Ordinal);
        Assert.Contains(one, page, StringComparison.Ordinal);
        Assert.Contains(two, page, StringComparison.Ordinal);
        Assert.Contains(three, page, StringComparison.Ordinal);
        Assert.Contains("Strain", await TextAsync("/plan/print?" + query), StringComparison.OrdinalIgnoreCase);
    }

    [Theory]
    [InlineData(Slow + "&hours=0.25", "at least 1 h at the simmer")]
    [InlineData(Slow + "&slow-setting=warm", "only keeps hot what is cooked")]
    [InlineData(Slow + "&lid=off", "A slow cooker cooks with its lid on")]
    [InlineData(Chicken + "litres=2&pot=own&pot-diameter=26&pot-height=14&pot-kind=slow", "Give the power of the slow cooker")]
    [InlineData(Kettle + "&in-oven=1", "Only an ordinary pot goes into the oven")]
    [InlineData(Chicken + "litres=2&pot-power=300&pot=own&pot-diameter=26&pot-height=20", "Only a slow cooker or a kettle has a heater of its own")]
    public async Task What_a_vessel_cannot_do_is_said(string query, string sentence)
    {
        string page = await TextAsync("/plan?" + Once(query));
        Assert.Contains("to put right", page, StringComparison.Ordinal);
        Assert.Contains(sentence, page, StringComparison.Ordinal);
    }

    [Fact]
    public async Task With_the_lid_off_a_pressure_cooker_is_planned_as_an_open_pot()
    {
        string page = await TextAsync("/plan?" + Chicken + "litres=2&pot=own&pot-diameter=26&pot-height=20&pot-kind=pressure&lid=off");
        Assert.DoesNotContain("to put right", page, StringComparison.Ordinal);
        Assert.DoesNotContain("Lock the lid", page, StringComparison.Ordinal);
    }

    /// <summary>The setting is asked of a slow cooker only.</summary>
    [Fact]
    public async Task The_setting_is_hidden_for_other_vessels()
    {
        Assert.DoesNotContain("wide for-slow", await TextAsync("/plan?" + Slow), StringComparison.Ordinal);
        Assert.Contains("wide for-slow", await TextAsync("/plan?" + Kettle), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(Slow + "&slow-setting=low", "slowCooker", 250.0, "low", false)]
    [InlineData(Kettle, "kettle", 12000.0, null, false)]
    [InlineData(Oven, "open", null, null, true)]
    public async Task The_document_says_which_vessel(string query, string kind, double? watts, string? setting, bool inOven)
    {
        string asked = JsonSerializer.Serialize(query.Split('&').Select(part => part.Split('=')).ToDictionary(part => part[0], part => part[1], StringComparer.Ordinal));
        using StringContent content = new(asked, Encoding.UTF8, "application/json");
        using HttpResponseMessage response = await client.PostAsync("/api/plans", content, TestContext.Current.CancellationToken);
        Assert.Equal(HttpStatusCode.OK, response.StatusCode);
        JsonNode plan = JsonNode.Parse(await response.Content.ReadAsStringAsync(TestContext.Current.CancellationToken))!;
        Assert.Equal(kind, (string?)plan["pot"]!["kind"]);
        Assert.Equal(watts, (double?)plan["pot"]!["heaterWatts"]);
        Assert.Equal(setting, (string?)plan["slowSetting"]);
        Assert.Equal(inOven, (bool)plan["simmersInOven"]!);
    }

    /// <summary>The last of a field given twice counts.</summary>
    private static string Once(string query) => string.Join('&', query.Split('&').GroupBy(part => part.Split('=')[0], StringComparer.Ordinal).Select(group => group.Last()));

    private async Task<string> TextAsync(string address)
    {
        using HttpResponseMessage response = await client.GetAsync(address, TestContext.Current.CancellationToken);
        Assert.Equal(HttpStatusCode.OK, response.StatusCode);
        return WebUtility.HtmlDecode(await response.Content.ReadAsStringAsync(TestContext.Current.CancellationToken)).Replace('\u00A0', ' ');
    }
}
