using System.Globalization;
using System.Text.Json;

namespace Stockwright.Web.Fields;

/// <summary>Rows of a form that a JSON object holds as an array of objects.</summary>
/// <param name="Property">Name of the array.</param>
/// <param name="FieldOf">Field of a row, counted from zero, and its part.</param>
/// <param name="Most">Rows read at most.</param>
/// <param name="Wrong">What to say of rows that are something else, or too many.</param>
internal sealed record JsonRows(string Property, Func<int, string, string> FieldOf, int Most, string Wrong);

/// <summary>Turns a JSON object into the form a browser would have sent, so that both are read by the same codec.</summary>
internal static class JsonForm
{
    /// <param name="root">The object.</param>
    /// <param name="problems">Takes what is wrong.</param>
    /// <param name="rows">Properties that hold rows of an object each.</param>
    public static TypedForm Read(JsonElement root, List<InputProblem> problems, IReadOnlyList<JsonRows> rows)
    {
        if (root.ValueKind != JsonValueKind.Object)
        {
            throw new JsonException("A JSON object with the fields of the form belongs here.");
        }

        List<KeyValuePair<string, string>> entries = [];
        foreach (JsonProperty property in root.EnumerateObject())
        {
            string name = NameOf(property);
            switch (property.Value.ValueKind)
            {
                case JsonValueKind.Array when rows.FirstOrDefault(family => string.Equals(family.Property, name, StringComparison.Ordinal)) is { } family:
                    ReadRows(family, property.Value, entries, problems);
                    break;
                case JsonValueKind.Array when name is "leave" or "with":
                    foreach (JsonElement ingredient in property.Value.EnumerateArray())
                    {
                        if (TryReadSimple(ingredient, out string id))
                        {
                            entries.Add(KeyValuePair.Create($"{name}-{id}", "1"));
                        }
                    }

                    break;
                default:
                    if (TryReadSimple(property.Value, out string value))
                    {
                        entries.Add(KeyValuePair.Create(name, value));
                    }
                    else
                    {
                        problems.Add(new InputProblem(name, "One value belongs here: text, a number, true or false."));
                    }

                    break;
            }
        }

        return new TypedForm(entries);
    }

    private static void ReadRows(JsonRows family, JsonElement rows, List<KeyValuePair<string, string>> entries, List<InputProblem> problems)
    {
        int index = 0;
        foreach (JsonElement row in rows.EnumerateArray())
        {
            if (row.ValueKind != JsonValueKind.Object || index >= family.Most)
            {
                problems.Add(new InputProblem(family.Property, family.Wrong));
                return;
            }

            foreach (JsonProperty part in row.EnumerateObject())
            {
                string field = family.FieldOf(index, NameOf(part));
                if (TryReadSimple(part.Value, out string value))
                {
                    entries.Add(KeyValuePair.Create(field, value));
                }
                else
                {
                    problems.Add(new InputProblem(field, "One value belongs here: text, a number, true or false."));
                }
            }

            index++;
        }
    }

    private static bool TryReadSimple(JsonElement value, out string text)
    {
        switch (value.ValueKind)
        {
            case JsonValueKind.String:
                text = TextOf(value);
                return true;
            case JsonValueKind.Number:
                text = NumberOf(value);
                return true;
            case JsonValueKind.True:
                text = "1";
                return true;
            case JsonValueKind.False or JsonValueKind.Null:
                text = "";
                return true;
            default:
                text = "";
                return false;
        }
    }

    /// <summary>A JSON number without exponent where it can be had; the codec says what is wrong with the others.</summary>
    private static string NumberOf(JsonElement value) =>
        value.TryGetDouble(out double number) && double.IsFinite(number) && Math.Abs(number) < 1e12
            ? number.ToString("0.###############", CultureInfo.InvariantCulture)
            : value.GetRawText();

    private static string TextOf(JsonElement value)
    {
        try
        {
            return value.GetString() ?? "";
        }
        catch (InvalidOperationException exception)
        {
            // Half a surrogate pair, escaped: well-formed JSON that is no text.
            throw new JsonException("A text holds half a character (a lone surrogate).", exception);
        }
    }

    private static string NameOf(JsonProperty property)
    {
        try
        {
            return property.Name;
        }
        catch (InvalidOperationException exception)
        {
            throw new JsonException("A name holds half a character (a lone surrogate).", exception);
        }
    }
}
