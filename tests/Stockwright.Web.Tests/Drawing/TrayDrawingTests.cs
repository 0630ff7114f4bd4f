using Stockwright.Web.Drawing;
using Xunit;

namespace Stockwright.Web.Tests.Drawing;

public sealed class TrayDrawingTests
{
    [Theory]
    [InlineData(0.05, 1)]
    [InlineData(0.35, 2)]
    [InlineData(0.62, 3)]
    [InlineData(0.8, 1)]
    [InlineData(0.97, 5)]
    public void The_pieces_cover_the_share_they_stand_for(double share, int trays)
    {
        TrayLayout layout = new(Samples.Tray, Samples.Roast(share, trays));
        IReadOnlyList<TrayPiece> pieces = layout.Pieces(layout.Corners[0]);
        Assert.Equal(share, layout.Share, 1e-9);
        Assert.Equal(share, pieces.Sum(piece => piece.Area) / (layout.TrayWidth * layout.TrayHeight), 1e-6);
        Assert.All(pieces, piece =>
        {
            Assert.InRange(piece.X, layout.Corners[0].X - 1e-9, layout.Corners[0].X + layout.TrayWidth - piece.Width + 1e-9);
            Assert.InRange(piece.Y, layout.Corners[0].Y - 1e-9, layout.Corners[0].Y + layout.TrayHeight - piece.Height + 1e-9);
        });
    }

    // EN 631-1 names 530 x 325 mm outside for GN 1/1 [from memory]; the sample tray measures 505 x 300 mm inside.
    [Fact]
    public void The_tray_is_to_scale()
    {
        TrayLayout layout = new(Samples.Tray, Samples.Roast(0.5, 1));
        Assert.Equal(505.0 / 300.0, layout.TrayWidth / layout.TrayHeight, 1e-9);
    }

    [Fact]
    public void No_more_than_six_are_drawn_and_an_empty_tray_is_empty()
    {
        Assert.Equal(6, new TrayLayout(Samples.Tray, Samples.Roast(0.5, 40)).Corners.Count);
        TrayLayout empty = new(Samples.Tray, Samples.Roast(0, 1));
        Assert.Empty(empty.Pieces(empty.Corners[0]));
    }
}
