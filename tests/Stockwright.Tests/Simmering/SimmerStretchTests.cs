using Stockwright.Evidence;
using Stockwright.Simmering;
using Stockwright.Tests.Physics;
using UnitsNet;
using Xunit;

namespace Stockwright.Tests.Simmering;

/// <summary>S.9: how the draw of collagen answers to temperature.</summary>
public sealed class SimmerStretchTests
{
    // S.9 worked by hand with an activation energy of 109 kJ/mol and 98 C as one.
    [Theory]
    [InlineData(85, 0.277)]
    [InlineData(90, 0.459)]
    [InlineData(96, 0.826)]
    [InlineData(98, 1.000)]
    [InlineData(100, 1.208)]
    [InlineData(115, 4.70)]
    [InlineData(120, 7.22)]
    [InlineData(121, 7.86)]
    [InlineData(130, 16.5)]
    public void The_rate_follows_Arrhenius(double celsius, double expected) =>
        Close.Relative(expected, Rate(celsius), 0.01);

    // J Cookery Sci Japan 1998, abstract: chicken bones give as much in 30 min at 120 C as in 180 min at 100 C.
    [Fact]
    public void Half_an_hour_at_120_does_the_work_of_three_hours_at_100()
    {
        double logarithm = Math.Log(Rate(120) / Rate(100));
        Close.Relative(Math.Log(6), logarithm, 0.005);
    }

    // S.9 at the boil of P.15 and P.2, worked by hand: at 1500 m about 1.6 times as long, at 3000 m about 2.7, for what the boil at sea level gives.
    [Theory]
    [InlineData(94.98, 1.6, 0.05)]
    [InlineData(89.97, 2.7, 0.1)]
    public void Height_stretches_the_time(double boilsAt, double expected, double tolerance)
    {
        Band<double> stretch = SimmerStretch.Between(Celsius(99.97), Celsius(boilsAt));
        Close.To(expected, stretch.Central, tolerance);
        Assert.True(stretch.Low < stretch.Central && stretch.Central < stretch.High);
    }

    [Fact]
    public void The_same_temperature_takes_the_same_time() =>
        Assert.Equal(new Band<double>(1, 1, 1), SimmerStretch.Between(Celsius(93), Celsius(93)));

    private static Temperature Celsius(double celsius) => Temperature.FromDegreesCelsius(celsius);

    /// <summary>Rate over that at 98 C.</summary>
    private static double Rate(double celsius) => 1 / SimmerStretch.Between(Celsius(98), Celsius(celsius)).Central;
}
