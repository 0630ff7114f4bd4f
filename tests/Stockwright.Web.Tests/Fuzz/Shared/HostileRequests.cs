using System.Globalization;
using System.Text;

namespace Stockwright.Web.Tests.Fuzz.Shared;

/// <summary>Requests as nobody honest sends them, each made from a seed: what is typed, how it is sent, and what is asked for.</summary>
internal sealed class HostileRequests(FuzzSite site)
{
    private static readonly string[] Values =
    [
        "", " ", "0", "-0", "-1", "1e309", "-1e309", "1e-400", "NaN", "Infinity", "-Infinity", "∞", "2,5", "1,500", "1.5.5", "0x10", "٣", "１２", "½", "1/0", "1 1/0", "--5", "+", "\0", "%00", "\u202e12", "\u200b",
        "\ud800", "\r\nSet-Cookie: a=b", "<script>alert(1)</script>", "'; DROP TABLE Pots; --", "../../etc/passwd", "{{7*7}}", "${7*7}", "own", "new", "none", "drop-0", "drop--1", "drop-99999999999", "add", "true", "null",
        "00000000-0000-0000-0000-000000000000", "9999-99-99", "0000-00-00", "2026-02-30", "25:61", "24:00", "-1:00", "2026-11-25T12:00:00+99:00", "0001-01-01", "9999-12-31", "9999-12-31 23:59", "0001-01-01 00:00", "🍲", "﷽", "a\u0301",
        "1e9", "999999999", "1000000000", "0.0000000001", "4.9e-324", "1.7976931348623157e308", "2147483648", "9223372036854775808", "-273.15", "-459.67",
    ];

    private static readonly string[] Paths =
    [
        "/%2e%2e/%2e%2e/etc/passwd", "/..%2f..%2fetc%2fpasswd", "/%00", "/plan%00", "/%ff%fe", "/kitchen/pots/%2e%2e%2fsite", "/kitchen/pots/%00", "/kitchen/pots/", "/kitchen/pots/a/b/c", "/plans/not-a-guid", "/plans/00000000-0000-0000-0000-000000000000",
        "/batches/zzz", "/batches/00000000-0000-0000-0000-000000000000/record", "/batches/00000000-0000-0000-0000-000000000000/log.csv", "/batches/00000000-0000-0000-0000-000000000000/photos/00000000-0000-0000-0000-000000000000",
        "/batches/00000000-0000-0000-0000-000000000000/calendar.ics", "/calendar/zzz.ics", "/calendar/.ics", "/larder/%F0%9F%8D%B2", "/larder/..", "/recipes/;/edit", "/units/imperial", "/units/us?back=//evil.example", "/units/us?back=%5c%5cevil",
        "/units/us?back=/plan?%00", "/units/us?back=/%0d%0aX:y", "/cooling/home/none", "/cooling/home/us-food-code?back=/%ff", "/sw.js", "/openapi/v1.json", "/openapi/v2.json", "/error", "/not-found", "/offline", "/_framework/../appsettings.json",
        "/api/batches/zzz", "/api/batches/00000000-0000-0000-0000-000000000000", "/api/", "/api/plans", "/wwwroot/css/app.css", "/css/../css/app.css", "/stockwright.db", "/keys",
    ];

    private static readonly string[] Methods = ["HEAD", "OPTIONS", "TRACE", "PUT", "DELETE", "PATCH", "PROPFIND", "BREW", "POST", "GET"];

    private static readonly string[] ContentTypes =
    [
        "application/x-www-form-urlencoded; charset=utf-7", "application/x-www-form-urlencoded; charset=utf-16", "application/x-www-form-urlencoded; charset=nonsense", "application/x-www-form-urlencoded; charset=\"", "multipart/form-data",
        "multipart/form-data; boundary=", "multipart/form-data; boundary=x", "multipart/form-data; boundary=\"" + "y", "multipart/mixed; boundary=x", "text/plain", "application/json", "application/json; charset=utf-16", "application/json; charset=utf-7",
        "application/xml", "image/png", "*/*", "", "a/b; c",
    ];

    private static readonly (string Name, string[] Values)[] Headers =
    [
        ("Accept-Encoding", ["gzip;q=NaN", "*;q=0", "identity;q=0", "br, gzip, deflate, zstd", ",,,"]),
        ("Range", ["bytes=0-0", "bytes=-1", "bytes=5-1", "bytes=0-99999999999999999999", "bytes=0-0,1-1,2-2,3-3,4-4,5-5", "lines=1-2"]),
        ("Accept", ["application/json", "image/*", "*/*;q=x", "text/html;level=99999999999"]),
        ("Accept-Language", ["ar-SA", "tr-TR", "xx-invalid-" + "long", "*"]),
        ("If-None-Match", ["*", "\"", "W/\"x\""]),
        ("If-Modified-Since", ["yesterday", "Thu, 01 Jan 1970 00:00:00 GMT", "Fri, 31 Dec 9999 23:59:59 GMT"]),
        ("Origin", ["null", "https://evil.example", "http://localhost:99999", "://", "\u007f"]),
        ("Sec-Fetch-Site", ["cross-site", "same-origin", "none", "xyz"]),
        ("X-Forwarded-For", ["1.2.3.4", "' OR 1=1"]),
        ("X-Forwarded-Proto", ["javascript", "https"]),
        ("X-Forwarded-Host", ["evil.example:99999"]),
        ("Referer", ["http://localhost:99999/", "about:blank"]),
        ("Last-Event-ID", ["-1", "99999999999999999999", "x", "\u00e9"]),
        ("Expect", ["200-nothing"]),
        ("Content-Encoding", ["gzip", "br"]),
        ("Cookie", ["units=us; units=metric", "units=\u0001", "cook=%00%ff", "cook=" + "=;=;", "limit=zzz", ".AspNetCore.Antiforgery=AAAA", "=", ";;;", "a"]),
    ];

