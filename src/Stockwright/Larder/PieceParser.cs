using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using UnitsNet;

namespace Stockwright.Larder;

/// <summary>Reads counts the way cooks type them: <c>3 medium onions</c>, <c>2 large</c>, <c>1 1/2</c>, <c>½ stalk</c>.</summary>
internal static class PieceParser
{
    /// <summary>No kitchen counts more pieces than this.</summary>
    private const double MostPieces = 100_000;

    private static readonly char[] Blanks = [' ', '\t', '\u00A0', '\u202F', '-'];

    private static readonly Dictionary<string, string> ShortForms = new(StringComparer.OrdinalIgnoreCase)
    {
        ["tbsp"] = "tablespoon",
        ["tbsps"] = "tablespoon",
        ["tsp"] = "teaspoon",
        ["tsps"] = "teaspoon",
        ["med"] = "medium",
        ["lg"] = "large",
        ["sm"] = "small",
    };

    private static readonly HashSet<string> Fillers = new(StringComparer.OrdinalIgnoreCase) { "of", "a", "an", "the", "whole", "piece", "pieces", "fresh", "raw" };

    private static readonly Dictionary<char, double> FractionSigns = new()
    {
        ['½'] = 1.0 / 2,
        ['¼'] = 1.0 / 4,
        ['¾'] = 3.0 / 4,
        ['⅓'] = 1.0 / 3,
        ['⅔'] = 2.0 / 3,
        ['⅛'] = 1.0 / 8,
    };

    private static readonly Dictionary<string, double> NumberWords = new(StringComparer.OrdinalIgnoreCase)
    {
        ["a"] = 1,
        ["an"] = 1,
        ["half"] = 0.5,
        ["one"] = 1,
        ["two"] = 2,
        ["three"] = 3,
        ["four"] = 4,
        ["five"] = 5,
        ["six"] = 6,
    };

    /// <summary>Reads a count of pieces as a mass ready for the pot.</summary>
    /// <param name="text">What the cook typed; a number with <c>.</c> or <c>,</c> as decimal sign or a simple fraction, then the piece.</param>
    /// <param name="ingredient">The ingredient counted.</param>
    /// <param name="trimmed">Mass after peeling and trimming.</param>
    /// <returns>False when the number or the piece is not understood.</returns>
    public static bool TryParse([NotNullWhen(true)] string? text, Ingredient ingredient, out Mass trimmed)
    {
        bool found = TryParseCount(text, ingredient, out PieceCount? count);
        trimmed = found ? count!.TrimmedMass(ingredient) : Mass.Zero;
        return found;
    }

    /// <summary>Reads a count of pieces; without a piece's name the ingredient's usual piece is meant.</summary>
    public static bool TryParseCount([NotNullWhen(true)] string? text, Ingredient ingredient, [NotNullWhen(true)] out PieceCount? count)
    {
        ArgumentNullException.ThrowIfNull(ingredient);
        count = null;
        if (text is null || ingredient.Pieces.Count == 0)
        {
            return false;
        }

        // "10 cm piece" is one piece, not ten.
        string lone = text.Trim();
        if (ingredient.Pieces.FirstOrDefault(piece => char.IsAsciiDigit(piece.Name[0]) && lone.StartsWith(piece.Name, StringComparison.OrdinalIgnoreCase)) is not null)
        {
            text = "1 " + lone;
        }

        List<string> words = [.. text.Split(Blanks, StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries)];
        if (text.TrimStart().StartsWith('-') || !TryTakeNumber(words, out double number) || !(number > 0 && number <= MostPieces))
        {
            return false;
        }

        if (FindPiece(words, ingredient) is not { } piece)
        {
            return false;
        }

        count = new PieceCount(number, piece);
        return true;
    }

