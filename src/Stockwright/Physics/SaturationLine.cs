namespace Stockwright.Physics;

/// <summary>
/// The boiling line of pure water, pressure against temperature and back (equations P.1 and P.2 in docs/equations-physics.md).
/// Source: IAPWS R7-97, region 4.
/// </summary>
internal static class SaturationLine
{
    private const double N1 = 0.11670521452767e4;
    private const double N2 = -0.72421316703206e6;
    private const double N3 = -0.17073846940092e2;
    private const double N4 = 0.12020824702470e5;
    private const double N5 = -0.32325550322333e7;
    private const double N6 = 0.14915108613530e2;
    private const double N7 = -0.48232657361591e4;
    private const double N8 = 0.40511340542057e6;
    private const double N9 = -0.23855557567849;
    private const double N10 = 0.65017534844798e3;
    /// <summary>P.1 without a range check.</summary>
    internal static double SaturationPressurePascals(double kelvins)
    {
        double theta = kelvins + (N9 / (kelvins - N10));
        double a = (((theta + N1) * theta) + N2);
        double b = (((N3 * theta) + N4) * theta) + N5;
        double c = (((N6 * theta) + N7) * theta) + N8;
        double root = 2 * c / (-b + Math.Sqrt((b * b) - (4 * a * c)));
        double square = root * root;
        return 1e6 * square * square;
    }

    /// <summary>P.2 without a range check.</summary>
    internal static double SaturationKelvins(double pascals)
    {
        double beta = Math.Sqrt(Math.Sqrt(pascals * 1e-6));
        double e = ((beta + N3) * beta) + N6;
        double f = (((N1 * beta) + N4) * beta) + N7;
        double g = (((N2 * beta) + N5) * beta) + N8;
        double d = 2 * g / (-f - Math.Sqrt((f * f) - (4 * e * g)));
        double sum = N10 + d;
        return (sum - Math.Sqrt((sum * sum) - (4 * (N9 + (N10 * d))))) / 2;
    }
}
