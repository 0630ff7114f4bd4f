using System.Globalization;
using CsCheck;
using Stockwright.Web.Fields;
using Xunit;

namespace Stockwright.Web.Tests.Fields;

/// <summary>
/// Numbers as cooks write them. The decimal sign may be point or comma: ISO 80000-1:2009 clause 7.3.2 allows either, and asks
/// that groups be set apart by a space and never by point or comma, which is why group separators are refused.
/// </summary>
public class KitchenNumberTests
{
    [Theory]
    [InlineData("2.5", 2.5)]
    [InlineData("2,5", 2.5)]
    [InlineData(" 2,50 ", 2.5)]
    [InlineData(".5", 0.5)]
    [InlineData(",5", 0.5)]
    [InlineData("5.", 5)]
    [InlineData("0,125", 0.125)]
    [InlineData("1.125", 1.125)]
    [InlineData("1000", 1000)]
    [InlineData("1/2", 0.5)]
    [InlineData("1 1/2", 1.5)]
    [InlineData("3 / 4", 0.75)]
    [InlineData("½", 0.5)]
    [InlineData("1½", 1.5)]
    [InlineData("2 ¾", 2.75)]
    [InlineData("-3", -3)]
    [InlineData("\u22123", -3)]
    [InlineData("+4", 4)]
    [InlineData("\u00A07\u00A0", 7)]
    public void Reads_what_a_cook_writes(string text, double expected)
    {
        Assert.True(KitchenNumber.TryParse(text, out double value, out string problem), problem);
        Assert.Equal(expected, value, 1e-15);
        Assert.Empty(problem);
    }

    [Theory]
    [InlineData("")]
    [InlineData("   ")]
    [InlineData("abc")]
    [InlineData("2.5.1")]
    [InlineData("1.000,5")]
    [InlineData("1,000,5")]
    [InlineData("1 000")]
    [InlineData("1'000")]
    [InlineData("1e3")]
    [InlineData("1E3")]
    [InlineData("NaN")]
    [InlineData("Infinity")]
    [InlineData("-∞")]
    [InlineData("0x10")]
    [InlineData("1/0")]
    [InlineData("1 5/2")]
    [InlineData("/2")]
    [InlineData("--1")]
    [InlineData("-")]
    [InlineData(".")]
    [InlineData(",")]
    [InlineData("x½")]
    [InlineData("٣")]
    [InlineData("99999999999")]
    [InlineData("9999999999999999999999999999999999999999")]
    public void Refuses_the_rest_with_a_reason(string text)
    {
        Assert.False(KitchenNumber.TryParse(text, out double value, out string problem));
        Assert.Equal(0, value);
        Assert.NotEmpty(problem);
        Assert.True(problem.Length < 120, problem);
    }

    [Theory]
    [InlineData("1,500")]
    [InlineData("12,000")]
    [InlineData("-5,280")]
    public void Refuses_to_guess_between_a_decimal_comma_and_a_thousand(string text)
    {
        Assert.False(KitchenNumber.TryParse(text, out _, out string problem));
        Assert.Contains("could mean", problem, StringComparison.Ordinal);
    }

    [Fact]
    public void Never_throws_and_never_reads_anything_that_is_not_finite() => Gen.String[0, 40].Sample(text =>
    {
        bool reads = KitchenNumber.TryParse(text, out double value, out string problem);
        Assert.True(double.IsFinite(value));
        Assert.Equal(reads, problem.Length == 0);
    }, iter: 5000);

    [Fact]
    public void Reads_back_what_it_writes() => Gen.Double[-1e6, 1e6].Sample(value =>
    {
        string text = KitchenNumber.Write(value);
        Assert.DoesNotContain("E", text, StringComparison.OrdinalIgnoreCase);
        Assert.True(KitchenNumber.TryParse(text, out double read, out _) || text.Length > 24, text);
        Assert.True(text.Length > 24 || Math.Abs(read - value) <= (1e-9 * Math.Abs(value)) + 1e-13, text);
    }, iter: 5000);

    [Theory]
    [InlineData(9.5, 1e-10, "9.5")]
    [InlineData(8.453506, 1e-4, "8.454")]
    [InlineData(0, 1e-10, "0")]
    [InlineData(1200000, 1e-10, "1200000")]
    public void Writes_as_few_decimals_as_will_do(double value, double tolerance, string expected) =>
        Assert.Equal(expected, KitchenNumber.Write(value, tolerance));

    [Fact]
    public void Shows_a_typed_text_short_and_without_control_characters()
    {
        string quoted = KitchenNumber.Quote("a\u0000b\r\n" + new string('x', 500) + "\ud800");
        Assert.Equal("'a b  " + new string('x', 15) + "…'", quoted);
        Assert.Equal("'\ufffd'", KitchenNumber.Quote("\ud800"));
        Assert.Equal(CultureInfo.InvariantCulture, CultureInfo.CurrentCulture);
    }
}
