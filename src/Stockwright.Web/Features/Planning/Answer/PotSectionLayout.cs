using Stockwright.Kitchen;
using Stockwright.Measures;
using Stockwright.Planning;
using Stockwright.Web.Drawing;
using UnitsNet;

namespace Stockwright.Web.Features.Planning.Answer;

/// <summary>One line across the pot and the words beside it.</summary>
/// <param name="Class">Style of the line.</param>
/// <param name="Y">Where the line lies, to scale.</param>
/// <param name="LabelY">Where its words begin, moved so that no two overlap.</param>
/// <param name="Texts">Lines of words.</param>
/// <param name="IsMain">True for the fill line, written large.</param>
internal sealed record PotMark(string Class, double Y, double LabelY, IReadOnlyList<string> Texts, bool IsMain);

/// <summary>Where everything lies in the section of a pot, in the units of a view box 390 wide.</summary>
internal sealed class PotSectionLayout
{
    public const double Width = 390;
    public const double LabelX = 240;
    private const double LeftMargin = 14;
    private const double RoomForPot = 180;
    private const double MostPotWidth = 170;
    private const double MostPotHeight = 300;
    private const double WallThickness = 4;
    private const double MainBlock = 100;
    private const double SmallBlock = 38;
    private readonly Pot _pot;

    public PotSectionLayout(Pot pot, FitReport fit, LidPosition lid, UnitSystem system)
    {
        _pot = pot;
        double widest = Math.Max(pot.BaseDiameter.Millimeters, pot.BrimDiameter.Millimeters);
        double overhang = lid.Kind == LidKind.Ajar ? LidGeometry.Gap(lid, pot.BrimDiameter).Millimeters : 0;
        Scale = Math.Min(Math.Min(MostPotWidth / widest, RoomForPot / (widest + overhang)), MostPotHeight / pot.InnerHeight.Millimeters);
        CentreX = LeftMargin + (RoomForPot / 2) + (overhang * Scale / 2);
        LidOffset = overhang * Scale;

        // Room above the rim for the lid and its words; a level above the rim is drawn where it is.
        double above = Math.Max(0, Math.Max(fit.PeakLevel.Millimeters, fit.FillLine.Millimeters) - pot.InnerHeight.Millimeters) * Scale;
        RimY = 62 + above;
        BaseY = RimY + (pot.InnerHeight.Millimeters * Scale);
        FillY = YAt(fit.FillLine);
        SafeY = YAt(fit.SafeMaximum);
        PeakY = YAt(fit.PeakLevel);
        SolidsY = YAt(fit.SolidsHeight);
        ShowsPeak = Math.Abs(PeakY - FillY) >= 1.5;
        Marks = Place(fit, system);
        PotMark last = Marks[^1];
        Height = Math.Max(BaseY + 26, last.LabelY + (last.IsMain ? MainBlock : SmallBlock));
    }

    /// <summary>User units per millimetre, the same both ways.</summary>
    public double Scale { get; }

    public double CentreX { get; }

    public double RimY { get; }

    public double BaseY { get; }

    public double FillY { get; }

    public double SafeY { get; }

    public double PeakY { get; }

    public double SolidsY { get; }

    public double Height { get; }

    public double LidOffset { get; }

    public bool ShowsPeak { get; }

    public IReadOnlyList<PotMark> Marks { get; }

    public double RimRadius => HalfWidthAt(RimY);

    /// <summary>Where the measure from the rim to the line is drawn, in the air inside the pot.</summary>
    public double MeasureX => CentreX + Math.Min(RimRadius, HalfWidthAt(FillY)) - 18;

    /// <summary>Where the room under the rim is drawn.</summary>
    public double BracketX => CentreX - Math.Min(RimRadius, HalfWidthAt(PeakY)) + 12;

    /// <summary>Arrow from the rim down to the fill line; a short way has no room for a head.</summary>
    public string Measure()
    {
        string shaft = Svg.Path([new(MeasureX, RimY), new(MeasureX, FillY - 2)]);
        return FillY - RimY < 16 ? shaft : shaft + Svg.Path([new(MeasureX - 5, FillY - 10), new(MeasureX, FillY - 2), new(MeasureX + 5, FillY - 10)]);
    }

    public string Bracket() =>
        Svg.Path([new(BracketX + 6, RimY), new(BracketX, RimY), new(BracketX, PeakY), new(BracketX + 6, PeakY)]);

    public double YAt(Length level) => BaseY - (level.Millimeters * Scale);

