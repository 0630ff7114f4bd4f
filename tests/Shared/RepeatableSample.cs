using System.Globalization;
using System.Security.Cryptography;
using CsCheck;

namespace Stockwright;

#pragma warning disable RS0030 // The one place that calls CsCheck: to make a failed case smaller, and to write it.

/// <summary>
/// Random tests that can be run again as they were. CsCheck's own seed fixes the first case only; here one seed makes the whole
/// run, the same for every test, and CsCheck is called for what failed, to make it smaller. <c>STOCKWRIGHT_SEED</c> takes a
/// number, or <c>free</c> for a new one at each start; without it the seed is <see cref="Fixed"/>.
/// </summary>
/// <remarks>It stands in the namespace around all tests, so that a call of <c>Sample</c> means this one before that of CsCheck.</remarks>
internal static class RepeatableSample
{
    /// <summary>Seed of every run for which none is named.</summary>
    public const ulong Fixed = 1;

    private const string Variable = "STOCKWRIGHT_SEED";
    private const long Usual = 100;

    private static readonly ulong s_seed = Read(Environment.GetEnvironmentVariable(Variable));

    /// <summary>Holds something to be true of random cases.</summary>
    /// <param name="gen">Makes the cases.</param>
    /// <param name="assert">Throws where it is not true.</param>
    /// <param name="seed">A case of CsCheck's to try before the others: one that failed once.</param>
    /// <param name="iter">How many cases.</param>
    /// <param name="threads">Threads for making a failed case smaller; the cases themselves are tried one by one, in order.</param>
    /// <param name="print">Writes a case.</param>
    public static void Sample<T>(this Gen<T> gen, Action<T> assert, string? seed = null, long iter = Usual, int threads = 1, Func<T, string>? print = null)
    {
        foreach ((long number, string start, T made) in Cases(gen, seed, iter))
        {
            try
            {
                assert(made);
            }
            catch (Exception first)
            {
                string smaller = "";
                try
                {
                    Check.Sample(gen, assert, seed: start, iter: Usual, threads: threads, print: print);
                }
                catch (CsCheckException found)
                {
                    smaller = found.Message;
                }

                throw Failure(number, start, print is null ? Check.Print(made) : print(made), smaller, first);
            }
        }
    }

    /// <summary>The same, where the answer is yes or no.</summary>
    public static void Sample<T>(this Gen<T> gen, Func<T, bool> holds, string? seed = null, long iter = Usual, int threads = 1, Func<T, string>? print = null) =>
        gen.Sample(
            made =>
            {
                if (!holds(made))
                {
                    throw new InvalidOperationException("It does not hold.");
                }
            },
            seed,
            iter,
            threads,
            print);

    /// <summary>The same, where finding out takes waiting. What failed is not made smaller: each try may leave something behind.</summary>
    public static async Task SampleAsync<T>(this Gen<T> gen, Func<T, Task> assert, string? seed = null, long iter = Usual, int threads = 1, Func<T, string>? print = null)
    {
        _ = threads;
        foreach ((long number, string start, T made) in Cases(gen, seed, iter))
        {
            try
            {
                await assert(made);
            }
            catch (Exception first)
            {
                throw Failure(number, start, print is null ? Check.Print(made) : print(made), "", first);
            }
        }
    }

    public static void Sample<T1, T2>(this Gen<(T1, T2)> gen, Action<T1, T2> assert, string? seed = null, long iter = Usual, int threads = 1, Func<(T1, T2), string>? print = null) =>
        gen.Sample(x => assert(x.Item1, x.Item2), seed, iter, threads, print);

    public static void Sample<T1, T2>(this Gen<(T1, T2)> gen, Func<T1, T2, bool> holds, string? seed = null, long iter = Usual, int threads = 1, Func<(T1, T2), string>? print = null) =>
        gen.Sample(x => holds(x.Item1, x.Item2), seed, iter, threads, print);

    public static Task SampleAsync<T1, T2>(this Gen<(T1, T2)> gen, Func<T1, T2, Task> assert, string? seed = null, long iter = Usual, int threads = 1, Func<(T1, T2), string>? print = null) =>
        gen.SampleAsync(x => assert(x.Item1, x.Item2), seed, iter, threads, print);

    public static void Sample<T1, T2, T3>(this Gen<(T1, T2, T3)> gen, Action<T1, T2, T3> assert, string? seed = null, long iter = Usual, int threads = 1, Func<(T1, T2, T3), string>? print = null) =>
        gen.Sample(x => assert(x.Item1, x.Item2, x.Item3), seed, iter, threads, print);

