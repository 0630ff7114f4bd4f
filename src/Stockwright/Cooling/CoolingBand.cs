namespace Stockwright.Cooling;

/// <summary>
/// Edges of the band of a course (equation C.15 in docs/equations-cooling.md): each input is moved to its end by itself, and how
/// much later the stock is cold says how far all are moved together, so that what is independent adds up in quadrature.
/// </summary>
internal static class CoolingBand
{
    /// <summary>Shares of the way down at which times are compared.</summary>
    private static readonly double[] Marks = [0.3, 0.6, 0.9];

    /// <summary>Temperatures at which the times of a course are compared, falling.</summary>
    internal static double[] MarksOf(CoolingCourse central)
    {
        double start = central.Samples[0].Warmest.DegreesCelsius;
        double end = central.Samples.Min(sample => sample.Warmest.DegreesCelsius);
        return [.. Marks.Select(share => start - (share * (start - end)))];
    }

    /// <summary>How much later it is, by the mean square of the logarithm over the marks; below nothing when it is earlier on the whole.</summary>
    internal static double Later(double[] central, double[] moved)
    {
        double sum = 0;
        double squares = 0;
        for (int i = 0; i < central.Length; i++)
        {
            double later = Math.Log(Math.Max(moved[i], 1) / Math.Max(central[i], 1));
            sum += later;
            squares += later * later;
        }

        return Math.CopySign(Math.Sqrt(squares / central.Length), sum);
    }

    /// <summary>The side an input is moved to, to see what it does: the one with the longer way.</summary>
    internal static double Side(BandInput input) => input.SlowLength >= input.FastLength ? -1 : 1;

    /// <summary>Factors of both edges.</summary>
    /// <param name="central">Middle of them all.</param>
    /// <param name="inputs">What the band comes from.</param>
    /// <param name="deviations">How much later each makes it at its <see cref="Side"/>, or earlier where that is the fast end.</param>
    internal static (CoolingFactors Fast, CoolingFactors Slow) Edges(CoolingFactors central, IReadOnlyList<BandInput> inputs, IReadOnlyList<double> deviations)
    {
        return (Edge(1), Edge(-1));

        CoolingFactors Edge(int direction)
        {
            double[] weights = Weights(inputs, deviations, direction);
            CoolingFactors edge = central;
            for (int i = 0; i < inputs.Count; i++)
            {
                edge = inputs[i].At(edge, direction * weights[i]);
            }

            return edge;
        }
    }

    /// <summary>Ends of some other figure over its middle: what each input does to its logarithm at its <see cref="Side"/>, in quadrature towards either end.</summary>
    internal static (double Low, double High) Ends(IReadOnlyList<BandInput> inputs, IReadOnlyList<double> logarithms)
    {
        double up = 0;
        double down = 0;
        for (int i = 0; i < inputs.Count; i++)
        {
            double there = double.IsFinite(logarithms[i]) ? logarithms[i] : 0;
            double shorter = Math.Min(inputs[i].SlowLength, inputs[i].FastLength) / Math.Max(Math.Max(inputs[i].SlowLength, inputs[i].FastLength), double.Epsilon);
            double other = -there * shorter;
            up += Math.Pow(Math.Max(there, other), 2);
            down += Math.Pow(Math.Min(there, other), 2);
        }

        return (Math.Exp(-Math.Sqrt(down)), Math.Exp(Math.Sqrt(up)));
    }

    /// <summary>
    /// How far each input goes towards its end, so that together they move the time by the root of the sum of the squares of what each
    /// does alone: each by its share of that root.
    /// </summary>
    internal static double[] Weights(IReadOnlyList<BandInput> inputs, IReadOnlyList<double> deviations, int direction)
    {
        double[] alone = [.. inputs.Select((input, i) => Math.Max(input.SlowLength, input.FastLength) is > 0 and var longer
            ? deviations[i] * (direction < 0 ? input.SlowLength : input.FastLength) / longer
            : 0)];
        double root = Math.Sqrt(alone.Sum(each => each * each));
        return [.. alone.Select(each => root > 0 ? each / root : 0)];
    }
}
