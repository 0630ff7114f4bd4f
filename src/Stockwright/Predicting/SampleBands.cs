using Stockwright.Evidence;
using Stockwright.Numerics;

namespace Stockwright.Predicting;

/// <summary>Draws quasi-random points over both cores and reads bands off them (B.23, B.24).</summary>
internal static class SampleBands
{
    /// <summary>Runs a model at every point; the answer does not depend on how many cores there are.</summary>
    /// <param name="draws">Number of points.</param>
    /// <param name="dimensions">Coordinates of a point.</param>
    /// <param name="seed">The same seed gives the same points.</param>
    /// <param name="model">Gets standard normal deviations, one a coordinate; called from several threads.</param>
    /// <param name="threads">Most threads; -1 for all.</param>
    /// <param name="cancellationToken">Ends it between two points.</param>
    public static T[] Run<T>(int draws, int dimensions, ulong seed, Func<double[], T> model, int threads = -1, CancellationToken cancellationToken = default)
    {
        SobolSequence sequence = new(dimensions, seed);
        T[] results = new T[draws];
        Parallel.For(0, draws, new ParallelOptions { MaxDegreeOfParallelism = threads, CancellationToken = cancellationToken }, index =>
        {
            double[] point = new double[dimensions];
            sequence.Point(index, point);
            for (int i = 0; i < dimensions; i++)
            {
                point[i] = NormalQuantile.Of(point[i]);
            }

            results[index] = model(point);
        });
        return results;
    }

    /// <summary>10, 50 and 90 % points, straight between the draws.</summary>
    public static Band<T> Band<T>(IEnumerable<double> draws, Func<double, T> unit)
    {
        double[] sorted = [.. draws.Order()];
        return new Band<T>(unit(Quantile(sorted, 0.1)), unit(Quantile(sorted, 0.5)), unit(Quantile(sorted, 0.9)));
    }

    public static double Quantile(ReadOnlySpan<double> sorted, double probability)
    {
        double position = probability * (sorted.Length - 1);
        int index = Math.Min((int)position, sorted.Length - 2);
        return index < 0 ? sorted[0] : sorted[index] + ((position - index) * (sorted[index + 1] - sorted[index]));
    }
}
