using Stockwright.Web.Features.Planning;

namespace Stockwright.Web.Features.Cooking;

/// <summary>
/// Keeps what was last said of the stock of some batches. After every entry each device that looks at the batch asks for its page
/// again, and the prediction is nearly all the work of it: the same one does for all of them.
/// </summary>
internal sealed class OutlookCache(TimeProvider clock)
{
    private const int Most = 32;

    /// <summary>Without a new entry the prediction changes only as overdue visits move on.</summary>
    private static readonly TimeSpan Freshness = TimeSpan.FromMinutes(2);

    private readonly Lock door = new();
    private readonly Dictionary<Key, Kept> shelf = [];

    /// <summary>The prediction kept for a batch as it stands, or a new one.</summary>
    /// <param name="batch">The batch.</param>
    /// <param name="entries">Entries in its log; null for what was planned, which never changes.</param>
    /// <param name="units">Measures its sentences are in.</param>
    /// <param name="judge">Makes a new one.</param>
    public StockOutlook? Take(Guid batch, int? entries, UnitSystem units, Func<StockOutlook?> judge)
    {
        DateTimeOffset now = clock.GetUtcNow();
        Kept? kept;
        lock (door)
        {
            Key key = new(batch, entries is null, units);
            if (!shelf.TryGetValue(key, out kept) || kept.Entries != entries || (entries is not null && (now - kept.At).Duration() > Freshness))
            {
                // Made outside the door, and once however many ask for it at the same time.
                kept = new Kept(entries, now, new Lazy<StockOutlook?>(judge));
                shelf[key] = kept;
                if (shelf.Count > Most)
                {
                    shelf.Remove(shelf.MinBy(row => row.Value.At).Key);
                }
            }
        }

        return kept.Outlook.Value;
    }

    private sealed record Key(Guid Batch, bool IsPlanned, UnitSystem Units);

    private sealed record Kept(int? Entries, DateTimeOffset At, Lazy<StockOutlook?> Outlook);
}
