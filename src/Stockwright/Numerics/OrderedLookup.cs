namespace Stockwright.Numerics;

/// <summary>Finds places in ordered lists.</summary>
internal static class OrderedLookup
{
    /// <summary>Index of the first that is not less than a value; the length when all are.</summary>
    /// <param name="ordered">Not falling.</param>
    /// <param name="value">The value.</param>
    public static int FirstAtOrAfter<T>(ReadOnlySpan<T> ordered, T value)
        where T : IComparable<T>
    {
        int low = 0;
        int high = ordered.Length;
        while (low < high)
        {
            int middle = (low + high) / 2;
            if (ordered[middle].CompareTo(value) < 0)
            {
                low = middle + 1;
            }
            else
            {
                high = middle;
            }
        }

        return low;
    }
}
