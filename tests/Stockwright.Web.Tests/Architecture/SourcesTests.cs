using System.Runtime.CompilerServices;
using System.Text.Json;
using System.Text.RegularExpressions;
using Xunit;

namespace Stockwright.Web.Tests.Architecture;

/// <summary>One bibliography, docs/sources.md: every source of a data file and every author with a year leads to a row of it, and every row is cited.</summary>
public sealed partial class SourcesTests
{
    /// <summary>Much longer than any text here takes: on a busy machine a thread may stand still for seconds.</summary>
    private const int PatienceMilliseconds = 60_000;

    private static readonly string Root = RootOf();
    private static readonly string Core = Path.Combine(Root, "src", "Stockwright");

    private static readonly JsonDocumentOptions Commented = new() { CommentHandling = JsonCommentHandling.Skip, AllowTrailingCommas = true };

    private static readonly string[] Keys =
        [.. Row().Matches(File.ReadAllText(Path.Combine(Root, "docs", "sources.md"))).Select(row => row.Groups["key"].Value).Where(key => key is not "key")];

    [Fact]
    public void Every_key_stands_once()
    {
        Assert.True(Keys.Length > 150);
        Assert.Equal(Keys.Length, Keys.Distinct(StringComparer.OrdinalIgnoreCase).Count());
    }

    [Fact]
    public void Every_source_of_a_data_file_names_a_row()
    {
        (string File, string Source)[] sources = [.. DataFiles().SelectMany(file => SourcesIn(file).Select(source => (Path.GetFileName(file), source)))];
        Assert.True(sources.Length > 150);
        Assert.DoesNotContain(sources, one => !Keys.Any(key => EndsOf(key, one.Source).Any()));
    }

    [Fact]
    public void Every_author_with_a_year_has_a_row()
    {
        (string File, string Text)[] texts =
        [
            .. FilesUnder(Path.Combine(Root, "docs"), ".md").Where(file => Path.GetFileName(file) is not "sources.md").Select(file => (Path.GetFileName(file), OnOneLine(File.ReadAllText(file)))),
            .. DataFiles().SelectMany(file => SourcesIn(file).Select(source => (Path.GetFileName(file), source))),
            .. FilesUnder(Core, ".cs").Concat(FilesUnder(Path.Combine(Root, "tests", "Stockwright.Tests"), ".cs")).Select(file => (Path.GetFileName(file), Spoken(file))),
        ];
        (string File, string Text, Match Citation)[] cited =
            [.. texts.SelectMany(text => AuthorAndYear().Matches(text.Text).Select(citation => (text.File, text.Text, citation)))];
        Assert.True(cited.Length > 100);
        string[] unknown = [.. cited.Where(one => !OneRowHolds(one.Text, one.Citation)).Select(one => $"{one.File}: {one.Citation.Value}")];
        Assert.Empty(unknown);
    }

    [Fact]
    public void Every_row_is_cited()
    {
        string[] places = [Path.Combine(Root, "docs"), Path.Combine(Root, "src"), Path.Combine(Root, "tests")];
        string everything = string.Join('\n', places
            .SelectMany(place => FilesUnder(place, ".md", ".cs", ".razor", ".json", ".csv"))
            .Where(file => Path.GetFileName(file) is not "sources.md" and not "SourcesTests.cs" and not "packages.lock.json")
            .Select(file => OnOneLine(File.ReadAllText(file))));
        Assert.DoesNotContain(Keys, key => !EndsOf(key, everything).Any());
    }

    /// <summary>The table at the head of a file, and what a row of it says in its own words.</summary>
    private static string[] SourcesIn(string file)
    {
        using JsonDocument document = JsonDocument.Parse(File.ReadAllText(file), Commented);
        Dictionary<string, string> table = document.RootElement.TryGetProperty("sources", out JsonElement sources)
            ? sources.EnumerateObject().ToDictionary(one => one.Name, one => one.Value.GetString()!, StringComparer.Ordinal)
            : [];
        return [.. table.Values, .. NamedSource(document.RootElement).Where(text => !table.ContainsKey(text))];
    }

    private static IEnumerable<string> NamedSource(JsonElement element) => element.ValueKind switch
    {
        JsonValueKind.Array => element.EnumerateArray().SelectMany(NamedSource),
        JsonValueKind.Object => element.EnumerateObject().SelectMany(part =>
            part is { Name: "source", Value.ValueKind: JsonValueKind.String } ? [part.Value.GetString()!] : NamedSource(part.Value)),
        _ => [],
    };

    private static bool OneRowHolds(string text, Match citation)
    {
        int year = citation.Index + citation.Length;
        return Keys.Any(key => EndsOf(key, text).Any(end => end - key.Length < year && end >= year));
    }

    /// <summary>Where a key ends in a text, as whole words, in small letters or capitals.</summary>
    private static IEnumerable<int> EndsOf(string key, string text)
    {
        for (int at = text.IndexOf(key, StringComparison.OrdinalIgnoreCase); at >= 0; at = text.IndexOf(key, at + 1, StringComparison.OrdinalIgnoreCase))
        {
            int end = at + key.Length;
            if ((at == 0 || !char.IsLetterOrDigit(text[at - 1])) && (end == text.Length || !char.IsLetterOrDigit(text[end])))
            {
                yield return end;
            }
        }
    }

    private static string[] DataFiles()
    {
        string[] files = [.. FilesUnder(Core, ".json").Where(file => Path.GetFileName(Path.GetDirectoryName(file)) is "Data")];
        Assert.True(files.Length > 30);
        return files;
    }

    /// <summary>Comments and texts of a file of code, without what is only arithmetic.</summary>
    private static string Spoken(string file) => OnOneLine(string.Join('\n', File.ReadLines(file)
        .Where(line => line.Contains("//", StringComparison.Ordinal) || line.Contains('"', StringComparison.Ordinal))));

    private static string OnOneLine(string text) => LineEnd().Replace(text, " ");

    private static IEnumerable<string> FilesUnder(string folder, params string[] endings) => Directory.GetFiles(folder, "*", SearchOption.AllDirectories)
        .Where(file => endings.Contains(Path.GetExtension(file), StringComparer.Ordinal)
            && !Path.GetRelativePath(folder, file).Split(Path.DirectorySeparatorChar).Any(part => part is "obj" or "bin"));

    private static string RootOf([CallerFilePath] string here = "") => Path.GetFullPath(Path.Combine(Path.GetDirectoryName(here)!, "..", "..", ".."));

    // The tables of sources have four columns; that of the grades has other ones.
    [GeneratedRegex(@"^\| (?<key>[^|\n]+?) \|[^|\n]*\|[^|\n]*\|[^|\n]*\|\r?$", RegexOptions.Multiline, PatienceMilliseconds)]
    private static partial Regex Row();

    // A word with a capital and a year: "McGee 2004", "Moon et al. 2015", "J Food Prot 1994". A month with a year is a date; 2026 and later are the tests' own days.
    [GeneratedRegex(@"(?<!\w)(?!(?:January|February|March|April|May|June|July|August|September|October|November|December|Jan)\b)\p{Lu}[\p{L}&'-]*\.?\)?,? (?:and others |et al\.? )?(?:1[89]\d\d|20[01]\d|202[0-5])(?!\d|[.,]\d)", RegexOptions.None, PatienceMilliseconds)]
    private static partial Regex AuthorAndYear();

    [GeneratedRegex(@"\s*\n\s*(?://+ ?|# ?)?", RegexOptions.None, PatienceMilliseconds)]
    private static partial Regex LineEnd();
}
