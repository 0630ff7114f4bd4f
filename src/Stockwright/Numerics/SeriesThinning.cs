namespace Stockwright.Numerics;

/// <summary>What was kept of a series, and how far anything left out lies from it.</summary>
/// <param name="Kept">Indices of the points kept, rising.</param>
/// <param name="Deviation">No point of the series lies further than this from the straight lines between the points kept; in the unit of the values.</param>
public readonly record struct ThinnedSeries(IReadOnlyList<int> Kept, double Deviation);

/// <summary>A stretch of a series that one value stands for.</summary>
/// <param name="First">Index of its first point.</param>
/// <param name="Last">Index of its last point.</param>
/// <param name="Value">Half-way between its lowest and highest value.</param>
internal readonly record struct SeriesStep(int First, int Last, double Value);

/// <summary>
/// Leaves out points of a long series with a bound on what that changes, in the greatest difference over all points. A series of no more points than are
/// allowed is kept whole.
/// </summary>
public static class SeriesThinning
{
    /// <summary>
    /// Points whose straight lines pass within a tolerance of every point, the furthest off taken first (the method of Ramer 1972, and of Douglas and
    /// Peucker 1973, from memory, with the difference taken in the value alone). First, last, lowest and highest are always kept. When the points allowed
    /// do not reach the tolerance, <see cref="ThinnedSeries.Deviation"/> says how far they do.
    /// </summary>
    /// <param name="at">Times, not falling.</param>
    /// <param name="values">As many values.</param>
    /// <param name="tolerance">In the unit of the values, zero or more.</param>
    /// <param name="most">Most points to keep, four or more.</param>
    /// <param name="always">Points kept whatever else, besides the four; they count.</param>
    /// <exception cref="ArgumentOutOfRangeException">There are not as many values as times, or fewer than four points are allowed.</exception>
    public static ThinnedSeries Lines(ReadOnlySpan<double> at, ReadOnlySpan<double> values, double tolerance, int most, params ReadOnlySpan<int> always)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(most, 4);
        ArgumentOutOfRangeException.ThrowIfNotEqual(values.Length, at.Length, nameof(values));
        if (at.Length <= most)
        {
            return new ThinnedSeries([.. Enumerable.Range(0, at.Length)], 0);
        }

        SortedSet<int> kept = [0, at.Length - 1, Extreme(values, 1), Extreme(values, -1)];
        foreach (int index in always)
        {
            kept.Add(index);
        }

        PriorityQueue<(int From, int Worst, int To), double> pieces = new();
        int from = -1;
        foreach (int to in kept)
        {
            Enter(pieces, at, values, from, to);
            from = to;
        }

        while (pieces.TryPeek(out (int From, int Worst, int To) piece, out double least) && -least > tolerance && kept.Count < most)
        {
            pieces.Dequeue();
            kept.Add(piece.Worst);
            Enter(pieces, at, values, piece.From, piece.Worst);
            Enter(pieces, at, values, piece.Worst, piece.To);
        }

        return new ThinnedSeries([.. kept], pieces.TryPeek(out _, out double worst) ? -worst : 0);
    }

    /// <summary>
    /// Stretches that one value each stands for, as few as a tolerance allows: no point lies further than the tolerance from the value of its stretch. When
    /// that takes more stretches than are allowed, the tolerance is doubled until it does not.
    /// </summary>
    /// <param name="values">In order of time.</param>
    /// <param name="tolerance">In the unit of the values, above zero.</param>
    /// <param name="most">Most stretches, one or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">The tolerance is not above zero, or no stretch is allowed.</exception>
    internal static (IReadOnlyList<SeriesStep> Steps, double Deviation) Steps(ReadOnlySpan<double> values, double tolerance, int most)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(most, 1);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(tolerance);
        if (values.Length <= most)
        {
            List<SeriesStep> each = new(values.Length);
            for (int i = 0; i < values.Length; i++)
            {
                each.Add(new SeriesStep(i, i, values[i]));
            }

            return (each, 0);
        }

        List<SeriesStep> steps = Within(values, tolerance);
        while (steps.Count > most)
        {
            tolerance *= 2;
            steps = Within(values, tolerance);
        }

        return (steps, tolerance);
    }

    /// <summary>The longest stretches from the first point on whose values lie no further apart than twice the tolerance.</summary>
    private static List<SeriesStep> Within(ReadOnlySpan<double> values, double tolerance)
    {
        List<SeriesStep> steps = [];
        int first = 0;
        double low = values[0];
        double high = values[0];
        for (int i = 1; i < values.Length; i++)
        {
            double lower = Math.Min(low, values[i]);
            double higher = Math.Max(high, values[i]);
            if (higher - lower > 2 * tolerance)
            {
                steps.Add(new SeriesStep(first, i - 1, (low + high) / 2));
                first = i;
                (lower, higher) = (values[i], values[i]);
            }

            (low, high) = (lower, higher);
        }

        steps.Add(new SeriesStep(first, values.Length - 1, (low + high) / 2));
        return steps;
    }

    private static int Extreme(ReadOnlySpan<double> values, int sign)
    {
        int extreme = 0;
        for (int i = 1; i < values.Length; i++)
        {
            extreme = sign * values[i] > sign * values[extreme] ? i : extreme;
        }

        return extreme;
    }

    /// <summary>Enters a piece between two kept points with the point of it that lies furthest from the straight line.</summary>
    private static void Enter(PriorityQueue<(int From, int Worst, int To), double> pieces, ReadOnlySpan<double> at, ReadOnlySpan<double> values, int from, int to)
    {
        if (from < 0 || to - from < 2)
        {
            return;
        }

        double span = at[to] - at[from];
        double slope = span > 0 ? (values[to] - values[from]) / span : 0;
        double furthest = -1;
        int worst = from + 1;
        for (int i = from + 1; i < to; i++)
        {
            double off = Math.Abs(values[i] - values[from] - (slope * (at[i] - at[from])));
            if (off > furthest)
            {
                (furthest, worst) = (off, i);
            }
        }

        pieces.Enqueue((from, worst, to), -furthest);
    }
}
