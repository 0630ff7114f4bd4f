using CsCheck;
using Stockwright.Numerics;
using Stockwright.Tests.Physics;
using Xunit;

namespace Stockwright.Tests.Numerics;

public class RootFindingTests
{
    // x^3 - 2x - 5, Wallis's example of 1685 for Newton's method: 2.0945514815423265.
    [Fact]
    public void Brent_finds_the_root_of_Wallis() =>
        Close.To(2.0945514815423265, RootFinding.Brent(x => (x * x * x) - (2 * x) - 5, 2, 3, 1e-13), 1e-12);

    [Fact]
    public void Brent_finds_the_root_of_random_rising_cubics() =>
        Gen.Select(Gen.Double[-5, 5], Gen.Double[0, 4], Gen.Double[0.01, 3], Gen.Double[1, 50], Gen.Double[1, 50]).Sample(x =>
        {
            (double root, double a, double b, double left, double right) = x;
            double Cubic(double t)
            {
                double u = t - root;
                return (a * u * u * u) + (b * u);
            }

            Close.To(root, RootFinding.Brent(Cubic, root - left, root + right, 1e-10), 1e-10);
            Close.To(root, RootFinding.Brent(t => -Cubic(t), root - left, root + right, 1e-10), 1e-10);
        });

    [Fact]
    public void Brent_copes_with_flat_and_steep_functions()
    {
        // A ninth power is flat at its root: bisection takes over.
        Close.To(0.3, RootFinding.Brent(x => Math.Pow(x - 0.3, 9), -1, 2, 1e-6), 1e-6);
        Close.To(0.3, RootFinding.Brent(x => x < 0.3 ? -1 : 1, -1, 2, 1e-9), 1e-9);
    }

    [Fact]
    public void Brent_needs_far_fewer_evaluations_than_halving()
    {
        int calls = 0;
        double root = RootFinding.Brent(
            x =>
            {
                calls++;
                return Math.Exp(x) - 3;
            },
            0,
            4,
            1e-12);
        Close.To(Math.Log(3), root, 1e-12);
        Assert.InRange(calls, 4, 15);
    }

    [Fact]
    public void Roots_at_the_ends_are_taken()
    {
        Assert.Equal(1, RootFinding.Brent(x => x - 1, 1, 2, 1e-9));
        Assert.Equal(2, RootFinding.Brent(x => x - 2, 1, 2, 1e-9));
    }

    [Fact]
    public void Failures_are_clear()
    {
        Assert.Contains("No sign change", Assert.Throws<ArgumentException>(() => RootFinding.Brent(x => 1 + (x * x), -1, 2, 1e-9)).Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentOutOfRangeException>(() => RootFinding.Brent(x => x, -1, 2, 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => RootFinding.Brent(x => x, double.NaN, 2, 1e-9));
        Assert.Throws<NumericalFailureException>(() => RootFinding.Brent(x => x is > 0.2 and < 0.9 ? double.NaN : x - 0.5, 0, 1, 1e-9));
        Assert.Throws<NumericalFailureException>(() => RootFinding.Brent(x => Math.Pow(x - 0.3, 9), -1, 2, 1e-12, maximumIterations: 3));
    }
}
