namespace Stockwright.Numerics;

/// <summary>
/// The accepted steps of an integration with the quartic that joins their ends (equation N.5 in docs/equations-physics.md),
/// in one growing array.
/// </summary>
/// <param name="dimension">Unknowns.</param>
/// <param name="steps">Steps there is room for before the array grows.</param>
internal sealed class DenseOutput(int dimension, int steps)
{
    private const int Coefficients = 5;
    private readonly int stride = 2 + (Coefficients * dimension);
    private double[] store = new double[steps * (2 + (Coefficients * dimension))];

    internal int Count { get; private set; }

    /// <summary>Room for one more step: start, length, then five coefficients for each component, coefficient by coefficient.</summary>
    internal Span<double> Append(double start, double length)
    {
        int offset = Count * stride;
        if (offset + stride > store.Length)
        {
            Array.Resize(ref store, store.Length * 2);
        }

        Count++;
        store[offset] = start;
        store[offset + 1] = length;
        return store.AsSpan(offset + 2, stride - 2);
    }

    /// <summary>Forgets every step but keeps the array.</summary>
    internal void Clear() => Count = 0;

    /// <summary>Takes back the last step.</summary>
    internal void RemoveLast() => Count--;

    internal double ComponentAt(double t, int component)
    {
        int low = 0;
        int high = Count - 1;
        while (low < high)
        {
            int middle = (low + high + 1) / 2;
            if (store[middle * stride] <= t)
            {
                low = middle;
            }
            else
            {
                high = middle - 1;
            }
        }

        int offset = low * stride;
        double theta = (t - store[offset]) / store[offset + 1];
        return Evaluate(store.AsSpan(offset + 2, stride - 2), theta, component);
    }

    /// <summary>All components within the last step.</summary>
    internal void EvaluateLast(double t, Span<double> state)
    {
        int offset = (Count - 1) * stride;
        double theta = (t - store[offset]) / store[offset + 1];
        ReadOnlySpan<double> step = store.AsSpan(offset + 2, stride - 2);
        for (int i = 0; i < dimension; i++)
        {
            state[i] = Evaluate(step, theta, i);
        }
    }

    private double Evaluate(ReadOnlySpan<double> step, double theta, int i)
    {
        double rest = 1 - theta;
        return step[i] + (theta * (step[dimension + i]
            + (rest * (step[(2 * dimension) + i]
            + (theta * (step[(3 * dimension) + i]
            + (rest * step[(4 * dimension) + i])))))));
    }
}
