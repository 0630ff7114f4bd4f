using System.Globalization;
using System.Net;
using System.Text.Json.Nodes;

namespace Stockwright.Journeys.Running;

/// <summary>What the app answered to an entry: only 200 and 201 are a promise.</summary>
/// <param name="Status">Status; zero when no answer came.</param>
/// <param name="Number">Place in the log.</param>
/// <param name="ReceivedAt">When it was stored.</param>
internal readonly record struct Acknowledgement(HttpStatusCode Status, int Number, string ReceivedAt)
{
    public bool IsStored => Status is HttpStatusCode.OK or HttpStatusCode.Created;
}

/// <summary>Posts entries as a script on a phone would.</summary>
internal sealed record SentEntry(Guid Batch, Guid Key, int Number)
{
    private const string Note = "entry number ";

    public static SentEntry New(Guid batch, int number) => new(batch, Guid.CreateVersion7(), number);

    /// <summary>What the note says; long, so that one that was stored by half would show.</summary>
    public string Text => Note + Number.ToString(CultureInfo.InvariantCulture) + " " + new string((char)('a' + (Number % 26)), 200);

    public async Task<Acknowledgement> PostAsync(HttpClient client, CancellationToken cancellationToken)
    {
        using FormUrlEncodedContent form = new(new Dictionary<string, string>(StringComparer.Ordinal)
        {
            ["entry"] = Key.ToString(),
            ["kind"] = "note",
            ["text"] = Text,
            ["who"] = "cook",
        });
        try
        {
            using HttpResponseMessage answer = await client.PostAsync(new Uri($"/batches/{Batch}/log", UriKind.Relative), form, cancellationToken);
            JsonNode? said = JsonNode.Parse(await answer.Content.ReadAsStringAsync(cancellationToken));
            return answer.StatusCode is HttpStatusCode.OK or HttpStatusCode.Created
                ? new Acknowledgement(answer.StatusCode, (int)said!["number"]!, (string)said["receivedAt"]!)
                : new Acknowledgement(answer.StatusCode, 0, "");
        }
        catch (Exception broken) when (broken is HttpRequestException or IOException or System.Text.Json.JsonException)
        {
            return default;
        }
    }
}
