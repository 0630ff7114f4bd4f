using System.Collections.Frozen;
using System.Text;

namespace Stockwright.Storage;

/// <summary>Names that stand in links: lower-case ASCII letters, digits and hyphens, made once and never changed.</summary>
public static class StableNames
{
    private const int Longest = 48;

    /// <summary>Words that stand for something else in links: a page that adds, and a pot given by its size.</summary>
    private static readonly FrozenSet<string> Reserved = FrozenSet.Create(StringComparer.Ordinal, "new", "own");

    /// <summary>Makes a stable name from what the cook calls the thing.</summary>
    /// <param name="name">What the cook calls it.</param>
    /// <param name="fallback">Used when nothing of the name can stand in a link, for instance <c>pot</c>.</param>
    /// <param name="taken">Names already in use.</param>
    public static string Make(string name, string fallback, IReadOnlySet<string> taken)
    {
        ArgumentNullException.ThrowIfNull(name);
        ArgumentNullException.ThrowIfNull(taken);

        StringBuilder built = new();
        foreach (char letter in name)
        {
            if (char.IsAsciiLetterOrDigit(letter))
            {
                built.Append(char.ToLowerInvariant(letter));
            }
            else if (built.Length > 0 && built[^1] != '-')
            {
                built.Append('-');
            }

            if (built.Length == Longest)
            {
                break;
            }
        }

        string plain = built.ToString().Trim('-');
        plain = plain.Length == 0 ? fallback : plain;
        string unique = plain;
        for (int number = 2; taken.Contains(unique) || Reserved.Contains(unique); number++)
        {
            unique = $"{plain}-{number}";
        }

        return unique;
    }
}
