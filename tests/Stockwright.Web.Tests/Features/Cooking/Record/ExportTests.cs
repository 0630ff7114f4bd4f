using System.Net;
using System.Text;
using Stockwright.Web.Features.Cooking.Record;
using Xunit;
using static Stockwright.Web.Tests.Features.Cooking.BatchApp;
using static Stockwright.Web.Tests.KeepingApp;

namespace Stockwright.Web.Tests.Features.Cooking.Record;

public sealed class ExportTests : IDisposable
{
    private readonly BatchApp app = new();

    public void Dispose() => app.Dispose();

    [Fact]
    public async Task The_log_comes_out_as_rfc_4180_with_a_row_for_every_entry()
    {
        using HttpClient browser = app.Browser();
        string address = await StartAsync(browser);
        app.Clock.Advance(TimeSpan.FromHours(3));
        await TakenAsync(browser, address, "note-", ("text", "one, \"two\"\nthree"), ("who", "=cmd"));
        await TakenAsync(browser, address, "level-", ("below", "6,2"), ("at", "10:20"), ("who", "Ida"));
        string id = (await LogAsync(browser, address)).GetProperty("entries")[1].GetProperty("entry").GetString()!;
        await TakenAsync(browser, $"{address}?correct={id}", "change-", ("below", "6.4"));

        using HttpResponseMessage answer = await browser.GetAsync(new Uri($"{address}/log.csv", UriKind.Relative), TestContext.Current.CancellationToken);
        Assert.Equal("text/csv", answer.Content.Headers.ContentType?.MediaType);
        Assert.Equal("attachment", answer.Content.Headers.ContentDisposition?.DispositionType);
        byte[] bytes = await answer.Content.ReadAsByteArrayAsync(TestContext.Current.CancellationToken);
        List<string[]> rows = Read(Encoding.UTF8.GetString(bytes));
        Assert.Equal(4, rows.Count);
        Assert.All(rows, row => Assert.Equal(rows[0].Length, row.Length));
        string Cell(int row, string column) => rows[row][Array.IndexOf(rows[0], column)];
        Assert.Equal(("one, \"two\"\nthree", "'=cmd"), (Cell(1, "what"), Cell(1, "who")));
        Assert.Equal(("62", "mm", "corrected", "3"), (Cell(2, "value"), Cell(2, "unit"), Cell(2, "standing"), Cell(2, "by_number")));
        Assert.Equal(("64", "stands", "2"), (Cell(3, "value"), Cell(3, "standing"), Cell(3, "corrects_number")));
        Assert.Equal(("2026-11-25T10:20:00Z", "2026-11-25T11:00:00Z", "Europe/London"), (Cell(3, "happened_utc"), Cell(3, "received_utc"), Cell(3, "time_zone")));
    }

    // The characters spreadsheets take for the start of a formula; the full-width ones are so taken by some of them too (OWASP, "CSV Injection").
    [Theory]
    [InlineData("=1+1", "'=1+1")]
    [InlineData("+1", "'+1")]
    [InlineData("-1", "'-1")]
    [InlineData("@SUM(A1)", "'@SUM(A1)")]
    [InlineData("  =1", "'  =1")]
    [InlineData("\t=1", "'\t=1")]
    [InlineData("\uFF1D1", "'\uFF1D1")]
    [InlineData("fine = fine", "fine = fine")]
    [InlineData("", "")]
    public void Text_is_never_a_formula(string typed, string written) => Assert.Equal(written, LogCsv.Text(typed));

    [Fact]
    public async Task The_record_sheet_has_the_fields_of_a_cooked_and_chilled_record()
    {
        using HttpClient browser = app.Browser();
        string address = await StartAsync(browser, "Record me");
        app.Clock.Advance(TimeSpan.FromHours(26));
        await TakenAsync(browser, address, "strained-", ("strained", "3.6"), ("at", "2026-11-25 14:00"), ("who", "Ida"));
        await TakenAsync(browser, address, "cooling-began-", ("at", "2026-11-25 14:10"), ("method", "pans"));
        await TakenAsync(browser, address, "temperature-", ("degrees", "60"), ("place", "cooling"), ("at", "2026-11-25 14:15"), ("probe", "P7"));
        await TakenAsync(browser, address, "temperature-", ("degrees", "30"), ("place", "cooling"), ("at", "2026-11-25 18:30"), ("probe", "P7"));
        await TakenAsync(browser, address, "correction-made-", ("action", "discard"), ("text", "binned"), ("at", "2026-11-25 19:00"), ("who", "Ida"));
        Page page = await GetAsync(browser, $"{address}/record");
        Assert.Equal(HttpStatusCode.OK, page.Status);
        string sheet = page.Text.Replace('\u00A0', ' ');
        Assert.Contains("Europe/London time", sheet, StringComparison.Ordinal);
        foreach (string field in (string[])["Product Brown chicken stock", "Date 2026-11-25", "Cooked by Ida", "Cooling began Wed 25 Nov, 14:10, 60 °C, pans", "Thermometers P7", "Allergens celery", "Quantity 3.6 L strained", "Storage unit", "Use by", "Ingredient lots", "Reviewed by"])
        {
            Assert.Contains(field, sheet, StringComparison.Ordinal);
        }

        // 30 °C four hours after the clock started: stage one, 21 °C within 2 hours, is missed (FDA Food Code 3-501.14(A)(1)).
        Assert.Contains("missed stage 1", sheet, StringComparison.Ordinal);
        Assert.Contains("19:00: Discard it, binned (Ida)", sheet, StringComparison.Ordinal);
        Assert.Matches("14:15 Thu 26 Nov, 10:00 Temperature in the stock, cooling, thermometer P7 60 °C AB|14:15 Thu 26 Nov, 10:00 Temperature in the stock, cooling, thermometer P7 60 °C Ida", sheet);
    }

    /// <summary>RFC 4180, section 2, read strictly: CRLF ends a record, quotes are doubled inside quotes.</summary>
    private static List<string[]> Read(string csv)
    {
        List<string[]> rows = [];
        List<string> row = [];
        StringBuilder cell = new();
        bool quoted = false;
        for (int i = 0; i < csv.Length; i++)
        {
            char letter = csv[i];
            if (quoted)
            {
                if (letter == '"' && i + 1 < csv.Length && csv[i + 1] == '"')
                {
                    cell.Append('"');
                    i++;
                }
                else if (letter == '"')
                {
                    quoted = false;
                }
                else
                {
                    cell.Append(letter);
                }
            }
            else if (letter == '"')
            {
                Assert.Equal(0, cell.Length);
                quoted = true;
            }
            else if (letter == ',')
            {
                row.Add(cell.ToString());
                cell.Clear();
            }
            else if (letter == '\r')
            {
                Assert.Equal('\n', csv[++i]);
                row.Add(cell.ToString());
                cell.Clear();
                rows.Add([.. row]);
                row.Clear();
            }
            else
            {
                Assert.NotEqual('\n', letter);
                cell.Append(letter);
            }
        }

        Assert.True(row.Count == 0 && cell.Length == 0 && !quoted, "The last record ends with CRLF.");
        return rows;
    }
}
