using Stockwright.Evidence;
using Stockwright.Planning;
using Stockwright.Simmering;
using UnitsNet;

namespace Stockwright.Cooking;

/// <summary>What the readings say of the pot.</summary>
/// <param name="Mean">Logarithms of loss, efficiency and water over their prior values.</param>
/// <param name="Covariance">Of these.</param>
/// <param name="Used">Observations it rests on.</param>
/// <param name="Odd">Observations no believable pot explains; left out.</param>
/// <param name="KnowsLoss">True when a level or the strained stock was read.</param>
/// <param name="KnowsHeat">True when the heat-up was observed.</param>
internal sealed record PotPosterior(
    double[] Mean, double[,] Covariance, IReadOnlyList<PotObservation> Used, IReadOnlyList<PotObservation> Odd, bool KnowsLoss, bool KnowsHeat);

/// <summary>
/// Finds loss factor, hob efficiency and water at the start from readings: Bayesian least squares, Gauss-Newton to the most probable figures,
/// covariance from the curvature there (R.6 to R.8 in docs/equations-cooking.md; the method is that of Rodgers 2000, chapter 5, from memory).
/// </summary>
internal sealed class LossEstimator
{
    /// <summary>Loss, efficiency, water.</summary>
    public const int Count = 3;

    /// <summary>An observation further than this from what all the others let expect is odd, standard deviations.</summary>
    private const double OddDeviations = 3.5;

    /// <summary>How far a parameter may stray, standard deviations of the prior.</summary>
    private const double MostDeviations = 4.5;

    /// <summary>Sigma of what a pot leaves when strained comes from the ranges of what solids hold and cloths keep.</summary>
    private const double EightInTen = 1.2816;

    private const int MostSteps = 12;
    private const double Nudge = 0.01;

    private readonly PlanWorkings workings;
    private readonly PotPrior prior;
    private readonly SimmerScript script;
    private readonly double waterKilograms;
    private readonly double[] sigma;

    public LossEstimator(PlanWorkings workings, PotPrior prior, SimmerScript script)
    {
        this.workings = workings;
        this.prior = prior;
        this.script = script;
        waterKilograms = script.StartWaterKilograms;
        sigma = [prior.LossSigma, prior.EfficiencySigma, PotPrior.WaterSigma];
    }

    /// <summary>Runs the pot with figures of its own.</summary>
    public SimmerOutcome Run(SimmerScript other, ReadOnlySpan<double> at, bool sampled) => SimmerRun.Execute(
        workings.Environment,
        other with { StartWaterKilograms = waterKilograms * Math.Exp(at[2]) },
        prior.Film,
        Math.Exp(at[0]),
        Math.Min(0.95, prior.Efficiency * Math.Exp(at[1])),
        sampled);

    /// <summary>The most probable figures after the observations.</summary>
    public PotPosterior Estimate(IReadOnlyList<PotObservation> observations)
    {
        List<PotObservation> used = [.. observations.Select(Weighed)];
        List<PotObservation> odd = [];
        while (true)
        {
            bool loss = used.Exists(one => one.Kind is ObservationKind.Level or ObservationKind.Cover or ObservationKind.Strained);
            bool heat = used.Exists(one => one.Kind is ObservationKind.Simmer or ObservationKind.Temperature);
            bool[] free = [loss, heat, loss];
            SimmerScript until = Until(used);
            double[] mean = new double[Count];
            double[,] curvature = Curvature(free, [], []);
            (double[] Misses, double[][] Slopes) fit = ([], []);
            if (used.Count > 0)
            {
                mean = Climb(used, free, until);
                fit = Linear(used, mean, free, until);
                curvature = Curvature(free, fit.Slopes, used);
            }

            int worst = Oddest(used, fit, curvature, free);
            if (worst < 0)
            {
                double[,] covariance = SmallMatrix.Inverse(curvature);
                for (int i = 0; i < Count; i++)
                {
                    covariance[i, i] = free[i] ? covariance[i, i] : 0;
                }

                return new PotPosterior(mean, covariance, used, odd, loss, heat);
            }

            odd.Add(used[worst]);
            used.RemoveAt(worst);
        }
    }

    /// <summary>Gauss-Newton with the step halved until the sum of squares falls.</summary>
    private double[] Climb(List<PotObservation> used, bool[] free, SimmerScript until)
    {
        double[] mean = new double[Count];
        double cost = Cost(used, mean, until);
        for (int step = 0; step < MostSteps; step++)
        {
            (double[] misses, double[][] slopes) = Linear(used, mean, free, until);
            double[,] curvature = Curvature(free, slopes, used);
            double[] gradient = new double[Count];
            for (int k = 0; k < Count; k++)
            {
                gradient[k] = free[k] ? -mean[k] / (sigma[k] * sigma[k]) : 0;
                for (int i = 0; i < used.Count; i++)
                {
                    gradient[k] += slopes[i][k] * misses[i] / (used[i].Sigma * used[i].Sigma);
                }
            }

            double[] move = SmallMatrix.Times(SmallMatrix.Inverse(curvature), gradient);
            double length = 1;
            double[] next = Moved(mean, move, length);
            double nextCost = Cost(used, next, until);
            while (!(nextCost <= cost) && length > 0.01)
            {
                length /= 2;
                next = Moved(mean, move, length);
                nextCost = Cost(used, next, until);
            }

            if (!(nextCost <= cost))
            {
                break;
            }

            bool settled = cost - nextCost < 1e-6 * (1 + cost);
            mean = next;
            cost = nextCost;
            if (settled)
            {
                break;
            }
        }

        return mean;
    }

