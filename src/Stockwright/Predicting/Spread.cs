using Stockwright.Numerics;

namespace Stockwright.Predicting;

/// <summary>
/// A stated range as a distribution (B.23): the ends of the range are the 10 % and 90 % points, the central value the middle,
/// each side a half normal of its own width. Draws further out than 2.5 widths are brought in to there, so that no draw is absurd.
/// </summary>
/// <param name="Value">Central value.</param>
/// <param name="Below">Standard deviation below it; for a factor, of its logarithm.</param>
/// <param name="Above">Standard deviation above it; for a factor, of its logarithm.</param>
/// <param name="IsFactor">True when it spreads by factors rather than by differences.</param>
internal readonly record struct Spread(double Value, double Below, double Above, bool IsFactor)
{
    public const double MostDeviations = 2.5;

    /// <summary>A range that spreads by differences.</summary>
    public static Spread ByDifference(double low, double value, double high) =>
        new(value, (value - low) / NormalQuantile.Ninety, (high - value) / NormalQuantile.Ninety, IsFactor: false);

    /// <summary>A range of something above zero that spreads by factors.</summary>
    public static Spread ByFactor(double low, double value, double high) => value > 0 && low > 0
        ? new(value, Math.Log(value / low) / NormalQuantile.Ninety, Math.Log(high / value) / NormalQuantile.Ninety, IsFactor: true)
        : ByDifference(low, value, high);

    /// <summary>The value at a number of standard deviations.</summary>
    public double At(double deviations)
    {
        double z = Math.Clamp(deviations, -MostDeviations, MostDeviations);
        double shift = z * (z < 0 ? Below : Above);
        return IsFactor ? Value * Math.Exp(shift) : Value + shift;
    }
}
