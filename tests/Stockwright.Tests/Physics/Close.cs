using Xunit;

namespace Stockwright.Tests.Physics;

/// <summary>Comparison with a printed figure.</summary>
internal static class Close
{
    internal static void To(double expected, double actual, double tolerance) =>
        Assert.True(Math.Abs(actual - expected) <= tolerance, FormattableString.Invariant($"expected {expected:R} within {tolerance:R}, got {actual:R}"));

    internal static void Relative(double expected, double actual, double tolerance) =>
        To(expected, actual, Math.Abs(expected) * tolerance);
}