    /// <summary>The request of a number; the same for the same seed, site and number.</summary>
    public (HttpRequestMessage Request, string Said) Make(int seed, int number)
    {
        Random random = new(unchecked((seed * 1_000_003) + number));
        HttpRequestMessage request = random.Next(10) switch
        {
            0 => new HttpRequestMessage(new HttpMethod(Methods[random.Next(Methods.Length)]), Address(Pick(Paths, random))),
            1 => new HttpRequestMessage(new HttpMethod(Methods[random.Next(Methods.Length)]), Address(Pick([.. site.Pages], random))),
            2 => HugeQuery(random),
            3 or 4 => Json(random),
            5 or 6 => Post(random),
            _ => Query(random),
        };
        if (random.Next(3) == 0)
        {
            (string name, string[] values) = Headers[random.Next(Headers.Length)];
            string value = Pick(values, random);
            if (!request.Headers.TryAddWithoutValidation(name, value))
            {
                request.Content?.Headers.TryAddWithoutValidation(name, value);
            }
        }

        if (!request.Headers.Contains("Cookie"))
        {
            request.Headers.TryAddWithoutValidation("Cookie", site.Client.Cookies);
        }

        string address = request.RequestUri!.ToString();
        return (request, string.Create(CultureInfo.InvariantCulture, $"#{number} {request.Method} {(address.Length > 300 ? address[..300] + "…" : address)}"));
    }

    private static string Pick(string[] from, Random random) => from[random.Next(from.Length)];

    private static Uri Address(string path)
    {
        // The address as it stands, dots and all.
        UriCreationOptions asItStands = new() { DangerousDisablePathAndQueryCanonicalization = true };
        return Uri.TryCreate("http://localhost" + path, asItStands, out Uri? uri) ? uri : new Uri("http://localhost/");
    }

    private static string Value(Random random) => random.Next(12) switch
    {
        0 => new string('9', 1 << random.Next(13)),
        1 => new string((char)random.Next(32, 0xD7FF), random.Next(1, 3000)),
        2 => string.Concat(Enumerable.Range(0, random.Next(1, 40)).Select(_ => (char)random.Next(1, 0xFFFF))),
        3 => random.NextDouble().ToString("R", CultureInfo.InvariantCulture),
        4 => (Math.Pow(10, random.Next(-12, 12)) * (random.Next(2) == 0 ? 1 : -1)).ToString("0.############", CultureInfo.InvariantCulture),
        _ => Pick(Values, random),
    };

    private static string Escape(string text)
    {
        // Half a surrogate pair cannot be escaped; as it stands it becomes a replacement character.
        return Uri.EscapeDataString(string.Concat(text.EnumerateRunes().Select(rune => rune.ToString())));
    }

    private FuzzTarget Any(Random random, bool json)
    {
        FuzzTarget[] targets = [.. site.Targets.Where(target => target is JsonTarget == json)];
        return targets[random.Next(targets.Length)];
    }

    private FormTarget AnyForm(Random random, bool post)
    {
        FormTarget[] targets = [.. site.Targets.OfType<FormTarget>().Where(target => target.Form.IsPost == post)];
        return targets[random.Next(targets.Length)];
    }

    private static List<KeyValuePair<string, string>> Spoiled(FuzzTarget target, Random random)
    {
        List<KeyValuePair<string, string>> values = [.. target.Fields.Where(field => field.Value.Length > 0).Select(field => KeyValuePair.Create(field.Name, field.Value))];
        FuzzField[] open = [.. target.Fields.Where(field => !field.Name.StartsWith("__", StringComparison.Ordinal))];
        for (int index = random.Next(1, 6); index > 0; index--)
        {
            string name = open[random.Next(open.Length)].Name;
            name = random.Next(8) switch
            {
                0 => name + "[]",
                1 => name + "[0]",
                2 => name + "." + name,
                3 => name.Replace("0", random.Next(1, 100_000).ToString(CultureInfo.InvariantCulture), StringComparison.Ordinal),
                _ => name,
            };
            if (random.Next(3) > 0)
            {
                values.RemoveAll(value => string.Equals(value.Key, name, StringComparison.Ordinal));
            }

            values.Add(KeyValuePair.Create(name, Value(random)));
        }

        return values;
    }

