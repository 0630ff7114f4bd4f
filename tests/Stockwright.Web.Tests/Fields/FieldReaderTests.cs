using Stockwright.Measures;
using Stockwright.Web.Fields;
using Xunit;

namespace Stockwright.Web.Tests.Fields;

/// <summary>What a refused number is told can be typed.</summary>
public sealed class FieldReaderTests
{
    // An inch is 2.54 cm exactly (international yard and pound agreement, 1959): 40 cm are 15.748 in, a metre 39.370 in, 5 cm 1.9685 in.
    [Theory]
    [InlineData(0.05, 0.4, "1.97 to 15.74 in")]
    [InlineData(0.01, 1, "0.394 to 39.3 in")]
    [InlineData(0.0254, 0.254, "1 to 10 in")]
    public void A_range_in_inches_is_rounded_into_the_range_and_its_ends_are_taken(double least, double most, string range)
    {
        FieldReader refused = new(TypedForm.Empty.With("deep", "999"), UnitSystem.UsCustomary);
        Assert.Null(refused.Number("deep", "Depth", Measure.PotLength, least, most));
        InputProblem problem = Assert.Single(refused.Problems);
        Assert.EndsWith($"It can be {range}.", problem.Message, StringComparison.Ordinal);
        foreach (string end in range[..^3].Split(" to "))
        {
            FieldReader taken = new(TypedForm.Empty.With("deep", end), UnitSystem.UsCustomary);
            Assert.NotNull(taken.Number("deep", "Depth", Measure.PotLength, least, most));
            Assert.Empty(taken.Problems);
        }
    }
}
