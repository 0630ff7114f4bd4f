using System.Net;
using System.Text.RegularExpressions;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Mvc.Testing;
using Microsoft.AspNetCore.TestHost;
using Microsoft.Data.Sqlite;
using Microsoft.Extensions.DependencyInjection;
using Stockwright.Web.Features.Planning;
using Xunit;

namespace Stockwright.Web.Tests;

/// <summary>The whole program on a fresh data folder, spoken to as a browser without scripts would.</summary>
public sealed partial class KeepingApp : WebApplicationFactory<Program>
{
    private readonly string folder = Path.Combine(Path.GetTempPath(), $"stockwright-web-test-{Guid.NewGuid():N}");

    public bool Demo { get; init; } = true;

    public HttpClient Browser() => CreateClient(new WebApplicationFactoryClientOptions { AllowAutoRedirect = false, HandleCookies = true });

    public static async Task<Page> GetAsync(HttpClient browser, string address) => await Page.ReadAsync(await browser.GetAsync(Address(address), Stop));

    /// <summary>Opens a page, changes fields of one of its forms and sends it, hidden fields and all.</summary>
    public static async Task<Page> SendAsync(HttpClient browser, string address, string form, params (string Name, string? Value)[] changes)
    {
        Page page = await GetAsync(browser, address);
        Assert.Equal(HttpStatusCode.OK, page.Status);
        return await SendAsync(browser, address, page, form, changes);
    }

    /// <summary>Changes fields of a form of an open page and sends it.</summary>
    public static async Task<Page> SendAsync(HttpClient browser, string address, Page page, string form, params (string Name, string? Value)[] changes)
    {
        Dictionary<string, string> fields = page.Form(form);
        foreach ((string name, string? value) in changes)
        {
            if (value is null)
            {
                fields.Remove(name);
            }
            else
            {
                fields[name] = value;
            }
        }

        using FormUrlEncodedContent content = new(fields);
        return await Page.ReadAsync(await browser.PostAsync(Address(address), content, Stop));
    }

    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    private static Uri Address(string address) => new(address, UriKind.Relative);

    protected override void ConfigureWebHost(IWebHostBuilder builder)
    {
        builder.UseEnvironment("Production");
        builder.UseSetting("STOCKWRIGHT_DATA", folder);
        builder.UseSetting("STOCKWRIGHT_DEMO", Demo ? "true" : "false");

        // These tests are about keeping; the numbers of a plan have tests of their own.
        builder.ConfigureTestServices(services => services.AddSingleton<PlanBatch>(FakePlan.Plan).AddSingleton<JudgeStock>((_, _, _, _) => null));
    }

    protected override void Dispose(bool disposing)
    {
        base.Dispose(disposing);
        SqliteConnection.ClearAllPools();
        if (disposing && Directory.Exists(folder))
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    /// <summary>An answer: status, where it leads, and its forms.</summary>
    public sealed partial record Page(HttpStatusCode Status, string? Location, string Html)
    {
        /// <summary>The text a reader sees, tags left out.</summary>
        public string Text => Blanks().Replace(WebUtility.HtmlDecode(Tags().Replace(Html, " ")), " ");

        public static async Task<Page> ReadAsync(HttpResponseMessage answer)
        {
            string html = await answer.Content.ReadAsStringAsync(Stop);
            Page page = new(answer.StatusCode, answer.Headers.Location?.ToString(), html);
            answer.Dispose();
            return page;
        }

        /// <summary>Fields of the form with this handler name, as a browser would send them.</summary>
        public Dictionary<string, string> Form(string handler)
        {
            string form = Assert.Single(Forms().Matches(Html).Select(match => match.Value), text => text.Contains($"value=\"{handler}\"", StringComparison.Ordinal) && text.Contains("_handler", StringComparison.Ordinal));
            return Fields(form);
        }

        /// <summary>Fields of the form with this element id; null when there is none.</summary>
        public Dictionary<string, string>? FormById(string id) =>
            Forms().Matches(Html).Select(match => match.Value).SingleOrDefault(text => text.Contains($" id=\"{id}\"", StringComparison.Ordinal)) is { } form ? Fields(form) : null;

        private static Dictionary<string, string> Fields(string form)
        {
            Dictionary<string, string> fields = new(StringComparer.Ordinal);
            foreach (string input in Inputs().Matches(form).Select(match => match.Value))
            {
                string name = Attribute(input, "name");
                bool isTick = Attribute(input, "type") is "checkbox" or "radio";
                if (name.Length > 0 && (!isTick || Checked().IsMatch(input)))
                {
                    fields[name] = Attribute(input, "value");
                }
            }

            foreach (Match select in Selects().Matches(form))
            {
                string[] options = [.. Options().Matches(select.Value).Select(match => match.Value)];
                string chosen = options.FirstOrDefault(option => Selected().IsMatch(option)) ?? options.FirstOrDefault() ?? "";
                fields[Attribute(select.Value, "name")] = Attribute(chosen, "value");
            }

            foreach (Match area in Areas().Matches(form))
            {
                fields[Attribute(area.Value, "name")] = WebUtility.HtmlDecode(area.Groups["text"].Value);
            }

            return fields;
        }

        private static string Attribute(string tag, string name) =>
            WebUtility.HtmlDecode(Regex.Match(tag, $"\\s{name}=\"([^\"]*)\"", RegexOptions.None, TimeSpan.FromSeconds(1)).Groups[1].Value);

        [GeneratedRegex("<form.*?</form>", RegexOptions.Singleline, 1000)]
        private static partial Regex Forms();

        [GeneratedRegex("<input[^>]*>", RegexOptions.Singleline, 1000)]
        private static partial Regex Inputs();

        [GeneratedRegex("<select.*?</select>", RegexOptions.Singleline, 1000)]
        private static partial Regex Selects();

        [GeneratedRegex("<option[^>]*>", RegexOptions.Singleline, 1000)]
        private static partial Regex Options();

        [GeneratedRegex("<textarea[^>]*>(?<text>.*?)</textarea>", RegexOptions.Singleline | RegexOptions.ExplicitCapture, 1000)]
        private static partial Regex Areas();

        [GeneratedRegex("\\schecked(\\s|=|/|>)", RegexOptions.ExplicitCapture, 1000)]
        private static partial Regex Checked();

        [GeneratedRegex("\\sselected(\\s|=|/|>)", RegexOptions.ExplicitCapture, 1000)]
        private static partial Regex Selected();

        [GeneratedRegex("<[^>]*>", RegexOptions.Singleline, 1000)]
        private static partial Regex Tags();

        [GeneratedRegex("\\s+", RegexOptions.None, 1000)]
        private static partial Regex Blanks();
    }
}
