using System.Xml.Linq;
using Stockwright.Cooking;
using Stockwright.Web.Drawing;
using Stockwright.Web.Features.Cooking.Stove;
using Stockwright.Web.Tests.Drawing;
using Stockwright.Web.Wording;
using UnitsNet;
using Xunit;
using UnitSystem = Stockwright.Measures.UnitSystem;

namespace Stockwright.Web.Tests.Features.Cooking.Stove;

public sealed class CourseChartTests
{
    private static readonly DateTimeOffset Begin = new(2026, 11, 25, 9, 0, 0, TimeSpan.Zero);

    internal static readonly KitchenClock Clock = new(TimeZoneInfo.Utc, UnitSystem.Metric);

    /// <summary>Planned from 60 to 90 mm below the rim over ten hours, really 5 mm lower; half of it has been.</summary>
    internal static CourseLines Lines() => new(
        [.. Enumerable.Range(0, 11).Select(hour => Point(hour, 60 + (3 * hour)))],
        [.. Enumerable.Range(0, 11).Select(hour => Point(hour, 65 + (3 * hour)))],
        [
            new CourseMark(Begin.AddHours(2), Length.FromMillimeters(71)),
            new CourseMark(Begin.AddHours(4), Length.Zero, Volume.FromLiters(0.4)),
            new CourseMark(Begin.AddHours(4.1), Length.Zero, Volume.FromLiters(0.4)),
        ],
        Begin.AddHours(5));

    [Fact]
    public void Readings_lie_to_scale_between_the_lines_by_the_clock()
    {
        CourseChartLayout layout = new(Lines(), Clock);
        double perMillimetre = (layout.Y(Length.FromMillimeters(80)) - layout.Y(Length.FromMillimeters(70))) / 10;
        Dot read = Assert.Single(layout.Readings);
        Assert.Equal(layout.Planned[2].X, read.X, 1e-9);
        Assert.Equal(layout.Planned[2].Y + (5 * perMillimetre), read.Y, 1e-9);
        Assert.Equal((CourseChartLayout.Left + CourseChartLayout.Right) / 2, layout.NowX!.Value, 1e-9);
        Assert.Equal(layout.NowX.Value, layout.Past[^1].X, 1e-9);
        Assert.Equal(layout.Past[^1], layout.Ahead[0]);
        Assert.All(layout.Planned.Concat(layout.Past).Concat(layout.Ahead), dot => Assert.InRange(dot.Y, CourseChartLayout.Top, CourseChartLayout.Bottom));
    }

    [Fact]
    public void Every_top_up_is_marked_and_words_do_not_touch()
    {
        CourseChartLayout layout = new(Lines(), Clock);
        Assert.Equal(2, layout.TopUps.Count);
        Assert.Single(layout.TopUps, mark => mark.Text is not null);
    }

    // IANA time zone database: clocks in the United Kingdom went back on 25 October 2026 at 01:00 UTC.
    [Fact]
    public void Hours_are_the_kitchens_also_when_its_clock_is_put_back()
    {
        DateTimeOffset evening = new(2026, 10, 24, 20, 0, 0, TimeSpan.Zero);
        CourseLines night = new([new CoursePoint(evening, default, Length.FromMillimeters(60)), new CoursePoint(evening.AddHours(12), default, Length.FromMillimeters(90))], [], [], evening);
        CourseChartLayout layout = new(night, new KitchenClock(TimeZoneInfo.FindSystemTimeZoneById("Europe/London"), UnitSystem.Metric));
        AxisTick before = Assert.Single(layout.Hours, tick => string.Equals(tick.Text, "22:00", StringComparison.Ordinal));
        AxisTick after = Assert.Single(layout.Hours, tick => string.Equals(tick.Text, "06:00", StringComparison.Ordinal));

        // From 22:00 to 06:00 by the clock are nine hours that night, of twelve.
        Assert.Equal(9 / 12.0, (after.At - before.At) / (CourseChartLayout.Right - CourseChartLayout.Left), 1e-9);
    }

    [Fact]
    public async Task Lines_are_told_apart_by_dash_and_named_in_the_key_and_nothing_breaks_without_points()
    {
        XElement chart = await Rendering.XmlAsync<CourseChart>(("Lines", Lines()), ("Clock", Clock), ("IdPrefix", "c"));
        string key = chart.Element("ul")!.Value;
        Assert.All((string[])["planned", "by the log", "expected from here", "read", "water added"], word => Assert.Contains(word, key, StringComparison.Ordinal));
        foreach (string line in (string[])["drawing-planned", "drawing-level-line", "drawing-carried"])
        {
            Assert.Equal(2, chart.Descendants("path").Count(path => string.Equals((string?)path.Attribute("class"), line, StringComparison.Ordinal)));
        }

        string empty = (await Rendering.XmlAsync<CourseChart>(("Lines", new CourseLines([], [], [], Begin)), ("Clock", Clock), ("IdPrefix", "c"))).ToString();
        Assert.DoesNotContain("NaN", empty, StringComparison.Ordinal);
    }

    private static CoursePoint Point(double hour, double millimetres) => new(Begin.AddHours(hour), Temperature.FromDegreesCelsius(93), Length.FromMillimeters(millimetres));
}
