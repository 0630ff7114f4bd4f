namespace Stockwright.Predicting;

/// <summary>One thing that can be added, per kilogram.</summary>
/// <param name="Id">Name.</param>
/// <param name="PricePerKilogram">Zero or more.</param>
/// <param name="Gelatin">Grams of gelatin.</param>
/// <param name="BloomNow">Grams of gelatin times their Bloom.</param>
/// <param name="MostKilograms">Most there is; may be infinite.</param>
internal sealed record SetOption(string Id, double PricePerKilogram, double Gelatin, double BloomNow, double MostKilograms);

/// <summary>The cheapest additions.</summary>
/// <param name="Kilograms">Of each option.</param>
/// <param name="Cost">All together.</param>
/// <param name="Reached">Root of gelatin times gelatin-Bloom reached.</param>
/// <param name="IsReached">True when that is the target or more.</param>
internal sealed record SetSolution(double[] Kilograms, double Cost, double Reached, bool IsReached);

/// <summary>
/// Minimises cost for sqrt(G M) at least K with G and M linear in the additions (B.26). By the inequality of the means,
/// sqrt(G M) is the least of (s G + M/s)/2 over all s above zero, reached at s = sqrt(M/G). For each s the problem is a
/// fractional knapsack, solved exactly by filling in order of price; its cost never exceeds the true one, and at the s
/// that agrees with its own answer it is the true one. Where the answer jumps over that s, two answers cost the same and
/// a blend of them is the solution.
/// </summary>
internal static class SetSolver
{
    private const int Halvings = 60;

    public static SetSolution Solve(double gelatin, double bloomNow, double target, IReadOnlyList<SetOption> options)
    {
        double[] nothing = new double[options.Count];
        if (Root(gelatin, bloomNow, options, nothing) >= target)
        {
            return Solution(gelatin, bloomNow, options, nothing, isReached: true);
        }

        double[] all = [.. options.Select(option => option.Gelatin > 0 ? option.MostKilograms : 0)];
        if (!all.Any(double.IsInfinity) && Root(gelatin, bloomNow, options, all) < target)
        {
            return Solution(gelatin, bloomNow, options, all, isReached: false);
        }

        // s squared is a Bloom: it lies between the least and the most of what is in the pot and what can be added.
        double[] blooms = [.. options.Where(option => option.Gelatin > 0).Select(option => option.BloomNow / option.Gelatin), .. gelatin > 0 ? new[] { bloomNow / gelatin } : []];
        double low = 0.999 * Math.Sqrt(blooms.Min());
        double high = 1.001 * Math.Sqrt(blooms.Max());
        double[] atLow = Knapsack(gelatin, bloomNow, target, options, low);
        double[] atHigh = Knapsack(gelatin, bloomNow, target, options, high);
        for (int i = 0; i < Halvings; i++)
        {
            double middle = Math.Sqrt(low * high);
            double[] additions = Knapsack(gelatin, bloomNow, target, options, middle);
            if (Slope(gelatin, bloomNow, options, additions) > middle)
            {
                (low, atLow) = (middle, additions);
            }
            else
            {
                (high, atHigh) = (middle, additions);
            }
        }

        return Solution(gelatin, bloomNow, options, Blend(gelatin, bloomNow, target, options, atLow, atHigh), isReached: true);
    }

    /// <summary>The cheapest additions with s G + M/s at least 2 K.</summary>
    private static double[] Knapsack(double gelatin, double bloomNow, double target, IReadOnlyList<SetOption> options, double s)
    {
        double missing = (2 * target) - (s * gelatin) - (bloomNow / s);
        double[] kilograms = new double[options.Count];
        double Worth(SetOption option) => (s * option.Gelatin) + (option.BloomNow / s);
        foreach (int index in Enumerable.Range(0, options.Count).Where(i => options[i].Gelatin > 0).OrderBy(i => options[i].PricePerKilogram / Worth(options[i])))
        {
            if (missing <= 0)
            {
                break;
            }

            double worth = Worth(options[index]);
            kilograms[index] = Math.Min(options[index].MostKilograms, missing / worth);
            missing -= kilograms[index] * worth;
        }

        return kilograms;
    }

    /// <summary>The point between two answers that meets the target; both meet their own straight bound, which is never harder than the target.</summary>
    private static double[] Blend(double gelatin, double bloomNow, double target, IReadOnlyList<SetOption> options, double[] one, double[] other)
    {
        double[] At(double part) => [.. one.Select((kilograms, i) => kilograms + (part * (other[i] - kilograms)))];

        // The root is concave between the two: its highest point is where the blend's own slope stands between theirs.
        double low = 0;
        double high = 1;
        for (int i = 0; i < Halvings; i++)
        {
            double third = (high - low) / 3;
            if (Root(gelatin, bloomNow, options, At(low + third)) < Root(gelatin, bloomNow, options, At(high - third)))
            {
                low += third;
            }
            else
            {
                high -= third;
            }
        }

        double[] best = At((low + high) / 2);

        // A last correction of rounding: the dearest figure is 1e-12 of the load.
        double reached = Root(gelatin, bloomNow, options, best);
        if (reached < target && reached > 0)
        {
            double added = reached - Root(gelatin, bloomNow, options, new double[options.Count]);
            double factor = added > 0 ? 1 + ((target - reached) / added * (1 + 1e-9)) : 1;
            best = [.. best.Select((kilograms, i) => Math.Min(options[i].MostKilograms, kilograms * factor))];
        }

        return best;
    }

    private static SetSolution Solution(double gelatin, double bloomNow, IReadOnlyList<SetOption> options, double[] kilograms, bool isReached) => new(
        kilograms,
        kilograms.Select((mass, i) => mass * options[i].PricePerKilogram).Sum(),
        Root(gelatin, bloomNow, options, kilograms),
        isReached);

    private static (double Gelatin, double BloomNow) Sum(double gelatin, double bloomNow, IReadOnlyList<SetOption> options, double[] kilograms)
    {
        for (int i = 0; i < kilograms.Length; i++)
        {
            if (kilograms[i] > 0)
            {
                gelatin += kilograms[i] * options[i].Gelatin;
                bloomNow += kilograms[i] * options[i].BloomNow;
            }
        }

        return (gelatin, bloomNow);
    }

    private static double Root(double gelatin, double bloomNow, IReadOnlyList<SetOption> options, double[] kilograms)
    {
        (double g, double m) = Sum(gelatin, bloomNow, options, kilograms);
        return Math.Sqrt(g * m);
    }

    private static double Slope(double gelatin, double bloomNow, IReadOnlyList<SetOption> options, double[] kilograms)
    {
        (double g, double m) = Sum(gelatin, bloomNow, options, kilograms);
        return g > 0 ? Math.Sqrt(m / g) : 1;
    }
}
