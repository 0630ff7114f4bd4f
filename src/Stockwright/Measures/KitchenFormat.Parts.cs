using System.Globalization;

namespace Stockwright.Measures;

/// <content>Numbers, fractions and the compound US units.</content>
public static partial class KitchenFormat
{
    /// <summary>A number to the nearest half, quarter, eighth or sixteenth: "2⅜", "½", "3/16".</summary>
    /// <param name="value">Any finite number.</param>
    /// <param name="denominator">A power of two: 1, 2, 4, 8 or 16.</param>
    /// <exception cref="ArgumentOutOfRangeException">The number is not finite.</exception>
    public static string Fraction(double value, int denominator)
    {
        if (!double.IsFinite(value))
        {
            throw new ArgumentOutOfRangeException(nameof(value), value, "An amount is a finite number.");
        }

        long parts = (long)Math.Round(Math.Abs(value) * denominator, MidpointRounding.AwayFromZero);
        string sign = value < 0 && parts > 0 ? "−" : "";
        long whole = parts / denominator;
        long top = parts % denominator;
        if (top == 0)
        {
            return sign + whole.ToString(CultureInfo.InvariantCulture);
        }

        int bottom = denominator;
        while (top % 2 == 0)
        {
            top /= 2;
            bottom /= 2;
        }

        string glyph = (top, bottom) switch
        {
            (1, 2) => "½",
            (1, 4) => "¼",
            (3, 4) => "¾",
            (1, 8) => "⅛",
            (3, 8) => "⅜",
            (5, 8) => "⅝",
            (7, 8) => "⅞",
            _ => string.Create(CultureInfo.InvariantCulture, $"{top}/{bottom}"),
        };
        bool isSpelled = bottom > 8;
        string number = whole.ToString(CultureInfo.InvariantCulture);
        return sign + (whole == 0 ? glyph : isSpelled ? number + Gap + glyph : number + glyph);
    }

    private static string Unit(string number, string unit) => number + Gap + unit;

    private static string Unit(double value, string unit) => Number(value) + Gap + unit;

    private static string Number(double value)
    {
        if (!double.IsFinite(value))
        {
            throw new ArgumentOutOfRangeException(nameof(value), value, "An amount is a finite number.");
        }

        // Three decimals serve everything a kitchen weighs; smaller amounts keep three digits.
        string format = value != 0 && Math.Abs(value) < 0.01 ? "0.######" : "0.###";
        string text = value.ToString(format, CultureInfo.InvariantCulture);
        return string.Equals(text, "-0", StringComparison.Ordinal) ? "0" : text.Replace('-', '−');
    }

    /// <summary>Rounds to a number of significant digits; whole numbers keep theirs beyond it as zeros.</summary>
    private static double Significant(double value, int digits)
    {
        if (value == 0 || !double.IsFinite(value))
        {
            return value;
        }

        int exponent = (int)Math.Floor(Math.Log10(Math.Abs(value))) - digits + 1;
        double step = Math.Pow(10, Math.Abs(exponent));
        return exponent < 0
            ? Math.Round(value * step, MidpointRounding.AwayFromZero) / step
            : Math.Round(value / step, MidpointRounding.AwayFromZero) * step;
    }

    private static bool IsWhole(double value) => Math.Abs(value - Math.Round(value)) < Tiny * Math.Max(1, Math.Abs(value));

    private static string Fine(double value) => IsWhole(value * 8) ? Fraction(value, 8) : Number(Math.Round(value, 4));

    private static string Ounces(double ounces)
    {
        if (ounces < 0)
        {
            return "−" + Ounces(-ounces);
        }

        if (ounces < 16 - Tiny)
        {
            return Unit(Fine(ounces), "oz");
        }

        if (ounces >= 200 - Tiny)
        {
            return Unit(Fraction(ounces / 16, 2), "lb");
        }

        int pounds = (int)Math.Floor((ounces + Tiny) / 16);
        double rest = ounces - (16.0 * pounds);
        return rest < 0.25 ? Unit(pounds, "lb") : Unit(pounds, "lb") + Gap + Unit(Fraction(rest, 4), "oz");
    }

    private static string Teaspoons(double teaspoons)
    {
        if (teaspoons < 0)
        {
            return "−" + Teaspoons(-teaspoons);
        }

        return teaspoons switch
        {
            0 => Unit(0, "qt"),
            < 3 - Tiny => Unit(Fine(teaspoons), "tsp"),
            >= 19_200 - 1e-4 => Unit(Math.Round(teaspoons / 768), "gal"),
            _ when IsWhole(teaspoons / 48) && teaspoons >= 192 => Unit(Fraction(teaspoons / 192, 4), "qt"),
            _ when teaspoons > 192 && IsWhole(teaspoons / 12) => Mixed(teaspoons, 192, "qt", 48, 4, Cups),
            _ when IsWhole(teaspoons / 12) => Cups(teaspoons / 48),
            >= 39 - Tiny => Unit(Fraction(teaspoons / 6, 4), "fl oz"),
            _ => Mixed(teaspoons, 3, "tbsp", 1, 8, rest => Unit(Fine(rest), "tsp")),
        };

        static string Cups(double cups) => Unit(Fraction(cups, 4), cups > 1 + Tiny ? "cups" : "cup");
    }

    /// <summary>A whole number of a large unit and the rest in a small one, as it would be measured out.</summary>
    private static string Mixed(double value, double large, string largeUnit, double small, int denominator, Func<double, string> restText)
    {
        double whole = Math.Floor((value + Tiny) / large);
        double rest = (value - (whole * large)) / small;
        string first = Unit(whole, largeUnit);
        return rest * denominator < 0.5 ? first : $"{first} + {restText(rest)}";
    }
}
