using System.Runtime.CompilerServices;
using System.Text.RegularExpressions;
using Xunit;

namespace Stockwright.Web.Tests.Architecture;

/// <summary>The docs lead to the code and back: every equation has its row in the index, every path named exists, every citation in the core resolves.</summary>
public sealed partial class EquationIndexTests
{
    private static readonly string Root = RootOf();
    private static readonly string Docs = Path.Combine(Root, "docs");
    private static readonly string Core = Path.Combine(Root, "src", "Stockwright");

    private static readonly string[] Written =
    [
        .. Directory.GetFiles(Docs, "equations*.md").Where(file => !file.EndsWith("equations-index.md", StringComparison.Ordinal))
            .SelectMany(file => Heading().Matches(File.ReadAllText(file)).Select(match => match.Groups["equation"].Value)),
    ];

    [Fact]
    public void Every_equation_has_one_row_in_the_index_and_is_written_once()
    {
        string[] rows = [.. IndexRow().Matches(Read("equations-index.md")).Select(match => match.Groups["equation"].Value)];
        Assert.True(rows.Length > 100);
        Assert.Equal(Written.Order(StringComparer.Ordinal), rows.Order(StringComparer.Ordinal));
        Assert.Equal(rows.Length, rows.Distinct(StringComparer.Ordinal).Count());
    }

    [Fact]
    public void Every_equation_stands_in_the_document_the_index_names()
    {
        foreach (Match row in IndexRow().Matches(Read("equations-index.md")))
        {
            string text = Read(row.Groups["file"].Value);
            Assert.True(text.Contains($"**{row.Groups["equation"].Value}", StringComparison.Ordinal), row.Value);
        }
    }

    [Theory]
    [InlineData("equations-index.md")]
    [InlineData("architecture.md")]
    public void Every_path_named_exists(string document)
    {
        string[] named = [.. NamedPath().Matches(Read(document)).Select(match => match.Groups["path"].Value)];
        Assert.NotEmpty(named);
        Assert.DoesNotContain(named, path => !Exists(Path.Combine(Root, path)) && !Exists(Path.Combine(Core, path)));
    }

    [Fact]
    public void Every_equation_the_core_cites_is_written_out()
    {
        string[] files = [.. Directory.GetFiles(Core, "*.cs", SearchOption.AllDirectories).Where(file => !file.Contains($"{Path.DirectorySeparatorChar}obj{Path.DirectorySeparatorChar}", StringComparison.Ordinal))];
        (string File, string Equation)[] cited = [.. files.SelectMany(file => Citation().Matches(File.ReadAllText(file)).Select(match => (Path.GetFileName(file), match.Value)))];
        Assert.True(cited.Length > 100);
        Assert.DoesNotContain(cited, one => !Written.Contains(one.Equation, StringComparer.Ordinal));
    }

    private static bool Exists(string path) => File.Exists(path) || Directory.Exists(path);

    private static string Read(string document) => File.ReadAllText(Path.Combine(Docs, document));

    private static string RootOf([CallerFilePath] string here = "") => Path.GetFullPath(Path.Combine(Path.GetDirectoryName(here)!, "..", "..", ".."));

    [GeneratedRegex(@"\*\*(?<equation>[BCFKNPRS]\.\d+[a-z]?)(?= |\*\*)", RegexOptions.None, 1000)]
    private static partial Regex Heading();

    [GeneratedRegex(@"^\| (?<equation>[BCFKNPRS]\.\d+[a-z]?) \|[^|\n]*\| \[[^\]\n]*\]\((?<file>[^)\n]*)\) \|", RegexOptions.Multiline, 1000)]
    private static partial Regex IndexRow();

    [GeneratedRegex(@"`(?<path>(?:[A-Za-z.]+/)*[A-Za-z.]+\.(?:cs|json|razor|md)|(?:src|tests)/[A-Za-z./]+)`", RegexOptions.None, 1000)]
    private static partial Regex NamedPath();

    // Regulations number their paragraphs likewise, B.01.010: no digit after a point follows a citation.
    [GeneratedRegex(@"(?<![A-Za-z0-9_.])[BCFKNPRS]\.(?:0|[1-9]\d*)[a-z]?(?![\w]|\.\d)", RegexOptions.None, 1000)]
    private static partial Regex Citation();
}
