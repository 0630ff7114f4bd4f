using CsCheck;
using Stockwright.Web.Features.Cooking.Log;

namespace Stockwright.Web.Tests.Features.Cooking.Log;

/// <summary>Entries a careless hand, a broken program or an ill will might send.</summary>
internal static class HostileEntries
{
    /// <summary>Every field of an entry: those that all have, and those of one kind.</summary>
    public static readonly string[] Fields =
    [
        .. typeof(EntryFields).GetFields().Select(field => (string)field.GetRawConstantValue()!)
            .Concat(EntryRows.All.SelectMany(kind => kind.Fields).Select(field => field.Name)).Distinct(StringComparer.Ordinal),
    ];

    private static readonly string[] Names = [.. Fields, "units", "v", "_handler", "", "kind[]"];

    private static readonly string[] Values =
    [
        "", " ", "0", "-1", "1", "2,5", "6.5", "1e308", "1e-400", "NaN", "Infinity", "½", "1/0", "999999999", "-0", "٣", "60.00000001", "0.99999999", "85.0000001", "20", "93",
        "us", "metric", "pot", "cooling", "ajar", "on", "off", "none", "oven", "induction", "keep-cooling", "soft-jelly", "fill", "check-1", "strain",
        "00:00", "23:59", "24:00", "02:30", "2026-10-25 02:30", "2026-11-25 07:00", "2026-11-25 07:00+99:00", "07:00-23:59", "0001-01-01 00:00", "9999-12-31 23:59", "2026-11-25T07:00:00Z",
        "2026-11-25T07:30:00.000Z", "0001-01-01T00:00:00+14:00", "9999-12-31T23:59:59.9999999-14:00", "2026-11-25T07:30:00+01:00", "2200-12-31T23:59:59Z", "2000-01-01T00:00:00Z",
        "Europe/Berlin", "../../etc/localtime", "00000000-0000-0000-0000-000000000000", "018f0000-0000-7000-8000-000000000001",
        "<script>alert(1)</script>", "'; drop table LogEntries; --", "\0", "\u202e", "😀", "\r\nSet-Cookie: a=b", "{\"a\":1}", "=cmd|'/c calc'!A1",
    ];

    private static readonly Gen<string> Text = Gen.Frequency(
        (6, Gen.OneOfConst(Values)),
        (2, Gen.String[0, 40]),
        (1, Gen.Int[1, 5000].Select(length => new string('9', length))),
        (2, Gen.Double[-5, 100].Select(number => number.ToString("R", System.Globalization.CultureInfo.InvariantCulture))));

    /// <summary>A kind, nearly always a key, and up to a dozen fields, most of them real ones; names repeat.</summary>
    public static Gen<KeyValuePair<string, string>[]> Forms(string[] kinds) => Gen.Select(
        Gen.Frequency((9, Gen.OneOfConst(kinds)), (1, Text)),
        Gen.Frequency((9, Gen.Guid.Select(id => id.ToString())), (1, Text)),
        Gen.Select(Gen.Frequency((12, Gen.OneOfConst(Names)), (1, Gen.String[0, 20])), Text).Select((name, value) => KeyValuePair.Create(name, value)).Array[0, 12],
        (kind, key, more) => (KeyValuePair<string, string>[])[KeyValuePair.Create("entry", key), KeyValuePair.Create("kind", kind), .. more]);
}
