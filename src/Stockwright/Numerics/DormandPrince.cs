using System.Globalization;

namespace Stockwright.Numerics;

/// <summary>
/// Explicit Runge-Kutta integrator of order 5 with an embedded error estimate of order 4, steps set by a PI controller,
/// quartic dense output and location of events (equations N.1 to N.7 in docs/equations-physics.md).
/// Sources: Dormand and Prince 1980; Hairer, Norsett and Wanner 1993, II.4 to II.6.
/// </summary>
/// <remarks>For problems that are not or only mildly stiff; a very stiff one runs out of steps and says so.</remarks>
internal static class DormandPrince
{
    private const double Safety = 0.9;
    private const double Beta = 0.04;
    private const double Exponent = 0.2 - (0.75 * Beta);
    private const double LeastFactor = 0.2;
    private const double MostFactor = 10;

    /// <summary>Integrates from a start to an end, or to the first terminal event.</summary>
    /// <typeparam name="TSystem">The system; a struct or a sealed class compiles to a loop of its own.</typeparam>
    /// <param name="system">Right-hand side.</param>
    /// <param name="startTime">Start, finite.</param>
    /// <param name="startState">State at the start, finite, one number for each unknown.</param>
    /// <param name="endTime">End, not before the start.</param>
    /// <param name="options">Tolerances and limits.</param>
    /// <param name="events">
    /// Functions watched for a change of sign from step to step; two crossings within one step go unseen, so set
    /// <see cref="OdeOptions.MaximumStep"/> where that could happen. After a terminal event the final state lies at or just
    /// past the zero, never before it.
    /// </param>
    /// <exception cref="ArgumentException">The state does not fit the system, a number is not finite or an option is out of range.</exception>
    /// <exception cref="NumericalFailureException">Too many steps, or a step that vanishes.</exception>
    public static OdeSolution Integrate<TSystem>(
        TSystem system, double startTime, ReadOnlySpan<double> startState, double endTime, OdeOptions options, params ReadOnlySpan<OdeEvent> events)
        where TSystem : IOdeSystem
    {
        ArgumentNullException.ThrowIfNull(system);
        ArgumentNullException.ThrowIfNull(options);
        return Integrate(new DormandPrinceStep<TSystem>(system), startTime, startState, endTime, options, events);
    }

    /// <summary>The same in a workspace of the caller's, for who integrates one system many times.</summary>
    internal static OdeSolution Integrate<TSystem>(
        DormandPrinceStep<TSystem> step, double startTime, ReadOnlySpan<double> startState, double endTime, OdeOptions options, params ReadOnlySpan<OdeEvent> events)
        where TSystem : IOdeSystem
    {
        Validate(step.Dimension, startTime, startState, endTime);
        options.Validate(startState.Length);

        // Without dense output to keep, events need the step at hand alone.
        DenseOutput? dense = options.KeepDenseOutput || !events.IsEmpty ? new DenseOutput(startState.Length, options.KeepDenseOutput ? 16 : 1) : null;
        step.Start(startTime, startState);
        EventWatch<TSystem> watch = new(events, startTime, startState);
        double t = startTime;
        double h = FirstStep(step, t, endTime, options);
        double lastError = 1e-4;
        int accepted = 0;
        int rejected = 0;
        bool justRejected = false;
        OdeEventOccurrence? end = null;
        while (t < endTime && end is null)
        {
            if (accepted + rejected >= options.MaximumSteps)
            {
                throw new NumericalFailureException(string.Create(
                    CultureInfo.InvariantCulture, $"Stopped at {t:R} of {endTime:R} after {options.MaximumSteps} steps; the problem may be stiff or the tolerance too tight."));
            }

            double rest = endTime - t;
            bool last = h >= rest * (1 - 1e-10);
            double used = last ? rest : options.FixedStep is null && 2 * h > rest ? rest / 2 : h;
            double next = last ? endTime : t + used;
            if (!(next > t))
            {
                throw new NumericalFailureException(string.Create(
                    CultureInfo.InvariantCulture, $"The step vanished at {t:R}; the right-hand side may be singular or not a number there."));
            }

            step.Try(t, used);
            double error = step.ErrorNorm(used, options);
            if (options.FixedStep is null && !(error <= 1))
            {
                // Not a number counts as far too big.
                h = used * (double.IsFinite(error) ? Math.Max(LeastFactor, Safety * Math.Pow(error, -Exponent)) : LeastFactor);
                rejected++;
                justRejected = true;
                continue;
            }

            if (!double.IsFinite(error))
            {
                throw new NumericalFailureException(string.Create(CultureInfo.InvariantCulture, $"The right-hand side is not a number near {t:R}."));
            }

            accepted++;
            if (!options.KeepDenseOutput)
            {
                dense?.Clear();
            }

            if (dense is not null)
            {
                step.WriteDense(used, dense.Append(t, used));
            }

            if (!events.IsEmpty)
            {
                end = watch.Look(step, dense!, t, next, options.EventTolerance);
                next = end?.Time ?? next;
            }

            step.Accept();
            t = next;
            h = options.FixedStep ?? Math.Min(options.MaximumStep, NextStep(used, error, lastError, justRejected));
            lastError = Math.Max(error, 1e-4);
            justRejected = false;
        }

        OdeStatistics statistics = new(accepted, rejected, step.Evaluations);
        return new OdeSolution(
            startTime, startState.ToArray(), t, step.State.ToArray(), options.KeepDenseOutput ? dense : null, watch.Occurrences, end, statistics);
    }

    private static double FirstStep<TSystem>(DormandPrinceStep<TSystem> step, double t, double endTime, OdeOptions options)
        where TSystem : IOdeSystem
    {
        if (endTime <= t)
        {
            return 0;
        }

        return options.FixedStep ?? Math.Min(options.MaximumStep, options.InitialStep ?? step.InitialStep(t, endTime - t, options));
    }

    /// <summary>PI control of the step (N.3); no growth right after a rejection.</summary>
    private static double NextStep(double h, double error, double lastError, bool justRejected)
    {
        double factor = error == 0 ? MostFactor : Safety * Math.Pow(error, -Exponent) * Math.Pow(lastError, Beta);
        return h * Math.Clamp(factor, LeastFactor, justRejected ? 1 : MostFactor);
    }

    private static void Validate(int dimension, double startTime, ReadOnlySpan<double> startState, double endTime)
    {
        if (dimension != startState.Length || dimension == 0)
        {
            throw new ArgumentException(string.Create(
                CultureInfo.InvariantCulture, $"The system has {dimension} unknowns but the start gives {startState.Length}."), nameof(startState));
        }

        if (!double.IsFinite(startTime) || !double.IsFinite(endTime) || endTime < startTime)
        {
            throw new ArgumentException("The times must be finite and the end must not come before the start.", nameof(endTime));
        }

        foreach (double value in startState)
        {
            if (!double.IsFinite(value))
            {
                throw new ArgumentException("Every number of the start must be finite.", nameof(startState));
            }
        }
    }
}
