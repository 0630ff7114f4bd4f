using Stockwright.Numerics;

namespace Stockwright.Web.Drawing;

/// <summary>Leaves out points of a long curve without losing its jumps.</summary>
internal static class CurveThinning
{
    /// <summary>Indices of the points to keep, in order: those whose straight lines come nearest to all.</summary>
    /// <param name="hours">Moments, not falling.</param>
    /// <param name="values">As many values.</param>
    /// <param name="most">Most points to keep, at least four.</param>
    public static IReadOnlyList<int> KeepShape(double[] hours, double[] values, int most) => SeriesThinning.Lines(hours, values, 0, most).Kept;

    private const double SameMoment = 1.0 / 3600;

    /// <summary>Indices of the points to keep, in order: both ends, both sides of every jump, and the rest evenly.</summary>
    /// <param name="hours">Moments, not falling.</param>
    /// <param name="most">Most points to keep, at least two.</param>
    /// <exception cref="ArgumentOutOfRangeException">Fewer than two points are allowed.</exception>
    public static IReadOnlyList<int> Keep(IReadOnlyList<double> hours, int most)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(most, 2);
        int count = hours.Count;
        if (count <= most)
        {
            return Enumerable.Range(0, count).ToList();
        }

        SortedSet<int> kept = [0, count - 1];
        for (int i = 1; i < count && kept.Count <= most - 2; i++)
        {
            if (hours[i] - hours[i - 1] <= SameMoment)
            {
                kept.Add(i - 1);
                kept.Add(i);
            }
        }

        int[] rest = Enumerable.Range(0, count).Where(i => !kept.Contains(i)).ToArray();
        int room = most - kept.Count;
        for (int i = 0; i < room; i++)
        {
            kept.Add(rest[(int)((long)i * rest.Length / room)]);
        }

        return kept.ToList();
    }
}
