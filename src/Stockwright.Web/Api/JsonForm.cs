using System.Globalization;
using System.Text.Json;
using Stockwright.Planning;
using Stockwright.Web.CoolingCases;
using Stockwright.Web.Forms;
using Stockwright.Web.Planner;

namespace Stockwright.Web.Api;

/// <summary>Turns a JSON object into the form a browser would have sent, so that both are read by the same codec.</summary>
internal static class JsonForm
{
    public static TypedForm Read(JsonElement root, List<InputProblem> problems)
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
                case JsonValueKind.Array when name is RowFields.Bones or RowFields.More or RowFields.Set:
                    ReadRows(name, property.Value, entries, problems);
                    break;
                case JsonValueKind.Array when name is "steps":
                    ReadSteps(property.Value, entries, problems);
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

    private static void ReadRows(string family, JsonElement rows, List<KeyValuePair<string, string>> entries, List<InputProblem> problems)
    {
        int index = 0;
        foreach (JsonElement row in rows.EnumerateArray())
        {
            if (row.ValueKind != JsonValueKind.Object)
            {
                problems.Add(new InputProblem(family, "Each row is an object with cut and kg (or lb)."));
                return;
            }

            foreach (JsonProperty part in row.EnumerateObject())
            {
                string field = RowFields.Name(family, index, NameOf(part));
                if (TryReadSimple(part.Value, out string value))
                {
                    entries.Add(KeyValuePair.Create(field, value));
                }
                else
                {
                    problems.Add(new InputProblem(field, "One value belongs here: text or a number."));
                }
            }

            index++;
        }
    }

    private static void ReadSteps(JsonElement steps, List<KeyValuePair<string, string>> entries, List<InputProblem> problems)
    {
        int row = 0;
        foreach (JsonElement step in steps.EnumerateArray())
        {
            row++;
            if (step.ValueKind != JsonValueKind.Object || row > CoolingFields.MostSteps)
            {
                problems.Add(new InputProblem("steps", $"Steps are objects with place and the rest, {CoolingFields.MostSteps.ToString(CultureInfo.InvariantCulture)} at most."));
                return;
            }

            foreach (JsonProperty part in step.EnumerateObject())
            {
                string field = CoolingFields.Step(row, NameOf(part));
                if (TryReadSimple(part.Value, out string value))
                {
                    entries.Add(KeyValuePair.Create(field, value));
                }
                else
                {
                    problems.Add(new InputProblem(field, "One value belongs here: text, a number, true or false."));
                }
            }
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
