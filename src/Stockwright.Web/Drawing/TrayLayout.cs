using Stockwright.Kitchen;
using Stockwright.Planning;

namespace Stockwright.Web.Drawing;

/// <summary>One piece on a tray: a rounded rectangle.</summary>
internal readonly record struct TrayPiece(double X, double Y, double Width, double Height, double CornerRadius)
{
    /// <summary>Area within the rounded outline.</summary>
    public double Area => (Width * Height) - ((4 - Math.PI) * CornerRadius * CornerRadius);
}

/// <summary>Trays in plan view, to scale, each covered by the share of one layer that falls on it.</summary>
internal sealed class TrayLayout
{
    public const double Width = 390;

    /// <summary>Most trays drawn; the rest are told in words.</summary>
    public const int MostDrawn = 6;
    private const double Gap = 14;
    private const double Margin = 6;
    private const double WordsHeight = 46;
    private const double CornerShare = 0.38;

    public TrayLayout(Tray tray, RoastPlan roast)
    {
        double trayArea = tray.Area.SquareMeters;
        int trays = Math.Max(1, roast.TraysToFill);
        Share = trayArea > 0 ? roast.Loads.Sum(load => load.AreaNeeded.SquareMeters) / (trays * trayArea) : 0;
        Drawn = Math.Min(trays, MostDrawn);
        int across = Math.Min(Drawn, 3);
        double longSide = Math.Max(tray.InnerLength.Millimeters, tray.InnerWidth.Millimeters);
        double shortSide = Math.Min(tray.InnerLength.Millimeters, tray.InnerWidth.Millimeters);
        double room = (Width - (2 * Margin) - ((across - 1) * Gap)) / across;
        Scale = Math.Min(room, 240) / longSide;
        TrayWidth = longSide * Scale;
        TrayHeight = shortSide * Scale;
        int rows = (Drawn + across - 1) / across;
        Corners = Enumerable.Range(0, Drawn)
            .Select(i => new Dot(Margin + (i % across * (TrayWidth + Gap)), Margin + (i / across * (TrayHeight + Gap))))
            .ToList();
        WordsY = Margin + (rows * (TrayHeight + Gap)) + 10;
        Height = WordsY + WordsHeight - 18;
    }

    /// <summary>Covered share of a tray; above one when the layer does not fit.</summary>
    public double Share { get; }

    public int Drawn { get; }

    /// <summary>User units per millimetre, the same both ways.</summary>
    public double Scale { get; }

    public double TrayWidth { get; }

    public double TrayHeight { get; }

    public double WordsY { get; }

    public double Height { get; }

    public IReadOnlyList<Dot> Corners { get; }

    /// <summary>Pieces whose areas add up to the covered share; a share above one fills the tray edge to edge.</summary>
    public IReadOnlyList<TrayPiece> Pieces(Dot corner)
    {
        double share = Math.Min(Share, 1);
        if (!(share > 0))
        {
            return [];
        }

        int across = Math.Clamp((int)Math.Round(TrayWidth / 22), 3, 14);
        double cellWidth = TrayWidth / across;
        int rows = Math.Clamp((int)Math.Round(TrayHeight / cellWidth), 2, 14);
        double cellHeight = TrayHeight / rows;
        double cell = cellWidth * cellHeight;

        // Rounded corners while there is room for them, squarer ones as the layer closes up.
        double stretch = Math.Min(1, Math.Sqrt(share * cell / Rounded(cellWidth, cellHeight, CornerShare)));
        double width = cellWidth * stretch;
        double height = cellHeight * stretch;
        double cutAway = Math.Max(0, (width * height) - (share * cell));
        double radius = Math.Min(Math.Sqrt(cutAway / (4 - Math.PI)), Math.Min(width, height) / 2);
        List<TrayPiece> pieces = new(across * rows);
        for (int i = 0; i < across * rows; i++)
        {
            // A piece leans to alternating sides of its cell, within it.
            double lean = ((i * 7 % 5) - 2) / 4.0;
            double x = corner.X + (cellWidth * (i % across)) + ((cellWidth - width) * (0.5 + (lean / 2)));
            double y = corner.Y + (cellHeight * (i / across)) + ((cellHeight - height) * (0.5 - (lean / 2)));
            pieces.Add(new TrayPiece(x, y, width, height, radius));
        }

        return pieces;
    }

    private static double Rounded(double width, double height, double cornerShare)
    {
        double radius = Math.Min(width, height) * cornerShare;
        return (width * height) - ((4 - Math.PI) * radius * radius);
    }
}
