namespace Stockwright.Numerics;

/// <summary>
/// Finds events step by step (equations N.6 and N.7 in docs/equations-physics.md): a change of sign over a step, its place
/// on the dense output, and for a terminal event a root of the function after a true step of that length.
/// </summary>
internal sealed class EventWatch<TSystem>
    where TSystem : IOdeSystem
{
    private readonly OdeEvent[] events;
    private readonly double[] before;
    private readonly double[] after;
    private readonly double[] scratch;
    private readonly List<OdeEventOccurrence> occurrences = [];

    internal EventWatch(ReadOnlySpan<OdeEvent> events, double startTime, ReadOnlySpan<double> startState)
    {
        this.events = events.ToArray();
        before = new double[events.Length];
        after = new double[events.Length];
        scratch = new double[startState.Length];
        for (int i = 0; i < events.Length; i++)
        {
            before[i] = events[i].Function(startTime, startState);
        }
    }

    internal IReadOnlyList<OdeEventOccurrence> Occurrences => occurrences;

    /// <summary>
    /// Looks over the step just tried, before it is accepted. When a terminal event fires, the step is tried anew so that
    /// it ends there, its dense output is replaced, and the occurrence is returned.
    /// </summary>
    internal OdeEventOccurrence? Look(DormandPrinceStep<TSystem> step, DenseOutput dense, double t, double next, double tolerance)
    {
        int firstTerminal = -1;
        double firstTime = double.PositiveInfinity;
        List<OdeEventOccurrence>? passed = null;
        for (int i = 0; i < events.Length; i++)
        {
            after[i] = events[i].Function(next, step.Trial);
            if (!Fires(events[i].Direction, before[i], after[i]))
            {
                continue;
            }

            double time = RootFinding.BrentBracketed(
                new OnDense(dense, events[i].Function, scratch), t, before[i], next, after[i], tolerance, RootFinding.DefaultMaximumIterations);
            if (!events[i].IsTerminal)
            {
                (passed ??= []).Add(new OdeEventOccurrence(events[i].Name, time));
            }
            else if (time < firstTime)
            {
                (firstTerminal, firstTime) = (i, time);
            }
        }

        OdeEventOccurrence? end = firstTerminal < 0 ? null : StepTo(firstTerminal, step, dense, t, next, tolerance);
        if (passed is not null)
        {
            passed.RemoveAll(o => end is not null && o.Time > end.Time);
            passed.Sort(static (x, y) => x.Time.CompareTo(y.Time));
            occurrences.AddRange(passed);
        }

        if (end is not null)
        {
            occurrences.Add(end);
        }

        after.CopyTo(before, 0);
        return end;
    }

    private static bool Fires(EventDirection direction, double from, double to) =>
        (from < 0 && to >= 0 && direction != EventDirection.Falling) || (from > 0 && to <= 0 && direction != EventDirection.Rising);

    private OdeEventOccurrence StepTo(int index, DormandPrinceStep<TSystem> step, DenseOutput dense, double t, double next, double tolerance)
    {
        OdeEvent watched = events[index];
        AfterStep function = new(step, watched.Function, t);
        double time = RootFinding.BrentBracketed(
            function, t, before[index], next, after[index], tolerance / 2, RootFinding.DefaultMaximumIterations);

        // Land at or just past the zero, so that whoever carries on from here does not meet the same crossing again.
        double value = function.Evaluate(time);
        if (Math.Sign(value) == Math.Sign(before[index]))
        {
            time = Math.Min(next, time + Math.Max(tolerance / 2, 4 * (Math.BitIncrement(Math.Abs(time)) - Math.Abs(time))));
            function.Evaluate(time);
        }

        dense.RemoveLast();
        step.WriteDense(time - t, dense.Append(t, time - t));
        return new OdeEventOccurrence(watched.Name, time);
    }

    private readonly struct OnDense(DenseOutput dense, EventFunction function, double[] scratch) : IScalarFunction
    {
        public double Evaluate(double x)
        {
            dense.EvaluateLast(x, scratch);
            return function(x, scratch);
        }
    }

    private readonly struct AfterStep(DormandPrinceStep<TSystem> step, EventFunction function, double t) : IScalarFunction
    {
        public double Evaluate(double x)
        {
            step.Try(t, x - t);
            return function(x, step.Trial);
        }
    }
}
