using Stockwright.Evidence;

namespace Stockwright.Web.Fields;

/// <summary>A prediction with its likely range.</summary>
public sealed record BandDocument(double Low, double Central, double High)
{
    /// <summary>A band in one unit.</summary>
    public static BandDocument Of<T>(Band<T> band, Func<T, double> si) => new(si(band.Low), si(band.Central), si(band.High));
}
