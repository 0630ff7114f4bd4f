namespace Stockwright.Numerics;

/// <summary>Work done by an integration.</summary>
/// <param name="Accepted">Steps accepted.</param>
/// <param name="Rejected">Steps tried and thrown away.</param>
/// <param name="Evaluations">Evaluations of the right-hand side.</param>
internal readonly record struct OdeStatistics(int Accepted, int Rejected, int Evaluations);

/// <summary>The outcome of an integration by <see cref="DormandPrince"/>.</summary>
internal sealed class OdeSolution
{
    private readonly DenseOutput? dense;
    private readonly double[] finalState;
    private readonly double[] startState;

    internal OdeSolution(
        double startTime, double[] startState, double endTime, double[] finalState, DenseOutput? dense, IReadOnlyList<OdeEventOccurrence> events, OdeEventOccurrence? terminatedBy, OdeStatistics statistics)
    {
        StartTime = startTime;
        EndTime = endTime;
        this.startState = startState;
        this.finalState = finalState;
        this.dense = dense;
        Events = events;
        TerminatedBy = terminatedBy;
        Statistics = statistics;
    }

    /// <summary>Where the integration began.</summary>
    public double StartTime { get; }

    /// <summary>Where it ended: the time asked for, or that of the terminal event.</summary>
    public double EndTime { get; }

    /// <summary>State at the end, from a full step to exactly that time.</summary>
    public ReadOnlySpan<double> FinalState => finalState;

    /// <summary>Every event, in order of time; a terminal one comes last.</summary>
    public IReadOnlyList<OdeEventOccurrence> Events { get; }

    /// <summary>The terminal event that stopped the integration, or null when it ran to its end.</summary>
    public OdeEventOccurrence? TerminatedBy { get; }

    /// <summary>Work done.</summary>
    public OdeStatistics Statistics { get; }

    /// <summary>State at a time, fourth-order accurate between steps (N.5).</summary>
    /// <param name="t">From the start to the end.</param>
    /// <exception cref="ArgumentOutOfRangeException">The time lies outside the integration.</exception>
    /// <exception cref="InvalidOperationException">The steps were not kept.</exception>
    public double[] StateAt(double t)
    {
        double[] state = new double[finalState.Length];
        StateAt(t, state);
        return state;
    }

    /// <summary>State at a time, written to a span (N.5).</summary>
    /// <param name="t">From the start to the end.</param>
    /// <param name="state">As long as the system has unknowns.</param>
    /// <exception cref="ArgumentOutOfRangeException">The time lies outside the integration.</exception>
    /// <exception cref="ArgumentException">The span has the wrong length.</exception>
    /// <exception cref="InvalidOperationException">The steps were not kept.</exception>
    public void StateAt(double t, Span<double> state)
    {
        if (state.Length != finalState.Length)
        {
            throw new ArgumentException("The span must be as long as the system has unknowns.", nameof(state));
        }

        for (int i = 0; i < state.Length; i++)
        {
            state[i] = ComponentAt(t, i);
        }
    }

    /// <summary>One component at a time (N.5).</summary>
    /// <param name="t">From the start to the end.</param>
    /// <param name="component">Its place in the state.</param>
    /// <exception cref="ArgumentOutOfRangeException">The time or the component lies outside the integration.</exception>
    /// <exception cref="InvalidOperationException">The steps were not kept.</exception>
    public double ComponentAt(double t, int component)
    {
        if (!(t >= StartTime) || t > EndTime)
        {
            throw new ArgumentOutOfRangeException(nameof(t), t, "The time lies outside the integration.");
        }

        ArgumentOutOfRangeException.ThrowIfNegative(component);
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(component, finalState.Length);

        // The two ends are exact; in between the dense output answers.
        return t == EndTime ? finalState[component]
            : t == StartTime ? startState[component]
            : (dense ?? throw new InvalidOperationException("This integration did not keep its steps (KeepDenseOutput is false).")).ComponentAt(t, component);
    }
}