    public static void Sample<T1, T2, T3>(this Gen<(T1, T2, T3)> gen, Func<T1, T2, T3, bool> holds, string? seed = null, long iter = Usual, int threads = 1, Func<(T1, T2, T3), string>? print = null) =>
        gen.Sample(x => holds(x.Item1, x.Item2, x.Item3), seed, iter, threads, print);

    public static Task SampleAsync<T1, T2, T3>(this Gen<(T1, T2, T3)> gen, Func<T1, T2, T3, Task> assert, string? seed = null, long iter = Usual, int threads = 1, Func<(T1, T2, T3), string>? print = null) =>
        gen.SampleAsync(x => assert(x.Item1, x.Item2, x.Item3), seed, iter, threads, print);

    public static void Sample<T1, T2, T3, T4>(this Gen<(T1, T2, T3, T4)> gen, Action<T1, T2, T3, T4> assert, string? seed = null, long iter = Usual, int threads = 1, Func<(T1, T2, T3, T4), string>? print = null) =>
        gen.Sample(x => assert(x.Item1, x.Item2, x.Item3, x.Item4), seed, iter, threads, print);

    public static void Sample<T1, T2, T3, T4>(this Gen<(T1, T2, T3, T4)> gen, Func<T1, T2, T3, T4, bool> holds, string? seed = null, long iter = Usual, int threads = 1, Func<(T1, T2, T3, T4), string>? print = null) =>
        gen.Sample(x => holds(x.Item1, x.Item2, x.Item3, x.Item4), seed, iter, threads, print);

    public static Task SampleAsync<T1, T2, T3, T4>(this Gen<(T1, T2, T3, T4)> gen, Func<T1, T2, T3, T4, Task> assert, string? seed = null, long iter = Usual, int threads = 1, Func<(T1, T2, T3, T4), string>? print = null) =>
        gen.SampleAsync(x => assert(x.Item1, x.Item2, x.Item3, x.Item4), seed, iter, threads, print);

    public static void Sample<T1, T2, T3, T4, T5>(this Gen<(T1, T2, T3, T4, T5)> gen, Action<T1, T2, T3, T4, T5> assert, string? seed = null, long iter = Usual, int threads = 1, Func<(T1, T2, T3, T4, T5), string>? print = null) =>
        gen.Sample(x => assert(x.Item1, x.Item2, x.Item3, x.Item4, x.Item5), seed, iter, threads, print);

    public static void Sample<T1, T2, T3, T4, T5>(this Gen<(T1, T2, T3, T4, T5)> gen, Func<T1, T2, T3, T4, T5, bool> holds, string? seed = null, long iter = Usual, int threads = 1, Func<(T1, T2, T3, T4, T5), string>? print = null) =>
        gen.Sample(x => holds(x.Item1, x.Item2, x.Item3, x.Item4, x.Item5), seed, iter, threads, print);

    public static Task SampleAsync<T1, T2, T3, T4, T5>(this Gen<(T1, T2, T3, T4, T5)> gen, Func<T1, T2, T3, T4, T5, Task> assert, string? seed = null, long iter = Usual, int threads = 1, Func<(T1, T2, T3, T4, T5), string>? print = null) =>
        gen.SampleAsync(x => assert(x.Item1, x.Item2, x.Item3, x.Item4, x.Item5), seed, iter, threads, print);

    public static void Sample<T1, T2, T3, T4, T5, T6>(this Gen<(T1, T2, T3, T4, T5, T6)> gen, Action<T1, T2, T3, T4, T5, T6> assert, string? seed = null, long iter = Usual, int threads = 1, Func<(T1, T2, T3, T4, T5, T6), string>? print = null) =>
        gen.Sample(x => assert(x.Item1, x.Item2, x.Item3, x.Item4, x.Item5, x.Item6), seed, iter, threads, print);

    public static void Sample<T1, T2, T3, T4, T5, T6>(this Gen<(T1, T2, T3, T4, T5, T6)> gen, Func<T1, T2, T3, T4, T5, T6, bool> holds, string? seed = null, long iter = Usual, int threads = 1, Func<(T1, T2, T3, T4, T5, T6), string>? print = null) =>
        gen.Sample(x => holds(x.Item1, x.Item2, x.Item3, x.Item4, x.Item5, x.Item6), seed, iter, threads, print);

    public static Task SampleAsync<T1, T2, T3, T4, T5, T6>(this Gen<(T1, T2, T3, T4, T5, T6)> gen, Func<T1, T2, T3, T4, T5, T6, Task> assert, string? seed = null, long iter = Usual, int threads = 1, Func<(T1, T2, T3, T4, T5, T6), string>? print = null) =>
        gen.SampleAsync(x => assert(x.Item1, x.Item2, x.Item3, x.Item4, x.Item5, x.Item6), seed, iter, threads, print);

