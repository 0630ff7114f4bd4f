using System.Globalization;
using Xunit;

namespace Stockwright.Tests.Larder;

/// <summary>Collects where a table strays from another, so that one run names all of it; nothing compared is a failure too.</summary>
internal sealed class Differences
{
    private readonly List<string> lines = [];
    private int compared;

    public void Compare(string what, double expected, double found, double tolerance)
    {
        compared++;
        if (!(Math.Abs(expected - found) <= tolerance))
        {
            lines.Add(string.Create(CultureInfo.InvariantCulture, $"{what}: {expected:0.####} expected, {found:0.####} in the larder"));
        }
    }

    public void Add(string line) => lines.Add(line);

    public void AssertNone(int atLeast)
    {
        Assert.True(lines.Count == 0, string.Join(Environment.NewLine, lines));
        Assert.True(compared >= atLeast, $"only {compared} figures compared");
    }
}
