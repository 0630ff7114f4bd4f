namespace Stockwright.Numerics;

/// <summary>A continuous function of the state whose zero is looked for.</summary>
/// <param name="t">Independent variable.</param>
/// <param name="y">State.</param>
internal delegate double EventFunction(double t, ReadOnlySpan<double> y);

/// <summary>Which crossings of zero count.</summary>
internal enum EventDirection
{
    /// <summary>Both.</summary>
    Either,

    /// <summary>From below zero to above.</summary>
    Rising,

    /// <summary>From above zero to below.</summary>
    Falling,
}

/// <summary>Something to watch for during an integration. A function that starts at zero does not fire until it has left it.</summary>
/// <param name="Name">Name, for messages and results.</param>
/// <param name="Function">Function whose zero is the event.</param>
/// <param name="Direction">Which crossings count.</param>
/// <param name="IsTerminal">True to stop there.</param>
internal sealed record OdeEvent(string Name, EventFunction Function, EventDirection Direction = EventDirection.Either, bool IsTerminal = true);

/// <summary>An event that happened.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Time">When.</param>
internal sealed record OdeEventOccurrence(string Name, double Time);
