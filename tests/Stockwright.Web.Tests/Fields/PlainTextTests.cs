using System.Globalization;
using System.Text;
using CsCheck;
using Stockwright.Web.Fields;
using Xunit;

namespace Stockwright.Web.Tests.Fields;

public sealed class PlainTextTests
{
    // Persian "mikhaham" needs its non-joiner, Devanagari half forms their joiner, a family and a flag theirs
    // (The Unicode Standard, sections 9.2 and 12.1; Unicode Technical Standard 51, section 2.2).
    [Theory]
    [InlineData("\u0645\u06CC\u200C\u062E\u0648\u0627\u0647\u0645")]
    [InlineData("\u0915\u094D\u200D\u0937")]
    [InlineData("\U0001F468\u200D\U0001F373")]
    [InlineData("\U0001F469\U0001F3FD\u200D\U0001F373")]
    [InlineData("\U0001F3F3\uFE0F\u200D\U0001F308")]
    [InlineData("Bouillon d’été")]
    public void What_scripts_and_signs_need_stays(string text) => Assert.Equal(text, PlainText.OneLine(text));

    [Theory]
    [InlineData("pot\u200B", "pot")]
    [InlineData("\u202Etop\u202C", "top")]
    [InlineData("a\u2066b\u2069\u200E\u200F\u061C", "ab")]
    [InlineData("\uFEFF \u2060", "")]
    [InlineData("10\u200D L", "10 L")]
    [InlineData("\u200Dpot\u200C", "pot")]
    [InlineData(" a\tb\r\nc ", "a b  c")]
    public void What_shows_nothing_goes(string text, string kept) => Assert.Equal(kept, PlainText.OneLine(text));

    [Fact]
    public void Lines_stay_in_notes() => Assert.Equal("one\ntwo", PlainText.Lines("\u200Bone\r\ntwo\uFEFF"));

    // Bidi_Control of the Unicode character database (PropList.txt), written out.
    [Fact]
    public void No_control_of_direction_is_ever_left_and_cleaning_twice_changes_nothing() => Gen.OneOf(
            Gen.OneOfConst("\u061C", "\u200E", "\u200F", "\u202A", "\u202B", "\u202C", "\u202D", "\u202E", "\u2066", "\u2067", "\u2068", "\u2069", "\u200B", "\uFEFF", "\u200C", "\u200D", "a", "\u0645", " ", "\n"),
            Gen.String[Gen.Char, 0, 3])
        .List[0, 12].Select(string.Concat).Sample(
            text =>
            {
                string once = PlainText.Lines(text);
                return string.Equals(once, PlainText.Lines(once), StringComparison.Ordinal)
                    && once.EnumerateRunes().All(rune => Rune.GetUnicodeCategory(rune) is not UnicodeCategory.Control || rune.Value == '\n')
                    && once.IndexOfAny(['\u061C', '\u200E', '\u200F', '\u202A', '\u202B', '\u202C', '\u202D', '\u202E', '\u2066', '\u2067', '\u2068', '\u2069', '\u200B', '\uFEFF']) < 0;
            },
            iter: 2000);
}