    public double HalfWidthAt(double y) =>
        _pot.DiameterAt(Length.FromMillimeters((BaseY - y) / Scale)).Millimeters * Scale / 2;

    /// <summary>Inside of the pot from a level down to another.</summary>
    public string Inside(double topY, double bottomY)
    {
        double top = HalfWidthAt(topY);
        double bottom = HalfWidthAt(bottomY);
        return Svg.Path([new(CentreX - top, topY), new(CentreX + top, topY), new(CentreX + bottom, bottomY), new(CentreX - bottom, bottomY)], isClosed: true);
    }

    /// <summary>Middle of the wall, so that its inner edge is the inside of the pot.</summary>
    public string Wall()
    {
        double half = WallThickness / 2;
        double top = RimRadius + half;
        double bottom = HalfWidthAt(BaseY) + half;
        return Svg.Path([new(CentreX - top - 4, RimY), new(CentreX - top, RimY), new(CentreX - bottom, BaseY + half), new(CentreX + bottom, BaseY + half), new(CentreX + top, RimY), new(CentreX + top + 4, RimY)]);
    }

    public string Handle(int side)
    {
        double y = RimY + Math.Min(26, (BaseY - RimY) * 0.2);
        double x = CentreX + (side * (HalfWidthAt(y) + WallThickness));
        return Svg.Path([new(x, y - 4), new(x + (side * 10), y - 4), new(x + (side * 10), y + 4), new(x, y + 4)]);
    }

    public string LevelLine(double y)
    {
        double half = HalfWidthAt(y);
        return Svg.Path([new(CentreX - half, y), new(CentreX + half, y)]);
    }

    public string Leader(PotMark mark)
    {
        double labelY = mark.LabelY + (mark.IsMain ? 22 : 16);
        double from = CentreX + HalfWidthAt(mark.Y) + (mark.IsMain ? 0 : WallThickness + 1);
        double bend = CentreX + Math.Max(RimRadius, HalfWidthAt(BaseY)) + WallThickness + 13;
        return Svg.Path([new(from, mark.Y), new(bend, mark.Y), new(LabelX - 10, labelY), new(LabelX - 4, labelY)]);
    }

    public IReadOnlyList<Lump> Heap()
    {
        // Lumps of about 5 cm, but never too small or too large to be seen as such.
        double radius = Math.Clamp(25 * Scale, 8, 17);
        double half = Math.Max(HalfWidthAt(SolidsY), HalfWidthAt(BaseY));
        return Lumps.Fill(CentreX - half, SolidsY, 2 * half, BaseY - SolidsY, radius);
    }

    private List<PotMark> Place(FitReport fit, UnitSystem system)
    {
        List<PotMark> marks =
        [
            new("drawing-line-safe", SafeY, SafeY - 14, ["never above", $"{KitchenFormat.Text(_pot.InnerHeight - fit.SafeMaximum, system)} from the rim"], false),
            new("drawing-line-fill", FillY, FillY - 22, [KitchenFormat.Text(fit.FillLineFromRim, system), "below the rim", $"{KitchenFormat.Text(fit.FillLine, system)} from base"], true),
        ];
        if (ShowsPeak)
        {
            marks.Add(new("drawing-line-peak", PeakY, PeakY - 14, ["at its highest, hot", $"{KitchenFormat.Text(fit.Freeboard, system)} of room"], false));
        }

        if (fit.SolidsHeight > Length.Zero)
        {
            marks.Add(new("drawing-line-solids", SolidsY, SolidsY - 14, ["top of the solids", $"{KitchenFormat.Text(fit.SolidsHeight, system)} from base"], false));
        }

        marks.Sort((one, other) => one.Y.CompareTo(other.Y));

        // The main label sits at its line; the others make way upward and downward.
        int main = marks.FindIndex(mark => mark.IsMain);
        marks[main] = marks[main] with { LabelY = Math.Max(marks[main].LabelY, Highest(main)) };
        for (int i = main - 1; i >= 0; i--)
        {
            marks[i] = marks[i] with { LabelY = Math.Max(Highest(i), Math.Min(marks[i].LabelY, marks[i + 1].LabelY - SmallBlock)) };
        }

        for (int i = 1; i < marks.Count; i++)
        {
            double least = marks[i - 1].LabelY + (marks[i - 1].IsMain ? MainBlock : SmallBlock);
            marks[i] = marks[i] with { LabelY = Math.Max(marks[i].LabelY, least) };
        }

        return marks;

        static double Highest(int index) => (index * SmallBlock) + 4;
    }
}
