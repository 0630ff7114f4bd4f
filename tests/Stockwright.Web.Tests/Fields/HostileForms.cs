using CsCheck;
using Stockwright.Web.Features.Planning;

namespace Stockwright.Web.Tests.Fields;

/// <summary>Forms a careless hand, a stale link or an ill will might send.</summary>
internal static class HostileForms
{
    private static readonly string[] Fields =
    [
        .. PlanFields.All.Select(row => row.Name), "v",
        "leave-carrot", "leave-", "with-chicken-feet", "bones-0-cut", "bones-0-kg", "bones-1-cut", "bones-1-lb", "bones-999999-kg", "bones-00-cut", "bones--1-kg", "bones",
        "more-0-cut", "more-0-kg", "more-1-cut", "more-1-lb", "more-0-price", "set-0-cut", "set-0-kg", "set-0-price", "set-1-cut", "set-1-price", "set-999999-price", "set",
    ];

    private static readonly string[] Values =
    [
        "", " ", "0", "-1", "1", "2,5", "2.5", "1,000", "1e308", "1e-400", "NaN", "Infinity", "½", "1 1/2", "1/0", "999999999", "-0", "٣", "abc", "null", "own", "fill",
        "litres", "portions", "bones", "tapered", "volume", "ajar", "ready", "us", "metric", "pot-24", "slow", "kettle", "pressure", "warm", "white-veal", "chicken-back", "chicken-feet", "carrot", "firm-jelly", "glace", "watery", "chill", "6.5", "225", "-0.5", "12", "2026-12-31", "9999-12-31", "0001-01-01",
        "2027-03-28", "01:30", "24:00", "08:00", "08:00:59", "9", "true", "<script>alert(1)</script>", "'; drop table plans; --", "\"><img src=x onerror=alert(1)>",
        "%00", "\0", "\u202e", "\ud800", "\udc00x", "😀", "../../etc/passwd", "{{7*7}}", "${jndi:ldap://x}", "\r\nSet-Cookie: a=b",
    ];

    private static readonly Gen<string> AnyText = Gen.OneOf(
        Gen.String[0, 60],
        Gen.Char.Array[0, 30].Select(letters => new string(letters)),
        Gen.Int[1, 20_000].Select(length => new string('9', length)),
        Gen.Double.Select(number => number.ToString("R", System.Globalization.CultureInfo.InvariantCulture)),
        Gen.Decimal[-1000m, 5000m].Select(number => number.ToString("0.###", System.Globalization.CultureInfo.InvariantCulture)));

    private static readonly Gen<string> Names = Gen.Frequency((9, Gen.OneOfConst(Fields)), (1, AnyText));

    private static readonly Gen<string> Texts = Gen.Frequency((3, Gen.OneOfConst(Values)), (2, AnyText));

    /// <summary>Up to a dozen fields, most of them real ones, with values good and bad; names repeat.</summary>
    public static readonly Gen<KeyValuePair<string, string>[]> Forms =
        Gen.Select(Names, Texts).Select((name, value) => KeyValuePair.Create(name, value)).Array[0, 12];
}
