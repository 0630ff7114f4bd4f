using CsCheck;
using Stockwright.Numerics;
using Xunit;

namespace Stockwright.Tests.Numerics;

/// <summary>What is left out of a series lies within the stated bound of what is kept: held against an interpolation of this test's own.</summary>
public sealed class SeriesThinningTests
{
    // A probe's day: a slow course, noise, now and then a figure of another world.
    private static readonly Gen<(double[] At, double[] Values)> Series =
        from count in Gen.Int[1, 400]
        from steps in Gen.Double[0, 90].Array[count]
        from noise in Gen.Double[-1, 1].Array[count]
        from spikes in Gen.Frequency((20, Gen.Const(0.0)), (1, Gen.Double[-120, 120])).Array[count]
        from noisiness in Gen.Double[0, 5]
        select (Running(steps), (double[])[.. noise.Select((one, i) => 60 + (30 * Math.Sin(i / 40.0)) + (noisiness * one) + spikes[i])]);

    [Fact]
    public void Nothing_left_out_lies_further_off_than_is_said() => Gen.Select(Series, Gen.Int[4, 60], Gen.Double[0, 3]).Sample(
        (series, most, tolerance) =>
        {
            ThinnedSeries thinned = SeriesThinning.Lines(series.At, series.Values, tolerance, most);
            Assert.True(thinned.Kept.Count <= Math.Min(most, series.At.Length) && thinned.Kept.Zip(thinned.Kept.Skip(1)).All(pair => pair.First < pair.Second));
            Assert.Contains(0, thinned.Kept);
            Assert.Contains(series.At.Length - 1, thinned.Kept);
            double[] kept = [.. thinned.Kept.Select(index => series.Values[index])];
            Assert.Equal((series.Values.Min(), series.Values.Max()), (kept.Min(), kept.Max()));
            Assert.InRange(Furthest(series.At, series.Values, thinned.Kept), 0, thinned.Deviation + 1e-9);
            Assert.True(thinned.Deviation <= tolerance || thinned.Kept.Count == most, "it stopped before the tolerance with room left");
        },
        iter: 2000,
        seed: "0000000000001");

    [Fact]
    public void No_value_lies_further_from_that_of_its_stretch_than_is_said() => Gen.Select(Series, Gen.Int[1, 40], Gen.Double[0.1, 3]).Sample(
        (series, most, tolerance) =>
        {
            (IReadOnlyList<SeriesStep> steps, double deviation) = SeriesThinning.Steps(series.Values, tolerance, most);
            Assert.InRange(steps.Count, 1, most);
            Assert.Equal((0, series.Values.Length - 1), (steps[0].First, steps[^1].Last));
            Assert.True(steps.Zip(steps.Skip(1)).All(pair => pair.First.Last + 1 == pair.Second.First), "a value is in no stretch or in two");
            double furthest = steps.Max(step => series.Values[step.First..(step.Last + 1)].Max(value => Math.Abs(value - step.Value)));
            Assert.InRange(furthest, 0, deviation + 1e-9);
        },
        iter: 2000,
        seed: "0000000000001");

    [Fact]
    public void A_straight_line_is_its_ends()
    {
        double[] at = [.. Enumerable.Range(0, 100).Select(i => (double)i)];
        ThinnedSeries thinned = SeriesThinning.Lines(at, [.. at.Select(one => 20 + (0.5 * one))], 1e-6, 50);

        Assert.Equal([0, 99], thinned.Kept);
        Assert.InRange(thinned.Deviation, 0, 1e-9);
    }

    [Fact]
    public void A_single_absurd_figure_is_kept()
    {
        double[] at = [.. Enumerable.Range(0, 10_000).Select(i => (double)i)];
        double[] values = [.. at.Select(one => 95 + (0.7 * Math.Sin(one)))];
        values[6_543] = 88;

        Assert.Contains(6_543, SeriesThinning.Lines(at, values, 0.5, 24).Kept);
        Assert.Contains(SeriesThinning.Steps(values, 0.5, 24).Steps, step => step is { First: 6_543, Last: 6_543, Value: 88 });
    }

    [Fact]
    public void As_few_as_a_cook_takes_are_all_kept()
    {
        double[] values = [20, 20.1, 20.2, 20.3, 20.4];

        Assert.Equal([0, 1, 2, 3, 4], SeriesThinning.Lines([0, 1, 2, 3, 4], values, 1, 5).Kept);
        Assert.Equal(values, SeriesThinning.Steps(values, 1, 5).Steps.Select(step => step.Value));
        Assert.Equal(0, SeriesThinning.Lines([0, 1, 2, 3, 4], values, 1, 5).Deviation);
    }

    private static double Furthest(double[] at, double[] values, IReadOnlyList<int> kept)
    {
        double furthest = 0;
        for (int i = 0; i < at.Length; i++)
        {
            int next = kept.First(index => index >= i);
            int before = kept.Last(index => index <= i);
            double part = at[next] > at[before] ? (at[i] - at[before]) / (at[next] - at[before]) : 0;
            furthest = Math.Max(furthest, Math.Abs(values[i] - (((1 - part) * values[before]) + (part * values[next]))));
        }

        return furthest;
    }

    private static double[] Running(double[] steps)
    {
        double sum = 0;
        return [.. steps.Select(step => sum += step)];
    }
}
