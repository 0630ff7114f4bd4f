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

    public static TheoryData<string> Notices => [.. typeof(NoticeCode).GetFields().Select(code => code.Name)];

    public static TheoryData<string> Phrases => [.. typeof(NoticePhrase).GetFields().Select(phrase => phrase.Name)];

    [Theory]
    [MemberData(nameof(Notices))]
    public void Every_notice_has_a_text(string name)
    {
        FieldInfo field = typeof(NoticeCode).GetField(name)!;
        string code = (string)field.GetRawConstantValue()!;
        Check(units => TextTable.Of(new PlanNotice(NoticeLevel.Hint, code, null, Samples(field)), units), TextTable.Text($"Notice.{code}", [], UnitSystem.Metric), field);
    }

    [Theory]
    [MemberData(nameof(Phrases))]
    public void Every_phrase_has_a_text(string name)
    {
        FieldInfo field = typeof(NoticePhrase).GetField(name)!;
        Check(
            units => TextTable.Of(new PlanNotice(NoticeLevel.Hint, NoticeCode.LessWater, null, Figure.Phrase(name, Samples(field))), units) + ".",
            TextTable.Text($"Phrase.{name}", [], UnitSystem.Metric),
            field);
    }

    [Fact]
    public void What_local_codes_say_stands_in_the_text()
    {
        Figure[] figures = [Figure.Of(Temperature.FromDegreesCelsius(60)), Figure.Of(TimeSpan.FromHours(5)), Figure.Of(Temperature.FromDegreesCelsius(5)), Figure.Phrase(NoticePhrase.WarmUpFaster)];
        string text = TextTable.Of(new PlanNotice(NoticeLevel.Warning, NoticeCode.SlowWarmUp, PlanPart.Hob, figures), UnitSystem.UsCustomary).Replace('\u00A0', ' ');
        Assert.Contains("2 hour/4 hour rule of Food Standards Australia New Zealand, food kept between 41 °F and 140 °F", text, StringComparison.Ordinal);
        Assert.EndsWith("your local code stands above it. Put the lid on, make less, or take more heat.", text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(UnitSystem.Metric, "Friday 27 November at 17:05")]
    [InlineData(UnitSystem.UsCustomary, "Friday, November 27 at 5:05 pm")]
    public void A_moment_is_read_by_the_kitchens_clock(UnitSystem units, string text)
    {
        Figure at = Figure.Of(new DateTimeOffset(2026, 11, 27, 17, 5, 0, TimeSpan.FromHours(9)));
        string told = TextTable.Of(new PlanNotice(NoticeLevel.Warning, NoticeCode.TooLate, null, at, Figure.Nothing, Figure.Phrase(NoticePhrase.Now), at, Sooner(at, at)), units);
        Assert.Equal($"{text} cannot be met. Started now it is ready {text}, the earliest there is. Sooner: getting up in the night {text}; heating up with the lid on {text}.", told);
    }

    [Fact]
    public void A_sentence_stored_by_an_earlier_version_is_shown_as_it_is() =>
        Assert.Equal("As it was.", TextTable.Of(new PlanNotice(NoticeLevel.Hint, NoticeCode.Covered, null) { Words = "As it was." }, UnitSystem.Metric));

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

    private static Figure Sooner(Figure up, Figure covered) =>
        Figure.Phrase(NoticePhrase.Sooner, Figure.List([Figure.Phrase(NoticePhrase.SoonerGettingUp, up), Figure.Phrase(NoticePhrase.SoonerCovered, covered)]));

    private static void Check(Func<UnitSystem, string> written, string text, FieldInfo code)
    {
        Assert.Equal(Samples(code).Length, Placeholder.Matches(text).Select(match => match.Groups["place"].Value).Distinct(StringComparer.Ordinal).Count());
        Assert.DoesNotMatch(Unit, Placeholder.Replace(text, ""));
        Assert.All(Enum.GetValues<UnitSystem>(), units =>
        {
            string sentence = written(units);
            Assert.True(sentence[^1] is '.' or '?', sentence);
            Assert.DoesNotContain("{", sentence, StringComparison.Ordinal);
            Assert.DoesNotContain(units == UnitSystem.Metric ? "°F" : "°C", sentence, StringComparison.Ordinal);
        });
    }

    private static Figure[] Samples(FieldInfo code) => [.. (code.GetCustomAttribute<FiguresAttribute>()?.Kinds ?? []).Select(kind => kind is FigureKind.Name or FigureKind.Phrase ? Figure.Of("so.") : new Figure(kind, 2))];

    [GeneratedRegex(@"\{(?<place>\d+)(:[^}]*)?\}", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Placeholder { get; }

    /// <summary>Units of either system; times are the same in both.</summary>
    [GeneratedRegex(@"°|\d\s*(mm|cm|m|in|ft|g|kg|t|lb|oz|mL|L|qt|cups?|W|kW|bar|psi|hPa|inHg)\b|\b(litres?|quarts?|inch(es)?|pounds?|kilograms?)\b", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Unit { get; }
}
