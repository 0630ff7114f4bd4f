using System.Globalization;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using Stockwright.Kitchen;
using Stockwright.Web.Drawing;
using Stockwright.Web.Features.Cooking.Stove;
using Stockwright.Web.Features.Planning.Answer;
using Stockwright.Web.Tests.Features.Cooking.Stove;
using UnitsNet;
using Xunit;
using UnitSystem = Stockwright.Measures.UnitSystem;

namespace Stockwright.Web.Tests.Drawing;

/// <summary>What every drawing owes: sound XML (XML 1.0), numbers SVG 2 can read, a name for those who do not see it (WAI-ARIA 1.2, role img).</summary>
public sealed partial class MarkupTests
{
    private static readonly string[] s_numbers = ["x", "y", "cx", "cy", "r", "rx", "ry", "width", "height", "d", "viewBox", "transform"];

    public static TheoryData<string> Drawings => ["pot", "lid", "level", "days", "trays", "bodies", "course", "reality"];

    [Theory]
    [MemberData(nameof(Drawings))]
    public async Task A_comma_culture_changes_nothing(string which)
    {
        string expected = await RenderAsync(which);
        CultureInfo before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = Rendering.CommaCulture();
            Assert.Equal("1,5", 1.5.ToString(CultureInfo.CurrentCulture));
            Assert.Equal(expected, await RenderAsync(which));
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Theory]
    [MemberData(nameof(Drawings))]
    public async Task The_markup_is_sound_named_and_free_of_colours(string which)
    {
        string html = await RenderAsync(which);
        XElement svg = XDocument.Parse(html).Root!;
        Assert.Equal("img", (string?)svg.Attribute("role"));
        string[] ids = svg.DescendantsAndSelf().Attributes("id").Select(id => id.Value).ToArray();
        Assert.Equal(ids.Length, ids.Distinct(StringComparer.Ordinal).Count());
        Assert.All(ids, id => Assert.StartsWith(which + "-", id, StringComparison.Ordinal));
        foreach (string id in ((string?)svg.Attribute("aria-labelledby"))!.Split(' '))
        {
            XElement named = svg.Descendants().Single(element => string.Equals((string?)element.Attribute("id"), id, StringComparison.Ordinal));
            Assert.False(string.IsNullOrWhiteSpace(named.Value));
        }

        foreach (XAttribute attribute in svg.DescendantsAndSelf().Attributes().Where(attribute => s_numbers.Contains(attribute.Name.LocalName, StringComparer.Ordinal)))
        {
            Assert.Matches(Plain(), attribute.Value);
        }

        Assert.DoesNotContain("style=", html, StringComparison.Ordinal);
        Assert.DoesNotMatch(Colour(), html);
    }

    [Fact]
    public async Task Names_with_markup_in_them_are_text()
    {
        Pot pot = Samples.StraightPot with { Name = "<b>& \"big\"" };
        XElement svg = await Rendering.XmlAsync<PotSection>(("Pot", pot), ("Fit", Samples.Fit(pot)), ("Lid", LidPosition.On), ("UnitSystem", UnitSystem.Metric), ("IdPrefix", "pot"));
        Assert.StartsWith("<b>& \"big\"", svg.Descendants("title").Single().Value, StringComparison.Ordinal);
        Assert.Empty(svg.Descendants("b"));
    }

    private static Task<string> RenderAsync(string which)
    {
        Pot pot = Samples.TaperedPot;
        return which switch
        {
            "pot" => Rendering.HtmlAsync<PotSection>(("Pot", pot), ("Fit", Samples.Fit(pot)), ("Lid", LidPosition.Ajar(Ratio.FromPercent(10))), ("UnitSystem", UnitSystem.UsCustomary), ("IdPrefix", which)),
            "lid" => Rendering.HtmlAsync<LidDrawing>(("Lid", LidPosition.Ajar(Ratio.FromPercent(5))), ("IdPrefix", which)),
            "level" => Rendering.HtmlAsync<LevelChart>(("Forecast", Samples.Forecast(pot)), ("Fit", Samples.Fit(pot)), ("Pot", pot), ("UnitSystem", UnitSystem.UsCustomary), ("IdPrefix", which)),
            "days" => Rendering.HtmlAsync<DayStrip>(("Timeline", Samples.Timeline()), ("Schedule", Samples.Schedule), ("IdPrefix", which)),
            "bodies" => Rendering.HtmlAsync<BodyBars>(("Sample", Samples.Bodies), ("IdPrefix", which)),
            "reality" => Rendering.HtmlAsync<CourseChart>(("Lines", CourseChartTests.Lines()), ("Clock", CourseChartTests.Clock), ("IdPrefix", which), ("HasKey", false)),
            "course" => Rendering.HtmlAsync<BodyChart>(("Course", Samples.Course()), ("Planned", TimeSpan.FromHours(6)), ("Effective", Samples.Bodies.Effective), ("IdPrefix", which)),
            _ => Rendering.HtmlAsync<TrayDrawing>(("Tray", Samples.Tray), ("Roast", Samples.Roast(0.62, 3)), ("UnitSystem", UnitSystem.UsCustomary), ("IdPrefix", which)),
        };
    }

    [GeneratedRegex(@"^(rotate\()?[MLZ]?-?\d+(\.\d+)?([MLZ ]-?\d+(\.\d+)?|Z(M-?\d+(\.\d+)?)?)*\)?$", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Plain();

    [GeneratedRegex("(fill|stroke)=\"(#[0-9a-fA-F]{3}|rgb|hsl|black|white)", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Colour();
}
