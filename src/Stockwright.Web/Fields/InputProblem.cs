using Stockwright.Planning;

namespace Stockwright.Web.Fields;

/// <summary>Something to put right, in words, beside the field it belongs to.</summary>
/// <param name="Field">Name of the field, for instance <c>litres</c>; empty when it belongs to the whole form.</param>
/// <param name="Message">Plain sentence in the cook's words and measures.</param>
public sealed record InputProblem(string Field, string Message)
{
    /// <summary>A problem that the core still puts into words itself.</summary>
    internal static InputProblem From(WordedProblem problem) => new(problem.Field, problem.Message);
}
