using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization;

namespace Stockwright.Storage;

/// <summary>How stored documents are written, and what is said when one cannot be read.</summary>
internal static class DocumentJson
{
    private static readonly JsonSerializerOptions Options = new(JsonSerializerDefaults.Web)
    {
        Converters = { new JsonStringEnumConverter(JsonNamingPolicy.CamelCase) },
        DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull,
        RespectNullableAnnotations = true,

        // The text goes into a database column, never into a page; letters stay readable there.
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    public static string Write<T>(T document) => JsonSerializer.Serialize(document, Options);

    public static T Read<T>(string json, string what)
    {
        try
        {
            return JsonSerializer.Deserialize<T>(json, Options)
                ?? throw new StoredDocumentException($"The stored {what} is empty.");
        }
        catch (JsonException trouble)
        {
            throw new StoredDocumentException($"The stored {what} cannot be read: {trouble.Message}", trouble);
        }
    }
}
