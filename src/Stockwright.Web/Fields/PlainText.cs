using System.Globalization;
using System.Text;

namespace Stockwright.Web.Fields;

/// <summary>
/// Makes what was typed as a name or a note fit to be kept. Dropped are letters that show nothing or turn the line round: two pots must
/// not look alike, and a name must not turn the words beside it (The Unicode Standard, sections 23.2 "Layout Controls" and 23.3
/// "Deprecated Format Characters"; Unicode Technical Report 36 on why). The two joiners stay where they have a meaning, between two
/// letters or two signs: Persian and the Indic scripts need them, and so do the emoji that are made of several.
/// </summary>
internal static class PlainText
{
    private const int NonJoiner = 0x200C;
    private const int Joiner = 0x200D;

    /// <summary>One line, trimmed; line ends and control characters become blanks.</summary>
    public static string OneLine(string text) => Clean(text, keepLines: false);

    /// <summary>Some lines, trimmed, parted by line feeds.</summary>
    public static string Lines(string text) => Clean(text.ReplaceLineEndings("\n"), keepLines: true);

    private static string Clean(string text, bool keepLines)
    {
        // Broken halves of letters cannot be stored everywhere; enumerating replaces them.
        Rune[] seen = [.. text.EnumerateRunes().Where(rune => !IsUnseen(rune.Value))];
        StringBuilder clean = new(text.Length);
        for (int index = 0; index < seen.Length; index++)
        {
            Rune rune = seen[index];
            if (rune.Value is NonJoiner or Joiner)
            {
                if (index > 0 && index + 1 < seen.Length && Joins(seen[index - 1]) && Joins(seen[index + 1]))
                {
                    clean.Append(rune);
                }
            }
            else if (Rune.IsControl(rune) && !(keepLines && rune.Value == '\n'))
            {
                clean.Append(' ');
            }
            else
            {
                clean.Append(rune);
            }
        }

        return clean.ToString().Trim();
    }

    private static bool IsUnseen(int codePoint) => codePoint is
        0x00AD // soft hyphen
        or 0x061C or 0x200E or 0x200F or (>= 0x202A and <= 0x202E) // marks of direction, embeddings and overrides
        or 0x180E or 0x200B or 0xFEFF // spaces of no width
        or (>= 0x2060 and <= 0x206F) // word joiner, unseen operators, isolates, deprecated controls
        or (>= 0xFFF9 and <= 0xFFFB); // annotation

    private static bool Joins(Rune rune) => Rune.IsLetter(rune) || Rune.GetUnicodeCategory(rune) is
        UnicodeCategory.NonSpacingMark or UnicodeCategory.SpacingCombiningMark or UnicodeCategory.OtherSymbol or UnicodeCategory.ModifierSymbol;
}
