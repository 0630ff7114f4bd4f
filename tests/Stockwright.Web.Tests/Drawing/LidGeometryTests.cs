using Stockwright.Kitchen;
using Stockwright.Web.Drawing;
using UnitsNet;
using Xunit;

namespace Stockwright.Web.Tests.Drawing;

public sealed class LidGeometryTests
{
    // Checked by counting: a fine grid over the mouth, and the points of it the lid leaves free.
    [Theory]
    [InlineData(0.05)]
    [InlineData(0.1)]
    [InlineData(0.2)]
    [InlineData(0.4)]
    [InlineData(0.6)]
    public void The_drawn_crescent_has_the_asked_area(double openFraction)
    {
        double offset = LidGeometry.Offset(openFraction);
        const int Steps = 1500;
        int inside = 0;
        int open = 0;
        for (int i = 0; i < Steps; i++)
        {
            for (int j = 0; j < Steps; j++)
            {
                double x = ((i + 0.5) / Steps * 2) - 1;
                double y = ((j + 0.5) / Steps * 2) - 1;
                if ((x * x) + (y * y) <= 1)
                {
                    inside++;
                    open += ((x + offset) * (x + offset)) + (y * y) > 1 ? 1 : 0;
                }
            }
        }

        // A grid of 1500 by 1500 leaves about one part in a thousand of doubt along the edges.
        Assert.Equal(openFraction, (double)open / inside, 0.001);
    }

    [Fact]
    public void Seated_and_clear_are_the_ends()
    {
        Assert.Equal(0, LidGeometry.Offset(0));
        Assert.Equal(2, LidGeometry.Offset(1));
        Assert.Equal(0, LidGeometry.OpenFraction(0), 1e-12);
        Assert.Equal(1, LidGeometry.OpenFraction(2), 1e-12);
    }

    // Two unit circles one radius apart overlap by 2 pi/3 - sqrt(3)/2 (the vesica piscis of plane geometry).
    [Fact]
    public void One_radius_apart_leaves_the_complement_of_the_vesica() =>
        Assert.Equal(1 - (((2 * Math.PI / 3) - (Math.Sqrt(3) / 2)) / Math.PI), LidGeometry.OpenFraction(1), 1e-12);

    [Theory]
    [InlineData(-0.1)]
    [InlineData(1.1)]
    [InlineData(double.NaN)]
    public void A_share_that_is_none_is_refused(double share) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => LidGeometry.Offset(share));

    [Fact]
    public async Task The_drawing_slides_the_lid_by_that_offset()
    {
        var drawing = await Rendering.XmlAsync<LidDrawing>(("Lid", LidPosition.Ajar(Ratio.FromPercent(40))), ("IdPrefix", "lid"));
        double[] centres = drawing.Descendants("circle").Select(circle => double.Parse(circle.Attribute("cx")!.Value, System.Globalization.CultureInfo.InvariantCulture)).ToArray();
        double radius = double.Parse(drawing.Descendants("circle").First().Attribute("r")!.Value, System.Globalization.CultureInfo.InvariantCulture);
        Assert.Equal(0.4, LidGeometry.OpenFraction((centres[0] - centres[2]) / radius), 0.001);
    }

    [Fact]
    public async Task A_decorative_lid_is_silent()
    {
        string html = await Rendering.HtmlAsync<LidDrawing>(("Lid", LidPosition.On), ("IdPrefix", "lid"), ("Decorative", true));
        Assert.Contains("aria-hidden=\"true\"", html, StringComparison.Ordinal);
        Assert.DoesNotContain("role=", html, StringComparison.Ordinal);
        Assert.DoesNotContain("<title", html, StringComparison.Ordinal);
    }
}
