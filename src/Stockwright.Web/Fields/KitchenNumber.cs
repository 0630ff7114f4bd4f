using System.Globalization;
using System.Text;

namespace Stockwright.Web.Fields;

/// <summary>
/// Reads a number as cooks write it: <c>2.5</c>, <c>2,5</c>, <c>1/2</c>, <c>1 1/2</c>, <c>1½</c>. Never a group separator,
/// an exponent or a word. What could be read two ways is refused rather than guessed.
/// </summary>
public static class KitchenNumber
{
    /// <summary>Largest magnitude read; beyond it no kitchen quantity lies.</summary>
    public const double Largest = 1e9;

    private const int LongestText = 24;

    private static readonly Dictionary<char, double> VulgarFractions = new()
    {
        ['½'] = 1.0 / 2,
        ['¼'] = 1.0 / 4,
        ['¾'] = 3.0 / 4,
        ['⅓'] = 1.0 / 3,
        ['⅔'] = 2.0 / 3,
        ['⅕'] = 1.0 / 5,
        ['⅖'] = 2.0 / 5,
        ['⅗'] = 3.0 / 5,
        ['⅘'] = 4.0 / 5,
        ['⅙'] = 1.0 / 6,
        ['⅚'] = 5.0 / 6,
        ['⅛'] = 1.0 / 8,
        ['⅜'] = 3.0 / 8,
        ['⅝'] = 5.0 / 8,
        ['⅞'] = 7.0 / 8,
    };

    /// <summary>Reads a number.</summary>
    /// <param name="text">As typed.</param>
    /// <param name="value">The number, or zero.</param>
    /// <param name="problem">What is wrong in the cook's words, or the empty string.</param>
    public static bool TryParse(string? text, out double value, out string problem)
    {
        value = 0;
        problem = "";
        string trimmed = (text ?? "").Trim();
        if (trimmed.Length == 0)
        {
            problem = "A number is missing here.";
            return false;
        }

        if (trimmed.Length > LongestText)
        {
            problem = $"{Quote(trimmed)} is too long for a number here.";
            return false;
        }

        double sign = 1;
        string body = trimmed;
        if (body[0] is '+' or '-' or '\u2212')
        {
            sign = body[0] == '+' ? 1 : -1;
            body = body[1..].TrimStart();
        }

        if (IsAmbiguous(body))
        {
            string plain = body.Replace(",", "", StringComparison.Ordinal);
            string point = body.Replace(',', '.');
            problem = $"{Quote(trimmed)} could mean {point} or {plain}. Write it as {point} or as {plain}.";
            return false;
        }

        if (!TryReadUnsigned(body, out double magnitude))
        {
            problem = $"{Quote(trimmed)} is not a number. Write it like 2.5 or 2,5.";
            return false;
        }

        if (magnitude > Largest)
        {
            problem = $"{Quote(trimmed)} is far too large.";
            return false;
        }

        value = sign * magnitude;
        return true;
    }

    /// <summary>A typed text in quotation marks, shortened, without control characters, for use in a message.</summary>
    public static string Quote(string text)
    {
        StringBuilder shown = new("'");
        foreach (Rune rune in text.EnumerateRunes().Take(20))
        {
            shown.Append(Rune.IsControl(rune) ? " " : rune.ToString());
        }

        return shown.Append(text.Length > 20 ? "…'" : "'").ToString();
    }

    // 1,500 is one and a half to one cook and fifteen hundred to another; 0,500 and 1,50 can only be a decimal comma.
    private static bool IsAmbiguous(string body)
    {
        int comma = body.IndexOf(',', StringComparison.Ordinal);
        return comma is >= 1 and <= 3 && body[0] != '0' && body.Length == comma + 4
            && body.All(letter => char.IsAsciiDigit(letter) || letter == ',') && body.LastIndexOf(',') == comma;
    }

    private static bool TryReadUnsigned(string body, out double value)
    {
        value = 0;
        if (body.Length == 0)
        {
            return false;
        }

        if (VulgarFractions.TryGetValue(body[^1], out double part))
        {
            string whole = body[..^1].TrimEnd();
            if (whole.Length == 0)
            {
                value = part;
                return true;
            }

            return AddWhole(whole, part, out value);
        }

        int slash = body.IndexOf('/', StringComparison.Ordinal);
        return slash < 0 ? TryReadDecimal(body, out value) : TryReadFraction(body, slash, out value);
    }

    private static bool TryReadFraction(string body, int slash, out double value)
    {
        value = 0;
        string left = body[..slash].TrimEnd();
        string right = body[(slash + 1)..].TrimStart();
        int space = left.LastIndexOf(' ');
        string top = left[(space + 1)..];
        if (!TryReadWhole(top, out double numerator) || !TryReadWhole(right, out double denominator) || denominator == 0)
        {
            return false;
        }

        double part = numerator / denominator;
        if (space < 0)
        {
            value = part;
            return true;
        }

        return part < 1 && AddWhole(left[..space].TrimEnd(), part, out value);
    }

    private static bool AddWhole(string whole, double part, out double value)
    {
        bool isWhole = TryReadWhole(whole, out value);
        value += part;
        return isWhole;
    }

    private static bool TryReadWhole(string digits, out double value)
    {
        value = 0;
        return digits.Length > 0 && digits.All(char.IsAsciiDigit)
            && double.TryParse(digits, NumberStyles.None, CultureInfo.InvariantCulture, out value);
    }

    private static bool TryReadDecimal(string body, out double value)
    {
        value = 0;
        string pointed = body.Replace(',', '.');
        int point = pointed.IndexOf('.', StringComparison.Ordinal);
        return pointed.Any(char.IsAsciiDigit)
            && pointed.All(letter => char.IsAsciiDigit(letter) || letter == '.')
            && (point < 0 || pointed.IndexOf('.', point + 1) < 0)
            && double.TryParse(pointed, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out value)
            && double.IsFinite(value);
    }

    /// <summary>Writes a number with the fewest decimals that stay within a relative tolerance; never an exponent.</summary>
    public static string Write(double value, double tolerance = 1e-10)
    {
        for (int decimals = 0; decimals < 14; decimals++)
        {
            double rounded = Math.Round(value, decimals);
            if (Math.Abs(rounded - value) <= tolerance * Math.Abs(value))
            {
                return (rounded == 0 ? 0 : rounded).ToString("0.##############", CultureInfo.InvariantCulture);
            }
        }

        return value.ToString("0.##############", CultureInfo.InvariantCulture);
    }
}
