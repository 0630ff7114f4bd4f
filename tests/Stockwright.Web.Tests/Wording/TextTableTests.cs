using System.Reflection;
using System.Text.RegularExpressions;
using Stockwright.Evidence;
using Stockwright.Planning;
using Stockwright.Web.Features.Planning;
using Stockwright.Web.Wording;
using UnitsNet;
using Xunit;
using UnitSystem = Stockwright.Measures.UnitSystem;

namespace Stockwright.Web.Tests.Wording;

/// <summary>Every code of the core has its text, in the measures of who reads it.</summary>
public sealed partial class TextTableTests
{
    public static TheoryData<ProblemCode> ProblemCodes => [.. Enum.GetValues<ProblemCode>()];

    public static TheoryData<string> Parts => [.. typeof(PlanPart).GetFields().Select(part => (string)part.GetRawConstantValue()!)];

    [Theory]
    [MemberData(nameof(ProblemCodes))]
    public void Every_problem_has_a_text(ProblemCode code)
    {
        FieldInfo field = typeof(ProblemCode).GetField(code.ToString())!;
        Check(units => TextTable.Of(new Problem("", code, Samples(field)), units), TextTable.Text($"Problem.{code}", [], UnitSystem.Metric), field);
    }

    [Theory]
    [MemberData(nameof(Parts))]
    public void Every_part_of_a_request_has_its_field(string part) => Assert.NotEmpty(PartFields.Of(part, 1, UnitSystem.Metric));

    [Theory]
    [InlineData(UnitSystem.Metric, "This pot is 28 cm across, too wide for the oven's shelf of 28 cm by 28 cm: take a narrower pot, or simmer on the hob.")]
    [InlineData(UnitSystem.UsCustomary, "This pot is 11 in across, too wide for the oven's shelf of 11 in by 11 in: take a narrower pot, or simmer on the hob.")]
    public void A_figure_is_written_in_the_readers_measures(UnitSystem units, string text)
    {
        Figure wide = Figure.Of(Length.FromCentimeters(28));
        Assert.Equal(text, TextTable.Of(new Problem(PlanPart.SimmersInOven, ProblemCode.PotTooWideForOven, wide, wide, wide), units).Replace('\u00A0', ' '));
    }

    [Fact]
    public void A_text_that_is_not_there_is_an_error() => Assert.Throws<ArgumentException>(() => TextTable.Text("Problem.None", [], UnitSystem.Metric));

    private static void Check(Func<UnitSystem, string> written, string text, FieldInfo code)
    {
        Assert.Equal(Samples(code).Length, Placeholder.Matches(text).Select(match => match.Groups["place"].Value).Distinct(StringComparer.Ordinal).Count());
        Assert.DoesNotMatch(Unit, Placeholder.Replace(text, ""));
        Assert.All(Enum.GetValues<UnitSystem>(), units =>
        {
            string sentence = written(units);
            Assert.EndsWith(".", sentence.TrimEnd(), StringComparison.Ordinal);
            Assert.DoesNotContain("{", sentence, StringComparison.Ordinal);
            Assert.DoesNotContain(units == UnitSystem.Metric ? "°F" : "°C", sentence, StringComparison.Ordinal);
        });
    }

    private static Figure[] Samples(FieldInfo code) => [.. (code.GetCustomAttribute<FiguresAttribute>()?.Kinds ?? []).Select(kind => kind == FigureKind.Name ? Figure.Of("so.") : new Figure(kind, 2))];

    [GeneratedRegex(@"\{(?<place>\d+)(:[^}]*)?\}", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Placeholder { get; }

    /// <summary>Units of either system; times are the same in both.</summary>
    [GeneratedRegex(@"°|\d\s*(mm|cm|m|in|ft|g|kg|t|lb|oz|mL|L|qt|cups?|W|kW|bar|psi|hPa|inHg)\b|\b(litres?|quarts?|inch(es)?|pounds?|kilograms?)\b", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Unit { get; }
}
