using System.Globalization;
using System.Text.Json;
using Stockwright.Evidence;

namespace Stockwright.Files;

/// <summary>
/// One object of a data file, read field by field with messages that name the row and the field.
/// Unknown fields are errors, so that a typing error in a hand-edited file does not pass in silence.
/// </summary>
internal sealed class JsonRow
{
    private readonly Dictionary<string, JsonElement> fields = new(StringComparer.Ordinal);
    private readonly HashSet<string> read = new(StringComparer.Ordinal);
    private readonly Func<string, Exception?, Exception> fail;
    private string place;

    private JsonRow(JsonElement element, string place, Func<string, Exception?, Exception> fail)
    {
        this.place = place;
        this.fail = fail;
        if (element.ValueKind != JsonValueKind.Object)
        {
            throw Fail($"expected fields between braces, found {Describe(element)}");
        }

        foreach (JsonProperty property in element.EnumerateObject())
        {
            if (!fields.TryAdd(property.Name, property.Value))
            {
                throw Fail($"'{property.Name}' is given twice");
            }
        }
    }

    /// <summary>Parses a whole data file and hands its outer object to a reader.</summary>
    /// <exception cref="DataFileException">The text is not JSON, or the reader found something wrong.</exception>
    internal static T ReadFile<T>(string json, string place, Func<JsonRow, T> read) =>
        ReadFile(json, place, static (message, inner) => new DataFileException(message, inner), read);

    /// <summary>Parses a text that is no data file, with the exception that its own readers expect.</summary>
    internal static T ReadFile<T>(string json, string place, Func<string, Exception?, Exception> fail, Func<JsonRow, T> read)
    {
        ArgumentNullException.ThrowIfNull(json);
        JsonDocumentOptions options = new() { AllowTrailingCommas = true, CommentHandling = JsonCommentHandling.Skip };
        try
        {
            using JsonDocument document = Parse(json, options);
            JsonRow row = new(document.RootElement, place, fail);
            T value = read(row);
            row.Finish();
            return value;
        }
        catch (JsonException broken)
        {
            string line = broken.LineNumber is { } number ? (number + 1).ToString(CultureInfo.InvariantCulture) : "unknown";
            throw fail($"{place}: not readable as JSON at line {line}", broken);
        }
        catch (InvalidOperationException broken)
        {
            // A lone surrogate in a string is only noticed when the string is read.
            throw fail($"{place}: a text holds characters that cannot be read", broken);
        }
    }

    private static JsonDocument Parse(string json, JsonDocumentOptions options)
    {
        try
        {
            return JsonDocument.Parse(json, options);
        }
        catch (ArgumentException broken)
        {
            // Half a character outside or inside a string: not even text.
            throw new InvalidOperationException(broken.Message, broken);
        }
    }

    /// <summary>The exception to throw for this row.</summary>
    internal Exception Fail(string message, Exception? inner = null) => fail($"{place}: {message}", inner);

    /// <summary>Gives the row a better name once its own is known.</summary>
    internal void Rename(string name) => place = name;

    internal bool Has(string field) => fields.TryGetValue(field, out JsonElement value) && value.ValueKind != JsonValueKind.Null;

    internal string Text(string field) => OptionalText(field) ?? throw Missing(field);

    internal string? OptionalText(string field)
    {
        if (!TryTake(field, out JsonElement value))
        {
            return null;
        }

        return value.ValueKind == JsonValueKind.String ? value.GetString() : throw Wrong(field, "a text in quotes", value);
    }

    internal bool Flag(string field, bool whenMissing)
    {
        if (!TryTake(field, out JsonElement value))
        {
            return whenMissing;
        }

        return value.ValueKind switch
        {
            JsonValueKind.True => true,
            JsonValueKind.False => false,
            _ => throw Wrong(field, "true or false", value),
        };
    }

    internal double Number(string field) => OptionalNumber(field) ?? throw Missing(field);

    internal double? OptionalNumber(string field) => TryTake(field, out JsonElement value) ? NumberFrom(field, value) : null;

    internal int WholeNumber(string field, int whenMissing)
    {
        if (OptionalNumber(field) is not { } number)
        {
            return whenMissing;
        }

        return number is >= 0 and <= 1000 && number == Math.Floor(number) ? (int)number : throw Fail($"'{field}' must be a whole number");
    }

    /// <summary>Lowest, aimed-at and highest of a range written as three numbers in rising order.</summary>
    internal (double Least, double Target, double Most) Three(string field)
    {
        JsonElement value = TakeArray(field);
        if (value.GetArrayLength() != 3)
        {
            throw Fail($"'{field}' must be three numbers [least, target, most]");
        }

        double least = NumberFrom(field, value[0]);
        double target = NumberFrom(field, value[1]);
        double most = NumberFrom(field, value[2]);
        return least <= target && target <= most ? (least, target, most) : throw Fail($"'{field}' must rise from least to most");
    }

    /// <summary>Reads a list of numbers.</summary>
    internal IReadOnlyList<double> Numbers(string field) => [.. TakeArray(field).EnumerateArray().Select(item => NumberFrom(field, item))];

    internal TEnum Choice<TEnum>(string field, TEnum? whenMissing = null)
        where TEnum : struct, Enum
    {
        if (OptionalText(field) is not { } text)
        {
            return whenMissing ?? throw Missing(field);
        }

        return TryName(text, out TEnum value) ? value : throw Fail($"'{field}' is '{text}'; it must be one of {string.Join(", ", Enum.GetNames<TEnum>())}");
    }