    private HttpRequestMessage Query(Random random)
    {
        FormTarget form = AnyForm(random, post: false);
        string query = string.Join('&', Spoiled(form, random).Select(value => $"{Escape(value.Key)}={(random.Next(20) == 0 ? "%" : Escape(value.Value))}"));
        return new HttpRequestMessage(HttpMethod.Get, Address($"{form.Form.Action.Split('?', '#')[0]}?{query}"));
    }

    private HttpRequestMessage HugeQuery(Random random)
    {
        string path = AnyForm(random, post: false).Form.Action.Split('?', '#')[0];
        string query = random.Next(4) switch
        {
            0 => string.Join('&', Enumerable.Range(0, random.Next(100, 3000)).Select(number => $"x{number.ToString(CultureInfo.InvariantCulture)}=1")),
            1 => string.Join('&', Enumerable.Repeat("pot=own&units=us&bones-0-kg=1", random.Next(10, 500))),
            2 => "readings=" + new string('1', random.Next(1000, 60_000)),
            _ => string.Join('&', Enumerable.Range(0, random.Next(10, 400)).Select(number => $"bones-{number.ToString(CultureInfo.InvariantCulture)}-kg=1&s{number.ToString(CultureInfo.InvariantCulture)}-place=ice")),
        };
        return new HttpRequestMessage(HttpMethod.Get, Address($"{path}?{query}"));
    }

    private HttpRequestMessage Post(Random random)
    {
        FormTarget form = AnyForm(random, post: true);
        List<KeyValuePair<string, string>> values = Spoiled(form, random);
        if (random.Next(15) == 0)
        {
            values.AddRange(Enumerable.Range(0, random.Next(900, 3000)).Select(number => KeyValuePair.Create($"x{number.ToString(CultureInfo.InvariantCulture)}", "1")));
        }

        if (random.Next(10) == 0)
        {
            values.RemoveAll(value => value.Key.StartsWith("__", StringComparison.Ordinal) || value.Key is "_handler");
        }

        string path = random.Next(10) == 0 ? Pick([.. site.Pages], random) : form.Form.Action.Split('#')[0];
        byte[] body = Encoding.UTF8.GetBytes(string.Join('&', values.Select(value => $"{Escape(value.Key)}={Escape(value.Value)}")));
        string type = random.Next(3) == 0 ? Pick(ContentTypes, random) : "application/x-www-form-urlencoded";
        if (form.Form.IsMultipart || random.Next(8) == 0)
        {
            string boundary = random.Next(4) == 0 ? new string('b', 200) : "xyz";
            string tail = random.Next(3) == 0 ? "" : "--\r\n";
            string parts = string.Concat(values.Select(value => $"--{boundary}\r\nContent-Disposition: form-data; name=\"{value.Key}\"{(random.Next(6) == 0 ? "; filename=\"../../a.png\"\r\nContent-Type: image/png" : "")}\r\n\r\n{value.Value}\r\n"));
            body = Encoding.UTF8.GetBytes($"{parts}--{boundary}{tail}");
            type = $"multipart/form-data; boundary={boundary}";
        }

        return new HttpRequestMessage(HttpMethod.Post, Address(path)) { Content = Content(body, type) };
    }

    private HttpRequestMessage Json(Random random)
    {
        FuzzTarget target = Any(random, json: true);
        string path = target.Name["JSON ".Length..];
        string[] parts =
        [
            .. Spoiled(target, random).Select(value => $"{Quoted(value.Key)}:{random.Next(8) switch
            {
                0 => "1e309",
                1 => "[" + Quoted(value.Value) + ",{}]",
                2 => "{\"a\":{\"b\":null}}",
                3 => "-0.0",
                4 => "null",
                5 => new string('9', random.Next(1, 400)),
                _ => Quoted(value.Value),
            }}"),
        ];
        string text = random.Next(14) switch
        {
            0 => string.Concat(Enumerable.Repeat("[", random.Next(1, 5000))),
            1 => string.Concat(Enumerable.Repeat("{\"a\":", random.Next(1, 5000))) + "1",
            2 => "{" + string.Join(',', parts),
            3 => "",
            4 => "nul",
            5 => "\"text\"",
            6 => "[" + string.Join(',', Enumerable.Repeat("{" + string.Join(',', parts) + "}", random.Next(1, 120))) + "]",
            7 => "{\"recipe\":\"\\ud800\"}",
            8 => "\ufeff{" + string.Join(',', parts) + "}",
            _ => "{" + string.Join(',', parts) + "}",
        };
        byte[] body = random.Next(20) == 0 ? [0xFF, 0xFE, 0x7B, 0xC0, 0x80] : Encoding.UTF8.GetBytes(text);
        return new HttpRequestMessage(HttpMethod.Post, Address(path)) { Content = Content(body, random.Next(8) == 0 ? Pick(ContentTypes, random) : "application/json") };
    }

    private static ByteArrayContent Content(byte[] body, string type)
    {
        ByteArrayContent content = new(body);
        content.Headers.TryAddWithoutValidation("Content-Type", type);
        return content;
    }

    private static string Quoted(string text) => System.Text.Json.JsonSerializer.Serialize(string.Concat(text.EnumerateRunes().Select(rune => rune.ToString())));
}
