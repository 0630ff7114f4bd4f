using System.Globalization;

namespace Stockwright.Numerics;

/// <summary>Roots of one equation in one unknown.</summary>
internal static class RootFinding
{
    /// <summary>Iterations allowed unless stated otherwise; bisection alone needs about 60 from any bracket.</summary>
    public const int DefaultMaximumIterations = 200;

    /// <summary>
    /// A root inside a bracket by Brent's method (equation N.8 in docs/equations-physics.md; Brent 1973, ch. 4).
    /// </summary>
    /// <param name="function">Continuous function with opposite signs at the ends.</param>
    /// <param name="lower">One end of the bracket.</param>
    /// <param name="upper">The other end.</param>
    /// <param name="tolerance">Largest error of the root, in the unit of the unknown, above zero; rounding is added.</param>
    /// <param name="maximumIterations">Evaluations allowed after the two ends.</param>
    /// <exception cref="ArgumentOutOfRangeException">The tolerance is not positive or an end is not finite.</exception>
    /// <exception cref="ArgumentException">The function has the same sign at both ends.</exception>
    /// <exception cref="NumericalFailureException">The iterations ran out, or the function gave a value that is not a number.</exception>
    public static double Brent(Func<double, double> function, double lower, double upper, double tolerance, int maximumIterations = DefaultMaximumIterations)
    {
        ArgumentNullException.ThrowIfNull(function);
        return Brent(new Delegated(function), lower, upper, tolerance, maximumIterations);
    }

    /// <summary>As the other overload, for a function given as a type that the compiler can inline.</summary>
    /// <typeparam name="TFunction">The function.</typeparam>
    /// <param name="function">Continuous function with opposite signs at the ends.</param>
    /// <param name="lower">One end of the bracket.</param>
    /// <param name="upper">The other end.</param>
    /// <param name="tolerance">Largest error of the root, in the unit of the unknown, above zero; rounding is added.</param>
    /// <param name="maximumIterations">Evaluations allowed after the two ends.</param>
    /// <exception cref="ArgumentOutOfRangeException">The tolerance is not positive or an end is not finite.</exception>
    /// <exception cref="ArgumentException">The function has the same sign at both ends.</exception>
    /// <exception cref="NumericalFailureException">The iterations ran out, or the function gave a value that is not a number.</exception>
    public static double Brent<TFunction>(TFunction function, double lower, double upper, double tolerance, int maximumIterations = DefaultMaximumIterations)
        where TFunction : IScalarFunction
    {
        if (!double.IsFinite(lower) || !double.IsFinite(upper))
        {
            throw new ArgumentOutOfRangeException(nameof(lower), "Both ends of the bracket must be finite numbers.");
        }

        double atLower = Checked(function.Evaluate(lower), lower);
        double atUpper = Checked(function.Evaluate(upper), upper);
        if (Math.Sign(atLower) * Math.Sign(atUpper) > 0)
        {
            throw new ArgumentException(string.Create(
                CultureInfo.InvariantCulture,
                $"No sign change between {lower:R} (value {atLower:R}) and {upper:R} (value {atUpper:R}), so no root is known to lie there."), nameof(upper));
        }

        return BrentBracketed(function, lower, atLower, upper, atUpper, tolerance, maximumIterations);
    }

    /// <summary>Brent's method when both end values are known and of opposite signs.</summary>
    internal static double BrentBracketed<TFunction>(
        TFunction function, double a, double atA, double b, double atB, double tolerance, int maximumIterations)
        where TFunction : IScalarFunction
    {
        if (!(tolerance > 0))
        {
            throw new ArgumentOutOfRangeException(nameof(tolerance), tolerance, "The tolerance must be above zero.");
        }

        if (atA == 0)
        {
            return a;
        }

        double c = a;
        double atC = atA;
        double step = b - a;
        double previousStep = step;
        for (int iteration = 0; iteration <= maximumIterations; iteration++)
        {
            if (Math.Abs(atC) < Math.Abs(atB))
            {
                (a, b, c) = (b, c, b);
                (atA, atB, atC) = (atB, atC, atB);
            }

            double least = (2 * double.BitIncrement(0d)) + (2.220446049250313e-16 * Math.Abs(b)) + (tolerance / 2);
            double half = (c - b) / 2;
            if (Math.Abs(half) <= least || atB == 0)
            {
                return b;
            }

            (step, previousStep) = NextStep(a, atA, b, atB, c, atC, half, least, step, previousStep);
            a = b;
            atA = atB;
            b += Math.Abs(step) > least ? step : Math.CopySign(least, half);
            atB = Checked(function.Evaluate(b), b);
            if (Math.Sign(atB) == Math.Sign(atC))
            {
                c = a;
                atC = atA;
                step = b - a;
                previousStep = step;
            }
        }

        throw new NumericalFailureException(string.Create(
            CultureInfo.InvariantCulture, $"No root to within {tolerance:R} after {maximumIterations} tries; the bracket still spans {Math.Abs(c - b):R}."));
    }

    /// <summary>Inverse quadratic or secant step when it is safe and shrinks fast enough, otherwise bisection.</summary>
    private static (double Step, double PreviousStep) NextStep(
        double a, double atA, double b, double atB, double c, double atC, double half, double least, double step, double previousStep)
    {
        if (Math.Abs(previousStep) < least || Math.Abs(atA) <= Math.Abs(atB))
        {
            return (half, half);
        }

        double s = atB / atA;
        double p;
        double q;
        if (a == c)
        {
            p = 2 * half * s;
            q = 1 - s;
        }
        else
        {
            double r = atB / atC;
            double t = atA / atC;
            p = s * ((2 * half * t * (t - r)) - ((b - a) * (r - 1)));
            q = (t - 1) * (r - 1) * (s - 1);
        }

        if (p > 0)
        {
            q = -q;
        }

        p = Math.Abs(p);
        bool accept = 2 * p < Math.Min((3 * half * q) - Math.Abs(least * q), Math.Abs(previousStep * q));
        return accept ? (p / q, step) : (half, half);
    }

    private static double Checked(double value, double x) => double.IsNaN(value)
        ? throw new NumericalFailureException(string.Create(CultureInfo.InvariantCulture, $"The function is not a number at {x:R}."))
        : value;

    private readonly struct Delegated(Func<double, double> function) : IScalarFunction
    {
        public double Evaluate(double x) => function(x);
    }
}
