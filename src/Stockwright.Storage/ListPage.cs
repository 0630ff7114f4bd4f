namespace Stockwright.Storage;

/// <summary>A page of a list.</summary>
/// <typeparam name="T">What is listed.</typeparam>
/// <param name="Rows">What stands on the page.</param>
/// <param name="Count">How many there are in all.</param>
/// <param name="Number">Number of the page, from 1; the last one when a later one was asked for.</param>
/// <param name="Size">Rows on a page.</param>
public sealed record ListPage<T>(IReadOnlyList<T> Rows, int Count, int Number, int Size)
{
    /// <summary>How many pages there are, at least one.</summary>
    public int Pages => Math.Max(1, (Count + Size - 1) / Size);

    /// <summary>Rows before this page.</summary>
    internal int Skipped => (Number - 1) * Size;

    /// <summary>A page without its rows.</summary>
    internal static ListPage<T> Of(int count, int page, int size)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(size, 1);
        ListPage<T> first = new([], count, 1, size);
        return first with { Number = Math.Clamp(page, 1, first.Pages) };
    }
}
