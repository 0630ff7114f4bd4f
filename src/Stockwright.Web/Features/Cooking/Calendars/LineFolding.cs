using System.Text;

namespace Stockwright.Web.Features.Cooking.Calendars;

/// <summary>
/// Folds content lines (RFC 5545, 3.1): at most 75 octets, no character cut in two. The library folds too, but between the halves
/// of characters beyond the basic plane, which loses them.
/// </summary>
internal static class LineFolding
{
    private const int MostOctets = 75;
    private const string Break = "\r\n";

    public static string Refold(string calendar)
    {
        string unfolded = calendar.Replace(Break + " ", "", StringComparison.Ordinal).Replace(Break + "\t", "", StringComparison.Ordinal);
        StringBuilder folded = new(unfolded.Length + (unfolded.Length / 32));
        foreach (string line in unfolded.Split(Break, StringSplitOptions.RemoveEmptyEntries))
        {
            int octets = 0;
            foreach (Rune rune in line.EnumerateRunes())
            {
                if (octets + rune.Utf8SequenceLength > MostOctets)
                {
                    folded.Append(Break).Append(' ');
                    octets = 1;
                }

                folded.Append(rune);
                octets += rune.Utf8SequenceLength;
            }

            folded.Append(Break);
        }

        return folded.ToString();
    }
}
