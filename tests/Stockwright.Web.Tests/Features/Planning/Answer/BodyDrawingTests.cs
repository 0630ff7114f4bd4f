using System.Xml.Linq;
using Stockwright.Predicting;
using Stockwright.Web.Features.Planning.Answer;
using Stockwright.Web.Tests.Drawing;
using UnitsNet;
using Xunit;

namespace Stockwright.Web.Tests.Features.Planning.Answer;

public sealed class BodyDrawingTests
{
    [Fact]
    public async Task Bars_are_as_long_as_their_chances_and_the_likely_one_is_marked_by_more_than_colour()
    {
        XElement svg = await Rendering.XmlAsync<BodyBars>(("Sample", Samples.Bodies), ("IdPrefix", "bodies"));
        double[] widths = [.. svg.Descendants("rect").Select(bar => double.Parse(bar.Attribute("width")!.Value, System.Globalization.CultureInfo.InvariantCulture))];
        Assert.Equal(3, widths.Length);
        Assert.Equal(0.62 / 0.18, widths[1] / widths[0], 0.01);
        Assert.Equal(0.62 / 0.20, widths[1] / widths[2], 0.01);
        XElement likely = Assert.Single(svg.Descendants("text"), text => text.Value is "soft jelly");
        Assert.Equal("drawing-strong", (string?)likely.Attribute("class"));
        Assert.Contains("soft jelly 62 %", svg.Descendants("desc").Single().Value, StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_is_certain_needs_no_bars()
    {
        PredictionSample watery = Samples.Bodies with
        {
            Body = [.. Enum.GetValues<BodyClass>().Select(body => new BodyChance(body, Ratio.FromDecimalFractions(body == BodyClass.Watery ? 1 : 0)))],
        };
        Assert.DoesNotContain("<svg", await Rendering.HtmlAsync<BodyBars>(("Sample", watery), ("IdPrefix", "bodies")), StringComparison.Ordinal);
    }

    [Fact]
    public void The_course_lies_to_scale_with_the_plan_and_the_small_return_on_it()
    {
        BodyAgainstTime course = Samples.Course();
        BodyChartLayout layout = new(course, TimeSpan.FromHours(13.5), Samples.Bodies.Effective);
        Assert.Equal((BodyChartLayout.Left + BodyChartLayout.Right) / 2, layout.Plan.X, 1e-9);
        Assert.Equal(BodyChartLayout.Bottom, layout.PercentY(0), 1e-9);
        Assert.Equal(layout.PercentY(2.2), layout.Plan.Y, 1e-9);
        Assert.True(layout.PlanHighY < layout.Plan.Y && layout.Plan.Y < layout.PlanLowY);
        Assert.Contains(layout.SmallReturn!.Value, layout.Curve);
        Assert.All(layout.Curve, dot => Assert.InRange(dot.Y, BodyChartLayout.Top, BodyChartLayout.Bottom));
    }

    [Theory]
    [InlineData(0.02, 0.1)]
    [InlineData(24, 90)]
    public async Task Weak_and_strong_stocks_and_long_simmers_draw_finite_numbers(double percent, double hours)
    {
        Evidence.Band<Ratio> band = new(Ratio.FromPercent(percent / 2), Ratio.FromPercent(percent), Ratio.FromPercent(percent * 1.5));
        string html = await Rendering.HtmlAsync<BodyChart>(("Course", Samples.Course(percent)), ("Planned", TimeSpan.FromHours(hours)), ("Effective", band), ("IdPrefix", "course"));
        Assert.DoesNotContain("NaN", html, StringComparison.Ordinal);
        Assert.DoesNotContain("∞", html, StringComparison.Ordinal);
    }
}