    public static void Sample<T1, T2, T3, T4, T5, T6, T7>(this Gen<(T1, T2, T3, T4, T5, T6, T7)> gen, Action<T1, T2, T3, T4, T5, T6, T7> assert, string? seed = null, long iter = Usual, int threads = 1, Func<(T1, T2, T3, T4, T5, T6, T7), string>? print = null) =>
        gen.Sample(x => assert(x.Item1, x.Item2, x.Item3, x.Item4, x.Item5, x.Item6, x.Item7), seed, iter, threads, print);

    public static void Sample<T1, T2, T3, T4, T5, T6, T7>(this Gen<(T1, T2, T3, T4, T5, T6, T7)> gen, Func<T1, T2, T3, T4, T5, T6, T7, bool> holds, string? seed = null, long iter = Usual, int threads = 1, Func<(T1, T2, T3, T4, T5, T6, T7), string>? print = null) =>
        gen.Sample(x => holds(x.Item1, x.Item2, x.Item3, x.Item4, x.Item5, x.Item6, x.Item7), seed, iter, threads, print);

    public static Task SampleAsync<T1, T2, T3, T4, T5, T6, T7>(this Gen<(T1, T2, T3, T4, T5, T6, T7)> gen, Func<T1, T2, T3, T4, T5, T6, T7, Task> assert, string? seed = null, long iter = Usual, int threads = 1, Func<(T1, T2, T3, T4, T5, T6, T7), string>? print = null) =>
        gen.SampleAsync(x => assert(x.Item1, x.Item2, x.Item3, x.Item4, x.Item5, x.Item6, x.Item7), seed, iter, threads, print);

    public static void Sample<T1, T2, T3, T4, T5, T6, T7, T8>(this Gen<(T1, T2, T3, T4, T5, T6, T7, T8)> gen, Action<T1, T2, T3, T4, T5, T6, T7, T8> assert, string? seed = null, long iter = Usual, int threads = 1, Func<(T1, T2, T3, T4, T5, T6, T7, T8), string>? print = null) =>
        gen.Sample(x => assert(x.Item1, x.Item2, x.Item3, x.Item4, x.Item5, x.Item6, x.Item7, x.Item8), seed, iter, threads, print);

    public static void Sample<T1, T2, T3, T4, T5, T6, T7, T8>(this Gen<(T1, T2, T3, T4, T5, T6, T7, T8)> gen, Func<T1, T2, T3, T4, T5, T6, T7, T8, bool> holds, string? seed = null, long iter = Usual, int threads = 1, Func<(T1, T2, T3, T4, T5, T6, T7, T8), string>? print = null) =>
        gen.Sample(x => holds(x.Item1, x.Item2, x.Item3, x.Item4, x.Item5, x.Item6, x.Item7, x.Item8), seed, iter, threads, print);

    public static Task SampleAsync<T1, T2, T3, T4, T5, T6, T7, T8>(this Gen<(T1, T2, T3, T4, T5, T6, T7, T8)> gen, Func<T1, T2, T3, T4, T5, T6, T7, T8, Task> assert, string? seed = null, long iter = Usual, int threads = 1, Func<(T1, T2, T3, T4, T5, T6, T7, T8), string>? print = null) =>
        gen.SampleAsync(x => assert(x.Item1, x.Item2, x.Item3, x.Item4, x.Item5, x.Item6, x.Item7, x.Item8), seed, iter, threads, print);

    /// <summary>The cases of a run, in order, each with the state it was made from in CsCheck's words.</summary>
    private static IEnumerable<(long Number, string Start, T Made)> Cases<T>(Gen<T> gen, string? seed, long count)
    {
        if (seed is not null)
        {
            yield return (0, seed, gen.Generate(PCG.Parse(seed), null, out _));
        }

        PCG random = new(0, s_seed);
        for (long number = 1; number <= count; number++)
        {
            string start = random.ToString();
            yield return (number, start, gen.Generate(random, null, out _));
        }
    }

    private static InvalidOperationException Failure(long number, string start, string made, string smaller, Exception first) => new(
        string.Create(
            CultureInfo.InvariantCulture,
            $"Case {number} of the run with {Variable}={s_seed} (that alone: seed \"{start}\"): {made}\n{first.Message}{(smaller.Length > 0 ? $"\nMade smaller: {smaller}" : "")}"),
        first);

    private static ulong Read(string? named) =>
        string.IsNullOrWhiteSpace(named) ? Fixed
        : string.Equals(named, "free", StringComparison.Ordinal) ? BitConverter.ToUInt64(RandomNumberGenerator.GetBytes(8))
        : ulong.TryParse(named, NumberStyles.None, CultureInfo.InvariantCulture, out ulong seed) ? seed
        : throw new InvalidOperationException($"{Variable} is \"{named}\": a whole number or free.");
}
