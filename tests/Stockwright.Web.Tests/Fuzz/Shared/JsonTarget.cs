using System.Globalization;
using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace Stockwright.Web.Tests.Fuzz.Shared;

/// <summary>A POST operation of the app's OpenAPI document; rows of a list are named <c>bones[0].kg</c>.</summary>
internal sealed class JsonTarget : FuzzTarget
{
    private readonly string path;

    private JsonTarget(FuzzClient client, string path, IReadOnlyList<FuzzField> fields)
        : base(client, $"JSON {path}")
    {
        this.path = path;
        Fields = fields;
    }

    /// <summary>All operations that take JSON.</summary>
    /// <param name="client">Sends.</param>
    /// <param name="document">The OpenAPI document.</param>
    /// <param name="words">Words that pages offer, by field.</param>
    /// <param name="fillPath">Puts ids into a path.</param>
    public static IEnumerable<JsonTarget> All(FuzzClient client, JsonNode document, IReadOnlyDictionary<string, HashSet<string>> words, Func<string, string> fillPath)
    {
        foreach ((string path, JsonNode? operations) in document["paths"]!.AsObject())
        {
            if (operations?["post"]?["requestBody"]?["content"]?["application/json"]?["schema"] is { } schema)
            {
                yield return new JsonTarget(client, fillPath(path), [.. FieldsOf(document, schema, "", words)]);
            }
        }
    }

    public override Task<FuzzAnswer> SendAsync(IReadOnlyDictionary<string, string> changes, CancellationToken cancellationToken)
    {
        JsonObject body = [];
        foreach (FuzzField field in Fields)
        {
            string value = changes.TryGetValue(field.Name, out string? changed) ? changed : field.Value;
            if (value.Length > 0)
            {
                Put(body, field, string.Equals(value, "{new}", StringComparison.Ordinal) ? Guid.CreateVersion7().ToString() : value);
            }
        }

        string text = body.ToJsonString();
        return Client.SendAsync(
            () => new HttpRequestMessage(HttpMethod.Post, new Uri(path, UriKind.Relative)) { Content = new StringContent(text, Encoding.UTF8, "application/json") }, $"POST {path} {text}", cancellationToken);
    }

    public override string ProblemAt(FuzzAnswer answer, FuzzField field)
    {
        if ((int)answer.Status != 400)
        {
            return "";
        }

        try
        {
            string last = "-" + field.Name.Split('.')[^1];
            return JsonNode.Parse(answer.Body)?["errors"] is JsonObject errors
                ? string.Join(' ', errors.Where(error => string.Equals(error.Key, field.Name, StringComparison.Ordinal) || (field.Name.Contains('[', StringComparison.Ordinal) && error.Key.EndsWith(last, StringComparison.Ordinal)))
                    .SelectMany(error => error.Value!.AsArray().Select(message => (string)message!)))
                : "";
        }
        catch (JsonException)
        {
            return "";
        }
    }

    private static IEnumerable<FuzzField> FieldsOf(JsonNode document, JsonNode schema, string prefix, IReadOnlyDictionary<string, HashSet<string>> words)
    {
        if (schema["$ref"] is { } reference)
        {
            schema = document["components"]!["schemas"]![((string)reference!).Split('/')[^1]]!;
        }

        foreach ((string name, JsonNode? property) in schema["properties"]?.AsObject() ?? [])
        {
            string full = prefix + name;
            if (property!["items"] is { } items)
            {
                if (items["$ref"] is not null)
                {
                    foreach (FuzzField part in FieldsOf(document, items, $"{full}[0].", words))
                    {
                        yield return part;
                    }
                }
                else
                {
                    string[] ids = [.. words.Keys.Where(word => word.StartsWith(name + "-", StringComparison.Ordinal)).Select(word => word[(name.Length + 1)..])];
                    yield return new FuzzField($"{full}[]", FieldKind.Choice, "", ["", .. ids], "", null);
                }

                continue;
            }

            string format = (string?)property["format"] ?? "";
            string[] options = [.. words.Where(word => string.Equals(word.Key, name, StringComparison.Ordinal) || (prefix.Length > 0 && word.Key.EndsWith("-" + name, StringComparison.Ordinal))).SelectMany(word => word.Value).Distinct(StringComparer.Ordinal)];
            string types = property["type"]?.ToJsonString() ?? "";
            bool IsOf(string type) => types.Contains($"\"{type}\"", StringComparison.Ordinal);
            yield return format switch
            {
                "uuid" => new FuzzField(full, FieldKind.Hidden, string.Equals(name, "entry", StringComparison.Ordinal) ? "{new}" : "", [], "", null),
                "date-time" => new FuzzField(full, FieldKind.Hidden, "", [], "", null),
                _ when IsOf("boolean") => new FuzzField(full, FieldKind.Choice, "", ["", "true", "false"], "", null),
                _ when string.Equals(name, "units", StringComparison.Ordinal) => new FuzzField(full, FieldKind.Choice, "", ["", "metric", "us"], "", null),
                _ when options.Length > 0 => new FuzzField(full, FieldKind.Choice, "", ["", .. options], "", null),
                _ => new FuzzField(full, FieldKind.Text, "", [], "", null) { IsNumber = IsOf("number") || IsOf("integer") },
            };
        }
    }

    private static void Put(JsonObject body, FuzzField field, string value)
    {
        JsonNode node = field.Kind == FieldKind.Text && decimal.TryParse(value, NumberStyles.Float, CultureInfo.InvariantCulture, out decimal number) ? JsonValue.Create(number)
            : value is "true" or "false" ? JsonValue.Create(value is "true")
            : JsonValue.Create(value);
        string[] parts = field.Name.Split("[0].");
        if (parts.Length == 2)
        {
            JsonArray rows = body[parts[0]] as JsonArray ?? [];
            if (rows.Parent is null)
            {
                body[parts[0]] = rows;
                rows.Add((JsonNode)new JsonObject());
            }

            rows[0]![parts[1]] = node;
        }
        else if (field.Name.EndsWith("[]", StringComparison.Ordinal))
        {
            body[field.Name[..^2]] = new JsonArray(node);
        }
        else
        {
            body[field.Name] = node;
        }
    }
}
