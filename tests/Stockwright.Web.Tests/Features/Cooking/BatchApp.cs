using System.Net;
using System.Text.Json;
using System.Text.RegularExpressions;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Mvc.Testing;
using Microsoft.AspNetCore.TestHost;
using Microsoft.Data.Sqlite;
using Microsoft.Extensions.DependencyInjection;
using Xunit;
using static Stockwright.Web.Tests.KeepingApp;

namespace Stockwright.Web.Tests.Features.Cooking;

/// <summary>The whole program with the real planner, on a data folder of its own and a clock the test turns, spoken to as a browser without scripts would.</summary>
public sealed class BatchApp : WebApplicationFactory<Program>
{
    public const string Query = "recipe=brown-chicken&pot=pot-10&goal=litres&litres=3.5";

    private readonly DirectoryInfo data = Directory.CreateTempSubdirectory("stockwright-batch-tests-");

    /// <summary>A Wednesday morning in winter, when the demo kitchen's clock shows UTC.</summary>
    public TestClock Clock { get; } = new(new DateTimeOffset(2026, 11, 25, 8, 0, 0, TimeSpan.Zero));

    public HttpClient Browser() => CreateClient(new WebApplicationFactoryClientOptions { AllowAutoRedirect = false, HandleCookies = true });

    /// <summary>Starts a batch and gives the address of its stove page.</summary>
    public static async Task<string> StartAsync(HttpClient browser, string name = "Friday stock", params (string Name, string? Value)[] changes)
    {
        Page started = await SendAsync(browser, $"/batches/start?{Query}", "start", [("name", name), ("who", "AB"), .. changes]);
        Assert.Equal(HttpStatusCode.SeeOther, started.Status);
        return started.Location!;
    }

    /// <summary>Fills in one of the entry forms of a page and sends it.</summary>
    public static async Task<Page> EnterAsync(HttpClient browser, string address, string form, params (string Name, string? Value)[] changes)
    {
        Dictionary<string, string>? fields = (await GetAsync(browser, address)).FormById(form);
        Assert.NotNull(fields);
        return await PostAsync(browser, address.Split('?')[0], fields, changes);
    }

    public static async Task<Page> PostAsync(HttpClient browser, string address, Dictionary<string, string> fields, params (string Name, string? Value)[] changes)
    {
        foreach ((string name, string? value) in changes)
        {
            fields[name] = value ?? "";
        }

        using FormUrlEncodedContent content = new(fields);
        return await Page.ReadAsync(await browser.PostAsync(new Uri(address, UriKind.Relative), content, TestContext.Current.CancellationToken));
    }

    /// <summary>The same, and it must be taken.</summary>
    public static async Task TakenAsync(HttpClient browser, string address, string form, params (string Name, string? Value)[] changes)
    {
        Page answer = await EnterAsync(browser, address, form, changes);
        Assert.True(answer.Status == HttpStatusCode.SeeOther, $"{form}: {answer.Status} {Regex.Match(answer.Text, "to put right.{0,200}", RegexOptions.None, TimeSpan.FromSeconds(1)).Value}");
        Assert.Equal(address.Split('?')[0], answer.Location);
    }

    public static async Task<JsonElement> LogAsync(HttpClient browser, string address) =>
        JsonElement.Parse((await GetAsync(browser, $"{address}/log.json")).Html);

    /// <summary>Keeps the database busy, as another program might, until disposed.</summary>
    public IDisposable LockTheBook()
    {
        SqliteConnection connection = new(new SqliteConnectionStringBuilder { DataSource = Assert.Single(data.EnumerateFiles("*.db")).FullName, Pooling = false }.ToString());
        connection.Open();
        using SqliteCommand command = connection.CreateCommand();
        command.CommandText = "BEGIN IMMEDIATE";
        command.ExecuteNonQuery();
        return connection;
    }

    protected override void ConfigureWebHost(IWebHostBuilder builder)
    {
        builder.UseEnvironment("Production");
        builder.UseSetting("STOCKWRIGHT_DATA", data.FullName);
        builder.ConfigureTestServices(services => services.AddSingleton<TimeProvider>(Clock));
    }

    protected override void Dispose(bool disposing)
    {
        base.Dispose(disposing);
        SqliteConnection.ClearAllPools();
        if (disposing && data.Exists)
        {
            data.Delete(recursive: true);
        }
    }

    /// <summary>Stands still until it is turned.</summary>
    public sealed class TestClock(DateTimeOffset now) : TimeProvider
    {
        public DateTimeOffset Now { get; set; } = now;

        public void Advance(TimeSpan by) => Now += by;

        public override DateTimeOffset GetUtcNow() => Now;
    }
}
