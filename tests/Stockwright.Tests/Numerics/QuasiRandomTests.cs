using Stockwright.Numerics;
using Xunit;

namespace Stockwright.Tests.Numerics;

/// <summary>Quasi-random points (N.11) and normal quantiles (N.12).</summary>
public sealed class QuasiRandomTests
{
    /// <summary>Property of a Sobol sequence (Sobol 1967): the first 2^k points put one in each of 2^k equal slices, in every coordinate; a digital shift keeps it.</summary>
    [Theory]
    [InlineData(6, 1)]
    [InlineData(9, 12345)]
    public void Every_slice_holds_one_point(int power, int seed)
    {
        SobolSequence sequence = new(SobolSequence.MostDimensions, (ulong)seed);
        int count = 1 << power;
        bool[,] taken = new bool[SobolSequence.MostDimensions, count];
        double[] point = new double[SobolSequence.MostDimensions];
        for (int i = 0; i < count; i++)
        {
            sequence.Point(i, point);
            for (int j = 0; j < point.Length; j++)
            {
                int slice = (int)(point[j] * count);
                Assert.False(taken[j, slice]);
                taken[j, slice] = true;
            }
        }
    }

    /// <summary>The first two coordinates are a (0, 2)-sequence: 2^k points, one in each of the 2^k boxes of any split of k between them.</summary>
    [Fact]
    public void The_first_two_coordinates_fill_every_box()
    {
        SobolSequence sequence = new(2, 7);
        double[] point = new double[2];
        for (int across = 0; across <= 8; across++)
        {
            bool[,] taken = new bool[1 << across, 1 << (8 - across)];
            for (int i = 0; i < 256; i++)
            {
                sequence.Point(i, point);
                ref bool box = ref taken[(int)(point[0] * taken.GetLength(0)), (int)(point[1] * taken.GetLength(1))];
                Assert.False(box);
                box = true;
            }
        }
    }

    /// <summary>Quantiles of the standard normal distribution, any statistical table.</summary>
    [Theory]
    [InlineData(0.5, 0)]
    [InlineData(0.9, 1.2815515655)]
    [InlineData(0.975, 1.9599639845)]
    [InlineData(0.999, 3.0902323062)]
    [InlineData(0.01, -2.3263478740)]
    public void Normal_quantiles(double probability, double expected) => Assert.Equal(expected, NormalQuantile.Of(probability), 1e-8);
}
