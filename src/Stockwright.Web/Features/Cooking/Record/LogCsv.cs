using System.Globalization;
using System.Text;
using Stockwright.Logbook;
using Stockwright.Web.Features.Cooking.Log;
using Stockwright.Web.Wording;

namespace Stockwright.Web.Features.Cooking.Record;

/// <summary>
/// A log as comma-separated values: RFC 4180, UTF-8 without a byte order mark, a header row, lines ended by CRLF. Text that
/// a spreadsheet would take for a formula has an apostrophe put before it (docs/pages.md).
/// </summary>
internal static class LogCsv
{
    private static readonly string[] Header =
    [
        "number", "happened_utc", "happened_local", "time_zone", "received_utc", "who", "kind", "what", "value", "unit",
        "standing", "by_number", "corrects_number", "device_offset_seconds", "device_zone", "entry",
    ];

    public static string Write(BatchView view, FactText words)
    {
        StringBuilder csv = new();
        Row(csv, Header);
        KitchenClock clock = new(view.Zone, UnitSystem.Metric);
        foreach (LogEntry entry in view.Log.All)
        {
            LogEntry? newer = view.Log.SupersededBy(entry);
            (double Value, string Unit)? figure = EntryKinds.Of(entry.Fact).FigureOf(entry.Fact);
            Row(
                csv,
                [
                    Number(entry.Number),
                    KitchenClock.Utc(entry.HappenedAt),
                    clock.Local(entry.HappenedAt).ToString("yyyy-MM-dd'T'HH:mm:sszzz", CultureInfo.InvariantCulture),
                    Text(view.Zone.Id),
                    KitchenClock.Utc(entry.ReceivedAt),
                    Text(entry.Who),
                    FactDocument.Word(entry.Fact),
                    Text(words.Of(entry.Fact)),
                    figure is { } measured ? Math.Round(measured.Value, 6).ToString(CultureInfo.InvariantCulture) : "",
                    figure?.Unit ?? "",
                    newer is null ? "stands" : newer.Fact is LogFact.Withdrawn ? "taken back" : "corrected",
                    newer is null ? "" : Number(newer.Number),
                    entry.Corrects is { } old && view.Log.Find(old) is { } corrected ? Number(corrected.Number) : "",
                    entry.DeviceOffset is { } offset ? offset.TotalSeconds.ToString(CultureInfo.InvariantCulture) : "",
                    Text(entry.DeviceZone),
                    entry.Id.ToString(),
                ]);
        }

        return csv.ToString();
    }

    /// <summary>Text that begins like a formula, also behind blanks, gets an apostrophe before it; numbers never pass here.</summary>
    internal static string Text(string text) =>
        text.TrimStart() is ['=' or '+' or '-' or '@' or '\uFF1D' or '\uFF0B' or '\uFF0D' or '\uFF20', ..] || text is ['\t' or '\r' or '\n', ..] ? "'" + text : text;

    /// <summary>RFC 4180, section 2: quotes round what holds a comma, a quote or a line end, quotes doubled inside.</summary>
    internal static string Cell(string text) =>
        text.AsSpan().IndexOfAny(",\"\r\n") >= 0 ? $"\"{text.Replace("\"", "\"\"", StringComparison.Ordinal)}\"" : text;

    private static void Row(StringBuilder csv, string[] cells) => csv.AppendJoin(',', cells.Select(Cell)).Append("\r\n");

    private static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);
}
