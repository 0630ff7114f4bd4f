namespace Stockwright.Web.Fields;

/// <summary>Reads words a cook types: names and notes.</summary>
internal static class FieldText
{
    public const int LongestName = 80;
    public const int LongestNote = 2000;

    /// <summary>A name: trimmed, on one line; reported when missing or too long.</summary>
    public static string Name(this FieldReader reader, string field, string missing, int longest = LongestName)
    {
        string name = reader.Text(field, longest);
        if (reader.IsBlank(field))
        {
            reader.Report(field, missing);
        }

        return name;
    }

    /// <summary>One line of text, trimmed, or nothing.</summary>
    public static string Text(this FieldReader reader, string field, int longest) =>
        Checked(reader, field, PlainText.OneLine(reader.Form[field]), longest);

    /// <summary>True when nothing that shows was typed.</summary>
    public static bool IsBlank(this FieldReader reader, string field) => PlainText.OneLine(reader.Form[field]).Length == 0;

    /// <summary>Some lines of text.</summary>
    public static string Note(this FieldReader reader, string field) =>
        Checked(reader, field, PlainText.Lines(reader.Form[field]), LongestNote);

    private static string Checked(FieldReader reader, string field, string text, int longest)
    {
        if (text.Length <= longest)
        {
            return text;
        }

        reader.Report(field, $"This is too long: at most {longest} letters, and it has {text.Length}.");
        return "";
    }
}