    private double[] Moved(double[] mean, double[] move, double length)
    {
        double[] next = new double[Count];
        for (int k = 0; k < Count; k++)
        {
            double most = MostDeviations * sigma[k];
            next[k] = Math.Clamp(mean[k] + (length * Math.Clamp(move[k], -2 * sigma[k], 2 * sigma[k])), -most, most);
        }

        return next;
    }

    private double Cost(List<PotObservation> used, double[] at, SimmerScript until)
    {
        SimmerOutcome outcome = Run(until, at, sampled: false);
        double sum = 0;
        for (int k = 0; k < Count; k++)
        {
            sum += at[k] * at[k] / (sigma[k] * sigma[k]);
        }

        foreach (PotObservation one in used)
        {
            double miss = (one.Value - (one.In(outcome, workings.Environment.Assumptions) ?? one.Value)) / one.Sigma;
            sum += miss * miss;
        }

        return sum;
    }

    private (double[] Misses, double[][] Slopes) Linear(List<PotObservation> used, double[] at, bool[] free, SimmerScript until)
    {
        double[] here = Predicted(used, Run(until, at, sampled: false));
        double[] misses = [.. used.Select((one, i) => one.Value - here[i])];
        double[][] slopes = [.. used.Select(_ => new double[Count])];
        for (int k = 0; k < Count; k++)
        {
            if (!free[k])
            {
                continue;
            }

            double[] nudged = [.. at];
            nudged[k] += Nudge;
            double[] there = Predicted(used, Run(until, nudged, sampled: false));
            for (int i = 0; i < used.Count; i++)
            {
                slopes[i][k] = (there[i] - here[i]) / Nudge;
            }
        }

        return (misses, slopes);
    }

    private double[] Predicted(List<PotObservation> used, SimmerOutcome outcome) => [.. used.Select(one => one.In(outcome, workings.Environment.Assumptions) ?? one.Value)];

    private double[,] Curvature(bool[] free, double[][] slopes, List<PotObservation> used)
    {
        double[,] curvature = new double[Count, Count];
        for (int k = 0; k < Count; k++)
        {
            curvature[k, k] = 1 / (sigma[k] * sigma[k]);
            for (int l = 0; l < Count; l++)
            {
                for (int i = 0; i < used.Count && free[k] && free[l]; i++)
                {
                    curvature[k, l] += slopes[i][k] * slopes[i][l] / (used[i].Sigma * used[i].Sigma);
                }
            }
        }

        return curvature;
    }

    /// <summary>The observation furthest from what prior and all the others let expect, when that is too far to believe; else -1 (R.8).</summary>
    private static int Oddest(List<PotObservation> used, (double[] Misses, double[][] Slopes) fit, double[,] curvature, bool[] free)
    {
        int worst = -1;
        double most = OddDeviations;
        for (int i = 0; i < used.Count; i++)
        {
            // Without observation i, to first order: its share taken out of curvature and gradient.
            double variance = used[i].Sigma * used[i].Sigma;
            double[] slope = fit.Slopes[i];
            double[,] rest = (double[,])curvature.Clone();
            for (int k = 0; k < Count; k++)
            {
                for (int l = 0; l < Count; l++)
                {
                    rest[k, l] -= free[k] && free[l] ? slope[k] * slope[l] / variance : 0;
                }
            }

            double[] spread = SmallMatrix.Times(SmallMatrix.Inverse(rest), slope);
            double expected = SmallMatrix.Dot(slope, spread);

            // The most probable figures without it lie spread * miss / variance further off, so its miss grows by expected / variance.
            double miss = fit.Misses[i] * (1 + (expected / variance));
            double deviations = Math.Abs(miss) / Math.Sqrt(expected + variance);
            if (deviations > most)
            {
                most = deviations;
                worst = i;
            }
        }

        return worst;
    }

    private SimmerScript Until(List<PotObservation> used)
    {
        SimmerScript open = script with { SimmersAtSeconds = null };
        if (used.Exists(one => one.Kind == ObservationKind.Strained))
        {
            return open;
        }

        double last = script.Events.Where(one => one.Kind == PotEventKind.Look && used.Exists(seen => seen.Look == (int)one.Value)).Select(one => one.AtSeconds).DefaultIfEmpty(0).Max();
        double simmer = used.Find(one => one.Kind == ObservationKind.Simmer) is { } seen ? (3 * seen.Value) + 600 : 0;
        return open with { EndsAtSeconds = Math.Min(script.EndsAtSeconds, Math.Max(last, simmer) + 1) };
    }

    private PotObservation Weighed(PotObservation one)
    {
        if (one.Kind != ObservationKind.Strained)
        {
            return one;
        }

        Stated<Ratio> held = workings.Fitter.Clinging;
        Stated<Ratio> lost = workings.Environment.Assumptions.StrainLoss;
        SimmerOutcome central = workings.Central;
        double holds = (workings.Fitter.RetainedKilograms(central, held.High.DecimalFractions) - workings.Fitter.RetainedKilograms(central, held.Low.DecimalFractions)) / 2 / EightInTen;
        double loses = (lost.High - lost.Low).DecimalFractions * one.Value / 2 / EightInTen;
        return one with { Sigma = Math.Max(0.02, Math.Sqrt((holds * holds) + (loses * loses))) };
    }
}
