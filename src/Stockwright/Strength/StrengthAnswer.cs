using Stockwright.Planning;

namespace Stockwright.Strength;

/// <summary>Either an answer or what stands in its way, in the cook's words; never both.</summary>
/// <typeparam name="T">The answer.</typeparam>
/// <param name="Value">The answer, or null.</param>
/// <param name="Problem">The problem with the field it belongs to, or null.</param>
public sealed record StrengthAnswer<T>(T? Value, WordedProblem? Problem)
    where T : class;

internal static class StrengthAnswer
{
    public static StrengthAnswer<T> Of<T>(T value)
        where T : class => new(value, null);

    public static StrengthAnswer<T> No<T>(string field, string message)
        where T : class => new(null, new WordedProblem(field, message));
}
