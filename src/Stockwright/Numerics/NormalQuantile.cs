namespace Stockwright.Numerics;

/// <summary>
/// Quantile of the standard normal distribution by Acklam's rational approximations [from memory], relative error below
/// 1.2e-9 (equation N.12 in docs/equations-body.md).
/// </summary>
internal static class NormalQuantile
{
    /// <summary>The 90 % quantile: where the upper end of a ten-to-ninety range stands.</summary>
    public const double Ninety = 1.2815515655446004;

    private const double Low = 0.02425;

    /// <summary>Standard deviations from the middle for a probability strictly between 0 and 1.</summary>
    public static double Of(double probability)
    {
        double p = probability;
        if (p < Low)
        {
            return Tail(Math.Sqrt(-2 * Math.Log(p)));
        }

        if (p > 1 - Low)
        {
            return -Tail(Math.Sqrt(-2 * Math.Log(1 - p)));
        }

        double q = p - 0.5;
        double r = q * q;
        double top = (((((((((-3.969683028665376e+01 * r) + 2.209460984245205e+02) * r) - 2.759285104469687e+02) * r) + 1.383577518672690e+02) * r) - 3.066479806614716e+01) * r) + 2.506628277459239e+00;
        double bottom = (((((((((-5.447609879822406e+01 * r) + 1.615858368580409e+02) * r) - 1.556989798598866e+02) * r) + 6.680131188771972e+01) * r) - 1.328068155288572e+01) * r) + 1;
        return top * q / bottom;
    }

    private static double Tail(double q)
    {
        double top = (((((((((-7.784894002430293e-03 * q) - 3.223964580411365e-01) * q) - 2.400758277161838e+00) * q) - 2.549732539343734e+00) * q) + 4.374664141464968e+00) * q) + 2.938163982698783e+00;
        double bottom = (((((((7.784695709041462e-03 * q) + 3.224671290700398e-01) * q) + 2.445134137142996e+00) * q) + 3.754408661907416e+00) * q) + 1;
        return top / bottom;
    }
}
