namespace Stockwright.Web.Features.Planning.Answer;

/// <summary>One loose lump of the heap.</summary>
internal readonly record struct Lump(double X, double Y, double RadiusX, double RadiusY, double Degrees);

/// <summary>Lumps that look thrown in but fall the same way every time, so that a page does not flicker between visits.</summary>
internal static class Lumps
{
    private const int MostAcross = 16;
    private const int MostRows = 16;

    /// <summary>Fills a width and a height with rows of lumps.</summary>
    /// <param name="left">Left edge.</param>
    /// <param name="top">Top edge.</param>
    /// <param name="width">Width; nothing is drawn when it is not positive.</param>
    /// <param name="height">Height; nothing is drawn when it is not positive.</param>
    /// <param name="radius">Wanted radius of a lump.</param>
    public static IReadOnlyList<Lump> Fill(double left, double top, double width, double height, double radius)
    {
        if (!(width > 0) || !(height > 0) || !(radius > 0))
        {
            return [];
        }

        int rows = Math.Clamp((int)Math.Round(height / (1.7 * radius)), 1, MostRows);
        int across = Math.Clamp((int)Math.Round(width / (2 * radius)), 1, MostAcross);
        double rowHeight = height / rows;
        double cellWidth = width / across;
        List<Lump> lumps = new(rows * (across + 1));
        uint state = 2463534242;
        for (int row = 0; row < rows; row++)
        {
            bool isShifted = row % 2 == 1;
            for (int column = 0; column < across + (isShifted ? 1 : 0); column++)
            {
                double x = left + (cellWidth * (column + (isShifted ? 0 : 0.5))) + (cellWidth * 0.2 * (Next(ref state) - 0.5));
                double y = top + (rowHeight * (row + 0.5)) + (rowHeight * 0.2 * (Next(ref state) - 0.5));
                lumps.Add(new Lump(
                    x,
                    y,
                    cellWidth * (0.46 + (0.12 * Next(ref state))),
                    rowHeight * (0.46 + (0.14 * Next(ref state))),
                    (Next(ref state) - 0.5) * 40));
            }
        }

        return lumps;
    }

    // Xorshift (Marsaglia 2003): plain, fast and the same on every machine.
    private static double Next(ref uint state)
    {
        state ^= state << 13;
        state ^= state >> 17;
        state ^= state << 5;
        return state / (double)uint.MaxValue;
    }
}
