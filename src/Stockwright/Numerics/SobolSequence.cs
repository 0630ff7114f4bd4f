namespace Stockwright.Numerics;

/// <summary>
/// Quasi-random points in the unit cube: Sobol's sequence with a digital shift
/// (every coordinate's bits are crossed with a seeded word). Any point can be had alone, so the points do not depend on
/// who asks first (equation N.11 in docs/equations-body.md; direction numbers of Joe and Kuo 2008 [from memory: any odd
/// numbers below two to the index give a valid sequence, those give a good one]).
/// </summary>
internal sealed class SobolSequence
{
    /// <summary>Most coordinates.</summary>
    public const int MostDimensions = 24;

    private const int Bits = 32;

    /// <summary>Degree, coefficients and first direction numbers of the primitive polynomials, from the second coordinate on.</summary>
    private static readonly (int Degree, int Coefficients, uint[] First)[] Polynomials =
    [
        (1, 0, [1]),
        (2, 1, [1, 3]),
        (3, 1, [1, 3, 1]),
        (3, 2, [1, 1, 1]),
        (4, 1, [1, 1, 3, 3]),
        (4, 4, [1, 3, 5, 13]),
        (5, 2, [1, 1, 5, 5, 17]),
        (5, 4, [1, 1, 5, 5, 5]),
        (5, 7, [1, 1, 7, 11, 19]),
        (5, 11, [1, 1, 5, 1, 1]),
        (5, 13, [1, 1, 1, 3, 11]),
        (5, 14, [1, 3, 5, 5, 31]),
        (6, 1, [1, 3, 3, 9, 7, 49]),
        (6, 13, [1, 1, 1, 15, 21, 21]),
        (6, 16, [1, 3, 1, 13, 27, 49]),
        (6, 19, [1, 1, 1, 15, 7, 5]),
        (6, 22, [1, 3, 1, 15, 13, 25]),
        (6, 25, [1, 1, 5, 5, 19, 61]),
        (7, 1, [1, 3, 7, 11, 23, 15, 103]),
        (7, 4, [1, 3, 7, 13, 13, 15, 69]),
        (7, 7, [1, 1, 3, 13, 7, 35, 63]),
        (7, 8, [1, 3, 5, 9, 1, 25, 53]),
        (7, 14, [1, 3, 1, 13, 9, 35, 107]),
    ];

    private readonly uint[][] directions;
    private readonly uint[] shifts;

    /// <summary>Makes a sequence.</summary>
    /// <param name="dimensions">1 to <see cref="MostDimensions"/>.</param>
    /// <param name="seed">The same seed gives the same points.</param>
    /// <exception cref="ArgumentOutOfRangeException">The number of coordinates lies outside its range.</exception>
    public SobolSequence(int dimensions, ulong seed)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(dimensions, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(dimensions, MostDimensions);
        directions = new uint[dimensions][];
        shifts = new uint[dimensions];
        ulong state = seed;
        for (int i = 0; i < dimensions; i++)
        {
            directions[i] = i == 0 ? VanDerCorput() : Directions(Polynomials[i - 1]);
            shifts[i] = (uint)(NextWord(ref state) >> 32);
        }
    }

    /// <summary>Writes one point; every coordinate lies strictly between 0 and 1.</summary>
    /// <param name="index">Number of the point, zero or more.</param>
    /// <param name="point">As many coordinates as the sequence has.</param>
    public void Point(int index, Span<double> point)
    {
        uint gray = (uint)index ^ ((uint)index >> 1);
        for (int i = 0; i < directions.Length; i++)
        {
            uint word = shifts[i];
            uint rest = gray;
            for (int bit = 0; rest != 0; bit++, rest >>= 1)
            {
                if ((rest & 1) != 0)
                {
                    word ^= directions[i][bit];
                }
            }

            point[i] = (word + 0.5) / 4294967296.0;
        }
    }

    private static uint[] VanDerCorput()
    {
        uint[] words = new uint[Bits];
        for (int i = 0; i < Bits; i++)
        {
            words[i] = 1u << (Bits - 1 - i);
        }

        return words;
    }

    private static uint[] Directions((int Degree, int Coefficients, uint[] First) polynomial)
    {
        int degree = polynomial.Degree;
        uint[] words = new uint[Bits];
        for (int i = 0; i < Bits; i++)
        {
            if (i < degree)
            {
                words[i] = polynomial.First[i] << (Bits - 1 - i);
                continue;
            }

            uint word = words[i - degree] ^ (words[i - degree] >> degree);
            for (int k = 1; k < degree; k++)
            {
                if (((polynomial.Coefficients >> (degree - 1 - k)) & 1) != 0)
                {
                    word ^= words[i - k];
                }
            }

            words[i] = word;
        }

        return words;
    }

    /// <summary>SplitMix64 (Steele, Lea and Flood 2014) [from memory]: spreads a seed over words.</summary>
    private static ulong NextWord(ref ulong state)
    {
        state += 0x9E3779B97F4A7C15;
        ulong word = state;
        word = (word ^ (word >> 30)) * 0xBF58476D1CE4E5B9;
        word = (word ^ (word >> 27)) * 0x94D049BB133111EB;
        return word ^ (word >> 31);
    }
}
