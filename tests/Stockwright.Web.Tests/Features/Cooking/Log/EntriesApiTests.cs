using System.Net;
using System.Net.Http.Headers;
using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using CsCheck;
using Stockwright.Logbook;
using Stockwright.Web.Tests.Features.Cooking.Photos;
using Xunit;

namespace Stockwright.Web.Tests.Features.Cooking.Log;

/// <summary>Writing in a log and reading a batch by program: entries in SI for good input, problem documents (RFC 9457) for everything else.</summary>
public sealed class EntriesApiTests : IAsyncLifetime
{
    private readonly BatchApp app = new();
    private readonly HttpClient client;
    private string id = "";

    public EntriesApiTests() => client = app.Browser();

    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    private string Entries => $"/api/batches/{id}/entries";

    public async ValueTask InitializeAsync() => id = (await BatchApp.StartAsync(client)).Split('/')[^1];

    public async ValueTask DisposeAsync()
    {
        client.Dispose();
        await app.DisposeAsync();
    }

    [Fact]
    public async Task An_entry_is_stored_and_a_repeat_is_answered_as_the_first_time()
    {
        string body = Entry("temperature", """
            "degrees":"70","units":"us","place":"cooling","probe":"P1","who":"probe 1"
            """);
        (HttpStatusCode status, JsonNode first) = await PostAsync(Entries, body);
        Assert.Equal(HttpStatusCode.Created, status);
        Assert.Equal(70.0, (double)first["fact"]!["degreesFahrenheit"]!);
        Assert.Equal("probe 1", (string?)first["who"]);
        app.Clock.Now += TimeSpan.FromHours(3);
        (status, JsonNode again) = await PostAsync(Entries, body);
        Assert.Equal(HttpStatusCode.OK, status);
        Assert.True(JsonNode.DeepEquals(first, again), again.ToJsonString());

        (status, JsonNode refused) = await PostAsync(Entries, body.Replace("\"70\"", "71", StringComparison.Ordinal));
        Assert.Equal(HttpStatusCode.BadRequest, status);
        Assert.True(refused["errors"]!.AsObject().ContainsKey("entry"));
    }

