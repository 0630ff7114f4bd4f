using Stockwright.Web.Planner;

namespace Stockwright.Web.Keeping;

/// <summary>Reads words a cook types: names and notes.</summary>
internal static class FieldText
{
    public const int LongestName = 80;
    public const int LongestNote = 2000;

    /// <summary>A name: trimmed, on one line; reported when missing or too long.</summary>
    public static string Name(this FieldReader reader, string field, string missing)
    {
        string name = reader.Text(field, LongestName);
        if (name.Length == 0 && string.IsNullOrWhiteSpace(reader.Form[field]))
        {
            reader.Report(field, missing);
        }

        return name;
    }

    /// <summary>One line of text, trimmed, or nothing.</summary>
    public static string Text(this FieldReader reader, string field, int longest) =>
        Checked(reader, field, OneLine(reader.Form[field]), longest);

    /// <summary>Some lines of text.</summary>
    public static string Note(this FieldReader reader, string field) =>
        Checked(reader, field, Printable(reader.Form[field].ReplaceLineEndings("\n"), keepLines: true), LongestNote);

    /// <summary>A whole number within limits; null when blank or reported.</summary>
    public static int? Whole(this FieldReader reader, string field, string what, int least, int most, string? missing = null)
    {
        double? value = reader.Number(field, what, Measure.Number, least, most, missing);
        if (value is { } number && Math.Abs(number - Math.Round(number)) > 1e-9)
        {
            reader.Report(field, $"{what}: a whole number, please.");
            return null;
        }

        return value is { } whole ? (int)Math.Round(whole) : null;
    }

    private static string Checked(FieldReader reader, string field, string text, int longest)
    {
        if (text.Length <= longest)
        {
            return text;
        }

        reader.Report(field, $"This is too long: at most {longest} letters, and it has {text.Length}.");
        return "";
    }

    private static string OneLine(string text) => Printable(text, keepLines: false);

    // Control characters and broken halves of letters cannot be stored everywhere, and show nothing.
    private static string Printable(string text, bool keepLines) => string.Concat(text.EnumerateRunes()
        .Select(rune => rune.Value == '\n' && keepLines ? "\n" : System.Text.Rune.IsControl(rune) ? " " : rune.ToString())).Trim();
}