    /// <summary>Reads one name: Enum.TryParse alone would also take "7", or two names.</summary>
    internal static bool TryName<TEnum>(string? text, out TEnum value)
        where TEnum : struct, Enum =>
        Enum.TryParse(text, ignoreCase: true, out value) && Enum.IsDefined(value) && char.IsAsciiLetter(text![0]) && !text.Contains(',', StringComparison.Ordinal);

    /// <summary>Reads <c>[value, low, high, "grade", "source key"]</c>.</summary>
    internal Stated<double>? OptionalStated(string field, IReadOnlyDictionary<string, string> sources)
    {
        if (!TryTake(field, out JsonElement value))
        {
            return null;
        }

        const string Shape = "[value, low, high, \"grade\", \"source\"]";
        if (value.ValueKind != JsonValueKind.Array || value.GetArrayLength() != 5)
        {
            throw Wrong(field, Shape, value);
        }

        double central = NumberFrom(field, value[0]);
        double low = NumberFrom(field, value[1]);
        double high = NumberFrom(field, value[2]);
        if (!(low <= central && central <= high))
        {
            throw Fail($"'{field}' must have low <= value <= high");
        }

        if (value[3].ValueKind != JsonValueKind.String || value[4].ValueKind != JsonValueKind.String)
        {
            throw Fail($"'{field}' must end with a grade and a source in quotes: {Shape}");
        }

        string grade = value[3].GetString()!;
        string source = value[4].GetString()!;
        if (!EvidenceGrades.TryParse(grade, out Provenance provenance))
        {
            throw Fail($"'{field}' has the grade '{grade}'; it must be one of {EvidenceGrades.Names}");
        }

        return sources.TryGetValue(source, out string? text)
            ? new Stated<double>(central, low, high, provenance, text)
            : throw Fail($"'{field}' names the source '{source}', which is not in the table of sources");
    }

    internal Stated<double> Stated(string field, IReadOnlyDictionary<string, string> sources) => OptionalStated(field, sources) ?? throw Missing(field);

    internal IReadOnlyList<string> Texts(string field)
    {
        if (!Has(field))
        {
            read.Add(field);
            return [];
        }

        List<string> texts = [];
        foreach (JsonElement item in TakeArray(field).EnumerateArray())
        {
            texts.Add(item.ValueKind == JsonValueKind.String ? item.GetString()! : throw Wrong(field, "a list of texts", item));
        }

        return texts;
    }

    /// <summary>Reads a table of texts by key.</summary>
    internal Dictionary<string, string> TextTable(string field)
    {
        JsonRow inner = Child(field) ?? throw Missing(field);
        Dictionary<string, string> table = new(StringComparer.Ordinal);
        foreach (string key in inner.fields.Keys)
        {
            table.Add(key, inner.Text(key));
        }

        return table;
    }

    /// <summary>Reads a list of rows; the reader's leftovers are checked.</summary>
    internal List<T> Rows<T>(string field, string kind, Func<JsonRow, T> readRow)
    {
        List<T> rows = [];
        if (!Has(field))
        {
            read.Add(field);
            return rows;
        }

        foreach (JsonElement item in TakeArray(field).EnumerateArray())
        {
            JsonRow row = new(item, $"{place}, {kind} {(rows.Count + 1).ToString(CultureInfo.InvariantCulture)}", fail);
            rows.Add(readRow(row));
            row.Finish();
        }

        return rows;
    }

    /// <summary>Reads an inner object, or null when it is absent.</summary>
    internal T? Inner<T>(string field, Func<JsonRow, T> readInner)
        where T : class
    {
        if (Child(field) is not { } row)
        {
            return null;
        }

        T value = readInner(row);
        row.Finish();
        return value;
    }

    internal Exception Missing(string field) => Fail($"'{field}' is missing");

    private void Finish()
    {
        string? unknown = fields.Keys.FirstOrDefault(field => !read.Contains(field));
        if (unknown is not null)
        {
            throw Fail($"'{unknown}' is not a known field");
        }
    }

    private JsonRow? Child(string field) => TryTake(field, out JsonElement value) ? new JsonRow(value, $"{place}, {field}", fail) : null;

    private JsonElement TakeArray(string field)
    {
        if (!TryTake(field, out JsonElement value))
        {
            throw Missing(field);
        }

        return value.ValueKind == JsonValueKind.Array ? value : throw Wrong(field, "a list in square brackets", value);
    }

    private bool TryTake(string field, out JsonElement value)
    {
        read.Add(field);
        return fields.TryGetValue(field, out value) && value.ValueKind != JsonValueKind.Null;
    }

    private double NumberFrom(string field, JsonElement value) =>
        value.ValueKind == JsonValueKind.Number && value.TryGetDouble(out double number) && double.IsFinite(number)
            ? number
            : throw Wrong(field, "a number", value);

    private Exception Wrong(string field, string expected, JsonElement found) => Fail($"'{field}' must be {expected}, found {Describe(found)}");

    private static string Describe(JsonElement element) => element.ValueKind switch
    {
        JsonValueKind.Object => "braces",
        JsonValueKind.Array => "a list",
        JsonValueKind.String => "a text",
        JsonValueKind.Null or JsonValueKind.Undefined => "nothing",
        _ => element.GetRawText(),
    };
}
