using System.Globalization;
using System.Text.RegularExpressions;

namespace Stockwright.Web.Tests.Fuzz.Shared;

/// <summary>A range as the app itself states it to whoever typed something outside it.</summary>
internal sealed partial record StatedRange(double Low, double High, string LowText, string HighText)
{
    /// <summary>The range in a sentence like "It can be 0.5 to 200 L" or "must lie between 0 and 720"; null when it states none.</summary>
    public static StatedRange? Read(string sentence)
    {
        Match match = Sentence().Match(sentence);
        if (!match.Success)
        {
            return null;
        }

        string low = Plain(match.Groups["low"].Value);
        string high = Plain(match.Groups["high"].Value);
        return double.TryParse(low, NumberStyles.Float, CultureInfo.InvariantCulture, out double from)
            && double.TryParse(high, NumberStyles.Float, CultureInfo.InvariantCulture, out double to) && from < to
            ? new StatedRange(from, to, low, high)
            : null;
    }

    /// <summary>A number inside, with few digits; whole where the ends are whole and far apart.</summary>
    public string Inside(Random random)
    {
        // Half of them near the lower end by ratio: ranges span decades.
        double share = random.NextDouble();
        double value = Low > 0 && random.Next(2) == 0 ? Low * Math.Pow(High / Low, share) : Low + (share * (High - Low));
        string text = High - Low > 20 ? Math.Round(value).ToString("0", CultureInfo.InvariantCulture) : value.ToString("0.###", CultureInfo.InvariantCulture);
        return double.Parse(text, CultureInfo.InvariantCulture) >= Low && double.Parse(text, CultureInfo.InvariantCulture) <= High ? text : LowText;
    }

    private static string Plain(string number) => number.Replace('\u2212', '-').TrimEnd('.');

    [GeneratedRegex(@"(can be|between|lies?|from) (?<low>[-\u2212]?\d[\d.]*)[\s\u00A0]?(°?[A-Za-z%/]+[\s\u00A0]?)?(to|and) (?<high>[-\u2212]?\d[\d.]*)", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Sentence();
}
