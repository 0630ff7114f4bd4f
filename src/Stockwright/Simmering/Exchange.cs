namespace Stockwright.Simmering;

/// <summary>How far the exchange between solids and liquor has come (S.6 in docs/equations.md).</summary>
/// <param name="Weak">Hours at 98 °C for what heat hurries little: water, juices, sugars, fat.</param>
/// <param name="Collagen">Hours at 98 °C for the drawing of gelatin.</param>
internal readonly record struct Exchange(double Weak, double Collagen)
{
    public static Exchange operator -(Exchange one, Exchange other) => new(one.Weak - other.Weak, one.Collagen - other.Collagen);
}