    [Fact]
    public async Task A_list_is_taken_in_order_and_each_gets_its_answer()
    {
        Guid wrong = Guid.CreateVersion7();
        JsonNode before = await ReadAsync($"/api/batches/{id}");
        string list = $"[{Entry("level", "\"below\":60", wrong)},{Entry("level", "\"below\":6")},{Entry("level", $"\"below\":5.5,\"corrects\":\"{wrong}\"")},{Entry("level", "\"below\":\"deep\"")},{Entry("skimmed", "\"below\":[1]")}]";
        (HttpStatusCode status, JsonNode answer) = await PostAsync(Entries, list);
        Assert.Equal(HttpStatusCode.OK, status);
        int[] statuses = [.. answer.AsArray().Select(row => (int)row!["status"]!)];
        Assert.True(statuses is [201 or 400, 201, 201 or 400, 400, 400], answer.ToJsonString());
        Assert.True(answer[3]!["errors"]!.AsObject().ContainsKey("below"));
        JsonNode after = await ReadAsync($"/api/batches/{id}");
        Assert.Equal(before["entries"]!.AsArray().Count + statuses.Count(code => code == 201), after["entries"]!.AsArray().Count);
    }

    [Fact]
    public async Task An_entry_can_be_corrected_in_the_same_list_and_taken_back()
    {
        Guid wrong = Guid.CreateVersion7();
        Guid right = Guid.CreateVersion7();
        (_, JsonNode answer) = await PostAsync(Entries, $"[{Entry("water", "\"water\":1", wrong)},{Entry("water", $"\"water\":0.5,\"corrects\":\"{wrong}\"", right)},{Entry("withdrawn", $"\"corrects\":\"{right}\"")}]");
        Assert.All(answer.AsArray(), row => Assert.True((int)row!["status"]! == 201, row.ToJsonString()));
        Assert.Equal(5e-4, (double)answer[1]!["entry"]!["fact"]!["cubicMetres"]!, 1e-12);
        Assert.Equal(wrong, (Guid)answer[1]!["entry"]!["corrects"]!);
    }

    [Fact]
    public async Task A_batch_is_read_with_what_is_to_be_expected()
    {
        await PostAsync(Entries, Entry("note", "\"text\":\"good\""));
        JsonNode batch = await ReadAsync($"/api/batches/{id}");
        Assert.Equal(0.0035, (double)batch["course"]!["yieldCubicMetres"]!["central"]!, 1e-4);
        Assert.True((DateTimeOffset)batch["course"]!["readyAt"]! > app.Clock.Now);
        Assert.False(string.IsNullOrEmpty((string?)batch["course"]!["next"]!["title"]));
        Assert.Equal("note", (string?)batch["entries"]!.AsArray()[^1]!["kind"]);
        Assert.Equal(id, (string?)Assert.Single((await ReadAsync("/api/batches")).AsArray())!["batch"]);
    }

    [Fact]
    public async Task What_is_refused_is_a_problem_document()
    {
        (string Address, string Body, HttpStatusCode Status)[] cases =
        [
            ($"/api/batches/{Guid.CreateVersion7()}/entries", Entry("skimmed"), HttpStatusCode.NotFound),
            ("/api/batches/soup/entries", Entry("skimmed"), HttpStatusCode.NotFound),
            (Entries, "{", HttpStatusCode.BadRequest),
            (Entries, "3", HttpStatusCode.BadRequest),
            (Entries, "[]", HttpStatusCode.BadRequest),
            (Entries, "[[]]", HttpStatusCode.BadRequest),
            (Entries, $"[{string.Join(',', Enumerable.Range(0, 101).Select(_ => Entry("skimmed")))}]", HttpStatusCode.BadRequest),
            (Entries, """{"kind":"skimmed"}""", HttpStatusCode.BadRequest),
            (Entries, Entry("sang"), HttpStatusCode.BadRequest),
            (Entries, Entry("photo"), HttpStatusCode.BadRequest),
            (Entries, $$"""{"entry":"{{Guid.CreateVersion7()}}","kind":"skimmed","text":"{{new string('x', 600_000)}}"}""", HttpStatusCode.RequestEntityTooLarge),
        ];
        foreach ((string address, string body, HttpStatusCode expected) in cases)
        {
            (HttpStatusCode status, JsonNode problem) = await PostAsync(address, body);
            Assert.True(status == expected, $"{body[..Math.Min(60, body.Length)]}: {status}");
            Assert.Equal((int)expected, (int)problem["status"]!);
        }

        using HttpResponseMessage missing = await client.GetAsync($"/api/batches/{Guid.CreateVersion7()}", Stop);
        Assert.Equal(HttpStatusCode.NotFound, missing.StatusCode);
    }

    [Theory]
    [InlineData("Sec-Fetch-Site", "cross-site", HttpStatusCode.Forbidden)]
    [InlineData("Sec-Fetch-Site", "same-site", HttpStatusCode.Forbidden)]
    [InlineData("Origin", "https://elsewhere.example", HttpStatusCode.Forbidden)]
    [InlineData("Origin", "null", HttpStatusCode.Forbidden)]
    [InlineData("Sec-Fetch-Site", "same-origin", HttpStatusCode.Created)]
    [InlineData("Origin", "http://localhost", HttpStatusCode.Created)]
    public async Task A_page_from_elsewhere_cannot_post(string header, string value, HttpStatusCode expected)
    {
        using HttpRequestMessage message = new(HttpMethod.Post, Entries) { Content = new StringContent(Entry("skimmed"), Encoding.UTF8, "application/json") };
        message.Headers.Add(header, value);
        using HttpResponseMessage answer = await client.SendAsync(message, Stop);
        Assert.Equal(expected, answer.StatusCode);
    }

    /// <summary>What a foreign page may send without asking first (Fetch standard, simple content types) is not taken.</summary>
    [Theory]
    [InlineData("text/plain")]
    [InlineData("application/x-www-form-urlencoded")]
    public async Task Only_json_is_taken(string type)
    {
        using StringContent content = new(Entry("skimmed"), Encoding.UTF8, type);
        using HttpResponseMessage answer = await client.PostAsync(Entries, content, Stop);
        Assert.Equal(HttpStatusCode.UnsupportedMediaType, answer.StatusCode);
    }

    [Fact]
    public async Task A_busy_database_is_said_as_worth_sending_again_and_nothing_is_acknowledged()
    {
        using (app.LockTheBook())
        {
            (HttpStatusCode status, JsonNode problem) = await PostAsync(Entries, Entry("skimmed"));
            Assert.Equal(HttpStatusCode.ServiceUnavailable, status);
            Assert.Contains("busy", (string)problem["detail"]!, StringComparison.Ordinal);
            (status, JsonNode list) = await PostAsync(Entries, $"[{Entry("skimmed")},{Entry("simmers")}]");
            Assert.Equal(HttpStatusCode.OK, status);
            Assert.Equal([503, 503], list.AsArray().Select(row => (int)row!["status"]!));
        }

        Assert.Empty((await ReadAsync($"/api/batches/{id}"))["entries"]!.AsArray());
        Assert.Equal(HttpStatusCode.Created, (await PostAsync(Entries, Entry("skimmed"))).Status);
    }

    [Fact]
    public async Task Twenty_posts_of_one_entry_at_once_store_it_once_and_all_answers_agree()
    {
        for (int round = 0; round < 3; round++)
        {
            string body = Entry("water", "\"water\":0.5");
            (HttpStatusCode Status, JsonNode Answer)[] answers = await Task.WhenAll(Enumerable.Range(0, 20).Select(_ => Task.Run(() => PostAsync(Entries, body), Stop)));
            Assert.Equal(1, answers.Count(answer => answer.Status == HttpStatusCode.Created));
            Assert.Equal(19, answers.Count(answer => answer.Status == HttpStatusCode.OK));
            Assert.All(answers, answer => Assert.True(JsonNode.DeepEquals(answers[0].Answer, answer.Answer), answer.Answer.ToJsonString()));
            Assert.Equal(round + 1, (int)answers[0].Answer["number"]!);
        }

        Assert.Equal(3, (await ReadAsync($"/api/batches/{id}"))["entries"]!.AsArray().Count);
    }

    [Fact]
    public async Task Hostile_entries_never_fail_the_server()
    {
        string[] kinds = [.. FactDocument.Words];
        await HostileEntries.Forms(kinds).SampleAsync(
            async fields =>
            {
                List<KeyValuePair<string, string>> form = [.. fields];
                using (FormUrlEncodedContent content = new(form))
                using (HttpResponseMessage page = await client.PostAsync($"/batches/{id}/log", content, Stop))
                {
                    Assert.True((int)page.StatusCode is 200 or 201 or 400, $"{page.StatusCode}: {JsonSerializer.Serialize(form)}");
                }

                JsonObject body = [];
                foreach ((string name, string value) in form)
                {
                    body[name] = value;
                }

                using StringContent json = new(body.ToJsonString(), Encoding.UTF8, "application/json");
                using HttpResponseMessage program = await client.PostAsync(Entries, json, Stop);
                Assert.True((int)program.StatusCode is 200 or 201 or 400, $"{program.StatusCode}: {body.ToJsonString()}");
            },
            iter: 120,
            threads: 1);

        // Whatever got in can be read, worked out and exported again.
        Assert.NotNull((await ReadAsync($"/api/batches/{id}"))["entries"]);
        foreach (string address in new[] { $"/batches/{id}", $"/batches/{id}/record", $"/batches/{id}/log.csv", $"/batches/{id}/log.json", "/" })
        {
            using HttpResponseMessage answer = await client.GetAsync(address, Stop);
            Assert.True(answer.StatusCode == HttpStatusCode.OK, $"{address}: {answer.StatusCode}");
        }
    }

    [Fact]
    public async Task A_form_that_is_damaged_is_a_problem_document()
    {
        (string Type, string Body)[] forms =
        [
            ("multipart/form-data; boundary=x", "--x\r\nContent-Disposition: form-data; name=\"kind\"\r\n\r\nskim"),
            ("multipart/form-data", "--x--"),
            ("multipart/form-data; boundary=" + new string('x', 300), "--x--"),
            ("application/x-www-form-urlencoded", string.Join('&', Enumerable.Range(0, 3000).Select(index => $"a{index}=1"))),
            ("application/x-www-form-urlencoded", "kind=%ff%fe&entry=%zz"),
        ];
        foreach ((string type, string body) in forms)
        {
            using StringContent content = new(body);
            content.Headers.ContentType = MediaTypeHeaderValue.Parse(type);
            using HttpResponseMessage answer = await client.PostAsync($"/batches/{id}/log", content, Stop);
            Assert.True(answer.StatusCode == HttpStatusCode.BadRequest, $"{type}: {answer.StatusCode}");
            Assert.Equal("application/problem+json", answer.Content.Headers.ContentType?.MediaType);
        }
    }

    [Fact]
    public async Task A_photo_goes_in_with_its_entry_and_comes_out_silent()
    {
        Guid key = Guid.CreateVersion7();
        using MultipartFormDataContent form = new()
        {
            { new StringContent(key.ToString()), "entry" },
            { new StringContent("photo"), "kind" },
            { new StringContent("the raft"), "text" },
            { new ByteArrayContent(CameraFiles.WithExif(CameraFiles.Quarters(800, 400), 6)), "photo", "IMG.jpg" },
        };
        using HttpResponseMessage answer = await client.PostAsync($"/batches/{id}/log", form, Stop);
        Assert.Equal(HttpStatusCode.Created, answer.StatusCode);
        using HttpResponseMessage picture = await client.GetAsync($"/batches/{id}/photos/{key}", Stop);
        byte[] jpeg = await picture.Content.ReadAsByteArrayAsync(Stop);
        Assert.Equal([0xff, 0xd8], jpeg[..2]);
        Assert.DoesNotContain(CameraFiles.Maker, Encoding.Latin1.GetString(jpeg), StringComparison.Ordinal);
        Assert.Equal("nosniff", picture.Headers.GetValues("X-Content-Type-Options").Single());
    }

    [Fact]
    public async Task The_interface_is_described()
    {
        JsonNode document = await ReadAsync("/openapi/v1.json");
        JsonNode post = document["paths"]!["/api/batches/{id}/entries"]!["post"]!;
        Assert.NotNull(post["responses"]!["201"]!["content"]!["application/json"]!["schema"]);
        Assert.NotNull(post["responses"]!["400"]!["content"]!["application/problem+json"]);
        Assert.NotNull(document["paths"]!["/api/batches/{id}"]!["get"]!["responses"]!["200"]!["content"]!["application/json"]!["schema"]);
        Assert.NotNull(document["paths"]!["/api/batches"]!["get"]);
        JsonObject described = document["components"]!["schemas"]!["EntryInput"]!["properties"]!.AsObject();
        string[] fields = [.. HostileEntries.Fields.Where(field => field is not "photo")];
        Assert.Contains("metered", fields, StringComparer.Ordinal);
        Assert.All(fields, field => Assert.True(described.ContainsKey(field), field));
    }

    private static string Entry(string kind, string more = "", Guid? key = null) =>
        $"{{\"entry\":\"{key ?? Guid.CreateVersion7()}\",\"kind\":\"{kind}\"{(more.Length > 0 ? "," : "")}{more.Trim()}}}";

    private async Task<(HttpStatusCode Status, JsonNode Answer)> PostAsync(string address, string body)
    {
        using StringContent content = new(body, Encoding.UTF8, "application/json");
        using HttpResponseMessage answer = await client.PostAsync(address, content, Stop);
        return (answer.StatusCode, JsonNode.Parse(await answer.Content.ReadAsStringAsync(Stop))!);
    }

    private async Task<JsonNode> ReadAsync(string address) => JsonNode.Parse(await client.GetStringAsync(address, Stop))!;
}
