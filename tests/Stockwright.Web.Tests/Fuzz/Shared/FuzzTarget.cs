using System.Diagnostics;
using System.Net;

namespace Stockwright.Web.Tests.Fuzz.Shared;

/// <summary>An answer and what was asked for it.</summary>
internal sealed record FuzzAnswer(HttpStatusCode Status, string Body, string Request, TimeSpan Took)
{
    public bool IsOurFault => (int)Status >= 500;

    public bool IsTurnedAway { get; init; }

    public string? Location { get; init; }
}

/// <summary>Something with fields that can be sent: a form of a page or an operation of the JSON interface.</summary>
internal abstract class FuzzTarget(FuzzClient client, string name)
{
    public string Name => name;

    protected FuzzClient Client => client;

    /// <summary>The fields, with what they hold when nobody changes them.</summary>
    public IReadOnlyList<FuzzField> Fields { get; protected set; } = [];

    /// <summary>Range a field states, and what has to be chosen elsewhere for it to count.</summary>
    public Dictionary<string, (StatedRange Range, IReadOnlyDictionary<string, string> Among)> Ranges { get; } = new(StringComparer.Ordinal);

    /// <summary>What must be filled in for an answer.</summary>
    public Dictionary<string, string> Needed { get; } = new(StringComparer.Ordinal);

    /// <summary>Sends it with some fields changed.</summary>
    public abstract Task<FuzzAnswer> SendAsync(IReadOnlyDictionary<string, string> changes, CancellationToken cancellationToken);

    /// <summary>What an answer says is wrong with a field; empty when nothing.</summary>
    public abstract string ProblemAt(FuzzAnswer answer, FuzzField field);

    public override string ToString() => name;
}

/// <summary>Sends requests to the app and keeps the token and cookie its forms need.</summary>
internal sealed class FuzzClient(HttpClient http, string units)
{
    private const int MostTries = 5;

    private int sent;
    private int turnedAway;
    private string cookies = $"units={units}";

    public string Units => units;

    public HttpClient Http => http;

    public string Cookies => cookies;

    /// <summary>How many requests were sent.</summary>
    public int Sent => sent;

    /// <summary>How often a request was answered 429 or 503 with Retry-After.</summary>
    public int TurnedAway => turnedAway;

    public Task<FuzzAnswer> GetAsync(string address, CancellationToken cancellationToken) =>
        SendAsync(() => new HttpRequestMessage(HttpMethod.Get, new Uri(address, UriKind.Relative)), $"GET {address}", cancellationToken);

    /// <summary>Sends a request; asked to come back later, it does.</summary>
    public async Task<FuzzAnswer> SendAsync(Func<HttpRequestMessage> make, string said, CancellationToken cancellationToken)
    {
        for (int attempt = 1; ; attempt++)
        {
            using HttpRequestMessage request = make();
            Interlocked.Increment(ref sent);
            request.Headers.TryAddWithoutValidation("Cookie", cookies);
            long asked = Stopwatch.GetTimestamp();
            using HttpResponseMessage answer = await http.SendAsync(request, cancellationToken);
            string body = await answer.Content.ReadAsStringAsync(cancellationToken);
            TimeSpan took = Stopwatch.GetElapsedTime(asked);
            bool isAway = answer.Headers.RetryAfter is not null && (int)answer.StatusCode is 429 or 503;
            if (isAway)
            {
                Interlocked.Increment(ref turnedAway);
                if (attempt < MostTries)
                {
                    await Task.Delay(TimeSpan.FromMilliseconds(200 * attempt), cancellationToken);
                    continue;
                }
            }

            Keep(answer);
            return new FuzzAnswer(answer.StatusCode, body, $"{said} (units={units})", took) { IsTurnedAway = isAway, Location = answer.Headers.Location?.ToString() };
        }
    }

    private void Keep(HttpResponseMessage answer)
    {
        foreach (string cookie in answer.Headers.TryGetValues("Set-Cookie", out IEnumerable<string>? set) ? set : [])
        {
            string pair = cookie.Split(';')[0];
            if (pair.StartsWith("form-", StringComparison.Ordinal))
            {
                cookies = $"units={units}; {pair}";
            }
        }
    }
}
