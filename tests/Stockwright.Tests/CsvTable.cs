using System.Globalization;
using Microsoft.VisualBasic.FileIO;

namespace Stockwright.Tests;

/// <summary>A table of published or literal figures shipped with the tests: a heading line, commas, quotes, # for remarks.</summary>
internal static class CsvTable
{
    /// <summary>Reads a table; each row is its fields by heading.</summary>
    /// <param name="name">Folder and file, for instance <c>Larder.Data.sr28.csv</c>.</param>
    public static IReadOnlyList<IReadOnlyDictionary<string, string>> Read(string name)
    {
        using Stream stream = typeof(CsvTable).Assembly.GetManifestResourceStream("Stockwright.Tests." + name)
            ?? throw new InvalidOperationException($"No table {name} in the tests.");
        using TextFieldParser parser = new(stream) { Delimiters = [","], CommentTokens = ["#"], HasFieldsEnclosedInQuotes = true };
        string[] heading = parser.ReadFields() ?? throw new InvalidOperationException($"{name} is empty.");
        List<IReadOnlyDictionary<string, string>> rows = [];
        while (parser.ReadFields() is { } fields)
        {
            rows.Add(heading.Zip(fields).ToDictionary(pair => pair.First, pair => pair.Second, StringComparer.Ordinal));
        }

        return rows.Count > 0 ? rows : throw new InvalidOperationException($"{name} has no rows.");
    }

    /// <summary>A field as a number; it must be one.</summary>
    public static double Number(this IReadOnlyDictionary<string, string> row, string field) => double.Parse(row[field], CultureInfo.InvariantCulture);
}
