namespace Stockwright.Planning;

/// <summary>A problem that the core still puts into words itself: of the strength sums, of what makes a stock set, and of the log.</summary>
/// <param name="Field">Name of the value it belongs to.</param>
/// <param name="Message">Plain sentence in the cook's words.</param>
public sealed record WordedProblem(string Field, string Message);
