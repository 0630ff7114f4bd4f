using System.Globalization;
using System.Text;
using Stockwright.Measures;

namespace Stockwright.Web.Drawing;

/// <summary>A point of a drawing, in the user units of its view box.</summary>
internal readonly record struct Dot(double X, double Y);

/// <summary>Numbers and paths for SVG attributes, always invariant.</summary>
internal static class Svg
{
    /// <summary>Most points a curve may have.</summary>
    public const int MostPoints = 300;

    public static string Number(double value) => KitchenFormat.Invariant(value);

    public static string ViewBox(double width, double height) => $"0 0 {Number(width)} {Number(height)}";

    /// <summary>An open or closed chain of straight lines.</summary>
    public static string Path(IEnumerable<Dot> dots, bool isClosed = false)
    {
        StringBuilder path = new();
        foreach (Dot dot in dots)
        {
            path.Append(path.Length == 0 ? 'M' : 'L').Append(Number(dot.X)).Append(' ').Append(Number(dot.Y));
        }

        if (isClosed && path.Length > 0)
        {
            path.Append('Z');
        }

        return path.ToString();
    }

    public static string Percent(double share) => string.Create(CultureInfo.InvariantCulture, $"{share * 100:0}");
}
