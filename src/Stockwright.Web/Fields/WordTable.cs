namespace Stockwright.Web.Fields;

/// <summary>Tables of the words that stand for one of a few values in links and forms.</summary>
internal static class WordTable
{
    public static string Of<T>((string Word, T Value)[] words, T value)
        where T : struct, Enum => words.First(pair => EqualityComparer<T>.Default.Equals(pair.Value, value)).Word;
}
