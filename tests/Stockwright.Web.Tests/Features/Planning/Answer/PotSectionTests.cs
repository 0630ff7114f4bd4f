using System.Globalization;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using Stockwright.Kitchen;
using Stockwright.Web.Drawing;
using Stockwright.Web.Features.Planning.Answer;
using Stockwright.Web.Tests.Drawing;
using UnitsNet;
using Xunit;
using UnitSystem = Stockwright.Measures.UnitSystem;

namespace Stockwright.Web.Tests.Features.Planning.Answer;

/// <summary>A drawing to scale is checked against the similar triangles of plane geometry: paper over pot is one factor everywhere.</summary>
public sealed partial class PotSectionTests
{
    public static TheoryData<string> Pots => ["straight", "tapered", "low"];

    [Theory]
    [MemberData(nameof(Pots))]
    public async Task Every_line_lies_to_scale(string which)
    {
        Pot pot = PotNamed(which);
        XElement drawing = await DrawAsync(pot, LidPosition.Ajar(Ratio.FromPercent(20)));
        double fill = LineY(drawing, "drawing-line-fill");
        double safe = LineY(drawing, "drawing-line-safe");
        double peak = LineY(drawing, "drawing-line-peak");
        double solids = LineY(drawing, "drawing-line-solids");

        // The rim and the base are the ends of the wall; the wall's stroke lies 2 outside the inside.
        List<Dot> wall = Dots(Attribute(drawing, "drawing-wall", "d"));
        double rim = wall[1].Y;
        double floor = wall[2].Y - 2;
        double height = floor - rim;
        Assert.Equal(rim + (0.26 * height), fill, 0.1);
        Assert.Equal(rim + (0.22 * height), peak, 0.1);
        Assert.Equal(rim + (0.1563 * height), safe, 0.1);
        Assert.Equal(rim + (0.45 * height), solids, 0.1);

        // As wide as it is high, by the same factor.
        double brim = wall[4].X - wall[1].X - 4;
        Assert.Equal(pot.BrimDiameter / pot.InnerHeight, brim / height, 0.005);
    }

    [Fact]
    public async Task The_fill_line_is_written_from_the_rim_and_from_the_base_in_the_chosen_measures()
    {
        string metric = await HtmlAsync(Samples.StraightPot, LidPosition.On, UnitSystem.Metric);
        Assert.Contains(">83\u00A0mm</text>", Decoded(metric), StringComparison.Ordinal);
        Assert.Contains("23.7\u00A0cm from base", Decoded(metric), StringComparison.Ordinal);

        // 83.2 mm is 3.28 in, 3 1/4 to the eighth (25.4 mm to the inch, NIST SP 811).
        string us = await HtmlAsync(Samples.StraightPot, LidPosition.On, UnitSystem.UsCustomary);
        Assert.Contains(">3¼\u00A0in</text>", Decoded(us), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Words_beside_the_pot_never_overlap()
    {
        foreach ((double fill, double peak, double solids) in new[] { (0.8, 0.805, 0.79), (0.5, 0.9, 0.5), (0.02, 0.03, 0.01), (0.84, 0.85, 0.9) })
        {
            foreach (string which in Pots.Select(row => row.Data))
            {
                Pot pot = PotNamed(which);
                PotSectionLayout layout = new(pot, Samples.Fit(pot, fill, peak, solids), LidPosition.On, UnitSystem.Metric);
                for (int i = 1; i < layout.Marks.Count; i++)
                {
                    double least = layout.Marks[i - 1].IsMain ? 95 : 32;
                    Assert.True(layout.Marks[i].LabelY - layout.Marks[i - 1].LabelY >= least, $"{which} {fill}: {layout.Marks[i - 1].LabelY} {layout.Marks[i].LabelY}");
                }

                Assert.True(layout.Marks[0].LabelY >= 0);
                Assert.True(layout.Marks[^1].LabelY < layout.Height);
            }
        }

        XElement drawing = await DrawAsync(Samples.StraightPot, LidPosition.Off);
        Assert.Contains(drawing.Descendants("text"), text => string.Equals(text.Value, "below the rim", StringComparison.Ordinal));
    }

    [Fact]
    public async Task The_peak_is_left_out_when_it_is_the_fill_line()
    {
        XElement drawing = await DrawAsync(Samples.StraightPot, LidPosition.Off, fill: 0.7, peak: 0.7);
        Assert.DoesNotContain(drawing.Descendants(), element => string.Equals((string?)element.Attribute("class"), "drawing-line-peak", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(0.7, 0.7, 0)]
    [InlineData(0.9, 1.05, 0.95)]
    [InlineData(0, 0, 0)]
    public async Task Odd_levels_still_draw_finite_numbers(double fill, double peak, double solids)
    {
        XElement drawing = await DrawAsync(Samples.TaperedPot, LidPosition.Ajar(Ratio.FromPercent(60)), fill, peak, solids);
        Assert.DoesNotContain("NaN", drawing.ToString(), StringComparison.Ordinal);
        Assert.DoesNotContain("∞", drawing.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_heap_falls_the_same_way_every_time_and_stays_below_its_top()
    {
        string once = await HtmlAsync(Samples.StraightPot, LidPosition.Off, UnitSystem.Metric);
        Assert.Equal(once, await HtmlAsync(Samples.StraightPot, LidPosition.Off, UnitSystem.Metric));
        PotSectionLayout layout = new(Samples.StraightPot, Samples.Fit(Samples.StraightPot), LidPosition.Off, UnitSystem.Metric);
        Assert.All(layout.Heap(), lump => Assert.InRange(lump.Y, layout.SolidsY, layout.BaseY));
        Assert.InRange(layout.Heap().Count, 5, 300);
    }

    private static Pot PotNamed(string which) => which switch
    {
        "straight" => Samples.StraightPot,
        "tapered" => Samples.TaperedPot,
        _ => Samples.LowPot,
    };

    private static Task<string> HtmlAsync(Pot pot, LidPosition lid, UnitSystem system, double fill = 0.74, double peak = 0.78, double solids = 0.55) =>
        Rendering.HtmlAsync<PotSection>(("Pot", pot), ("Fit", Samples.Fit(pot, fill, peak, solids)), ("Lid", lid), ("UnitSystem", system), ("IdPrefix", "pot"));

    private static async Task<XElement> DrawAsync(Pot pot, LidPosition lid, double fill = 0.74, double peak = 0.78, double solids = 0.55) =>
        XDocument.Parse(await HtmlAsync(pot, lid, UnitSystem.Metric, fill, peak, solids)).Root!;

    private static double LineY(XElement drawing, string name) => Dots(Attribute(drawing, name, "d"))[0].Y;

    private static string Attribute(XElement drawing, string name, string attribute) =>
        drawing.Descendants().First(element => string.Equals((string?)element.Attribute("class"), name, StringComparison.Ordinal)).Attribute(attribute)!.Value;

    private static string Decoded(string html) => System.Net.WebUtility.HtmlDecode(html);

    private static List<Dot> Dots(string path) => Pair().Matches(path)
        .Select(match => new Dot(
            double.Parse(match.Groups["x"].Value, CultureInfo.InvariantCulture),
            double.Parse(match.Groups["y"].Value, CultureInfo.InvariantCulture)))
        .ToList();

    [GeneratedRegex(@"[ML](?<x>-?[\d.]+) (?<y>-?[\d.]+)", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Pair();
}
