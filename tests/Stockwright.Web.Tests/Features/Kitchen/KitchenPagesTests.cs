using System.Net;
using Microsoft.Extensions.DependencyInjection;
using Stockwright.Kitchen;
using Xunit;
using static Stockwright.Web.Tests.KeepingApp;

namespace Stockwright.Web.Tests.Features.Kitchen;

public sealed class KitchenPagesTests : IDisposable
{
    private readonly KeepingApp app = new();

    [Fact]
    public async Task The_kitchen_shows_what_stands_in_it()
    {
        using HttpClient browser = app.Browser();
        Page page = await GetAsync(browser, "/kitchen");
        Assert.Equal(HttpStatusCode.OK, page.Status);
        Assert.Contains("Village hall kitchen", page.Text, StringComparison.Ordinal);
        Assert.Contains("24 L pot", page.Text, StringComparison.Ordinal);
        Assert.Contains("Europe/London", page.Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task An_empty_kitchen_leads_the_cook_to_add_a_pot_and_a_ring()
    {
        using KeepingApp empty = new() { Demo = false };
        using HttpClient browser = empty.Browser();
        Page page = await GetAsync(browser, "/kitchen");
        Assert.Contains("No pot yet", page.Text, StringComparison.Ordinal);
        Assert.Contains("href=\"/kitchen/pots/new\"", page.Html, StringComparison.Ordinal);
        Assert.Contains("href=\"/kitchen/hobs/new\"", page.Html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_pot_is_added_by_brim_volume_with_a_comma_and_shows_in_the_list()
    {
        using HttpClient browser = app.Browser();
        Page answer = await SendAsync(
            browser, "/kitchen/pots/new", "save", ("name", "Grande marmite"), ("pot-shape", "volume"), ("pot-volume", "8,7"), ("pot-diameter", "24"));
        Assert.Equal(HttpStatusCode.SeeOther, answer.Status);
        Assert.Equal("/kitchen#pots", answer.Location);
        Page pot = await GetAsync(browser, "/kitchen/pots/grande-marmite");

        // 8.7 L over a circle of 24 cm: 8700 / (pi x 12 x 12) = 19.23 cm.
        Assert.StartsWith("19.23", pot.Form("save")["pot-height"], StringComparison.Ordinal);
        Assert.Contains("8.7", (await GetAsync(browser, "/kitchen")).Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_vessel_that_heats_itself_is_added_with_its_power()
    {
        using HttpClient browser = app.Browser();
        (string, string?)[] crock = [("name", "Crock"), ("pot-diameter", "26"), ("pot-height", "14"), ("pot-material", "stoneware"), ("pot-kind", "slow")];
        Page asked = await SendAsync(browser, "/kitchen/pots/new", "save", crock);
        Assert.Equal(HttpStatusCode.OK, asked.Status);
        Assert.Contains("Give the power of the slow cooker", asked.Text, StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.SeeOther, (await SendAsync(browser, "/kitchen/pots/new", "save", [.. crock, ("pot-power", "250")])).Status);
        Assert.Equal("250", (await GetAsync(browser, "/kitchen/pots/crock")).Form("save")["pot-power"]);
        Assert.Contains("stoneware slow cooker of 250 W", (await GetAsync(browser, "/kitchen")).Text.Replace('\u00A0', ' '), StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_pressure_of_a_cooker_is_kept_and_no_kettle_has_one()
    {
        using HttpClient browser = app.Browser();
        (string, string?)[] cooker = [("name", "Cooker"), ("pot-diameter", "24"), ("pot-height", "20"), ("pot-kind", "pressure"), ("pot-gauge", "0,7")];
        Assert.Equal(HttpStatusCode.SeeOther, (await SendAsync(browser, "/kitchen/pots/new", "save", cooker)).Status);
        Page us = await GetAsync(browser, "/kitchen/pots/cooker?units=us");
        Assert.Equal("10.153", us.Form("save")["pot-gauge"]);

        // 10.153 psi is 0.700024 bar: saved untouched, it stays 0.7.
        Assert.Equal(HttpStatusCode.SeeOther, (await SendAsync(browser, "/kitchen/pots/cooker?units=us", us, "save")).Status);
        Pot stored = (await app.Services.GetRequiredService<KitchenStore>().ReadAsync(TestContext.Current.CancellationToken)).Pots.Single(pot => pot.Value.Id is "cooker").Value;
        Assert.Equal(70_000, stored.GaugePressure!.Value.Pascals, 1e-6);

        Page kettle = await SendAsync(
            browser, "/kitchen/pots/new", "save", ("name", "Kettle"), ("pot-diameter", "60"), ("pot-height", "40"), ("pot-kind", "kettle"), ("pot-power", "12000"), ("pot-gauge", "0.5"));
        Assert.Equal(HttpStatusCode.OK, kettle.Status);
        Assert.Contains("in its jacket, not over the stock", kettle.Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Two_windows_on_one_pot_do_not_overwrite_each_other()
    {
        using HttpClient browser = app.Browser();
        const string Address = "/kitchen/pots/pot-10";
        Page first = await GetAsync(browser, Address);
        Page second = await GetAsync(browser, Address);
        Assert.Equal(HttpStatusCode.SeeOther, (await SendAsync(browser, Address, first, "save", ("name", "From the first"))).Status);
        Page conflict = await SendAsync(browser, Address, second, "save", ("name", "From the second"));
        Assert.Equal(HttpStatusCode.OK, conflict.Status);
        Assert.Contains("was changed, in another window or by somebody else", conflict.Text, StringComparison.Ordinal);
        Assert.Contains("Stored now: From the first", conflict.Text, StringComparison.Ordinal);
        Assert.Equal("From the second", conflict.Form("save")["name"]);

        // Saved once more, knowingly, it is written.
        Assert.Equal(HttpStatusCode.SeeOther, (await SendAsync(browser, Address, conflict, "save")).Status);
        Assert.Equal("From the second", (await GetAsync(browser, Address)).Form("save")["name"]);
    }

    [Fact]
    public async Task A_pot_deleted_in_another_window_can_be_added_anew_from_what_was_typed()
    {
        using HttpClient browser = app.Browser();
        const string Address = "/kitchen/pots/pot-10";
        Page open = await GetAsync(browser, Address);
        Assert.Equal(HttpStatusCode.SeeOther, (await SendAsync(browser, Address, "delete")).Status);
        Assert.Equal(HttpStatusCode.NotFound, (await GetAsync(browser, Address)).Status);
        Page gone = await SendAsync(browser, Address, open, "save", ("name", "Again"));
        Assert.Contains("was deleted", gone.Text, StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.SeeOther, (await SendAsync(browser, Address, gone, "save")).Status);
        Assert.Equal(HttpStatusCode.OK, (await GetAsync(browser, "/kitchen/pots/again")).Status);
    }

    [Fact]
    public async Task Saving_a_pot_in_us_measures_without_touching_it_does_not_change_its_size()
    {
        using HttpClient browser = app.Browser();
        Page before = await GetAsync(browser, "/kitchen/pots/pot-10?units=us");
        Assert.Equal("9.449", before.Form("save")["pot-diameter"]);
        Assert.Equal(HttpStatusCode.SeeOther, (await SendAsync(browser, "/kitchen/pots/pot-10?units=us", before, "save")).Status);

        // 9.449 in is 24.00046 cm: the pages would hide that drift, so the database is asked.
        Pot stored = (await app.Services.GetRequiredService<KitchenStore>().ReadAsync(TestContext.Current.CancellationToken)).Pots[0].Value;
        Assert.Equal(0.24, stored.BaseDiameter.Meters, 12);
        Assert.Equal(0.221, stored.InnerHeight.Meters, 12);
        Assert.True(stored.HasEstimatedMass());
    }

    [Fact]
    public async Task Ring_oven_trays_and_place_are_saved()
    {
        using HttpClient browser = app.Browser();
        Assert.Equal(HttpStatusCode.SeeOther, (await SendAsync(browser, "/kitchen/hobs/new", "save", ("name", "Gas"), ("kind", "gas"), ("power", "5,5"), ("efficiency", "42"))).Status);
        Assert.Equal(HttpStatusCode.SeeOther, (await SendAsync(browser, "/kitchen/ovens/fan-oven", "save", ("fan", null), ("levels", "2"))).Status);
        Assert.Equal(HttpStatusCode.SeeOther, (await SendAsync(browser, "/kitchen/trays/new", "save", ("size", "half-sheet"), ("count", "4"))).Status);
        Assert.Equal(HttpStatusCode.SeeOther, (await SendAsync(browser, "/kitchen/site", "save", ("altitude", "1600"), ("zone", "America/Denver"), ("film", "0.3"))).Status);
        string text = (await GetAsync(browser, "/kitchen")).Text;
        Assert.Contains("5.5 kW", text, StringComparison.Ordinal);
        Assert.Contains("42 %", text, StringComparison.Ordinal);
        Assert.Contains("no fan, 2 shelves", text, StringComparison.Ordinal);
        Assert.Contains("Half-sheet tray", text, StringComparison.Ordinal);
        Assert.Contains("1600 m", text, StringComparison.Ordinal);
        Assert.Contains("America/Denver", text, StringComparison.Ordinal);
        Page wrong = await SendAsync(browser, "/kitchen/site", "save", ("zone", "Atlantis/Poseidonis"), ("humidity", "150"));
        Assert.Contains("is not a time zone known here", wrong.Text, StringComparison.Ordinal);
        Assert.Contains("Humidity: 150 % is too large", wrong.Text, StringComparison.Ordinal);
    }

    public void Dispose() => app.Dispose();
}