    private static Piece? FindPiece(List<string> words, Ingredient ingredient)
    {
        List<string> asked = [.. words.Where(word => !Fillers.Contains(word)).Select(word => ShortForms.GetValueOrDefault(word, word))];
        HashSet<string> nameWords = WordsOf(ingredient.Name);

        // "3 medium onions": every word belongs to the piece or to the ingredient; the piece that holds most of them is meant.
        Piece? best = null;
        int bestHits = -1;
        foreach (Piece piece in ingredient.Pieces)
        {
            PieceSize? size = PieceSize.Of(piece);
            HashSet<string> pieceWords = WordsOf(size?.Name ?? piece.Name);
            pieceWords.UnionWith(WordsOf(size?.Plural ?? piece.Plural));
            List<string> rest = size is null ? asked : WithoutSize(asked, size);
            bool understood = rest.TrueForAll(word => Holds(pieceWords, word) || Holds(nameWords, word));
            int hits = rest.Count(word => Holds(pieceWords, word)) + asked.Count - rest.Count;
            if (understood && hits > bestHits)
            {
                best = piece;
                bestHits = hits;
            }
        }

        return best;
    }

    /// <summary>A size counts as a whole, number and unit, in either measure: "6 oz" of a can of 6 oz is a weight, not six cans.</summary>
    private static List<string> WithoutSize(List<string> asked, PieceSize size)
    {
        foreach (string said in (string[])[size.Metric, size.UsCustomary])
        {
            string[] parts = said.Split(Blanks, StringSplitOptions.RemoveEmptyEntries);
            for (int i = 0; i + parts.Length <= asked.Count; i++)
            {
                if (parts.SequenceEqual(asked.Skip(i).Take(parts.Length), StringComparer.OrdinalIgnoreCase))
                {
                    return [.. asked.Take(i), .. asked.Skip(i + parts.Length)];
                }
            }
        }

        return asked;
    }

    private static bool Holds(HashSet<string> words, string word) =>
        words.Contains(word)
        || words.Contains(word + "s")
        || (word.EndsWith("es", StringComparison.OrdinalIgnoreCase) && words.Contains(word[..^2]))
        || (word.EndsWith('s') && words.Contains(word[..^1]));

    private static HashSet<string> WordsOf(string name) =>
        new(name.Split([.. Blanks, ',', '(', ')'], StringSplitOptions.RemoveEmptyEntries), StringComparer.OrdinalIgnoreCase);

    /// <summary>Takes a number off the front: <c>3</c>, <c>1.5</c>, <c>1,5</c>, <c>1/2</c>, <c>1 1/2</c>, <c>1½</c>, <c>½</c>, <c>two</c>, <c>half a</c>.</summary>
    private static bool TryTakeNumber(List<string> words, out double number)
    {
        number = 0;
        if (words.Count == 0)
        {
            return false;
        }

        string first = words[0];
        if (NumberWords.TryGetValue(first, out number))
        {
            words.RemoveAt(0);
            return true;
        }

        if (TryFraction(first, out number))
        {
            words.RemoveAt(0);
            return true;
        }

        if (FractionSigns.TryGetValue(first[^1], out double sign) && TryWhole(first[..^1], out double wholeBefore))
        {
            number = wholeBefore + sign;
            words.RemoveAt(0);
            return true;
        }

        if (!TryDecimal(first, out number))
        {
            return false;
        }

        words.RemoveAt(0);
        if (words.Count > 0 && TryFraction(words[0], out double more))
        {
            // "2.5 1/2" is a slip, not a number.
            if (number != Math.Floor(number) || more >= 1)
            {
                return false;
            }

            number += more;
            words.RemoveAt(0);
        }

        return true;
    }

    private static bool TryFraction(string word, out double number)
    {
        if (word.Length == 1 && FractionSigns.TryGetValue(word[0], out number))
        {
            return true;
        }

        number = 0;
        string[] parts = word.Split('/', '⁄');
        if (parts.Length != 2 || !TryWhole(parts[0], out double top) || !TryWhole(parts[1], out double bottom) || bottom == 0)
        {
            return false;
        }

        number = top / bottom;
        return true;
    }

    private static bool TryWhole(string word, out double number) => double.TryParse(word, NumberStyles.None, CultureInfo.InvariantCulture, out number);

    /// <summary>One decimal sign, point or comma; never a group separator.</summary>
    private static bool TryDecimal(string word, out double number) =>
        double.TryParse(word.Replace(',', '.'), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out number);
}
